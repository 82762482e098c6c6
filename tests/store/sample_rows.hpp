// Seeded rows of the picture of every row type, drawn from few values so that groups and filters
// meet often.
#pragma once

#include <array>
#include <concepts>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

#include "core/base/random.hpp"
#include "core/ports/store.hpp"
#include "core/trade/rows.hpp"
#include "core/wire/cells.hpp"
#include "tests/store/sample_entries.hpp"

namespace evenclaw {

template <class T>
T drawn(RandomStream& random, std::type_identity<T>);

inline std::string drawn(RandomStream& random, std::type_identity<std::string>) {
  // Texts that sort differently by bytes, by letters and by case, or that SQL might stumble over.
  static constexpr std::array<std::string_view, 9> texts = {
      "", "a", "B", "b", "\xc3\x84", "~", "it's \"raw\"", "a b", "\xf0\x9f\x90\x84"};
  return std::string(texts[random.below(texts.size())]);
}

inline FootSet drawn(RandomStream& random, std::type_identity<FootSet>) {
  FootSet feet;
  for (const Foot foot : all_feet) {
    if (random.chance(0.5)) feet.add(foot);
  }
  return feet;
}

inline ReasonSet drawn(RandomStream& random, std::type_identity<ReasonSet>) {
  ReasonSet reasons;
  for (const EnumWord<Reason>& row : EnumWords<Reason>::table) {
    if (random.chance(0.3)) reasons.add(row.value);
  }
  return reasons;
}

inline Length drawn(RandomStream& random, std::type_identity<Length>) {
  return Length{static_cast<std::int32_t>(random.below(7))};
}

template <WordedEnum T>
T drawn(RandomStream& random, std::type_identity<T>) {
  const auto& table = EnumWords<T>::table;
  return table[random.below(static_cast<std::uint32_t>(std::size(table)))].value;
}

template <class Tag>
Id<Tag> drawn(RandomStream& random, std::type_identity<Id<Tag>>) {
  return Id<Tag>{sample_id("any", random.below(6))};
}

inline Day drawn(RandomStream& random, std::type_identity<Day>) {
  return Day{20'000 + static_cast<std::int32_t>(random.below(8))};
}

inline bool drawn(RandomStream& random, std::type_identity<bool>) {
  return random.chance(0.5);
}

template <std::signed_integral T>
T drawn(RandomStream& random, std::type_identity<T>) {
  return static_cast<T>(random.below(7)) - 2;
}

template <class T>
std::optional<T> drawn(RandomStream& random, std::type_identity<std::optional<T>>) {
  if (random.chance(0.3)) return std::nullopt;
  return drawn(random, std::type_identity<T>{});
}

/// A row of this herd; its second key column is set by the caller.
template <HasFields Row>
Row drawn_row(RandomStream& random, HerdId herd) {
  Row row{};
  for_each_field(row, [&]<class Member>(std::string_view, Member& member, std::string_view) {
    member = drawn(random, std::type_identity<Member>{});
  });
  row.herd = herd;
  return row;
}

/// Rows of one cow in all her tables, keys sometimes twice.
inline Rows drawn_rows(RandomStream& random, HerdId herd, CowId cow) {
  Rows rows;
  for_each_table(rows, [&]<class Row>(std::vector<Row>& table) {
    if constexpr (requires(Row & row) { row.cow; }) {
      if (rows_of(*find_table(Row::table)) != RowsOf::cow) return;
      const std::uint32_t count = random.below(8);
      for (std::uint32_t i = 0; i < count; ++i) {
        table.push_back(drawn_row<Row>(random, herd));
        table.back().cow = cow;
      }
    }
  });
  return rows;
}

inline Rows drawn_visit_rows(RandomStream& random, HerdId herd, VisitId visit) {
  Rows rows;
  rows.visits.push_back(drawn_row<VisitRow>(random, herd));
  rows.visits.back().visit = visit;
  const std::uint32_t batches = random.below(4);
  rows.batches.reserve(batches);
  for (std::uint32_t i = 0; i < batches; ++i) {
    rows.batches.push_back(drawn_row<BatchRow>(random, herd));
    rows.batches.back().visit = visit;
  }
  rows.mobility_scorings.push_back(drawn_row<MobilityScoringRow>(random, herd));
  rows.mobility_scorings.back().scoring = visit;
  const std::uint32_t scores = random.below(6);
  for (std::uint32_t i = 0; i < scores; ++i) {
    rows.mobility_scores.push_back(drawn_row<MobilityScoreRow>(random, herd));
    rows.mobility_scores.back().scoring = visit;
  }
  for (std::uint32_t i = 0; i < scores; ++i) {
    rows.farm_walks.push_back(drawn_row<FarmWalkRow>(random, herd));
    rows.farm_walks.back().walk = visit;
  }
  rows.farm_changes.push_back(drawn_row<FarmChangeRow>(random, herd));
  rows.farm_changes.back().change = visit;
  return rows;
}

/// Pictures of five cows and three visits in each of three herds.
inline Write drawn_pictures(std::uint64_t seed) {
  RandomStream random(seed, 3);
  Write write;
  for (std::int64_t h = 1; h <= 3; ++h) {
    const HerdId herd = sample_herd(h);
    for (std::int64_t c = 0; c < 5; ++c) {
      const CowId cow = sample_cow(h * 10 + c);
      write.cows.push_back({herd, {cow}, drawn_rows(random, herd, cow)});
    }
    for (std::int64_t v = 0; v < 3; ++v) {
      const VisitId visit = sample_visit(h * 10 + v);
      write.visits.push_back({herd, visit, drawn_visit_rows(random, herd, visit)});
    }
  }
  return write;
}

}  // namespace evenclaw
