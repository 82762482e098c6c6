// The call line: what one spoken or typed line says, before anything is recorded.
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/trade/batch.hpp"
#include "core/trade/call_line/turn_clause.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/task.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

class Language;  // core/trade/call_line/language.hpp: the words as a table

/// A cow is named: a turn begins (or goes on, when it is the same cow in the same visit).
struct CowNamed {
  CowSaid cow;
  friend bool operator==(const CowNamed&, const CowNamed&) = default;
};

/// "done": she is let out.
struct TurnEnded {
  friend bool operator==(const TurnEnded&, const TurnEnded&) = default;
};

/// "today hinds": which feet are lifted today.
struct TodaysFeetSaid {
  FootSet feet;
  friend bool operator==(const TodaysFeetSaid&, const TodaysFeetSaid&) = default;
};

/// "caller Anna", "writer Ben".
struct CallerSaid {
  std::string name;
  friend bool operator==(const CallerSaid&, const CallerSaid&) = default;
};

struct WriterSaid {
  std::string name;
  friend bool operator==(const WriterSaid&, const WriterSaid&) = default;
};

/// "go ahead": the open warnings of this turn are answered so.
struct GoAheadSaid {
  friend bool operator==(const GoAheadSaid&, const GoAheadSaid&) = default;
};

/// "12 heifers, far yard, all good": animals counted together. Who was apart is named behind it, as
/// a cow of her own.
struct BatchSaid {
  Batch batch;
  bool mends = false;          // the count of the line before: "no, 11 heifers"
  bool counted_twice = false;  // they were counted once more by mistake
  friend bool operator==(const BatchSaid&, const BatchSaid&) = default;
};

using AnyClause = std::variant<CowNamed, TurnClause, TurnEnded, TodaysFeetSaid, CallerSaid,
                               WriterSaid, GoAheadSaid, NewsSaid, BatchSaid>;

/// One thing a line says, in the order in which it was said. TurnClause is what is said about the
/// cow that is in the crush (turn_clause.hpp); NewsSaid is the since-last-time talk.
/// Copied, moved, compared and dropped in line.cpp alone, as a TurnClause is in its own source.
struct Clause : AnyClause {
  using AnyClause::AnyClause;
  Clause(const Clause& other);
  Clause(Clause&& other) noexcept;
  Clause& operator=(const Clause& other);
  Clause& operator=(Clause&& other) noexcept;
  ~Clause();
  friend bool operator==(const Clause& a, const Clause& b);
};

struct Line {
  std::vector<Clause> clauses;  // empty for a blank line or a comment (#)
};

/// Something of the since-last-time talk is in the line.
bool tells_news(const Line& line);

struct LineContext {
  Day visit_day;          // weekdays and days are counted from it
  bool cow_open = false;  // a cow is in the crush: feet may follow without a number
  int line_number = 1;    // goes into the faults
};

/// Reads one line. Never throws, never guesses silently, never drops a token: a line is understood
/// whole or refused whole. Faults carry slug "call-not-understood" (or "call-impossible" when the
/// words are known but cannot be true, like a white line between the claws), the token, its
/// column, what was expected and the nearest known word as remedy. Lines over 4,096 bytes are
/// refused with "line-too-long".
Result<Line> read_line(std::string_view text, const LineContext& context, const Language& language);

/// What may stand next after a half line, likeliest first; `words` is whole words to append.
struct Suggestion {
  std::string words;
  std::string meaning;  // "the good claw", "4 weeks"; may be empty
};

std::vector<Suggestion> what_may_follow(std::string_view half_line, const LineContext& context,
                                        const Language& language);

/// The turn in call line words, one line for the cow and one for each foot; reading these lines
/// into a fresh draft gives back an equal turn.
std::vector<std::string> print_turn(const Turn& turn, const Language& language);

}  // namespace evenclaw
