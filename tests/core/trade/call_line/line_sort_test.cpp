// What a line can be, told by how it begins.
#include <doctest/doctest.h>

#include <vector>

#include "core/trade/call_line/parser.hpp"

using namespace evenclaw;

namespace {

using Sorts = std::vector<LineSort>;

}  // namespace

TEST_CASE("a line that begins with a number is a turn, or news of her") {
  CHECK(possible_sorts("412 wraps off", english()) ==
        Sorts{LineSort::turn_or_visit, LineSort::news});
  CHECK(possible_sorts("and 412 lame", english()) ==
        Sorts{LineSort::turn_or_visit, LineSort::news});
}

TEST_CASE("what begins with news is news and nothing else, in whatever language") {
  CHECK(possible_sorts("news 412 walks sound", english()) == Sorts{LineSort::news});
  CHECK(possible_sorts("Neues 412 weg", german()) == Sorts{LineSort::news});
}

TEST_CASE("a number with animals behind it counts them") {
  CHECK(possible_sorts("12 heifers, all good", english()) == Sorts{LineSort::batch});
}

TEST_CASE("a line without a number, and an empty one, is of the cow in the crush or the visit") {
  CHECK(possible_sorts("LH sole ulcer", english()) == Sorts{LineSort::turn_or_visit});
  CHECK(possible_sorts("", english()) == Sorts{LineSort::turn_or_visit});
}
