// English words of the boxes of a sheet, where an end is none yet or a sign was seen before.
#pragma once

#include "core/sheets/words.hpp"

namespace evenclaw {

inline constexpr Worded<BoxSaying> english_box_sayings[] = {
    {BoxSaying::end_not_known_for, "{end} at the earliest: not known for {what}, ask first"},
    {BoxSaying::below_the_floor, "off label the law's floor is at least {least} ({ends})"},
    {BoxSaying::least_of_milk, "{time} milk"},
    {BoxSaying::least_of_meat, "{time} meat"},
    {BoxSaying::floor_ask_the_vet, "ask the vet before anything is sold"},
    {BoxSaying::is_below_the_floor,
     "ASK FIRST: the withdrawal lies below the law's floor off label"},
    {BoxSaying::seen_on_day, "seen {date}, and nobody said since what is there: {what}"},
    {BoxSaying::and_the_authority, "{what} and the authority"},
    {BoxSaying::tell_authority, "died, {date}: tell the authority"}};

}  // namespace evenclaw
