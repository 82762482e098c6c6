#include <deque>

#include "cli/answer.hpp"
#include "cli/columns.hpp"
#include "cli/commands.hpp"
#include "cli/line_source.hpp"
#include "cli/records.hpp"
#include "core/api/transfer.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"FILE", "a log that another device gave out"}};
constexpr Example examples[] = {
    {"evenclaw take-in all.jsonl --file new.db",
     "a whole log into a file that is not there yet: the same business on another device"},
    {"evenclaw take-in tablet.jsonl", "joins the log of another device; again changes nothing"},
    {"evenclaw take-in second.jsonl",
     "of a device that began with a copy (evenclaw restore); two that began apart stay two"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<TakenIn>}};

constexpr std::size_t longest_entry =
    std::size_t{4} * 1024 * 1024;  // a longer one is set aside unread

using NextLine = Result<std::optional<std::string>>;

/// The lines of a log, of which some may be looked at before they are taken.
class LogLines {
 public:
  explicit LogLines(LineReader& reader) : reader_(reader) {}

  NextLine next() {
    if (seen_.empty()) return read();
    std::string line = std::move(seen_.front());
    seen_.pop_front();
    return std::optional(std::move(line));
  }

  /// Whose log it is, by the first line that tells.
  Result<std::optional<BusinessId>> business() {
    while (seen_.size() < most_seen) {
      auto line = read();
      if (!line) return line.faults();
      if (!*line) break;
      seen_.push_back(**std::move(line));
      if (const auto business = business_of_line(seen_.back())) return business;
    }
    return std::optional<BusinessId>();
  }

 private:
  static constexpr std::size_t most_seen = 100;

  NextLine read() {
    auto line = reader_.next(1);
    if (!line) return line.faults();
    if (line->empty()) return std::optional<std::string>();
    return std::optional(std::move(line->front()));
  }

  LineReader& reader_;
  std::deque<std::string> seen_;
};

std::string joined(const std::vector<std::string>& names) {
  std::string words;
  for (const std::string& name : names) words += (words.empty() ? "" : " and ") + name;
  return words;
}

/// What two devices that began apart can do.
void print_began_apart(const TakenIn& taken) {
  const std::string names = joined(taken.same_name);
  if (taken.other_business > 0) {
    std::cout << "That device began on its own, so the two cannot be joined"
              << (names.empty() ? "" : ", although both have a herd called " + names) << ".\n"
              << "Begin it anew with a copy of this one. Here: evenclaw backup copy.db\n"
              << "There: evenclaw restore copy.db --file new.db, and record once more what only\n"
              << "that device has: evenclaw show herd tells what that is.\n";
  } else if (!names.empty()) {
    std::cout << "Two devices began a herd called " << names << " apart: these stay two herds.\n"
              << "Record the visits of one of them once more under the other: evenclaw herds\n";
  }
}

void print(const TakenIn& taken) {
  std::cout << taken.stored << " new, " << taken.already << " there already";
  if (taken.redacted > 0) std::cout << ", " << taken.redacted << " lost their contents";
  if (taken.two_versions > 0) std::cout << ", " << taken.two_versions << " in two versions";
  std::cout << ", " << taken.set_aside << " set aside\n";
  for (const SetAside& aside : taken.reasons) {
    std::cout << "  line " << aside.line;
    if (aside.column > 0) std::cout << ", column " << aside.column;
    std::cout << ": " << aside.reason << " (" << aside.slug << ")\n";
    if (!aside.remedy.empty()) std::cout << "    " << aside.remedy << '\n';
  }
  if (taken.newer > 0) {
    std::cout << counted(taken.newer, "entry was", "entries were")
              << " written by a newer version of this program. They are kept, and shown once this\n"
              << "program is updated.\n";
  }
  print_began_apart(taken);
}

Exit run(const Invocation& invocation) {
  auto reader = LineReader::of_file(invocation.operands.front(), longest_entry);
  if (!reader) return tell_faults(reader.faults(), invocation);
  LogLines lines(**reader);
  const auto business = lines.business();
  if (!business) return tell_faults(business.faults(), invocation);
  auto records = Records::open(invocation, Opening::create, *business);
  if (!records) return tell_faults(records.faults(), invocation);
  auto taken = take_in((*records)->ports(), [&lines] { return lines.next(); });
  if (!taken) return tell_faults(taken.faults(), invocation);
  if (invocation.json) {
    print_json(*taken);
  } else {
    print(*taken);
  }
  return taken->set_aside > 0 || taken->two_versions > 0 ? Exit::asked : Exit::fine;
}

}  // namespace

extern const Command take_in_command = {
    "take-in", "join the log of another device", operands, {}, examples, run, answers};

}  // namespace evenclaw::cli
