#include "core/api/careful.hpp"

#include <doctest/doctest.h>

#include "core/api/due.hpp"
#include "core/api/identities.hpp"
#include "core/api/show.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

using Lines = std::vector<std::string>;

Lines told(Store& store, std::optional<HerdId> herd) {
  Lines lines;
  const auto all = careful_with(store, herd);
  for (const CarefulWith& cow : all.value()) {
    lines.push_back(cow.herd_name + ' ' + cow.cow_said + ": " + cow.words + ' ' +
                    to_text(cow.last_said));
  }
  return lines;
}

}  // namespace

TEST_CASE("cows to be careful with are listed by number, with the day it was said last") {
  Workplace place;
  (void)place.visited("2026-10-13", {"1412 kicks; nothing found", "77 needs the hoist",
                                     "nothing found", "78 jumps; nothing found", "done"});
  (void)place.visited("2026-10-20", {"78 no longer jumps; nothing found", "done"});
  CHECK(told(place.store, place.herd().herd) ==
        Lines{"Thornby Hollow 77: needs the hoist 2026-10-13",
              "Thornby Hollow 1412: kicks 2026-10-13"});
  CHECK(told(place.store, std::nullopt).size() == 2);
}

TEST_CASE("a cow that is gone needs no warning") {
  Workplace place;
  (void)place.visited("2026-10-13", {"77 kicks; nothing found", "done"});
  (void)place.visited("2026-10-20", {"77 gone"});
  CHECK(told(place.store, place.herd().herd).empty());
}

TEST_CASE("the list of what is due tells of her though nothing of hers is due") {
  Workplace place;
  (void)place.visited("2026-10-13", {"77 kicks; nothing found", "done"});
  const DueList list = list_due(place.store, place.herd().herd, day("2026-10-27")).value();
  CHECK(list.tasks.empty());
  REQUIRE(list.careful.size() == 1);
  CHECK(list.careful.front().words == "kicks");
}

TEST_CASE("how she is handled is told with the day, and nothing is told of a quiet cow") {
  Workplace place;
  (void)place.visited("2026-10-13", {"77 kicks; nothing found", "78 nothing found", "done"});
  const HerdId herd = place.herd().herd;
  const CowShown kicker = show_cow(place.store, herd, "77", day("2026-10-27")).value();
  CHECK(told_of_handling(kicker.handling, day("2026-10-27")) == "kicks (Tue 13 Oct)");
  const CowShown quiet = show_cow(place.store, herd, "78", day("2026-10-27")).value();
  CHECK(told_of_handling(quiet.handling, day("2026-10-27")).empty());
}

}  // namespace evenclaw::test
