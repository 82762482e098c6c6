#include "core/wire/leaves.hpp"

#include <doctest/doctest.h>

#include <limits>
#include <ostream>

namespace evenclaw {

namespace {

template <class T>
void expect_text_reads_back(const T& value, const std::string& text) {
  CHECK(text_of(value) == text);
  CHECK(value_of_text<T>(text) == value);
}

}  // namespace

TEST_CASE("days, instants, ids, digests, words and texts read back from their text") {
  const Uuid uuid = uuid_derived("leaf");
  expect_text_reads_back(Day{20781}, "2026-11-24");
  expect_text_reads_back(Instant{0, 60}, "1970-01-01T01:00:00.000+01:00");
  expect_text_reads_back(uuid, to_text(uuid));
  expect_text_reads_back(CowId{uuid}, to_text(uuid));
  expect_text_reads_back(sha256("leaf"), to_text(sha256("leaf")));
  expect_text_reads_back(Weekday::friday, "friday");
  expect_text_reads_back(std::string("heel, bad"), "heel, bad");
}

TEST_CASE("a text that does not fit is no value") {
  CHECK_FALSE(value_of_text<Day>("24.11.2026").has_value());
  CHECK_FALSE(value_of_text<Instant>("2026-11-24").has_value());
  CHECK_FALSE(value_of_text<CowId>("412").has_value());
  CHECK_FALSE(value_of_text<Digest>("ba78").has_value());
  CHECK_FALSE(value_of_text<Weekday>("fri").has_value());
}

TEST_CASE("numbers read back and are refused out of range") {
  constexpr std::int64_t int32_max = std::numeric_limits<std::int32_t>::max();
  CHECK(number_of(Length{755}) == 755);
  CHECK(number_of(true) == 1);
  CHECK(value_of_number<Length>(755) == Length{755});
  CHECK(value_of_number<std::int32_t>(int32_max) == std::int32_t{int32_max});
  CHECK_FALSE(value_of_number<std::int32_t>(int32_max + 1).has_value());
  CHECK_FALSE(value_of_number<Length>(-int32_max - 2).has_value());
  CHECK(value_of_number<std::int64_t>(int32_max + 1) == int32_max + 1);
  CHECK(value_of_number<bool>(0) == false);
  CHECK(value_of_number<bool>(1) == true);
  CHECK_FALSE(value_of_number<bool>(2).has_value());
}

TEST_CASE("each leaf has its word in the data dictionary") {
  CHECK(leaf_word<bool>() == "bool");
  CHECK(leaf_word<std::int32_t>() == "whole number");
  CHECK(leaf_word<std::int64_t>() == "whole number");
  CHECK(leaf_word<Length>() == "tenths of mm");
  CHECK(leaf_word<std::string>() == "text");
  CHECK(leaf_word<Day>() == "ISO day");
  CHECK(leaf_word<Instant>() == "RFC 3339 instant");
  CHECK(leaf_word<Uuid>() == "id");
  CHECK(leaf_word<HerdId>() == "id");
  CHECK(leaf_word<Digest>() == "SHA-256");
  CHECK(leaf_word<Weekday>() == "word");
}

TEST_CASE("a fault can say which words would have fitted") {
  CHECK(expected_words<bool>() == "true or false");
  CHECK(expected_words<Day>() == "ISO day");
  CHECK(expected_words<Weekday>() ==
        "one of monday, tuesday, wednesday, thursday, friday, saturday, sunday");
}

TEST_CASE("what cannot be stored exactly is no leaf") {
  static_assert(!Leaf<double>);
  static_assert(!Leaf<float>);
  static_assert(!Leaf<std::uint64_t>);
  static_assert(!Leaf<std::vector<int>>);
  static_assert(!Leaf<std::optional<Day>>);
  static_assert(Leaf<Day>);
  CHECK(is_optional<std::optional<Day>>);
  CHECK_FALSE(is_optional<Day>);
  CHECK(is_list<std::vector<Day>>);
}

}  // namespace evenclaw
