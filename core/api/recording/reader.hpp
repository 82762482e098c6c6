// A reader beside the crush gives the electronic number of a cow: who she is, and whether it may
// have read another one.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/api/recording/cow_finder.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/check.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

/// Written as a reader gives it: 15 digits. No herd number is that long.
bool is_read_off(std::string_view number);

/// The electronic number a cow without a herd number is named by; nothing when she is not, or when
/// no ear tag can hold that number.
std::optional<std::string> read_in(const CowSaid& said);

/// The 15 digits a line begins with, a blank behind the first three or none; nothing when it begins
/// otherwise.
std::optional<std::string> read_at_start(std::string_view text);

/// The line with `who` in the place of every cow that was named; news by herd number only.
template <class Who>
Line with_cows_as(Line line, Who&& who) {
  for (Clause& clause : line.clauses) {
    if (auto* named = std::get_if<CowNamed>(&clause)) named->cow = who(named->cow);
    if (auto* news = std::get_if<NewsSaid>(&clause)) {
      const CowSaid of = who(CowSaid{CowKnown::numbered, news->number, {}, {}});
      if (of.known == CowKnown::numbered) news->number = of.number;
    }
    auto* said = std::get_if<TurnClause>(&clause);
    auto* right = said == nullptr ? nullptr : std::get_if<CowCorrected>(said);
    if (right != nullptr) right->cow = who(right->cow);
  }
  return line;
}

/// What speaks against the cow whose number was read standing in the crush.
struct ReadCow {
  std::string name;  // her herd number, else the number that was read
  std::optional<LeftHerd> left;
  bool was_here_today = false;
  std::optional<Day> dried_off;  // she came for it then, and nothing has been told since
};

/// The day of the last turn before `today`, when she came to be dried off and it is not longer ago
/// than cows are dry.
std::optional<Day> dried_off_on(const CowPast& past, Day today);

/// Asks whether it is her: a reader takes the number of whatever cow stands near. Of a dry cow only
/// while nobody has said why she came. Answers are offered in the words of `language`.
std::optional<Warning> other_cow_read(const Turn& turn, const ReadCow& read,
                                      const Language& language);

}  // namespace evenclaw
