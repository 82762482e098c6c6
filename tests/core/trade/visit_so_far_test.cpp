#include "core/trade/visit_so_far.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

VisitSoFar after(const std::string& lines, bool same_caller) {
  VisitSoFar so_far;
  count_in(so_far, told_day("409\n" + lines).draft.turn, same_caller);
  return so_far;
}

}  // namespace

TEST_CASE("blood is counted by feet and thin soles by cows") {
  const VisitSoFar so_far =
      after("both hinds outside blood drawn; LH inside blood drawn; both fronts thin sole", true);
  CHECK(so_far.feet_bled == 2);
  CHECK(so_far.cows_with_thin_soles == 1);
}

TEST_CASE("what another caller did is not counted against her caller, sores are everybody's") {
  const VisitSoFar so_far = after("LH outside blood drawn; RH thin sole; sore mouth", false);
  CHECK(so_far.feet_bled == 0);
  CHECK(so_far.cows_with_thin_soles == 0);
  CHECK(so_far.cows_with_sores == 1);
}

TEST_CASE("a cow with two kinds of sores is one cow, one with fever alone has none") {
  CHECK(after("sore mouth; LH blisters", true).cows_with_sores == 1);
  CHECK(after("fever", true).cows_with_sores == 0);
}
