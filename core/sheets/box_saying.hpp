// What the boxes of a sheet say of ends that are none yet and of what was seen before.
#pragma once

namespace evenclaw {

// As a Saying, {name} is filled in; what each takes stands beside it.
enum class BoxSaying {
  end_not_known_for,  // {end} {what}
  below_the_floor,    // {least} {ends}
  least_of_milk,      // {time}
  least_of_meat,      // {time}
  floor_ask_the_vet,
  is_below_the_floor,
  seen_on_day,        // {date} {what}
  and_the_authority,  // {what}
  tell_authority,     // {date}
  count_ends          // how many there are; stays the last
};

}  // namespace evenclaw
