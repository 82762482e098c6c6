#include "core/trade/call_line/free_text.hpp"

#include <algorithm>

#include "core/base/text.hpp"
#include "core/trade/action.hpp"
#include "core/trade/lesion.hpp"

namespace evenclaw {

namespace {

bool ends_text(TokenKind kind, TextExtent extent) {
  if (extent == TextExtent::to_line_end) return false;
  if (kind == TokenKind::strong) return true;
  const bool to_any = extent == TextExtent::to_separator || extent == TextExtent::of_a_batch;
  return to_any && (kind == TokenKind::comma || kind == TokenKind::colon);
}

// Words that nobody needs to describe a cow, a product or a reason, but that call something.
bool calls_something(TermKind kind) {
  constexpr TermKind calling[] = {TermKind::foot,         TermKind::feet,
                                  TermKind::other_foot,   TermKind::lesion,
                                  TermKind::nicked,       TermKind::as_last_time,
                                  TermKind::still_on_her, TermKind::stump_known,
                                  TermKind::block_act,    TermKind::wrap_act,
                                  TermKind::opened_act,   TermKind::product_act,
                                  TermKind::plain_act,    TermKind::block_of,
                                  TermKind::mark_of,      TermKind::see_again,
                                  TermKind::watch,        TermKind::withheld_act,
                                  TermKind::foot_state,   TermKind::rest_fine,
                                  TermKind::trimmed,      TermKind::nothing_after_all,
                                  TermKind::lame,         TermKind::walks_sound,
                                  TermKind::done,         TermKind::caller,
                                  TermKind::writer};
  return std::find(std::begin(calling), std::end(calling), kind) != std::end(calling);
}

// Behind what she came for: how her turn ended and how she was handled are no part of that.
bool goes_on_behind_a_reason(TermKind kind) {
  constexpr TermKind kinds[] = {TermKind::turn_end, TermKind::turn_end_why, TermKind::handling,
                                TermKind::reason, TermKind::mobility};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

// "Came for long toes", "no number, corkscrew": what a cow is told by or brought for.
bool may_describe_her(const Phrase& phrase) {
  if (phrase.kind != TermKind::lesion) return false;
  const auto lesion = static_cast<Lesion>(phrase.value);
  const LesionFacts& facts = facts_of(lesion);
  const bool has_no_code = facts.code_known == CodeKnown::none;
  return has_no_code || facts.group == LesionGroup::shape || lesion == Lesion::sw;
}

// "Not done, went down in the crush": what is called of her says why she was let out.
bool may_tell_why_let_out(const Phrase& phrase) {
  if (phrase.kind != TermKind::plain_act && phrase.kind != TermKind::see_again) return false;
  constexpr ActionKind whys[] = {ActionKind::went_down,    ActionKind::fever,
                                 ActionKind::blisters,     ActionKind::sore_mouth,
                                 ActionKind::near_calving, ActionKind::heavy_in_calf};
  const auto act = static_cast<ActionKind>(phrase.value);
  return std::find(std::begin(whys), std::end(whys), act) != std::end(whys);
}

bool names_feet(TermKind kind) {
  return kind == TermKind::foot || kind == TermKind::feet;
}

struct Census {
  bool calls = false;
  bool calls_of_a_foot = false;  // "brown heifer LH SU", "brown heifer lame LH"
  bool has_other_words = false;
};

bool tells_who(TermKind kind) {
  return kind == TermKind::by_whom || kind == TermKind::directed_by;
}

Census census_of(std::span<const Token> tokens, TextExtent extent, const Language& language) {
  Census census;
  bool after_foot = false;
  bool after_lame = false;
  std::size_t at = 0;
  while (at < tokens.size()) {
    const Language::Match match = language.longest_match(tokens, at);
    // "Not" calls nothing by itself, and anybody may need it: "not done, not lame enough".
    if (match.phrase == nullptr || match.phrase->kind == TermKind::negation) {
      census.has_other_words |= tokens[at].kind != TokenKind::number;
      after_lame = false;
      ++at;
      continue;
    }
    const TermKind kind = match.phrase->kind;
    const bool is_why = extent == TextExtent::of_an_end && may_tell_why_let_out(*match.phrase);
    census.calls |= calls_something(kind) && !may_describe_her(*match.phrase) && !is_why;
    // Who gave it ends the name of a product, and only that; no product is called "kicks", but that
    // may be why she was not done.
    const bool ends_a_name = tells_who(kind) || kind == TermKind::handling;
    census.calls |= extent == TextExtent::to_separator && ends_a_name;
    census.calls |= extent == TextExtent::of_a_reason && goes_on_behind_a_reason(kind);
    census.calls_of_a_foot |= names_feet(kind) ? after_lame : after_foot && calls_something(kind);
    after_foot |= names_feet(kind);
    after_lame = kind == TermKind::lame || (after_lame && kind == TermKind::time_in);
    at += match.word_count;
  }
  return census;
}

bool part_could_be_calls(std::span<const Token> part, TextExtent extent, const Language& language) {
  const Census census = census_of(part, extent, language);
  if (extent == TextExtent::to_separator) return census.calls;
  return census.calls_of_a_foot || (census.calls && !census.has_other_words);
}

bool reads_back(std::string_view words, TextExtent extent, const Language& language) {
  if (words.empty() || trimmed(words) != words) return false;
  const std::vector<Token> tokens = tokens_of(words);
  // "No number, 418" could be the number she has.
  const bool may_name_her = extent == TextExtent::to_strong || extent == TextExtent::of_an_end;
  if (may_name_her && is_a_herd_number(tokens)) return false;
  const TokenKind first = tokens.front().kind;
  if (first != TokenKind::word && first != TokenKind::number) return false;
  if (tokens.back().offset + tokens.back().length != words.size()) return false;
  for (const Token& token : tokens) {
    const bool is_quote = token.kind == TokenKind::quoted || token.kind == TokenKind::stray;
    if (is_quote || ends_text(token.kind, extent)) return false;
  }
  return !could_be_calls(tokens, extent, language);
}

bool is_called_of_a_foot(TermKind kind) {
  constexpr TermKind kinds[] = {TermKind::lesion,    TermKind::foot_state,  TermKind::block_act,
                                TermKind::wrap_act,  TermKind::product_act, TermKind::trimmed,
                                TermKind::opened_act};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

// What is done to her, or is to be done, whatever foot it is said of.
bool is_done_or_planned(TermKind kind) {
  constexpr TermKind kinds[] = {
      TermKind::block_act,  TermKind::block_of,    TermKind::wrap_act,
      TermKind::opened_act, TermKind::product_act, TermKind::plain_act,
      TermKind::see_again,  TermKind::watch,       TermKind::withheld_act};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

}  // namespace

bool free_words_may_follow(TermKind kind) {
  constexpr TermKind kinds[] = {TermKind::product_act, TermKind::with,     TermKind::other_lesion,
                                TermKind::note,        TermKind::turn_end, TermKind::turn_end_why,
                                TermKind::no_number,   TermKind::came_for, TermKind::caller,
                                TermKind::writer};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

bool is_a_herd_number(std::span<const Token> tokens) {
  constexpr std::size_t most_digits = 6;  // a reader gives fifteen
  return tokens.size() == 1 && tokens.front().kind == TokenKind::number &&
         tokens.front().length <= most_digits;
}

std::size_t text_token_count(std::span<const Token> tokens, std::size_t at, TextExtent extent) {
  std::size_t end = at;
  while (end < tokens.size() && !ends_text(tokens[end].kind, extent)) ++end;
  return end - at;
}

std::size_t name_token_count(std::span<const Token> tokens, std::size_t at, std::size_t count,
                             const Language& language) {
  for (std::size_t behind = 1; behind < count; ++behind) {
    const Language::Match match = language.longest_match(tokens, at + behind);
    if (match.phrase != nullptr && tells_who(match.phrase->kind)) return behind;
  }
  return count;
}

bool could_be_calls(std::span<const Token> tokens, TextExtent extent, const Language& language) {
  const bool may_hold_calls = extent == TextExtent::to_line_end || extent == TextExtent::of_a_batch;
  if (may_hold_calls) return false;
  std::size_t start = 0;
  while (start < tokens.size()) {
    std::size_t end = start;
    while (end < tokens.size() && tokens[end].kind != TokenKind::comma) ++end;
    const bool is_reason = extent == TextExtent::of_a_reason && start == 0;
    const TextExtent of_part = is_reason ? TextExtent::to_strong : extent;
    if (part_could_be_calls(tokens.subspan(start, end - start), of_part, language)) return true;
    start = end + 1;
  }
  return false;
}

bool may_tell_of_a_finding(std::string_view words, const Language& language) {
  const std::vector<Token> tokens = tokens_of(words);
  bool foot = false;
  bool called = false;
  std::size_t at = 0;
  while (at < tokens.size()) {
    const Language::Match match = language.longest_match(tokens, at);
    foot = foot || (match.phrase != nullptr && names_feet(match.phrase->kind));
    called = called || (match.phrase != nullptr && is_called_of_a_foot(match.phrase->kind));
    if (match.phrase != nullptr && is_done_or_planned(match.phrase->kind)) return true;
    at += match.phrase == nullptr ? 1 : match.word_count;
  }
  return foot && called;
}

std::string in_quotes(std::string_view words) {
  std::string text = "\"";
  for (const char c : words) {
    if (c == '"') text += '"';
    text += c;
  }
  return text + '"';
}

std::string printed_text(std::string_view words, TextExtent extent, const Language& language) {
  return reads_back(words, extent, language) ? std::string(words) : in_quotes(words);
}

}  // namespace evenclaw
