#include "core/trade/call_line/misplaced.hpp"

#include <algorithm>
#include <iterator>
#include <optional>
#include <string_view>
#include <vector>

#include "core/base/quotation.hpp"
#include "core/trade/call_line/batch_line.hpp"
#include "core/trade/call_line/number_range.hpp"
#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/trap.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

// What to do with words that are known but stand where they cannot.
struct Misplaced {
  TermKind kind;
  std::string_view remedy;
};

constexpr Misplaced misplaced_table[] = {
    {TermKind::weekday,
     "a day follows \"{see again}\" or, with \"{off}\", a wrap or block put on today"},
    {TermKind::days_word, "a time follows \"{see again}\", or \"{off}\" behind a wrap or block"},
    {TermKind::time_in, "a time follows \"{see again}\", or \"{off}\" behind a wrap or block"},
    {TermKind::day_unit,
     "say what is to happen then: \"{see again 28d}\", or \"{off} 28d\" behind a wrap or block"},
    {TermKind::week_unit,
     "say what is to happen then: \"{see again 28d}\", or \"{off} 28d\" behind a wrap or block"},
    {TermKind::zone_word, "say the zone with its number, as {z4}"},
    {TermKind::doubt, "a question mark stands behind the number of a cow or what was found"},
    {TermKind::measure_tail, "a length comes first, such as {78 mm}"},
    {TermKind::ditto, "say what was found; nothing is taken over from another foot, cow or visit"},
    {TermKind::as_last_time, "say it behind the foot: \"{LH} {same as last time}\""},
    {TermKind::number_word,
     "say the number of a cow in digits, or all of it as in {four twelve}; a time with its unit"},
    {TermKind::unreadable,
     "it follows the number that cannot be read: {513 or 531, can't read it}"},
    {TermKind::only, "it stands before the feet that were lifted: \"{just the backs}\""},
    {TermKind::farmer_off, "say it behind the wrap: \"{wrap on, off Thu}\""},
    {TermKind::not_that,
     "say what is right: \"{no, inside}\", \"{no, right hind}\", \"{no, 421}\""},
    {TermKind::never_mind, "say it alone, or behind her number, to drop what was not understood"},
    {TermKind::still_here, "of one who was said to be gone, behind her number: {306 still here}"},
    {TermKind::news, "news comes behind the number of a cow: {77 gone}"},
    {TermKind::feet,
     "of one foot say \"{no, only LH}\"; when the others stayed down \"{just the backs}\""},
    {TermKind::gone,
     "of a cow it stands behind her number: {77 gone}; of a claw say \"{inside} {claw missing}\""},
};

std::string_view meant_by(UnclearWord word) {
  switch (word) {
    case UnclearWord::rot:
      return "which is it: {foul}, {toe necrosis}, or {heel horn erosion}?";
    case UnclearWord::abscess:
      return "where is it: {white line abscess}, or {other} \"...\" in words?";
    case UnclearWord::dish:
      return "which is it: {modelled}, or {concave wall}?";
    case UnclearWord::healed:
      return "when nothing is found there any more: \"{LH nothing found}\"; else what is found "
             "today";
    case UnclearWord::pain_relief:
      return "which is it: \"{pain relief given by the vet}\", or \"{pain relief asked for}\"?";
  }
  return {};
}

bool is_a_time(TermKind kind) {
  return kind == TermKind::weekday || kind == TermKind::days_word || kind == TermKind::time_in;
}

