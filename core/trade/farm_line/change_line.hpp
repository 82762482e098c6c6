// The lines about a change: "footbath: copper instead of formalin; bad visit; decided 1 Oct;
// finished 2026-10-20; whole herd", and later "footbath finished 20 Nov".
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/farm_change.hpp"

namespace evenclaw {

struct ChangeLine {
  std::optional<ChangeDriver> driver;  // nothing: more of the change told last
  std::string altered;                 // how; "" when the change is one that is known
  ChangeTold told;
  bool scrapped = false;  // there was no such change

  friend bool operator==(const ChangeLine&, const ChangeLine&) = default;
};

/// Reads one line; nothing for a blank line or a comment (#). It is understood whole or refused
/// whole. Days are counted back from `today`; one after it is "date-in-future". What is told behind
/// the first clause has to be a clause too; `because` keeps its words as the reason.
Result<std::optional<ChangeLine>> read_change_line(std::string_view text, Day today,
                                                   const Language& language, int line_number);

/// "after a bad visit", as it is said to people; "" when it was not told.
std::string_view spoken(ChangeWhy why);

}  // namespace evenclaw
