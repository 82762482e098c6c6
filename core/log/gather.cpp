#include "core/log/gather.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "core/log/body.hpp"
#include "core/log/cow_story.hpp"
#include "core/log/standing.hpp"

namespace evenclaw {

namespace {

/// What dates a visit, and so the turns of a cow at it.
std::vector<std::string> dating_kinds() {
  return {std::string(VisitOpened::kind), std::string(VisitCorrected::kind),
          std::string(Redact::kind)};
}

std::vector<std::string> visit_kinds() {
  std::vector<std::string> kinds = dating_kinds();
  kinds.emplace_back(VisitClosed::kind);
  return kinds;
}

/// What is pictured with a visit, or as one.
std::vector<std::string> pictured_with_visit() {
  return {std::string(BatchRecorded::kind), std::string(MobilityScoring::kind),
          std::string(FarmWalk::kind), std::string(FarmChange::kind)};
}

/// What can be told of a task that a turn made.
std::vector<std::string> task_kinds() {
  return {std::string(TurnRecorded::kind), std::string(TaskClosedBody::kind),
          std::string(TaskMoved::kind), std::string(Redact::kind)};
}

bool tells_of_tasks(const Entry& entry) {
  const std::vector<std::string> kinds = task_kinds();
  return std::find(kinds.begin(), kinds.end(), entry.envelope.kind) != kinds.end();
}

/// Entries, each version of each once.
class EachOnce {
 public:
  /// False when the entry was there.
  bool add(const Entry& entry) {
    std::vector<Entry>& versions = by_id_[entry.envelope.id];
    if (std::find(versions.begin(), versions.end(), entry) != versions.end()) return false;
    versions.push_back(entry);
    return true;
  }

  template <class F>
  void for_each(F&& each) const {
    for (const auto& [id, versions] : by_id_) {
      for (const Entry& entry : versions) each(entry);
    }
  }

  std::vector<Entry> take() && {
    std::vector<Entry> entries;
    entries.reserve(by_id_.size());
    for (auto& [id, versions] : by_id_) {
      for (Entry& entry : versions) entries.push_back(std::move(entry));
    }
    return entries;
  }

 private:
  std::map<EntryId, std::vector<Entry>> by_id_;
};

/// Adds what belongs to the entries gathered so far.
class Gathering {
 public:
  explicit Gathering(const EntryLookup& lookup) : lookup_(lookup) {}

  Outcome add_touching(const Uuid& subject, const std::vector<std::string>& kinds) {
    const auto found = lookup_.touching(subject, kinds);
    if (!found) return found.faults();
    for (const Entry& entry : *found) add(entry);
    return Done{};
  }

  /// What the gathered entries correct, and what else corrects that.
  Outcome add_families() {
    while (!corrections_.empty()) {
      std::vector<Entry> members = {std::move(corrections_.back())};
      corrections_.pop_back();
      const Outcome climbed = add_ancestors(members);
      if (!climbed) return climbed;
      while (!members.empty()) {
        const Entry member = std::move(members.back());
        members.pop_back();
        const Outcome added = add_corrections_of(member, members);
        if (!added) return added;
      }
    }
    return Done{};
  }

  /// What was told of the cows as which turns of the group counted before they were corrected.
  Outcome add_told_of_others(std::span<const CowId> group) {
    std::set<Uuid> others;
    gathered_.for_each([&](const Entry& entry) {
      if (entry.envelope.kind != TurnRecorded::kind) return;
      const std::vector<Uuid> besides = named_besides(entry, group);
      // The visit is one of them.
      if (besides.size() < 2) return;
      const std::optional<Uuid> visit = id_in_body(entry, "visit");
      for (const Uuid& subject : besides) {
        if (subject != visit) others.insert(subject);
      }
    });
    for (const Uuid& other : others) {
      const Outcome added = add_touching(other, task_kinds());
      if (!added) return added;
    }
    return Done{};
  }

