#include "core/api/cow_names.hpp"

#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view nothing_said = "no number";

std::string or_nothing_said(std::string_view words) {
  return std::string(words.empty() ? nothing_said : words);
}

}  // namespace

std::string said_as(const CowSaid& cow) {
  return or_nothing_said(called_as(cow));
}

std::string said_as(const CowRow& cow) {
  if (!cow.number.empty()) return cow.number;
  if (!cow.looks.empty()) return cow.looks;
  const bool is_one_number = cow.number_said.find(' ') == std::string::npos;
  if (cow.known == CowKnown::doubtful && !cow.number_said.empty() && is_one_number) {
    return cow.number_said + "?";
  }
  return or_nothing_said(cow.number_said);
}

bool same_said(const CowSaid& a, const CowSaid& b) {
  if (a.known != b.known) return false;
  if (a.known != CowKnown::numbered) return a == b;
  return plain_number(a.number) == plain_number(b.number);
}

}  // namespace evenclaw
