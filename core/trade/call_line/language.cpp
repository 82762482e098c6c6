#include "core/trade/call_line/language.hpp"

#include <algorithm>
#include <cassert>
#include <utility>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

std::vector<std::string> words_of(std::string_view phrase) {
  std::vector<std::string> words;
  for (Token& token : tokens_of(phrase)) {
    assert(token.kind == TokenKind::word && "a phrase is made of words only");
    words.push_back(std::move(token.folded));
  }
  return words;
}

std::string joined(const std::vector<std::string>& words) {
  std::string text;
  for (const std::string& word : words) {
    if (!text.empty()) text += ' ';
    text += word;
  }
  return text;
}

bool stands_at(std::span<const Token> tokens, std::size_t at,
               const std::vector<std::string>& words) {
  if (tokens.size() - at < words.size()) return false;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const Token& token = tokens[at + i];
    if (token.kind != TokenKind::word || token.folded != words[i]) return false;
  }
  return true;
}

bool holds(std::span<const std::string_view> words, std::string_view word) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

/// A comma parts what stands on its sides.
std::vector<std::string> parted_words(std::string_view text) {
  std::vector<std::string> words;
  for (Token& token : tokens_of(text)) words.push_back(std::move(token.folded));
  return words;
}

bool are_among(const std::vector<std::string>& said, std::string_view phrase) {
  const std::vector<std::string> words = words_of(phrase);
  return std::search(said.begin(), said.end(), words.begin(), words.end()) != said.end();
}

constexpr std::size_t most_zone_digits = 4;

std::vector<std::string> words_with_apostrophe(std::string_view phrase) {
  std::vector<std::string> words;
  for (Token& token : tokens_of(phrase)) {
    const std::string_view spelt = phrase.substr(token.offset, token.length);
    if (spelt.find('\'') != std::string_view::npos) words.push_back(std::move(token.folded));
  }
  return words;
}

}  // namespace

FootSet feet_in(const Phrase& phrase) {
  Term term;
  term.kind = phrase.kind;
  term.value = phrase.value;
  return feet_in(term);
}

std::vector<Phrase> with_missing_from(std::span<const Phrase> own,
                                      std::span<const Phrase> complete) {
  std::set<std::vector<std::string>> taken;
  for (const Phrase& phrase : own) taken.insert(words_of(phrase.words));
  std::vector<Phrase> all(own.begin(), own.end());
  for (const Phrase& phrase : complete) {
    const bool is_said = std::any_of(own.begin(), own.end(), [&](const Phrase& each) {
      return each.kind == phrase.kind && each.value == phrase.value && each.plural == phrase.plural;
    });
    if (!is_said && taken.count(words_of(phrase.words)) == 0) all.push_back(phrase);
  }
  return all;
}

std::span<const CallLanguage> call_languages() {
  static constexpr CallLanguage languages[] = {{"en", "English", english},
                                               {"de", "Deutsch", german}};
  return languages;
}

const CallLanguage* call_language(std::string_view code) {
  for (const CallLanguage& each : call_languages()) {
    if (each.code == code) return &each;
  }
  return nullptr;
}

Language::Language(std::string_view name, std::span<const Phrase> phrases, WordsBeside beside)
    : name_(name), phrases_(phrases), beside_(beside) {
  for (const Phrase& phrase : phrases_) {
    std::vector<std::string> words = words_of(phrase.words);
    assert(!words.empty());
    for (std::string& word : words_with_apostrophe(phrase.words)) {
      with_apostrophe_.insert(std::move(word));
    }
    folded_.push_back(joined(words));
    std::vector<Candidate>& same_start = by_first_word_[words.front()];
    same_start.push_back({&phrase, std::move(words)});
  }
  for (auto& entry : by_first_word_) {
    std::stable_sort(
        entry.second.begin(), entry.second.end(),
        [](const Candidate& a, const Candidate& b) { return a.words.size() > b.words.size(); });
  }
}

Language::Match Language::longest_match(std::span<const Token> tokens, std::size_t at) const {
  // Behind the last word no phrase begins.
  if (at >= tokens.size() || tokens[at].kind != TokenKind::word) return {};
  const auto same_start = by_first_word_.find(tokens[at].folded);
  if (same_start == by_first_word_.end()) return {};
  for (const Candidate& candidate : same_start->second) {
    if (stands_at(tokens, at, candidate.words)) return {candidate.phrase, candidate.words.size()};
  }
  return {};
}

