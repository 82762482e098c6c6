#include "core/api/pictures.hpp"

#include <map>
#include <utility>
#include <vector>

#include "core/api/herd_log.hpp"
#include "core/log/bodies.hpp"
#include "core/log/picture.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t subjects_a_write = 100;

/// A visit's day is written into the rows of every cow seen in it.
bool moves_a_visit(const Entry& entry) {
  return entry.envelope.kind == VisitOpened::kind || entry.envelope.kind == VisitCorrected::kind ||
         entry.envelope.kind == Redact::kind;
}

/// From the log and not from the rows, which may not be there yet while a log is taken in.
Outcome add_cows_seen(Store& store, const Uuid& herd, VisitId visit, std::set<CowId>& cows) {
  return store.read_entries({herd, visit.value, {}}, [&](const Entry& entry) {
    for (const CowId cow : touched_by(entry).cows) cows.insert(cow);
    return true;
  });
}

Outcome add_cow(HerdLog& log, HerdId herd, CowId cow, std::set<CowId>& done, Write& write) {
  if (done.count(cow) > 0) return Done{};
  auto groups = log.groups();
  if (!groups) return groups.faults();
  std::vector<CowId> group = groups->group_of(cow);
  done.insert(group.begin(), group.end());
  auto rows = log.rows_of_cows(group);
  if (!rows) return rows.faults();
  write.cows.push_back({herd, std::move(group), *std::move(rows)});
  return Done{};
}

Outcome add_visit(HerdLog& log, HerdId herd, VisitId visit, Write& write) {
  auto rows = log.rows_of_visit(visit);
  if (!rows) return rows.faults();
  write.visits.push_back({herd, visit, *std::move(rows)});
  return Done{};
}

Outcome written_when_full(Store& store, Write& write) {
  if (write.cows.size() + write.visits.size() < subjects_a_write) return Done{};
  const auto kept = store.write(write);
  if (!kept) return kept.faults();
  write = {};
  return Done{};
}

Outcome add_rows(HerdLog& log, HerdId herd, const SubjectsToPicture& subjects, Write& write) {
  std::set<CowId> done;
  for (const CowId cow : subjects.cows) {
    const Outcome added = add_cow(log, herd, cow, done, write);
    if (!added) return added;
  }
  for (const VisitId visit : subjects.visits) {
    const Outcome added = add_visit(log, herd, visit, write);
    if (!added) return added;
  }
  return Done{};
}

}  // namespace

Outcome add_touched(Store& store, const Entry& entry, SubjectsToPicture& subjects) {
  const Touched touched = touched_by(entry);
  subjects.cows.insert(touched.cows.begin(), touched.cows.end());
  subjects.visits.insert(touched.visits.begin(), touched.visits.end());
  if (!moves_a_visit(entry)) return Done{};
  for (const VisitId visit : touched.visits) {
    const Outcome added = add_cows_seen(store, entry.envelope.scope, visit, subjects.cows);
    if (!added) return added;
  }
  return Done{};
}

Outcome add_pictures(Store& store, Write& write) {
  std::map<Uuid, SubjectsToPicture> by_scope;
  for (const Entry& entry : write.entries) {
    const Outcome added = add_touched(store, entry, by_scope[entry.envelope.scope]);
    if (!added) return added;
  }
  for (const auto& [scope, subjects] : by_scope) {
    const HerdId herd{scope};
    HerdLog log(store, herd);
    log.also(write.entries);
    const Outcome added = add_rows(log, herd, subjects, write);
    if (!added) return added;
  }
  return Done{};
}

Outcome picture_anew(Store& store, HerdId herd, const SubjectsToPicture& subjects) {
  HerdLog log(store, herd);
  Write write;
  std::set<CowId> done;
  for (const CowId cow : subjects.cows) {
    Outcome added = add_cow(log, herd, cow, done, write);
    if (added) added = written_when_full(store, write);
    if (!added) return added;
  }
  for (const VisitId visit : subjects.visits) {
    Outcome added = add_visit(log, herd, visit, write);
    if (added) added = written_when_full(store, write);
    if (!added) return added;
  }
  if (write.cows.empty() && write.visits.empty()) return Done{};
  const auto kept = store.write(write);
  if (!kept) return kept.faults();
  return Done{};
}

}  // namespace evenclaw
