// A wrap or block nobody mentioned in the crush is told of later: that answers what was asked.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/api/journal.hpp"
#include "core/api/ports.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/task.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

/// Gives these words as the decision to every warning without one that the news answers; false
/// when there is none.
bool answer_warnings(std::vector<WarningShown>& warnings, const NewsSaid& news,
                     std::string_view words);

struct AnsweringNews {
  HerdId herd;
  CowId cow;
  NewsSaid said;
  std::string words;
};

/// Adds to the next write her turns of the last day she was seen on, corrected by the answer; none
/// where nothing was asked that the news answers.
Outcome answer_by_news(Store& store, Journal& journal, const AnsweringNews& news);

}  // namespace evenclaw
