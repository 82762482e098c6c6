#include "core/log/standing.hpp"

#include <algorithm>
#include <map>
#include <numeric>
#include <optional>
#include <set>
#include <tuple>
#include <utility>

#include "core/log/body.hpp"
#include "core/log/merge.hpp"
#include "core/log/visit_facts.hpp"

namespace evenclaw {

namespace {

using Target = std::optional<std::size_t>;

bool may_correct(const Entry& correction, const Entry& target, bool is_redacted) {
  if (correction.envelope.kind != target.envelope.kind) return false;
  const std::vector<Uuid> subjects = is_redacted ? target.envelope.subjects : about(target);
  return std::all_of(subjects.begin(), subjects.end(),
                     [&](const Uuid& subject) { return names_subject(correction, subject); });
}

// The position each entry corrects, before rings are looked for.
std::vector<Target> targets_among(std::span<const Entry* const> entries,
                                  const std::set<ScopedId>& redacted, Corrections& found) {
  std::map<ScopedId, std::size_t> position_of;
  for (std::size_t i = 0; i < entries.size(); ++i) position_of.emplace(scoped_id(*entries[i]), i);
  std::vector<Target> targets(entries.size());
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const Envelope& envelope = entries[i]->envelope;
    if (!envelope.supersedes) continue;
    const auto at = position_of.find({envelope.scope, *envelope.supersedes});
    if (at == position_of.end()) continue;
    const Entry& target = *entries[at->second];
    if (may_correct(*entries[i], target, redacted.count(scoped_id(target)) > 0)) {
      targets[i] = at->second;
    } else {
      found.not_fitting.push_back(i);
    }
  }
  return targets;
}

// Each entry corrects at most one other, so a walk from any of them runs out or enters one ring.
void cut_rings(std::vector<Target>& targets, Corrections& found) {
  constexpr std::size_t never = 0;
  std::vector<std::size_t> walk_of(targets.size(), never);
  std::vector<bool> ring(targets.size(), false);
  for (std::size_t start = 0; start < targets.size(); ++start) {
    const std::size_t walk = start + 1;
    Target at = start;
    while (at && walk_of[*at] == never) {
      walk_of[*at] = walk;
      at = targets[*at];
    }
    if (!at || walk_of[*at] != walk) continue;
    for (Target member = at; !ring[*member]; member = targets[*member]) ring[*member] = true;
  }
  for (std::size_t i = 0; i < ring.size(); ++i) {
    if (!ring[i]) continue;
    targets[i].reset();
    found.in_a_ring.push_back(i);
  }
}

// What every correction of an entry finally corrects; itself when it corrects nothing.
std::vector<std::size_t> roots_of(const std::vector<Target>& targets) {
  std::vector<Target> known(targets.size());
  std::vector<std::size_t> roots(targets.size());
  std::vector<std::size_t> path;
  for (std::size_t start = 0; start < targets.size(); ++start) {
    std::size_t at = start;
    path.clear();
    while (!known[at] && targets[at]) {
      path.push_back(at);
      at = *targets[at];
    }
    const std::size_t root = known[at] ? *known[at] : at;
    known[at] = root;
    for (const std::size_t passed : path) known[passed] = root;
  }
  for (std::size_t i = 0; i < roots.size(); ++i) roots[i] = *known[i];
  return roots;
}

bool corrects_something(const Entry* entry) {
  return entry->envelope.supersedes.has_value();
}

// Of two forms of the same bytes the one to keep: redacted beats full, but a redact entry keeps its
// body, or what it takes away would come back.
bool is_preferred(const Entry& offered, const Entry& kept) {
  const bool wants_body = offered.envelope.kind == Redact::kind;
  return offered.body.has_value() == wants_body && kept.body.has_value() != wants_body;
}

const Entry* shown_of(std::span<const Entry* const> versions, bool& differ) {
  const Entry* shown = versions.front();
  if (versions.size() == 1) return shown;
  Digest lowest = digest_of(*shown);
  for (const Entry* version : versions.subspan(1)) {
    const Digest digest = digest_of(*version);
    differ = differ || digest != lowest;
    if (digest < lowest || (digest == lowest && is_preferred(*version, *shown))) {
      shown = version;
      lowest = digest;
    }
  }
  return shown;
}

std::vector<const Entry*> each_id_once(std::span<const Entry> entries,
                                       std::vector<EntryId>& in_two_versions) {
  std::vector<const Entry*> sorted;
  sorted.reserve(entries.size());
  for (const Entry& entry : entries) sorted.push_back(&entry);
  std::sort(sorted.begin(), sorted.end(),
            [](const Entry* a, const Entry* b) { return scoped_id(*a) < scoped_id(*b); });
  std::vector<const Entry*> shown;
  for (std::size_t first = 0; first < sorted.size();) {
    std::size_t end = first + 1;
    while (end < sorted.size() && scoped_id(*sorted[end]) == scoped_id(*sorted[first])) ++end;
    bool differ = false;
    shown.push_back(shown_of(std::span(sorted).subspan(first, end - first), differ));
    if (differ) in_two_versions.push_back(shown.back()->envelope.id);
    first = end;
  }
  return shown;
}

}  // namespace

