#include "core/sheets/cow_track.hpp"

#include <doctest/doctest.h>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

Track track_on(InventedDay& day) {
  const VisitView view = view_of(day.input(), english_wording());
  return track_of(view.cows.at(0), day.input().visit.day, day.input().visit.todays_feet);
}

}  // namespace

TEST_CASE("a lesion of the horn fills the claw it was called on") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::su, Place::sole_middle});
  const FootMark mark = mark_of(track_on(day), Foot::lh);
  CHECK(mark.outside.found);
  CHECK_FALSE(mark.inside.found);
  CHECK_FALSE(mark.outside.may_be_here);
}

TEST_CASE("a claw nobody called is not guessed") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::not_called, Lesion::su});
  const FootMark mark = mark_of(track_on(day), Foot::lh);
  CHECK_FALSE(mark.outside.found);
  CHECK_FALSE(mark.inside.found);
  CHECK(mark.outside.may_be_here);
  CHECK(mark.inside.may_be_here);
}

TEST_CASE("a lesion of the skin stands where it was called") {
  const struct {
    Place place;
    bool FootMark::*where;
  } rows[] = {{Place::between, &FootMark::skin_between},
              {Place::in_front, &FootMark::skin_in_front},
              {Place::behind, &FootMark::skin_behind},
              {Place::not_called, &FootMark::skin_behind}};

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    day.found({Foot::rh, Claw::none, Lesion::dd, row.place});
    const FootMark mark = mark_of(track_on(day), Foot::rh);
    CHECK(mark.*row.where);
    CHECK_FALSE(mark.outside.found);
  }
}

TEST_CASE("lesions of earlier visits are counted where they were, today's are not") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.found({Foot::lh, Claw::outside, Lesion::wla});
  day.earlier({Foot::lh, Claw::inside, Lesion::su}, 80);
  day.earlier({Foot::lh, Claw::inside, Lesion::sh}, 200);
  day.earlier({Foot::lh, Claw::none, Lesion::dd, Place::behind}, 30);
  const FootMark mark = mark_of(track_on(day), Foot::lh);
  CHECK(mark.outside.earlier == 0);
  CHECK(mark.inside.earlier == 2);
  CHECK(mark.skin_earlier == 1);
}

TEST_CASE("blocks and wraps that are on her are drawn") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.did({ActionKind::block_on, Foot::lh, Claw::inside});
  day.put_on(Fixture::wrap, Foot::rh, Claw::none, 5);
  day.put_on(Fixture::block, Foot::rh, Claw::inside, 30).ended = FixtureEnd::unknown;
  const Track track = track_on(day);
  CHECK(mark_of(track, Foot::lh).inside.block == Fitted::yes);
  CHECK(mark_of(track, Foot::lh).outside.block == Fitted::no);
  CHECK(mark_of(track, Foot::rh).wrap == Fitted::yes);
  CHECK(mark_of(track, Foot::rh).inside.block == Fitted::in_doubt);
}

TEST_CASE("a block of which nobody called the claw is in doubt on both") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.put_on(Fixture::block, Foot::rh, Claw::not_called, 9);
  const FootMark mark = mark_of(track_on(day), Foot::rh);
  CHECK(mark.outside.block == Fitted::in_doubt);
  CHECK(mark.inside.block == Fitted::in_doubt);
}

TEST_CASE("a wrap that was asked about and that nobody answered for is not drawn as on") {
  const struct {
    const char* decision;
    Fitted drawn;
  } rows[] = {
      {"", Fitted::in_doubt}, {"go ahead", Fitted::in_doubt}, {"LH wrap still on", Fitted::yes}};

  for (const auto& row : rows) {
    InventedDay day("Hollow Meadow");
    day.turn("412");
    day.put_on(Fixture::wrap, Foot::lh, Claw::none, 9);
    day.warned(Rank::ask, "Wrap on left hind since 15 Nov (9 d): still on?", row.decision);
    day.input().warnings.back().shown.warning.rule = "still-on-not-mentioned";
    day.input().warnings.back().shown.warning.foot = Foot::lh;
    CHECK_MESSAGE(mark_of(track_on(day), Foot::lh).wrap == row.drawn, row.decision);
  }
}

TEST_CASE("feet not meant for today are not asked about") {
  InventedDay day("Hollow Meadow", hind_feet);
  day.turn("412");
  const Track track = track_on(day);
  CHECK_FALSE(mark_of(track, Foot::lf).todays);
  CHECK(mark_of(track, Foot::lh).todays);
}

TEST_CASE("blisters are drawn on the skin, pus of a claw on that claw") {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  day.foot(Foot::lh, FootState::finding);
  day.did({ActionKind::blisters, Foot::lh});
  day.foot(Foot::rh, FootState::finding);
  day.did({ActionKind::pus_above, Foot::rh, Claw::outside});
  const Track track = track_on(day);
  CHECK(mark_of(track, Foot::lh).skin_in_front);
  CHECK(mark_of(track, Foot::rh).outside.found);
  CHECK_FALSE(mark_of(track, Foot::rh).inside.found);
}

}  // namespace evenclaw
