// On which foot a wrap or block is of which somebody told without naming the foot.
#pragma once

#include <string>
#include <string_view>

#include "core/trade/call_line/language.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// "say the foot first: RH wrap off", with `said` behind each foot that carries such a wrap or
/// block from before, or that none is known on her. "" when the words tell of neither.
std::string remedy_with_foot(const Rows& past, std::string_view said, const Language& language);

}  // namespace evenclaw
