#include <fstream>

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/transfer.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"FILE", "a log that another device gave out"}};
constexpr Example examples[] = {
    {"evenclaw take-in tablet.jsonl", "joins the log of another device; again changes nothing"}};

constexpr std::size_t longest_entry = 4U * 1024U * 1024U;

LineSource lines_from(std::ifstream& stream) {
  return [&stream]() -> Result<std::optional<std::string>> {
    std::string line;
    if (!std::getline(stream, line)) {
      if (stream.bad()) return Fault{"disk-failed", "the log could not be read to its end"};
      return std::optional<std::string>();
    }
    if (line.size() > longest_entry) line.resize(longest_entry);  // set aside as unreadable
    return std::optional<std::string>(std::move(line));
  };
}

void print(const TakenIn& taken) {
  std::cout << taken.stored << " new, " << taken.already << " there already";
  if (taken.redacted > 0) std::cout << ", " << taken.redacted << " lost their contents";
  if (taken.two_versions > 0) std::cout << ", " << taken.two_versions << " in two versions";
  std::cout << ", " << taken.set_aside << " set aside\n";
  for (const SetAside& aside : taken.reasons) {
    std::cout << "  line " << aside.line << ": " << aside.reason << " (" << aside.slug << ")\n";
  }
}

Exit run(const Invocation& invocation) {
  std::ifstream stream(invocation.operands.front(), std::ios::binary);
  if (!stream) {
    return tell_faults({{"file-not-found", "there is no file " + invocation.operands.front(),
                         invocation.operands.front(), 0, 0, ""}},
                       invocation);
  }
  auto records = Records::open(invocation, Opening::create);
  if (!records) return tell_faults(records.faults(), invocation);
  auto taken = take_in((*records)->ports(), lines_from(stream));
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
    "take-in", "join the log of another device", operands, {}, examples, run};

}  // namespace evenclaw::cli
