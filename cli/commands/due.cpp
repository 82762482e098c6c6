#include "core/api/due.hpp"

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/due_text.hpp"
#include "cli/records.hpp"

namespace evenclaw::cli {
namespace {

constexpr Option options[] = {{"--herd", "HERD", "one herd only"}};
constexpr Example examples[] = {
    {"evenclaw due", "who has to do what, by when, in all herds"},
    {"evenclaw due --herd home --today 2026-11-26", "one herd, as it stands on that day"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<DueList>}};

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
  auto herd = (*records)->herd_named(invocation);
  if (!herd) return tell_faults(herd.faults(), invocation);
  const auto id = herd->has_value() ? std::optional<HerdId>((*herd)->herd) : std::nullopt;
  auto list = list_due((*records)->store(), id, (*records)->today());
  if (!list) return tell_faults(list.faults(), invocation);
  if (invocation.json) {
    print_json(*list);
  } else {
    std::cout << due_text(*list);
  }
  return Exit::fine;
}

}  // namespace

extern const Command due_command = {
    "due", "what is open, who does it, by when", {}, options, examples, run, answers};

}  // namespace evenclaw::cli
