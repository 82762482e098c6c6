#include "cli/commands.hpp"
#include "cli/farm_lines.hpp"
#include "core/api/farm/scoring_desk.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {
    {"FILE", "a file of scoring lines; - or nothing: what is typed or piped", false}};
constexpr Option options[] = {{"--herd", "HERD", "the herd, when there are several"},
                              {"--day", "DAY", "the day they were watched; else today"},
                              {"--by", "NAME", "who scored"},
                              {"--writer", "NAME", "who types"},
                              {"--sure", "", "a name that nobody has yet is meant so"}};
constexpr Example examples[] = {
    {"evenclaw score --by Anna",
     "type line by line: \"scale 0 to 3\", \"132 present\", \"412 2\", \"413 3 LH\", \"40 at 0\""},
    {"evenclaw score monday.scores --herd home --day 2026-11-23",
     "a file; given again, nothing is recorded twice"},
    {"printf 'scale 1 to 5\\n412 2\\nno, 412 3\\n' | evenclaw score -",
     "a pipe; the second score takes the place of the first"}};
constexpr JsonAnswer answers[] = {{"", JsonForm::lines, field_docs<ReplyItem>}};

Exit run(const Invocation& invocation) {
  return take_at_desk<ScoringDesk>(invocation, {"Scoring", "Say the scale first.", "score> "});
}

}  // namespace

extern const Command score_command = {
    "score", "how cows walk: mobility scores by number", operands, options, examples, run, answers};

}  // namespace evenclaw::cli
