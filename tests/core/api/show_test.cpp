#include "core/api/show.hpp"

#include <doctest/doctest.h>

#include "core/api/identities.hpp"
#include "core/api/sheet.hpp"
#include "core/api/told.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

Result<CowShown> shown(Workplace& place, std::string_view said) {
  return show_cow(place.store, place.herd().herd, said, day("2026-10-27"));
}

using Lines = std::vector<std::string>;

}  // namespace

TEST_CASE("what was said of all of her is told with why she came and how she walks") {
  Workplace place;
  (void)place.visited("2026-10-27",
                      {"412 fresh, lame LH; mobility 2 of 3",
                       "whole cow; to straw; marked with paint; cull advised; see again 14d",
                       "note kicks", "LH outside bruise, slight", "rest fine", "done"});
  const CowShown cow = shown(place, "412").value();
  REQUIRE(cow.of_her.size() == 1);
  const TurnSeen& turn = cow.of_her[0];
  CHECK(turn.came == "fresh, lame on left hind");
  CHECK(turn.walked == "mobility 2 of 3");
  CHECK(turn.acts ==
        Lines{"to straw", "marked (paint)", "culling advised", "see again by Tue 10 Nov"});
  CHECK(turn.note == "kicks");
  CHECK(turn.end == TurnEnd::done);
}

TEST_CASE("a turn that was not done is told with the reason, and nothing is made up for it") {
  Workplace place;
  (void)place.visited("2026-10-27", {"412 not done, ran out of time", "413 walks sound", "done"});
  const CowShown cow = shown(place, "412").value();
  REQUIRE(cow.of_her.size() == 1);
  CHECK(cow.of_her[0].end == TurnEnd::not_done);
  CHECK(cow.of_her[0].end_reason == "ran out of time");
  CHECK(cow.of_her[0].came.empty());
  CHECK(cow.of_her[0].walked.empty());
  CHECK(cow.feet.empty());
  CHECK(shown(place, "413").value().of_her.at(0).walked == "walks sound");
}

TEST_CASE("a foot tells its note and the claw that is missing") {
  Workplace place;
  (void)place.visited("2026-10-27", {"412 LH outside claw missing; note soft horn", "done"});
  const CowShown cow = shown(place, "412").value();
  REQUIRE(cow.feet.size() == 1);
  CHECK(cow.feet[0].missing == "outside claw missing");
  CHECK(cow.feet[0].acts.empty());
  CHECK(cow.feet[0].note == "soft horn");
}

TEST_CASE("a number that stands only among two numbers in doubt names that cow") {
  Workplace place;
  (void)place.visited("2026-10-27", {"159 or 195 fresh", "nothing found", "done"});
  const auto cow = shown(place, "159");
  REQUIRE_FALSE(cow);
  CHECK(cow.faults().front().slug == "cow-not-found");
  CHECK(cow.faults().front().message ==
        "No cow of this herd is known as 159. In doubt, and may be her: 159 or 195 (seen 27 Oct).");
  CHECK(shown(place, "195?").faults().front().message.find("159 or 195") != std::string::npos);
  CHECK(shown(place, "15").faults().front().message.find("159 or 195") == std::string::npos);
}

TEST_CASE("a known cow names the one in doubt that may be her until that one has a number") {
  Workplace place;
  (void)place.visited("2026-10-20", {"159 nothing found", "done"});
  (void)place.visited("2026-10-27", {"159 or 195 fresh", "nothing found", "done"});
  const CowShown cow = shown(place, "159").value();
  REQUIRE(cow.may_be_her.size() == 1);
  CHECK(cow.may_be_her[0].called == "159 or 195");
  const HerdId herd = place.herd().herd;
  (void)give_number(place.ports(), herd, {cow.may_be_her[0].cow, "195", day("2026-10-27")}, false)
      .value();
  CHECK(shown(place, "159").value().may_be_her.empty());
}

TEST_CASE("news that stood behind a refused line names the cow it is of") {
  Workplace place;
  (void)place.visited("2026-10-20", {"563 RH outside SU; block on inside", "done"});
  (void)place.visited("2026-10-27",
                      {"563 block on", "RH block still on", "411 nothing found", "done"});
  const CowShown cow = shown(place, "563").value();
  REQUIRE(cow.news.size() == 1);
  CHECK(cow.news[0].words == "563 RH block still on");
}

TEST_CASE("of two cows who were called by the same words one is shown and the other named") {
  Workplace place;
  (void)place.visited("2026-10-27", {"no number, black with one horn", "LH SU", "done",
                                     "no number, black with one horn", "LH DD", "done"});
  const CowShown one = shown(place, "black with one horn").value();
  REQUIRE(one.called_alike.size() == 1);
  const CowShown other = shown(place, to_text(one.called_alike[0].cow)).value();
  CHECK(other.cow.cow != one.cow.cow);
  CHECK(other.cow_said == "black with one horn");
}

TEST_CASE("a visit that was ended lists what is still asked of it, until it is answered") {
  Workplace place;
  const VisitEnded ended =
      place.visited("2026-10-27", {"66 wrap off", "412 LH bruise, slight", "done"});
  const VisitShown visit = show_visit(place.ports(), ended.visit).value();
  CHECK(visit.open.size() == ended.open.size());
  CHECK(visit.cows == 1);
  CHECK(show_herd(place.store, place.herd().herd).value().open.size() == ended.open.size());
  (void)place.visited("2026-10-27", {"412 LH outside bruise, slight, toe", "done"});
  const VisitShown after = show_visit(place.ports(), ended.visit).value();
  CHECK(after.open.size() == ended.open.size() - 1);
}

TEST_CASE("the farm's sheet asks what became of news nobody could be sure of, not who called") {
  Workplace place;
  const VisitEnded ended =
      place.visited("2026-10-27", {"caller Anneke", "66 wrap off", "412 nothing found", "done",
                                   "caller Anneka", "413 nothing found", "done"});
  REQUIRE(ended.open.size() == 2);
  const std::string sheet =
      make_sheet(place.ports(), ended.visit, day("2026-10-27"), {"0.1", {}}).value().text;
  const std::size_t asked = sheet.find("Still asked");
  REQUIRE(asked != std::string::npos);
  CHECK(sheet.find("66 \"66 wrap off\": No cow of this herd carries the number 66.", asked) !=
        std::string::npos);
  CHECK(sheet.find("was read as") == std::string::npos);
}

}  // namespace evenclaw::test
