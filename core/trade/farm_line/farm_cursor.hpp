// Steps through a line about the farm: phrases, numbers, legs, days and free words, each with its
// place.
#pragma once

#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/farm_line/farm_words.hpp"
#include "core/trade/foot.hpp"

namespace evenclaw {

/// Longer lines are refused, as on the call line.
inline constexpr std::size_t longest_farm_line = 4096;

class FarmCursor {
 public:
  /// `text` and `language` must outlive it; `line_number` goes into the faults.
  FarmCursor(std::string_view text, const Language& language, int line_number);

  /// Why the line cannot be read at all: too long ("line-too-long"), no plain text.
  [[nodiscard]] std::optional<Fault> unreadable() const;

  [[nodiscard]] bool at_end() const { return at_ >= tokens_.size(); }

  [[nodiscard]] bool at_separator() const;

  /// A comma, semicolon, full stop or the end: what was said there is whole.
  [[nodiscard]] bool at_break() const { return at_end() || at_separator(); }

  void skip_separators();
  /// A colon, behind a word that opens a line.
  bool take_colon();

  /// The longest phrase that begins here; null when none does.
  [[nodiscard]] const FarmPhrase* phrase() const;
  /// Takes that phrase when it means this.
  bool take(FarmWord word);
  /// Takes the phrase that begins here, whatever it means, as typed; "" when none does.
  std::string take_phrase_words();

  /// The digits of a whole number of at most `most_digits`; nothing is taken when there is none.
  std::optional<std::string> take_digits(std::size_t most_digits);
  std::optional<int> take_whole(std::size_t most_digits = 6);
  /// A number with at most three decimals as thousandths: 3.5 is 3500. Where German is called, a
  /// comma between digits is a point.
  std::optional<std::int64_t> take_thousandths();
  [[nodiscard]] bool at_number() const;

  /// "2026-11-20", "today", "yesterday", "20 Nov", "20 Nov 2025"; a day without a year is the last
  /// one up to `today`. Nothing is taken when no day is here.
  std::optional<Day> take_day(Day today);

  /// Legs: "LH", "both hinds"; empty when none is named here.
  FootSet take_feet();

  /// The words up to a break, as typed. A quoted part stands without its marks.
  std::string take_words();

  /// "not understood", with the word here, its column and what to say. `at_token` is where; the
  /// word here when nothing is given.
  [[nodiscard]] Fault refused(std::string message, std::string remedy) const;
  [[nodiscard]] Fault refused_at(std::size_t token, std::string message, std::string remedy) const;
  /// The same as "call-impossible": the words are known and cannot be true.
  [[nodiscard]] Fault impossible_at(std::size_t token, std::string message,
                                    std::string remedy) const;

  /// Where it stands now, for refused_at().
  [[nodiscard]] std::size_t place() const { return at_; }

  void go_back_to(std::size_t place) { at_ = place; }

  [[nodiscard]] const Language& language() const { return language_; }

 private:
  struct Found {
    const FarmPhrase* phrase = nullptr;
    std::size_t tokens = 0;
  };

  [[nodiscard]] Found longest() const;
  [[nodiscard]] bool begins_here(std::string_view words, std::size_t& tokens) const;
  [[nodiscard]] bool is_decimal_comma() const;
  std::optional<Day> take_day_and_month(Day today);
  [[nodiscard]] std::string_view said(std::size_t token) const;
  [[nodiscard]] Fault fault(std::string slug, std::size_t token, std::string message,
                            std::string remedy) const;

  std::string_view text_;
  const Language& language_;
  int line_number_;
  std::vector<Token> tokens_;
  std::size_t at_ = 0;
};

}  // namespace evenclaw
