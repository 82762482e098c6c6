#include "core/api/due.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/api/cow_register.hpp"
#include "core/api/identities.hpp"
#include "core/api/tasks.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

/// 412, who calved on 1 September 2026 and is dried off on 20 June 2027; 413 of whom nothing is
/// told. Both were trimmed on 20 July 2026, before that calving.
struct TwoCows {
  Workplace place;
  HerdId herd;

  TwoCows() : herd(place.herd().herd) {
    place.clock.set(day("2026-11-10"));
    (void)place.visited("2026-07-20", {"412 nothing found", "413 nothing found", "done"});
    CowDetails details;
    details.calved = day("2026-09-01");
    details.lactation = 3;
    details.dry_off = day("2027-06-20");
    REQUIRE(tell_of_cow(place.ports(), herd, {cow("412"), day("2026-10-01"), details}, false).ok());
  }

  CowId cow(std::string_view number) {
    return find_cow(place.store, herd, number, day("2026-10-01")).value();
  }

  /// "412 overdue routine trim due: ..." of every task that is listed.
  std::vector<std::string> listed(std::string_view on) {
    std::vector<std::string> lines;
    for (const DueTask& task : list_due(place.store, herd, day(on)).value().tasks) {
      lines.push_back(task.cow_said + ' ' + std::string(word_of(task.state)) + ' ' + task.words);
    }
    return lines;
  }
};

using Lines = std::vector<std::string>;

}  // namespace

TEST_CASE("a routine trim is due from her calving on, and of a cow nobody told of none is") {
  TwoCows cows;
  CHECK(cows.listed("2026-10-30").empty());
  CHECK(cows.listed("2026-10-31") == Lines{"412 due routine trim due: 60 to 150 days in milk"});
  CHECK(cows.listed("2027-01-30") == Lines{"412 overdue routine trim due: 60 to 150 days in milk"});
}

TEST_CASE("a routine trim tells its source, whose it is, and counts as due") {
  TwoCows cows;
  const DueList list = list_due(cows.place.store, cows.herd, day("2027-02-01")).value();
  REQUIRE(list.tasks.size() == 1);
  const DueTask& task = list.tasks.front();
  CHECK(task.kind == TaskKind::routine_trim);
  CHECK(task.owner == Owner::trimmer);
  CHECK(task.source == "agproud.com 28241 and a manual of Merck");
  CHECK(task.earliest == day("2026-10-31"));
  CHECK(task.due == day("2027-01-29"));
  CHECK(task.days_late == 3);
  CHECK(list.overdue == 1);
  CHECK(task.herd_name == cows.place.herd().name);
}

TEST_CASE("a trim in the window closes it until the next window, one foot lifted does not") {
  TwoCows cows;
  (void)cows.place.visited("2026-11-03", {"412 routine", "LF injury", "done"});
  CHECK(cows.listed("2026-11-04") == Lines{"412 due routine trim due: 60 to 150 days in milk"});
  (void)cows.place.visited("2026-11-05", {"412 nothing found", "done"});
  CHECK(cows.listed("2027-02-01").empty());
  CHECK(cows.listed("2027-05-21") == Lines{"412 due routine trim due: before drying off"});
}

TEST_CASE("a trim that was not done leaves it due") {
  TwoCows cows;
  (void)cows.place.visited("2026-11-03", {"412 not done, ran out of time", "done"});
  CHECK(cows.listed("2026-11-04") == Lines{"412 due routine trim due: 60 to 150 days in milk"});
}

TEST_CASE("of a cow that left nothing is due") {
  TwoCows cows;
  REQUIRE(cow_left(cows.place.ports(), cows.herd, cows.cow("412"), day("2026-10-27"), "sold"));
  CHECK(cows.listed("2026-11-04").empty());
}

TEST_CASE("a withdrawal of a cow who was sold stays due until it is over, of one who died not") {
  const struct {
    const char* why;
    Lines lines;
  } rows[] = {{"sold", {"412 due last day meat held back: Fri 6 Nov; left the herd Tue 3 Nov"}},
              {"died", {}}};

  for (const auto& row : rows) {
    TwoCows cows;
    (void)cows.place.visited("2026-11-01", {"412 nothing found; injected; meat 5d", "done"});
    REQUIRE(cow_left(cows.place.ports(), cows.herd, cows.cow("412"), day("2026-11-03"), row.why));
    CHECK_MESSAGE(cows.listed("2026-11-06") == row.lines, row.why);
    CHECK(cows.listed("2026-11-07").empty());
  }
}

TEST_CASE("a routine trim is the same task each time it is asked for, and no hand closes it") {
  TwoCows cows;
  const auto task_on = [&](std::string_view on) {
    return list_due(cows.place.store, cows.herd, day(on)).value().tasks.at(0).task;
  };
  CHECK(task_on("2026-11-01") == task_on("2026-12-01"));
  CHECK(open_tasks_of(cows.place.store, cows.herd, "412", day("2026-11-01")).value().empty());
  const auto closed = close_task(cows.place.ports(), cows.herd, task_on("2026-11-01"), "done");
  REQUIRE_FALSE(closed);
  CHECK(closed.faults().front().slug == "usage");
}

TEST_CASE("what was called tells the source of its rule") {
  Workplace place;
  (void)place.visited("2026-10-27", {"412 LH DD raw behind; wrap on", "done"});
  const DueList list = list_due(place.store, place.herd().herd, day("2026-10-28")).value();
  CHECK_FALSE(list.tasks.empty());
  for (const DueTask& task : list.tasks) CHECK_FALSE(task.source.empty());
}

}  // namespace evenclaw::test
