// What can be said with each act, and where it can be done.
#pragma once

#include <span>

#include "core/trade/call_line/term.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

enum class ActTime {
  none,
  comes_off,  // "wrap on, off Thu"
  when        // "see again 28d"
};

struct ActFacts {
  ActionKind kind;
  TermKind said_as;
  bool takes_claw;
  ActTime time;
  bool on_whole_cow;   // makes sense without a foot
  bool needs_lifting;  // cannot be done to a foot that stayed on the ground
};

std::span<const ActFacts> all_acts();
const ActFacts& facts_of(ActionKind kind);

/// The foot was lifted: something was found or not, measured, trimmed, or done that needs it
/// lifted. To name it for the vet, or to tell of a wrap that came off, lifts nothing.
bool was_lifted(const FootCall& call);

/// Blisters, bone, pus above the horn: no lesion, and yet found on the foot it is called of.
bool is_found_on_foot(ActionKind kind);

/// Concerns all of her, whatever foot was named last.
bool is_always_of_the_cow(ActionKind kind);

/// Nothing without a time: "watch her walk in 14d", "milk withheld till Thu".
bool needs_time(ActionKind kind);

/// A block has what it is made of, a mark how she was marked; nothing else has either.
bool takes_material(ActionKind kind, Material material);

/// Something put on the skin or the horn or given to her, which may have a name.
bool takes_product(ActionKind kind);

/// Of a medicine, pain relief and what is the vet's it can be said who gave it or was asked.
bool takes_by_whom(ActionKind kind);

}  // namespace evenclaw
