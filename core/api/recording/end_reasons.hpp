// Why a turn counts as not finished, in the words kept with it, and what takes such a reason away.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/api/recording/refused_feet.hpp"
#include "core/base/date.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

inline constexpr std::string_view nothing_was_said = "nothing was said";

/// Done, and neither a foot nor anything else was spoken of; why she came does not count.
bool says_nothing(const Turn& turn);

/// `"no, insde" was not understood`; "" when there is no such line.
std::string not_understood(const std::vector<RefusedLine>& lines);

/// A turn that was done is unfinished for this reason; one that was not done has one more. What is
/// a reason already, or a line that is named in one, is not added again.
void add_end_reason(Turn& turn, std::string_view reason);

/// Two calls of her may have been unfinished for the same reason, which is told once.
void tell_reasons_once(Turn& turn);

/// The reason falls away; a turn with no other one left is done.
void drop_end_reason(Turn& turn, std::string_view reason);

/// Whether one of the lines said how the turn ended: "unfinished, went down".
bool tell_its_end(const std::vector<std::string>& words, Day visit_day, const Language& language);

/// Lines nobody could read that `now` says again no longer keep the turn from being done.
void drop_said_again(Turn& turn, std::string_view now, const Language& language);

/// No line that nobody could read keeps the turn from being done any more.
void drop_not_understood(Turn& turn);

/// A line nobody could read is a reason why her turn was not finished.
bool is_named_as_a_reason(const Turn& turn, std::string_view line);

/// The lines nobody could read for which the turn was not finished.
std::vector<std::string> lines_not_understood(const Turn& turn);

/// The reasons of the turn that name lines nobody could read, without the lines that one of `since`
/// says again.
std::vector<std::string> still_not_understood(Turn turn, const std::vector<std::string>& since,
                                              const Language& language);

/// The same of the lines that called something, a finding or an act, that nothing in `said` calls;
/// "" when there is none.
std::string left_out_of_what_was_not_understood(Turn turn, const std::vector<std::string>& said,
                                                const Language& language);

}  // namespace evenclaw
