#include "cli/answer.hpp"
#include "cli/columns.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/transfer.hpp"

namespace evenclaw::cli {
namespace {

constexpr Example examples[] = {
    {"evenclaw check", "verifies every entry, every count, and the file itself"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<CheckedStore>}};

void print(const CheckedStore& checked) {
  std::cout << counted(checked.entries, "entry", "entries") << " verified";
  if (checked.redacted > 0) std::cout << ", " << checked.redacted << " with contents taken away";
  if (checked.unknown_kinds > 0) {
    std::cout << ", " << checked.unknown_kinds << " of kinds a newer version knows";
  }
  std::cout << '\n';
  for (const CheckFinding& finding : checked.findings) std::cout << "  " << finding.words << '\n';
  std::cout << (checked.findings.empty() ? "All is well.\n" : "Not as it should be, see above.\n");
}

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
  auto checked = check_store((*records)->store());
  if (!checked) return tell_faults(checked.faults(), invocation);
  if (invocation.json) {
    print_json(*checked);
  } else {
    print(*checked);
  }
  return checked->findings.empty() ? Exit::fine : Exit::damaged;
}

}  // namespace

extern const Command check_command = {
    "check", "verify that the records are whole", {}, {}, examples, run, answers};

}  // namespace evenclaw::cli
