#include "core/sheets/advice.hpp"

#include <doctest/doctest.h>

#include <variant>

#include "tests/core/sheets/invented_day.hpp"
#include "tests/core/sheets/sheet_text.hpp"

namespace evenclaw {

namespace {

std::string care_on(const VisitSheetInput& input) {
  return text_of(cautions(view_of(input, english_wording())));
}

}  // namespace

TEST_CASE("only what this day gives cause for is said") {
  const std::string care = care_on(day_with_nothing_found());
  CHECK(care.find("wrap") == std::string::npos);
  CHECK(care.find("block") == std::string::npos);
  const std::string three = care_on(three_cow_day());
  CHECK(three.find("wrap") != std::string::npos);
  CHECK(three.find("block") != std::string::npos);
  CHECK(three.find("lame cow") != std::string::npos);
}

TEST_CASE("every caution has its status") {
  const std::vector<Block> blocks = cautions(view_of(three_cow_day(), english_wording()));
  const Bullets& bullets = std::get<Bullets>(blocks.at(1));
  for (const Runs& item : bullets.items) {
    REQUIRE(item.size() == 2);
    CHECK(item[1].emphasis == Emphasis::quiet);
    CHECK_FALSE(item[1].text.empty());
  }
}

TEST_CASE("medicines are the vet's on every sheet") {
  for (const auto& input : {three_cow_day(), day_with_nothing_found(), day_with_doubts()}) {
    CHECK(care_on(input).find("surgery: the vet decides; local law says who may do what.") !=
          std::string::npos);
  }
}

TEST_CASE("when to ring the vet is always said, with its status") {
  const std::string ring =
      text_of(when_to_ring(view_of(day_with_nothing_found(), english_wording())));
  CHECK(ring.find("Ring the vet the same day") != std::string::npos);
  CHECK(ring.find("Common practice, no source.") != std::string::npos);
}

TEST_CASE("whom to ring stands above when, and a line to write on where nobody is settled") {
  VisitSheetInput input = three_cow_day();
  const auto ring = [&] { return text_of(when_to_ring(view_of(input, english_wording()))); };
  CHECK(holds(ring(), "Name and telephone ____"));
  input.whom_to_ring = "Anna, 01234 567890";
  CHECK(holds(ring(), "Anna, 01234 567890"));
  CHECK_FALSE(holds(ring(), "Name and telephone"));
}

}  // namespace evenclaw
