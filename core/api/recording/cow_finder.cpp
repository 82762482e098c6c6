#include "core/api/recording/cow_finder.hpp"

#include <algorithm>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/identities.hpp"
#include "core/api/recording/number_slip.hpp"
#include "core/api/recording/reader.hpp"
#include "core/base/text.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

Result<CowFinder> CowFinder::open(Store& store, const LookingAt& where) {
  CowFinder finder(where);
  const auto numbers = select_as<CowNumberRow>(store, where.herd);
  if (!numbers) return numbers.faults();
  for (const CowNumberRow& row : *numbers) {
    finder.numbers_.push_back({row.number, row.cow, row.valid_from, row.valid_to});
  }
  const auto cows = select_as<CowRow>(store, where.herd);
  if (!cows) return cows.faults();
  for (const CowRow& row : *cows) {
    const bool is_named = row.first_seen < where.day || row.known == CowKnown::doubtful;
    finder.cows_.push_back({row.cow, row.last_seen, row.left_on, row.left_words,
                            is_named ? name_without_number(row) : std::string()});
    finder.place_of_.emplace(row.cow, finder.cows_.size() - 1);
    finder.taken_.insert(row.cow);
  }
  const auto called = select_as<CowCalledRow>(store, where.herd);
  if (!called) return called.faults();
  for (const CowCalledRow& row : *called) {
    if (row.day < where.day) finder.called_.push_back({fold_case(row.called), row.cow});
  }
  const auto tags = select_as<CowTagRow>(store, where.herd, {}, {"valid_from"});
  if (!tags) return tags.faults();
  for (const CowTagRow& row : *tags) {
    if (!row.electronic.empty()) finder.tags_.push_back({row.electronic, row.cow});
  }
  return finder;
}

std::vector<CowFinder::Number> CowFinder::carrying(std::string_view plain) const {
  std::vector<Number> valid;
  for (const Number& row : numbers_) {
    const bool on_the_day = row.from <= where_.day && (!row.to || where_.day <= *row.to);
    if (row.number == plain && on_the_day) valid.push_back(row);
  }
  return valid;
}

const CowFinder::Known* CowFinder::known(CowId cow) const {
  const auto at = place_of_.find(cow);
  return at == place_of_.end() ? nullptr : &cows_[at->second];
}

bool CowFinder::seen_later(const Number& a, const Number& b) const {
  const Known* first = known(a.cow);
  const Known* second = known(b.cow);
  const Day a_day = first == nullptr ? a.from : first->last_seen;
  const Day b_day = second == nullptr ? b.from : second->last_seen;
  return a_day != b_day ? a_day > b_day : a.cow < b.cow;
}

bool CowFinder::has_left(const Number& row) const {
  const Known* cow = known(row.cow);
  return cow != nullptr && cow->left_on && *cow->left_on <= where_.day;
}

/// A number that is given to another cow later never brings the history of the first with it.
CowFound CowFinder::numbered(std::string_view plain) const {
  std::vector<Number> valid = carrying(plain);
  const auto gone = std::stable_partition(valid.begin(), valid.end(),
                                          [&](const Number& row) { return !has_left(row); });
  if (gone == valid.begin() && !valid.empty()) return carrier_left(plain, valid);
  valid.erase(gone, valid.end());
  if (valid.empty()) return not_valid_now(plain);
  std::sort(valid.begin(), valid.end(),
            [&](const Number& a, const Number& b) { return seen_later(a, b); });
  CowFound found{valid.front().cow, {}};
  if (valid.size() > 1) {
    found.question =
        "Two cows carry " + std::string(plain) + "; taken for the one seen last. Which is it?";
  }
  return found;
}

CowFound CowFinder::carrier_left(std::string_view plain, const std::vector<Number>& left) const {
  const Known* cow = known(left.front().cow);
  const std::string number(plain);
  if (*cow->left_on == where_.day) {
    return {cow->cow, number + " was said to be gone today. Is she still here?"};
  }
  return {numbered_cow_id(where_.herd, plain, where_.visit),
          number + " was said to be gone on " + spoken(*cow->left_on) +
              "; taken for a new cow. Is she the same?"};
}

CowFound CowFinder::not_valid_now(std::string_view plain) const {
  const Number* later = nullptr;
  for (const Number& row : numbers_) {
    const bool first_then = row.number == plain && row.from > where_.day &&
                            (later == nullptr || row.from < later->from);
    if (first_then) later = &row;
  }
  // A day recorded late: she is known by that number only from a later visit on.
  if (later != nullptr) return {later->cow, {}};
  return {numbered_cow_id(where_.herd, plain, where_.visit), {}};
}

CowId CowFinder::new_unnumbered(const CowSaid& said) const {
  const std::string words = recorded_as(said);
  int which = 1;
  for (;; ++which) {
    const CowId cow = unnumbered_cow_id(where_.herd, where_.visit, where_.device, words, which);
    if (taken_.count(cow) == 0) return cow;
  }
}

CowFound CowFinder::find(const CowSaid& said) const {
  if (said.known == CowKnown::numbered) return numbered(plain_number(said.number));
  const std::optional<std::string> read = read_in(said);
  if (!read) return {new_unnumbered(said), {}};
  const std::optional<CowId> carrier = carrier_of_tag(*read);
  return {carrier ? *carrier : registered_cow_id(where_.herd, *read, where_.day), {}};
}

std::optional<CowId> CowFinder::carrier_of_tag(std::string_view electronic) const {
  const auto at = std::find_if(tags_.rbegin(), tags_.rend(),
                               [&](const Tag& tag) { return tag.electronic == electronic; });
  return at == tags_.rend() ? std::nullopt : std::optional(at->cow);
}

