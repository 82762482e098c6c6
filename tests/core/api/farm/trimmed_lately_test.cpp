#include "core/api/farm/trimmed_lately.hpp"

#include <doctest/doctest.h>

#include "core/api/identities.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

TEST_CASE("days count from her last turn within the week in which a foot was lifted") {
  Workplace work;
  work.visited("2026-10-01", {"411", "nothing found"});
  work.visited("2026-10-20", {"412", "nothing found"});
  work.visited("2026-10-25", {"412", "nothing found", "413 not done, ran out of time", "done"});
  const HerdId herd = work.herd().herd;
  const auto trimmed = TrimmedLately::open(work.store, herd, day("2026-10-27")).value();
  const auto days = [&](std::string_view number) {
    return trimmed.days_before(find_cow(work.store, herd, number, day("2026-10-27")).value());
  };
  CHECK(days("412") == 2);
  CHECK_FALSE(days("411").has_value());
  const auto at_the_edge = TrimmedLately::open(work.store, herd, day("2026-11-01")).value();
  CHECK(at_the_edge.days_before(find_cow(work.store, herd, "412", day("2026-11-01")).value()) == 7);
}

}  // namespace evenclaw::test
