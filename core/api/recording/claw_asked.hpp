// "Inside", where it was asked just before on which claw the block is.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/turn_clause.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

/// What is open of her: all the questions, and those that were asked with the line before.
struct OpenQuestions {
  std::vector<Warning> open;
  std::vector<Warning> just_asked;
};

/// The whole line that is meant, when the words are a claw and no more, perhaps behind its foot,
/// and it was asked on which claw something was done: "block on inside". It answers what was asked
/// just before, or what was said last. Nothing otherwise.
std::optional<std::string> answer_which_claw(std::string_view text, const OpenQuestions& questions,
                                             const TurnDraft& so_far, const Language& language);

/// "No, outside", when the words are that claw and no more, perhaps behind its foot, and of all
/// that was asked just before and is open one offered answer says so; "no, block outside" where a
/// block was asked about. Nothing otherwise.
std::optional<std::string> correction_to_claw(std::string_view text, const OpenQuestions& questions,
                                              const Language& language);

/// The claw in full, where the words are a claw in short and no more: "inside" for "in".
std::optional<std::string> claw_in_full(std::string_view text, const Language& language);

}  // namespace evenclaw
