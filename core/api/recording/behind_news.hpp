// News of another cow is told while somebody stands in the crush: what is told of a cow right
// behind it, without a number, may be of either.
#pragma once

#include <string>
#include <string_view>

#include "core/api/recording/crush.hpp"
#include "core/api/recording/in_crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

/// News was told while `here` stands in the crush, of `cow`. News of her
/// own leaves no doubt, also of news before it.
void now_told_of(InCrush& here, const NewsSaid& news, CowId cow);

/// The line tells something of a cow, or mends it, and names none, and the one before was news of
/// another one. "Rest fine", how a turn ended and a foot alone are of her who stands there.
bool may_be_of_her_told_of(const InCrush& here, const Line& line);

/// The line that may have been of either is said with the number of one: nothing of it is open of
/// her in the crush.
void answer_which_of_two(InCrush& here, const Line& line, std::string_view text,
                         const Language& language);

/// "260 LH spray": the line with the number of her in the crush before it, and the foot that was
/// spoken of where it stands in no line of its own without one; "" when she has no clear number.
std::string line_with_her_number(const InCrush& here, const Line& line, std::string_view said,
                                 const Language& language);

/// Refuses such a line, and asks with whose number it is to be said again. Somebody stands there.
Outcome ask_of_which_of_two(VisitBook& book, Crush& crush, const Line& line, std::string_view text);

}  // namespace evenclaw
