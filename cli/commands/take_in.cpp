#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/line_source.hpp"
#include "cli/records.hpp"
#include "core/api/transfer.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"FILE", "a log that another device gave out"}};
constexpr Example examples[] = {
    {"evenclaw take-in tablet.jsonl", "joins the log of another device; again changes nothing"},
    {"evenclaw take-in second.jsonl",
     "of a device that began with a copy (evenclaw restore); two that began apart stay two"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<TakenIn>}};

constexpr std::size_t longest_entry =
    std::size_t{4} * 1024 * 1024;  // a longer one is set aside unread

LineSource lines_from(LineReader& reader) {
  return [&reader]() -> Result<std::optional<std::string>> {
    auto line = reader.next(1);
    if (!line) return line.faults();
    if (line->empty()) return std::optional<std::string>();
    return std::optional<std::string>(std::move(line->front()));
  };
}

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
    std::cout << "  line " << aside.line << ": " << aside.reason << " (" << aside.slug << ")\n";
  }
  print_began_apart(taken);
}

Exit run(const Invocation& invocation) {
  auto reader = LineReader::of_file(invocation.operands.front(), longest_entry);
  if (!reader) return tell_faults(reader.faults(), invocation);
  auto records = Records::open(invocation, Opening::create);
  if (!records) return tell_faults(records.faults(), invocation);
  auto taken = take_in((*records)->ports(), lines_from(**reader));
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
