#include "core/api/recording/refused_cow.hpp"

#include <algorithm>
#include <optional>
#include <span>
#include <vector>

#include "core/base/text.hpp"
#include "core/trade/call_line/cow_number.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/nearest.hpp"
#include "core/trade/call_line/spoken_numbers.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/call_line/term.hpp"
#include "core/trade/call_line/trap.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t longest_name = 8;  // tokens that name a cow
constexpr std::size_t longest_line_bytes = 4096;
constexpr std::size_t words_in_a_fate = 3;  // "wrap still on"

bool starts_a_cow(const std::vector<Token>& tokens, const Language& language) {
  if (tokens.empty()) return false;
  if (tokens.front().kind == TokenKind::number) return true;
  const Language::Match match = language.longest_match(tokens, 0);
  return match.phrase != nullptr && match.phrase->kind == TermKind::no_number;
}

/// "No" with nothing between it and words that are no slip of what can be corrected.
bool says_no_and_corrects_nothing(const std::vector<Token>& tokens, const Language& language) {
  if (tokens.empty()) return false;
  const Language::Match no = language.longest_match(tokens, 0);
  if (no.phrase == nullptr || no.phrase->kind != TermKind::correction) return false;
  std::size_t unknown = 0;
  for (std::size_t at = no.word_count; at < tokens.size(); ++at) {
    const bool is_known = language.longest_match(tokens, at).phrase != nullptr;
    const bool is_word = tokens[at].kind == TokenKind::word;
    if (at == no.word_count && (is_known || !is_word)) return false;
    if (!is_known && is_word) ++unknown;
  }
  return unknown > 1 || (unknown == 1 && !looks_like_a_slip(tokens[no.word_count], language));
}

bool is_list_of_numbers(const std::vector<Token>& tokens, const Language& language) {
  if (tokens.empty() || tokens[0].kind != TokenKind::number) return false;
  const std::size_t joining = language.joining_tokens(tokens, 1);
  return joining > 0 && joining + 1 < tokens.size() &&
         tokens[joining + 1].kind == TokenKind::number;
}

