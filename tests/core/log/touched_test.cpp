#include <doctest/doctest.h>

#include <algorithm>

#include "core/log/picture.hpp"
#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {}  // namespace

TEST_CASE("a turn touches its cow, and its visit's row stays as it is") {
  Farm farm;
  farm.turn(cow_412, "2026-11-24", {});
  const Touched touched = touched_by(farm.last());
  CHECK(touched.cows == std::vector<CowId>{cow_412});
  CHECK(touched.visits.empty());
}

TEST_CASE("opening, correcting and closing touch the visit and no cow by themselves") {
  Farm farm;
  const VisitId visit = farm.visit("2026-11-24");
  farm.write(VisitCorrected{visit, day("2026-11-23"), std::nullopt});
  farm.write(VisitClosed{visit, {}});
  for (const Entry& entry : farm.entries()) {
    CHECK(touched_by(entry).visits == std::vector<VisitId>{visit});
    CHECK(touched_by(entry).cows.empty());
  }
}

TEST_CASE("an answer touches the cow it is of, news nobody could read touches nobody") {
  Farm farm;
  const VisitId visit = farm.visit("2026-11-24");
  farm.write(QuestionSettled{visit, day("2026-11-24"), "412", cow_412, std::nullopt, "both hold"});
  CHECK(touched_by(farm.last()).cows == std::vector<CowId>{cow_412});
  CHECK(touched_by(farm.last()).visits.empty());
  farm.write(
      NewsUnread{visit, day("2026-11-24"), "412", cow_412, "412 wrps of", "What was told?", {}});
  CHECK(touched_by(farm.last()).cows.empty());
}

TEST_CASE("what a list tells of a cow touches her alone") {
  Farm farm;
  farm.write(LifeTold{cow_412, {{LifeEvent::calved, day("2024-05-01")}}});
  CHECK(touched_by(farm.last()).cows == std::vector<CowId>{cow_412});
  farm.write(PastFindingsTold{cow_412, {{day("2024-05-01"), Foot::lh}}});
  CHECK(touched_by(farm.last()).cows == std::vector<CowId>{cow_412});
  CHECK(touched_by(farm.last()).visits.empty());
}

TEST_CASE("a union and its taking back touch both cows") {
  Farm farm;
  const EntryId same = farm.write(SameCow{cow_412, cow_named("413")});
  Envelope envelope = farm.next_envelope();
  envelope.subjects = farm.entry(same).envelope.subjects;
  farm.keep(entry_of(envelope, SameCowTakenBack{same}));
  for (const Entry& entry : farm.entries()) CHECK(touched_by(entry).cows.size() == 2);
}

TEST_CASE("a correction touches the cow it takes a turn from") {
  Farm farm;
  const EntryId wrong = farm.turn(cow_412, "2026-11-24", {});
  farm.correct(farm.entry(wrong), farm.turn_body(cow_named("421"), "2026-11-24", {}));
  const std::vector<CowId> cows = touched_by(farm.last()).cows;
  CHECK(cows.size() == 2);
  CHECK(std::count(cows.begin(), cows.end(), cow_412) == 1);
}

TEST_CASE("a redaction touches whatever its target touched, cow or visit") {
  Farm farm;
  farm.turn(cow_412, "2026-11-24", {});
  farm.redact(farm.last());
  const Touched touched = touched_by(farm.last());
  CHECK(std::count(touched.cows.begin(), touched.cows.end(), cow_412) == 1);
  const VisitId visit = farm.visit("2026-11-24");
  CHECK(std::count(touched.visits.begin(), touched.visits.end(), visit) == 1);
}

TEST_CASE("settings, devices and kinds nobody knows touch no picture") {
  Farm farm;
  farm.write(Setting{"language", "en"});
  Envelope envelope = farm.next_envelope();
  envelope.kind = "scored_by_camera";
  envelope.subjects = {cow_412.value};
  farm.keep(make_entry(envelope, "{}"));
  for (const Entry& entry : farm.entries()) {
    CHECK(touched_by(entry).cows.empty());
    CHECK(touched_by(entry).visits.empty());
  }
}

}  // namespace evenclaw
