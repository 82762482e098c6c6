// Turns as they are called out, for tests that speak the call line.
#pragma once

#include <doctest/doctest.h>

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/call_line/turn_clause.hpp"
#include "core/trade/medicine_use.hpp"
#include "tests/core/trade/told_turns.hpp"

namespace evenclaw::told {

inline std::vector<std::string> split(std::string_view text, std::string_view at) {
  std::vector<std::string> parts;
  std::size_t from = 0;
  for (std::size_t to = text.find(at); to != std::string_view::npos; to = text.find(at, from)) {
    parts.emplace_back(text.substr(from, to - from));
    from = to + at.size();
  }
  parts.emplace_back(text.substr(from));
  return parts;
}

/// Adds what a line says; the line must be understood. "go ahead" and the like change nothing.
inline void call_out(TurnDraft& draft, const std::string& line, Day day,
                     const Language& language = english()) {
  CAPTURE(line);
  LineContext context;
  context.visit_day = day;
  context.cow_open = !draft.turn.cow.number.empty();
  const Result<Line> read = read_line(line, context, language);
  REQUIRE(read.ok());
  for (const Clause& clause : read->clauses) {
    if (const auto* named = std::get_if<CowNamed>(&clause)) draft.turn.cow = named->cow;
    if (const auto* said = std::get_if<TurnClause>(&clause)) {
      const Outcome outcome = add_clause(draft, *said);
      CHECK(outcome.ok());
    }
  }
}

/// "# 27 minutes in the crush" tells how long she has stood there by now.
inline std::optional<TimeInCrush> time_told(const std::string& line) {
  constexpr std::int32_t long_minutes = 20;
  if (line.rfind("# ", 0) != 0 || line.find(" minutes in the crush") == std::string::npos) {
    return std::nullopt;
  }
  return TimeInCrush{60 * std::stoi(line.substr(2)), long_minutes};
}

/// The number of another cow than the one in the crush begins the line.
inline bool names_another(const TurnDraft& draft, const std::string& line) {
  const std::string number = line.substr(0, line.find(' '));
  const bool is_number =
      !number.empty() && number.find_first_not_of("0123456789") == std::string::npos;
  return is_number && !draft.turn.cow.number.empty() && draft.turn.cow.number != number;
}

/// Earlier visits three weeks apart and the turn that is going on, from lines in which "---" parts
/// the visits. All four feet are today's, and one person calls every cow. The last cow of a visit
/// is the one with the past; those before her count among the other cows of the visit.
struct ToldDay {
  Past past;
  TurnDraft draft;
  Day today = first_of_november;
  const Language* language = &english();

  [[nodiscard]] std::vector<Warning> warnings() const {
    const Turn turn = with_medicines(settled(draft.turn, four_feet), past.known.medicine, today);
    return check_turn(turn, past.known, today, true, *language);
  }
};

inline ToldDay told_day(std::string_view text, const Language& language = english()) {
  ToldDay day;
  day.language = &language;
  const std::vector<std::string> visits = split(text, "\n---\n");
  const int earlier = static_cast<int>(visits.size()) - 1;
  for (int i = 0; i <= earlier; ++i) {
    const Day when = day.today - 21 * (earlier - i);
    day.draft = {};
    day.past.known.so_far = {};
    for (const std::string& line : split(visits[static_cast<std::size_t>(i)], "\n")) {
      if (names_another(day.draft, line)) {
        count_in(day.past.known.so_far, settled(day.draft.turn, four_feet), true);
        day.draft = {};
      }
      if (const auto time = time_told(line)) day.past.known.in_crush = time;
      call_out(day.draft, line, when, language);
    }
    if (i < earlier) day.past.then(settled(day.draft.turn, four_feet), when);
  }
  return day;
}

/// The stops and asks a day told in lines gives.
inline std::vector<std::string> fired_on(std::string_view text) {
  return rules_fired(told_day(text).warnings(), false);
}

inline std::vector<std::string> noted_on(std::string_view text) {
  return rules_fired(told_day(text).warnings(), true);
}

}  // namespace evenclaw::told