ScopedId scoped_id(const Entry& entry) {
  return {entry.envelope.scope, entry.envelope.id};
}

std::set<ScopedId> redacted_among(std::span<const Entry> entries) {
  std::set<ScopedId> redacted;
  for (const Entry& entry : entries) {
    const std::optional<EntryId> target = redact_target(entry);
    if (target) redacted.insert({entry.envelope.scope, *target});
  }
  return redacted;
}

std::vector<Uuid> about(const Entry& entry) {
  for (const std::string_view member : {"cow", "visit"}) {
    if (const std::optional<Uuid> subject = id_in_body(entry, member)) return {*subject};
  }
  return entry.envelope.subjects;
}

Corrections corrections_among(std::span<const Entry* const> entries,
                              const std::set<ScopedId>& redacted) {
  Corrections found;
  found.counts.assign(entries.size(), true);
  found.first.resize(entries.size());
  std::iota(found.first.begin(), found.first.end(), std::size_t{0});
  if (std::none_of(entries.begin(), entries.end(), corrects_something)) return found;

  std::vector<Target> targets = targets_among(entries, redacted, found);
  cut_rings(targets, found);
  for (const Target& target : targets) {
    if (target) found.counts[*target] = false;
  }
  found.first = roots_of(targets);
  std::map<std::size_t, std::size_t> last_of_family;
  for (std::size_t i = 0; i < entries.size(); ++i) {
    if (!found.counts[i]) continue;
    const auto [at, is_first] = last_of_family.emplace(found.first[i], i);
    if (is_first) continue;
    const std::size_t other = at->second;
    const std::size_t last = comes_before(*entries[other], *entries[i]) ? i : other;
    found.counts[last == i ? other : i] = false;
    at->second = last;
  }
  return found;
}

Standing standing_among(std::span<const Entry> entries) {
  Standing standing;
  const std::vector<const Entry*> shown = each_id_once(entries, standing.in_two_versions);
  const std::set<ScopedId> redacted = redacted_among(entries);
  const Corrections corrections = corrections_among(shown, redacted);
  std::vector<std::size_t> counting;
  for (std::size_t i = 0; i < shown.size(); ++i) {
    const Entry& entry = *shown[i];
    const bool is_redacted = !entry.body || (entry.envelope.kind != Redact::kind &&
                                             redacted.count(scoped_id(entry)) > 0);
    if (corrections.counts[i] && !is_redacted) counting.push_back(i);
  }
  std::sort(counting.begin(), counting.end(), [&](std::size_t a, std::size_t b) {
    return stands_before(*shown[corrections.first[a]], *shown[corrections.first[b]]);
  });
  for (const std::size_t at : counting) standing.entries.push_back(shown[at]);
  std::sort(standing.in_two_versions.begin(), standing.in_two_versions.end());
  return standing;
}

bool stands_before(const Entry& a, const Entry& b) {
  if (a.envelope.scope != b.envelope.scope) return a.envelope.scope < b.envelope.scope;
  return comes_before(a, b);
}

}  // namespace evenclaw
