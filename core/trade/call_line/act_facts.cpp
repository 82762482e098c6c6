#include "core/trade/call_line/act_facts.hpp"

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

}  // namespace evenclaw
