#include "core/api/told.hpp"

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "cli/reply_printer.hpp"
#include "core/api/cow_names.hpp"
#include "core/api/settle.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"WORDS", "what the farm says, as a called line", true, true}};
constexpr Option options[] = {
    {"--herd", "HERD", "the herd, when there are several"},
    {"--answers", "WHOM",
     "the words settle what was asked of that cow at the end of a visit; or of caller or writer"},
    {"--sure", "", "a name that nobody has yet is meant so"}};
constexpr Example examples[] = {
    {"evenclaw told \"412, 513 wraps off; 77 gone; 620 still lame\" --herd home",
     "settles what became of last time's work, between visits too"},
    {"evenclaw told \"both hold\" --answers 412",
     "answers in any words: a foot called twice, news nobody could read"},
    {"evenclaw told \"told of the wrong cow\" --answers 96",
     "takes back what was told of her and asked about, with the task it made"},
    {"evenclaw told Anna --answers caller",
     "who it was that called, where a name was read as a known one"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::document, field_docs<Reply>}};

Result<Reply> told(Records& records, const Herd& herd, const Invocation& invocation) {
  const std::string words = invocation.words_from(0);
  if (!invocation.has("--answers")) {
    return take_news(records.ports(), herd, records.today(), words, records.language());
  }
  const std::string number = recorded_as(invocation.value("--answers"), records.language());
  return settle_questions(records.ports(),
                          {herd.herd, number, records.today(), words, invocation.has("--sure")});
}

Exit run(const Invocation& invocation) {
  auto records = Records::open(invocation, Opening::existing);
  if (!records) return tell_faults(records.faults(), invocation);
  auto herd = (*records)->herd_meant(invocation);
  if (!herd) return tell_faults(herd.faults(), invocation);
  auto reply = told(**records, *herd, invocation);
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
