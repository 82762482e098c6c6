#include "core/trade/identity.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

#include "core/base/ascii.hpp"
#include "core/base/edit_distance.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t most_proposed = 3;

// Fields are parted by a line feed. Only the last one of a name may be free text, so no two lists
// of fields ever spell the same name.
std::string name_of(std::string_view what, std::string_view first, std::string_view second) {
  std::string name(what);
  name += '\n';
  name += first;
  name += '\n';
  name += second;
  return name;
}

}  // namespace

std::string plain_number(std::string_view number) {
  std::size_t zeros = 0;
  while (zeros + 1 < number.size() && number[zeros] == '0' && is_digit(number[zeros + 1])) ++zeros;
  return std::string(number.substr(zeros));
}

std::vector<std::string> nearest_numbers(std::string_view said, std::vector<std::string> known) {
  const std::string plain = plain_number(said);
  // Two slips in a short number make nearly every cow a neighbour.
  const std::size_t most_slips = std::max<std::size_t>(1, plain.size() / 3);
  std::vector<std::pair<std::size_t, std::string>> near;
  for (std::string& number : known) {
    const std::size_t distance = edit_distance(plain, number);
    if (distance > 0 && distance <= most_slips) near.emplace_back(distance, std::move(number));
  }
  std::sort(near.begin(), near.end());
  near.erase(std::unique(near.begin(), near.end()), near.end());
  std::vector<std::string> nearest;
  for (auto& [distance, number] : near) {
    if (distance > near.front().first || nearest.size() == most_proposed) break;
    nearest.push_back(std::move(number));
  }
  return nearest;
}

std::string did_you_mean(const std::vector<std::string>& numbers) {
  std::string question;
  for (const std::string& number : numbers) {
    question += (question.empty() ? "Did you mean " : " or ") + number;
  }
  return question.empty() ? question : question + "?";
}

VisitId visit_id(HerdId herd, Day day, int ordinal) {
  return {
      uuid_derived(name_of("visit", to_text(herd), to_text(day)) + '\n' + std::to_string(ordinal))};
}

CowId numbered_cow_id(HerdId herd, std::string_view number, VisitId first_seen) {
  return {uuid_derived(name_of("cow", to_text(herd), to_text(first_seen)) + '\n' +
                       plain_number(number))};
}

CowId unnumbered_cow_id(HerdId herd, VisitId visit, DeviceId device, std::string_view looks,
                        int which) {
  std::string name = name_of("cow without number", to_text(herd), to_text(visit));
  name += '\n' + to_text(device) + '\n' + std::to_string(which) + '\n';
  name += looks;
  return {uuid_derived(name)};
}

CowId registered_cow_id(HerdId herd, std::string_view identifier, Day valid_from) {
  return {uuid_derived(name_of("cow registered", to_text(herd), to_text(valid_from)) + '\n' +
                       plain_number(identifier))};
}

TaskId task_id(EntryId first, std::string_view what) {
  return {uuid_derived(name_of("task", to_text(first), what))};
}

TaskId routine_trim_id(CowId cow, std::string_view rule, Day from) {
  return {uuid_derived(name_of("routine trim", to_text(cow), rule) + '\n' + to_text(from))};
}

}  // namespace evenclaw
