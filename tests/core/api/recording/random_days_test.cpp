// Days put together at random from what is said at a crush: in the right order, in the wrong one,
// with slips. Whatever comes, it is answered, what was answered "saved" is in the store, a file
// that was understood counts once however often it is given, and a battery that dies behind any
// line costs nothing.
#include <doctest/doctest.h>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/random.hpp"
#include "core/log/body.hpp"
#include "core/trade/turn.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {
namespace {

// EVENCLAW_DAYS says how many; EVENCLAW_SEED replays the one that failed.
std::vector<std::uint64_t> seeds_to_try() {
#ifdef __EMSCRIPTEN__
  constexpr std::uint64_t usual = 20;
#else
  constexpr std::uint64_t usual = 150;
#endif
  if (const char* seed = std::getenv("EVENCLAW_SEED")) {
    return {std::strtoull(seed, nullptr, 10)};
  }
  const char* wanted = std::getenv("EVENCLAW_DAYS");
  const std::uint64_t count = wanted == nullptr ? usual : std::strtoull(wanted, nullptr, 10);
  std::vector<std::uint64_t> seeds;
  for (std::uint64_t seed = 1; seed <= count; ++seed) seeds.push_back(seed);
  return seeds;
}

/// What was done at this farm three weeks before.
const std::vector<std::string> last_time = {
    "412 LH outside WL heel, bad; block inside; wrap", "513 RH DD raw; wrap, off 5d",
    "620 lame LF; LF inside SU; vet", "77 nothing found", "no tag, brown heifer; RH IP"};

constexpr const char* cows[] = {"412",
                                "513",
                                "620",
                                "77",
                                "301",
                                "and 302",
                                "512 or 513",
                                "0412",
                                "no tag, brown heifer",
                                "no tag, black cow"};
constexpr const char* feet[] = {"LH", "RH", "LF", "RF", "both hinds", "all four"};
constexpr const char* said[] = {"nothing found",
                                "outside SU",
                                "inside white line heel, bad",
                                "DD raw",
                                "DD scab",
                                "IP",
                                "HHE slight",
                                "outside",
                                "block on inside",
                                "block inside, off 28d",
                                "block off",
                                "block gone",
                                "wrap",
                                "wrap off",
                                "wrap, off 3d",
                                "refitted",
                                "spray",
                                "opened",
                                "see again 28d",
                                "vet",
                                "same as last time",
                                "still on",
                                "better",
                                "toe 78 mm",
                                "trimmed"};
constexpr const char* of_her[] = {"lame",
                                  "lame LH",
                                  "rest fine",
                                  "done",
                                  "recheck",
                                  "not lame",
                                  "mobility 2 of 3",
                                  "gone",
                                  "walks sound",
                                  "still lame",
                                  "vet came",
                                  "told the farmer",
                                  "not done",
                                  "she is going down",
                                  "go ahead",
                                  "nothing found",
                                  "just the hinds",
                                  "note kicks at the gate"};
constexpr const char* corrections[] = {
    "no, right hind", "no, inside",   "no, other left", "no, no SU",   "no, 513",
    "no, no wrap",    "no, not lame", "never mind",     "no, chronic", "no"};
/// What may stand right behind a line, of a foot, a number or a count.
constexpr const char* right_behind[] = {"no, RH",
                                        "no, LF",
                                        "no, only LH",
                                        "no, 412",
                                        "no, 441",
                                        "no, inside",
                                        "no, bad",
                                        "no, other left, LF I meant",
                                        "no, 11",
                                        "LH",
                                        "go ahead",
                                        "never mind",
                                        "done",
                                        "rest fine",
                                        "LH outside SU",
                                        "410 DD",
                                        "caller Ben",
                                        "300 wrap off",
                                        "12 heifers, all good"};
constexpr const char* called_first[] = {
    "410 LH DD raw",        "410? LH DD raw", "412 or 421",
    "no number, brown",     "410 DD",         "412 LH outside SU; vet",
    "12 heifers, all good", "412 wrap off",   "410 both hinds DD raw"};
constexpr const char* whole_lines[] = {"412, 513 wraps off; 77 gone; 620 still lame",
                                       "12 heifers, all good",
                                       "12 heifers, all good bar 412",
                                       "caller Ben",
                                       "outsde SU",
                                       "rets fine",
                                       "412 LH outsde SU",
                                       "today just the hinds",
                                       "next 882",
                                       "",
                                       "?"};

template <std::size_t Size>
std::string any(RandomStream& random, const char* const (&words)[Size]) {
  return words[random.below(Size)];
}

std::string line_of(RandomStream& random) {
  if (random.chance(0.12)) return any(random, whole_lines);
  if (random.chance(0.12)) return any(random, corrections);
  std::string line = random.chance(0.45) ? any(random, cows) : "";
  const std::uint32_t clauses = 1 + random.below(3);
  for (std::uint32_t i = 0; i < clauses; ++i) {
    if (!line.empty()) line += i == 0 ? " " : "; ";
    if (random.chance(0.3)) {
      line += any(random, of_her);
    } else {
      if (random.chance(0.7)) line += any(random, feet) + " ";
      line += any(random, said);
    }
  }
  return line;
}

std::vector<std::string> day_of(std::uint64_t seed) {
  RandomStream random(seed, 7);
  std::vector<std::string> lines(4 + random.below(8));
  for (std::string& line : lines) line = line_of(random);
  return lines;
}

/// Somebody is called, and all that follows may be meant for what stands right before it.
std::vector<std::string> corrected_day_of(std::uint64_t seed) {
  RandomStream random(seed, 9);
  std::vector<std::string> lines(3 + random.below(4));
  for (std::string& line : lines) line = any(random, right_behind);
  lines.front() = any(random, called_first);
  // Of whom nothing is said after it, the recording broke off.
  lines.emplace_back("done");
  return lines;
}

std::string text_of(std::span<const std::string> lines) {
  std::string text;
  for (const std::string& line : lines) text += "\n  " + line;
  return text;
}

/// One farm that was visited before, and today's visit.
class Crush {
 public:
  Crush() {
    workplace_.visited("2026-10-06", last_time);
    visit_ = workplace_.start();
  }

