#include "core/base/length.hpp"

#include <doctest/doctest.h>

#include <limits>
#include <ostream>

#include "core/base/random.hpp"

namespace evenclaw {

namespace {

struct Spelling {
  const char* text;
  std::int32_t tenths_mm;
};

}  // namespace

TEST_CASE("a length is told in millimetres with a decimal only where it has one") {
  CHECK(to_text(Length{750}) == "75 mm");
  CHECK(to_text(Length{755}) == "75.5 mm");
  CHECK(to_text(Length{0}) == "0 mm");
  CHECK(to_text(Length{5}) == "0.5 mm");
  CHECK(to_text(Length{-5}) == "-0.5 mm");
}

TEST_CASE("millimetres and centimetres are read, with or without a space") {
  constexpr Spelling spellings[] = {{"75 mm", 750},  {"75mm", 750},    {"75.5 mm", 755},
                                    {"7.5 cm", 750}, {"7.5cm", 750},   {"8 cm", 800},
                                    {"0 mm", 0},     {"-1.5 mm", -15}, {"075 mm", 750}};
  for (const Spelling& spelling : spellings) {
    CAPTURE(spelling.text);
    CHECK(length_from_text(spelling.text) == Length{spelling.tenths_mm});
  }
}

TEST_CASE("a number without its unit, or finer than a tenth of the unit, is no length") {
  for (const char* text :
       {"", "75", "mm", " mm", "75 m", "75.55 mm", "7.55 cm", "75. mm", ".5 mm", "75  mm",
        "75,5 mm", "75 MM", "7e1 mm", "--5 mm", "- mm", "75 mm ", "7 5 mm", "+75 mm"}) {
    CAPTURE(text);
    CHECK_FALSE(length_from_text(text).has_value());
  }
}

TEST_CASE("a length beyond what can be stored is refused") {
  CHECK(length_from_text("214748364.7 mm") == Length{std::numeric_limits<std::int32_t>::max()});
  CHECK_FALSE(length_from_text("214748364.8 mm").has_value());
  CHECK(length_from_text("-214748364.8 mm") == Length{std::numeric_limits<std::int32_t>::min()});
  CHECK_FALSE(length_from_text("21474836.5 cm").has_value());
  CHECK_FALSE(length_from_text("99999999999999999999 mm").has_value());
}

TEST_CASE("every length reads back") {
  RandomStream random(5, 1);
  for (int i = 0; i < 2000; ++i) {
    const Length length{static_cast<std::int32_t>(random.next_u32())};
    REQUIRE(length_from_text(to_text(length)) == length);
  }
}

}  // namespace evenclaw
