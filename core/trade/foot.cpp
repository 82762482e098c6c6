#include "core/trade/foot.hpp"

namespace evenclaw {

std::string to_text(const FootSet& feet) {
  std::string text;
  for (const Foot foot : all_feet) {
    if (!feet.has(foot)) continue;
    if (!text.empty()) text += ' ';
    text += word_of(foot);
  }
  return text;
}

std::optional<FootSet> value_from_text(std::string_view text, std::type_identity<FootSet>) {
  FootSet feet;
  while (!text.empty()) {
    const std::string_view word = text.substr(0, text.find(' '));
    const std::optional<Foot> foot = enum_of<Foot>(word);
    if (!foot || feet.has(*foot)) return std::nullopt;
    feet.add(*foot);
    if (word.size() == text.size()) break;
    text.remove_prefix(word.size() + 1);
    if (text.empty()) return std::nullopt;
  }
  return feet;
}

}  // namespace evenclaw
