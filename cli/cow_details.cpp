#include "cli/cow_details.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "cli/records.hpp"
#include "core/base/text.hpp"

namespace evenclaw::cli {
namespace {

constexpr std::size_t most_digits_of_weight = 4;
constexpr std::size_t most_digits_of_lactation = 2;

Fault not_so(std::string message, std::string token, std::string remedy) {
  return {.slug = "usage",
          .message = std::move(message),
          .token = std::move(token),
          .remedy = std::move(remedy)};
}

/// "380", "380kg", "380 kg".
std::optional<int> kilograms(std::string_view typed) {
  typed = trimmed(typed);
  if (typed.size() > 2 && fold_case(typed.substr(typed.size() - 2)) == "kg") {
    typed = trimmed(typed.substr(0, typed.size() - 2));
  }
  return whole_number(typed, most_digits_of_weight);
}

}  // namespace

Result<CowDetails> details_in(const Invocation& invocation) {
  Faults faults;
  CowDetails details;
  details.tag = invocation.value("--tag");
  details.electronic = invocation.value("--eid");
  details.alias = invocation.value("--alias");
  details.breed = invocation.value("--breed");
  const auto tell_day = [&](std::string_view option, std::optional<Day>& told) {
    const auto day = day_option(invocation, option);
    if (day) told = *day;
    if (!day) faults.insert(faults.end(), day.faults().begin(), day.faults().end());
  };
  tell_day("--born", details.born);
  tell_day("--calved", details.calved);
  tell_day("--dry-off", details.dry_off);
  tell_day("--due-to-calve", details.due_to_calve);
  if (invocation.has("--is")) {
    details.heifer_or_cow = enum_of<HeiferOrCow>(fold_case(invocation.value("--is")));
    if (!details.heifer_or_cow) {
      faults.push_back(not_so("She is a heifer or a cow.", invocation.value("--is"),
                              "Write --is heifer or --is cow."));
    }
  }
  if (invocation.has("--weight")) {
    const std::optional<int> weight = kilograms(invocation.value("--weight"));
    if (weight && *weight > 0) {
      details.weight = weight_class_of(*weight);
    } else {
      faults.push_back(not_so("That is no weight in kilograms.", invocation.value("--weight"),
                              "Write it as a number: --weight 380."));
    }
  }
  if (invocation.has("--lactation")) {
    details.lactation = whole_number(invocation.value("--lactation"), most_digits_of_lactation);
    if (!details.lactation || *details.lactation < 1) {
      faults.push_back(not_so("That is no number of a lactation.", invocation.value("--lactation"),
                              "Write it as a number from 1 on: --lactation 3."));
    }
  }
  if (!faults.empty()) return faults;
  return details;
}

}  // namespace evenclaw::cli
