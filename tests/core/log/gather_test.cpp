#include "core/log/gather.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "core/log/visit_facts.hpp"
#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

std::vector<Entry> every_version(const Farm& farm, const std::set<EntryId>& ids) {
  std::vector<Entry> found;
  for (const Entry& entry : farm.entries()) {
    if (ids.count(entry.envelope.id) > 0) found.push_back(entry);
  }
  return found;
}

EntryLookup lookup_in(const Farm& farm) {
  return {[&farm](const Uuid& subject, const std::vector<std::string>& kinds) {
            std::set<EntryId> ids;
            for (const Entry& entry : farm.entries()) {
              const bool kind_fits = kinds.empty() || std::find(kinds.begin(), kinds.end(),
                                                                entry.envelope.kind) != kinds.end();
              if (kind_fits && names_subject(entry, subject)) ids.insert(entry.envelope.id);
            }
            return Result<std::vector<Entry>>(every_version(farm, ids));
          },
          [&farm](EntryId id) { return Result<std::vector<Entry>>(every_version(farm, {id})); }};
}

bool holds(const Result<std::vector<Entry>>& entries, EntryId id) {
  return std::any_of(entries->begin(), entries->end(),
                     [&](const Entry& entry) { return entry.envelope.id == id; });
}

std::vector<CowId> cows_touched_by_last(const Farm& farm) {
  return touched_by_arrival(lookup_in(farm), std::vector<Entry>{farm.last()})->cows;
}

bool names(const std::vector<CowId>& cows, CowId cow) {
  return std::find(cows.begin(), cows.end(), cow) != cows.end();
}

EntryId tell_wrap_off(Farm& farm, CowId cow) {
  TaskClosedBody news;
  news.cow = cow;
  news.day = day("2026-11-27");
  news.news = News::wrap_off;
  return farm.write(news);
}

}  // namespace

TEST_CASE("a cow's picture needs the opening of her visit and what corrects her turn elsewhere") {
  Farm farm;
  const EntryId wrong = farm.turn(cow_412, "2026-11-24", {});
  const EntryId opening = farm.entries().front().envelope.id;
  const EntryId one = farm.correct(farm.entry(wrong), farm.turn_body(cow_421, "2026-11-24", {}));
  const EntryId other =
      farm.correct(farm.entry(wrong), farm.turn_body(cow_named("77"), "2026-11-24", {}));
  const auto entries = entries_for_cow(lookup_in(farm), std::vector{cow_421});
  for (const EntryId id : {opening, wrong, one, other}) CHECK(holds(entries, id));
}

TEST_CASE(
    "what was told of a cow as which a turn counted belongs to the picture of the right one") {
  Farm farm;
  const EntryId wrong = farm.turn(cow_412, "2026-11-24", {});
  const EntryId news = tell_wrap_off(farm, cow_412);
  const EntryId of_another = tell_wrap_off(farm, cow_named("77"));
  farm.correct(farm.entry(wrong), farm.turn_body(cow_421, "2026-11-24", {}));
  const auto entries = entries_for_cow(lookup_in(farm), std::vector{cow_421});
  CHECK(holds(entries, news));
  CHECK_FALSE(holds(entries, of_another));
}

TEST_CASE("news under the wrong number that comes after the correction touches the right cow") {
  Farm farm;
  const EntryId wrong = farm.turn(cow_412, "2026-11-24", {});
  farm.correct(farm.entry(wrong), farm.turn_body(cow_421, "2026-11-24", {}));
  tell_wrap_off(farm, cow_412);
  CHECK(names(cows_touched_by_last(farm), cow_421));
  CHECK(names(cows_touched_by_last(farm), cow_412));
}

TEST_CASE("a second version of an entry touches what the first one named") {
  Farm farm;
  farm.turn(cow_412, "2026-11-24", {});
  Envelope envelope = farm.last().envelope;
  envelope.subjects = {};
  const TurnRecorded other = farm.turn_body(cow_421, "2026-11-24", {});
  farm.keep(entry_of(envelope, other));
  CHECK(names(cows_touched_by_last(farm), cow_421));
  CHECK(names(cows_touched_by_last(farm), cow_412));
}

TEST_CASE("the opening of a visit touches every cow seen in it") {
  Farm farm;
  farm.turn(cow_412, "2026-11-24", {});
  farm.turn(cow_421, "2026-11-24", {});
  farm.write(VisitCorrected{farm.visit("2026-11-24"), day("2026-11-23"), std::nullopt});
  CHECK(names(cows_touched_by_last(farm), cow_412));
  CHECK(names(cows_touched_by_last(farm), cow_421));
}

TEST_CASE(
    "the day of a visit touches the right cow of a turn corrected since, whose task was told off "
    "under the wrong number") {
  Farm farm;
  const EntryId wrong = farm.turn(cow_412, "2026-11-24", {});
  farm.correct(farm.entry(wrong), farm.turn_body(cow_421, "2026-11-24", {}));
  farm.turn(cow_412, "2026-11-27", {});
  farm.write(VisitCorrected{farm.visit("2026-11-27"), day("2026-11-26"), std::nullopt});
  CHECK(names(cows_touched_by_last(farm), cow_412));
  CHECK(names(cows_touched_by_last(farm), cow_421));
}

TEST_CASE("so does the day of a visit touch a cow whom another version of a turn names") {
  Farm farm;
  farm.turn(cow_412, "2026-11-24", {});
  Envelope envelope = farm.last().envelope;
  envelope.subjects.push_back(cow_421.value);
  farm.keep(entry_of(envelope, farm.turn_body(cow_421, "2026-11-24", {})));
  farm.turn(cow_412, "2026-11-27", {});
  farm.write(VisitCorrected{farm.visit("2026-11-27"), day("2026-11-26"), std::nullopt});
  CHECK(names(cows_touched_by_last(farm), cow_421));
}

}  // namespace evenclaw
