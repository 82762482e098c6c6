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
    {A::see_again, K::see_again, no_claw, ActTime::when, on_cow, from_afar},
    {A::watch_her_walk, K::watch, no_claw, ActTime::when, on_cow, from_afar},
    {A::vet, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
    {A::told_farmer, K::plain_act, no_claw, ActTime::none, on_cow, from_afar},
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
