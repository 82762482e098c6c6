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
  seen_on_day,            // {date} {what}
  and_the_authority,      // {what}
  tell_authority,         // {date}
  vet_asked_then,         // {date}
  vet_asked_then_for,     // {date} {what}
  relief_asked_then,      // {date}
  relief_asked_then_for,  // {date} {what}
  look_again,             // {foot}
  look_at_her_again,
  vet_first,        // {what}
  vet_asked_first,  // {what}
  she_came_for,     // {what}
  said_in_a_note,   // {what}
  ask_what_vet_is_to_see,
  could_be_notifiable_title,
  standstill,      // {who}
  who_with_signs,  // {who} {what}
  sign_seen_on,    // {what} {date}
  ring_vet_or_authority_now,
  seen_of_whom,  // {who} {date}
  withdrawals_over_title,
  told_on_day,  // {date} {what}
  ask_what_was_given,
  wrap_off_foul,         // {what}
  wrap_off_bleeding,     // {what}
  if_trimmer_leaves_it,  // {what}
  end_is_the_floor,      // {end}
  told_beside_floor,     // {what}
  above_the_claw,        // {what} {claw}
  found_then,            // {what}
  ring_this_week,
  keep_both_back,
  what_is_not_named,
  it_may_be_another,
  ask_what_vet_gave,  // {what}
  nobody_waits_for_vet,
  count_ends  // how many there are; stays the last
};

}  // namespace evenclaw
