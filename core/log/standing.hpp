// Which of some entries count, without copying them: the ground that pictures are made on.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "core/base/id.hpp"
#include "core/log/entry.hpp"

namespace evenclaw {

/// What corrects what among entries of which each (scope, id) stands once.
struct Corrections {
  std::vector<bool> counts;             // per entry: not superseded, and the last of its family
  std::vector<std::size_t> in_a_ring;   // positions of those that supersede each other in a ring
  std::vector<std::size_t> other_kind;  // positions of those that name an entry of another kind
};

Corrections corrections_among(std::span<const Entry* const> entries);

/// The entries that count (see effective()), in the total order of each scope.
struct Standing {
  std::vector<const Entry*> entries;
  std::vector<EntryId> in_two_versions;  // sorted; of these the lowest digest was taken
};

Standing standing_among(std::span<const Entry> entries);

/// By scope, and within it the total order.
bool stands_before(const Entry& a, const Entry& b);

}  // namespace evenclaw
