#include "core/trade/call_line/act_facts.hpp"

#include <algorithm>
#include <cassert>
#include <cstddef>

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

bool is_always_of_the_cow(ActionKind kind) {
  switch (kind) {
    case A::told_farmer:
    case A::watch_her_walk:
    case A::marked:
    case A::to_straw:
    case A::near_parlour:
    case A::short_walk:
    case A::cull_advised:
    case A::pain_relief_asked:
    case A::pain_relief_given:
    case A::went_down:
    case A::near_calving:
    case A::heavy_in_calf:
    case A::sore_mouth:
    case A::fever:
    case A::given:
    case A::injected:
    case A::withheld:
    case A::milk_withheld:
    case A::meat_withheld:
    case A::no_withdrawal:
    case A::kicks:
    case A::jumps:
    case A::lies_down:
    case A::needs_hoist:
    case A::kicks_no_more:
    case A::jumps_no_more:
    case A::lies_down_no_more:
    case A::hoist_no_more:
      return true;
    case A::opened:
    case A::loose_horn_off:
    case A::modelled:
    case A::claw_missing:
    case A::block_on:
    case A::block_stacked:
    case A::block_refitted:
    case A::block_again:
    case A::block_off:
    case A::block_came_off:
    case A::block_still_on:
    case A::block_unknown:
    case A::wrap_on:
    case A::wrap_off:
    case A::wrap_came_off:
    case A::wrap_still_on:
    case A::wrap_unknown:
    case A::spray:
    case A::paste:
    case A::powder:
    case A::gel:
    case A::see_again:
    case A::vet:
    case A::photo:
    case A::vet_plan:
    case A::bleeding:
    case A::bone_showing:
    case A::pus_above:
    case A::blisters:
    case A::anaesthetised:
    case A::amputated:
      return false;
  }
  return false;
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
