#include <algorithm>
#include <tuple>

#include "core/log/merge.hpp"
#include "core/log/standing.hpp"

namespace evenclaw {

namespace {

using Entries = std::vector<const Entry*>;

LogFlaw flaw_of(LogFlaw::Kind kind, const Entry& entry) {
  const Envelope& envelope = entry.envelope;
  return {kind, envelope.scope, envelope.device, envelope.seq, envelope.id};
}

// Entries sorted by scope, device and seq.
void find_seq_flaws(const Entries& sorted, std::vector<LogFlaw>& flaws) {
  const Envelope* before = nullptr;
  for (const Entry* entry : sorted) {
    const Envelope& envelope = entry->envelope;
    const bool same_count =
        before != nullptr && before->scope == envelope.scope && before->device == envelope.device;
    const std::int64_t last = same_count ? before->seq : 0;
    if (envelope.seq > last + 1) {
      flaws.push_back({LogFlaw::Kind::gap, envelope.scope, envelope.device, last + 1, EntryId{}});
    }
    // Two versions of one entry share its seq; that they differ is told elsewhere.
    if (same_count && envelope.seq == last && envelope.id != before->id) {
      flaws.push_back(flaw_of(LogFlaw::Kind::seq_used_twice, *entry));
    }
    before = &envelope;
  }
}

// Entries sorted by scope and order: what lies too far above all below it is not believed.
void find_order_jumps(const Entries& sorted, std::vector<LogFlaw>& flaws) {
  Uuid scope;
  std::int64_t believed = 0;
  for (const Entry* entry : sorted) {
    if (entry->envelope.scope != scope) {
      scope = entry->envelope.scope;
      believed = 0;
    }
    if (entry->envelope.order - believed > largest_order_jump) {
      flaws.push_back(flaw_of(LogFlaw::Kind::order_jump, *entry));
    } else {
      believed = entry->envelope.order;
    }
  }
}

Entries each_id_once(Entries entries) {
  const auto same_id = [](const Entry* a, const Entry* b) {
    return a->envelope.scope == b->envelope.scope && a->envelope.id == b->envelope.id;
  };
  std::sort(entries.begin(), entries.end(), [&](const Entry* a, const Entry* b) {
    const auto left = std::tie(a->envelope.scope, a->envelope.id);
    const auto right = std::tie(b->envelope.scope, b->envelope.id);
    return left != right ? left < right : digest_of(*a) < digest_of(*b);
  });
  entries.erase(std::unique(entries.begin(), entries.end(), same_id), entries.end());
  return entries;
}

void find_correction_flaws(const Entries& shown, const std::set<ScopedId>& redacted,
                           std::vector<LogFlaw>& flaws) {
  const Corrections corrections = corrections_among(shown, redacted);
  for (const std::size_t at : corrections.in_a_ring) {
    flaws.push_back(flaw_of(LogFlaw::Kind::supersedes_cycle, *shown[at]));
  }
  for (const std::size_t at : corrections.not_fitting) {
    flaws.push_back(flaw_of(LogFlaw::Kind::supersedes_other_kind, *shown[at]));
  }
}

}  // namespace

std::vector<LogFlaw> flaws_of(std::span<const Entry> entries) {
  Entries sorted;
  sorted.reserve(entries.size());
  for (const Entry& entry : entries) sorted.push_back(&entry);
  std::vector<LogFlaw> flaws;

  std::sort(sorted.begin(), sorted.end(), [](const Entry* a, const Entry* b) {
    const Envelope& x = a->envelope;
    const Envelope& y = b->envelope;
    return std::tie(x.scope, x.device, x.seq, x.id) < std::tie(y.scope, y.device, y.seq, y.id);
  });
  find_seq_flaws(sorted, flaws);
  std::sort(sorted.begin(), sorted.end(),
            [](const Entry* a, const Entry* b) { return stands_before(*a, *b); });
  find_order_jumps(sorted, flaws);
  find_correction_flaws(each_id_once(std::move(sorted)), redacted_among(entries), flaws);

  std::sort(flaws.begin(), flaws.end(), [](const LogFlaw& a, const LogFlaw& b) {
    return std::tie(a.scope, a.device, a.seq, a.kind, a.entry) <
           std::tie(b.scope, b.device, b.seq, b.kind, b.entry);
  });
  return flaws;
}

}  // namespace evenclaw
