#include "core/trade/lesion.hpp"

#include <cassert>
#include <cstddef>

namespace evenclaw {

namespace {

// Certainty marks. "seen": the same letters stand in peer-reviewed work of the working group that
// made the atlas; "weak": seen only in other national lists; "memory": not confirmed. Grouping:
// infectious and claw horn disruption after Holzhauer 2021; where a lesion is kept is our proposal.
constexpr std::string_view code_seen =
    "code seen (Heringstad 2018); group Holzhauer 2021; level proposed here";
constexpr std::string_view code_weak =
    "code weak (Charfeddine, van der Spek: national lists); group and level proposed here";
constexpr std::string_view code_memory =
    "code from memory of the ICAR Claw Health Atlas; group and level proposed here";
constexpr std::string_view name_seen =
    "name seen in the white line review of 2025, code from memory; level proposed here";
constexpr std::string_view own_words = "not an atlas code: named by the words that were said";

constexpr Place at_skin[] = {Place::behind, Place::in_front, Place::between};
constexpr Place at_cleft[] = {Place::between, Place::behind};
constexpr Place at_between[] = {Place::between};
constexpr Place at_foul[] = {Place::between, Place::in_front};
constexpr Place at_heel[] = {Place::heel};
constexpr Place at_sole[] = {Place::sole_middle, Place::toe, Place::heel};
constexpr Place at_sole_or_line[] = {Place::sole_middle,    Place::toe,
                                     Place::heel,           Place::white_line_heel,
                                     Place::white_line_toe, Place::white_line_side};
constexpr Place at_ulcer[] = {Place::sole_middle, Place::heel, Place::toe, Place::white_line_toe};
constexpr Place at_sole_middle[] = {Place::sole_middle};
constexpr Place at_toe[] = {Place::white_line_toe, Place::toe};
constexpr Place at_white_line[] = {Place::white_line_heel, Place::white_line_side,
                                   Place::white_line_toe};
constexpr Place at_thin[] = {Place::sole_middle, Place::toe};

constexpr LesionFacts lesion_table[] = {
    {Lesion::dd, "digital dermatitis", Lesion::dd, LesionGroup::infectious, KeptOn::foot, false,
     at_skin, false, code_seen},
    {Lesion::id, "interdigital dermatitis", Lesion::id, LesionGroup::infectious, KeptOn::between,
     false, at_cleft, false, code_seen},
    {Lesion::hhe, "heel horn erosion", Lesion::hhe, LesionGroup::infectious, KeptOn::claw, false,
     at_heel, true, code_seen},
    {Lesion::sh, "sole haemorrhage", Lesion::u, LesionGroup::horn, KeptOn::claw, false,
     at_sole_or_line, false, code_seen},
    {Lesion::u, "ulcer", Lesion::u, LesionGroup::horn, KeptOn::claw, true, at_ulcer, false,
     code_memory},
    {Lesion::su, "sole ulcer", Lesion::u, LesionGroup::horn, KeptOn::claw, true, at_sole_middle,
     false, code_seen},
    {Lesion::bu, "heel ulcer", Lesion::u, LesionGroup::horn, KeptOn::claw, true, at_heel, true,
     code_memory},
    {Lesion::tu, "toe ulcer", Lesion::u, LesionGroup::horn, KeptOn::claw, true, at_toe, true,
     code_memory},
    {Lesion::wl, "white line lesion", Lesion::wl, LesionGroup::horn, KeptOn::claw, true,
     at_white_line, true, code_seen},
    {Lesion::wlf, "white line fissure", Lesion::wl, LesionGroup::horn, KeptOn::claw, false,
     at_white_line, true, name_seen},
    {Lesion::wla, "white line abscess", Lesion::wl, LesionGroup::horn, KeptOn::claw, true,
     at_white_line, true, name_seen},
    {Lesion::ip, "foul", Lesion::ip, LesionGroup::infectious, KeptOn::foot, false, at_foul, false,
     code_weak},
    {Lesion::ih, "growth between the claws", Lesion::ih, LesionGroup::other, KeptOn::between, false,
     at_between, true, code_weak},
    {Lesion::ds, "double sole", Lesion::ds, LesionGroup::horn, KeptOn::claw, false, at_sole, false,
     code_weak},
    {Lesion::ts, "thin sole", Lesion::ts, LesionGroup::horn, KeptOn::claw, true, at_thin, false,
     code_memory},
    {Lesion::other,
     "other",
     Lesion::other,
     LesionGroup::other,
     KeptOn::foot,
     false,
     {},
     false,
     own_words},
};

}  // namespace

std::span<const LesionFacts> all_lesions() {
  return lesion_table;
}

const LesionFacts& facts_of(Lesion lesion) {
  const auto index = static_cast<std::size_t>(lesion);
  assert(lesion_table[index].lesion == lesion);
  return lesion_table[index];
}

}  // namespace evenclaw
