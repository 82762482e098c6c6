// One table after the other is read from the store, and what went wrong with any is told together.
#pragma once

#include <utility>
#include <vector>

#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/ports/store.hpp"

namespace evenclaw {

/// Fills one table of rows; when it cannot be read it stays as it is, and its faults are added.
template <class RowType>
void fill(std::vector<RowType>& into, Faults& faults, Store& store, HerdId herd,
          std::vector<Filter> where) {
  auto rows = select_as<RowType>(store, herd, std::move(where));
  if (rows) {
    into = *std::move(rows);
  } else {
    faults.insert(faults.end(), rows.faults().begin(), rows.faults().end());
  }
}

}  // namespace evenclaw
