#include "demo/complication.hpp"

#include <doctest/doctest.h>

namespace evenclaw::demo {

TEST_CASE("all complications hold unless they are left out, each by itself") {
  for (const auto& left_out : EnumWords<Complication>::table) {
    Complications complications;
    complications.leave_out(left_out.value);
    for (const auto& row : EnumWords<Complication>::table) {
      CAPTURE(row.word);
      CHECK(complications.has(row.value) == (row.value != left_out.value));
    }
  }
}

}  // namespace evenclaw::demo
