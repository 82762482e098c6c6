#include "core/exchange/finding_terms.hpp"

#include <algorithm>
#include <initializer_list>
#include <string>
#include <vector>

#include "core/base/text.hpp"
#include "core/trade/call_line/language.hpp"

namespace evenclaw {

namespace {

/// The value of a phrase of one of these kinds that the text is, in the first language that has it.
std::optional<int> called(std::string_view text, std::initializer_list<TermKind> kinds) {
  const std::vector<Token> tokens = tokens_of(text);
  if (tokens.empty()) return std::nullopt;
  for (const CallLanguage& language : call_languages()) {
    const Language::Match match = language.words().longest_match(tokens, 0);
    if (match.phrase == nullptr || match.word_count != tokens.size()) continue;
    const bool is_wanted = std::find(kinds.begin(), kinds.end(), match.phrase->kind) != kinds.end();
    if (is_wanted) return match.phrase->value;
  }
  return std::nullopt;
}

template <class E>
std::optional<E> called_as(std::string_view text, std::initializer_list<TermKind> kinds) {
  const auto value = called(text, kinds);
  return value ? std::optional(static_cast<E>(*value)) : std::nullopt;
}

/// The value of the word we keep it by, letter case apart.
template <class E>
std::optional<E> kept_as(std::string_view text) {
  const std::string folded = fold_case(trimmed(text));
  for (const auto& row : EnumWords<E>::table) {
    if (fold_case(row.word) == folded) return row.value;
  }
  return std::nullopt;
}

bool joins(const Token& token) {
  return token.kind == TokenKind::comma || token.kind == TokenKind::conjunction;
}

/// Each of foot and claw once, in either order.
std::optional<FootSaid> foot_in_language(std::string_view text, const Language& language) {
  const std::vector<Token> tokens = tokens_of(text);
  FootSaid said;
  for (std::size_t at = 0; at < tokens.size();) {
    if (joins(tokens[at])) {
      ++at;
      continue;
    }
    const Language::Match match = language.longest_match(tokens, at);
    if (match.phrase == nullptr) return std::nullopt;
    if (match.phrase->kind == TermKind::foot && !said.foot) {
      said.foot = static_cast<Foot>(match.phrase->value);
    } else if (match.phrase->kind == TermKind::claw && !said.claw) {
      said.claw = static_cast<Claw>(match.phrase->value);
    } else {
      return std::nullopt;
    }
    at += match.word_count;
  }
  if (!said.foot && !said.claw) return std::nullopt;
  return said;
}

std::optional<int> zone_number(std::string_view text) {
  const std::vector<Token> tokens = tokens_of(text);
  for (const CallLanguage& language : call_languages()) {
    const Language& words = language.words();
    if (tokens.size() == 1 && tokens[0].kind == TokenKind::word) {
      if (const auto zone = words.zone_in(tokens[0].folded)) return zone;
    }
    const bool may_be = tokens.size() == 2 && tokens[1].kind == TokenKind::number;
    if (!may_be) continue;
    const Language::Match match = words.longest_match(tokens, 0);
    if (match.phrase == nullptr || match.phrase->kind != TermKind::zone_word) continue;
    return whole_number(text.substr(tokens[1].offset, tokens[1].length), 2);
  }
  return std::nullopt;
}

}  // namespace

std::optional<FootSaid> foot_said(std::string_view words) {
  const auto claw = kept_as<Claw>(words);
  if (claw && *claw != Claw::none && *claw != Claw::not_called) return FootSaid{{}, claw};
  for (const CallLanguage& language : call_languages()) {
    if (const auto said = foot_in_language(words, language.words())) return said;
  }
  return std::nullopt;
}

std::optional<PlaceSaid> zone_said(int zone) {
  const auto place = place_of_zone(zone);
  if (!place) return std::nullopt;
  return PlaceSaid{*place, zone};
}

std::optional<PlaceSaid> place_said(std::string_view words) {
  const auto kept = kept_as<Place>(words);
  if (kept && *kept != Place::not_called) return PlaceSaid{*kept, {}};
  if (const auto place = called_as<Place>(words, {TermKind::place, TermKind::white_line_place})) {
    return PlaceSaid{*place, {}};
  }
  const auto zone = zone_number(words);
  return zone ? zone_said(*zone) : std::nullopt;
}

std::optional<Degree> degree_said(std::string_view words) {
  const auto kept = kept_as<Degree>(words);
  if (kept && *kept != Degree::not_called) return kept;
  return called_as<Degree>(words, {TermKind::degree});
}

std::optional<DdStage> stage_said(std::string_view words) {
  std::string pointed(trimmed(words));
  std::replace(pointed.begin(), pointed.end(), ',', '.');
  const auto kept = kept_as<DdStage>(pointed);
  if (kept && *kept != DdStage::not_called) return kept;
  return called_as<DdStage>(words, {TermKind::stage});
}

std::optional<Lesion> lesion_said(std::string_view words) {
  if (const auto kept = kept_as<Lesion>(words)) return kept;
  const std::string folded = fold_case(trimmed(words));
  for (const LesionFacts& facts : all_lesions()) {
    if (fold_case(facts.name) == folded) return facts.lesion;
  }
  return called_as<Lesion>(words, {TermKind::lesion, TermKind::other_lesion});
}

std::optional<Lesion> atlas_lesion(std::string_view code) {
  const auto kept = kept_as<Lesion>(code);
  if (!kept || facts_of(*kept).code_known == CodeKnown::none) return std::nullopt;
  return kept;
}

}  // namespace evenclaw
