#include "core/trade/call_line/term.hpp"

namespace evenclaw {

FootSet feet_in(const Term& term) {
  if (term.kind == TermKind::feet) return feet_of(term.as<FeetGroup>());
  return FootSet{term.as<Foot>()};
}

std::string_view expected_name(TermKind kind) {
  switch (kind) {
    case TermKind::number:
      return "a number";
    case TermKind::quoted:
      return "words in quotes";
    case TermKind::text:
      return "some words";
    case TermKind::no_number:
      return "\"no number\"";
    case TermKind::foot:
    case TermKind::feet:
      return "a foot";
    case TermKind::claw:
      return "a claw";
    case TermKind::lesion:
    case TermKind::other_lesion:
      return "a lesion";
    case TermKind::place:
    case TermKind::white_line_place:
    case TermKind::white_line_side:
    case TermKind::zone:
      return "a place";
    case TermKind::degree:
      return "a degree";
    case TermKind::stage:
      return "a stage";
    case TermKind::foot_state:
    case TermKind::rest_fine:
      return "nothing found";
    case TermKind::block_act:
    case TermKind::wrap_act:
    case TermKind::opened_act:
    case TermKind::product_act:
    case TermKind::plain_act:
    case TermKind::see_again:
      return "something done";
    case TermKind::off:
      return "when it comes off";
    case TermKind::weekday:
      return "a weekday";
    case TermKind::days_word:
      return "a time such as 28d";
    case TermKind::day_unit:
    case TermKind::week_unit:
      return "days or weeks";
    case TermKind::measure:
      return "a measure";
    case TermKind::mm:
    case TermKind::cm:
      return "mm or cm";
    case TermKind::reason:
    case TermKind::lame:
      return "why she came";
    case TermKind::turn_end:
    case TermKind::done:
      return "the end of her turn";
    case TermKind::today:
      return "today's feet";
    case TermKind::caller:
    case TermKind::writer:
      return "caller or writer";
    case TermKind::news:
      return "news of the cow";
    case TermKind::unknown_word:
    case TermKind::comma:
    case TermKind::colon:
    case TermKind::strong:
    case TermKind::doubt:
    case TermKind::stray:
    case TermKind::conjunction:
    case TermKind::alternative:
    case TermKind::with:
    case TermKind::time_in:
    case TermKind::only:
    case TermKind::whole_cow:
    case TermKind::zone_word:
    case TermKind::trimmed:
    case TermKind::measure_tail:
    case TermKind::came_for:
    case TermKind::walks_sound:
    case TermKind::go_ahead:
    case TermKind::note:
    case TermKind::correction:
    case TermKind::news_lead:
      return "";
  }
  return "";
}

}  // namespace evenclaw
