#include "cli/answer.hpp"
#include "cli/columns.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/transfer.hpp"

namespace evenclaw::cli {
namespace {

constexpr Example examples[] = {{"evenclaw rebuild", "makes all rows anew from the log"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<Rebuilt>}};

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  auto rebuilt = rebuild_picture((*records)->store(), {});
  if (!rebuilt) return tell_faults(rebuilt.faults(), invocation);
  if (invocation.json) {
    print_json(*rebuilt);
  } else {
    std::cout << counted(rebuilt->cows, "cow", "cows") << " and "
              << counted(rebuilt->visits, "visit", "visits") << " made anew from "
              << counted(rebuilt->entries, "entry", "entries") << '\n';
  }
  return Exit::fine;
}

}  // namespace

extern const Command rebuild_command = {
    "rebuild", "make all rows anew from the log", {}, {}, examples, run, answers};

}  // namespace evenclaw::cli
