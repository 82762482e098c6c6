#include "core/paper/hatching.hpp"

#include <doctest/doctest.h>

#include <cmath>

namespace evenclaw {

TEST_CASE("Hatching keeps inside of its area and runs at 45 degrees") {
  const Area area{10, 20, 17, 43};
  for (const Hatch hatch : {Hatch::rising, Hatch::falling, Hatch::crossed}) {
    const auto paths = hatched(area, hatch);
    REQUIRE(paths.size() == 2);
    const auto& steps = paths[1].steps;
    REQUIRE(steps.size() % 2 == 0);
    for (const PathStep& step : steps) {
      CHECK(step.to.x >= area.left - 1e-9);
      CHECK(step.to.x <= area.right + 1e-9);
      CHECK(step.to.y >= area.top - 1e-9);
      CHECK(step.to.y <= area.bottom + 1e-9);
    }
    for (std::size_t i = 0; i < steps.size(); i += 2) {
      const double across = steps[i + 1].to.x - steps[i].to.x;
      const double down = steps[i + 1].to.y - steps[i].to.y;
      CHECK(std::abs(across) == doctest::Approx(std::abs(down)));
    }
  }
}

TEST_CASE("Rising lines rise to the right, falling ones fall") {
  const auto down = [](Hatch hatch) {
    const auto steps = hatched({0, 0, 10, 10}, hatch)[1].steps;
    return (steps[1].to.y - steps[0].to.y) * (steps[1].to.x - steps[0].to.x);
  };
  CHECK(down(Hatch::rising) < 0);
  CHECK(down(Hatch::falling) > 0);
}

TEST_CASE("An open area is its outline, a filled one is black, one without extent nothing") {
  CHECK(hatched({0, 0, 1, 1}, Hatch::open).size() == 1);
  CHECK(hatched({0, 0, 1, 1}, Hatch::filled)[0].fill == Ink::black);
  CHECK(hatched({0, 0, 1, 0}, Hatch::crossed).empty());
}

}  // namespace evenclaw
