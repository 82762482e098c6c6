#include "core/log/visit_facts.hpp"

#include <doctest/doctest.h>

#include <string_view>
#include <utility>
#include <vector>

#include "core/log/body.hpp"

namespace evenclaw {

namespace {

const VisitId visit{uuid_derived("visit")};
const Day the_day{20'754};

Envelope envelope_of(std::int64_t order, std::string_view device) {
  Envelope envelope;
  envelope.scope = uuid_derived("herd");
  envelope.id = EntryId{uuid_derived("entry " + std::to_string(order))};
  envelope.device = DeviceId{uuid_derived(device)};
  envelope.seq = order;
  envelope.order = order;
  return envelope;
}

Entry opened(std::int64_t order, std::string_view device = "tablet", FootSet feet = hind_feet) {
  return entry_of(envelope_of(order, device), VisitOpened{visit, the_day, 1, feet});
}

Entry corrected(std::int64_t order, std::optional<Day> to, std::optional<FootSet> feet = {}) {
  return entry_of(envelope_of(order, "tablet"), VisitCorrected{visit, to, feet});
}

/// Nothing known of the visit is a visit without a day.
VisitFacts told_by(const std::vector<Entry>& entries) {
  std::vector<const Entry*> counting;
  for (const Entry& entry : entries) counting.push_back(&entry);
  const auto all = facts_of_visits(counting, {visit});
  const auto found = all.find(visit);
  return found == all.end() ? VisitFacts{} : found->second;
}

}  // namespace

TEST_CASE("the first opening in the order counts, and a second on another tablet is told") {
  const VisitFacts one = told_by({opened(1), opened(2, "tablet", four_feet)});
  CHECK(one.opened.todays_feet == hind_feet);
  CHECK_FALSE(one.opened_twice);
  const VisitFacts two = told_by({opened(1), opened(2, "phone", four_feet)});
  CHECK(two.opened.todays_feet == hind_feet);
  CHECK(two.opened_twice);
}

TEST_CASE(
    "a correction of the day leaves a correction of the feet as it was, and the last counts") {
  const VisitFacts facts = told_by({opened(1), corrected(2, std::nullopt, four_feet),
                                    corrected(3, the_day + 1), corrected(4, the_day + 2)});
  CHECK(facts.day() == the_day + 2);
  CHECK(facts.corrected_feet == four_feet);
  CHECK(facts.opened.day == the_day);
}

TEST_CASE("a visit whose opening never came has the day it was corrected to, or none") {
  CHECK(told_by({corrected(1, the_day)}).day() == the_day);
  CHECK_FALSE(told_by({corrected(1, std::nullopt, four_feet)}).day());
  CHECK_FALSE(told_by({}).day());
}

TEST_CASE("what an entry says of a visit that it does not name among its subjects is passed over") {
  Entry entry = opened(1);
  entry.envelope.subjects.clear();
  CHECK(told_by({entry}).opening == nullptr);
}

}  // namespace evenclaw
