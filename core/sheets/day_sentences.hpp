// A visit in three plain sentences, each number with what it is out of.
#pragma once

#include <string>
#include <vector>

#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// How many cows were looked at of those expected; on how many something was found, and what most
/// often; how many came lame, and of these, in parts that add up, on how many a lame leg showed
/// something, on how many none did, and of how many the leg was not called. A cow counts among
/// those on whom something or nothing was found when that is known of every foot she was lifted. A
/// percentage stands only behind its count, and only out of 10 cows or more. When nobody was looked
/// at, the first sentence stands alone.
std::vector<std::string> day_sentences(const VisitView& view);

/// " Reason not called: 15 of 20 cows that were called."; "" when it was called of all.
std::string reason_not_called_sentence(const VisitView& view);

}  // namespace evenclaw
