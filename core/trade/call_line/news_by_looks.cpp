#include "core/trade/call_line/news_by_looks.hpp"

#include <algorithm>
#include <variant>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

/// No cow carries it, so that it is told from a number that was said.
constexpr std::string_view stand_in = "999999999999";

bool begins_with_words(std::string_view text, std::string_view words) {
  constexpr std::string_view behind_a_word = " \t,;:.";
  if (words.empty() || text.size() < words.size()) return false;
  if (fold_case(text.substr(0, words.size())) != fold_case(words)) return false;
  return text.size() == words.size() ||
         behind_a_word.find(text[words.size()]) != std::string_view::npos;
}

std::string_view without_article(std::string_view text, const Language& language) {
  const std::size_t space = text.find(' ');
  if (space == std::string_view::npos) return text;
  return language.is_article(fold_case(text.substr(0, space))) ? trimmed(text.substr(space)) : text;
}

const std::string* named_at_start(std::string_view text, std::span<const std::string> names) {
  const std::string* longest = nullptr;
  for (const std::string& name : names) {
    const bool is_longer = longest == nullptr || longest->size() < name.size();
    if (is_longer && begins_with_words(text, name)) longest = &name;
  }
  return longest;
}

}  // namespace

std::optional<Line> news_by_looks(std::string_view text, std::span<const std::string> names,
                                  const LineContext& context, const Language& language) {
  std::string_view said = trimmed(text);
  const std::string* name = named_at_start(said, names);
  if (name == nullptr) {
    said = without_article(said, language);
    name = named_at_start(said, names);
  }
  if (name == nullptr) return std::nullopt;
  const std::string_view lead = language.say(TermKind::news_lead);
  const std::string as_numbered =
      std::string(lead) + ' ' + std::string(stand_in) + std::string(said.substr(name->size()));
  auto line = read_line(as_numbered, context, language);
  if (!line || line->clauses.empty()) return std::nullopt;
  for (Clause& clause : line->clauses) {
    auto* news = std::get_if<NewsSaid>(&clause);
    if (news == nullptr) return std::nullopt;
    if (news->number == stand_in) news->number = *name;
  }
  return *std::move(line);
}

}  // namespace evenclaw
