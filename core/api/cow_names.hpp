// How a cow is named in answers and lists: by her number, or by what was said instead.
#pragma once

#include <string>

#include "core/trade/cow_rows.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// "412", "513 or 531", "513?", "brown heifer"; "no number" when nothing was said of her.
std::string said_as(const CowSaid& cow);
std::string said_as(const CowRow& cow);

/// True when both name the same cow: the same number up to leading zeros, or the same words.
bool same_said(const CowSaid& a, const CowSaid& b);

}  // namespace evenclaw
