// The order of rows by their key, the same in memory as in any store.
#pragma once

#include <algorithm>
#include <string_view>
#include <type_traits>

#include "core/base/enum_words.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// Compares the key columns as their cells would compare: ids and days as their text, words of
/// enums by their bytes, numbers as numbers.
template <class Row>
bool key_less(const Row& a, const Row& b) {
  int column = 0;
  int decided = 0;
  Row::fields([&](std::string_view, auto member, std::string_view) {
    if (decided != 0 || column++ >= Row::key_columns) return;
    using Member = std::remove_cvref_t<decltype(a.*member)>;
    const auto compare = [&](const auto& x, const auto& y) {
      if (x < y) decided = -1;
      if (y < x) decided = 1;
    };
    if constexpr (std::is_enum_v<Member>) {
      compare(word_of(a.*member), word_of(b.*member));
    } else if constexpr (requires(Member x) { x < x; }) {
      // A set of feet has no order and is no key.
      compare(a.*member, b.*member);
    }
  });
  return decided < 0;
}

inline void sort_by_key(Rows& rows) {
  for_each_table(rows, [](auto& table) {
    using Row = typename std::remove_reference_t<decltype(table)>::value_type;
    std::sort(table.begin(), table.end(), key_less<Row>);
  });
}

}  // namespace evenclaw
