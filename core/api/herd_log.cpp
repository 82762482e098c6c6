#include "core/api/herd_log.hpp"

#include <algorithm>
#include <utility>

#include "core/log/bodies.hpp"
#include "core/log/visit_facts.hpp"

namespace evenclaw {

namespace {

std::vector<std::string> kinds_of_unions() {
  return {std::string(SameCow::kind), std::string(SameCowTakenBack::kind),
          std::string(Redact::kind)};
}

bool is_one_of(const std::string& kind, const std::vector<std::string>& kinds) {
  return kinds.empty() || std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

}  // namespace

void HerdLog::also(std::span<const Entry> unwritten) {
  for (const Entry& entry : unwritten) {
    if (entry.envelope.scope != herd_.value) continue;
    unwritten_.push_back(entry);
    if (is_one_of(entry.envelope.kind, kinds_of_unions())) groups_.reset();
  }
}

Result<std::vector<Entry>> HerdLog::read(const EntrySelection& selection) {
  std::vector<Entry> entries;
  const Outcome read = store_->read_entries(selection, [&](const Entry& entry) {
    entries.push_back(entry);
    return true;
  });
  if (!read) return read.faults();
  return entries;
}

Result<CowGroups> HerdLog::groups() {
  if (groups_) return *groups_;
  const std::vector<std::string> kinds = kinds_of_unions();
  auto unions = read({herd_.value, std::nullopt, kinds, std::nullopt, Versions::every});
  if (!unions) return unions.faults();
  for (const Entry& entry : unwritten_) {
    if (is_one_of(entry.envelope.kind, kinds)) unions->push_back(entry);
  }
  groups_ = CowGroups(*unions);
  return *groups_;
}

Result<std::vector<Entry>> HerdLog::touching(const Uuid& subject,
                                             const std::vector<std::string>& kinds) {
  // Hundreds of cows ask for the openings of one visit.
  const bool of_a_visit = !kinds.empty() && kinds.front() == VisitOpened::kind;
  std::vector<Entry> entries;
  const auto known = of_a_visit ? of_visits_.find(subject) : of_visits_.end();
  if (known != of_visits_.end()) {
    entries = known->second;
  } else {
    auto stored = read({herd_.value, subject, kinds, std::nullopt, Versions::every});
    if (!stored) return stored.faults();
    entries = *std::move(stored);
    if (of_a_visit) of_visits_.emplace(subject, entries);
  }
  for (const Entry& entry : unwritten_) {
    const bool fits = is_one_of(entry.envelope.kind, kinds) && names_subject(entry, subject);
    if (fits) entries.push_back(entry);
  }
  return entries;
}

Result<std::vector<Entry>> HerdLog::versions_of(EntryId id) {
  auto entries = read({herd_.value, std::nullopt, {}, id, Versions::every});
  if (!entries) return entries.faults();
  for (const Entry& entry : unwritten_) {
    if (entry.envelope.id == id) entries->push_back(entry);
  }
  return entries;
}

EntryLookup HerdLog::lookup() {
  return {[this](const Uuid& subject, const std::vector<std::string>& kinds) {
            return touching(subject, kinds);
          },
          [this](EntryId id) { return versions_of(id); }};
}

Result<Touched> HerdLog::touched_by(std::span<const Entry> arrived) {
  return touched_by_arrival(lookup(), arrived);
}

Result<Rows> HerdLog::rows_of_cows(std::span<const CowId> group) {
  const auto entries = entries_for_cow(lookup(), group);
  if (!entries) return entries.faults();
  return picture_of_cow(herd_, group, *entries);
}

Result<Rows> HerdLog::rows_of_visit(VisitId visit) {
  const auto entries = entries_for_visit(lookup(), visit);
  if (!entries) return entries.faults();
  return picture_of_visit(herd_, visit, *entries);
}

Result<CowPast> HerdLog::past_of(CowId cow, VisitId visit) {
  auto known = groups();
  if (!known) return known.faults();
  const std::vector<CowId> group = known->group_of(cow);
  auto rows = rows_of_cows(group);
  if (!rows) return rows.faults();
  CowPast past;
  past.rows = *std::move(rows);
  for (const TurnRow& turn : past.rows.turns) {
    if (turn.visit == visit) past.same_visit.push_back(turn);
  }
  return past;
}

}  // namespace evenclaw
