// Rows of the picture about animals that were counted together.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/trade/batch.hpp"

namespace evenclaw {

/// For the bill and the figures of batches. No cow stands behind it, so it is part of no count of
/// cows, turns, feet or findings; who was apart is a cow with a turn of her own and counted there.
struct BatchRow {
  static constexpr std::string_view table = "batch";
  static constexpr int key_columns = 3;
  HerdId herd;
  VisitId visit;
  EntryId batch;
  Day day;
  AnimalKind animals = AnimalKind::animals;
  std::string place;
  std::int32_t counted = 0;
  std::int32_t apart = 0;
  std::int32_t together = 0;
  std::int32_t nothing_found = 0;
  Trimmed trimmed = Trimmed::not_called;
  FootSet lifted;
  std::int32_t feet = 0;
  std::string apart_words;
  PersonId caller;
  PersonId writer;
  std::string words;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &BatchRow::herd, "herd");
    visit("visit", &BatchRow::visit, "visit");
    visit("batch", &BatchRow::batch, "the entry that recorded it");
    visit("day", &BatchRow::day, "day of the visit");
    visit("animals", &BatchRow::animals, "what they were called");
    visit("place", &BatchRow::place, "where they stand or came from, as said");
    visit("counted", &BatchRow::counted, "how many were counted, those apart among them");
    visit("apart", &BatchRow::apart, "how many of them were called as cows of their own");
    visit("together", &BatchRow::together, "how many stand in no turn: counted without apart");
    visit("nothing_found", &BatchRow::nothing_found, "on how many of those nothing was found");
    visit("trimmed", &BatchRow::trimmed, "whether they were trimmed");
    visit("lifted", &BatchRow::lifted, "the feet of each that were lifted");
    visit("feet", &BatchRow::feet, "feet lifted of all that stand in no turn");
    visit("apart_words", &BatchRow::apart_words, "who was apart, as called");
    visit("caller", &BatchRow::caller, "who judged and trimmed");
    visit("writer", &BatchRow::writer, "who typed");
    visit("words", &BatchRow::words, "as said");
  }
};

}  // namespace evenclaw
