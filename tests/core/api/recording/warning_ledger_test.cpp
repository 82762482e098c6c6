#include "core/api/recording/warning_ledger.hpp"

#include <doctest/doctest.h>

#include "core/trade/check.hpp"

using namespace evenclaw;

namespace {

Warning warning_of(Rank rank) {
  return {"a-rule", rank, Foot::lh, Claw::none, "Words.", {}};
}

}  // namespace

TEST_CASE("go ahead answers a question and leaves a note as it is") {
  WarningLedger ledger;
  Warning note = warning_of(Rank::note);
  note.rule = "a-note";
  (void)ledger.update({warning_of(Rank::ask), note}, "LH block on");
  CHECK(ledger.go_ahead() == 1);
  CHECK(ledger.shown()[0].decision == went_ahead);
  CHECK(ledger.shown()[1].decision.empty());
}

TEST_CASE("a note needs no answer, and what is said later takes it away") {
  WarningLedger ledger;
  (void)ledger.update({warning_of(Rank::note)}, "rest fine");
  CHECK(ledger.unanswered().empty());
  (void)ledger.update({}, "pain relief given");
  CHECK(ledger.shown()[0].decision == "pain relief given");
}

TEST_CASE("what was told of her wrap outside the crush holds when she is called again") {
  Warning wrap = warning_of(Rank::ask);
  wrap.rule = "still-on-not-mentioned";
  wrap.answers = {"LH wrap still on"};
  REQUIRE(fixture_asked_about(wrap));
  const std::vector<WarningShown> recorded = {{wrap, "412 wrap still on"}};
  const std::vector<std::string> said = {"412 nothing found"};
  WarningLedger told(recorded, said);
  CHECK(told.update({}, "412").empty());  // not yet finished
  CHECK(told.update({wrap}, "412 go ahead").empty());
  CHECK(told.unanswered().empty());

  const std::vector<std::string> said_in_the_crush = {"412 nothing found", "412 wrap still on"};
  WarningLedger taken_back(recorded, said_in_the_crush);
  CHECK(taken_back.update({wrap}, "no, no wrap").size() == 1);
}

TEST_CASE("what is still missing once one of the two was told is asked anew, in its own words") {
  Warning both = warning_of(Rank::ask);
  both.rule = withdrawal_missing_rule;
  both.words = "What withdrawal?";
  Warning meat = both;
  meat.words = "What meat withdrawal?";
  WarningLedger ledger;
  (void)ledger.update({both}, "given bluemix");
  const std::vector<Warning> asked = ledger.update({meat}, "milk 4d");
  REQUIRE(asked.size() == 1);
  CHECK(asked[0].words == "What meat withdrawal?");
  CHECK(ledger.unanswered() == std::vector<Warning>{meat});
  CHECK(ledger.update({meat}, "rest fine").empty());
}
