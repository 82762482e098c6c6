#include "core/api/importing/findings_told.hpp"

#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/core/api/importing/list_taken.hpp"

namespace evenclaw::test {

namespace {

PastFinding ulcer(std::string_view on = "2024-05-01", std::string words = "A") {
  PastFinding told;
  told.day = day(on);
  told.foot = Foot::lh;
  told.lesion = Lesion::su;
  told.words = std::move(words);
  return told;
}

/// A cow of whom that file told it.
KnownCow told_by(const Digest& file, const PastFinding& finding) {
  KnownCow cow;
  add_finding(cow, finding);
  cow.findings.back().source = to_text(file);
  return cow;
}

}  // namespace

TEST_CASE("a finding told again in the same words is known, in other words it is added to") {
  KnownCow cow;
  add_finding(cow, ulcer());
  CHECK(is_told_of_her(cow, ulcer()));
  const PastFinding otherwise = ulcer("2024-05-01", "B");
  CHECK(has_finding(cow, otherwise));
  CHECK_FALSE(is_told_of_her(cow, otherwise));
  add_finding(cow, otherwise);
  REQUIRE(cow.findings.size() == 1);
  CHECK(cow.findings[0].told.words == "A / B");
  CHECK(is_told_of_her(cow, ulcer()));
}

TEST_CASE("nothing new makes no body, what is new stands in it with its file and scheme") {
  const Digest file = sha256("a file");
  const KnownCow before = told_by(file, ulcer());
  CHECK_FALSE(findings_told_of(before, before, file, LesionScheme::icar));
  KnownCow now = before;
  add_finding(now, ulcer("2024-06-01"));
  const auto body = findings_told_of(now, before, file, LesionScheme::word_by_word);
  REQUIRE(body);
  REQUIRE(body->findings.size() == 1);
  CHECK(body->findings[0].day == day("2024-06-01"));
  CHECK(body->not_so.empty());
  CHECK(body->scheme == LesionScheme::word_by_word);
  CHECK(body->source == file);
}

TEST_CASE("what the same file told of a day and tells no more is not so, and nothing else") {
  const Digest file = sha256("a file");
  const KnownCow before = told_by(file, ulcer());
  PastFinding toe = ulcer();
  toe.lesion = Lesion::tu;
  KnownCow now = before;
  add_finding(now, toe);
  take_back_untold(now, {{toe.day, {toe}}}, file);
  const auto body = findings_told_of(now, before, file, LesionScheme::word_by_word);
  REQUIRE(body);
  REQUIRE(body->not_so.size() == 1);
  CHECK(body->not_so[0].lesion == Lesion::su);
  CHECK(body->findings.at(0).lesion == Lesion::tu);
}

TEST_CASE("what another file told stays, and so does what is told of other days") {
  const Digest file = sha256("a file");
  KnownCow cow = told_by(sha256("another"), ulcer());
  take_back_untold(cow, {{day("2024-05-01"), {}}}, file);
  CHECK(cow.findings.size() == 1);
  KnownCow same = told_by(file, ulcer());
  take_back_untold(same, {{day("2024-05-02"), {}}}, file);
  CHECK(same.findings.size() == 1);
  take_back_untold(same, {{day("2024-05-01"), {}}}, file);
  CHECK(same.findings.empty());
}

}  // namespace evenclaw::test
