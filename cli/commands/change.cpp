#include "cli/commands.hpp"
#include "cli/farm_lines.hpp"
#include "core/api/farm/change_desk.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {
    {"FILE", "a file of lines about changes; - or nothing: what is typed or piped", false}};
constexpr Option options[] = {{"--herd", "HERD", "the herd, when there are several"},
                              {"--day", "DAY", "the day it is told; else today"},
                              {"--by", "NAME", "who told it"},
                              {"--writer", "NAME", "who types"},
                              {"--sure", "", "a name that nobody has yet is meant so"}};
constexpr Example examples[] = {
    {"evenclaw change home.changes --herd home", "a file; given again, nothing is recorded twice"},
    {"printf 'footbath: copper; planned; decided 1 Oct\\n' | evenclaw change -",
     "what was altered, why, when it was decided, whether it is finished, for whom"},
    {"printf 'footbath finished 20 Nov\\n' | evenclaw change -",
     "later: the change of the footbath that was going on is whole now"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::lines, field_docs<ReplyItem>}};

Exit run(const Invocation& invocation) {
  return take_at_desk<ChangeDesk>(
      invocation, {"Changes of", "What was altered first, then why and when.", "change> "});
}

}  // namespace

extern const Command change_command = {
    "change", "what the farm altered, why, and when", operands, options, examples, run, answers};

}  // namespace evenclaw::cli
