#include "core/log/visit_facts.hpp"

#include <algorithm>

#include "core/log/body.hpp"

namespace evenclaw {

namespace {

using FactsByVisit = std::map<VisitId, VisitFacts>;

bool is_about_a_visit(std::string_view kind) {
  return kind == VisitOpened::kind || kind == VisitClosed::kind || kind == VisitCorrected::kind;
}

void apply(const Entry& entry, const VisitOpened& opened, FactsByVisit& all) {
  VisitFacts& facts = all[opened.visit];
  if (facts.opening == nullptr) {
    facts.opening = &entry;
    facts.opened = opened;
  } else if (facts.opening->envelope.device != entry.envelope.device) {
    facts.opened_twice = true;
  }
}

void apply(const Entry&, const VisitClosed& closed, FactsByVisit& all) {
  all[closed.visit].closed = true;
}

void apply(const Entry&, const VisitCorrected& corrected, FactsByVisit& all) {
  VisitFacts& facts = all[corrected.visit];
  if (corrected.day) facts.corrected_day = corrected.day;
  if (corrected.todays_feet) facts.corrected_feet = corrected.todays_feet;
}

template <class Body>
void apply_if(const Entry& entry, const std::set<VisitId>& wanted, FactsByVisit& all) {
  const std::optional<Body> body = body_as<Body>(entry);
  if (!body || wanted.count(body->visit) == 0) return;
  if (!names_subject(entry, body->visit.value)) return;
  apply(entry, *body, all);
}

}  // namespace

std::optional<Day> VisitFacts::day() const {
  if (corrected_day) return corrected_day;
  if (opening != nullptr) return opened.day;
  return std::nullopt;
}

std::map<VisitId, VisitFacts> facts_of_visits(std::span<const Entry* const> counting,
                                              const std::set<VisitId>& wanted) {
  FactsByVisit all;
  for (const Entry* entry : counting) {
    if (!is_about_a_visit(entry->envelope.kind)) continue;
    apply_if<VisitOpened>(*entry, wanted, all);
    apply_if<VisitClosed>(*entry, wanted, all);
    apply_if<VisitCorrected>(*entry, wanted, all);
  }
  return all;
}

bool names_subject(const Entry& entry, const Uuid& subject) {
  const std::vector<Uuid>& subjects = entry.envelope.subjects;
  return std::find(subjects.begin(), subjects.end(), subject) != subjects.end();
}

}  // namespace evenclaw
