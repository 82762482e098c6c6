#include "core/api/herd_log.hpp"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <unordered_set>
#include <utility>

#include "core/log/bodies.hpp"
#include "core/log/body.hpp"
#include "core/log/visit_facts.hpp"

namespace evenclaw {

namespace {

/// Who asks of one cow asks a few times; a whole day or list in one write asks for each of its
/// cows.
constexpr int few_questions = 16;

bool is_selected(const Entry& entry, const EntrySelection& selection) {
  if (selection.id && *selection.id != entry.envelope.id) return false;
  if (selection.subject && !names_subject(entry, *selection.subject)) return false;
  const std::vector<std::string>& kinds = selection.kinds;
  return kinds.empty() || std::find(kinds.begin(), kinds.end(), entry.envelope.kind) != kinds.end();
}

/// An entry in two versions is found by whatever one of them names: that is left to the store.
bool has_two_versions(const std::vector<Entry>& entries) {
  std::unordered_set<EntryId> seen;
  return std::any_of(entries.begin(), entries.end(),
                     [&](const Entry& entry) { return !seen.insert(entry.envelope.id).second; });
}

/// Whoever told it was mistaken when she stands in the crush.
bool tells_that_she_is_gone(const Entry& entry) {
  if (entry.envelope.kind == CowLeft::kind) return true;
  const auto life = body_as<LifeTold>(entry);
  return life &&
         std::any_of(life->events.begin(), life->events.end(),
                     [](const LifeEventTold& told) { return told.event == LifeEvent::left; });
}

}  // namespace

void HerdLog::also(std::span<const Entry> unwritten) {
  for (const Entry& entry : unwritten) {
    if (entry.envelope.scope == herd_.value) unwritten_.push_back(&entry);
  }
  written_.clear();
  is_all_at_hand_ = false;
  by_subject_.clear();
  is_prepared_ = false;
  questions_ = 0;
  groups_.reset();
  of_visits_.clear();
}

void HerdLog::without(EntryId entry) {
  left_out_.insert(entry);
  groups_.reset();
  of_visits_.clear();
}

Result<std::vector<Entry>> HerdLog::read(EntrySelection selection) {
  selection.scope = herd_.value;
  selection.versions = Versions::every;
  std::vector<Entry> entries;
  const auto add = [&](const Entry& entry) {
    if (left_out_.count(entry.envelope.id) == 0) entries.push_back(entry);
    return true;
  };
  const bool is_one_of_many = selection.subject && ++questions_ > few_questions;
  if (is_one_of_many && !is_prepared_) {
    const Outcome prepared = prepare_for_many();
    if (!prepared) return prepared.faults();
  }
  if (!is_one_of_many || !is_all_at_hand_) {
    const Outcome read = store_->read_entries(selection, add);
    if (!read) return read.faults();
  }
  for (const Entry* entry : is_one_of_many ? at_hand_about(*selection.subject) : unwritten_) {
    if (is_selected(*entry, selection)) add(*entry);
  }
  return entries;
}

Outcome HerdLog::prepare_for_many() {
  const Outcome read = read_when_short();
  if (!read) return read;
  const auto add = [&](const Entry& entry) {
    for (const Uuid& named : entry.envelope.subjects) by_subject_[named].push_back(&entry);
  };
  for (const Entry& entry : written_) add(entry);
  for (const Entry* entry : unwritten_) add(*entry);
  is_prepared_ = true;
  return Done{};
}

/// A log that is shorter than what is to be written fits beside it, and is read once.
Outcome HerdLog::read_when_short() {
  const auto order = store_->last_order(herd_.value);
  if (!order) return order.faults();
  const std::size_t most = unwritten_.size();
  if (*order > static_cast<std::int64_t>(most)) return Done{};
  EntrySelection all;
  all.scope = herd_.value;
  all.versions = Versions::every;
  // Several devices may have counted side by side.
  const Outcome read = store_->read_entries(all, [&](const Entry& entry) {
    written_.push_back(entry);
    return written_.size() <= most;
  });
  if (!read) return read;
  is_all_at_hand_ = written_.size() <= most && !has_two_versions(written_);
  if (!is_all_at_hand_) written_.clear();
  return Done{};
}

std::span<const Entry* const> HerdLog::at_hand_about(const Uuid& subject) const {
  const auto about = by_subject_.find(subject);
  if (about == by_subject_.end()) return {};
  return about->second;
}

Result<CowGroups> HerdLog::groups() {
  if (groups_) return *groups_;
  EntrySelection unions;
  unions.kinds = {std::string(SameCow::kind), std::string(SameCowTakenBack::kind),
                  std::string(Redact::kind)};
  const auto entries = read(std::move(unions));
  if (!entries) return entries.faults();
  groups_ = CowGroups(*entries);
  return *groups_;
}

Result<std::vector<Entry>> HerdLog::touching(const Uuid& subject,
                                             const std::vector<std::string>& kinds) {
  // Hundreds of cows ask for the openings of one visit; with its closings it is asked for once.
  const bool is_closing_wanted =
      std::find(kinds.begin(), kinds.end(), VisitClosed::kind) != kinds.end();
  const bool of_a_visit =
      !kinds.empty() && kinds.front() == VisitOpened::kind && !is_closing_wanted;
  const auto known = of_a_visit ? of_visits_.find(subject) : of_visits_.end();
  if (known != of_visits_.end()) return known->second;
  EntrySelection selection;
  selection.subject = subject;
  selection.kinds = kinds;
  auto entries = read(std::move(selection));
  if (entries && of_a_visit) of_visits_.emplace(subject, *entries);
  return entries;
}

Result<std::vector<Entry>> HerdLog::versions_of(EntryId id) {
  EntrySelection selection;
  selection.id = id;
  return read(std::move(selection));
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
  return past_made_of(cow, visit, false);
}

Result<CowPast> HerdLog::past_of_one_here(CowId cow, VisitId visit) {
  return past_made_of(cow, visit, true);
}

Result<CowPast> HerdLog::past_made_of(CowId cow, VisitId visit, bool is_here) {
  auto known = groups();
  if (!known) return known.faults();
  const std::vector<CowId> group = known->group_of(cow);
  auto entries = entries_for_cow(lookup(), group);
  if (!entries) return entries.faults();
  const auto end = std::remove_if(entries->begin(), entries->end(), [&](const Entry& entry) {
    return is_here && tells_that_she_is_gone(entry);
  });
  entries->erase(end, entries->end());
  CowPast past;
  past.rows = picture_of_cow(herd_, group, *entries);
  for (const TurnRow& turn : past.rows.turns) {
    if (turn.visit == visit) past.same_visit.push_back(turn);
  }
  return past;
}

}  // namespace evenclaw