bool belongs_to_a_turn(TermKind kind) {
  constexpr TermKind kinds[] = {
      TermKind::foot,         TermKind::feet,         TermKind::claw,
      TermKind::lesion,       TermKind::place,        TermKind::degree,
      TermKind::stage,        TermKind::foot_state,   TermKind::nothing_after_all,
      TermKind::watch,        TermKind::rest_fine,    TermKind::trimmed,
      TermKind::reason,       TermKind::lame,         TermKind::came_for,
      TermKind::turn_end,     TermKind::opened_act,   TermKind::product_act,
      TermKind::walks_sound,  TermKind::see_again,    TermKind::white_line_place,
      TermKind::block_of,     TermKind::mark_of,      TermKind::dd_in_it,
      TermKind::unclear_word, TermKind::kept_word,    TermKind::mobility,
      TermKind::turn_end_why, TermKind::withheld_act, TermKind::nicked,
      TermKind::blood,        TermKind::compared,     TermKind::as_last_time,
      TermKind::still_on_her, TermKind::stump_known,  TermKind::other_claw,
      TermKind::other_foot,   TermKind::one_side,     TermKind::off_with_it,
      TermKind::denied};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

bool is_of_wrap_or_block(const Phrase& said) {
  return said.kind == TermKind::wrap_act || said.kind == TermKind::block_act;
}

/// What became of a cow, or of her wrap or block.
bool tells_fate(const Phrase& said) {
  if (said.kind == TermKind::news || said.kind == TermKind::gone) return true;
  const auto act = is_of_wrap_or_block(said) ? fixture_said(static_cast<ActionKind>(said.value))
                                             : std::optional<FixtureSaid>();
  return act && (is_off_after(act->step) || act->step == FixtureStep::left_on);
}

/// "Wrap on": it was done in the crush.
bool is_done_now(const Phrase& said) {
  return is_of_wrap_or_block(said) && !tells_fate(said);
}

/// News tells of feet as well, but of nothing else that belongs to a turn.
CowLikely likely_from_rest(const std::vector<Token>& tokens, const Language& language) {
  bool has_news = false;
  bool has_feet = false;
  bool has_more = false;
  bool is_behind_a_lesion = false;  // "swelling gone" tells of no cow that is gone
  std::size_t at = 1;
  while (at < tokens.size()) {
    const Language::Match match = language.longest_match(tokens, at);
    at += match.phrase == nullptr ? 1 : match.word_count;
    if (match.phrase == nullptr) continue;
    const TermKind kind = match.phrase->kind;
    const bool is_foot = kind == TermKind::foot || kind == TermKind::feet;
    const bool is_lesion_gone = kind == TermKind::gone && is_behind_a_lesion;
    is_behind_a_lesion = kind == TermKind::lesion;
    has_news = has_news || kind == TermKind::news || (kind == TermKind::gone && !is_lesion_gone);
    has_feet = has_feet || is_foot;
    has_more = has_more || (!is_foot && belongs_to_a_turn(kind));
  }
  if (has_news) return has_more ? CowLikely::perhaps : CowLikely::none;
  return has_feet || has_more ? CowLikely::surely : CowLikely::perhaps;
}

/// "Seven LH SU": a single number word in front of a foot or of how she came is likely a cow's.
std::optional<CowSaid> said_in_one_word(const std::vector<Token>& tokens,
                                        const Language& language) {
  const std::optional<int> value = number_word_at(tokens, 0, language);
  if (!value || tokens.size() < 2) return std::nullopt;
  const Phrase* behind = language.longest_match(tokens, 1).phrase;
  if (behind == nullptr) return std::nullopt;
  constexpr TermKind kinds[] = {TermKind::foot, TermKind::feet, TermKind::lame, TermKind::reason};
  if (std::find(std::begin(kinds), std::end(kinds), behind->kind) == std::end(kinds)) {
    return std::nullopt;
  }
  CowSaid cow;
  cow.known = CowKnown::doubtful;
  cow.number = std::to_string(*value);
  return cow;
}

/// What a line may start with that is not about another cow than the one in the crush.
constexpr TermKind not_another_cow[] = {
    TermKind::foot,        TermKind::feet,         TermKind::whole_cow,
    TermKind::claw,        TermKind::good_claw,    TermKind::lesion,
    TermKind::place,       TermKind::other_lesion, TermKind::white_line_place,
    TermKind::zone_word,   TermKind::degree,       TermKind::stage,
    TermKind::foot_state,  TermKind::rest_fine,    TermKind::nothing_after_all,
    TermKind::trimmed,     TermKind::block_act,    TermKind::wrap_act,
    TermKind::opened_act,  TermKind::product_act,  TermKind::plain_act,
    TermKind::handling,    TermKind::beware,       TermKind::see_again,
    TermKind::watch,       TermKind::measure,      TermKind::lame,
    TermKind::came_for,    TermKind::walks_sound,  TermKind::turn_end,
    TermKind::done,        TermKind::go_ahead,     TermKind::note,
    TermKind::correction,  TermKind::scrapped,     TermKind::not_that,
    TermKind::ditto,       TermKind::today,        TermKind::caller,
    TermKind::writer,      TermKind::time_in,      TermKind::with,
    TermKind::conjunction, TermKind::only,         TermKind::off,
    TermKind::block_of,    TermKind::mark_of,      TermKind::material,
    TermKind::by_whom,     TermKind::dd_in_it,     TermKind::unclear_word,
    TermKind::kept_word,   TermKind::mobility,     TermKind::turn_end_why,
    TermKind::farmer_off,  TermKind::other_side,   TermKind::meant,
    TermKind::unreadable,  TermKind::both,         TermKind::withheld_act,
    TermKind::directed_by, TermKind::till,         TermKind::milking,
    TermKind::never_mind,  TermKind::nicked,       TermKind::blood,
    TermKind::compared,    TermKind::as_last_time, TermKind::still_on_her,
    TermKind::stump_known, TermKind::other_claw,   TermKind::other_foot,
    TermKind::one_side,    TermKind::off_with_it,  TermKind::denied};

/// Of words as short as "the" and "nr" everything is near, so only a foot is meant by a slip in
/// one.
bool is_slip_of_hers(const std::vector<Token>& tokens, std::size_t at, const Language& language) {
  constexpr std::size_t letters_of_a_short_word = 3;
  constexpr TermKind feet[] = {TermKind::foot, TermKind::feet};
  if (language.zone_in(tokens[at].folded)) return true;
  const Nearest any = nearest_phrase(tokens, at, at, not_another_cow, language);
  const bool is_long = tokens[at].folded.size() > letters_of_a_short_word;
  if (is_long || any.token_count > 1) return !any.words.empty();
  return !nearest_phrase(tokens, at, at, feet, language).words.empty();
}

/// Behind "yes" and "hang on".
std::size_t behind_asides(const std::vector<Token>& tokens, std::size_t at,
                          const Language& language) {
  while (at < tokens.size()) {
    const bool is_word = tokens[at].kind == TokenKind::word;
    if (is_word && !language.is_aside(tokens[at].folded)) break;
    if (!is_word && tokens[at].kind != TokenKind::comma) break;
    ++at;
  }
  return at;
}

bool names_who_works(TermKind kind) {
  return kind == TermKind::caller || kind == TermKind::writer;
}

/// "Caller Ben 413": the next cow may have been named behind the name.
bool holds_a_number(const std::vector<Token>& tokens) {
  return std::any_of(tokens.begin(), tokens.end(),
                     [](const Token& token) { return token.kind == TokenKind::number; });
}

/// "All wraps off": a word that names nobody, and then what became of wraps or blocks alone.
bool is_of_whatever_was_on(const std::vector<Token>& tokens, std::size_t at, std::string_view text,
                           const Language& language) {
  if (!language.tells_how_done(tokens[at].folded) || holds_a_number(tokens)) return false;
  const Phrase* behind =
      at + 1 < tokens.size() ? language.longest_match(tokens, at + 1).phrase : nullptr;
  return behind != nullptr && is_of_wrap_or_block(*behind) && tells_news_alone(text, language);
}

/// "101 vet; 102 wraps off": whose the next line is nobody knows.
bool names_two_cows(const std::vector<Token>& tokens, const Language& language) {
  for (std::size_t at = 1; at < tokens.size(); ++at) {
    if (names_another_cow(tokens, at, language)) return true;
  }
  return false;
}

/// "Wrap on still" is "wrap still on"; "" for any other words.
std::string fate_in_usual_order(std::span<const Token> said, const Language& language) {
  for (std::size_t i = 0; i < language.phrases().size(); ++i) {
    if (!tells_fate(language.phrases()[i])) continue;
    const std::vector<Token> words = tokens_of(language.folded(i));
    if (words.size() != words_in_a_fate || said.size() < words.size()) continue;
    const auto is_alike = [](const Token& a, const Token& b) { return a.folded == b.folded; };
    if (std::is_permutation(words.begin(), words.end(), said.begin(), is_alike)) {
      return language.folded(i);
    }
  }
  return {};
}

/// The line with every one of them in the order in which it is known.
std::string in_usual_order(std::string_view text, const Language& language) {
  const std::vector<Token> tokens = spoken_tokens(text, language);
  std::string line(text);
  for (std::size_t at = tokens.size(); at-- > 0;) {
    const std::string usual = fate_in_usual_order(std::span(tokens).subspan(at), language);
    if (usual.empty()) continue;
    const Token& last = tokens[at + words_in_a_fate - 1];
    const std::size_t from = tokens[at].offset;
    line.replace(from, last.offset + last.length - from, usual);
  }
  return line;
}

/// News, and how she is handled or walks, which is told of one who is not in the crush as well.
bool is_news(const Phrase& said) {
  return tells_fate(said) || said.kind == TermKind::handling || said.kind == TermKind::walks_sound;
}

bool stands_beside_news(TermKind kind) {
  return kind == TermKind::foot || kind == TermKind::feet || kind == TermKind::conjunction;
}

/// With each word that nobody knows as the one it is a slip of.
std::vector<Token> with_slips_known(std::string_view text, const Language& language) {
  std::vector<TermKind> kinds = {TermKind::news, TermKind::gone};
  kinds.insert(kinds.end(), std::begin(not_another_cow), std::end(not_another_cow));
  const std::string mended = with_slips_mended(in_usual_order(text, language), kinds, language);
  return spoken_tokens(mended, language);
}

/// A cow of whose number only these words are known.
CowSaid known_by(std::string_view text, std::span<const Token> words) {
  const Token& last = words.back();
  const std::size_t from = words.front().offset;
  CowSaid cow;
  cow.known = CowKnown::unnumbered;
  cow.looks = text.substr(from, last.offset + last.length - from);
  return cow;
}

/// The cow of the longest beginning that names a cow and nothing else.
std::optional<CowSaid> named_at_start(std::string_view text, const std::vector<Token>& tokens,
                                      LineContext context, const Language& language) {
  context.cow_open = false;
  std::optional<CowSaid> cow;
  for (std::size_t count = 1; count <= std::min(tokens.size(), longest_name); ++count) {
    const Token& last = tokens[count - 1];
    // "No number, white face, lame RH": her words end before the comma.
    if (last.kind == TokenKind::comma && count > 1) continue;
    if (is_part_of_a_word(tokens, count - 1, language)) continue;
    const auto line = read_line(text.substr(0, last.offset + last.length), context, language);
    if (!line || line->clauses.size() != 1) continue;
    if (const auto* named = std::get_if<CowNamed>(&line->clauses.front())) cow = named->cow;
  }
  return cow;
}

}  // namespace

