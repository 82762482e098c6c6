#include "core/api/cow_names.hpp"

#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view nothing_said = "no number";

std::string or_nothing_said(std::string words) {
  return words.empty() ? std::string(nothing_said) : words;
}

}  // namespace

std::string said_as(const CowSaid& cow) {
  switch (cow.known) {
    case CowKnown::numbered:
      return plain_number(cow.number);
    case CowKnown::doubtful: {
      std::string words = cow.number;
      for (const std::string& other : cow.alternatives) words += " or " + other;
      return cow.alternatives.empty() ? words + "?" : words;
    }
    case CowKnown::unnumbered:
      return or_nothing_said(cow.looks);
  }
  return {};
}

std::string said_as(const CowRow& cow) {
  if (!cow.number.empty()) return cow.number;
  if (!cow.looks.empty()) return cow.looks;
  return or_nothing_said(cow.number_said);
}

bool same_said(const CowSaid& a, const CowSaid& b) {
  if (a.known != b.known) return false;
  if (a.known != CowKnown::numbered) return a == b;
  return plain_number(a.number) == plain_number(b.number);
}

}  // namespace evenclaw
