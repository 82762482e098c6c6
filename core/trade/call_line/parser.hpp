// Walks a line through the grammar and tells what it says, what is wrong, and where it stopped.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>
#include <vector>

#include "core/base/result.hpp"
#include "core/trade/call_line/grammar.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

struct Reading {
  Line line;
  Faults faults;                        // what is wrong with what is there
  std::optional<Fault> missing;         // what a whole line would still need
  Spot spot = Spot::first_without_cow;  // where the line ends
  bool awaits_past =
      false;  // a wrap or block is told of without the foot that is known to carry it
  std::size_t tokens = 0;
  std::size_t tokens_taken = 0;  // by the steps of the grammar; all of them when nothing is wrong

  [[nodiscard]] bool whole() const { return whole_beside_her_past() && !awaits_past; }

  [[nodiscard]] bool whole_beside_her_past() const { return faults.empty() && !missing; }
};

enum class LineSort { turn_or_visit, news, batch };

/// Finding the nearest known word takes longer than reading; who only asks whether a line reads
/// does without.
enum class Telling { with_remedies, briefly };

/// Reads the tokens of a line as one sort. The text must be valid UTF-8 without control characters.
Reading read_as(LineSort sort, std::string_view text, const LineContext& context,
                const Language& language, Telling telling = Telling::with_remedies);

/// What a line may be, likeliest first: one that starts with a number can be her turn or news.
std::vector<LineSort> possible_sorts(std::string_view text, const Language& language);

/// Why the text cannot be a line at all (too long, not text); nothing when it can.
std::optional<Fault> not_a_line(std::string_view text, const LineContext& context);

/// The text without the carriage return and line feed a file may have left on it.
std::string_view without_line_end(std::string_view text);

/// A line that only says something to the reader; nothing of it is recorded.
bool is_comment_or_blank(std::string_view text);

}  // namespace evenclaw
