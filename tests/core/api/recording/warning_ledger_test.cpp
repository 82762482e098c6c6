#include "core/api/recording/warning_ledger.hpp"

#include <doctest/doctest.h>

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
