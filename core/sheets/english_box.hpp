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
    {BoxSaying::seen_on_day, "seen {date}, and nobody said since what is there: {what}"},
    {BoxSaying::and_the_authority, "{what} and the authority"},
    {BoxSaying::tell_authority, "died, {date}: tell the authority"},
    {BoxSaying::vet_asked_then,
     "the vet was asked for on {date}; nobody said since whether he came"},
    {BoxSaying::vet_asked_then_for,
     "the vet was asked for on {date} for {what}; nobody said since whether he came"},
    {BoxSaying::relief_asked_then,
     "pain relief was asked for on {date}; nobody said since whether she got any"},
    {BoxSaying::relief_asked_then_for,
     "pain relief was asked for on {date} for {what}; nobody said since whether she got any"},
    {BoxSaying::look_again, "look at {foot} again"},
    {BoxSaying::look_at_her_again, "look at her feet again"},
    {BoxSaying::vet_first, "{what} (the vet first: see his box)"},
    {BoxSaying::vet_asked_first, "{what} (the vet is asked for first)"},
    {BoxSaying::she_came_for, "came for: {what}"},
    {BoxSaying::said_in_a_note, "said in a note: {what}"},
    {BoxSaying::ask_what_vet_is_to_see,
     "ask the trimmer today what the vet is to see, and when: that was not called"},
    {BoxSaying::could_be_notifiable_title, "COULD BE NOTIFIABLE"},
    {BoxSaying::standstill,
     "{who}: ring the vet or the authority now; nobody and nothing leaves the farm before one of "
     "them "
     "has said so"},
    {BoxSaying::who_with_signs, "{who} ({what})"},
    {BoxSaying::sign_seen_on, "{what}, seen {date}"},
    {BoxSaying::ring_vet_or_authority_now, "ring the vet or the authority now"},
    {BoxSaying::seen_of_whom, "{who}, of {date}"},
    {BoxSaying::withdrawals_over_title, "Milk and meat: the time is over"},
    {BoxSaying::told_on_day, "of {date}, and nobody said since what was meant: {what}"},
    {BoxSaying::ask_what_was_given,
     "Where only words are told, nobody called what she got: ask the trimmer and the farmer today "
     "what was meant and how long its withdrawal is, and keep her milk and meat back until then."},
    {BoxSaying::wrap_off_foul, "{what} today, or ask the vet today: foul lives without air"},
    {BoxSaying::wrap_off_bleeding, "{what}: ask the vet today when, for it bleeds (see his box)"},
    {BoxSaying::if_trimmer_leaves_it, "{what}, if the trimmer leaves it on"},
    {BoxSaying::end_is_the_floor, "{end}, the law's floor off label"},
    {BoxSaying::told_beside_floor, "told: {what}"},
    {BoxSaying::above_the_claw, "{what} above the {claw}"},
    {BoxSaying::found_then, "found then: {what}"},
    {BoxSaying::ring_this_week, "ring within the week"},
    {BoxSaying::keep_both_back, "until it is known both cows are held back"},
    {BoxSaying::what_is_not_named, "what else was told of, and nobody named"},
    {BoxSaying::it_may_be_another, "it may be another cow: ask which"},
    {BoxSaying::ask_what_vet_gave,
     "{what}: ask the vet whether he gave anything, and until when milk and meat are held back"},
    {BoxSaying::nobody_waits_for_vet, "No cow waits for the vet any more."}};

}  // namespace evenclaw
