#include <charconv>
#include <fstream>
#include <optional>

#include "cli/answer.hpp"
#include "cli/columns.hpp"
#include "cli/commands.hpp"
#include "cli/demo_business.hpp"
#include "cli/records.hpp"
#include "cli/system_device.hpp"
#include "demo/claw_table_file.hpp"

namespace evenclaw::cli {
namespace {

constexpr Option options[] = {
    {"--to", "FOLDER", "where records and truth go; with --claw-rows the file to write"},
    {"--seed", "N", "another number invents another business; 1 when not given"},
    {"--herds", "N", "how many herds, 12 when not given"},
    {"--years", "N", "how many years, 3 when not given"},
    {"--until", "DAY", "the last day; today when not given"},
    {"--without", "WORDS", "complications to leave out, with commas between"},
    {"--claw-rows", "N", "a neutral table of so many claws instead"},
    {"--csv", "", "that table as text"}};
constexpr Example examples[] = {
    {"evenclaw demo --to invented",
     "12 herds over 3 years, invented, with the truth beside the records"},
    {"evenclaw demo --to small --seed 7 --herds 4 --years 1 --without dd_spreads",
     "a smaller business; dermatitis does not spread from cow to cow in it"},
    {"evenclaw demo --claw-rows 1000000 --to claws.bin",
     "a table to try analyses on: docs/format/claw-table.md"}};

constexpr int days_a_week = 7;

Fault no_such_number(std::string_view option, const std::string& text, std::string_view range) {
  return {.slug = "usage",
          .message = "\"" + text + "\" is no number for " + std::string(option),
          .token = text,
          .remedy = "Say a whole number, " + std::string(range) + "."};
}

struct Bounds {
  std::uint64_t least;
  std::uint64_t most;
  std::string_view words;
};

Result<std::uint64_t> number_option(const Invocation& invocation, std::string_view option,
                                    std::uint64_t otherwise, const Bounds& bounds) {
  if (!invocation.has(option)) return otherwise;
  const std::string text = invocation.value(option);
  std::uint64_t number = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), number);
  const bool is_whole = read.ec == std::errc() && read.ptr == text.data() + text.size();
  if (!is_whole || number < bounds.least || number > bounds.most) {
    return no_such_number(option, text, bounds.words);
  }
  return number;
}

constexpr Bounds any_seed = {0, UINT64_MAX, "0 or more"};

std::string all_complications() {
  std::string words;
  for (const auto& row : EnumWords<demo::Complication>::table) {
    if (!words.empty()) words += ", ";
    words += row.word;
  }
  return words;
}

Result<demo::Complications> complications_of(const Invocation& invocation) {
  demo::Complications complications;
  std::string words = invocation.value("--without");
  while (!words.empty()) {
    const std::size_t comma = words.find(',');
    const std::string word = words.substr(0, comma);
    words.erase(0, comma == std::string::npos ? words.size() : comma + 1);
    const auto which = enum_of<demo::Complication>(word);
    if (!which) {
      return Fault{.slug = "usage",
                   .message = "\"" + word + "\" is nothing that could be left out",
                   .token = word,
                   .remedy = "Say some of: " + all_complications() + "."};
    }
    complications.leave_out(*which);
  }
  return complications;
}

Result<Day> last_day_of(const Invocation& invocation) {
  const auto until = day_option(invocation, "--until");
  if (!until) return until.faults();
  if (*until) return **until;
  if (!invocation.today) return day_of(SystemClock().now());
  const auto today = day_from_text(*invocation.today);
  if (today) return *today;
  return Fault{.slug = "date-unreadable",
               .message = "\"" + *invocation.today + "\" is not a date",
               .token = *invocation.today};
}