  /// Openings and corrections of every visit named. Which subjects are visits stands in the bodies;
  /// asking for those of any subject comes to the same and reads no body.
  Outcome add_visits(std::span<const CowId> group) {
    std::set<Uuid> asked;
    for (const CowId cow : group) asked.insert(cow.value);
    std::vector<Uuid> subjects;
    gathered_.for_each([&](const Entry& entry) {
      asked.insert(entry.envelope.scope);
      for (const Uuid& subject : entry.envelope.subjects) subjects.push_back(subject);
    });
    for (const Uuid& subject : subjects) {
      if (!asked.insert(subject).second) continue;
      const Outcome added = add_touching(subject, dating_kinds());
      if (!added) return added;
    }
    return Done{};
  }

  std::vector<Entry> take() && { return std::move(gathered_).take(); }

 private:
  /// From the one member given up to the entry that corrects nothing that is known.
  Outcome add_ancestors(std::vector<Entry>& members) {
    std::set<EntryId> passed;
    for (std::size_t at = 0; at < members.size(); ++at) {
      const std::optional<EntryId> next = members[at].envelope.supersedes;
      if (!next || !passed.insert(*next).second) continue;
      const auto targets = lookup_.versions_of(*next);
      if (!targets) return targets.faults();
      for (const Entry& target : *targets) {
        add(target);
        members.push_back(target);
      }
    }
    return Done{};
  }

  Outcome add_corrections_of(const Entry& member, std::vector<Entry>& members) {
    const EntryId id = member.envelope.id;
    for (const Uuid& subject : about(member)) {
      if (subject == member.envelope.scope) continue;
      if (!families_asked_.insert({id, subject}).second) continue;
      const auto found = lookup_.touching(subject, {member.envelope.kind});
      if (!found) return found.faults();
      std::set<EntryId> correcting;
      for (const Entry& other : *found) {
        if (other.envelope.supersedes == id) correcting.insert(other.envelope.id);
      }
      for (const Entry& other : *found) {
        if (correcting.count(other.envelope.id) == 0) continue;
        add(other);
        members.push_back(other);
      }
    }
    return Done{};
  }

  void add(const Entry& entry) {
    if (gathered_.add(entry) && entry.envelope.supersedes) corrections_.push_back(entry);
  }

  const EntryLookup& lookup_;
  EachOnce gathered_;
  std::vector<Entry> corrections_;
  std::set<std::pair<EntryId, Uuid>> families_asked_;
};

bool moves_cows(const Entry& entry) {
  const std::string& kind = entry.envelope.kind;
  return kind == VisitOpened::kind || kind == VisitCorrected::kind || kind == Redact::kind;
}

/// A turn names herd, visit and cow; one that was another cow's names her too.
bool may_name_another_cow(const Entry& turn) {
  constexpr std::size_t of_a_plain_turn = 3;
  return turn.envelope.supersedes || turn.envelope.subjects.size() > of_a_plain_turn;
}

/// The entry an entry speaks of: the one it corrects, redacts or takes back.
std::vector<EntryId> spoken_of(const Entry& entry) {
  std::vector<EntryId> ids;
  if (entry.envelope.supersedes) ids.push_back(*entry.envelope.supersedes);
  if (const auto redact = body_as<Redact>(entry)) ids.push_back(redact->target);
  if (const auto back = body_as<SameCowTakenBack>(entry)) ids.push_back(back->same_cow);
  return ids;
}

class Arrival {
 public:
  explicit Arrival(const EntryLookup& lookup) : lookup_(lookup) {}

  Outcome add(const Entry& entry) {
    std::vector<Entry> waiting = {entry};
    while (!waiting.empty()) {
      const Entry next = std::move(waiting.back());
      waiting.pop_back();
      if (!seen_.add(next)) continue;
      const Outcome added = add_one(next, waiting);
      if (!added) return added;
    }
    return Done{};
  }

  Touched take() && { return {{cows_.begin(), cows_.end()}, {visits_.begin(), visits_.end()}}; }

 private:
  Outcome add_one(const Entry& entry, std::vector<Entry>& waiting) {
    const Touched touched = touched_by(entry);
    cows_.insert(touched.cows.begin(), touched.cows.end());
    visits_.insert(touched.visits.begin(), touched.visits.end());
    for (const EntryId id : spoken_of(entry)) {
      const auto found = lookup_.versions_of(id);
      if (!found) return found.faults();
      waiting.insert(waiting.end(), found->begin(), found->end());
    }
    for (const Uuid& subject : about(entry)) {
      const Outcome added = add_family(entry, subject, waiting);
      if (!added) return added;
    }
    if (tells_of_tasks(entry)) {
      for (const CowId cow : touched.cows) {
        const Outcome added = add_corrected_from(cow);
        if (!added) return added;
      }
    }
    if (!moves_cows(entry)) return Done{};
    for (const VisitId visit : touched.visits) {
      const Outcome added = add_cows_of(visit);
      if (!added) return added;
    }
    return Done{};
  }

