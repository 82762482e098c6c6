#include "core/trade/call_line/term.hpp"

#include <algorithm>
#include <vector>

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
    {TermKind::nicked, "a lesion"},
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
    {TermKind::withheld_act, "something done"},
    {TermKind::handling, "something done"},
    {TermKind::off, "when it comes off"},
    {TermKind::farmer_off, "when it comes off"},
    {TermKind::weekday, "a weekday"},
    {TermKind::days_word, "a time such as {28d}"},
    {TermKind::date, "a time such as {28d}"},
    {TermKind::milking, "a milking"},
    {TermKind::day_unit, "days or weeks"},
    {TermKind::week_unit, "days or weeks"},
    {TermKind::measure, "a measure"},
    {TermKind::mm, "{mm} or {cm}"},
    {TermKind::cm, "{mm} or {cm}"},
    {TermKind::reason, "why she came"},
    {TermKind::lame, "why she came"},
    {TermKind::mobility, "how she walks"},
    {TermKind::turn_end, "the end of her turn"},
    {TermKind::turn_end_why, "the end of her turn"},
    {TermKind::done, "the end of her turn"},
    {TermKind::animals, "animals that are counted"},
    {TermKind::all_trimmed, "trimmed"},
    {TermKind::bar, "who was not like the others"},
    {TermKind::today, "today's feet"},
    {TermKind::caller, "caller or writer"},
    {TermKind::writer, "caller or writer"},
    {TermKind::still_here, "news of the cow"},
    {TermKind::news, "news of the cow"},
    {TermKind::gone, "news of the cow"},
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

std::string expected_names(std::span<const TermKind> kinds) {
  constexpr std::size_t most_names_told = 6;
  std::vector<std::string_view> names;
  names.reserve(most_names_told);
  for (const TermKind kind : kinds) {
    const std::string_view name = expected_name(kind);
    if (name.empty() || std::find(names.begin(), names.end(), name) != names.end()) continue;
    if (names.size() < most_names_told) names.push_back(name);
  }
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0) text += i + 1 == names.size() ? " or " : ", ";
    text += names[i];
  }
  return text.empty() ? "the end of the line" : text;
}

}  // namespace evenclaw