  Recording open() { return workplace_.record(visit_); }

  void check_stored(const Result<Reply>& reply) {
    REQUIRE(reply.ok());
    for (const ReplyItem& item : reply.value().items) {
      if (item.kind != ReplyKind::saved) continue;
      REQUIRE(item.entry);
      CHECK(workplace_.store.find_entry(*item.entry).value().has_value());
    }
  }

  /// What the log says of today, without what differs by run: ids and times.
  std::vector<std::string> log() {
    std::vector<std::string> lines;
    REQUIRE(workplace_.store
                .read_everything([&lines](const Entry& entry) {
                  // What is asked about without harm may be asked once more.
                  if (entry.envelope.kind == NewsUnread::kind) return true;
                  lines.push_back(entry.envelope.kind);
                  if (const auto turn = body_as<TurnRecorded>(entry)) {
                    for (std::string& line : print_turn(turn->turn, english())) {
                      lines.push_back(std::move(line));
                    }
                    for (const std::string& called : turn->called_first) {
                      lines.push_back("called first: " + called);
                    }
                  }
                  if (const auto news = body_as<TaskClosedBody>(entry))
                    lines.push_back(news->words);
                  return true;
                })
                .ok());
    return lines;
  }

  /// Typed line by line; the program is opened anew before the line of that index, if one is given.
  std::vector<std::string> typed(std::span<const std::string> lines,
                                 std::optional<std::size_t> dies_before = {}) {
    Recording recording = open();
    for (std::size_t i = 0; i < lines.size(); ++i) {
      if (dies_before == i) recording = open();
      check_stored(recording.say(lines[i]));
    }
    check_stored(recording.end_of_visit());
    return log();
  }

  /// From a file. Whether every line of it was understood.
  bool from_file(std::span<const std::string> lines) {
    Recording recording = open();
    const Result<Reply> reply = recording.say_all(lines);
    check_stored(reply);
    check_stored(recording.end_of_input());
    return std::none_of(reply.value().items.begin(), reply.value().items.end(),
                        [](const ReplyItem& item) { return item.kind == ReplyKind::refused; });
  }

 private:
  Workplace workplace_;
  Visit visit_;
};

/// Typed with a battery that dies behind one of the lines, the day leaves what it leaves without.
void battery_dies_in(const std::vector<std::string>& lines, std::uint64_t seed) {
  const std::size_t behind =
      1 + RandomStream(seed, 8).below(static_cast<std::uint32_t>(lines.size() - 1));
  CAPTURE(seed);
  CAPTURE(text_of(lines));
  CAPTURE(behind);
  Crush whole;
  Crush broken;
  REQUIRE(text_of(broken.typed(lines, behind)) == text_of(whole.typed(lines)));
}

}  // namespace

TEST_CASE("a file that was understood adds nothing when it is given once more") {
  int understood = 0;
  for (const std::uint64_t seed : seeds_to_try()) {
    // Of few lines, for of many one is always refused.
    std::vector<std::string> lines = day_of(seed);
    lines.resize(2);
    CAPTURE(seed);
    CAPTURE(text_of(lines));
    Crush crush;
    if (!crush.from_file(lines)) continue;
    ++understood;
    const std::vector<std::string> once = crush.log();
    crush.from_file(lines);
    REQUIRE(text_of(crush.log()) == text_of(once));
  }
  CHECK((understood > 0 || seeds_to_try().size() == 1));
}

TEST_CASE("a battery that dies behind any line changes nothing of the day") {
  for (const std::uint64_t seed : seeds_to_try()) battery_dies_in(day_of(seed), seed);
}

TEST_CASE("a battery that dies among corrections changes nothing of the day") {
  for (const std::uint64_t seed : seeds_to_try()) battery_dies_in(corrected_day_of(seed), seed);
}

}  // namespace evenclaw::test
