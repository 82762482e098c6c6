#include "core/trade/call_line/term.hpp"

namespace evenclaw {

namespace {

struct NameOfKind {
  TermKind kind;
  std::string_view name;
};

// Several kinds that are one thing to people share a name; joining words have none.
constexpr NameOfKind name_table[] = {
    {TermKind::number, "a number"},
    {TermKind::quoted, "words in quotes"},
    {TermKind::text, "some words"},
    {TermKind::no_number, "\"{no number}\""},
    {TermKind::foot, "a foot"},
    {TermKind::feet, "a foot"},
    {TermKind::claw, "a claw"},
    {TermKind::lesion, "a lesion"},
    {TermKind::other_lesion, "a lesion"},
    {TermKind::place, "a place"},
    {TermKind::white_line_place, "a place"},
    {TermKind::white_line_side, "a place"},
    {TermKind::zone, "a place"},
    {TermKind::degree, "a degree"},
    {TermKind::stage, "a stage"},
    {TermKind::foot_state, "nothing found"},
    {TermKind::nothing_after_all, "nothing found"},
    {TermKind::rest_fine, "nothing found"},
    {TermKind::block_act, "something done"},
    {TermKind::wrap_act, "something done"},
    {TermKind::opened_act, "something done"},
    {TermKind::product_act, "something done"},
    {TermKind::plain_act, "something done"},
    {TermKind::block_of, "something done"},
    {TermKind::mark_of, "something done"},
    {TermKind::see_again, "something done"},
    {TermKind::watch, "something done"},
    {TermKind::off, "when it comes off"},
    {TermKind::weekday, "a weekday"},
    {TermKind::days_word, "a time such as {28d}"},
    {TermKind::day_unit, "days or weeks"},
    {TermKind::week_unit, "days or weeks"},
    {TermKind::measure, "a measure"},
    {TermKind::mm, "{mm} or {cm}"},
    {TermKind::cm, "{mm} or {cm}"},
    {TermKind::reason, "why she came"},
    {TermKind::lame, "why she came"},
    {TermKind::mobility, "how she walks"},
    {TermKind::turn_end, "the end of her turn"},
    {TermKind::done, "the end of her turn"},
    {TermKind::today, "today's feet"},
    {TermKind::caller, "caller or writer"},
    {TermKind::writer, "caller or writer"},
    {TermKind::news, "news of the cow"},
};

}  // namespace

FootSet feet_in(const Term& term) {
  if (term.kind == TermKind::feet) return feet_of(term.as<FeetGroup>());
  return FootSet{term.as<Foot>()};
}

std::string_view expected_name(TermKind kind) {
  for (const NameOfKind& row : name_table) {
    if (row.kind == kind) return row.name;
  }
  return {};
}

}  // namespace evenclaw
