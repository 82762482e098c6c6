// The body of an entry that tells who a cow is and what is known of her.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/trade/cow_facts.hpp"

namespace evenclaw {

/// What a register or somebody who knows her says of a cow. A later one about the same cow adds to
/// what is known, and what it says otherwise holds from then on.
struct CowRegistered {
  static constexpr std::string_view kind = "cow_registered";
  static constexpr std::int32_t version = 3;
  CowId cow;
  std::string number;  // "" when more is told of her and no number
  Day valid_from;
  std::optional<Day> valid_to = {};
  std::optional<std::string> tag = {};         // to_text(NationalTag)
  std::optional<std::string> electronic = {};  // to_text(ElectronicNumber); a pair with the tag
  std::vector<std::string> aliases = {};
  std::optional<std::string> breed = {};
  std::optional<Day> born = {};
  std::optional<HeiferOrCow> heifer_or_cow = {};
  std::optional<WeightClass> weight = {};
  std::optional<Day> calved = {};  // this and what follows since version 3
  std::optional<std::int32_t> lactation = {};
  std::optional<Day> dry_off = {};
  std::optional<Day> due_to_calve = {};

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cow", &CowRegistered::cow, "cow");
    visit("number", &CowRegistered::number, "herd number as given, empty when none was");
    visit("valid_from", &CowRegistered::valid_from, "first day number and tag are hers");
    visit("valid_to", &CowRegistered::valid_to, "last day the number is hers, when it ended");
    visit("tag", &CowRegistered::tag, "number of the official ear tag");
    visit("electronic", &CowRegistered::electronic, "electronic number in that tag, 15 digits");
    visit("aliases", &CowRegistered::aliases, "other names she goes by");
    visit("breed", &CowRegistered::breed, "breed, as told");
    visit("born", &CowRegistered::born, "day of her birth");
    visit("heifer_or_cow", &CowRegistered::heifer_or_cow, "whether she had calved by valid_from");
    visit("weight", &CowRegistered::weight, "weight class, as near as anybody could tell");
    visit("calved", &CowRegistered::calved, "day she calved last");
    visit("lactation", &CowRegistered::lactation, "number of the lactation since then");
    visit("dry_off", &CowRegistered::dry_off, "day she was or is to be dried off");
    visit("due_to_calve", &CowRegistered::due_to_calve, "day she is to calve");
  }
};

}  // namespace evenclaw
