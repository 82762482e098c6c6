#include "core/api/recording/amount_alone.hpp"

#include <algorithm>
#include <cstddef>
#include <iterator>
#include <span>
#include <vector>

#include "core/base/text.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

namespace {

struct Amount {
  std::string number;
  TermKind unit = TermKind::day_unit;
  int value = 0;
  std::size_t tokens = 0;

  [[nodiscard]] bool is_same(const Amount& other) const {
    return number == other.number && has_unit_of(other);
  }

  [[nodiscard]] bool has_unit_of(const Amount& other) const {
    return unit == other.unit && value == other.value;
  }
};

/// "Withdrawal 4d" is of all that was given, and a shorter time is in it.
bool is_within(const Amount& before, const Amount& longer) {
  constexpr std::size_t most_digits = 4;
  const std::optional<int> shorter = whole_number(before.number, most_digits);
  const std::optional<int> whole = whole_number(longer.number, most_digits);
  return before.has_unit_of(longer) && shorter && whole && *shorter <= *whole;
}

std::optional<Amount> amount_at(std::string_view line, std::span<const Token> tokens,
                                std::size_t at, const Language& language) {
  if (at + 1 >= tokens.size() || tokens[at].kind != TokenKind::number) return std::nullopt;
  const Language::Match match = language.longest_match(tokens, at + 1);
  constexpr TermKind units[] = {TermKind::day_unit, TermKind::week_unit, TermKind::mm,
                                TermKind::cm};
  const bool is_unit = match.phrase != nullptr && std::find(std::begin(units), std::end(units),
                                                            match.phrase->kind) != std::end(units);
  if (!is_unit) return std::nullopt;
  const std::string number = tokens[at].folded.empty()
                                 ? std::string(line.substr(tokens[at].offset, tokens[at].length))
                                 : tokens[at].folded;
  return Amount{number, match.phrase->kind, match.phrase->value, 1 + match.word_count};
}

std::optional<Amount> only_amount(std::string_view line, const Language& language) {
  if (!is_utf8(line)) return std::nullopt;
  const std::vector<Token> tokens = spoken_tokens(line, language);
  const auto amount = amount_at(line, tokens, 0, language);
  return amount && amount->tokens == tokens.size() ? amount : std::nullopt;
}

}  // namespace

bool is_amount_alone(std::string_view line, const Language& language) {
  return only_amount(line, language).has_value();
}

bool holds_the_amount(std::string_view amount, std::string_view now, const Language& language) {
  const std::optional<Amount> before = only_amount(amount, language);
  if (!before || !is_utf8(now)) return false;
  const std::vector<Token> tokens = spoken_tokens(now, language);
  bool is_of_withdrawal = false;
  for (std::size_t at = 0; at < tokens.size();) {
    const std::optional<Amount> here = amount_at(now, tokens, at, language);
    if (here && here->is_same(*before)) return true;
    if (here && is_of_withdrawal && is_within(*before, *here)) return true;
    const Language::Match match = language.longest_match(tokens, at);
    is_of_withdrawal = match.phrase != nullptr && match.phrase->kind == TermKind::withheld_act;
    at += std::max<std::size_t>(match.word_count, 1);
  }
  return false;
}

std::optional<std::string> off_of_the_last(std::string_view line, const TurnDraft& draft,
                                           const Language& language) {
  const std::optional<Amount> amount = only_amount(line, language);
  const bool is_time =
      amount && (amount->unit == TermKind::day_unit || amount->unit == TermKind::week_unit);
  if (!is_time || draft.since_naming.empty()) return std::nullopt;
  const auto* last = std::get_if<ActionSaid>(&draft.since_naming.back());
  if (last == nullptr || !awaits_off(draft.since_naming.back())) return std::nullopt;
  const Action& act = last->action;
  const TermKind said_as = facts_of(act.kind).said_as;
  std::string in_full(language.say(said_as, act.kind));
  if (act.claw == Claw::outside || act.claw == Claw::inside)
    in_full += ' ' + std::string(language.say(TermKind::claw, act.claw));
  return in_full + ", " + std::string(language.say(TermKind::off)) + ' ' +
         std::string(trimmed(line));
}

}  // namespace evenclaw
