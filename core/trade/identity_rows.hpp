// Rows of the picture about what identifies a cow besides her herd number, and what is known of
// her.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/trade/cow_facts.hpp"

namespace evenclaw {

/// An ear tag and the electronic number in it, a pair as it was told; either may be unknown. One
/// cow may have had several.
struct CowTagRow {
  static constexpr std::string_view table = "cow_tag";
  static constexpr int key_columns = 5;
  HerdId herd;
  CowId cow;
  Day valid_from;
  std::string tag;         // "UK123450600001"; "" when unknown
  std::string electronic;  // 15 digits; "" when unknown
  std::optional<Day> valid_to;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &CowTagRow::herd, "herd");
    visit("cow", &CowTagRow::cow, "cow");
    visit("valid_from", &CowTagRow::valid_from, "first day it was hers");
    visit("tag", &CowTagRow::tag, "number of the official ear tag");
    visit("electronic", &CowTagRow::electronic, "electronic number, 15 digits");
    visit("valid_to", &CowTagRow::valid_to, "last day it was hers");
  }
};

/// Another name she goes by: a name, a number on a collar.
struct CowAliasRow {
  static constexpr std::string_view table = "cow_alias";
  static constexpr int key_columns = 3;
  HerdId herd;
  CowId cow;
  std::string alias;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &CowAliasRow::herd, "herd");
    visit("cow", &CowAliasRow::cow, "cow");
    visit("alias", &CowAliasRow::alias, "another name she goes by");
  }
};

/// What was registered of her; no row when nothing was.
struct CowFactsRow {
  static constexpr std::string_view table = "cow_facts";
  static constexpr int key_columns = 2;
  HerdId herd;
  CowId cow;
  std::optional<std::string> breed;
  std::optional<Day> born;
  std::optional<HeiferOrCow> heifer_or_cow;
  std::optional<Day> heifer_or_cow_on;
  std::optional<WeightClass> weight;
  std::optional<Day> calved;
  std::optional<std::int32_t> lactation;
  std::optional<Day> dry_off;
  std::optional<Day> due_to_calve;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &CowFactsRow::herd, "herd");
    visit("cow", &CowFactsRow::cow, "cow");
    visit("breed", &CowFactsRow::breed, "breed, as told");
    visit("born", &CowFactsRow::born, "day of her birth");
    visit("heifer_or_cow", &CowFactsRow::heifer_or_cow, "whether she had calved");
    visit("heifer_or_cow_on", &CowFactsRow::heifer_or_cow_on, "the day that was told");
    visit("weight", &CowFactsRow::weight, "weight class, as near as anybody could tell");
    visit("calved", &CowFactsRow::calved, "day she calved last");
    visit("lactation", &CowFactsRow::lactation, "number of the lactation since then");
    visit("dry_off", &CowFactsRow::dry_off, "day she was or is to be dried off");
    visit("due_to_calve", &CowFactsRow::due_to_calve, "day she is to calve");
  }
};

}  // namespace evenclaw
