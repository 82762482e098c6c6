#include "core/api/recording/time_said_anew.hpp"

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

constexpr Day wednesday{20782};  // 2026-11-25

std::string anew(const char* before, const char* now) {
  return saying::joined(
      times_said_anew(saying::turn_of({before}), saying::turn_of({now}), wednesday, english()));
}

}  // namespace

TEST_CASE("a time that was said anew is told with the day before, and a day alike is not") {
  CHECK(anew("410 LH DD; wrap 3d", "410 LH DD; wrap 5d") ==
        "wrap on, left hind: by Mon 30 Nov now, not Sat 28 Nov");
  CHECK(anew("410 LH DD; wrap 3d", "410 LH DD; wrap on, off Sat").empty());
  CHECK(anew("410 LH DD; wrap", "410 LH DD; wrap 5d").empty());
  CHECK(anew("410 LH DD; wrap 3d", "410 RH DD; wrap 5d").empty());
  CHECK(anew("410 watch her walk 7d", "410 watch her walk 14d") ==
        "watch her walk: by Wed 9 Dec now, not Wed 2 Dec");
}

TEST_CASE("what is held back for less than was said before is told to hold as before") {
  const Turn before = saying::turn_of({"410 milk withheld 4d"});
  const Turn now = saying::turn_of({"410 milk withheld 4d; milk withheld 2d"});
  const std::vector<std::string> told = shorter_times_said(before, now, wednesday, english());
  REQUIRE(told.size() == 1);
  CHECK(told.front() ==
        "milk withheld: Sun 29 Nov holds, not Fri 27 Nov; to make it shorter say it behind "
        "\"no,\"");
  CHECK(shorter_times_said(before, before, wednesday, english()).empty());
}
