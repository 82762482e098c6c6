#include "core/api/redaction.hpp"

#include <doctest/doctest.h>

#include "core/api/due.hpp"
#include "core/api/identities.hpp"
#include "core/log/bodies.hpp"
#include "core/trade/cow_rows.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

/// In the order of the log; of one subject when one is given.
std::vector<EntryId> entries_of(Workplace& place, const std::vector<std::string>& kinds,
                                std::optional<Uuid> subject = {}) {
  std::vector<EntryId> found;
  (void)place.store.read_entries({place.herd().herd.value, subject, kinds},
                                 [&](const Entry& entry) {
                                   found.push_back(entry.envelope.id);
                                   return true;
                                 });
  return found;
}

std::vector<EntryId> turns_of(Workplace& place) {
  return entries_of(place, {std::string(TurnRecorded::kind)});
}

std::vector<EntryId> turns_of(Workplace& place, std::string_view cow) {
  const CowId hers = find_cow(place.store, place.herd().herd, cow, day("2026-10-27")).value();
  return entries_of(place, {std::string(TurnRecorded::kind)}, hers.value);
}

std::vector<std::string> open_tasks(Workplace& place) {
  std::vector<std::string> tasks;
  for (const DueTask& task :
       list_due(place.store, place.herd().herd, day("2026-10-27")).value().tasks) {
    tasks.push_back(task.cow_said + " " + task.words);
  }
  return tasks;
}

}  // namespace

TEST_CASE("a record with open tasks is taken away only when that is sure, and they are told") {
  Workplace place;
  (void)place.visited("2026-10-27",
                      {"412 lame LH", "LH outside sole ulcer middle, bad; block on inside",
                       "rest fine", "413 nothing found", "done"});
  const auto turn_of = [&](std::string_view cow) { return turns_of(place, cow).back(); };
  REQUIRE(open_tasks(place).size() == 3);

  const auto nothing_open = redact_entry(place.ports(), turn_of("413"), "a slip", false);
  REQUIRE(nothing_open);
  CHECK(nothing_open->tasks_lost.empty());
  const auto unsure = redact_entry(place.ports(), turn_of("412"), "a slip", false);
  REQUIRE_FALSE(unsure);
  CHECK(unsure.faults().front().slug == "answer-needed");
  CHECK(unsure.faults().front().message.find(
            "412: block off left hind, inside claw (trimmer, by 2026-12-01)") != std::string::npos);
  CHECK(open_tasks(place).size() == 3);

  const auto sure = redact_entry(place.ports(), turn_of("412"), "a slip", true);
  REQUIRE(sure);
  REQUIRE(sure->tasks_lost.size() == 3);
  CHECK(sure->tasks_lost.front().cow_said == "412");
  CHECK(open_tasks(place).size() == 0);
}

TEST_CASE("what a correction says again is not lost with the record it corrects") {
  Workplace place;
  (void)place.visited("2026-10-27",
                      {"412 lame LH", "LH outside sole ulcer middle, bad; block on inside",
                       "rest fine", "done", "no, 421", "done"});
  const std::vector<EntryId> turns = turns_of(place);
  REQUIRE(turns.size() == 2);
  const auto first = redact_entry(place.ports(), turns.front(), "a slip", false);
  REQUIRE(first);
  CHECK(first->tasks_lost.empty());
}

TEST_CASE("who takes a record away that was corrected is told which entry still holds it") {
  Workplace place;
  const Visit visit = place.start("2026-10-24");
  Recording recording = place.record(visit);
  (void)recording.say_all(std::vector<std::string>{"412 LH DD raw behind; wrap on", "done"})
      .value();
  const HerdId herd = place.herd().herd;
  const EntryId saved = select_as<TurnRow>(place.store, herd).value().at(0).turn;
  (void)correct_visit_day(place.ports(), visit, {day("2026-10-27"), true}).value();
  const EntryId now = select_as<TurnRow>(place.store, herd).value().at(0).turn;
  REQUIRE(now != saved);
  const Redacted first = redact_entry(place.ports(), saved, "not hers", true).value();
  CHECK(first.still_told_by == std::vector<EntryId>{now});
  CHECK(redact_entry(place.ports(), now, "not hers", true).value().still_told_by.empty());
  CHECK(select_as<TurnRow>(place.store, herd).value().empty());
}

TEST_CASE("what a record closed is open again without it, and that is told before") {
  Workplace place;
  (void)place.visited("2026-10-20",
                      {"412 LH DD chronic behind; wrap on, off 3d", "rest fine", "done"});
  (void)place.visited("2026-10-27",
                      {"412 recheck; LH wrap taken off; nothing found", "rest fine", "done"});
  REQUIRE(open_tasks(place).empty());
  const EntryId turn = turns_of(place, "412").back();

  const auto unsure = redact_entry(place.ports(), turn, "another herd's cow", false);
  REQUIRE_FALSE(unsure);
  CHECK(unsure.faults().front().slug == "answer-needed");
  CHECK(unsure.faults().front().message ==
        "What it closed is open again: 412: wrap off left hind (farmer, by 2026-10-23).");

  const Redacted sure = redact_entry(place.ports(), turn, "another herd's cow", true).value();
  CHECK(sure.tasks_lost.empty());
  REQUIRE(sure.tasks_back.size() == 1);
  CHECK(sure.tasks_back.front().words == "wrap off left hind");
  CHECK(open_tasks(place) == std::vector<std::string>{"412 wrap off left hind"});
}

TEST_CASE("contents that were taken away before are not taken away again, nor is a removal") {
  Workplace place;
  (void)place.visited("2026-10-27", {"412 nothing found", "done"});
  const EntryId turn = turns_of(place).back();
  const EntryId removal = redact_entry(place.ports(), turn, "a slip", false).value().entry;
  const auto slug_of = [&](EntryId target) {
    const auto again = redact_entry(place.ports(), target, "a slip", true);
    return again ? std::string() : again.faults().front().slug;
  };
  CHECK(slug_of(turn) == "nothing-to-do");
  CHECK(slug_of(removal) == "usage");
  CHECK(entries_of(place, {std::string(Redact::kind)}).size() == 1);
}

}  // namespace evenclaw::test
