#include "core/trade/call_line/act_facts.hpp"

#include <algorithm>
#include <cassert>
#include <cstddef>
#include <iterator>

namespace evenclaw {

namespace {

using A = ActionKind;
using K = TermKind;

constexpr bool with_claw = true;
constexpr bool no_claw = false;
constexpr bool on_cow = true;
constexpr bool on_foot = false;
constexpr bool lifted = true;
constexpr bool from_afar = false;

constexpr ActFacts act_table[] = {
    {A::opened, K::opened_act, with_claw, ActTime::none, on_foot, lifted},
    {A::loose_horn_off, K::opened_act, with_claw, ActTime::none, on_foot, lifted},
    {A::modelled, K::opened_act, with_claw, ActTime::none, on_foot, lifted},
    {A::claw_missing, K::opened_act, with_claw, ActTime::none, on_foot, from_afar},
    {A::block_on, K::block_act, with_claw, ActTime::comes_off, on_foot, lifted},
    {A::block_stacked, K::block_act, with_claw, ActTime::comes_off, on_foot, lifted},
    {A::block_refitted, K::block_act, with_claw, ActTime::comes_off, on_foot, lifted},
    {A::block_again, K::block_act, with_claw, ActTime::comes_off, on_foot, lifted},
    {A::block_off, K::block_act, with_claw, ActTime::none, on_foot, lifted},
    {A::block_came_off, K::block_act, with_claw, ActTime::none, on_foot, from_afar},
    {A::block_still_on, K::block_act, with_claw, ActTime::comes_off, on_foot, from_afar},
    {A::block_unknown, K::block_act, with_claw, ActTime::none, on_foot, from_afar},
    {A::wrap_on, K::wrap_act, no_claw, ActTime::comes_off, on_foot, lifted},
    {A::wrap_off, K::wrap_act, no_claw, ActTime::none, on_foot, from_afar},
    {A::wrap_came_off, K::wrap_act, no_claw, ActTime::none, on_foot, from_afar},
    {A::wrap_still_on, K::wrap_act, no_claw, ActTime::comes_off, on_foot, from_afar},
    {A::wrap_unknown, K::wrap_act, no_claw, ActTime::none, on_foot, from_afar},
    {A::spray, K::product_act, no_claw, ActTime::none, on_foot, lifted},
    {A::paste, K::product_act, no_claw, ActTime::none, on_foot, lifted},
    {A::powder, K::product_act, no_claw, ActTime::none, on_foot, lifted},
    {A::gel, K::product_act, no_claw, ActTime::none, on_foot, lifted},
    {A::see_again, K::see_again, no_claw, ActTime::when, on_cow, from_afar},
    {A::watch_her_walk, K::watch, no_claw, ActTime::when, on_cow, from_afar},
    {A::vet, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::told_farmer, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::marked, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::to_straw, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::near_parlour, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::short_walk, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::cull_advised, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::pain_relief_asked, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::pain_relief_given, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::photo, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::vet_plan, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::bleeding, K::opened_act, with_claw, ActTime::none, on_foot, from_afar},
    {A::bone_showing, K::opened_act, with_claw, ActTime::none, on_foot, from_afar},
    {A::pus_above, K::opened_act, with_claw, ActTime::none, on_foot, from_afar},
    {A::blisters, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::went_down, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::near_calving, K::see_again, no_claw, ActTime::when, on_cow, from_afar},
    {A::heavy_in_calf, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::sore_mouth, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::fever, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::given, K::product_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::injected, K::product_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::anaesthetised, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::amputated, K::opened_act, with_claw, ActTime::none, on_foot, lifted},
    {A::withheld, K::withheld_act, no_claw, ActTime::when, on_cow, from_afar},
    {A::milk_withheld, K::withheld_act, no_claw, ActTime::when, on_cow, from_afar},
    {A::meat_withheld, K::withheld_act, no_claw, ActTime::when, on_cow, from_afar},
    {A::no_withdrawal, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::kicks, K::handling, no_claw, ActTime::none, on_cow, from_afar},
    {A::jumps, K::handling, no_claw, ActTime::none, on_cow, from_afar},
    {A::lies_down, K::handling, no_claw, ActTime::none, on_cow, from_afar},
    {A::needs_hoist, K::handling, no_claw, ActTime::none, on_cow, from_afar},
    {A::kicks_no_more, K::handling, no_claw, ActTime::none, on_cow, from_afar},
    {A::jumps_no_more, K::handling, no_claw, ActTime::none, on_cow, from_afar},
    {A::lies_down_no_more, K::handling, no_claw, ActTime::none, on_cow, from_afar},
    {A::hoist_no_more, K::handling, no_claw, ActTime::none, on_cow, from_afar},
};

}  // namespace

std::span<const ActFacts> all_acts() {
  return act_table;
}

const ActFacts& facts_of(ActionKind kind) {
  const auto index = static_cast<std::size_t>(kind);
  assert(act_table[index].kind == kind);
  return act_table[index];
}

bool is_found_on_foot(ActionKind kind) {
  return kind == A::blisters || kind == A::bone_showing || kind == A::pus_above;
}

bool is_always_of_the_cow(ActionKind kind) {
  constexpr A acts[] = {A::told_farmer,
                        A::watch_her_walk,
                        A::marked,
                        A::to_straw,
                        A::near_parlour,
                        A::short_walk,
                        A::cull_advised,
                        A::pain_relief_asked,
                        A::pain_relief_given,
                        A::went_down,
                        A::near_calving,
                        A::heavy_in_calf,
                        A::sore_mouth,
                        A::fever,
                        A::given,
                        A::injected,
                        A::withheld,
                        A::milk_withheld,
                        A::meat_withheld,
                        A::no_withdrawal,
                        A::kicks,
                        A::jumps,
                        A::lies_down,
                        A::needs_hoist,
                        A::kicks_no_more,
                        A::jumps_no_more,
                        A::lies_down_no_more,
                        A::hoist_no_more};
  return std::find(std::begin(acts), std::end(acts), kind) != std::end(acts);
}

bool needs_time(ActionKind kind) {
  return kind == A::watch_her_walk || facts_of(kind).said_as == K::withheld_act;
}

bool takes_material(ActionKind kind, Material material) {
  const bool is_mark = material == Material::band || material == Material::paint;
  if (is_mark) return kind == A::marked;
  return facts_of(kind).said_as == K::block_act;
}

bool takes_product(ActionKind kind) {
  return facts_of(kind).said_as == K::product_act;
}

bool takes_by_whom(ActionKind kind) {
  return kind == A::pain_relief_asked || kind == A::pain_relief_given || takes_product(kind) ||
         kind == A::anaesthetised || kind == A::amputated;
}

bool was_lifted(const FootCall& call) {
  switch (call.state) {
    case FootState::not_lifted:
      return false;
    case FootState::nothing_found:
    case FootState::finding:
      return true;
    case FootState::unsaid:
      break;
  }
  const bool was_worked_on =
      std::any_of(call.actions.begin(), call.actions.end(),
                  [](const Action& action) { return facts_of(action.kind).needs_lifting; });
  return was_worked_on || !call.findings.empty() || !call.measures.empty() ||
         call.trimmed == Trimmed::yes;
}

}  // namespace evenclaw
