#include "core/trade/past_finding.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

PastFinding ulcer() {
  PastFinding told;
  told.day = Day{20'000};
  told.foot = Foot::lh;
  told.claw = Claw::outside;
  told.lesion = Lesion::su;
  told.words = "A";
  return told;
}

}  // namespace

TEST_CASE("a finding told in other words is the same, one of another foot is not") {
  PastFinding other = ulcer();
  other.words = "Rusterholz";
  other.remark = "block";
  CHECK(is_same_finding(ulcer(), other));
  CHECK_FALSE(is_told_before(ulcer(), other));
  CHECK_FALSE(is_told_before(other, ulcer()));
  other.foot = Foot::rh;
  CHECK_FALSE(is_same_finding(ulcer(), other));
  CHECK(is_told_before(ulcer(), other));
}

TEST_CASE("a foot that no list told stands before those that were told") {
  PastFinding untold = ulcer();
  untold.foot.reset();
  CHECK(is_told_before(untold, ulcer()));
  CHECK_FALSE(is_same_finding(untold, ulcer()));
}

TEST_CASE("texts told of one finding stand together, each once, whatever came first") {
  CHECK(told_together("", "block") == "block");
  CHECK(told_together("spray", "block") == "block / spray");
  CHECK(told_together("block", "spray") == "block / spray");
  CHECK(told_together("block / spray", "spray") == "block / spray");
  CHECK(told_together("spray / block", "") == "block / spray");
  CHECK(told_together(" /  / ", "").empty());
}

TEST_CASE("texts told together once stay as they are when any of them is told again") {
  const std::string all = told_together("b / a", "c / a / ");
  CHECK(told_together(all, all) == all);
  CHECK(told_together(all, "c") == all);
  CHECK(told_together("", all) == all);
}

TEST_CASE("a row tells what the list told") {
  PastFindingRow row;
  row.day = Day{20'000};
  row.position = 2;
  row.foot = Foot::lh;
  row.claw = Claw::outside;
  row.lesion = Lesion::su;
  row.words = "A";
  CHECK(finding_of(row) == ulcer());
}
