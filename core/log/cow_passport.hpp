// What a cow's passport would say of her: ear tags and electronic numbers, other names, breed,
// birth, heifer or cow, weight, and what happened to her.
#pragma once

#include <string>

#include "core/log/cow_story.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// Adds her tags, other names, facts and life to the rows. In the order of the days from which they
/// hold, on one day in the total order: a half of a pair that was unknown is filled in; an
/// electronic number that differs begins a new pair with the same ear tag (a lost tag is made again
/// with the animal's number: common practice, no source), an ear tag that differs begins one of its
/// own; what is told of a fact last holds. Calving and drying off follow her life where that goes
/// on later (add_life()).
void add_passport(const CowStory& story, Rows& rows);

/// By what a cow without a number is called that nobody has called yet: a name, else her electronic
/// number, else her tag; "" when none is known.
std::string known_by(const CowStory& story);

}  // namespace evenclaw
