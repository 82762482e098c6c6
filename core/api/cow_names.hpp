// How a cow is named in answers and lists: by her number, or by what was said instead.
#pragma once

#include <string>
#include <string_view>

#include "core/trade/call_line/language.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// "412", "513 or 531", "513?", "brown heifer"; "no number" when nothing was said of her. In the
/// words in which she is called.
std::string said_as(const CowSaid& cow, const Language& language);

/// The same as records hold it, in one form whatever language she was called in: of it ids of cows
/// without a number are made, and by it she is found again.
std::string recorded_as(const CowSaid& cow);
std::string recorded_as(const CowRow& cow);

/// What news of a cow without a sure number calls her by: "brown heifer", "104?"; "" of any other.
std::string name_without_number(const CowRow& cow);

/// What somebody typed for a cow in the form of the records; words that are no way to name a cow on
/// the call line ("brown heifer") stay as they are.
std::string recorded_as(std::string_view typed, const Language& language);

/// True when both name the same cow: the same number up to leading zeros, or the same words.
bool same_said(const CowSaid& a, const CowSaid& b);

}  // namespace evenclaw
