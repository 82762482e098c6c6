// What was asked of her in the crush, answered in less than a line: "taken off", "2d".
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/recording/refused_feet.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/medicine_use.hpp"
#include "core/trade/turn.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

/// The whole line that is meant, when the words are no line by themselves and answer just one of
/// the open questions: whether a wrap or block is still on, or how long milk and meat are held
/// back, of which `told` was called already. Nothing otherwise; of two medicines a time is no
/// answer.
std::optional<std::string> answer_in_short(std::string_view text, const std::vector<Warning>& open,
                                           const Language& language, MilkAndMeat told = {});

/// "Withdrawal 2d" for "2d" while it is asked of more than one medicine, so that it is not clear of
/// which one that is. Nothing otherwise.
std::optional<std::string> withdrawal_of_all(std::string_view text,
                                             const std::vector<Warning>& open,
                                             const Language& language, MilkAndMeat told);

/// "Mobility 3 of 5" for "3 of 5", when a score was refused for its scale and the words are no line
/// by themselves. Nothing otherwise.
std::optional<std::string> score_in_short(std::string_view text,
                                          std::span<const RefusedLine> refused,
                                          const Language& language);

/// "withdrawal 2d (milk and meat; of the milk alone: milk withheld 2d)": the line an answer was
/// taken as, with what it says more than was said.
std::string told_in_full(const std::string& line, const Language& language);

/// Whether the line is one that such an answer stands for.
bool is_meant_in_short(std::string_view line, const Language& language);

}  // namespace evenclaw
