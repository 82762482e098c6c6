#include "core/sheets/cow_names.hpp"

#include <tuple>

#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

std::size_t leading_digits(std::string_view number) {
  const std::size_t end = number.find_first_not_of("0123456789");
  return end == number.npos ? number.size() : end;
}

}  // namespace

bool number_before(std::string_view a, std::string_view b) {
  const std::string first = plain_number(a);
  const std::string second = plain_number(b);
  const std::size_t first_digits = leading_digits(first);
  const std::size_t second_digits = leading_digits(second);
  return std::tie(first_digits, first) < std::tie(second_digits, second);
}

CowNames::CowNames(std::span<const CowRow> cows, const Wording& wording) {
  unknown_.label = wording.say(Saying::no_number);
  for (const CowRow& row : cows) {
    Name name;
    const std::string& number = row.number.empty() ? row.number_said : row.number;
    name.numberless = number.empty();
    name.number = number;
    name.label = number.empty() ? unknown_.label : number;
    if (!number.empty() && row.known == CowKnown::doubtful) {
      name.label = wording.say(Saying::in_doubt_number, {{"number", number}});
    }
    if (number.empty()) name.looks = row.looks;
    names_[row.cow] = name;
  }
}

const CowNames::Name& CowNames::name_of(CowId cow) const {
  const auto found = names_.find(cow);
  return found == names_.end() ? unknown_ : found->second;
}

std::string CowNames::label(CowId cow) const {
  const Name& name = name_of(cow);
  return name.numberless ? "?" : name.label;
}

std::string CowNames::beside_label(CowId cow) const {
  return name_of(cow).numberless ? in_text(cow) : std::string();
}

std::string CowNames::number(CowId cow) const {
  const Name& name = name_of(cow);
  return name.numberless ? std::string() : name.label;
}

std::string CowNames::looks(CowId cow) const {
  return name_of(cow).looks;
}

std::string CowNames::in_text(CowId cow) const {
  const Name& name = name_of(cow);
  return name.looks.empty() ? name.label : name.label + " (" + name.looks + ')';
}

bool CowNames::before(CowId a, CowId b) const {
  const Name& first = name_of(a);
  const Name& second = name_of(b);
  if (first.numberless != second.numberless) return second.numberless;
  if (first.number != second.number) {
    if (number_before(first.number, second.number)) return true;
    if (number_before(second.number, first.number)) return false;
  }
  return std::tie(first.looks, a) < std::tie(second.looks, b);
}

}  // namespace evenclaw
