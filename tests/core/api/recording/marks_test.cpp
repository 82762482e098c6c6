#include "core/api/recording/marks.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

FootCall with(Foot foot, Lesion lesion, Degree degree) {
  FootCall call;
  call.foot = foot;
  Finding finding;
  finding.lesion = lesion;
  finding.degree = degree;
  call.findings = {finding};
  return call;
}

}  // namespace

TEST_CASE("the same thing not called on several feet is told once") {
  Turn turn;
  turn.feet = {with(Foot::lh, Lesion::ds, Degree::slight),
               with(Foot::rh, Lesion::ds, Degree::slight),
               with(Foot::lf, Lesion::ds, Degree::not_called)};
  CHECK(told_of(marks_of(turn)) ==
        std::vector<std::string>{"claw not called (both hinds double sole)",
                                 "claw, degree not called (left front double sole)"});
}

TEST_CASE("nothing is marked of a lesion that words alone name") {
  Turn turn;
  turn.feet = {with(Foot::lh, Lesion::other, Degree::not_called)};
  CHECK(marks_of(turn).empty());
}
