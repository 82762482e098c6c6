// What every act and every lesion means for the follow-up: which tasks, or none and why not.
#pragma once

#include <span>
#include <string_view>

#include "core/base/enum_words.hpp"
#include "core/trade/action.hpp"
#include "core/trade/lesion.hpp"

namespace evenclaw {

/// What an act asks of the days after the visit.
enum class ActFollowUp {
  block_on,       // first look, check and removal
  block_kept,     // the same when nobody had recorded it; a day said with it is a new one
  block_off,      // ends what was planned of the block
  wrap_on,        // removal
  wrap_kept,      // a day said with it is a new one
  wrap_off,       // ends its removal
  look,           // see again
  walk,           // watch her walk
  vet,            // the farmer rings
  pain_relief,    // the farmer asks the vet
  look_after_dd,  // a sore of digital dermatitis is looked at after it; withdrawal if one is stated
  look_after_cut,  // a lesion of the horn is looked at after it
  withdrawal,      // milk and meat, when an end is stated
  none
};

template <>
struct EnumWords<ActFollowUp> {
  static constexpr EnumWord<ActFollowUp> table[] = {{ActFollowUp::block_on, "block_on"},
                                                    {ActFollowUp::block_kept, "block_kept"},
                                                    {ActFollowUp::block_off, "block_off"},
                                                    {ActFollowUp::wrap_on, "wrap_on"},
                                                    {ActFollowUp::wrap_kept, "wrap_kept"},
                                                    {ActFollowUp::wrap_off, "wrap_off"},
                                                    {ActFollowUp::look, "look"},
                                                    {ActFollowUp::walk, "walk"},
                                                    {ActFollowUp::vet, "vet"},
                                                    {ActFollowUp::pain_relief, "pain_relief"},
                                                    {ActFollowUp::look_after_dd, "look_after_dd"},
                                                    {ActFollowUp::look_after_cut, "look_after_cut"},
                                                    {ActFollowUp::withdrawal, "withdrawal"},
                                                    {ActFollowUp::none, "none"}};
};

struct ActDecision {
  ActionKind kind;
  ActFollowUp follow_up;
  std::string_view why;  // what follows in words, or why nothing does
};

/// One for every kind of act and of sign, in the order of ActionKind.
std::span<const ActDecision> all_act_decisions();
const ActDecision& decision_on(ActionKind kind);

/// When a lesion makes looks at its foot by itself; what the caller said himself comes first.
enum class LesionFollowUp {
  horn_looks,  // unless called slight; slight ones when opened
  horn_looks_when_opened,
  dd_look_when_treated,  // unless its stage says that nothing is raw; called raw, untreated too
  foul_look,
  none
};

template <>
struct EnumWords<LesionFollowUp> {
  static constexpr EnumWord<LesionFollowUp> table[] = {
      {LesionFollowUp::horn_looks, "horn_looks"},
      {LesionFollowUp::horn_looks_when_opened, "horn_looks_when_opened"},
      {LesionFollowUp::dd_look_when_treated, "dd_look_when_treated"},
      {LesionFollowUp::foul_look, "foul_look"},
      {LesionFollowUp::none, "none"}};
};

struct LesionDecision {
  Lesion lesion;
  LesionFollowUp follow_up;
  std::string_view why;
};

/// One for every lesion, in the order of Lesion.
std::span<const LesionDecision> all_lesion_decisions();
const LesionDecision& decision_on(Lesion lesion);

}  // namespace evenclaw
