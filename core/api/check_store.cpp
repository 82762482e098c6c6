// Putting a store to the test: digests, counts, chains of corrections, numbers carried twice.
#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "core/api/transfer.hpp"
#include "core/log/body.hpp"
#include "core/log/entry.hpp"
#include "core/log/merge.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/wire/json.hpp"

namespace evenclaw {

namespace {

std::string words_of(const LogFlaw& flaw) {
  const std::string where = "device " + to_text(flaw.device) + ", count " +
                            std::to_string(flaw.seq) + ", scope " + to_text(flaw.scope);
  switch (flaw.kind) {
    case LogFlaw::Kind::gap:
      return "an entry is missing: " + where;
    case LogFlaw::Kind::seq_used_twice:
      return "two entries carry the same count: " + where;
    case LogFlaw::Kind::order_jump:
      return "the order jumped further than is believed: " + where;
    case LogFlaw::Kind::supersedes_cycle:
      return "corrections that correct each other in a circle: " + where;
    case LogFlaw::Kind::supersedes_other_kind:
      return "a correction of another kind of entry: " + where;
  }
  return where;
}

CheckFinding finding(std::string_view what, std::string words, std::optional<EntryId> entry) {
  return {std::string(what), std::move(words), entry};
}

/// The entry with no more of its body than says whom it is about and what it takes away.
Entry bare(const Entry& entry) {
  Entry bare{entry.envelope, entry.body_digest, std::nullopt};
  if (!entry.body) return bare;
  JsonObject kept;
  for (const char* member : {"cow", "visit", "target"}) {
    const std::optional<Uuid> id = id_in_body(entry, member);
    if (id) kept.emplace(member, Json(to_text(*id)));
  }
  bare.body = BodyText(canonical_json(Json(std::move(kept))));
  return bare;
}

/// Reads the log once, keeping of the bodies next to nothing.
class LogCheck {
 public:
  void look_at(const Entry& entry) {
    ++checked_.entries;
    if (!entry.body) ++checked_.redacted;
    if (readable(entry) == Readable::unknown_kind) ++checked_.unknown_kinds;
    if (entry.body && sha256(entry.body->bytes()) != entry.body_digest) {
      checked_.findings.push_back(
          finding("digest_wrong", "the body does not fit its digest", entry.envelope.id));
    }
    if (readable(entry) == Readable::body_not_understood) {
      checked_.findings.push_back(finding(
          "body_not_understood",
          "the body of this " + entry.envelope.kind + " cannot be read; it is kept as it is",
          entry.envelope.id));
    }
    if (!ids_.emplace(entry.envelope.scope, entry.envelope.id).second) {
      checked_.findings.push_back(finding(
          "two_versions", "the same entry with other bytes; both are kept", entry.envelope.id));
    }
    envelopes_.push_back(bare(entry));
  }

  [[nodiscard]] CheckedStore finish() && {
    for (const LogFlaw& flaw : flaws_of(envelopes_)) checked_.findings.push_back(finding_of(flaw));
    return std::move(checked_);
  }

 private:
  CheckedStore checked_;
  std::set<std::pair<Uuid, EntryId>> ids_;
  std::vector<Entry> envelopes_;
};

/// A number ends with the cow that left, whoever carries it afterwards.
Result<std::vector<CowNumberRow>> numbers_until_they_left(Store& store) {
  auto rows = select_as<CowNumberRow>(store, std::nullopt);
  if (!rows) return rows.faults();
  const auto cows = select_as<CowRow>(store, std::nullopt);
  if (!cows) return cows.faults();
  std::map<std::pair<HerdId, CowId>, Day> left;
  for (const CowRow& cow : *cows) {
    if (cow.left_on) left[{cow.herd, cow.cow}] = *cow.left_on;
  }
  for (CowNumberRow& row : *rows) {
    const auto day = left.find({row.herd, row.cow});
    if (day != left.end() && !row.valid_to) row.valid_to = day->second;
  }
  return rows;
}

bool lasts_longer(const CowNumberRow& a, const CowNumberRow& b) {
  return b.valid_to && (!a.valid_to || *a.valid_to > *b.valid_to);
}

bool reaches(const CowNumberRow& row, Day day) {
  return !row.valid_to || *row.valid_to >= day;
}

/// By the day they began: whoever keeps it longest so far is the one the next cow can meet.
bool carried_by_two(std::vector<CowNumberRow> carriers) {
  std::sort(carriers.begin(), carriers.end(), [](const CowNumberRow& a, const CowNumberRow& b) {
    return a.valid_from < b.valid_from;
  });
  const CowNumberRow* longest = nullptr;
  for (const CowNumberRow& row : carriers) {
    if (longest != nullptr && longest->cow != row.cow && reaches(*longest, row.valid_from)) {
      return true;
    }
    if (longest == nullptr || lasts_longer(row, *longest)) longest = &row;
  }
  return false;
}

Outcome add_numbers_given_twice(Store& store, CheckedStore& checked) {
  const auto rows = numbers_until_they_left(store);
  if (!rows) return rows.faults();
  std::map<std::pair<HerdId, std::string>, std::vector<CowNumberRow>> by_number;
  for (const CowNumberRow& row : *rows) by_number[{row.herd, row.number}].push_back(row);
  for (const auto& [key, carriers] : by_number) {
    if (!carried_by_two(carriers)) continue;
    checked.findings.push_back(
        finding("number_given_twice",
                "two cows carry " + key.second + " at the same time, herd " + to_text(key.first),
                std::nullopt));
  }
  return Done{};
}

}  // namespace

CheckFinding finding_of(const LogFlaw& flaw) {
  const bool has_entry = flaw.kind != LogFlaw::Kind::gap && !flaw.entry.is_nil();
  return finding(word_of(flaw.kind), words_of(flaw),
                 has_entry ? std::optional(flaw.entry) : std::nullopt);
}

Result<CheckedStore> check_store(Store& store) {
  LogCheck check;
  const Outcome read = store.read_everything([&](const Entry& entry) {
    check.look_at(entry);
    return true;
  });
  if (!read) return read.faults();
  CheckedStore checked = std::move(check).finish();
  const Outcome added = add_numbers_given_twice(store, checked);
  if (!added) return added.faults();
  return checked;
}

}  // namespace evenclaw
