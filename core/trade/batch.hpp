// A batch: animals counted together, of which nobody was called by her number.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/base/enum_words.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// What they were called; `animals` when only that they were some.
enum class AnimalKind { animals, cows, dry_cows, heifers, youngstock, bulls };

template <>
struct EnumWords<AnimalKind> {
  static constexpr EnumWord<AnimalKind> table[] = {
      {AnimalKind::animals, "animals"},       {AnimalKind::cows, "cows"},
      {AnimalKind::dry_cows, "dry_cows"},     {AnimalKind::heifers, "heifers"},
      {AnimalKind::youngstock, "youngstock"}, {AnimalKind::bulls, "bulls"}};
};

/// One animal is a cow and is called. More than this nobody trims in a day with one crush, so a
/// higher number is likely that of a cow: our judgement, no source.
inline constexpr std::int32_t fewest_in_a_batch = 2;
inline constexpr std::int32_t most_in_a_batch = 200;

struct Batch {
  std::int32_t counted = 0;  // as said, those apart among them; 0 when counted twice by mistake
  AnimalKind animals = AnimalKind::animals;
  std::string place;  // where they stand or came from, in free words; "" when not said
  bool nothing_found = false;
  Trimmed trimmed = Trimmed::not_called;
  FootSet lifted;                  // the feet of each of them; empty when nobody said
  std::vector<std::string> apart;  // who was not like the others, as called: a cow of her own

  /// Those of whom the line speaks: all but those apart.
  [[nodiscard]] std::int32_t together() const;

  friend bool operator==(const Batch&, const Batch&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("counted", &Batch::counted,
          "how many, those apart among them; 0 when they were counted twice by mistake");
    visit("animals", &Batch::animals, "what they were called");
    visit("place", &Batch::place, "where they stand or came from, as said");
    visit("nothing_found", &Batch::nothing_found, "nothing was found on those not apart");
    visit("trimmed", &Batch::trimmed, "whether they were trimmed");
    visit("lifted", &Batch::lifted, "the feet of each that were lifted, empty when not said");
    visit("apart", &Batch::apart, "who was not like the others, as called; a cow of her own");
  }
};

}  // namespace evenclaw
