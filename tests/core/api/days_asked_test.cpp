#include "core/api/days_asked.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "core/api/tasks.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

/// The wrap of 412, put on on 20 October, as the list of what is due tells it.
DueTask wrap_off(Workplace& place) {
  const auto tasks =
      open_tasks_of(place.store, place.herd().herd, "412", day("2026-10-21")).value();
  const auto wrap = std::find_if(tasks.begin(), tasks.end(), [](const DueTask& task) {
    return task.kind == TaskKind::wrap_off;
  });
  REQUIRE(wrap != tasks.end());
  return *wrap;
}

/// "rest fine" answers no question; "go ahead" does.
void wrapped_for(Workplace& place, const char* days, const char* then) {
  const std::string call = std::string("412 LH DD raw behind; wrap on, off ") + days;
  (void)place.visited("2026-10-20", {call.c_str(), then, "done"});
}

}  // namespace

TEST_CASE("a wrap whose day was asked about stands by its last good day until somebody answers") {
  Workplace place;
  wrapped_for(place, "30d", "rest fine");
  CHECK(wrap_off(place).due == day("2026-10-27"));
  CHECK(wrap_off(place).words ==
        "wrap off left hind (Thu 19 Nov was said, and nobody answered whether that is meant)");
}

TEST_CASE("a wrap whose day was asked about and answered for stands as it was said") {
  Workplace place;
  wrapped_for(place, "30d", "go ahead");
  CHECK(wrap_off(place).due == day("2026-11-19"));
  CHECK(wrap_off(place).words == "wrap off left hind");
}

TEST_CASE("a wrap whose day nobody asked about stands as it was said") {
  Workplace place;
  wrapped_for(place, "4d", "rest fine");
  CHECK(wrap_off(place).due == day("2026-10-24"));
  CHECK(wrap_off(place).words == "wrap off left hind");
}

TEST_CASE("whoever moves a task by hand has answered for its day") {
  Workplace place;
  wrapped_for(place, "30d", "rest fine");
  const DueTask asked = wrap_off(place);
  REQUIRE(move_task(place.ports(), asked.herd, asked.task, day("2026-10-29"), "farm said").ok());
  CHECK(wrap_off(place).due == day("2026-10-29"));
  CHECK(wrap_off(place).words == "wrap off left hind");
}

}  // namespace evenclaw::test
