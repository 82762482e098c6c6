#include "core/sheets/signs_in_words.hpp"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>

#include "core/sheets/words_heard.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/nearest.hpp"

namespace evenclaw {

namespace {

/// What words call in any language.
struct Heard {
  std::vector<const Phrase*> phrases;
  bool is_fall = false;
};

/// No phrase inside another: "lay down in the crush" holds no "down in the crush".
void add_phrases(const Language& language, const std::vector<Token>& tokens, Heard& heard) {
  for (std::size_t at = 0; at < tokens.size();) {
    const Language::Match match = language.longest_match(tokens, at);
    if (match.phrase != nullptr) heard.phrases.push_back(match.phrase);
    at += std::max<std::size_t>(match.word_count, 1);
  }
}

/// Of short words too much is near: "on" is no slip of "TN". Three letters are enough beside words
/// that are known: "went dwn".
bool is_heard_as(const Token& said, const Nearest& near) {
  constexpr std::size_t shortest = 4;
  constexpr std::size_t shortest_beside = 3;
  const std::size_t least = near.token_count > 1 ? shortest_beside : shortest;
  return near.words.size() >= shortest && said.folded.size() >= least &&
         !is_another_word(said.folded, near) && !is_word_of_the_call(said.folded);
}

/// What each word nobody knows is a slip of, alone or with the known words before it: "toe
/// necrossis".
void add_slips(const Language& language, const std::vector<Token>& tokens, Heard& heard) {
  constexpr TermKind may_tell[] = {TermKind::lesion, TermKind::plain_act, TermKind::opened_act,
                                   TermKind::unclear_word};
  constexpr std::size_t most_before = 3;
  constexpr std::size_t shortest = 3;
  for (std::size_t at = 0; at < tokens.size(); ++at) {
    const bool is_word = tokens[at].kind == TokenKind::word && tokens[at].folded.size() >= shortest;
    const bool is_known =
        language.longest_match(tokens, at).phrase != nullptr || language.fills(tokens[at].folded);
    if (!is_word || is_known) continue;
    const std::size_t earliest = at - std::min(at, most_before);
    const Nearest near = nearest_phrase(tokens, at, earliest, may_tell, language);
    if (near.words.empty() || !is_heard_as(tokens[at], near)) continue;
    add_phrases(language, tokens_of(near.words), heard);
  }
}

/// A line is quoted where it is kept: its words are looked at without the quotes.
Heard heard_in(std::string_view words) {
  std::string bare(words);
  std::replace(bare.begin(), bare.end(), '"', ' ');
  Heard heard;
  const std::vector<Token> tokens = tokens_of(bare);
  for (const CallLanguage& each : call_languages()) {
    const Language& language = each.words();
    add_phrases(language, tokens, heard);
    heard.is_fall = heard.is_fall || language.tells_of_a_fall(bare);
    add_slips(language, tokens, heard);
  }
  return heard;
}

// How signs are spoken of beside the words of the call line, each with the call it may stand for or
// the check that warns of the like: our judgement, no source.
struct SpokenSign {
  std::string_view words;
  std::optional<ActionKind> seen;
  std::string_view check = "";
};

constexpr std::string_view worst_walk = "worst-walk-needs-the-vet";
constexpr std::string_view swollen = "swollen-on-one-side";

constexpr SpokenSign spoken_signs[] = {
    // English
    {"temperature", ActionKind::fever},
    {"high temp", ActionKind::fever},
    {"salivating", ActionKind::sore_mouth},
    {"slobbering", ActionKind::sore_mouth},
    {"drooling", ActionKind::sore_mouth},
    {"ulcers in the mouth", ActionKind::sore_mouth},
    {"ulcers in her mouth", ActionKind::sore_mouth},
    {"mouth ulcers", ActionKind::sore_mouth},
    {"sores in the mouth", ActionKind::sore_mouth},
    {"sores in her mouth", ActionKind::sore_mouth},
    {"vesicles", ActionKind::blisters},
    {"sores on the teats", ActionKind::blisters},
    {"sores on her teats", ActionKind::blisters},
    {"teat sores", ActionKind::blisters},
    {"cannot get up", ActionKind::went_down},
    {"cant get up", ActionKind::went_down},
    {"could not get up", ActionKind::went_down},
    {"cannot stand", ActionKind::went_down},
    {"cant stand", ActionKind::went_down},
    {"downer", ActionKind::went_down},
    {"bone is showing", ActionKind::bone_showing},
    {"bone shows", ActionKind::bone_showing},
    {"bled a lot", ActionKind::bleeding},
    {"bleeding", ActionKind::bleeding},
    {"three legged", {}, worst_walk},
    {"on three legs", {}, worst_walk},
    {"fracture", {}, worst_walk},
    {"fractured", {}, worst_walk},
    {"broken leg", {}, worst_walk},
    {"joint swollen", {}, swollen},
    {"swollen joint", {}, swollen},
    // German
    {"Temperatur", ActionKind::fever},
    {"speichelt", ActionKind::sore_mouth},
    {"sabbert", ActionKind::sore_mouth},
    {"Geschwüre im Maul", ActionKind::sore_mouth},
    {"Bläschen", ActionKind::blisters},
    {"kommt nicht hoch", ActionKind::went_down},
    {"steht nicht auf", ActionKind::went_down},
    {"blutet stark", ActionKind::bleeding},
    {"dreibeinig", {}, worst_walk},
    {"auf drei Beinen", {}, worst_walk},
    {"Beinbruch", {}, worst_walk},
    {"Bein gebrochen", {}, worst_walk},
    {"Gelenk dick", {}, swollen},
    {"Gelenk geschwollen", {}, swollen}};

bool is_row_of(const SpokenSign& spoken, const SignForVet& sign) {
  return spoken.seen ? sign.seen == spoken.seen : sign.check == spoken.check;
}

bool is_act(const Phrase& phrase, ActionKind kind) {
  const bool may_be = phrase.kind == TermKind::plain_act || phrase.kind == TermKind::opened_act;
  return may_be && static_cast<ActionKind>(phrase.value) == kind;
}

/// "Swollen" alone may be of a hock.
bool is_only_swollen(const Phrase& phrase) {
  return static_cast<Lesion>(phrase.value) == Lesion::sw &&
         phrase.words.find(' ') == std::string_view::npos;
}

bool is_named(const SignForVet& sign, const Phrase& phrase, const HeardAs& as) {
  if (phrase.kind == TermKind::lesion) {
    const bool is_it = sign.found && static_cast<Lesion>(phrase.value) == *sign.found;
    const bool is_clear = as.is_of_foot || !is_only_swollen(phrase);
    return as.may_be_found && is_it && is_clear && !sign.is_above_both;
  }
  if (phrase.kind == TermKind::unclear_word) {
    const bool is_pus = static_cast<UnclearWord>(phrase.value) == UnclearWord::abscess;
    return is_pus && !as.is_pus_explained && sign.seen == ActionKind::pus_above;
  }
  return sign.seen && is_act(phrase, *sign.seen);
}

}  // namespace

bool is_not_understood(std::string_view end_reason) {
  return end_reason.find(" not understood") != std::string_view::npos;
}

std::vector<const SignForVet*> signs_in_words(std::string_view words, const HeardAs& as) {
  const Heard heard = heard_in(words);
  const std::vector<std::string> said = heard_words(words);
  std::vector<const SpokenSign*> spoken;
  for (const SpokenSign& one : spoken_signs) {
    if (holds_phrase(said, one.words)) spoken.push_back(&one);
  }
  HeardAs all = as;
  if (is_not_understood(words)) all.may_be_found = all.is_of_foot = true;
  std::vector<const SignForVet*> named;
  for (const SignForVet& sign : signs_for_vet()) {
    const bool is_there =
        (heard.is_fall && sign.seen == ActionKind::went_down) ||
        std::any_of(spoken.begin(), spoken.end(),
                    [&](const SpokenSign* one) { return is_row_of(*one, sign); }) ||
        std::any_of(heard.phrases.begin(), heard.phrases.end(),
                    [&](const Phrase* phrase) { return is_named(sign, *phrase, all); });
    if (is_there) named.push_back(&sign);
  }
  return named;
}

bool names_the_vet(std::string_view words) {
  const Heard heard = heard_in(words);
  return std::any_of(heard.phrases.begin(), heard.phrases.end(),
                     [](const Phrase* phrase) { return is_act(*phrase, ActionKind::vet); });
}

}  // namespace evenclaw
