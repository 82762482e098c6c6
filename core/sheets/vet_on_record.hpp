// Whether it is on record that the vet was asked for, or knows of a sign.
#pragma once

#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/words_of_her.hpp"

namespace evenclaw {

/// Nothing; the vet was asked for at this visit and has not come; he knows of it: he came since,
/// had a hand in it, foul is treated by his plan, or the check of the sign was answered in words
/// that settle it. "Go ahead" settles nothing but that both claws of a foot hurt. That he came,
/// told at this visit of what was there before, is no word on what was found at it.
enum class VetOnRecord { no, asked, knows };

VetOnRecord vet_on_record(const VisitView& view, const CowSeen& cow, const SignOfHer& sign);

/// The vet was asked for at this visit, be it for her or one of her feet. Pain relief is not meant.
bool is_vet_asked_for(const VisitView& view, const CowSeen& cow);

/// She left the herd, or the vet came for what was found at this visit.
bool is_past_the_vet(const VisitView& view, CowId cow);

/// Somebody went ahead against the check of the sign.
bool was_gone_past(const CowSeen& cow, const SignOfHer& sign);

/// Her signs of which nobody asked for the vet and he does not know; those that may be notifiable
/// stay until he came, though she left.
std::vector<SignOfHer> signs_without_vet(const VisitView& view, const CowSeen& cow);

/// Free words that name the vet, where he was not asked for at this visit and no sign is told.
std::vector<WordsOfHer> vet_only_named(const VisitView& view, const CowSeen& cow);

}  // namespace evenclaw
