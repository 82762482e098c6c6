#include "core/log/merge.hpp"

#include <algorithm>

#include "core/log/body.hpp"
#include "core/log/standing.hpp"

namespace evenclaw {

namespace {

void sort_in_total_order(std::vector<Entry>& entries) {
  std::sort(entries.begin(), entries.end(), stands_before);
}

bool is_redact_entry(const Entry& entry) {
  return entry.envelope.kind == Redact::kind;
}

}  // namespace

std::optional<EntryId> redact_target(const Entry& entry) {
  const std::optional<Redact> redact = body_as<Redact>(entry);
  if (!redact) return std::nullopt;
  return redact->target;
}

void EntrySet::drop_bodies(const Uuid& scope, EntryId target) {
  for (auto at = entries_.lower_bound({scope, target, Digest{}}); at != entries_.end(); ++at) {
    if (at->first.scope != scope || at->first.id != target) return;
    if (!is_redact_entry(at->second)) at->second.body.reset();
  }
}

Kept EntrySet::add(Entry entry) {
  const Uuid scope = entry.envelope.scope;
  const Key key{scope, entry.envelope.id, digest_of(entry)};
  const bool keeps_body = is_redact_entry(entry);
  if (!keeps_body && redacted_.count({scope, key.id}) > 0) entry.body.reset();
  if (const std::optional<EntryId> target = redact_target(entry)) {
    redacted_.insert({scope, *target});
    drop_bodies(scope, *target);
  }

  const auto first_version = entries_.lower_bound({scope, key.id, Digest{}});
  const bool id_is_known = first_version != entries_.end() && first_version->first.scope == scope &&
                           first_version->first.id == key.id;
  const auto known = entries_.find(key);
  if (known == entries_.end()) {
    entries_.emplace(key, std::move(entry));
    return id_is_known ? Kept::two_versions : Kept::stored;
  }
  Entry& kept = known->second;
  if (keeps_body && !kept.body) kept.body = std::move(entry.body);
  if (keeps_body || entry.body || !kept.body) return Kept::already;
  kept.body.reset();
  return Kept::redacted_now;
}

void EntrySet::add_all(const EntrySet& other) {
  for (const auto& [key, entry] : other.entries_) add(entry);
}

std::vector<Entry> EntrySet::shown() const {
  std::vector<Entry> shown;
  const Key* before = nullptr;
  for (const auto& [key, entry] : entries_) {
    const bool is_other_version =
        before != nullptr && before->scope == key.scope && before->id == key.id;
    if (!is_other_version) shown.push_back(entry);
    before = &key;
  }
  sort_in_total_order(shown);
  return shown;
}

std::vector<Entry> EntrySet::everything() const {
  std::vector<Entry> all;
  for (const auto& [key, entry] : entries_) all.push_back(entry);
  sort_in_total_order(all);
  return all;
}

std::vector<EntryId> EntrySet::in_two_versions() const {
  std::vector<EntryId> ids;
  const Key* before = nullptr;
  for (const auto& [key, entry] : entries_) {
    if (before != nullptr && before->scope == key.scope && before->id == key.id) {
      ids.push_back(key.id);
    }
    before = &key;
  }
  std::sort(ids.begin(), ids.end());
  ids.erase(std::unique(ids.begin(), ids.end()), ids.end());
  return ids;
}

}  // namespace evenclaw
