// After a refused line that may have named another cow, nobody knows whose the feet are that are
// told of: they are not the feet of her in the crush until a cow is named.
#pragma once

#include <string_view>

#include "core/api/recording/crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

/// From now on, if that line may have named another cow than her in the crush.
void hold_back_after(const VisitBook& book, Crush& crush, std::string_view refused);

/// A cow is named, she is let out, or the line is said again: now it is known whose the feet are.
void let_go_held_back(const VisitBook& book, Crush& crush, const Line& line, std::string_view text);

/// The line says something of a cow that may not be her in the crush. What was refused of her
/// before, or stood before the number of the other, is hers.
bool holds_back(const Crush& crush, const Line& line, std::string_view text);

/// "Rest fine", "fronts fine", "walks sound", "milk 4d", "spray", "no, chronic": it goes on with a
/// cow that stands there, and calls none by itself. Nothing is found or measured in it, nor done on
/// a foot that it names, nor told why she came or how lame she is.
bool only_goes_on(const Line& line);

/// It is asked whose it is, and the line is said again with her number.
Outcome refuse_held_back(VisitBook& book, Crush& crush, const Line& line, std::string_view text);

}  // namespace evenclaw