Result<demo::BusinessWanted> business_wanted(const Invocation& invocation) {
  demo::BusinessWanted wanted;
  const auto seed = number_option(invocation, "--seed", 1, any_seed);
  if (!seed) return seed.faults();
  const auto farms = number_option(invocation, "--herds", 12, {1, 1000, "from 1 to 1000"});
  if (!farms) return farms.faults();
  const auto years = number_option(invocation, "--years", 3, {1, 20, "from 1 to 20"});
  if (!years) return years.faults();
  const auto complications = complications_of(invocation);
  if (!complications) return complications.faults();
  const auto last_day = last_day_of(invocation);
  if (!last_day) return last_day.faults();
  wanted.seed = *seed;
  wanted.farms = static_cast<int>(*farms);
  wanted.weeks = static_cast<int>(*years) * 365 / days_a_week;
  wanted.complications = *complications;
  wanted.last_day = *last_day;
  return wanted;
}

Fault not_written(const std::string& path) {
  return {.slug = "disk-failed", .message = path + " could not be written", .token = path};
}

Outcome write_claw_table(const Invocation& invocation, const std::string& path) {
  const auto seed = number_option(invocation, "--seed", 1, any_seed);
  if (!seed) return seed.faults();
  const auto rows =
      number_option(invocation, "--claw-rows", 0, {1, 2'000'000'000, "from 1 to 2000000000"});
  if (!rows) return rows.faults();
  if (std::ifstream(path).good()) {
    return Fault{.slug = "output-exists",
                 .message = path + " is there already",
                 .token = path,
                 .remedy = "Choose another name."};
  }
  std::ofstream file(path, std::ios::binary);
  const auto put = [&](std::uint64_t offset, std::string_view bytes) -> Outcome {
    file.seekp(static_cast<std::streamoff>(offset));
    file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    if (!file) return not_written(path);
    return Done{};
  };
  const demo::ClawTableWanted wanted{*seed, *rows};
  const Outcome written =
      invocation.has("--csv") ? demo::write_csv(wanted, put) : demo::write_binary(wanted, put);
  if (!written) return written;
  file.close();
  if (!file) return not_written(path);
  return Done{};
}

void print(const DemoMade& made) {
  std::vector<std::vector<std::string>> rows = {
      {"herd", "cows", "visits", "turns", "asked", "left open"}};
  std::int64_t turns = 0;
  for (const DemoFarm& farm : made.farms) {
    turns += farm.turns;
    rows.push_back({farm.name, std::to_string(farm.cows), std::to_string(farm.visits),
                    std::to_string(farm.turns), std::to_string(farm.asked),
                    std::to_string(farm.left_open)});
  }
  std::cout << table(rows) << "\n"
            << counted(turns, "turn", "turns") << " from " << to_text(made.first_day) << " to "
            << to_text(made.last_day) << ", all of it invented.\n\nThe records lie at\n  "
            << made.records << "\nWhat is true of them lies at\n  " << made.truth
            << "\nLook around in them, for example\n  evenclaw herds --file " << made.records
            << "\n";
}

constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<DemoMade>},
                                  {"with --claw-rows", JsonForm::document, field_docs<FileAnswer>}};

Exit run(const Invocation& invocation) {
  const std::string to = invocation.value("--to");
  if (to.empty()) {
    return tell_faults({Fault{.slug = "usage",
                              .message = "it is not said where the demo is to lie",
                              .remedy = "Say a folder: evenclaw demo --to invented"}},
                       invocation);
  }
  if (invocation.has("--claw-rows")) {
    const Outcome written = write_claw_table(invocation, to);
    if (!written) return tell_faults(written.faults(), invocation);
    tell_done(invocation, "The table lies at\n  " + to, FileAnswer{to});
    return Exit::fine;
  }
  const auto wanted = business_wanted(invocation);
  if (!wanted) return tell_faults(wanted.faults(), invocation);
  const auto made = make_demo(*wanted, to);
  if (!made) return tell_faults(made.faults(), invocation);
  if (invocation.json) {
    print_json(*made);
  } else {
    print(*made);
  }
  return Exit::fine;
}

}  // namespace

extern const Command demo_command = {
    "demo", "invent a business to try everything on", {}, options, examples, run, answers};

}  // namespace evenclaw::cli
