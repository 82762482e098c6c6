#include "store/sqlite/backup.hpp"

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/copied.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"FILE", "the new file that holds the copy"}};
constexpr Example examples[] = {
    {"evenclaw backup /media/stick/evenclaw-2026-11-24.db",
     "a copy that was read back and compared, also while recording goes on"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<FileAnswer>}};

Exit run(const Invocation& invocation) {
  const std::string& to = invocation.operands.front();
  auto copied = back_up(invocation.file, to);
  if (!copied) return tell_faults(copied.faults(), invocation);
  return tell_copied(invocation, to, "backed up to " + to + " and read back");
}

}  // namespace

extern const Command backup_command = {
    "backup", "a verified copy of the records", operands, {}, examples, run, answers};

}  // namespace evenclaw::cli
