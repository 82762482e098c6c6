#include "core/trade/call_line/recalled.hpp"

#include <string>
#include <vector>

#include "tests/core/trade/call_line/random_turn.hpp"
#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

/// What is on record once a line without a number was said of the turn.
std::string mended(const Turn& turn, Foot foot, const char* line) {
  TurnDraft draft = recalled(turn, foot);
  bool cow_open = true;
  const Faults faults = saying::say(draft, cow_open, line);
  if (!faults.empty()) return "refused: " + faults.front().message;
  return saying::joined(print_turn(draft.turn, english()));
}

}  // namespace

TEST_CASE("what was recorded of a foot is mended as if it had been said just now") {
  const Turn turn = settled(
      saying::turn_of({"412 lame LH", "LH outside SU bad; DD raw; block on inside; length 78 mm",
                       "trimmed; note kicks", "rest fine"}),
      hind_feet);

  const struct {
    const char* line;
    const char* reads;
  } rows[] = {
      {"no, right hind",
       "412 lame LH; rest fine // RH outside sole ulcer, bad; DD raw; block on inside; length 78 "
       "mm; "
       "trimmed; note: kicks"},
      {"no, no DD",
       "412 lame LH; rest fine // LH outside sole ulcer, bad; block on inside; length 78 mm; "
       "trimmed; "
       "note: kicks // RH nothing found"},
      {"no, chronic",
       "412 lame LH; rest fine // LH outside sole ulcer, bad; DD chronic; block on inside; length "
       "78 "
       "mm; trimmed; note: kicks // RH nothing found"},
  };

  for (const auto& row : rows) {
    CAPTURE(row.line);
    CHECK(mended(turn, Foot::lh, row.line) == row.reads);
  }
}

TEST_CASE("a turn that is taken up and not mended stays what it was") {
  const Turn turn = settled(saying::turn_of({"412 fresh; LH SU; wrap on; RH nothing found"}), {});
  for (const Foot foot : all_feet) CHECK(recalled(turn, foot).turn == turn);
  CHECK(recalled(turn, std::nullopt).turn == turn);
  CHECK(recalled(turn, std::nullopt).feet_named.empty());
}