std::string only_number(const CowSaid& cow) {
  const bool has_one = cow.known != CowKnown::unnumbered && cow.alternatives.empty();
  return has_one ? plain_number(cow.number) : std::string();
}

bool may_be_of_another_cow(std::string_view text, const Language& language) {
  if (!is_utf8(text) || text.size() > longest_line_bytes) return true;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  const std::size_t at = behind_asides(tokens, first_said(tokens, language), language);
  if (at == tokens.size()) return false;
  if (tokens[at].kind != TokenKind::word) return !has_its_unit(tokens, at, language);
  const Language::Match match = language.longest_match(tokens, at);
  if (match.phrase == nullptr) {
    return !is_of_whatever_was_on(tokens, at, text, language) &&
           !is_slip_of_hers(tokens, at, language);
  }
  if (names_who_works(match.phrase->kind)) return holds_a_number(tokens);
  return std::find(std::begin(not_another_cow), std::end(not_another_cow), match.phrase->kind) ==
         std::end(not_another_cow);
}

bool is_an_aside(std::string_view text, const Language& language) {
  if (!is_utf8(text) || text.size() > longest_line_bytes) return false;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  const std::size_t at = first_said(tokens, language);
  return at < tokens.size() && behind_asides(tokens, at, language) == tokens.size();
}

