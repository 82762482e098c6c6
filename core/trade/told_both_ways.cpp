#include "core/trade/told_both_ways.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view in_doubt = " (told off and told still on: which holds?)";

}  // namespace

std::string told_both_ways(std::string_view task_words) {
  return std::string(task_words) + std::string(in_doubt);
}

bool is_told_both_ways(const TaskRow& task) {
  return task.words.ends_with(in_doubt);
}

std::string words_without_doubt(std::string_view task_words) {
  if (task_words.ends_with(in_doubt)) task_words.remove_suffix(in_doubt.size());
  return std::string(task_words);
}

}  // namespace evenclaw
