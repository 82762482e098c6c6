#include "core/api/removed_records.hpp"

#include <algorithm>
#include <map>
#include <span>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/herd_log.hpp"
#include "core/log/batch_bodies.hpp"
#include "core/log/bodies.hpp"
#include "core/log/removed_turns.hpp"
#include "core/trade/cow_rows.hpp"

namespace evenclaw {

namespace {

using RemovedAmong = std::vector<RemovedTurn> (*)(std::span<const Entry>);

/// A redaction and a correction name what the entry does that they are of, so that a search by
/// subject finds them together.
Result<std::vector<RemovedTurn>> removed_of(Store& store, HerdId herd,
                                            const std::vector<Uuid>& subjects,
                                            RemovedAmong removed_among) {
  std::vector<Entry> entries;
  for (const Uuid& subject : subjects) {
    EntrySelection selection;
    selection.scope = herd.value;
    selection.subject = subject;
    selection.kinds = {std::string(TurnRecorded::kind), std::string(BatchRecorded::kind),
                       std::string(Redact::kind)};
    const Outcome read = store.read_entries(selection, [&](const Entry& entry) {
      entries.push_back(entry);
      return true;
    });
    if (!read) return read.faults();
  }
  return removed_among(entries);
}

class Namer {
 public:
  static Result<Namer> open(Store& store, HerdId herd) {
    auto cows = select_as<CowRow>(store, herd);
    if (!cows) return cows.faults();
    auto visits = select_as<VisitRow>(store, herd);
    if (!visits) return visits.faults();
    HerdLog log(store, herd);
    auto groups = log.groups();
    if (!groups) return groups.faults();
    return Namer(herd, *std::move(cows), *visits, *std::move(groups));
  }

  [[nodiscard]] RemovedRecord record_of(RemovedTurn turn) const {
    RemovedRecord record;
    record.turn = turn.turn;
    record.removed_on = turn.removed_on;
    record.removed_by = turn.removed_by;
    record.why = std::move(turn.why);
    std::vector<CowId> cows;
    for (const Uuid& subject : turn.subjects) {
      const auto visit = days_.find(VisitId{subject});
      if (visit != days_.end()) {
        record.visit = visit->first;
        record.day = visit->second;
      } else if (subject != herd_.value) {
        cows.push_back(groups_.representative(CowId{subject}));
      }
    }
    // A corrected number leaves two cows in the envelope, and which of them it was is gone.
    if (cows.empty() || std::count(cows.begin(), cows.end(), cows.front()) !=
                            static_cast<std::ptrdiff_t>(cows.size())) {
      return record;
    }
    record.cow = cows.front();
    for (const CowRow& row : cows_) {
      if (row.cow == *record.cow) record.cow_said = recorded_as(row);
    }
    return record;
  }

 private:
  Namer(HerdId herd, std::vector<CowRow> cows, const std::vector<VisitRow>& visits,
        CowGroups groups)
      : herd_(herd), cows_(std::move(cows)), groups_(std::move(groups)) {
    for (const VisitRow& visit : visits) days_.emplace(visit.visit, visit.day);
  }

  HerdId herd_;
  std::vector<CowRow> cows_;
  std::map<VisitId, Day> days_;
  CowGroups groups_;
};

Result<std::vector<RemovedRecord>> records_of(Store& store, HerdId herd,
                                              const std::vector<Uuid>& subjects,
                                              RemovedAmong removed_among) {
  auto removed = removed_of(store, herd, subjects, removed_among);
  if (!removed) return removed.faults();
  if (removed->empty()) return std::vector<RemovedRecord>();
  const auto namer = Namer::open(store, herd);
  if (!namer) return namer.faults();
  std::vector<RemovedRecord> records;
  records.reserve(removed->size());
  for (RemovedTurn& turn : *removed) records.push_back(namer->record_of(std::move(turn)));
  std::stable_sort(records.begin(), records.end(),
                   [](const RemovedRecord& a, const RemovedRecord& b) { return a.day < b.day; });
  return records;
}

}  // namespace

Result<std::vector<RemovedRecord>> removed_records(Store& store, HerdId herd,
                                                   const std::vector<Uuid>& subjects) {
  return records_of(store, herd, subjects, removed_turns);
}

Result<std::vector<RemovedRecord>> removed_counts(Store& store, HerdId herd, VisitId visit) {
  return records_of(store, herd, {visit.value}, removed_counts);
}

}  // namespace evenclaw