bool is_done_to_her(TermKind kind) {
  constexpr TermKind kinds[] = {TermKind::block_act,  TermKind::block_of,    TermKind::wrap_act,
                                TermKind::opened_act, TermKind::product_act, TermKind::plain_act,
                                TermKind::see_again,  TermKind::watch,       TermKind::handling};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

bool is_news(Spot spot) {
  return spot == Spot::news_number || spot == Spot::news_feet || spot == Spot::news_said ||
         spot == Spot::news_more || spot == Spot::news_foot;
}

bool is_found_on_a_foot(TermKind kind) {
  constexpr TermKind kinds[] = {TermKind::lesion, TermKind::claw,   TermKind::place,
                                TermKind::degree, TermKind::stage,  TermKind::foot_state,
                                TermKind::lame,   TermKind::nicked, TermKind::rest_fine};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

}  // namespace

std::string remedy_for_time_of_off(const LineBuilder& said) {
  if (said.clauses().empty()) return {};
  const auto* clause = std::get_if<TurnClause>(&said.clauses().back().clause);
  const auto* act = clause == nullptr ? nullptr : std::get_if<ActionSaid>(clause);
  const std::optional<FixtureSaid> told =
      act == nullptr ? std::nullopt : fixture_said(act->action.kind);
  if (!told || told->step != FixtureStep::taken_off) return {};
  return told->fixture == Fixture::wrap
             ? "put on today and to come off then: \"{wrap on, off 5d}\"; if it is off by now, "
               "leave out the time"
             : "put on today and to come off then: \"{block on inside, off 28d}\"; if it is off by "
               "now, leave out the time";
}

std::string remedy_for(const Misplacement& here) {
  const Term& term = here.term;
  if (is_news(here.spot) && is_found_on_a_foot(term.kind)) {
    return "what is found is called of one cow: her number, the foot and what was found, on a line "
           "of its own";
  }
  if (is_news(here.spot) && is_a_time(term.kind)) {
    return "what is off by now is told without its day; of one put on today, say in the crush "
           "when it comes off: \"{wrap on, off Thu}\"";
  }
  if (here.spot == Spot::finding && tells_it_is_gone(term)) {
    return std::string(meant_by(UnclearWord::healed));
  }
  if (here.spot == Spot::finding_on && term.kind == TermKind::place) {
    const std::string place(term.said);
    return "on the inside claw: \"{inside} " + place + "\"; the place alone: \"" + place + "\"";
  }
  if (here.spot == Spot::batch_only) {
    return "it stands before the feet that were lifted: \"{just the backs}\"";
  }
  if (here.spot == Spot::batch_number) return std::string(remedy_behind_a_count);
  if (term.kind == TermKind::unclear_word) {
    return std::string(meant_by(term.as<UnclearWord>()));
  }
  if (is_a_time(term.kind)) {
    if (std::string remedy = remedy_for_time_of_off(here.said); !remedy.empty()) return remedy;
  }
  if (here.spot == Spot::correction && is_done_to_her(term.kind)) {
    const std::string act(term.said);
    return "what was not done is not said; if it was said and is wrong: \"{no, no} " + act + "\"";
  }
  for (const Misplaced& row : misplaced_table) {
    if (row.kind == term.kind) return std::string(row.remedy);
  }
  return {};
}

bool tells_it_is_gone(const Term& term) {
  const bool is_healed =
      term.kind == TermKind::unclear_word && term.as<UnclearWord>() == UnclearWord::healed;
  return is_healed || term.kind == TermKind::gone;
}

namespace {

std::string said_from(const NumberAlone& here, std::size_t count) {
  const Token& last = here.tokens[here.at + count - 1];
  const std::size_t from = here.tokens[here.at].offset;
  return std::string(here.text.substr(from, last.offset + last.length - from));
}

Refusal time_of_nothing(const NumberAlone& here, std::size_t tokens) {
  const std::string said = said_from(here, tokens);
  const std::string stands = quoted(said) + " tells a time, and not what is to happen then";
  if (std::string meant = remedy_for_time_of_off(here.said); !meant.empty()) {
    return not_understood(stands, std::move(meant));
  }
  const auto* clause = here.said.clauses().empty()
                           ? nullptr
                           : std::get_if<TurnClause>(&here.said.clauses().back().clause);
  const bool comes_off = clause != nullptr && awaits_off(*clause);
  return not_understood(stands, comes_off
                                    ? "when it comes off: \"{off} " + said + "\""
                                    : "say such as \"{see again} " + said + "\", or \"{off} " +
                                          said + "\" behind a wrap or block that is put on");
}

}  // namespace

std::optional<Refusal> why_no_range(std::span<const Token> tokens, std::size_t at,
                                    std::string_view text) {
  const std::vector<std::string> numbers = numbers_of_range(tokens, at, text);
  if (numbers.empty()) return std::nullopt;
  const std::size_t from = tokens[at - 2].offset;
  const std::size_t end = tokens[at].offset + tokens[at].length;
  constexpr std::size_t most_listed = 12;
  std::string each = numbers.front();
  if (numbers.size() > most_listed) each += ", " + numbers[1] + ", ..., " + numbers.back();
  for (std::size_t i = 1; i < numbers.size() && numbers.size() <= most_listed; ++i) {
    each += ", " + numbers[i];
  }
  return not_understood(quoted(text.substr(from, end - from)) + " may mean the numbers between too",
                        "say each number: " + each);
}

Refusal refusal_of_number(const NumberAlone& here) {
  const std::string number = said_from(here, 1);
  const Language::Match behind = here.at + 1 < here.tokens.size()
                                     ? here.language.longest_match(here.tokens, here.at + 1)
                                     : Language::Match{};
  const TermKind unit = behind.phrase == nullptr ? TermKind::stray : behind.phrase->kind;
  if (unit == TermKind::day_unit || unit == TermKind::week_unit) {
    return time_of_nothing(here, 1 + behind.word_count);
  }
  if (unit == TermKind::mm || unit == TermKind::cm) {
    const std::string said = said_from(here, 1 + behind.word_count);
    return not_understood(quoted(said) + " tells a length, and not what was measured",
                          "say such as \"{length} " + said + "\", \"{heel} " + said + "\"");
  }
  const bool is_slash = here.at + 1 < here.tokens.size() && said_from(here, 2).back() == '/';
  if (unit == TermKind::out_of || is_slash) {
    return not_understood("it is unclear what " + quoted(number) + " is a score of",
                          "say \"{mobility 2 of 3}\" (0-3) or \"{mobility 3 of 5}\" (1-5)");
  }
  if (std::optional<Refusal> range = why_no_range(here.tokens, here.at, here.text)) {
    return *std::move(range);
  }
  if (names_another_cow(here.tokens, here.at, here.language)) {
    return not_understood(quoted(number) + " begins another cow in the middle of the line",
                          "each cow on a line of her own: say " + number + " on the next one");
  }
  const std::string meant = remedy_for_time_of_off(here.said);
  return not_understood(
      "the number " + number +
          " stands alone; a bare number is a cow, and only at the start of a line",
      meant.empty() ? "say a place as {z4}, a time as {28d} or {4 weeks}, a length as {78 mm}"
                    : meant);
}

}  // namespace evenclaw
