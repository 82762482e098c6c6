#include "core/trade/call_line/spoken_numbers.hpp"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <optional>
#include <string>
#include <utility>

namespace evenclaw {

namespace {

constexpr int hundred = 100;
constexpr int thousand = 1000;

struct SpokenNumber {
  std::string digits;
  std::size_t words = 0;
};

bool makes_a_number_of(TermKind kind) {
  constexpr TermKind kinds[] = {TermKind::day_unit, TermKind::week_unit, TermKind::mm,
                                TermKind::cm,       TermKind::out_of,    TermKind::animals};
  return std::find(std::begin(kinds), std::end(kinds), kind) != std::end(kinds);
}

class NumberReader {
 public:
  NumberReader(std::span<const Token> tokens, const Language& language)
      : tokens_(tokens), language_(language) {}

  [[nodiscard]] bool leads_a_number(std::size_t at) const {
    if (at >= tokens_.size() || tokens_[at].kind != TokenKind::word) return false;
    const std::optional<int> next = value_at(at + 1);
    return next && (*next == hundred || *next == thousand) && !value_at(at) &&
           language_.is_article(tokens_[at].folded);
  }

  // The groups that stand together, their digits side by side: "twelve thirty four" is 1234.
  SpokenNumber number_from(std::size_t at) {
    at_ = at;
    SpokenNumber number;
    if (const std::optional<int> led = take_led_by_an_article())
      number.digits = std::to_string(*led);
    while (const std::optional<int> group = take_group()) number.digits += std::to_string(*group);
    number.words = at_ - at;
    return number;
  }

 private:
  [[nodiscard]] std::optional<int> value_at(std::size_t at) const {
    if (at >= tokens_.size()) return std::nullopt;
    const Phrase* phrase = language_.longest_match(tokens_, at).phrase;
    if (phrase == nullptr || phrase->kind != TermKind::number_word) return std::nullopt;
    return phrase->value;
  }

  // "A dozen" is a number of two words.
  void pass_word() { at_ += language_.longest_match(tokens_, at_).word_count; }

  [[nodiscard]] bool joins(std::size_t at) const {
    if (at >= tokens_.size()) return false;
    const Phrase* phrase = language_.longest_match(tokens_, at).phrase;
    return phrase != nullptr && phrase->kind == TermKind::conjunction;
  }

  // "A hundred and seven".
  std::optional<int> take_led_by_an_article() {
    if (!leads_a_number(at_)) return std::nullopt;
    ++at_;
    const int unit = *value_at(at_++);
    return unit +
           take_rest(unit == hundred ? &NumberReader::take_small : &NumberReader::take_hundreds);
  }

  // Below a hundred: "twelve", "twenty one".
  std::optional<int> take_small() {
    const std::optional<int> first = value_at(at_);
    if (!first || *first >= hundred) return std::nullopt;
    pass_word();
    const std::optional<int> unit = value_at(at_);
    const bool is_tens = *first >= 20 && *first % 10 == 0;
    if (!is_tens || !unit || *unit < 1 || *unit > 9) return first;
    ++at_;
    return *first + *unit;
  }

  // Below a thousand: "four hundred and twelve".
  std::optional<int> take_hundreds() {
    const std::optional<int> small = take_small();
    if (!small || value_at(at_) != hundred) return small;
    ++at_;
    return *small * hundred + take_rest(&NumberReader::take_small);
  }

  std::optional<int> take_group() {
    const std::optional<int> first = take_hundreds();
    if (!first || value_at(at_) != thousand) return first;
    ++at_;
    return *first * thousand + take_rest(&NumberReader::take_hundreds);
  }

  // Behind "hundred" and "thousand", with or without "and"; 0 when nothing follows.
  int take_rest(std::optional<int> (NumberReader::*take)()) {
    const std::size_t behind = at_;
    if (joins(at_)) ++at_;
    const std::optional<int> rest = (this->*take)();
    if (!rest) at_ = behind;
    return rest.value_or(0);
  }

  std::span<const Token> tokens_;
  const Language& language_;
  std::size_t at_ = 0;
};

Token number_token(std::span<const Token> words, std::string digits) {
  Token token;
  token.kind = TokenKind::number;
  token.offset = words.front().offset;
  token.length = words.back().offset + words.back().length - token.offset;
  token.folded = std::move(digits);
  return token;
}

class NumberJoiner {
 public:
  NumberJoiner(std::vector<Token> tokens, const Language& language)
      : tokens_(std::move(tokens)), language_(language) {}

  std::vector<Token> joined() && {
    while (at_ < tokens_.size()) {
      if (!take_number()) take_phrase();
    }
    return std::move(joined_);
  }

 private:
  [[nodiscard]] const Phrase* phrase_at(std::size_t at) const {
    return at < tokens_.size() ? language_.longest_match(tokens_, at).phrase : nullptr;
  }

  bool take_number() {
    const Phrase* first = phrase_at(at_);
    const bool is_number_word = first != nullptr && first->kind == TermKind::number_word;
    if (!is_number_word && !NumberReader(tokens_, language_).leads_a_number(at_)) return false;
    SpokenNumber number = NumberReader(tokens_, language_).number_from(at_);
    const Phrase* next = phrase_at(at_ + number.words);
    const bool has_unit = next != nullptr && makes_a_number_of(next->kind);
    // One alone, as "four" or "a dozen", is a number only beside its unit.
    const bool is_alone = number.words == language_.longest_match(tokens_, at_).word_count;
    const bool is_number = number.words > 0 && (!is_alone || has_unit || is_behind_of_);
    if (!is_number) return false;
    joined_.push_back(
        number_token(std::span(tokens_).subspan(at_, number.words), std::move(number.digits)));
    at_ += number.words;
    is_behind_of_ = false;
    return true;
  }

  // Words of a longer phrase are not looked at one by one.
  void take_phrase() {
    const Language::Match match = language_.longest_match(tokens_, at_);
    is_behind_of_ = match.phrase != nullptr && match.phrase->kind == TermKind::out_of;
    for (std::size_t i = std::max<std::size_t>(match.word_count, 1); i > 0; --i) {
      joined_.push_back(tokens_[at_++]);
    }
  }

  std::vector<Token> tokens_;
  const Language& language_;
  std::vector<Token> joined_;
  std::size_t at_ = 0;
  bool is_behind_of_ = false;
};

}  // namespace

std::vector<Token> with_spoken_numbers(std::vector<Token> tokens, const Language& language) {
  return NumberJoiner(std::move(tokens), language).joined();
}

std::vector<Token> with_digits_spelt(std::vector<Token> tokens, std::string_view text,
                                     const Language& language) {
  for (std::size_t at = 1; at < tokens.size(); ++at) {
    const Token digit = tokens[at];
    const bool is_digit = digit.kind == TokenKind::number && digit.length == 1;
    if (!is_digit || tokens[at - 1].kind != TokenKind::word) continue;
    const std::string_view word = language.say(TermKind::number_word, text[digit.offset] - '0');
    if (word.empty()) continue;
    tokens[at].kind = TokenKind::word;
    tokens[at].folded = folded_word(word);
    if (language.longest_match(tokens, at - 1).word_count < 2) tokens[at] = digit;
  }
  return tokens;
}

std::optional<int> number_word_at(const std::vector<Token>& tokens, std::size_t at,
                                  const Language& language) {
  if (at >= tokens.size()) return std::nullopt;
  const Phrase* phrase = language.longest_match(tokens, at).phrase;
  const bool is_one = phrase != nullptr && phrase->kind == TermKind::number_word;
  return is_one ? std::optional(phrase->value) : std::nullopt;
}

}  // namespace evenclaw
