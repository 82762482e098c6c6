// A foot has nothing found on it, or a finding: what is said when both are called of one.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/line_builder.hpp"
#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/turn_clause.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// Why that was not found on a foot of the turn that is called like this so far. Blood drawn by the
/// knife speaks neither for nor against what was found.
std::optional<Refusal> why_not_found(const Turn& turn, const FootCall& call,
                                     const FindingSaid& said);

/// Why it cannot be said that nothing was found on this foot.
std::optional<Refusal> why_not_fine(const FootCall& call);

/// Why nobody can say "rest fine": each foot was called, and some of them as not lifted. Where one
/// foot alone was lifted the others are the rest, called or not.
std::optional<Refusal> why_no_rest(const Turn& turn);

/// "No, sole ulcer" with nothing before it in the line that it could be said against: "nothing
/// found" may have been called on an earlier one.
bool may_mend_an_earlier_line(const TurnDraft& so_far, const FindingSaid& said);

/// "No, sole ulcer".
bool finds_instead(const TurnClause& clause);

/// What is said again of other feet was found there, whatever was said of them before.
Turn ready_for(Turn turn, FootSet feet, const std::vector<TurnClause>& said_again);

/// The finding that clause `at` calls, when "nothing found" of the same foot stands before it in
/// the line: both are pointed at, for one of them is to be said alone.
std::optional<PlacedFault> both_in_one_line(std::span<const PlacedClause> clauses, std::size_t at,
                                            const TurnDraft& so_far, std::span<const Token> tokens);

/// "No, sole ulcer" does not tell whether the ulcer was wrong or is right.
Refusal right_or_wrong(std::string_view lesion);

}  // namespace evenclaw
