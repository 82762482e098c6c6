// A cow's life as it was told: which events stand, the rows of them, and what they say of her
// passport.
#pragma once

#include <span>
#include <vector>

#include "core/log/cow_story.hpp"
#include "core/trade/life.hpp"

namespace evenclaw {

/// The events that stand after all was told, by day. `told` in the total order: an event told again
/// adds what was not told of it and changes what is told otherwise; one that was said not to have
/// happened is out, until it is told again.
std::vector<LifeStanding> standing_events(std::span<const Told<LifeTold>> told);

/// Each leaving that stands, as somebody would have told it.
std::vector<Told<CowLeft>> leavings_among(std::span<const LifeStanding> life);

/// She arrived after that day: whatever said that she was gone holds no longer.
bool arrived_after(std::span<const LifeStanding> life, Day day);

std::vector<CowLifeRow> life_rows_of(const CowStory& story);

/// When what is known of her lactation was told.
struct LactationTold {
  std::optional<Day> lactation_on;
};

/// Her last calving and drying off put into what was registered: a calving later than the one known
/// takes its place, with its lactation or, where none was told since, with none; a drying off
/// before it, and a day on which she is to calve less than 200 days after it (no pregnancy is
/// shorter: our judgement), belong to the time before.
void add_life(std::span<const LifeStanding> life, const LactationTold& told, CowFactsRow& facts);

}  // namespace evenclaw
