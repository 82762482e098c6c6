#include <filesystem>

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/copied.hpp"
#include "store/sqlite/backup.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"FILE", "the backup"}};
constexpr Example examples[] = {
    {"evenclaw restore /media/stick/evenclaw-2026-11-24.db --file ~/restored.db",
     "makes the records anew from a backup; never over a file that is there"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<FileAnswer>}};

Exit run(const Invocation& invocation) {
  std::error_code ignored;
  const auto folder = std::filesystem::path(invocation.file).parent_path();
  if (!folder.empty()) std::filesystem::create_directories(folder, ignored);
  auto restored = restore(invocation.operands.front(), invocation.file);
  if (!restored) return tell_faults(restored.faults(), invocation);
  return tell_copied(
      invocation, invocation.file,
      "restored to " + invocation.file + "; it counts as a device of its own from now on");
}

}  // namespace

extern const Command restore_command = {
    "restore", "make the records anew from a backup", operands, {}, examples, run, answers};

}  // namespace evenclaw::cli
