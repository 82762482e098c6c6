#include "core/trade/reason.hpp"

namespace evenclaw {

std::string to_text(const ReasonSet& reasons) {
  std::string text;
  for (const EnumWord<Reason>& row : EnumWords<Reason>::table) {
    if (!reasons.has(row.value)) continue;
    if (!text.empty()) text += ' ';
    text += row.word;
  }
  return text;
}

std::optional<ReasonSet> value_from_text(std::string_view text, std::type_identity<ReasonSet>) {
  ReasonSet reasons;
  while (!text.empty()) {
    const std::string_view word = text.substr(0, text.find(' '));
    const std::optional<Reason> reason = enum_of<Reason>(word);
    if (!reason || reasons.has(*reason)) return std::nullopt;
    reasons.add(*reason);
    if (word.size() == text.size()) break;
    text.remove_prefix(word.size() + 1);
    if (text.empty()) return std::nullopt;
  }
  return reasons;
}

}  // namespace evenclaw
