// What is written when a cow is let out.
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/core/api/workplace.hpp"

using namespace evenclaw;
using evenclaw::test::Workplace;

namespace {

int turns_in(Store& store) {
  int count = 0;
  REQUIRE(store
              .read_everything([&count](const Entry& entry) {
                count += entry.envelope.kind == TurnRecorded::kind ? 1 : 0;
                return true;
              })
              .ok());
  return count;
}

}  // namespace

TEST_CASE("a cow called twice in a file is not written once more when the file is given again") {
  const std::vector<std::string> lines = {"412 HHE slight; all four block off; block gone",
                                          "413 nothing found", "412 not lame"};
  Workplace workplace;
  const Visit visit = workplace.start();
  int once = 0;
  for (const bool again : {false, true}) {
    Recording recording = workplace.record(visit);
    REQUIRE(recording.say_all(lines).ok());
    REQUIRE(recording.end_of_input().ok());
    if (!again) once = turns_in(workplace.store);
  }
  CHECK(once == 3);
  CHECK(turns_in(workplace.store) == once);
}