CowSaid CowFinder::as_read(const CowSaid& said) const {
  const bool is_one = said.known != CowKnown::unnumbered && said.alternatives.empty();
  if (!is_one || !is_read_off(said.number)) return said;
  const std::optional<CowId> cow = carrier_of_tag(said.number);
  // Recorded before ear tags were told apart from herd numbers.
  if (!cow && !carrying(plain_number(said.number)).empty()) return said;
  const std::string* number = cow ? number_of(*cow) : nullptr;
  if (number != nullptr) return {CowKnown::numbered, *number, {}, {}};
  return {CowKnown::unnumbered, {}, {}, said.number};
}

/// The number she carries on the visit's day and by which she and no other would be found.
const std::string* CowFinder::number_of(CowId cow) const {
  const auto at = std::find_if(numbers_.rbegin(), numbers_.rend(), [&](const Number& row) {
    if (row.cow != cow || !carries(cow, row.number)) return false;
    const CowFound found = numbered(row.number);
    return found.cow == cow && found.question.empty();
  });
  return at == numbers_.rend() ? nullptr : &at->number;
}

std::optional<LeftHerd> CowFinder::left(CowId cow) const {
  const Known* row = known(cow);
  if (row == nullptr || !row->left_on || *row->left_on > where_.day) return std::nullopt;
  return LeftHerd{*row->left_on, row->left_words};
}

std::optional<CowId> CowFinder::carrier(std::string_view number) const {
  if (const auto tagged = carrier_of_tag(number)) return tagged;
  std::vector<Number> valid = carrying(plain_number(number));
  if (valid.empty()) return std::nullopt;
  std::sort(valid.begin(), valid.end(),
            [&](const Number& a, const Number& b) { return seen_later(a, b); });
  return valid.front().cow;
}

std::optional<CowId> CowFinder::called(std::string_view name) const {
  if (const auto numbered = carrier(name)) return numbered;
  const std::string folded = fold_case(name);
  std::vector<CowId> hers;
  for (const Known& known : cows_) {
    const bool is_here = !known.name.empty() && (!known.left_on || *known.left_on > where_.day);
    const bool is_she =
        fold_case(known.name) == folded || fold_case(dated(known.name, known.last_seen)) == folded;
    if (is_here && is_she) hers.push_back(known.cow);
  }
  return hers.size() == 1 ? std::optional(hers.front()) : std::nullopt;
}

std::vector<std::string> CowFinder::names_without_number() const {
  std::vector<std::string> names;
  for (const Known& known : cows_) {
    if (known.name.empty()) continue;
    names.push_back(known.name);
    names.push_back(dated(known.name, known.last_seen));
  }
  return names;
}

std::vector<std::string> CowFinder::nearest(std::string_view number) const {
  std::vector<std::string> known;
  known.reserve(numbers_.size());
  for (const Number& row : numbers_) known.push_back(row.number);
  return nearest_numbers(number, std::move(known));
}

std::vector<std::pair<CowId, std::string>> CowFinder::slips_of(std::string_view number) const {
  const std::string plain = plain_number(number);
  std::vector<std::pair<CowId, std::string>> slips;
  for (const Number& row : numbers_) {
    const bool on_the_day = row.from <= where_.day && (!row.to || where_.day <= *row.to);
    if (!on_the_day || !is_slip_of(plain, row.number)) continue;
    // One first seen in this recording has nothing from before.
    const bool is_here = known(row.cow) != nullptr && !has_left(row);
    if (is_here) slips.emplace_back(row.cow, row.number);
  }
  return slips;
}

std::vector<std::string> CowFinder::called_before(std::string_view looks) const {
  std::vector<std::string> numbers;
  for (const Called& row : called_) {
    if (looks.empty() || row.looks != fold_case(looks) || left(row.cow)) continue;
    const std::string* number = number_of(row.cow);
    const bool is_new =
        number != nullptr && std::find(numbers.begin(), numbers.end(), *number) == numbers.end();
    if (is_new) numbers.push_back(*number);
  }
  return numbers;
}

bool CowFinder::carries(CowId cow, std::string_view number) const {
  const std::vector<Number> valid = carrying(plain_number(number));
  return std::any_of(valid.begin(), valid.end(), [&](const Number& row) { return row.cow == cow; });
}

void CowFinder::now_known(CowId cow, const CowSaid& said) {
  taken_.insert(cow);
  if (const auto read = read_in(said); read && !carrier_of_tag(*read)) {
    tags_.push_back({*read, cow});
  }
  if (said.known != CowKnown::numbered || carries(cow, said.number)) return;
  numbers_.push_back({plain_number(said.number), cow, where_.day, std::nullopt});
}

void CowFinder::forget(CowId cow) {
  taken_.erase(cow);
  tags_.erase(
      std::remove_if(tags_.begin(), tags_.end(), [&](const Tag& tag) { return tag.cow == cow; }),
      tags_.end());
  numbers_.erase(std::remove_if(numbers_.begin(), numbers_.end(),
                                [&](const Number& row) { return row.cow == cow; }),
                 numbers_.end());
}

void CowFinder::now_gone(CowId cow, std::string_view words) {
  for (Known& known : cows_) {
    if (known.cow != cow) continue;
    known.left_on = where_.day;
    known.left_words = words;
  }
}

void CowFinder::now_here(CowId cow) {
  for (Known& known : cows_) {
    if (known.cow == cow) known.left_on.reset();
  }
}

}  // namespace evenclaw
