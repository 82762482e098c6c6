#include "core/api/cow_names.hpp"

#include <variant>

#include "core/base/text.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view nothing_said = "no number";

std::string or_nothing_said(std::string_view words) {
  return std::string(words.empty() ? nothing_said : words);
}

}  // namespace

std::string said_as(const CowSaid& cow, const Language& language) {
  std::string words = called_as(cow);
  if (words.empty()) return std::string(language.say(TermKind::no_number));
  if (cow.known != CowKnown::doubtful || cow.alternatives.empty()) return words;
  words = cow.number;
  for (const std::string& other : cow.alternatives) {
    words += ' ' + std::string(language.say(TermKind::alternative)) + ' ' + other;
  }
  return words;
}

std::string recorded_as(const CowSaid& cow) {
  return or_nothing_said(called_as(cow));
}

std::string recorded_as(const CowRow& cow) {
  if (!cow.number.empty()) return cow.number;
  if (!cow.looks.empty()) return cow.looks;
  const bool is_one_number = cow.number_said.find(' ') == std::string::npos;
  if (cow.known == CowKnown::doubtful && !cow.number_said.empty() && is_one_number) {
    return cow.number_said + "?";
  }
  return or_nothing_said(cow.number_said);
}

std::string name_without_number(const CowRow& cow) {
  if (!cow.number.empty()) return {};
  if (cow.known == CowKnown::unnumbered) return cow.looks;
  const std::string name = recorded_as(cow);
  return cow.known == CowKnown::doubtful && name.back() == '?' ? name : std::string();
}

std::string recorded_as(std::string_view typed, const Language& language) {
  const auto line = read_line(typed, {}, language);
  const bool is_one = line && line->clauses.size() == 1;
  const auto* named = is_one ? std::get_if<CowNamed>(&line->clauses.front()) : nullptr;
  return named == nullptr ? std::string(trimmed(typed)) : recorded_as(named->cow);
}

bool same_said(const CowSaid& a, const CowSaid& b) {
  if (a.known != b.known) return false;
  if (a.known != CowKnown::numbered) return a == b;
  return plain_number(a.number) == plain_number(b.number);
}

}  // namespace evenclaw
