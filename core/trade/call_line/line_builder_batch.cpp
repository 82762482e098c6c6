// What a line says of animals that are counted together.
#include <string>
#include <utility>

#include "core/base/text.hpp"
#include "core/trade/call_line/line_builder.hpp"
#include "core/trade/call_line/open_item.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t most_digits_of_a_count = 3;

/// Nothing when it is no whole number or far too many.
std::optional<std::int32_t> count_in(std::string_view digits) {
  return whole_number(digits, most_digits_of_a_count);
}

}  // namespace

BatchSaid* LineBuilder::batch() {
  return clauses_.empty() ? nullptr : std::get_if<BatchSaid>(&clauses_.front().clause);
}

void LineBuilder::correct_batch(const Term&) {
  mends_batch_ = true;
}

void LineBuilder::count_batch(const Term& number) {
  const std::string digits(digits_of(number));
  const std::optional<std::int32_t> count = count_in(digits);
  BatchSaid said;
  said.mends = mends_batch_;
  said.batch.counted = count.value_or(0);
  add(std::move(said), number);
  if (count && *count < fewest_in_a_batch) {
    refuse(not_understood("one animal is no batch",
                          "call her by her number, or: \"{no number}, what she looks like\""),
           number);
  } else if (!count || *count > most_in_a_batch) {
    refuse(not_understood(digits + " are more than are counted together in a day",
                          "as the number of a cow it stands without the animals: \"" + digits +
                              " {nothing found}\"; so many animals are counted in two lines"),
           number);
  }
}

void LineBuilder::name_animals(const Term& animals) {
  if (BatchSaid* said = batch()) said->batch.animals = animals.as<AnimalKind>();
}

void LineBuilder::place_batch(const Term& text) {
  BatchSaid* said = batch();
  if (said == nullptr) return;
  std::string& place = said->batch.place;
  place += (place.empty() ? "" : ", ") + words_in(text);
}

void LineBuilder::say_batch_state(const Term& state) {
  BatchSaid* said = batch();
  if (said == nullptr) return;
  if (state.kind == TermKind::trimmed) {
    said->batch.trimmed = state.as<Trimmed>();
  } else if (state.kind == TermKind::all_trimmed) {
    said->batch.trimmed = Trimmed::yes;
  } else if (state.kind == TermKind::foot_state &&
             state.as<FootState>() != FootState::nothing_found) {
    refuse(not_understood("the feet that were lifted are said, not those that were not",
                          "say: \"{just} {the backs}\""),
           state);
  } else {
    said->batch.nothing_found = true;
  }
}

void LineBuilder::say_counted_twice(const Term&) {
  if (BatchSaid* said = batch()) said->counted_twice = true;
}

void LineBuilder::add_batch_feet(const Term& feet) {
  if (BatchSaid* said = batch()) said->batch.lifted.add(feet_in(feet));
}

void LineBuilder::put_apart(CowSaid cow, std::string called, const Term& from) {
  BatchSaid* said = batch();
  if (said == nullptr) return;
  said->batch.apart.push_back(std::move(called));
  add(CowNamed{std::move(cow)}, from);
}

/// "Bar 2" could be two of them or the cow 2.
void LineBuilder::add_apart_number(const Term& number) {
  const BatchSaid* said = batch();
  const std::string digits(digits_of(number));
  check_cow_number(number);
  const std::optional<std::int32_t> count = count_in(digits);
  if (said != nullptr && count && *count <= said->batch.counted) {
    refuse(not_understood("it is unclear whether that is the cow " + digits + " or so many",
                          "count only the others, and call her on a line of her own"),
           number);
    return;
  }
  CowSaid cow;
  cow.number = digits;
  put_apart(std::move(cow), digits, number);
}

/// The value of the term tells how long the article is in front of what she looks like.
void LineBuilder::add_apart_looks(const Term& text) {
  CowSaid cow;
  cow.known = CowKnown::unnumbered;
  cow.looks = words_in(text).substr(static_cast<std::size_t>(text.value));
  std::string called = cow.looks;
  put_apart(std::move(cow), std::move(called), text);
}

void LineBuilder::settle_batch(const Term&) {
  const BatchSaid* said = batch();
  if (said == nullptr || said->mends || said->counted_twice || !faults_.empty()) return;
  const Batch& batch = said->batch;
  if (!batch.nothing_found && batch.trimmed == Trimmed::not_called) {
    refuse(not_understood("the line ends too early; still needed: what became of them: "
                          "{all good} or {all trimmed}"),
           clauses_.front().from);
  }
  if (batch.together() < 1) {
    refuse(not_understood("as many are apart as were counted", "say the count again"),
           clauses_.front().from);
  }
}

}  // namespace evenclaw
