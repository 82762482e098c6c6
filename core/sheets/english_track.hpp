// English words of the drawing of her feet.
#pragma once

#include "core/sheets/words.hpp"

namespace evenclaw {

inline constexpr Worded<TrackSaying> english_track_sayings[] = {
    {TrackSaying::feet_of, "Feet of {cow}, seen from above, she walks away:"},
    {TrackSaying::found, "{where} filled, found today;"},
    {TrackSaying::on_skin, "{foot} diamond on the skin, found today;"},
    {TrackSaying::claw_open, "{foot} grey, claw not called;"},
    {TrackSaying::wrap, "{foot} ring, wrap on;"},
    {TrackSaying::wrap_open, "{foot} dashed ring, not known whether the wrap still is on;"},
    {TrackSaying::block, "{foot} bar under the {claw}, block on;"},
    {TrackSaying::block_open,
     "{foot} hollow bar under the {claw}, not known whether a block is on it;"},
    {TrackSaying::earlier,
     "{foot} {n} dot, found there before;|{foot} {n} dots, found there before;"},
    {TrackSaying::not_lifted, "{feet} thin, not lifted;"},
    {TrackSaying::unsaid, "{feet} dashed, nobody said whether lifted;"},
    {TrackSaying::nothing, "nothing found;"},
    {TrackSaying::key_label, "How to read the drawings of her feet"},
    {TrackSaying::key_nothing, "nothing found"},
    {TrackSaying::key_found, "found today"},
    {TrackSaying::key_claw_open, "claw not called"},
    {TrackSaying::key_skin, "on the skin"},
    {TrackSaying::key_wrap, "wrap on"},
    {TrackSaying::key_block, "block on"},
    {TrackSaying::key_in_doubt, "not known if on"},
    {TrackSaying::key_earlier, "there before"},
    {TrackSaying::key_not_lifted, "not lifted"},
    {TrackSaying::key_unsaid, "not said if lifted"},
    {TrackSaying::mark_label, "Evenclaw"}};

}  // namespace evenclaw
