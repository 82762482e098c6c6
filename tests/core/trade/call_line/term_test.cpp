#include "core/trade/call_line/term.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

Term term_of(TermKind kind, int value) {
  Term term;
  term.kind = kind;
  term.value = value;
  return term;
}

}  // namespace

TEST_CASE("a foot term names one foot, a group all of its feet") {
  CHECK(feet_in(term_of(TermKind::foot, static_cast<int>(Foot::rh))) == FootSet{Foot::rh});
  CHECK(feet_in(term_of(TermKind::feet, static_cast<int>(FeetGroup::hinds))) == hind_feet);
  CHECK(feet_in(term_of(TermKind::feet, static_cast<int>(FeetGroup::fronts))) == front_feet);
  CHECK(feet_in(term_of(TermKind::feet, static_cast<int>(FeetGroup::four))) == four_feet);
}

TEST_CASE("kinds that mean one thing to people have one name") {
  CHECK(expected_name(TermKind::foot) == expected_name(TermKind::feet));
  CHECK(expected_name(TermKind::place) == expected_name(TermKind::zone));
  CHECK(expected_name(TermKind::comma).empty());
}

TEST_CASE("what may stand next is told once each, and the end where nothing may") {
  constexpr TermKind kinds[] = {TermKind::foot, TermKind::feet, TermKind::comma, TermKind::claw};
  CHECK(expected_names(kinds) == "a foot or a claw");
  CHECK(expected_names({}) == "the end of the line");
}
