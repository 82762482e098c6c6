#include "core/trade/call_line/open_item.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

template <class E>
Term detail(TermKind kind, E value) {
  Term term;
  term.kind = kind;
  term.value = static_cast<int>(value);
  return term;
}

Finding& finding_in(TurnClause& item) {
  return std::get<FindingSaid>(item).finding;
}

}  // namespace

TEST_CASE("the heel of a white line lesion is the white line at the heel, zone 3") {
  TurnClause item = new_finding(Lesion::wla);
  CHECK_FALSE(add_detail(item, detail(TermKind::place, Place::heel)).has_value());
  CHECK(finding_in(item).place == Place::white_line_heel);
  CHECK(finding_in(item).zone == 3);
}

TEST_CASE("the heel of another lesion is the bulb, zone 6") {
  TurnClause item = new_finding(Lesion::sh);
  CHECK_FALSE(add_detail(item, detail(TermKind::place, Place::heel)).has_value());
  CHECK(finding_in(item).place == Place::heel);
  CHECK(finding_in(item).zone == 6);
}

TEST_CASE("a zone number names the place") {
  TurnClause item = new_finding(Lesion::su);
  CHECK_FALSE(add_detail(item, detail(TermKind::zone, 4)).has_value());
  CHECK(finding_in(item).place == Place::sole_middle);
}

TEST_CASE("a wall has a zone only when one is said") {
  TurnClause item = new_finding(Lesion::sh);
  CHECK_FALSE(add_detail(item, detail(TermKind::place, Place::outer_wall)).has_value());
  CHECK_FALSE(finding_in(item).zone.has_value());
  CHECK_FALSE(add_detail(item, detail(TermKind::zone, 7)).has_value());
  CHECK(finding_in(item).zone == 7);
}

TEST_CASE("a refused detail leaves the finding as it was") {
  TurnClause item = new_finding(Lesion::su);
  const TurnClause before = item;
  CHECK(add_detail(item, detail(TermKind::place, Place::between)).has_value());
  CHECK(add_detail(item, detail(TermKind::stage, DdStage::raw)).has_value());
  CHECK(add_detail(item, detail(TermKind::zone, 13)).has_value());
  CHECK(add_detail(item, detail(TermKind::white_line_side, 0)).has_value());
  CHECK(item == before);
}

TEST_CASE("nothing is said twice of one finding") {
  TurnClause item = new_finding(Lesion::dd);
  CHECK_FALSE(add_detail(item, detail(TermKind::degree, Degree::bad)).has_value());
  CHECK(add_detail(item, detail(TermKind::degree, Degree::slight))->slug == "call-not-understood");
  CHECK_FALSE(add_detail(item, detail(TermKind::stage, DdStage::m2)).has_value());
  CHECK(add_detail(item, detail(TermKind::stage, DdStage::m1)).has_value());
  CHECK_FALSE(add_detail(item, detail(TermKind::place, Place::behind)).has_value());
  CHECK(add_detail(item, detail(TermKind::place, Place::between)).has_value());
}

TEST_CASE("skin lesions have no claw, horn lesions await one") {
  CHECK(new_finding(Lesion::dd).finding.claw == Claw::none);
  CHECK(awaits_claw(new_finding(Lesion::su)));
  CHECK_FALSE(awaits_claw(new_finding(Lesion::dd)));
  CHECK(awaits_claw(new_act(ActionKind::block_on)));
  CHECK_FALSE(awaits_claw(new_act(ActionKind::wrap_on)));
  CHECK(awaits_claw(new_measure(MeasureKind::toe_length)));
  CHECK_FALSE(awaits_claw(RestFineSaid{}));
}

TEST_CASE("skin named for another lesion takes the claw away") {
  TurnClause item = new_finding(Lesion::other);
  CHECK_FALSE(add_detail(item, detail(TermKind::place, Place::behind)).has_value());
  CHECK(finding_in(item).claw == Claw::none);
  CHECK(add_detail(item, detail(TermKind::claw, Claw::outside)).has_value());
}

TEST_CASE("only what is put on or left on today comes off later, and once") {
  TurnClause wrap = new_act(ActionKind::wrap_on);
  CHECK(awaits_off(wrap));
  TimeSaid when;
  when.days = 3;
  CHECK_FALSE(add_time(wrap, when).has_value());
  CHECK_FALSE(awaits_off(wrap));
  CHECK(add_time(wrap, when).has_value());
  CHECK_FALSE(awaits_off(new_act(ActionKind::wrap_off)));
  CHECK_FALSE(awaits_off(new_act(ActionKind::see_again)));
}

TEST_CASE("times lie between one day and two years ahead") {
  TimeSaid when;
  for (const int days : {0, 731}) {
    TurnClause act = new_act(ActionKind::see_again);
    when.days = days;
    CHECK(add_time(act, when)->slug == "call-impossible");
  }
  for (const int days : {1, 730}) {
    TurnClause act = new_act(ActionKind::see_again);
    when.days = days;
    CHECK_FALSE(add_time(act, when).has_value());
  }
}

TEST_CASE("telling the farmer is of the whole cow even when a foot is named") {
  CHECK(new_act(ActionKind::told_farmer).whole_cow);
  CHECK_FALSE(new_act(ActionKind::vet).whole_cow);
}
