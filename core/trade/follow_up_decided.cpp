#include "core/trade/follow_up_decided.hpp"

#include <cstddef>
#include <iterator>

namespace evenclaw {

namespace {

constexpr std::string_view by_the_check =
    "a check asks for the vet at once; called, the vet is the task";
constexpr std::string_view till_told = "no number of days is published; the caller says see again";
constexpr std::string_view of_the_vet = "the vet who did it says what follows";
constexpr std::string_view end_as_stated = "up to the end that was stated";
constexpr std::string_view warned_of = "no work: told before she comes in again";
constexpr std::string_view no_warning_more = "what was told of her is over";
constexpr std::string_view product_on_skin =
    "with digital dermatitis on the foot a look; with a withdrawal its end";

using Act = ActionKind;
using OfAct = ActFollowUp;

constexpr ActDecision act_table[] = {
    {Act::opened, OfAct::look_after_cut, "a lesion of the horn that was opened is looked at"},
    {Act::loose_horn_off, OfAct::none, "what is dead is off; nothing has to heal"},
    {Act::modelled, OfAct::none, "part of the trim"},
    {Act::claw_missing, OfAct::none, "no act: known of the foot from then on"},
    {Act::block_on, OfAct::block_on, "first look, check and removal"},
    {Act::block_stacked, OfAct::block_kept, "on a block nobody recorded as a new one"},
    {Act::block_refitted, OfAct::block_on, "as a new one"},
    {Act::block_again, OfAct::block_on, "as a new one"},
    {Act::block_off, OfAct::block_off, "nothing is left of it"},
    {Act::block_came_off, OfAct::block_off, "nothing is left of it"},
    {Act::block_still_on, OfAct::block_kept,
     "seen; a day said with it is new, or that one is there"},
    {Act::block_unknown, OfAct::none, "nobody knows: what was planned stays open"},
    {Act::wrap_on, OfAct::wrap_on, "removal; with digital dermatitis a look too"},
    {Act::wrap_off, OfAct::wrap_off, "nothing is left of it"},
    {Act::wrap_came_off, OfAct::wrap_off, "nothing is left of it"},
    {Act::wrap_still_on, OfAct::wrap_kept, "a day said with it is new, or that one is there"},
    {Act::wrap_unknown, OfAct::none, "nobody knows: what was planned stays open"},
    {Act::spray, OfAct::look_after_dd, product_on_skin},
    {Act::paste, OfAct::look_after_dd, product_on_skin},
    {Act::powder, OfAct::look_after_dd, product_on_skin},
    {Act::gel, OfAct::look_after_dd, product_on_skin},
    {Act::see_again, OfAct::look, "a look at the foot or at her"},
    {Act::watch_her_walk, OfAct::walk, "by the day that was said"},
    {Act::vet, OfAct::vet, "the farmer rings today"},
    {Act::told_farmer, OfAct::none, "done by saying it"},
    {Act::marked, OfAct::none, "the mark serves another task"},
    {Act::to_straw, OfAct::none, till_told},
    {Act::near_parlour, OfAct::none, till_told},
    {Act::short_walk, OfAct::none, till_told},
    {Act::cull_advised, OfAct::none, "the farmer decides; told gone, all is closed"},
    {Act::pain_relief_asked, OfAct::pain_relief, "the farmer asks the vet today"},
    {Act::pain_relief_given, OfAct::none, "its withdrawal is told by mouth"},
    {Act::photo, OfAct::none, "for the record"},
    {Act::vet_plan, OfAct::none, "the plan says what follows"},
    {Act::bleeding, OfAct::none, by_the_check},
    {Act::bone_showing, OfAct::none, by_the_check},
    {Act::pus_above, OfAct::none, by_the_check},
    {Act::blisters, OfAct::none, by_the_check},
    {Act::went_down, OfAct::none, by_the_check},
    {Act::near_calving, OfAct::none,
     "a check asks to leave her; the trim after calving is due then"},
    {Act::heavy_in_calf, OfAct::none, "a caution for today"},
    {Act::sore_mouth, OfAct::none, by_the_check},
    {Act::fever, OfAct::none, by_the_check},
    {Act::given, OfAct::withdrawal, end_as_stated},
    {Act::injected, OfAct::withdrawal, end_as_stated},
    {Act::anaesthetised, OfAct::none, of_the_vet},
    {Act::amputated, OfAct::none, of_the_vet},
    {Act::withheld, OfAct::withdrawal, end_as_stated},
    {Act::milk_withheld, OfAct::withdrawal, end_as_stated},
    {Act::meat_withheld, OfAct::withdrawal, end_as_stated},
    {Act::no_withdrawal, OfAct::none, "somebody said that there is none"},
    {Act::kicks, OfAct::none, warned_of},
    {Act::jumps, OfAct::none, warned_of},
    {Act::lies_down, OfAct::none, warned_of},
    {Act::needs_hoist, OfAct::none, warned_of},
    {Act::kicks_no_more, OfAct::none, no_warning_more},
    {Act::jumps_no_more, OfAct::none, no_warning_more},
    {Act::lies_down_no_more, OfAct::none, no_warning_more},
    {Act::hoist_no_more, OfAct::none, no_warning_more},
};

constexpr std::string_view at_next_trim = "seen at the next trim; told in the herd's figures";
constexpr std::string_view of_the_herd = "a matter of the herd: bath and clean floors";
constexpr std::string_view corium_open = "live tissue lies bare or near";
constexpr std::string_view under_run = "pus under the horn";
constexpr std::string_view only_if_cut = "seen at the next trim unless it was opened";
constexpr std::string_view own_words = "nobody can tell what it is; the caller says see again";

using OfLesion = LesionFollowUp;

constexpr LesionDecision lesion_table[] = {
    {Lesion::dd, OfLesion::dd_look_when_treated,
     "it comes back: 14.5 % in Kofler 2015; called raw, untreated too"},
    {Lesion::id, OfLesion::none, of_the_herd},
    {Lesion::hhe, OfLesion::none, of_the_herd},
    {Lesion::sh, OfLesion::horn_looks_when_opened, only_if_cut},
    {Lesion::shd, OfLesion::horn_looks_when_opened, only_if_cut},
    {Lesion::shc, OfLesion::horn_looks_when_opened, only_if_cut},
    {Lesion::u, OfLesion::horn_looks, corium_open},
    {Lesion::su, OfLesion::horn_looks, corium_open},
    {Lesion::bu, OfLesion::horn_looks, corium_open},
    {Lesion::tu, OfLesion::horn_looks, corium_open},
    {Lesion::tn, OfLesion::horn_looks, "a check asks for the vet; where nobody calls him, looks"},
    {Lesion::wl, OfLesion::horn_looks_when_opened, only_if_cut},
    {Lesion::wlf, OfLesion::horn_looks_when_opened, only_if_cut},
    {Lesion::wla, OfLesion::horn_looks, under_run},
    {Lesion::ip, OfLesion::foul_look, "it can reach the joint; no better means the vet"},
    {Lesion::ih, OfLesion::none, at_next_trim},
    {Lesion::ds, OfLesion::horn_looks_when_opened, only_if_cut},
    {Lesion::ts, OfLesion::none, "nothing to look for: the sole has to grow; a note spares it"},
    {Lesion::hf, OfLesion::horn_looks_when_opened, only_if_cut},
    {Lesion::hfa, OfLesion::horn_looks_when_opened, only_if_cut},
    {Lesion::hfh, OfLesion::horn_looks_when_opened, only_if_cut},
    {Lesion::hfv, OfLesion::horn_looks_when_opened, only_if_cut},
    {Lesion::sw, OfLesion::none, by_the_check},
    {Lesion::ac, OfLesion::none, at_next_trim},
    {Lesion::cd, OfLesion::none, at_next_trim},
    {Lesion::cc, OfLesion::none, at_next_trim},
    {Lesion::sc, OfLesion::none, at_next_trim},
    {Lesion::overgrown, OfLesion::none, at_next_trim},
    {Lesion::foreign_body, OfLesion::horn_looks_when_opened, "out it is done with, unless opened"},
    {Lesion::injury, OfLesion::none, till_told},
    {Lesion::dewclaw, OfLesion::none, till_told},
    {Lesion::blood_drawn, OfLesion::horn_looks, corium_open},
    {Lesion::unclear, OfLesion::none, own_words},
    {Lesion::other, OfLesion::none, own_words},
};

constexpr bool decides_every_act() {
  for (std::size_t i = 0; i < std::size(act_table); ++i) {
    if (act_table[i].kind != EnumWords<ActionKind>::table[i].value) return false;
    if (static_cast<std::size_t>(act_table[i].kind) != i || act_table[i].why.empty()) return false;
  }
  return true;
}

constexpr bool decides_every_lesion() {
  for (std::size_t i = 0; i < std::size(lesion_table); ++i) {
    if (lesion_table[i].lesion != EnumWords<Lesion>::table[i].value) return false;
    if (static_cast<std::size_t>(lesion_table[i].lesion) != i) return false;
    if (lesion_table[i].why.empty()) return false;
  }
  return true;
}

// A kind of act or lesion without a decision does not compile.
static_assert(std::size(act_table) == std::size(EnumWords<ActionKind>::table));
static_assert(std::size(lesion_table) == std::size(EnumWords<Lesion>::table));
static_assert(decides_every_act());
static_assert(decides_every_lesion());

}  // namespace

std::span<const ActDecision> all_act_decisions() {
  return act_table;
}

const ActDecision& decision_on(ActionKind kind) {
  return act_table[static_cast<std::size_t>(kind)];
}

std::span<const LesionDecision> all_lesion_decisions() {
  return lesion_table;
}

const LesionDecision& decision_on(Lesion lesion) {
  return lesion_table[static_cast<std::size_t>(lesion)];
}

}  // namespace evenclaw
