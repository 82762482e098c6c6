#include "core/trade/second_failure.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

/// Whether the left hind of the last visit fails again.
bool fails(std::string_view text) {
  const ToldDay day = told_day(text);
  const Turn turn = settled(day.draft.turn, four_feet);
  const FootCall* call = find_foot(turn, Foot::lh);
  REQUIRE(call != nullptr);
  return fails_again(day.past.known.rows, *call, day.today);
}

}  // namespace

TEST_CASE("treatment fails again when a claw is blocked again a second time, or at a third visit") {
  const struct {
    const char* what;
    const char* said;
    bool fails;
  } table[] = {
      {"blocked again once",
       "412\nLH outside SU; block on inside\n---\n412\nLH blocked again inside", false},
      {"blocked again twice", "412\nLH blocked again inside\n---\n412\nLH blocked again inside",
       true},
      {"the other claw", "412\nLH blocked again inside\n---\n412\nLH blocked again outside", false},
      {"two visits with an ulcer", "412\nLH outside SU\n---\n412\nLH outside SU", false},
      {"three visits with an ulcer",
       "412\nLH outside SU\n---\n412\nLH outside SU\n---\n412\nLH outside SU", true},
      {"three visits, slight now",
       "412\nLH outside SU\n---\n412\nLH outside SU\n---\n412\nLH outside SU slight", false},
      {"three visits with a bruise",
       "412\nLH outside SH\n---\n412\nLH outside SH\n---\n412\nLH outside SH", false},
      {"healed in between",
       "412\nLH outside SU\n---\n412\nLH nothing found\n---\n412\nLH outside SU", false},
  };

  for (const auto& row : table) {
    CAPTURE(row.what);
    CHECK(fails(row.said) == row.fails);
  }
}

TEST_CASE("a block of half a year ago was for another story") {
  Rows past;
  ActionRow row;
  row.action = ActionKind::block_again;
  row.foot = Foot::lh;
  row.claw = Claw::inside;
  row.day = first_of_november - 120;
  past.actions = {row};
  CHECK(blocked_again_before(past, Foot::lh, Claw::inside, first_of_november) == row.day);
  CHECK_FALSE(blocked_again_before(past, Foot::lh, Claw::inside, first_of_november + 1));
  CHECK_FALSE(blocked_again_before(past, Foot::rh, Claw::inside, first_of_november));
}
