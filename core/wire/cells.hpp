// Flat rows as cells: what a store keeps in a column and a count query compares.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "core/base/fields.hpp"
#include "core/base/result.hpp"
#include "core/wire/leaves.hpp"

namespace evenclaw {

/// Empty, integer or text; a bool is 0 or 1, an enum its word, an id its 36 characters, a day its
/// ISO form (so that text order is time order), a Length its tenths of a millimetre.
using Cell = std::variant<std::monostate, std::int64_t, std::string>;
using Cells = std::vector<Cell>;

enum class CellKind { integer, text };

/// One column of a row type, taken from its fields().
struct Column {
  std::string_view name;
  CellKind kind;
  bool may_be_empty;  // optional<> members only
  std::string_view doc;
  std::string_view unit_or_words;  // as leaf_word(): "ISO day", "id", "bool", "word" ...
};

// Members of a row are leaves and optional leaves; a list or a nested struct does not compile.

template <HasFields T>
std::vector<Column> columns_of();

template <HasFields T>
Cells to_cells(const T& row);

/// One cell per column, in order. Faults carry the slug "row-unreadable" and the column's name in
/// `token`; all of them are collected.
template <HasFields T>
Result<T> from_cells(const Cells& cells);

namespace cells_detail {

template <class T>
struct Inner {
  using Type = T;
};

template <class T>
struct Inner<std::optional<T>> {
  using Type = T;
};

template <class Member>
using LeafOf = typename Inner<Member>::Type;

template <class T>
Cell cell_of(const T& value) {
  if constexpr (is_optional<T>) {
    return value ? cell_of(*value) : Cell{};
  } else {
    static_assert(Leaf<T>, "a row holds only leaves and optional leaves");
    if constexpr (NumberLeaf<T>) {
      return number_of(value);
    } else {
      return text_of(value);
    }
  }
}

template <Leaf T>
std::optional<T> leaf_of(const Cell& cell) {
  if constexpr (NumberLeaf<T>) {
    const auto* number = std::get_if<std::int64_t>(&cell);
    return number == nullptr ? std::nullopt : value_of_number<T>(*number);
  } else {
    const auto* text = std::get_if<std::string>(&cell);
    return text == nullptr ? std::nullopt : value_of_text<T>(*text);
  }
}

Fault wrong_cell(std::string_view column, std::string_view expected, const Cell& found);
Fault wrong_cell_count(std::size_t expected, std::size_t found);

template <class Member>
void read_cell(const Cell& cell, std::string_view column, Member& into, Faults& faults) {
  if constexpr (is_optional<Member>) {
    into.reset();
    if (std::holds_alternative<std::monostate>(cell)) return;
  }
  auto value = leaf_of<LeafOf<Member>>(cell);
  if (!value) {
    faults.push_back(wrong_cell(column, expected_words<LeafOf<Member>>(), cell));
    return;
  }
  into = std::move(*value);
}

struct ColumnCollector {
  std::vector<Column>& columns;

  template <class Owner, class Member>
  void operator()(std::string_view name, Member Owner::*, std::string_view doc) const {
    using Type = LeafOf<Member>;
    static_assert(Leaf<Type>, "a row holds only leaves and optional leaves");
    const CellKind kind = NumberLeaf<Type> ? CellKind::integer : CellKind::text;
    columns.push_back(Column{name, kind, is_optional<Member>, doc, leaf_word<Type>()});
  }
};

}  // namespace cells_detail

template <HasFields T>
std::vector<Column> columns_of() {
  std::vector<Column> columns;
  T::fields(cells_detail::ColumnCollector{columns});
  return columns;
}

template <HasFields T>
Cells to_cells(const T& row) {
  Cells cells;
  for_each_field(row, [&](std::string_view, const auto& member, std::string_view) {
    cells.push_back(cells_detail::cell_of(member));
  });
  return cells;
}

template <HasFields T>
Result<T> from_cells(const Cells& cells) {
  const std::size_t width = columns_of<T>().size();
  if (cells.size() != width) return cells_detail::wrong_cell_count(width, cells.size());
  T row{};
  Faults faults;
  std::size_t at = 0;
  for_each_field(row, [&](std::string_view name, auto& member, std::string_view) {
    cells_detail::read_cell(cells[at], name, member, faults);
    ++at;
  });
  if (!faults.empty()) return faults;
  return row;
}

}  // namespace evenclaw
