// Animals that were counted together, in a sentence.
#pragma once

#include <string>
#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/words.hpp"
#include "core/trade/batch_rows.hpp"

namespace evenclaw {

/// "12 heifers, far yard".
std::string batch_name(const BatchRow& row, const Wording& wording);

/// "all four feet lifted, nothing found on 11; on her own: little black one". Those on their own
/// are cows of the list.
std::string batch_words(const BatchRow& row, const Wording& wording);

/// A heading and a line for each; nothing when nobody was counted.
std::vector<Block> counted_together(const std::vector<BatchRow>& rows, const Wording& wording);

}  // namespace evenclaw