bool is_a_heading(std::string_view text, const Language& language) {
  if (!is_utf8(text) || text.size() > longest_line_bytes) return false;
  std::vector<Token> tokens = spoken_tokens(text, language);
  if (!tokens.empty() && tokens.back().kind == TokenKind::colon) tokens.pop_back();
  if (tokens.empty()) return false;
  const Language::Match match = language.longest_match(tokens, 0);
  return match.phrase != nullptr && match.phrase->kind == TermKind::animals &&
         match.word_count == tokens.size();
}

RefusedCow cow_in_refused(std::string_view text, const LineContext& context,
                          const Language& language) {
  if (!is_utf8(text) || text.size() > longest_line_bytes) return {};
  const std::vector<Token> tokens = spoken_tokens(text, language);
  const std::size_t start = first_said(tokens, language);
  if (start > 0 && start < tokens.size()) {
    return cow_in_refused(text.substr(tokens[start].offset), context, language);
  }
  RefusedCow refused;
  if (says_no_and_corrects_nothing(tokens, language)) {
    refused.likely = CowLikely::perhaps;
    refused.cow.known = CowKnown::unnumbered;
    refused.cow.looks = trimmed(text);
    return refused;
  }
  if (const std::size_t announced = announced_tokens(tokens, language); announced > 0) {
    refused = cow_in_refused(text.substr(tokens[announced - 1].offset), context, language);
    refused.is_clear_number = false;  // it may mend the number of the cow before
    return refused;
  }
  if (const std::optional<CowSaid> cow = said_in_one_word(tokens, language)) {
    refused.likely = CowLikely::perhaps;
    refused.cow = *cow;
    return refused;
  }
  if (!starts_a_cow(tokens, language)) return {};
  if (const std::size_t misread = misread_tag_tokens(tokens, 0); misread > 0) {
    refused.likely = CowLikely::perhaps;
    refused.cow = known_by(text, std::span(tokens).first(misread));
    return refused;
  }
  if (is_list_of_numbers(tokens, language)) return {};
  if (has_its_unit(tokens, 0, language) || names_two_cows(tokens, language)) return {};
  refused.likely = likely_from_rest(tokens, language);
  if (refused.likely == CowLikely::none) {
    const Token& number = tokens.front();
    const bool is_number =
        number.kind == TokenKind::number && !is_part_of_a_word(tokens, 0, language);
    if (is_number) {
      refused.news_of =
          plain_number(number.folded.empty() ? text.substr(number.offset, number.length)
                                             : std::string_view(number.folded));
    }
    return refused;
  }
  if (is_part_of_a_word(tokens, 0, language)) {
    refused.cow = known_by(text, std::span(tokens).first(2));
    return refused;
  }
  const std::optional<CowSaid> cow = named_at_start(text, tokens, context, language);
  if (!cow) return {};
  refused.cow = *cow;
  const bool breaks_off = number_breaks_off(tokens, 0, text, language);
  if (breaks_off) refused.likely = CowLikely::perhaps;
  refused.is_clear_number = cow->known == CowKnown::numbered && !breaks_off;
  const bool is_sure = refused.likely == CowLikely::surely;
  if (!is_sure && cow->known == CowKnown::numbered) refused.cow.known = CowKnown::doubtful;
  return refused;
}

