#include "core/trade/told_ends.hpp"

#include <doctest/doctest.h>

#include "core/trade/medicine_use.hpp"
#include "tests/core/trade/told_lines.hpp"
#include "tests/core/trade/told_medicine.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

/// What is said of ends that are told shorter than the list's, milk 2d and meat 5d of slowmix.
Names shorter_ends_in(std::string_view text) {
  return told_shorter_than_listed(
      with_medicines(told_day(text).draft.turn, invented_list(), first_of_november),
      first_of_november);
}

ActionRow act_until(ActionKind kind, int day) {
  ActionRow row;
  row.action = kind;
  row.milk_till = first_of_november + day;
  return row;
}

}  // namespace

TEST_CASE("an end of milk told shorter than the list states is said to be shorter") {
  CHECK(shorter_ends_in("412\nLH DD raw; spray with slowmix; milk withheld 1d") ==
        Names{"milk told till 2 Nov evening, the list states 3 Nov evening: the later holds"});
}

TEST_CASE("an end told as long as the list states, or longer, is taken in silence") {
  CHECK(shorter_ends_in("412\nLH DD raw; spray with slowmix; milk withheld 2d").empty());
  CHECK(shorter_ends_in("412\nLH DD raw; spray with slowmix; milk withheld 9d").empty());
  CHECK(shorter_ends_in("412\nLH DD raw; spray with greenmix; milk withheld 1d").empty());
}

TEST_CASE("both ends told short are said to be shorter, milk first") {
  CHECK(shorter_ends_in("412\nLH DD raw; spray with slowmix; withdrawal 1d").size() == 2);
}

TEST_CASE("every page tells the later end of what was told by mouth") {
  std::vector<ActionRow> rows = {act_until(ActionKind::injected, 5),
                                 act_until(ActionKind::milk_withheld, 3)};
  let_later_ends_hold(rows);
  CHECK(rows[1].milk_till == first_of_november + 5);
}

TEST_CASE("an end told by mouth that is the later one stays as it was told") {
  std::vector<ActionRow> rows = {act_until(ActionKind::injected, 3),
                                 act_until(ActionKind::milk_withheld, 5)};
  let_later_ends_hold(rows);
  CHECK(rows[0].milk_till == first_of_november + 3);
  CHECK(rows[1].milk_till == first_of_november + 5);
}

TEST_CASE("another turn moves no end") {
  std::vector<ActionRow> rows = {act_until(ActionKind::injected, 5),
                                 act_until(ActionKind::milk_withheld, 3)};
  rows[0].turn.value.bytes[0] = 1;
  let_later_ends_hold(rows);
  CHECK(rows[1].milk_till == first_of_november + 3);
}

TEST_CASE("no withdrawal told beside what the list states is said not to hold") {
  CHECK(shorter_ends_in("412\nLH DD raw; spray with slowmix; no withdrawal") ==
        Names{"no withdrawal told, the list states milk till 3 Nov evening and meat till 6 Nov: "
              "the list holds"});
  CHECK(shorter_ends_in("412\nLH DD raw; spray with greenmix; no withdrawal").empty());
}

TEST_CASE("no page says no withdrawal beside what the list holds back") {
  std::vector<ActionRow> rows = {act_until(ActionKind::spray, 5), ActionRow{}};
  rows[1].action = ActionKind::no_withdrawal;
  let_later_ends_hold(rows);
  CHECK(rows.size() == 1);
}

TEST_CASE("no withdrawal stays where nothing is held back, or only by mouth") {
  std::vector<ActionRow> rows = {act_until(ActionKind::milk_withheld, 5), ActionRow{}};
  rows[1].action = ActionKind::no_withdrawal;
  let_later_ends_hold(rows);
  CHECK(rows.size() == 2);
}
