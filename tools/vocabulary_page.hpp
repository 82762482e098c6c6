// The page docs/format/vocabulary.md, made from the tables of core/trade.
#pragma once

#include <string>

namespace evenclaw {

/// All that may be called, with what it means and how sure each row is.
std::string vocabulary_page();

}  // namespace evenclaw
