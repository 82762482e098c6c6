#include "core/log/past_told.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "core/base/digest.hpp"
#include "core/log/picture.hpp"
#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

PastFinding found(Lesion lesion, std::string_view on, std::optional<Foot> foot = Foot::lh) {
  PastFinding told;
  told.day = day(on);
  told.foot = foot;
  told.lesion = lesion;
  return told;
}

PastFindingsTold past(std::vector<PastFinding> findings) {
  PastFindingsTold body;
  body.cow = cow_412;
  body.findings = std::move(findings);
  return body;
}

/// "2024-05-01 1 SU LH".
std::vector<std::string> past_of(const Farm& farm) {
  std::vector<std::string> told;
  for (const PastFindingRow& row : farm.rows_of(cow_412).past_findings) {
    told.push_back(to_text(row.day) + ' ' + std::to_string(row.position) + ' ' +
                   std::string(word_of(row.lesion)) +
                   (row.foot ? ' ' + std::string(word_of(*row.foot)) : std::string()));
  }
  return told;
}

}  // namespace

TEST_CASE("each finding a list told is a row by day, also one whose foot it does not tell") {
  Farm farm;
  farm.write(past({found(Lesion::su, "2024-05-01"), found(Lesion::dd, "2024-05-01", Foot::rh),
                   found(Lesion::hhe, "2023-11-02", std::nullopt)}));
  CHECK(past_of(farm) ==
        std::vector<std::string>{"2023-11-02 1 HHE", "2024-05-01 1 SU LH", "2024-05-01 2 DD RH"});
}

TEST_CASE("a finding that is told again is the same, with the words and remarks of both") {
  Farm farm;
  PastFinding told = found(Lesion::su, "2024-05-01");
  told.words = "Rusterholz";
  told.remark = "block";
  PastFindingsTold first = past({told});
  first.source = sha256("a file");
  first.scheme = LesionScheme::word_by_word;
  farm.write(first);
  told.words = "SU";
  told.remark = "";
  PastFindingsTold second = past({told});
  second.source = sha256("another");
  farm.write(second);
  const std::vector<PastFindingRow> rows = farm.rows_of(cow_412).past_findings;
  REQUIRE(rows.size() == 1);
  CHECK(rows[0].words == "Rusterholz / SU");
  CHECK(rows[0].remark == "block");
  CHECK(rows[0].source == to_text(sha256("a file")));
  CHECK(rows[0].scheme == LesionScheme::word_by_word);
}

TEST_CASE("what was read wrongly is out until it is told again, and its mending stays") {
  Farm farm;
  farm.write(past({found(Lesion::su, "2024-05-01")}));
  PastFindingsTold mended = past({found(Lesion::tu, "2024-05-01")});
  mended.not_so = {found(Lesion::su, "2024-05-01")};
  farm.write(mended);
  CHECK(past_of(farm) == std::vector<std::string>{"2024-05-01 1 TU LH"});
  farm.write(past({found(Lesion::su, "2024-05-01")}));
  CHECK(past_of(farm).size() == 2);
}

TEST_CASE("what lists told makes no finding, case, foot, turn or task of ours") {
  Farm farm;
  farm.write(past({found(Lesion::su, "2024-05-01"), found(Lesion::dd, "2024-05-01")}));
  const Rows rows = farm.rows_of(cow_412);
  CHECK(rows.past_findings.size() == 2);
  CHECK(rows.findings.empty());
  CHECK(rows.cases.empty());
  CHECK(rows.feet.empty());
  CHECK(rows.turns.empty());
  CHECK(rows.tasks.empty());
}

TEST_CASE("what was told of a cow under two ids is told of her once they are one") {
  Farm farm;
  farm.write(past({found(Lesion::su, "2024-05-01")}));
  PastFindingsTold other = past({found(Lesion::su, "2024-05-01"), found(Lesion::dd, "2024-06-01")});
  other.cow = cow_421;
  farm.write(other);
  CHECK(past_of(farm).size() == 1);
  farm.write(SameCow{cow_412, cow_421});
  CHECK(farm.rows_of(cow_412).past_findings.size() == 2);
}

TEST_CASE("an entry whose contents were removed tells nothing any more") {
  Farm farm;
  farm.write(CowRegistered{cow_412, "412", day("2024-01-01")});
  farm.write(past({found(Lesion::su, "2024-05-01")}));
  farm.redact(farm.last());
  CHECK(past_of(farm).empty());
}

}  // namespace evenclaw
