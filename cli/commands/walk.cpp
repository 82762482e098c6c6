#include "cli/commands.hpp"
#include "cli/farm_lines.hpp"
#include "core/api/farm/walk_desk.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {
    {"FILE", "a file of lines of a walk; - or nothing: what is typed or piped", false}};
constexpr Option options[] = {{"--herd", "HERD", "the herd, when there are several"},
                              {"--day", "DAY", "the day of the walk; else today"},
                              {"--by", "NAME", "who looked"},
                              {"--writer", "NAME", "who types"},
                              {"--sure", "", "a name that nobody has yet is meant so"}};
constexpr Example examples[] = {
    {"evenclaw walk --by Anna",
     "type line by line: \"cubicles 115 wide 180 long, 10 looked at\", \"132 cows 120 cubicles\""},
    {"evenclaw walk home.walk --herd home --day 2026-11-23",
     "a file; given again, nothing is recorded twice"},
    {"printf 'footbath 3 m by 50, 10 deep, 180 through\\n' | evenclaw walk -",
     "a pipe; each measure with what it is compared with, and the source of that"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::lines, field_docs<ReplyItem>}};

Exit run(const Invocation& invocation) {
  return take_at_desk<WalkDesk>(invocation,
                                {"Walking round", "What was measured, in its unit.", "walk> "});
}

}  // namespace

extern const Command walk_command = {
    "walk", "what was measured on a walk round the farm", operands, options, examples, run,
    answers};

}  // namespace evenclaw::cli
