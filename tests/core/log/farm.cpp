#include "tests/core/log/farm.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <utility>

#include "core/log/picture.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

Uuid named_id(std::string_view name) {
  return uuid_derived("a test\n" + std::string(name));
}

CowId cow_named(std::string_view name) {
  return {named_id(name)};
}

DeviceId device_named(std::string_view name) {
  return {named_id(name)};
}

Day day(std::string_view text) {
  const std::optional<Day> day = day_from_text(text);
  REQUIRE(day);
  return *day;
}

FootCall foot(Foot foot, std::vector<Finding> findings, std::vector<Action> actions) {
  FootCall call;
  call.foot = foot;
  call.state = findings.empty() ? FootState::unsaid : FootState::finding;
  call.findings = std::move(findings);
  call.actions = std::move(actions);
  return call;
}

FootCall nothing_found(Foot foot) {
  FootCall call;
  call.foot = foot;
  call.state = FootState::nothing_found;
  return call;
}

Finding lesion(Lesion lesion, Claw claw, Place place) {
  Finding finding;
  finding.lesion = lesion;
  finding.claw = claw;
  finding.place = place;
  finding.degree = Degree::plain;
  return finding;
}

Action act(ActionKind kind, Claw claw) {
  Action action;
  action.kind = kind;
  action.claw = claw;
  return action;
}

Farm::Farm() : herd_{named_id("herd")}, device_(device_named("tablet")) {
  set_clock("2026-11-24T08:00:00.000+01:00");
}

void Farm::set_clock(std::string_view instant) {
  const std::optional<Instant> at = instant_from_text(instant);
  REQUIRE(at);
  at_ = *at;
}

Envelope Farm::next_envelope() {
  Envelope envelope;
  envelope.business = BusinessId{named_id("business")};
  envelope.scope = herd_.value;
  envelope.device = device_;
  envelope.order = ++order_;
  envelope.seq = 1 + std::count_if(entries_.begin(), entries_.end(), [&](const Entry& entry) {
                   return entry.envelope.device == device_;
                 });
  envelope.id = EntryId{named_id("entry " + std::to_string(order_))};
  envelope.at = at_;
  return envelope;
}

EntryId Farm::keep(Entry entry) {
  entries_.push_back(std::move(entry));
  return entries_.back().envelope.id;
}

EntryId Farm::redact(const Entry& entry) {
  Envelope envelope = next_envelope();
  envelope.subjects = entry.envelope.subjects;
  return keep(entry_of(std::move(envelope), Redact{entry.envelope.id, "asked to"}));
}

VisitId Farm::visit(std::string_view day_text) {
  const VisitId visit = visit_id(herd_, day(day_text), 1);
  if (std::find(opened_.begin(), opened_.end(), visit) == opened_.end()) {
    opened_.push_back(visit);
    write(VisitOpened{visit, day(day_text), 1, hind_feet});
  }
  return visit;
}

TurnRecorded Farm::turn_body(CowId cow, std::string_view day_text, std::vector<FootCall> feet) {
  TurnRecorded body;
  body.visit = visit(day_text);
  body.cow = cow;
  body.words = {"as said"};
  body.turn.cow.number = "412";
  body.turn.feet = std::move(feet);
  return body;
}

EntryId Farm::turn(CowId cow, std::string_view day_text, std::vector<FootCall> feet) {
  return write(turn_body(cow, day_text, std::move(feet)));
}

const Entry& Farm::entry(EntryId id) const {
  const auto at = std::find_if(entries_.begin(), entries_.end(),
                               [&](const Entry& entry) { return entry.envelope.id == id; });
  REQUIRE(at != entries_.end());
  return *at;
}

Rows Farm::rows_of(CowId cow) const {
  return picture_of_cow(herd_, CowGroups(entries_).group_of(cow), entries_);
}

Rows Farm::rows_of(VisitId visit) const {
  return picture_of_visit(herd_, visit, entries_);
}

}  // namespace evenclaw
