#include "core/log/removed_turns.hpp"

#include <map>
#include <set>
#include <string_view>
#include <utility>

#include "core/log/batch_bodies.hpp"
#include "core/log/bodies.hpp"
#include "core/log/body.hpp"

namespace evenclaw {

namespace {

std::vector<RemovedTurn> removed_of_kind(std::span<const Entry> entries, std::string_view kind) {
  std::set<EntryId> corrected;
  std::map<EntryId, std::pair<const Entry*, Redact>> takers;
  for (const Entry& entry : entries) {
    const Envelope& envelope = entry.envelope;
    if (envelope.kind == kind && envelope.supersedes) {
      corrected.insert(*envelope.supersedes);
    }
    auto redact = body_as<Redact>(entry);
    if (!redact) continue;
    // Taken away twice, it was gone from the first time on.
    const EntryId target = redact->target;
    const auto known = takers.find(target);
    if (known != takers.end() && comes_before(*known->second.first, entry)) continue;
    takers.insert_or_assign(target, std::pair(&entry, *std::move(redact)));
  }
  std::map<EntryId, RemovedTurn> removed;
  for (const Entry& entry : entries) {
    const EntryId id = entry.envelope.id;
    if (entry.envelope.kind != kind || corrected.count(id) > 0) continue;
    const auto taker = takers.find(id);
    if (entry.body && taker == takers.end()) continue;
    RemovedTurn turn{id, entry.envelope.subjects, {}, {}, {}};
    if (taker != takers.end()) {
      const auto& [redaction, body] = taker->second;
      turn.removed_on = day_of(redaction->envelope.at);
      turn.removed_by = redaction->envelope.writer;
      turn.why = body.words;
    }
    removed.insert_or_assign(id, std::move(turn));
  }
  std::vector<RemovedTurn> turns;
  turns.reserve(removed.size());
  for (auto& [id, turn] : removed) turns.push_back(std::move(turn));
  return turns;
}

}  // namespace

std::vector<RemovedTurn> removed_turns(std::span<const Entry> entries) {
  return removed_of_kind(entries, TurnRecorded::kind);
}

std::vector<RemovedTurn> removed_counts(std::span<const Entry> entries) {
  return removed_of_kind(entries, BatchRecorded::kind);
}

}  // namespace evenclaw
