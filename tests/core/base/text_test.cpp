#include "core/base/text.hpp"

#include <doctest/doctest.h>

#include <ostream>

#include "core/base/random.hpp"

namespace evenclaw {

namespace {

using namespace std::string_literals;

struct Change {
  const char* before;
  const char* after;
};

std::string bytes_like_utf8(RandomStream& random) {
  // Bytes near the borders of the UTF-8 classes, where the mistakes are.
  constexpr unsigned char borders[] = {0x00, 0x41, 0x7F, 0x80, 0x8F, 0x90, 0x9F, 0xA0,
                                       0xBF, 0xC0, 0xC1, 0xC2, 0xDF, 0xE0, 0xE1, 0xED,
                                       0xEF, 0xF0, 0xF1, 0xF4, 0xF5, 0xFF};
  std::string bytes;
  const std::uint32_t length = random.below(12);
  for (std::uint32_t i = 0; i < length; ++i) {
    bytes += static_cast<char>(borders[random.below(sizeof borders)]);
  }
  return bytes;
}

}  // namespace

TEST_CASE("well-formed UTF-8 is told from what only looks like it") {
  for (const std::string& good :
       {""s, "heel"s, "\0"s, "\x7F"s, "\xC2\x80"s, "\xDF\xBF"s, "\xE0\xA0\x80"s, "\xED\x9F\xBF"s,
        "\xEE\x80\x80"s, "\xEF\xBF\xBF"s, "\xF0\x90\x80\x80"s, "\xF4\x8F\xBF\xBF"s}) {
    CAPTURE(good);
    CHECK(is_utf8(good));
  }
  for (const std::string& bad :
       {"\x80"s, "\xBF"s, "\xC0\x80"s, "\xC1\xBF"s, "\xC2"s, "\xC2\x41"s, "\xE0\x9F\xBF"s,
        "\xE1\x80"s, "\xED\xA0\x80"s, "\xED\xBF\xBF"s, "\xF0\x8F\xBF\xBF"s, "\xF4\x90\x80\x80"s,
        "\xF5\x80\x80\x80"s, "\xF0\x90\x80"s, "\xFF"s, "abc\xFE"s, "\xE1\x80\xC0"s,
        "\xF1\x80\x80\x41"s}) {
    CAPTURE(bad.size());
    CHECK_FALSE(is_utf8(bad));
  }
}

TEST_CASE("ill-formed bytes become the replacement character, everything else stays") {
  CHECK(valid_utf8("LH \xFF heel") == "LH \xEF\xBF\xBD heel");
  CHECK(valid_utf8("\xC2") == "\xEF\xBF\xBD");
  CHECK(valid_utf8("M\xC3\xBCller") == "M\xC3\xBCller");
}

TEST_CASE("whatever the bytes, the valid text is valid and valid text stays") {
  RandomStream random(9, 1);
  for (int i = 0; i < 5000; ++i) {
    const std::string bytes = bytes_like_utf8(random);
    const std::string text = valid_utf8(bytes);
    REQUIRE(is_utf8(text));
    REQUIRE(valid_utf8(text) == text);
    REQUIRE((text == bytes) == is_utf8(bytes));
  }
}

TEST_CASE("a name is one plain line, whatever its letters") {
  for (const char* name :
       {"", "Home Farm", "Moor\xC3\xA5sen & S\xC3\xB6hne", "O'Neill \xE2\x80\x94 low"}) {
    CAPTURE(name);
    CHECK(is_one_plain_line(name));
  }
  for (const char* name :
       {"Home\tFarm", "Home\nFarm", "\x1B[31mHome", "Home\x7F", "Home\xC2\x9B[m", "Home\xFF"}) {
    CAPTURE(name);
    CHECK_FALSE(is_one_plain_line(name));
  }
}

TEST_CASE("letters of western and middle Europe are folded to their small form") {
  constexpr Change changes[] = {{"", ""},
                                {"Heel BAD z4", "heel bad z4"},
                                {"@[`{", "@[`{"},
                                {"ÀÉÎÕÜÞ", "àéîõüþ"},
                                {"àéîõüþß×÷ÿ", "àéîõüþß×÷ÿ"},
                                {"ĀĄĆĖĶ", "āąćėķ"},
                                {"ĹŁŃŇ", "ĺłńň"},
                                {"ŊŐŒŘŠŽŹŻ", "ŋőœřšžźż"},
                                {"ŸŶŲ", "ÿŷų"},
                                {"İ", "i"},
                                {"ı ĸ ŉ ſ", "ı ĸ ŉ ſ"},
                                {"Straße €5 Ωμέγα", "straße €5 Ωμέγα"}};
  for (const Change& change : changes) {
    CAPTURE(change.before);
    CHECK(fold_case(change.before) == change.after);
  }
}

TEST_CASE("folding twice changes nothing more, and valid text stays valid") {
  RandomStream random(9, 2);
  for (int i = 0; i < 5000; ++i) {
    const std::string bytes = bytes_like_utf8(random);
    const std::string folded = fold_case(bytes);
    REQUIRE(fold_case(folded) == folded);
    REQUIRE(is_utf8(folded) == is_utf8(bytes));
  }
}

TEST_CASE("spaces at the ends go, those inside stay") {
  CHECK(trimmed("  412 lame LH \t\r\n") == "412 lame LH");
  CHECK(trimmed("412") == "412");
  CHECK(trimmed(" \t ").empty());
  CHECK(trimmed("").empty());
}

TEST_CASE("characters are counted, not bytes") {
  CHECK(character_count("") == 0);
  CHECK(character_count("heel") == 4);
  CHECK(character_count("Müller €") == 8);
  CHECK(character_count("\xF0\x9F\x98\x80") == 1);
}

TEST_CASE("a long text is cut between characters and says so") {
  CHECK(shortened("heel", 4) == "heel");
  CHECK(shortened("heels", 4) == "heel...");
  CHECK(shortened("Müller", 2) == "Mü...");
  CHECK(shortened("", 0).empty());
  CHECK(shortened("x", 0) == "...");
}

TEST_CASE("digits and nothing else are a whole number, as many as may stand there") {
  CHECK(whole_number("28", 3) == 28);
  CHECK(whole_number("007", 3) == 7);
  CHECK(whole_number("999999999", 9) == 999999999);
  for (const char* text : {"", "1234", "-1", "2.5", "2d", " 2"}) {
    CAPTURE(text);
    CHECK_FALSE(whole_number(text, 3));
  }
}

}  // namespace evenclaw
