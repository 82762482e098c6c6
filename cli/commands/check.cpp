#include "cli/answer.hpp"
#include "cli/columns.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/transfer.hpp"
#include "store/sqlite/check_file.hpp"

namespace evenclaw::cli {
namespace {

constexpr Example examples[] = {
    {"evenclaw check", "verifies every page of the file, every entry and every count"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<CheckedStore>}};

CheckFinding finding_of(const Fault& fault) {
  CheckFinding finding{fault.slug, fault.message, std::nullopt};
  if (const auto entry = uuid_from_text(fault.token)) finding.entry = EntryId{*entry};
  return finding;
}

/// What the file says of itself; where its entries can be read, what they say of one another too.
CheckedStore checked_with(const FileReport& file, Result<CheckedStore> of_store) {
  CheckedStore checked;
  checked.entries = file.entries;
  for (const Fault& fault : file.damaged) checked.findings.push_back(finding_of(fault));
  if (!of_store) {
    for (const Fault& fault : of_store.faults()) checked.findings.push_back(finding_of(fault));
    for (const LogFlaw& flaw : file.flaws) checked.findings.push_back(finding_of(flaw));
    return checked;
  }
  of_store->findings.insert(of_store->findings.begin(), checked.findings.begin(),
                            checked.findings.end());
  return *std::move(of_store);
}

Result<CheckedStore> checked_entries(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::look);
  if (!records) return records.faults();
  return check_store((*records)->store());
}

void print(const FileReport& file, const CheckedStore& checked) {
  std::cout << (file.damaged.empty() ? "the file reads back whole\n"
                                     : "the file does not read back whole\n");
  std::cout << counted(checked.entries, "entry", "entries") << " verified";
  if (checked.redacted > 0) std::cout << ", " << checked.redacted << " with contents taken away";
  if (checked.unknown_kinds > 0) {
    std::cout << ", " << checked.unknown_kinds << " of kinds a newer version knows";
  }
  std::cout << '\n';
  for (const CheckFinding& finding : checked.findings) {
    std::cout << "  " << finding.words;
    if (finding.entry) std::cout << " (entry " << to_text(finding.entry->value) << ')';
    std::cout << '\n';
  }
  std::cout << (checked.findings.empty() ? "All is well.\n" : "Not as it should be, see above.\n");
}

Exit run(const Invocation& invocation) {
  // First, and only reading: what is damaged is looked at before anything else opens the file.
  const auto file = check_file(invocation.file);
  if (!file) return tell_faults(with_way_to_begin(file.faults()), invocation);
  auto of_store = checked_entries(invocation);
  const bool is_damage = !file->damaged.empty();
  if (!of_store && !is_damage) return tell_faults(of_store.faults(), invocation);
  const CheckedStore checked = checked_with(*file, std::move(of_store));
  if (invocation.json) {
    print_json(checked);
  } else {
    print(*file, checked);
  }
  return checked.findings.empty() ? Exit::fine : Exit::damaged;
}

}  // namespace

extern const Command check_command = {
    "check", "verify that the records are whole", {}, {}, examples, run, answers};

}  // namespace evenclaw::cli
