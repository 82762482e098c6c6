#include "core/exchange/finding_line.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

using C = HerdColumn;

FindingRead read(std::vector<FindingCell> cells) {
  for (std::size_t at = 0; at < cells.size(); ++at) cells[at].column = at;
  const FindingScheme scheme =
      with_words_said(lesions_said("icar, A=SU, X=ignore").value(),
                      words_said("foot:1=LH outside, degree:0=ignore").value());
  return finding_in(cells, FindingWords(scheme));
}

/// "1: is no foot that is known", by the place of the cell.
std::string wrong_in(std::vector<FindingCell> cells) {
  std::string all;
  for (const FindingFault& fault : read(std::move(cells)).faults) {
    CHECK_FALSE(fault.remedy.empty());
    all += (all.empty() ? "" : "; ") + (fault.cell ? std::to_string(*fault.cell) : "line") + ": " +
           fault.what;
  }
  return all;
}

}  // namespace

TEST_CASE("the cells of a line make one finding, with the words as they stood") {
  const FindingRead line = read({{C::lesion, 0, "A"},
                                 {C::foot, 0, "1"},
                                 {C::place, 0, "zone 4"},
                                 {C::degree, 0, "bad"},
                                 {C::treatment, 0, "block"},
                                 {C::remark, 0, "seen late"}});
  REQUIRE(line.faults.empty());
  const PastFinding& finding = line.finding;
  CHECK(finding.lesion == Lesion::su);
  CHECK(finding.foot == Foot::lh);
  CHECK(finding.claw == Claw::outside);
  CHECK(finding.place == Place::sole_middle);
  CHECK(finding.zone == 4);
  CHECK(finding.degree == Degree::bad);
  CHECK(finding.words == "A");
  CHECK(finding.remark == "block; seen late");
}

TEST_CASE("what a list leaves out was not called, and a claw only where one makes sense") {
  CHECK(read({{C::lesion, 0, "SU"}}).finding.claw == Claw::not_called);
  CHECK(read({{C::lesion, 0, "DD"}}).finding.claw == Claw::none);
  CHECK(read({{C::lesion, 0, "SW"}}).finding.claw == Claw::none);
  CHECK_FALSE(read({{C::lesion, 0, "SU"}}).finding.foot);
  CHECK(read({{C::lesion, 0, "DD"}, {C::claw, 0, "outside"}}).finding.claw == Claw::outside);
}

TEST_CASE("a line without a lesion, or with a word that is passed over, tells of no finding") {
  CHECK(read({{C::foot, 0, "LH"}, {C::treatment, 0, "trimmed"}}).is_passed_over);
  CHECK(read({}).is_passed_over);
  CHECK(read({{C::lesion, 0, "X"}, {C::foot, 0, "nonsense"}}).is_passed_over);
  CHECK(read({{C::lesion, 0, "A"}, {C::degree, 0, "0"}}).is_passed_over);
  CHECK(wrong_in({{C::lesion, 0, "X"}, {C::foot, 0, "nonsense"}}).empty());
}

TEST_CASE("a degree or place of nothing is told") {
  CHECK(wrong_in({{C::degree, 0, "bad"}}) ==
        "line: no lesion stands in the line, and it tells of one");
  CHECK(wrong_in({{C::place, 0, "heel"}}) ==
        "line: no lesion stands in the line, and it tells of one");
}

TEST_CASE("every word nobody explained is told with its cell") {
  CHECK(wrong_in({{C::lesion, 0, "B"},
                  {C::foot, 0, "H"},
                  {C::claw, 0, "o"},
                  {C::place, 0, "4"},
                  {C::zone, 0, "13"},
                  {C::degree, 0, "2"},
                  {C::stage, 0, "9"}}) ==
        "0: is no lesion that is known; 1: is no foot that is known; 2: is no claw that is known; "
        "3: is no place that is known; 4: is no zone that is known; 5: is no degree that is known; "
        "6: is no stage that is known");
}

TEST_CASE("a claw or a place that is told in two ways is told") {
  CHECK(wrong_in({{C::lesion, 0, "A"}, {C::foot, 0, "1"}, {C::claw, 0, "inside"}}) ==
        "2: is another foot or claw than the cell before it says");
  CHECK(wrong_in({{C::lesion, 0, "A"}, {C::place, 0, "heel"}, {C::zone, 0, "4"}}) ==
        "2: is another place than the cell before it says");
  CHECK(wrong_in({{C::lesion, 0, "A"}, {C::place, 0, "heel"}, {C::zone, 0, "6"}}).empty());
}

TEST_CASE("a stage belongs to digital dermatitis") {
  CHECK(read({{C::stage, 0, "M2"}, {C::lesion, 0, "DD"}}).finding.stage == DdStage::m2);
  CHECK(wrong_in({{C::stage, 0, "M2"}, {C::lesion, 0, "IH"}}) ==
        "0: is a stage of digital dermatitis, and the line tells of another lesion");
}
