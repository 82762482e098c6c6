#include "core/trade/call_line/said_again.hpp"

#include <algorithm>
#include <optional>
#include <string>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

// Two facts of which one may be "not called" agree when they are equal or one is not called.
template <class T>
bool agree(const T& a, const T& b, const T& not_called) {
  return a == b || a == not_called || b == not_called;
}

template <class T>
void fill(T& kept, const T& more, const T& not_called) {
  if (kept == not_called) kept = more;
}

bool puts_on(const FixtureSaid& said) {
  return is_on_after(said.step) && said.step != FixtureStep::left_on;
}

}  // namespace

bool are_one(const Finding& a, const Finding& b) {
  return a.lesion == b.lesion && agree(a.claw, b.claw, Claw::not_called) &&
         agree(a.words, b.words, std::string()) && agree(a.place, b.place, Place::not_called) &&
         agree(a.zone, b.zone, std::optional<std::int32_t>()) &&
         agree(a.degree, b.degree, Degree::not_called) &&
         agree(a.stage, b.stage, DdStage::not_called);
}

void complete(Finding& kept, const Finding& more) {
  fill(kept.claw, more.claw, Claw::not_called);
  fill(kept.words, more.words, std::string());
  fill(kept.place, more.place, Place::not_called);
  fill(kept.zone, more.zone, std::optional<std::int32_t>());
  fill(kept.degree, more.degree, Degree::not_called);
  fill(kept.stage, more.stage, DdStage::not_called);
  kept.dd_infected = kept.dd_infected || more.dd_infected;
}

namespace {

bool are_one_but_for_the_time(const Action& a, const Action& b) {
  return a.kind == b.kind && agree(a.claw, b.claw, Claw::not_called) &&
         agree(a.product, b.product, std::string()) &&
         agree(a.material, b.material, Material::not_called) &&
         agree(a.by_whom, b.by_whom, ByWhom::not_called) &&
         agree(a.directed_by, b.directed_by, ByWhom::not_called);
}

/// The time said later takes the place of the first. What holds milk or meat back is never made
/// shorter so, for it could be of another medicine.
bool takes_its_place(const TimeSaid& later, const TimeSaid& first, ActionKind kind) {
  if (facts_of(kind).said_as != TermKind::withheld_act) return true;
  return later.days && first.days && *later.days > *first.days;
}

}  // namespace

bool are_one(const Action& first, const Action& later) {
  const bool is_one_time = agree(first.when, later.when, TimeSaid()) ||
                           takes_its_place(later.when, first.when, first.kind);
  return are_one_but_for_the_time(first, later) && is_one_time;
}

void complete(Action& kept, const Action& more) {
  fill(kept.claw, more.claw, Claw::not_called);
  fill(kept.product, more.product, std::string());
  fill(kept.material, more.material, Material::not_called);
  fill(kept.by_whom, more.by_whom, ByWhom::not_called);
  fill(kept.directed_by, more.directed_by, ByWhom::not_called);
  if (more.when.said()) kept.when = more.when;
  if (!kept.medicine) kept.medicine = more.medicine;
}

bool are_one(const Measure& a, const Measure& b) {
  return a == b;
}

void complete(Measure&, const Measure&) {}

bool takes_back(const Finding& said, const Finding& found) {
  Finding meant = said;
  if (is_kind_of(found.lesion, said.lesion)) meant.lesion = found.lesion;
  return are_one(meant, found);
}

// "Block" and "wrap" are every way of putting one on; "refitted" is nothing else.
bool takes_back(const Action& said, const Action& done) {
  Action meant = said;
  const std::optional<FixtureSaid> taken = fixture_said(said.kind);
  const std::optional<FixtureSaid> put = fixture_said(done.kind);
  const bool is_any_way = taken && taken->step == FixtureStep::put_on;
  if (is_any_way && put && puts_on(*put) && taken->fixture == put->fixture) meant.kind = done.kind;
  return are_one_but_for_the_time(meant, done) && agree(meant.when, done.when, TimeSaid());
}

bool takes_back(const MeasureTakenBack& said, const Measure& measured) {
  const bool same_kind = !said.kind || *said.kind == measured.kind;
  const bool same_length = !said.length || *said.length == measured.length;
  return same_kind && same_length && agree(said.claw, measured.claw, Claw::not_called);
}

bool is_taken_back_by(const TurnClause& clause, const TurnClause& said) {
  const auto* finding = std::get_if<FindingSaid>(&said);
  const auto* act = std::get_if<ActionSaid>(&said);
  const auto* measure = std::get_if<MeasureSaid>(&said);
  if (std::holds_alternative<NothingAfterAll>(clause)) return finding != nullptr;
  if (const auto* back = std::get_if<FindingTakenBack>(&clause)) {
    return finding != nullptr && takes_back(back->finding, finding->finding);
  }
  if (const auto* back = std::get_if<MeasureTakenBack>(&clause)) {
    return measure != nullptr && takes_back(*back, measure->measure);
  }
  const auto* back = std::get_if<ActTakenBack>(&clause);
  return back != nullptr && act != nullptr && takes_back(back->action, act->action);
}

void remember(std::vector<TurnClause>& since_naming, const TurnClause& clause) {
  const auto gone =
      std::remove_if(since_naming.begin(), since_naming.end(),
                     [&clause](const TurnClause& said) { return is_taken_back_by(clause, said); });
  const bool was_said_since = gone != since_naming.end();
  since_naming.erase(gone, since_naming.end());
  const bool is_taken_back = std::holds_alternative<FindingTakenBack>(clause) ||
                             std::holds_alternative<MeasureTakenBack>(clause) ||
                             std::holds_alternative<ActTakenBack>(clause);
  const bool tells_whose =
      std::holds_alternative<FeetNamed>(clause) || std::holds_alternative<CowCorrected>(clause);
  if (tells_whose || (is_taken_back && was_said_since)) return;
  since_naming.push_back(clause);
}

}  // namespace evenclaw