std::optional<int> Language::zone_in(std::string_view folded) const {
  for (std::size_t i = 0; i < phrases_.size(); ++i) {
    if (phrases_[i].kind != TermKind::zone_word) continue;
    if (folded.substr(0, folded_[i].size()) != folded_[i]) continue;
    const auto zone = whole_number(folded.substr(folded_[i].size()), most_zone_digits);
    if (zone) return zone;
  }
  return std::nullopt;
}

std::string_view Language::say(TermKind kind, int value) const {
  for (const Phrase& phrase : phrases_) {
    if (phrase.kind == kind && phrase.value == value) return phrase.words;
  }
  return {};
}

std::string_view Language::say_as(const Phrase& meant) const {
  for (const Phrase& phrase : phrases_) {
    const bool same = phrase.kind == meant.kind && phrase.value == meant.value;
    if (same && phrase.plural == meant.plural) return phrase.words;
  }
  return {};
}

bool Language::tells_how_done(std::string_view folded) const {
  return holds(beside_.how_done, folded);
}

bool Language::leads_a_number(std::string_view folded) const {
  return holds(beside_.number_leads, folded);
}

bool Language::fills(std::string_view folded) const {
  return holds(beside_.fillers, folded);
}

bool Language::is_article(std::string_view folded) const {
  return holds(beside_.articles, folded);
}

bool Language::is_aside(std::string_view folded) const {
  return holds(beside_.asides, folded);
}

bool Language::says_it_was_wrong(std::string_view words) const {
  const std::vector<std::string> said = parted_words(words);
  bool is_wrong = false;
  for (const NewsVerdict& verdict : beside_.verdicts) {
    if (!are_among(said, verdict.words)) continue;
    if (verdict.holds) return false;
    is_wrong = true;
  }
  return is_wrong;
}

std::string_view Language::alike_to(std::string_view words) const {
  const auto found = std::find_if(beside_.alike.begin(), beside_.alike.end(),
                                  [&](const WordsAlike& each) { return each.words == words; });
  return found == beside_.alike.end() ? words : found->as;
}

bool Language::tells_of_a_fall(std::string_view words) const {
  const std::vector<std::string> said = parted_words(words);
  return std::any_of(beside_.falls.begin(), beside_.falls.end(),
                     [&](std::string_view fall) { return are_among(said, fall); });
}

std::optional<Claw> Language::claw_in_short(std::string_view folded) const {
  const auto found = std::find_if(beside_.short_claws.begin(), beside_.short_claws.end(),
                                  [&](const ShortClaw& each) { return each.word == folded; });
  return found == beside_.short_claws.end() ? std::nullopt : std::optional(found->claw);
}

std::optional<int> Language::month_in(std::string_view folded) const {
  constexpr std::size_t shortest = 3;
  if (folded.size() < shortest) return std::nullopt;
  for (std::size_t at = 0; at < beside_.months.size(); ++at) {
    if (beside_.months[at].substr(0, folded.size()) == folded) return static_cast<int>(at) + 1;
  }
  return std::nullopt;
}

std::string_view Language::short_for(std::string_view folded_ending) const {
  const auto found =
      std::find_if(beside_.short_words.begin(), beside_.short_words.end(),
                   [&](const ShortWord& each) { return each.ending == folded_ending; });
  return found == beside_.short_words.end() ? std::string_view() : found->word;
}

bool Language::spells_with_apostrophe(std::string_view folded) const {
  return with_apostrophe_.count(folded) != 0;
}

std::size_t Language::joining_tokens(std::span<const Token> tokens, std::size_t at) const {
  if (at >= tokens.size()) return 0;
  const TokenKind kind = tokens[at].kind;
  if (kind == TokenKind::comma || kind == TokenKind::conjunction) return 1;
  const Match match = longest_match(tokens, at);
  const bool joins = match.phrase != nullptr && match.phrase->kind == TermKind::conjunction;
  return joins ? match.word_count : 0;
}

}  // namespace evenclaw
