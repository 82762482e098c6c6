#include "core/trade/call_line/time_corrected.hpp"

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

TEST_CASE("a time is put right of what was said last with one, or of the act that is named") {
  const struct {
    std::vector<std::string> lines;
    const char* turn;
  } rows[] = {{{"410 LH DD; wrap 3d", "no, 5d"}, "410 // LH DD; wrap on, off 5d"},
              {{"410 LH DD; wrap 3d", "no, off 5d"}, "410 // LH DD; wrap on, off 5d"},
              {{"410 LH DD; wrap 3d", "no, wrap 5d"}, "410 // LH DD; wrap on, off 5d"},
              {{"410 LH DD; wrap 3d", "no, wrap off 5d"}, "410 // LH DD; wrap on, off 5d"},
              {{"410 LH DD; wrap 3d", "no, wrap on, off Fri"}, "410 // LH DD; wrap on, off Fri"},
              {{"410 LH DD; wrap 3d", "no, Fri"}, "410 // LH DD; wrap on, off Fri"},
              {{"410 LH DD; wrap 3d", "no, in 5 days"}, "410 // LH DD; wrap on, off 5d"},
              {{"410 LH DD; wrap", "no, wrap 5d"}, "410 // LH DD; wrap on, off 5d"},
              {{"410 LH SU; block inside, off 4 weeks; see again 14d", "no, 3 weeks"},
               "410 // LH sole ulcer; block on inside, off 28d; see again 21d"},
              {{"410 LH SU; block inside, off 4 weeks; see again 14d", "no, block off 5 weeks"},
               "410 // LH sole ulcer; block on inside, off 35d; see again 14d"},
              {{"410 LH DD; wrap 3d; RH SU; block inside, off 4 weeks", "no, wrap 5d"},
               "410 // LH DD; wrap on, off 5d // RH sole ulcer; block on inside, off 28d"},
              {{"410 both hinds DD; wrap 3d; RF nothing found", "no, wrap 5d"},
               "410 // LH DD; wrap on, off 5d // RH DD; wrap on, off 5d // RF nothing found"},
              {{"410 LH DD; wrap on, off 3d; see again 4 weeks", "no, off Fri"},
               "410 // LH DD; wrap on, off Fri; see again 28d"},
              {{"410 LH SU; block inside, off 4 weeks; see again 14d", "no, off 5 weeks"},
               "410 // LH sole ulcer; block on inside, off 35d; see again 14d"},
              {{"410 milk withheld till Mon; LH DD; see again 14d", "no, till Tue"},
               "410 milk withheld till Tue // LH DD; see again 14d"},
              {{"410 LH DD; wrap 3d", "no, 5d", "no, RH"}, "410 // RH DD; wrap on, off 5d"},
              {{"410 LH foul; milk withheld 4d", "no, milk 10 milkings; meat 10d", "no, milk 3d"},
               "410 milk withheld 3d; meat withheld 10d // LH foul"}};

  for (const auto& row : rows) {
    INFO(saying::joined(row.lines));
    CHECK(saying::printed(row.lines) == row.turn);
  }
}

TEST_CASE("where no time was said, or several can be meant, it is refused with what to say") {
  const std::vector<std::string> refused[] = {
      {"410 LH DD", "no, 5d"},
      {"410 LH DD; wrap", "no, 5d"},
      {"410 LH DD; wrap 3d", "no, see again 5d"},
      {"410 LH DD; wrap 3d", "no, 3d"},
      {"410 LH DD; wrap 3d", "no, wrap"},
      {"410 LH DD; wrap 3d; RH DD; wrap 4d; RF nothing found", "no, wrap 5d"}};
  for (const auto& lines : refused) {
    INFO(saying::joined(lines));
    const Faults faults = saying::refusal_of(lines);
    REQUIRE_FALSE(faults.empty());
    CHECK((!faults.front().remedy.empty() || faults.front().message == "that is what was said"));
  }
}

TEST_CASE("behind \"no\" a number without its unit stays the number of the cow") {
  CHECK(saying::printed({"410 LH DD; wrap 3d", "no, 421"}) == "421 // LH DD; wrap on, off 3d");
  CHECK_FALSE(saying::refusal_of({"410 LH DD; wrap 3d", "no, 421d"}).empty());
}
