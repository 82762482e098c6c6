#include "demo/story_device.hpp"

#include <doctest/doctest.h>

namespace evenclaw::demo {

TEST_CASE("a day of a story begins at eight and goes on by itself") {
  StoryClock clock;
  clock.begin(*day_from_text("2026-05-04"));
  const Instant first = clock.now();
  CHECK(to_text(first).substr(0, 14) == "2026-05-04T08:");
  CHECK(clock.now().ms > first.ms);
}

TEST_CASE("ids grow, come again in every telling, and are others for another farm") {
  const Day day = *day_from_text("2026-05-04");
  StoryIds ids(1, 4, day);
  StoryIds again(1, 4, day);
  StoryIds other(1, 5, day);
  const Uuid first = ids.next();
  CHECK(first == again.next());
  CHECK(first != other.next());
  CHECK(ids.next() > first);
}

}  // namespace evenclaw::demo
