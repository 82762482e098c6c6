// What is known of a cow besides her feet, each perhaps not: breed, birth, weight, calving.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"

namespace evenclaw {

struct CowPast;  // core/trade/check.hpp
struct Rows;     // core/trade/rows.hpp

enum class HeiferOrCow { heifer, cow };

template <>
struct EnumWords<HeiferOrCow> {
  static constexpr EnumWord<HeiferOrCow> table[] = {{HeiferOrCow::heifer, "heifer"},
                                                    {HeiferOrCow::cow, "cow"}};
};

/// As near as anybody can tell without scales. One limit only, for only one has a source: the usual
/// least length of a claw is said not to hold under 400 kg (a brochure with the lesion committee).
enum class WeightClass { under_400_kg, from_400_kg };

template <>
struct EnumWords<WeightClass> {
  static constexpr EnumWord<WeightClass> table[] = {{WeightClass::under_400_kg, "under_400_kg"},
                                                    {WeightClass::from_400_kg, "from_400_kg"}};
};

WeightClass weight_class_of(int kilograms);

/// Nothing here is ever guessed: what nobody told is absent.
struct CowFacts {
  std::optional<std::string> breed;  // as told
  std::optional<Day> born;
  std::optional<HeiferOrCow> heifer_or_cow;
  std::optional<Day> heifer_or_cow_on;  // the day it was told; a heifer calves
  std::optional<WeightClass> weight;
  std::optional<Day> calved;              // last
  std::optional<std::int32_t> lactation;  // the number of the one since then, from 1
  std::optional<Day> dry_off;             // she was, or is to be, dried off
  std::optional<Day> due_to_calve;

  friend bool operator==(const CowFacts&, const CowFacts&) = default;
};

/// What was registered of her, and of heifer or cow whatever was told last, in the register or in a
/// turn (called a heifer; called fresh or to be dried off, she has calved) or by her calving.
CowFacts facts_of(const Rows& rows);
/// The same of what is known before the turn.
CowFacts facts_of(const CowPast& past);

/// She is a heifer still, as far as was told: not called a cow since, and it was told at most a
/// year ago (our judgement: heifers come to be trimmed in the months before they calve). Nothing
/// told is no heifer.
bool is_heifer_on(const CowFacts& facts, Day today);

/// A breed of small cows, for which the lengths of the big breeds do not hold; letter case does not
/// matter. False for what is not in the table: it holds the breeds somebody named, no more.
bool is_small_breed(std::string_view breed);

}  // namespace evenclaw