bool names_several_cows(std::string_view text, const Language& language) {
  if (!is_utf8(text) || text.size() > longest_line_bytes) return false;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  const std::size_t at = first_said(tokens, language);
  if (at + 1 >= tokens.size() || tokens[at].kind != TokenKind::number) return false;
  const std::vector<Token> rest(tokens.begin() + static_cast<std::ptrdiff_t>(at), tokens.end());
  return rest[1].kind == TokenKind::number || is_list_of_numbers(rest, language);
}

bool tells_news_alone(std::string_view text, const Language& language) {
  if (!is_utf8(text) || text.size() > longest_line_bytes) return false;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  bool any = false;
  for (std::size_t at = 0; at < tokens.size();) {
    const Language::Match match = language.longest_match(tokens, at);
    at += std::max<std::size_t>(match.word_count, 1);
    if (match.phrase == nullptr) continue;
    const TermKind kind = match.phrase->kind;
    const bool is_foot = kind == TermKind::foot || kind == TermKind::feet;
    const bool is_of_a_turn = (belongs_to_a_turn(kind) && !is_foot) || is_done_now(*match.phrase);
    if (is_of_a_turn) return false;
    any = any || tells_fate(*match.phrase);
  }
  return any;
}

std::string told_in_unread_news(std::string_view text, const Language& language) {
  if (!is_utf8(text) || text.size() > longest_line_bytes) return {};
  const std::vector<Token> said = spoken_tokens(text, language);
  const std::size_t first = first_said(said, language);
  if (first >= said.size() || said[first].kind != TokenKind::number) return {};
  if (is_part_of_a_word(said, first, language)) return {};
  const std::vector<Token> tokens = with_slips_known(text, language);
  bool any = false;
  for (std::size_t at = first + 1; at < tokens.size();) {
    const Language::Match match = language.longest_match(tokens, at);
    const bool is_told = match.phrase != nullptr && is_news(*match.phrase);
    const bool is_between = match.phrase == nullptr ? tokens[at].kind != TokenKind::word
                                                    : stands_beside_news(match.phrase->kind);
    const bool is_a_number = tokens[at].kind == TokenKind::number;
    if (is_a_number && !names_another_cow(tokens, at, language)) return {};
    if (!is_told && !is_between) return {};
    any = any || is_told;
    at += std::max<std::size_t>(match.word_count, 1);
  }
  const Token& number = said[first];
  return any ? plain_number(number.folded.empty() ? text.substr(number.offset, number.length)
                                                  : std::string_view(number.folded))
             : std::string();
}

bool tells_todays_feet(std::string_view text, const Language& language) {
  if (!is_utf8(text) || text.size() > longest_line_bytes) return false;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  const std::size_t at = first_said(tokens, language);
  const Phrase* first = at < tokens.size() ? language.longest_match(tokens, at).phrase : nullptr;
  return first != nullptr && first->kind == TermKind::today && !holds_a_number(tokens);
}

std::optional<CowSaid> cow_mended_in_refused(std::string_view text, const LineContext& context,
                                             const Language& language) {
  if (!is_utf8(text) || text.size() > longest_line_bytes) return std::nullopt;
  const std::vector<Token> tokens = spoken_tokens(text, language);
  if (tokens.empty() || tokens.front().kind != TokenKind::number) return std::nullopt;
  std::size_t at = 1;
  while (at < tokens.size()) {
    const Language::Match match = language.longest_match(tokens, at);
    if (match.phrase == nullptr) {
      if (tokens[at].kind != TokenKind::comma && tokens[at].kind != TokenKind::colon) break;
      ++at;
      continue;
    }
    const TermKind kind = match.phrase->kind;
    if (kind == TermKind::correction) return named_at_start(text, tokens, context, language);
    if (kind != TermKind::foot && kind != TermKind::feet) break;
    at += match.word_count;
  }
  return std::nullopt;
}

}  // namespace evenclaw
