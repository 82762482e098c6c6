// Which of some entries count, without copying them: the ground that pictures are made on.
#pragma once

#include <cstddef>
#include <set>
#include <span>
#include <utility>
#include <vector>

#include "core/base/id.hpp"
#include "core/log/entry.hpp"

namespace evenclaw {

using ScopedId = std::pair<Uuid, EntryId>;
ScopedId scoped_id(const Entry& entry);

/// The entries whose bodies redact entries among these take away.
std::set<ScopedId> redacted_among(std::span<const Entry> entries);

/// What an entry is about: its cow, or for an entry about a visit that visit; all its subjects
/// where no body says. Whoever corrects it names these too, so that both are always found together.
std::vector<Uuid> about(const Entry& entry);

/// What corrects what among entries of which each (scope, id) stands once.
struct Corrections {
  std::vector<bool> counts;              // per entry: not superseded, and the last of its family
  std::vector<std::size_t> first;        // per entry: the position its corrections lead back to
  std::vector<std::size_t> in_a_ring;    // positions of those that supersede each other in a ring
  std::vector<std::size_t> not_fitting;  // positions of those that do not fit what they name
};

Corrections corrections_among(std::span<const Entry* const> entries,
                              const std::set<ScopedId>& redacted);

/// The entries that count, in the total order of each scope: without those superseded, without
/// those whose body is redacted. Entries that correct one another, directly or in a chain, are a
/// family of which one counts: the last in the total order among those nothing supersedes. It
/// stands where the first entry stands that it leads back to: it says what was so then. A
/// correction counts only within scope and kind, and only if it names the cow or visit of what it
/// corrects, so that both are found together; in a ring of corrections none of them does.
/// A redacted correction still supersedes: taking words away brings no older ones back.
struct Standing {
  std::vector<const Entry*> entries;
  std::vector<EntryId> in_two_versions;  // sorted; of these the lowest digest was taken
};

Standing standing_among(std::span<const Entry> entries);

/// By scope, and within it the total order.
bool stands_before(const Entry& a, const Entry& b);

}  // namespace evenclaw
