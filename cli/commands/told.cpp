#include "core/api/told.hpp"

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "cli/reply_printer.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"WORDS", "what the farm says, as a called line", true, true}};
constexpr Option options[] = {{"--herd", "HERD", "the herd, when there are several"}};
constexpr Example examples[] = {
    {"evenclaw told \"412, 513 wraps off; 77 gone; 620 still lame\" --herd home",
     "settles what became of last time's work, between visits too"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<Reply>}};

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  auto herd = (*records)->herd_meant(invocation);
  if (!herd) return tell_faults(herd.faults(), invocation);
  auto reply = take_news((*records)->ports(), *herd, (*records)->today(), invocation.words_from(0),
                         english());
  if (!reply) return tell_faults(reply.faults(), invocation);
  if (invocation.json) {
    print_json(*reply);
  } else {
    ReplyPrinter(false).print(*reply);
  }
  return exit_after(reply->items);
}

}  // namespace

extern const Command told_command = {
    "told", "what became of wraps, blocks and lame cows", operands, options, examples, run,
    answers};

}  // namespace evenclaw::cli
