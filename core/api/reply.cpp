#include "core/api/reply.hpp"

namespace evenclaw {

namespace {

std::string answers_in_words(const std::vector<std::string>& answers) {
  if (answers.empty()) return {};
  std::string words = " (answer: ";
  for (std::size_t i = 0; i < answers.size(); ++i) {
    if (i > 0) words += " / ";
    words += answers[i];
  }
  return words + ")";
}

}  // namespace

std::string with_remedy(std::string words, const std::string& remedy) {
  if (remedy.empty()) return words;
  const bool is_over = words.empty() || words.back() == '.' || words.back() == '?' ||
                       words.back() == ')' || words.back() == ';';
  return words + (is_over ? " " : "; ") + remedy;
}

std::string to_line(const ReplyItem& item) {
  std::string line(item.kind == ReplyKind::there_already ? "there already" : word_of(item.kind));
  if (item.kind == ReplyKind::refused) line += " line " + std::to_string(item.line);
  if (!item.cow.empty()) line += ' ' + item.cow;
  if (item.kind == ReplyKind::saved || item.kind == ReplyKind::there_already) {
    return item.entry ? line + ' ' + to_text(*item.entry) : line;
  }
  line += ": " + item.words + answers_in_words(item.answers);
  return with_remedy(std::move(line), item.remedy);
}

}  // namespace evenclaw