  /// What corrects it and its own other versions.
  Outcome add_family(const Entry& entry, const Uuid& subject, std::vector<Entry>& waiting) {
    if (subject == entry.envelope.scope) return Done{};
    const auto found = of_kind(subject, entry.envelope.kind);
    if (!found) return found.faults();
    for (const Entry& other : **found) {
      const bool is_version = other.envelope.id == entry.envelope.id;
      if (is_version || other.envelope.supersedes == entry.envelope.id) waiting.push_back(other);
    }
    return Done{};
  }

  /// The cows as which turns of this one count since their number was corrected, or count in
  /// another version of them.
  Outcome add_corrected_from(CowId cow) {
    if (!corrected_asked_.insert(cow).second) return Done{};
    const auto found = of_kind(cow.value, std::string(TurnRecorded::kind));
    if (!found) return found.faults();
    for (const Entry& entry : **found) {
      if (!may_name_another_cow(entry)) continue;
      const Touched touched = touched_by(entry);
      cows_.insert(touched.cows.begin(), touched.cows.end());
    }
    return Done{};
  }

  Outcome add_cows_of(VisitId visit) {
    if (!visits_asked_.insert(visit).second) return Done{};
    const auto found = of_kind(visit.value, std::string(TurnRecorded::kind));
    if (!found) return found.faults();
    std::set<CowId> seen;
    for (const Entry& entry : **found) {
      const Touched touched = touched_by(entry);
      seen.insert(touched.cows.begin(), touched.cows.end());
    }
    cows_.insert(seen.begin(), seen.end());
    // What was told of them in this visit may close a task that counts as another cow's by now.
    for (const CowId cow : seen) {
      const Outcome added = add_corrected_from(cow);
      if (!added) return added;
    }
    return Done{};
  }

  /// Mostly the same question comes twice in a row.
  Result<const std::vector<Entry>*> of_kind(const Uuid& subject, const std::string& kind) {
    if (last_subject_ != subject || last_kind_ != kind) {
      auto found = lookup_.touching(subject, {kind});
      if (!found) return found.faults();
      last_subject_ = subject;
      last_kind_ = kind;
      last_found_ = *std::move(found);
    }
    return &last_found_;
  }

  const EntryLookup& lookup_;
  std::optional<Uuid> last_subject_;
  std::string last_kind_;
  std::vector<Entry> last_found_;
  EachOnce seen_;
  std::set<VisitId> visits_asked_;
  std::set<CowId> corrected_asked_;
  std::set<CowId> cows_;
  std::set<VisitId> visits_;
};

}  // namespace

Result<std::vector<Entry>> entries_for_cow(const EntryLookup& lookup,
                                           std::span<const CowId> group) {
  Gathering gathering(lookup);
  for (const CowId cow : group) {
    const Outcome added = gathering.add_touching(cow.value, {});
    if (!added) return added.faults();
  }
  Outcome added = gathering.add_families();
  if (added) added = gathering.add_told_of_others(group);
  if (added) added = gathering.add_families();
  if (added) added = gathering.add_visits(group);
  if (added) added = gathering.add_families();
  if (!added) return added.faults();
  return std::move(gathering).take();
}

Result<std::vector<Entry>> entries_for_visit(const EntryLookup& lookup, VisitId visit) {
  Gathering gathering(lookup);
  Outcome added = gathering.add_touching(visit.value, visit_kinds());
  if (added) added = gathering.add_touching(visit.value, pictured_with_visit());
  if (added) added = gathering.add_families();
  if (!added) return added.faults();
  return std::move(gathering).take();
}

Result<Touched> touched_by_arrival(const EntryLookup& lookup, std::span<const Entry> arrived) {
  Arrival arrival(lookup);
  for (const Entry& entry : arrived) {
    const Outcome added = arrival.add(entry);
    if (!added) return added.faults();
  }
  return std::move(arrival).take();
}

}  // namespace evenclaw
