// What is to be done about a wrap or block that was told off and told still on, as long as nobody
// said which of the two holds.
#pragma once

#include <string>
#include <string_view>

#include "core/trade/task_rows.hpp"

namespace evenclaw {

/// "wrap off left hind (told off and told still on: which holds?)".
std::string told_both_ways(std::string_view task_words);

/// The words of the task say so.
bool is_told_both_ways(const TaskRow& task);

/// The words of the task without that, as they are once somebody said which holds.
std::string words_without_doubt(std::string_view task_words);

}  // namespace evenclaw
