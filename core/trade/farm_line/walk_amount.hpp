// What a number of a farm walk can be of, and how much it is in the unit of the records.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/trade/farm_line/farm_words.hpp"
#include "core/trade/farm_walk.hpp"

namespace evenclaw {

/// "Cubicles" and "wide" are the cubicle width; nothing where that is not measured.
std::optional<WalkMeasure> length_measure(std::optional<FarmTopic> topic, FarmDimension dimension);

/// All that is measured of it, for when nobody looked.
std::vector<WalkMeasure> measures_of(FarmTopic topic);

/// A number as it was said, with the unit where one was.
struct Amount {
  std::int64_t thousandths = 0;
  std::optional<FarmUnit> unit;
  std::size_t place = 0;

  /// As a whole number of something that is said in so many parts of it; nothing when it is none.
  [[nodiscard]] std::optional<std::int64_t> whole(std::int64_t factor) const;
  /// The number alone, "3.5".
  [[nodiscard]] std::string as_said() const;
};

/// Millimetres in one of that unit; nothing where it is no length.
std::optional<std::int64_t> mm_in(FarmUnit unit);

/// Whether anybody measures so much.
bool is_measured(WalkMeasure measure, std::int64_t value);

}  // namespace evenclaw
