// Says lines to a fresh draft, as a visit would, so that a test reads like the crush side.
#pragma once

#include <doctest/doctest.h>

#include <string>
#include <string_view>
#include <vector>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw::saying {

inline LineContext in_crush(bool cow_open = true) {
  LineContext context;
  context.visit_day = Day{20782};  // 2026-11-25, a Wednesday
  context.cow_open = cow_open;
  return context;
}

inline Faults faults_of(std::string_view line, bool cow_open = true,
                        const Language& language = english()) {
  const Result<Line> result = read_line(line, in_crush(cow_open), language);
  return result.ok() ? Faults{} : result.faults();
}

/// Adds a line to the draft; the first fault of the line or of a clause, or nothing.
inline Faults say(TurnDraft& draft, bool& cow_open, std::string_view text,
                  const Language& language = english()) {
  const Result<Line> line = read_line(text, in_crush(cow_open), language);
  if (!line.ok()) return line.faults();
  for (const Clause& clause : line.value().clauses) {
    if (const auto* cow = std::get_if<CowNamed>(&clause)) {
      draft = TurnDraft{};
      draft.turn.cow = cow->cow;
      cow_open = true;
    }
    if (const auto* said = std::get_if<TurnClause>(&clause)) {
      const Outcome outcome = add_clause(draft, *said);
      if (!outcome.ok()) return outcome.faults();
    }
  }
  return {};
}

/// The turn these lines make; a line that is refused fails the test.
inline Turn turn_of(const std::vector<std::string>& lines, const Language& language = english()) {
  TurnDraft draft;
  bool cow_open = false;
  for (const std::string& line : lines) {
    const Faults faults = say(draft, cow_open, line, language);
    INFO("line: ", line, faults.empty() ? "" : " | " + faults.front().message);
    CHECK(faults.empty());
  }
  return draft.turn;
}

/// Why the last of these lines is refused; empty when it is not.
inline Faults refusal_of(const std::vector<std::string>& lines) {
  TurnDraft draft;
  bool cow_open = false;
  Faults faults;
  for (const std::string& line : lines) faults = say(draft, cow_open, line);
  return faults;
}

inline std::string joined(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines) text += (text.empty() ? "" : " // ") + line;
  return text;
}

/// The turn as printed, its lines parted by " // ".
inline std::string printed(const std::vector<std::string>& lines) {
  return joined(print_turn(turn_of(lines), english()));
}

}  // namespace evenclaw::saying
