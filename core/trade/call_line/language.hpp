// The words of one language as a table; a new language is a new table and nothing else.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

/// One to five words that are said together and mean one thing. Among the phrases of the same
/// meaning the first of the table is the one that is printed.
struct Phrase {
  std::string_view words;
  TermKind kind;
  int value = 0;
  bool plural = false;  // "wraps off": all of them
};

/// A row of the table: the words, what they are, and which value of that kind.
template <class E>
constexpr Phrase says(std::string_view words, TermKind kind, E value) {
  return {words, kind, static_cast<int>(value)};
}

template <class E>
constexpr Phrase says_of_all(std::string_view words, TermKind kind, E value) {
  return {words, kind, static_cast<int>(value), true};
}

class Language {
 public:
  /// `phrases` must outlive the language; the same words twice are our mistake.
  Language(std::string_view name, std::span<const Phrase> phrases);

  struct Match {
    const Phrase* phrase = nullptr;
    std::size_t word_count = 0;
  };

  /// The longest phrase that the word tokens from `at` on begin with; null phrase when none does.
  [[nodiscard]] Match longest_match(std::span<const Token> tokens, std::size_t at) const;

  /// A zone named as one word, "z4"; nothing for any other word.
  [[nodiscard]] std::optional<int> zone_in(std::string_view folded) const;

  /// The words that are printed for a meaning; "" when the language has none.
  [[nodiscard]] std::string_view say(TermKind kind, int value = 0) const;

  template <class E>
  [[nodiscard]] std::string_view say(TermKind kind, E value) const {
    return say(kind, static_cast<int>(value));
  }

  [[nodiscard]] std::string_view name() const { return name_; }

  [[nodiscard]] std::span<const Phrase> phrases() const { return phrases_; }

  /// The words of phrases()[i] as the lexer folds them, with single spaces.
  [[nodiscard]] const std::string& folded(std::size_t i) const { return folded_[i]; }

 private:
  struct Candidate {
    const Phrase* phrase;
    std::vector<std::string> words;
  };

  std::string_view name_;
  std::span<const Phrase> phrases_;
  std::vector<std::string> folded_;
  std::unordered_map<std::string, std::vector<Candidate>> by_first_word_;  // longest first
};

/// Words as they are called on farms where English is spoken.
const Language& english();

}  // namespace evenclaw
