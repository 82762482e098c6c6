#include "core/api/herds.hpp"

#include <doctest/doctest.h>

#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

template <class T>
std::string slug_of(const Result<T>& answer) {
  return answer ? "" : answer.faults().front().slug;
}

struct Farms {
  Workplace place;

  Farms() {
    for (const char* name : {"Hill Farm", "Hillcrest", "Brook Farm"}) {
      (void)register_herd(place.ports(), name).value();
    }
  }

  [[nodiscard]] std::string found(std::string_view name) {
    const auto herd = find_herd(place.store, name);
    return herd ? herd->name : herd.faults().front().slug;
  }
};

}  // namespace

TEST_CASE("a herd is found by its name or by a beginning that only one has") {
  Farms farms;
  CHECK(farms.found("hill farm") == "Hill Farm");
  CHECK(farms.found("br") == "Brook Farm");
  CHECK(farms.found("Hill") == "herd-ambiguous");
  CHECK(farms.found("") == "herd-not-found");
}

TEST_CASE("a herd nobody knows is told with the nearest name") {
  Farms farms;
  const auto herd = find_herd(farms.place.store, "Brok Farm");
  REQUIRE_FALSE(herd.ok());
  CHECK(herd.faults().front().remedy == "Did you mean Brook Farm?");
}

TEST_CASE("a new herd with the name of a known one is refused, one a slip away is asked about") {
  Farms farms;
  CHECK(slug_of(register_herd(farms.place.ports(), "BROOK farm")) == "usage");
  CHECK(slug_of(register_herd(farms.place.ports(), "Brok Farm")) == "answer-needed");
  CHECK(slug_of(register_herd(farms.place.ports(), "Brok Farm", true)).empty());
  CHECK(slug_of(register_herd(farms.place.ports(), " ")) == "usage");
}

TEST_CASE("the list of herds counts the cows that are there and what is open") {
  Workplace place;
  (void)place.visited("2026-10-13", {"412 LH DD raw behind; wrap on, off 5d", "RH nothing found",
                                     "413 nothing found", "done"});
  (void)place.visited("2026-10-14", {"413 gone"});
  (void)place.start("2026-10-20");
  const auto lines = list_herds(place.store, day("2026-10-27")).value();
  REQUIRE(lines.size() == 1);
  CHECK(lines[0].cows == 1);
  CHECK(lines[0].last_visit == day("2026-10-20"));
  CHECK(lines[0].open_visit == day("2026-10-20"));
  CHECK(lines[0].overdue >= 1);
}

}  // namespace evenclaw::test
