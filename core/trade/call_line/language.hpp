// The words of one language as a table; a new language is a new table and nothing else.
#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <set>
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

/// The feet that a phrase of the kinds `foot` and `feet` stands for.
FootSet feet_in(const Phrase& phrase);

/// A row of the table: the words, what they are, and which value of that kind.
template <class E>
constexpr Phrase says(std::string_view words, TermKind kind, E value) {
  return {words, kind, static_cast<int>(value)};
}

template <class E>
constexpr Phrase says_of_all(std::string_view words, TermKind kind, E value) {
  return {words, kind, static_cast<int>(value), true};
}

/// What a word becomes that is said short and hung on the one before it: "s" in "rest's fine".
struct ShortWord {
  std::string_view ending;
  std::string_view word;
};

/// A claw said as short as can be: "in", "out".
struct ShortClaw {
  std::string_view word;
  Claw claw;
};

/// What is said of news when it is asked about: that it does not hold ("wrong cow"), or that it
/// does all the same ("no mistake"), which is looked for first.
struct NewsVerdict {
  std::string_view words;
  bool holds;
};

/// Two phrases of the table that say one thing of a cow where her news is told apart by its words:
/// "dead" is as "died".
struct WordsAlike {
  std::string_view words;
  std::string_view as;
};

/// Single words, in lower case, that mean nothing a turn could hold but are known when they are
/// said in certain places.
struct WordsBeside {
  std::span<const std::string_view> how_done;      // "twice", "well": no names of a spray or paste
  std::span<const std::string_view> number_leads;  // "nr": in front of a number, as in "nr 413"
  std::span<const ShortWord> short_words;          // behind an apostrophe
  std::span<const std::string_view> fillers;       // "the", "has": between what is called
  std::span<const std::string_view> articles;      // "the": before what a cow looks like
  std::span<const std::string_view> asides;        // "yes", "oops": said to somebody, of no cow
  std::span<const ShortClaw> short_claws = {};     // "in": behind a block or a lesion
  std::span<const std::string_view> months = {};   // in full, January first
  std::span<const NewsVerdict> verdicts = {};      // of several words, too
  std::span<const WordsAlike> alike = {};
  std::span<const std::string_view> falls = {};  // "went down": in words why she was let out
};

class Language {
 public:
  /// The words of both tables must outlive the language; the same words twice are our mistake.
  Language(std::string_view name, std::span<const Phrase> phrases, WordsBeside beside = {});

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

  /// The words that are printed for the meaning of a phrase of any language, all of them where it
  /// says so; "" when the language has none.
  [[nodiscard]] std::string_view say_as(const Phrase& meant) const;

  template <class E>
  [[nodiscard]] std::string_view say(TermKind kind, E value) const {
    return say(kind, static_cast<int>(value));
  }

  /// Whether the word tells how something was done, or to what: "spray twice".
  [[nodiscard]] bool tells_how_done(std::string_view folded) const;

  /// Whether a number may be announced with the word: "no 413", "nr 413".
  [[nodiscard]] bool leads_a_number(std::string_view folded) const;

  /// Whether the word only joins what is called: "the", "has".
  [[nodiscard]] bool fills(std::string_view folded) const;

  /// Whether the word stands before what a cow looks like and tells nothing of her: "the".
  [[nodiscard]] bool is_article(std::string_view folded) const;

  /// Whether the word is said to somebody and can name no cow: "yes", "oops", "hang" in "hang on".
  [[nodiscard]] bool is_aside(std::string_view folded) const;

  /// Whether the words say that what was told does not hold: "told of the wrong cow", "not so".
  /// Whole words only: "not sore" says nothing against it, nor does "no mistake".
  [[nodiscard]] bool says_it_was_wrong(std::string_view words) const;

  /// The words the phrase is alike to: "died" for "dead"; any other words as they are.
  [[nodiscard]] std::string_view alike_to(std::string_view words) const;

  /// Whether free words tell that she fell. Whole words only.
  [[nodiscard]] bool tells_of_a_fall(std::string_view words) const;

  /// The claw the word may stand for; nothing for any other word.
  [[nodiscard]] std::optional<Claw> claw_in_short(std::string_view folded) const;

  /// 1 for "january" and for "jan"; nothing for any other word.
  [[nodiscard]] std::optional<int> month_in(std::string_view folded) const;

  /// The word that an ending behind an apostrophe is short for; "" when it is none.
  [[nodiscard]] std::string_view short_for(std::string_view folded_ending) const;

  /// True when a phrase of the table spells this word with an apostrophe, as "vet's" in "vet's
  /// plan": such a word is never taken apart.
  [[nodiscard]] bool spells_with_apostrophe(std::string_view folded) const;

  /// How many tokens from `at` on join numbers to a list: a comma, a sign, or "and". 0 when none.
  [[nodiscard]] std::size_t joining_tokens(std::span<const Token> tokens, std::size_t at) const;

  [[nodiscard]] std::string_view name() const { return name_; }

  [[nodiscard]] std::span<const Phrase> phrases() const { return phrases_; }

  [[nodiscard]] const WordsBeside& words_beside() const { return beside_; }

  /// The words of phrases()[i] as the lexer folds them, with single spaces.
  [[nodiscard]] const std::string& folded(std::size_t i) const { return folded_[i]; }

 private:
  struct Candidate {
    const Phrase* phrase;
    std::vector<std::string> words;
  };

  std::string_view name_;
  std::span<const Phrase> phrases_;
  WordsBeside beside_;
  std::vector<std::string> folded_;
  std::set<std::string, std::less<>> with_apostrophe_;                     // folded, as "vets"
  std::unordered_map<std::string, std::vector<Candidate>> by_first_word_;  // longest first
};

/// The phrases of `own`, and where it has no word for a meaning those of `complete`, as long as
/// `own` does not use them for something else: a word nobody is sure of is better left out.
std::vector<Phrase> with_missing_from(std::span<const Phrase> own,
                                      std::span<const Phrase> complete);

/// Words as they are called on farms where English is spoken: every meaning has some.
const Language& english();
/// And where German is; an English word stands where no German one is sure.
const Language& german();

/// A language a day may be called in.
struct CallLanguage {
  std::string_view code;  // ISO 639-1: "de"
  std::string_view name;  // as those who speak it say: "Deutsch"
  const Language& (*words)();
};

std::span<const CallLanguage> call_languages();
/// Nothing for a code of none of them.
const CallLanguage* call_language(std::string_view code);

}  // namespace evenclaw
