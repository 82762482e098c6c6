#include "core/api/pictures.hpp"

#include <map>
#include <utility>
#include <vector>

#include "core/api/herd_log.hpp"
#include "core/log/picture.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t subjects_a_write = 100;

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

Outcome add_touched_by(HerdLog& log, std::span<const Entry> arrived, SubjectsToPicture& subjects) {
  const auto touched = log.touched_by(arrived);
  if (!touched) return touched.faults();
  subjects.cows.insert(touched->cows.begin(), touched->cows.end());
  subjects.visits.insert(touched->visits.begin(), touched->visits.end());
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

Outcome add_touched(Store& store, HerdId herd, std::span<const Entry> arrived,
                    SubjectsToPicture& subjects) {
  HerdLog log(store, herd);
  return add_touched_by(log, arrived, subjects);
}

Outcome add_pictures(Store& store, Write& write) {
  std::map<Uuid, std::vector<Entry>> by_scope;
  for (const Entry& entry : write.entries) by_scope[entry.envelope.scope].push_back(entry);
  for (const auto& [scope, entries] : by_scope) {
    const HerdId herd{scope};
    HerdLog log(store, herd);
    log.also(entries);
    SubjectsToPicture subjects;
    Outcome added = add_touched_by(log, entries, subjects);
    if (added) added = add_rows(log, herd, subjects, write);
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
