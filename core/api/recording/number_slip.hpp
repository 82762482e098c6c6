// A number nobody knew yet, said of a cow who was seen before: was a known cow meant?
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/trade/call_line/language.hpp"
#include "core/trade/foot_rows.hpp"
#include "core/trade/task.hpp"
#include "core/trade/turn.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

/// A known cow whose number is a slip away from the one that was said, and what is open with her;
/// or one who was called by the words she is called by now, before her number was known.
struct NearCow {
  std::string number;
  std::vector<OnFootRow> on_her;  // still on
  bool has_open_case = false;
  bool was_called_so = false;
};

/// One digit wrong, missing or too many, or two neighbours swapped: 321 is a slip of 231.
bool is_slip_of(std::string_view said, std::string_view known);

/// Asked of a cow who is new here when the turn tells of a block or wrap from before, and a near
/// cow has one on that foot; or when she came for a recheck, and a near cow has something open; and
/// of a cow without a number when a known one was called by the same words.
/// Nothing otherwise: where nobody was recorded before, every recheck is of a cow nobody knows.
/// Answers are offered in the words of `language`.
std::optional<Warning> known_cow_meant(const Turn& turn, const std::vector<NearCow>& near,
                                       const Language& language);

/// "231 meant?" is open, nothing but why she came was called of her, and 231 is named now: she is
/// the one who stands there.
bool is_the_known_cow(const Turn& turn, const std::vector<Warning>& open, const CowSaid& named,
                      const Language& language);

/// News whose number is likely a slip, and the numbers that were proposed.
struct MistakenNumber {
  NewsSaid said;
  std::string words;
  std::vector<std::string> proposed;
};

}  // namespace evenclaw
