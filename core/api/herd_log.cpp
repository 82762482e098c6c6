#include "core/api/herd_log.hpp"

#include <algorithm>
#include <utility>

#include "core/log/bodies.hpp"

namespace evenclaw {

namespace {

std::vector<std::string> kinds_of_visits() {
  return {std::string(VisitOpened::kind), std::string(VisitCorrected::kind),
          std::string(VisitClosed::kind), std::string(Redact::kind)};
}

std::vector<std::string> kinds_of_unions() {
  return {std::string(SameCow::kind), std::string(SameCowTakenBack::kind),
          std::string(Redact::kind)};
}

bool is_one_of(const std::string& kind, const std::vector<std::string>& kinds) {
  return kinds.empty() || std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

bool touches(const Entry& entry, const Uuid& subject) {
  const std::vector<Uuid>& subjects = entry.envelope.subjects;
  return std::find(subjects.begin(), subjects.end(), subject) != subjects.end();
}

/// Entries by id, each once.
class Gathered {
 public:
  void add(const std::vector<Entry>& entries) {
    for (const Entry& entry : entries) by_id_.emplace(entry.envelope.id, entry);
  }

  [[nodiscard]] std::vector<Entry> all() const {
    std::vector<Entry> entries;
    entries.reserve(by_id_.size());
    for (const auto& [id, entry] : by_id_) entries.push_back(entry);
    return entries;
  }

 private:
  std::map<EntryId, Entry> by_id_;
};

}  // namespace

void HerdLog::also(std::span<const Entry> unwritten) {
  for (const Entry& entry : unwritten) {
    if (entry.envelope.scope != herd_.value) continue;
    unwritten_.push_back(entry);
    if (is_one_of(entry.envelope.kind, kinds_of_unions())) groups_.reset();
  }
}

Result<CowGroups> HerdLog::groups() {
  if (groups_) return *groups_;
  const std::vector<std::string> kinds = kinds_of_unions();
  std::vector<Entry> unions;
  const Outcome read =
      store_->read_entries({herd_.value, std::nullopt, kinds}, [&](const Entry& entry) {
        unions.push_back(entry);
        return true;
      });
  if (!read) return read.faults();
  for (const Entry& entry : unwritten_) {
    if (is_one_of(entry.envelope.kind, kinds)) unions.push_back(entry);
  }
  groups_ = CowGroups(unions);
  return *groups_;
}

Result<std::vector<Entry>> HerdLog::touching(const Uuid& subject,
                                             const std::vector<std::string>& kinds) {
  std::vector<Entry> entries;
  const Outcome read = store_->read_entries({herd_.value, subject, kinds}, [&](const Entry& entry) {
    entries.push_back(entry);
    return true;
  });
  if (!read) return read.faults();
  return entries;
}

Result<std::vector<Entry>> HerdLog::entries_of_visit(VisitId visit) {
  const std::vector<std::string> kinds = kinds_of_visits();
  auto known = visit_entries_.find(visit.value);
  if (known == visit_entries_.end()) {
    auto stored = touching(visit.value, kinds);
    if (!stored) return stored.faults();
    known = visit_entries_.emplace(visit.value, *std::move(stored)).first;
  }
  std::vector<Entry> entries = known->second;
  for (const Entry& entry : unwritten_) {
    if (touches(entry, visit.value) && is_one_of(entry.envelope.kind, kinds)) {
      entries.push_back(entry);
    }
  }
  return entries;
}

Result<std::vector<Entry>> HerdLog::entries_of_cows(std::span<const CowId> group) {
  Gathered gathered;
  for (const CowId cow : group) {
    auto stored = touching(cow.value, {});
    if (!stored) return stored.faults();
    gathered.add(*stored);
    for (const Entry& entry : unwritten_) {
      if (touches(entry, cow.value)) gathered.add({entry});
    }
  }
  // Which of the subjects are visits stands in the bodies; asking for the openings of each one that
  // is no cow of the group comes to the same and needs no body.
  for (const Entry& entry : gathered.all()) {
    for (const Uuid& subject : entry.envelope.subjects) {
      const bool is_of_group = std::find(group.begin(), group.end(), CowId{subject}) != group.end();
      if (is_of_group || subject == herd_.value) continue;
      auto openings = entries_of_visit(VisitId{subject});
      if (!openings) return openings.faults();
      gathered.add(*openings);
    }
  }
  return gathered.all();
}

Result<Rows> HerdLog::rows_of_cows(std::span<const CowId> group) {
  auto entries = entries_of_cows(group);
  if (!entries) return entries.faults();
  return picture_of_cow(herd_, group, *entries);
}

Result<Rows> HerdLog::rows_of_visit(VisitId visit) {
  auto entries = entries_of_visit(visit);
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
