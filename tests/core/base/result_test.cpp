#include "core/base/result.hpp"

#include <doctest/doctest.h>

#include <memory>
#include <string>
#include <vector>

namespace evenclaw {

namespace {

Result<int> cow_number(bool is_readable) {
  if (is_readable) return 412;
  return Fault{"cow-not-found", "no such cow"};
}

}  // namespace

TEST_CASE("a result that worked gives its value") {
  const Result<int> result = cow_number(true);
  REQUIRE(result.ok());
  CHECK(static_cast<bool>(result));
  CHECK(*result == 412);
  CHECK(result.value() == 412);
}

TEST_CASE("a result that failed gives its fault") {
  const Result<int> result = cow_number(false);
  REQUIRE_FALSE(result.ok());
  CHECK_FALSE(static_cast<bool>(result));
  CHECK(result.faults() == Faults{Fault{"cow-not-found", "no such cow"}});
}

TEST_CASE("all faults are kept in order") {
  const Result<int> result = Faults{{"date-unreadable", "first"}, {"herd-not-found", "second"}};
  REQUIRE(result.faults().size() == 2);
  CHECK(result.faults()[0].message == "first");
  CHECK(result.faults()[1].message == "second");
}

TEST_CASE("a value that can only be moved is moved out") {
  Result<std::unique_ptr<int>> result = std::make_unique<int>(7);
  const std::unique_ptr<int> taken = *std::move(result);
  REQUIRE(taken != nullptr);
  CHECK(*taken == 7);
}

TEST_CASE("a loop over the value of a result nobody named stands on living ground") {
  const auto feet = [] {
    return Result<std::vector<std::string>>(std::vector<std::string>{"LH", "RH"});
  };
  std::string heard;
  for (const std::string& foot : feet().value()) heard += foot;
  CHECK(heard == "LHRH");
}

TEST_CASE("a value can be changed in place") {
  Result<std::string> result = std::string("LH");
  result->append(" RH");
  *result += "!";
  CHECK(result.value() == "LH RH!");
}

TEST_CASE("an act that only works or fails tells that") {
  const Outcome worked = Done{};
  const Outcome failed = Fault{"disk-full", "no room"};
  CHECK(worked.ok());
  CHECK_FALSE(failed.ok());
}

}  // namespace evenclaw
