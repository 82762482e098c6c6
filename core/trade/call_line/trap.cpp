#include "core/trade/call_line/trap.hpp"

#include <algorithm>
#include <iterator>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/trade/call_line/batch_line.hpp"
#include "core/trade/call_line/cow_number.hpp"
#include "core/trade/call_line/lookalike.hpp"
#include "core/trade/call_line/misplaced.hpp"
#include "core/trade/call_line/nothing_found.hpp"
#include "core/trade/call_line/off_together.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"

namespace evenclaw {

namespace {

// The words of the tokens as said.
std::string_view said_in(const NextStep& next, std::size_t first, std::size_t end) {
  const Token& last = next.tokens[end - 1];
  const std::size_t begin = next.tokens[first].offset;
  return next.text.substr(begin, last.offset + last.length - begin);
}

// " and ", " with ".
std::string joined_by(const Language& language, TermKind kind) {
  return ' ' + std::string(language.say(kind)) + ' ';
}

bool is_word_of(std::string_view word, const Language& language) {
  for (std::size_t i = 0; i < language.phrases().size(); ++i) {
    const std::string phrase = ' ' + language.folded(i) + ' ';
    if (phrase.find(' ' + std::string(word) + ' ') != std::string::npos) return true;
  }
  return false;
}

std::optional<PlacedFault> lame_behind_its_leg(const NextStep& next, const Language& language) {
  if (next.spot != Spot::feet || next.term.kind != TermKind::lame) return std::nullopt;
  const auto* clause = std::get_if<TurnClause>(&next.said.clauses().back().clause);
  const auto* named = clause == nullptr ? nullptr : std::get_if<FeetNamed>(clause);
  if (named == nullptr) return std::nullopt;
  std::string feet;
  for (const Foot foot : all_feet) {
    if (!named->feet.has(foot)) continue;
    if (!feet.empty()) feet += joined_by(language, TermKind::conjunction);
    feet += language.say(TermKind::foot, foot);
  }
  Refusal refusal =
      not_understood("the leg is said before \"" + std::string(next.term.said) + "\"",
                     "say: " + std::string(language.say(TermKind::lame)) + ' ' + feet);
  return PlacedFault{std::move(refusal), next.term};
}

std::optional<PlacedFault> no_name_of_a_product(const NextStep& next, const Language& language) {
  const TermKind kind = next.term.kind;
  const bool is_a_word = kind == TermKind::unknown_word || kind == TermKind::only;
  if (next.step.from != Spot::product || !is_a_word) return std::nullopt;
  const std::string& word = next.tokens[next.term.first_token].folded;
  if (!language.tells_how_done(word) && !is_word_of(word, language)) return std::nullopt;
  const std::string act(next.said.clauses().back().from.said);
  const std::string said(next.term.said);
  return PlacedFault{not_understood("\"" + said + "\" is not taken for the name of a product",
                                    "leave it out; if it is the name, put it in quotes or say: " +
                                        act + joined_by(language, TermKind::with) + said),
                     next.term};
}

// "thin sole ulcer": the sole belongs to the one or to the other.
std::optional<PlacedFault> lesions_share_a_word(const NextStep& next, const Language& language) {
  const bool can_share = next.term.kind == TermKind::lesion || next.term.kind == TermKind::place ||
                         next.term.kind == TermKind::white_line_place;
  if (!can_share) return std::nullopt;
  const std::size_t first = next.term.first_token;
  const std::size_t end = first + next.term.token_count;
  for (std::size_t at = first + 1; at < end; ++at) {
    const Language::Match other = language.longest_match(next.tokens, at);
    if (other.phrase == nullptr || other.phrase->kind != TermKind::lesion) continue;
    if (at + other.word_count <= end) continue;
    const Language::Match rest = language.longest_match(next.tokens, end);
    const bool is_same = rest.phrase != nullptr && rest.phrase->kind == TermKind::lesion &&
                         rest.phrase->value == other.phrase->value;
    if (is_same) continue;
    Term both = next.term;
    both.token_count = at + other.word_count - first;
    const std::string lesion(said_in(next, at, at + other.word_count));
    const std::string said(next.term.said);
    const bool is_place = next.term.kind == TermKind::place;
    return PlacedFault{
        not_understood(
            "it is unclear to what \"" + std::string(said_in(next, at, end)) + "\" belongs",
            "say: " + (is_place ? lesion + ", " + said : said + ", " + lesion)),
        both};
  }
  return std::nullopt;
}

// "SU inside and outside DD": the first claw goes to what was said before it.
bool has_something_to_hold(const LineBuilder& said) {
  if (said.clauses().empty()) return false;
  const auto* clause = std::get_if<TurnClause>(&said.clauses().back().clause);
  return clause != nullptr && (std::holds_alternative<FindingSaid>(*clause) ||
                               std::holds_alternative<ActionSaid>(*clause) ||
                               std::holds_alternative<MeasureSaid>(*clause));
}

// "Inside and outside bruise": one lesion on both, or the inside of what was said before?
std::optional<PlacedFault> claw_and_claw(const NextStep& next, const Language& language) {
  const std::size_t behind = next.term.first_token + next.term.token_count;
  const bool joins = next.spot == Spot::loose && next.term.kind == TermKind::conjunction;
  if (!joins || behind >= next.tokens.size() || has_something_to_hold(next.said)) {
    return std::nullopt;
  }
  const Phrase* other = language.longest_match(next.tokens, behind).phrase;
  if (other == nullptr || other->kind != TermKind::claw) return std::nullopt;
  return PlacedFault{not_understood("it is unclear what belongs to which claw",
                                    "say \"{both claws}\", or each claw with its own lesion"),
                     next.term};
}

/// "Actually" and "no wait" mend, and leave nothing open.
bool is_behind_a_bare_no(const NextStep& next, const Language& language) {
  const std::size_t at = next.term.first_token;
  return at > 0 && next.tokens[at - 1].folded == language.say(TermKind::correction);
}

// "Sole ulcer, no bad": it is not bad, or the degree said before was wrong and bad is right? "LH
// sole ulcer, no RH": nothing on the other foot, or the foot was wrong?
std::optional<PlacedFault> not_so_or_mended(const NextStep& next, const Language& language) {
  const TermKind kind = next.term.kind;
  const bool is_where = kind == TermKind::foot || kind == TermKind::claw;
  const bool is_detail = kind == TermKind::degree || kind == TermKind::stage ||
                         kind == TermKind::place || (is_where && has_something_to_hold(next.said));
  const std::size_t at = next.term.first_token;
  if (next.step.from != Spot::correction || !is_detail || at < 2) return std::nullopt;
  if (!is_behind_a_bare_no(next, language)) return std::nullopt;
  Term both = next.term;
  --both.first_token;
  ++both.token_count;
  const std::string no(language.say(TermKind::correction));
  const std::string detail(next.term.said);
  return PlacedFault{not_understood("it is unclear whether that is not so, or mends what was said",
                                    "what is not so is not said; to mend what was said: \"" + no +
                                        ", " + detail + "\""),
                     both};
}

// "No sole ulcer": there was none, or it is what is right? A comma is what tells the two apart.
std::optional<PlacedFault> no_such_lesion(const NextStep& next, const Language& language) {
  const bool is_corrected =
      next.step.from == Spot::correction && next.term.kind == TermKind::lesion;
  if (!is_corrected || !is_behind_a_bare_no(next, language)) return std::nullopt;
  Term both = next.term;
  --both.first_token;
  ++both.token_count;
  const std::string lesion(next.term.said);
  return PlacedFault{
      not_understood(
          "it is unclear whether \"" + lesion + "\" is not there, or mends what was said",
          "what is not there is not said, and a foot without anything is \"{LH nothing "
          "found}\"; if it was called and is wrong: \"{no, no} " +
              lesion + "\"; if it is right: \"{no,} " + lesion + "\""),
      both};
}

// "No lame LH": she is not lame, or she does not walk sound?
std::optional<PlacedFault> no_lame(const NextStep& next, const Language& language) {
  const bool is_corrected = next.step.from == Spot::correction && next.term.kind == TermKind::lame;
  if (!is_corrected || !is_behind_a_bare_no(next, language)) return std::nullopt;
  const std::string lame(next.term.said);
  const std::string no(language.say(TermKind::correction));
  return PlacedFault{
      not_understood("is she lame, or is she not?",
                     "not lame: \"" + std::string(language.say(TermKind::denied, Denied::lame)) +
                         "\"; lame, and not sound as was said: \"" + no + ", " + lame + "\""),
      next.term};
}

// "Lame 28d", "lame LH 2".
std::optional<PlacedFault> number_behind_lame(const NextStep& next, const Language& language) {
  const bool is_behind = next.step.to == Spot::lame_number;
  const std::size_t at = next.term.first_token;
  if (!is_behind) return std::nullopt;
  const bool has_more = at + 1 < next.tokens.size();
  const Phrase* behind = has_more ? language.longest_match(next.tokens, at + 1).phrase : nullptr;
  const bool is_scored = has_more && (next.tokens[at + 1].kind == TokenKind::conjunction ||
                                      (behind != nullptr && behind->kind == TermKind::out_of));
  const bool may_be_a_score =
      digits_of(next.term).size() == 1 && !has_its_unit(next.tokens, at, language);
  if (is_scored || may_be_a_score) return std::nullopt;
  return PlacedFault{refusal_of_number({next.tokens, at, next.text, next.said, language}),
                     next.term};
}

constexpr std::size_t most_digits_of_a_time = 2;

// Behind "no" a number with its unit is a time, "no, 5d"; "no, 413d" has a letter too many.
bool names_cow(const NextStep& next, const Language& language) {
  if (next.step.to == Spot::cow || next.step.to == Spot::news_number) return true;
  if (next.step.to != Spot::number_right) return false;
  const std::size_t at = next.term.first_token;
  const bool may_be_a_time = digits_of(next.term).size() <= most_digits_of_a_time ||
                             !is_part_of_a_word(next.tokens, at, language);
  return !may_be_a_time || !has_its_unit(next.tokens, at, language);
}

std::optional<PlacedFault> letters_in_a_number(const NextStep& next, const Language& language) {
  const bool is_cow = names_cow(next, language) && next.term.kind == TermKind::number;
  if (!is_cow || !is_part_of_a_word(next.tokens, next.term.first_token, language)) {
    return std::nullopt;
  }
  Term whole = next.term;
  whole.token_count = 2;
  // "28d" alone is a time; "413d" has a letter too many.
  const bool is_short = digits_of(next.term).size() <= most_digits_of_a_time;
  if (is_short && has_its_unit(next.tokens, next.term.first_token, language)) {
    return PlacedFault{
        refusal_of_number({next.tokens, next.term.first_token, next.text, next.said, language}),
        whole};
  }
  const std::string said(said_in(next, whole.first_token, whole.first_token + 2));
  return PlacedFault{not_understood("\"" + said + "\" is not the number of a cow",
                                    "a cow is digits only: " + number_again(said)),
                     whole};
}

// "301-303 wraps off".
std::optional<PlacedFault> range_of_cows(const NextStep& next, const Language& language) {
  if (!names_cow(next, language) && next.step.from != Spot::batch_bar) return std::nullopt;
  std::optional<Refusal> refusal = why_no_range(next.tokens, next.term.first_token, next.text);
  if (!refusal) return std::nullopt;
  return PlacedFault{*std::move(refusal), next.term};
}

// "826 00000060001": the cow 826, and then?
std::optional<PlacedFault> tag_in_two_parts(const NextStep& next, const Language& language) {
  constexpr std::size_t two_parts = 2;
  const std::size_t at = next.term.first_token;
  if (!names_cow(next, language) || misread_tag_tokens(next.tokens, at) != two_parts)
    return std::nullopt;
  Term both = next.term;
  both.token_count = two_parts;
  const std::string_view said = said_in(next, at, at + two_parts);
  if (std::optional<Refusal> refusal = why_no_cow_number(said, said)) {
    return PlacedFault{*std::move(refusal), both};
  }
  return std::nullopt;
}

// "Caller Ben 413": a name, and the next cow behind it.
std::optional<PlacedFault> number_in_a_name(const NextStep& next, const Language&) {
  const bool is_name = next.step.from == Spot::caller || next.step.from == Spot::writer;
  if (!is_name) return std::nullopt;
  const std::size_t end = next.term.first_token + next.term.token_count;
  for (std::size_t at = next.term.first_token; at < end; ++at) {
    if (next.tokens[at].kind != TokenKind::number) continue;
    Term number = next.term;
    number.first_token = at;
    number.token_count = 1;
    const std::string said(said_in(next, at, at + 1));
    const std::string who(said_in(next, 0, at));
    return PlacedFault{
        not_understood("\"" + said + "\" is no part of a name",
                       "say \"" + who + "\" alone, and " + said +
                           " on the next line; if it is part of the name, put the name in quotes"),
        number};
  }
  return std::nullopt;
}

// "No number 418": that is a number, or is it what she is told by?
std::optional<PlacedFault> number_of_no_number(const NextStep& next, const Language& language) {
  if (next.step.from != Spot::looks || next.term.kind != TermKind::text) return std::nullopt;
  if (!is_a_herd_number(next.tokens.subspan(next.term.first_token, next.term.token_count))) {
    return std::nullopt;
  }
  const std::string said(next.term.said);
  const std::string no_number(language.say(TermKind::no_number));
  return PlacedFault{not_understood("has she the number " + said + ", or none?",
                                    "say " + said +
                                        " for the number; without one, what she looks "
                                        "like: \"" +
                                        no_number + ", ...\""),
                     next.term};
}

// "Lame behind" tells which end of her, and no leg.
std::optional<PlacedFault> lame_at_an_end(const NextStep& next, const Language& language) {
  const bool is_behind_lame = next.spot == Spot::lame || next.spot == Spot::lame_on;
  if (!is_behind_lame || next.term.kind != TermKind::place) return std::nullopt;
  const std::string lame(language.say(TermKind::lame));
  return PlacedFault{not_understood("\"" + std::string(next.term.said) + "\" names no leg",
                                    "say the leg: \"" + lame + ' ' +
                                        std::string(language.say(TermKind::foot, Foot::lh)) +
                                        "\"; or \"" + lame + "\" alone when nobody knows which"),
                     next.term};
}

// "Fronts not done", "LH rest fine": of those feet, or of all of her?
std::optional<PlacedFault> of_the_feet_or_of_her(const NextStep& next, const Language& language) {
  const std::size_t at = next.term.first_token;
  const bool is_glued =
      next.spot == Spot::feet && at > 0 && next.tokens[at - 1].kind == TokenKind::word;
  if (!is_glued) return std::nullopt;
  const std::string said(next.term.said);
  std::string feet_said;
  if (next.term.kind == TermKind::rest_fine) {
    feet_said = language.say(TermKind::foot_state, FootState::nothing_found);
  } else if (next.term.kind == TermKind::turn_end && next.term.as<TurnEnd>() == TurnEnd::not_done) {
    feet_said = language.say(TermKind::foot_state, FootState::not_lifted);
  } else {
    return std::nullopt;
  }
  return PlacedFault{not_understood("is \"" + said + "\" said of those feet, or of all of her?",
                                    "of those feet say \"" + feet_said +
                                        "\"; of all of her put ; before \"" + said + "\""),
                     next.term};
}

// "Backs and RH": it is one of the backs.
std::optional<PlacedFault> foot_joined_to_its_group(const NextStep& next,
                                                    const Language& language) {
  const std::size_t at = next.term.first_token;
  if (next.step.act != &LineBuilder::name_more_feet || at == 0) return std::nullopt;
  const Phrase* joined = language.longest_match(next.tokens, at - 1).phrase;
  const bool is_joined = next.tokens[at - 1].kind == TokenKind::conjunction ||
                         (joined != nullptr && joined->kind == TermKind::conjunction);
  const auto* clause = std::get_if<TurnClause>(&next.said.clauses().back().clause);
  const auto* named = clause == nullptr ? nullptr : std::get_if<FeetNamed>(clause);
  if (!is_joined || named == nullptr) return std::nullopt;
  FootSet all = named->feet;
  all.add(feet_in(next.term));
  if (all != named->feet || all == feet_in(next.term)) return std::nullopt;
  const std::string said(next.term.said);
  return PlacedFault{not_understood("\"" + said + "\" is one of the feet named before it",
                                    "say the feet again; of that one alone put ; before " + said),
                     next.term};
}

bool tells_what_was_found_or_done(const PlacedClause& placed) {
  const auto* clause = std::get_if<TurnClause>(&placed.clause);
  return clause != nullptr && (std::holds_alternative<FindingSaid>(*clause) ||
                               std::holds_alternative<ActionSaid>(*clause));
}

// "LH sole ulcer; recheck": why she came, or what is to be done?
std::optional<PlacedFault> recheck_behind_a_finding(const NextStep& next,
                                                    const Language& language) {
  const bool is_recheck =
      next.term.kind == TermKind::reason && next.term.as<Reason>() == Reason::recheck;
  const std::vector<PlacedClause>& clauses = next.said.clauses();
  if (!is_recheck || std::none_of(clauses.begin(), clauses.end(), tells_what_was_found_or_done)) {
    return std::nullopt;
  }
  const std::string again(language.say(TermKind::see_again, ActionKind::see_again));
  return PlacedFault{not_understood("came she for a recheck, or is she to be seen again?",
                                    "to be seen again: \"" + again +
                                        " 28d\"; why she came stands before what "
                                        "was found"),
                     next.term};
}

// "Two hundred and": the rest of the number was swallowed, and two hundred is another cow.
std::optional<PlacedFault> number_not_ended(const NextStep& next, const Language& language) {
  const std::size_t at = next.term.first_token;
  if (!names_cow(next, language) || next.term.kind != TermKind::number) return std::nullopt;
  if (!number_breaks_off(next.tokens, at, next.text, language)) return std::nullopt;
  Term both = next.term;
  ++both.token_count;
  const std::string digits(digits_of(next.term));
  return PlacedFault{not_understood("it is unclear whether the number ends there",
                                    "say " + digits + " in digits, or the number in full: \"" +
                                        std::string(said_in(next, at, at + 2)) + " ...\""),
                     both};
}

}  // namespace

std::optional<PlacedFault> trap_in(const NextStep& next, const Language& language) {
  constexpr decltype(&lame_behind_its_leg) traps[] = {lame_behind_its_leg,
                                                      no_name_of_a_product,
                                                      lesions_share_a_word,
                                                      claw_and_claw,
                                                      not_so_or_mended,
                                                      no_such_lesion,
                                                      letters_in_a_number,
                                                      tag_in_two_parts,
                                                      range_of_cows,
                                                      number_in_a_name,
                                                      number_of_no_number,
                                                      lame_at_an_end,
                                                      of_the_feet_or_of_her,
                                                      foot_joined_to_its_group,
                                                      recheck_behind_a_finding,
                                                      number_not_ended,
                                                      swallowed_by_a_batch,
                                                      one_or_several,
                                                      no_lame,
                                                      number_behind_lame,
                                                      off_too_or_put_on};
  for (const auto trap : traps) {
    if (std::optional<PlacedFault> fault = trap(next, language)) return fault;
  }
  return std::nullopt;
}

std::size_t announced_tokens(std::span<const Token> tokens, const Language& language) {
  if (tokens.size() < 2 || tokens[0].kind != TokenKind::word) return 0;
  const Phrase* behind = language.longest_match(tokens, 1).phrase;
  const bool is_one = behind != nullptr && behind->kind == TermKind::number_word;  // "next one 413"
  const bool is_between = tokens[1].kind == TokenKind::strong || is_one;
  const std::size_t number = is_between ? 2 : 1;
  const bool is_announced = language.leads_a_number(tokens[0].folded) && number < tokens.size() &&
                            tokens[number].kind == TokenKind::number;
  return is_announced ? number + 1 : 0;
}

std::optional<PlacedFault> announced_number(std::span<const Token> tokens, std::string_view text,
                                            const Language& language) {
  Term term;
  term.token_count = announced_tokens(tokens, language);
  if (term.token_count == 0) return std::nullopt;
  const Token& number = tokens[term.token_count - 1];
  const std::string digits(text.substr(number.offset, number.length));
  return PlacedFault{
      not_understood("is " + digits + " the next cow, or the right number of the one before?",
                     "say " + digits + " for the next cow; or \"" +
                         offered_correction(digits, language) + "\" to mend her number"),
      term};
}

bool is_part_of_a_word(std::span<const Token> tokens, std::size_t number,
                       const Language& language) {
  if (number + 1 >= tokens.size() || tokens[number].kind != TokenKind::number) return false;
  const Token& behind = tokens[number + 1];
  const bool touches = tokens[number].offset + tokens[number].length == behind.offset;
  if (!touches || behind.kind != TokenKind::word) return false;
  const Language::Match match = language.longest_match(tokens, number + 1);
  return match.phrase == nullptr || behind.length == 1;  // "412LH" is a cow and her foot
}

bool number_breaks_off(std::span<const Token> tokens, std::size_t number, std::string_view text,
                       const Language& language) {
  constexpr int hundred = 100;
  const bool is_last = number + 1 >= tokens.size();
  if (is_last || tokens[number].kind != TokenKind::number) return false;
  const Phrase* behind = language.longest_match(tokens, number + 1).phrase;
  if (behind == nullptr || behind->kind != TermKind::conjunction) return false;
  const std::vector<Token> words =
      tokens_of(text.substr(tokens[number].offset, tokens[number].length));
  if (words.empty()) return false;
  const Phrase* last = language.longest_match(words, words.size() - 1).phrase;
  return last != nullptr && last->kind == TermKind::number_word && last->value >= hundred;
}

namespace {

bool may_end_before_a_cow(std::span<const Token> tokens, std::size_t at, const Language& language) {
  if (tokens[at].kind == TokenKind::strong || tokens[at].kind == TokenKind::comma) return true;
  if (tokens[at].kind != TokenKind::word) return false;
  const Phrase* phrase = language.longest_match(tokens, at).phrase;
  return phrase != nullptr &&
         (phrase->kind == TermKind::conjunction || phrase->kind == TermKind::done);
}

}  // namespace

bool names_another_cow(std::span<const Token> tokens, std::size_t number,
                       const Language& language) {
  const std::size_t first = first_said(tokens, language);
  if (number <= first) return false;
  const Phrase* start = language.longest_match(tokens, first).phrase;
  const bool may_go_on =
      tokens[first].kind == TokenKind::number ||
      (start != nullptr && (start->kind == TermKind::caller || start->kind == TermKind::writer));
  if (!may_go_on) return false;
  if (!may_end_before_a_cow(tokens, number - 1, language)) return false;
  if (tokens[number].kind != TokenKind::number) return false;
  // At the end of what is said it could be a time without its unit: "see again, 28".
  const bool has_words = number + 1 < tokens.size() && tokens[number + 1].kind == TokenKind::word;
  return has_words && !is_part_of_a_word(tokens, number, language) &&
         !has_its_unit(tokens, number, language);
}

bool has_its_unit(std::span<const Token> tokens, std::size_t number, const Language& language) {
  if (number + 1 >= tokens.size() || tokens[number].kind != TokenKind::number) return false;
  const Phrase* unit = language.longest_match(tokens, number + 1).phrase;
  constexpr TermKind units[] = {TermKind::mm, TermKind::cm, TermKind::day_unit, TermKind::week_unit,
                                TermKind::out_of};
  return unit != nullptr &&
         std::find(std::begin(units), std::end(units), unit->kind) != std::end(units);
}

}  // namespace evenclaw
