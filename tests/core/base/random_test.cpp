#include "core/base/random.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <cstddef>
#include <set>

namespace evenclaw {

namespace {

using Words = std::array<std::uint32_t, 4>;

struct KnownAnswer {
  Words counter;
  std::array<std::uint32_t, 2> key;
  Words words;
};

bool is_close(double found, double expected) {
  return std::fabs(found - expected) <= 1e-12 * std::fabs(expected);
}

// How many standard deviations `count` of `draws` lies from what probability p lets expect.
double sigmas_off(int count, int draws, double p) {
  return (count - draws * p) / std::sqrt(draws * p * (1 - p));
}

}  // namespace

TEST_CASE("Philox gives the known answers published with it") {
  constexpr std::uint32_t ones = 0xffffffff;
  constexpr KnownAnswer known_answers[] = {
      {{0, 0, 0, 0}, {0, 0}, {0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8}},
      {{ones, ones, ones, ones}, {ones, ones}, {0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd}},
      {{0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344},
       {0xa4093822, 0x299f31d0},
       {0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1}}};
  for (const KnownAnswer& known : known_answers) {
    CHECK(philox4x32(known.counter, known.key) == known.words);
  }
}

TEST_CASE("the stream (0, 0) begins with the known answer of all zeros") {
  RandomStream random(0, 0);
  CHECK(random.next_u32() == 0x6627e8d5);
  CHECK(random.next_u32() == 0xe169c58d);
  CHECK(random.next_u32() == 0xbc57ac4c);
  CHECK(random.next_u32() == 0x9b00dbd8);
}

TEST_CASE("a stream is one block after another, keyed by seed and numbered by stream") {
  const std::uint64_t seed = (std::uint64_t{1} << 63) | 5;
  const std::uint64_t stream = (std::uint64_t{1} << 40) | 9;
  RandomStream random(seed, stream);
  for (std::uint32_t block = 0; block < 3; ++block) {
    for (const std::uint32_t word : philox4x32({block, 0, 9, 256}, {5, 0x80000000})) {
      CHECK(random.next_u32() == word);
    }
  }
}

TEST_CASE("64 bits are two words, the low one first") {
  RandomStream random(0, 0);
  CHECK(random.next_u64() == 0xe169c58d6627e8d5);
  CHECK(random.next_u64() == 0x9b00dbd8bc57ac4c);
  CHECK(random.next_u64() == 0x5cb200dbf8e4cca4);
}

TEST_CASE("uniform draws are the same on every machine, to the last bit") {
  RandomStream zero(0, 0);
  for (const double expected :
       {0.8805201978886142, 0.6054818538799213, 0.36209111566940344, 0.037094080749417335}) {
    CHECK(zero.uniform() == expected);
  }
  RandomStream other(2026, 7);
  for (const double expected :
       {0.42094571720185125, 0.6877564190839218, 0.959427806998253, 0.26857767691991574}) {
    CHECK(other.uniform() == expected);
  }
}

// The references below were computed from the same words with 50 decimal digits.
TEST_CASE("exponential draws equal their reference within the last digits") {
  RandomStream random(2026, 7);
  for (const double expected :
       {0.54635905312981704231, 1.16397168770232007229, 3.20467234846138999240,
        0.31276425270433295351, 0.19213946692919047957, 0.84302888029065832843}) {
    CHECK(is_close(random.exponential(), expected));
  }
}

TEST_CASE("normal draws equal their reference within the last digits") {
  RandomStream random(2026, 7);
  for (const double expected :
       {-0.39847459310276313050, -0.29484340378333593433, -0.56157409516774031669,
        1.56738858915417772082, -0.13814387341588101338, 1.89437875670483173320}) {
    CHECK(is_close(random.normal(), expected));
  }
}

TEST_CASE("the same seed and stream draw the same again, any other differently") {
  RandomStream first(1, 2);
  RandomStream again(1, 2);
  RandomStream other_stream(1, 3);
  RandomStream other_seed(2, 2);
  std::set<std::uint64_t> seen;
  for (int i = 0; i < 100; ++i) {
    const std::uint64_t draw = first.next_u64();
    REQUIRE(draw == again.next_u64());
    seen.insert({draw, other_stream.next_u64(), other_seed.next_u64()});
  }
  CHECK(seen.size() == 300);
}

TEST_CASE("whole numbers stay below their bound and reach both ends") {
  RandomStream random(3, 1);
  std::set<std::uint32_t> seen;
  for (int i = 0; i < 1000; ++i) seen.insert(random.below(6));
  CHECK(seen == std::set<std::uint32_t>{0, 1, 2, 3, 4, 5});
  for (int i = 0; i < 10; ++i) CHECK(random.below(1) == 0);
}

TEST_CASE("no whole number is likelier than another, also where 2^32 is no multiple") {
  // With a bound of 3/4 of 2^32 a draw without rejection gives every third number twice.
  RandomStream random(3, 2);
  constexpr int draws = 30000;
  int thirds[3] = {0, 0, 0};
  for (int i = 0; i < draws; ++i) ++thirds[random.below(0xC0000000) % 3];
  for (const int count : thirds) CHECK(std::fabs(sigmas_off(count, draws, 1.0 / 3)) < 4);
}

TEST_CASE("uniform draws lie in [0, 1) with mean one half") {
  RandomStream random(3, 3);
  constexpr int draws = 20000;
  double sum = 0;
  bool is_inside = true;
  for (int i = 0; i < draws; ++i) {
    const double u = random.uniform();
    is_inside = is_inside && u >= 0 && u < 1;
    sum += u;
  }
  CHECK(is_inside);
  CHECK(std::fabs(sum / draws - 0.5) < 4 * std::sqrt(1.0 / 12 / draws));
}

TEST_CASE("a chance comes true as often as it says, never at 0 and always at 1") {
  RandomStream random(3, 4);
  constexpr int draws = 20000;
  int count = 0;
  for (int i = 0; i < draws; ++i) count += random.chance(0.3) ? 1 : 0;
  CHECK(std::fabs(sigmas_off(count, draws, 0.3)) < 4);
  for (int i = 0; i < 1000; ++i) {
    REQUIRE_FALSE(random.chance(0));
    REQUIRE(random.chance(1));
  }
}

TEST_CASE("exponential draws have mean 1 and exceed 1 with probability 1/e") {
  RandomStream random(3, 5);
  constexpr int draws = 20000;
  double sum = 0;
  int above_one = 0;
  for (int i = 0; i < draws; ++i) {
    const double x = random.exponential();
    REQUIRE(x >= 0);
    sum += x;
    above_one += x > 1 ? 1 : 0;
  }
  CHECK(std::fabs(sum / draws - 1) < 4 / std::sqrt(draws));
  CHECK(std::fabs(sigmas_off(above_one, draws, std::exp(-1.0))) < 4);
}

TEST_CASE("normal draws have mean 0, variance 1 and 95 % between -1.96 and 1.96") {
  RandomStream random(3, 6);
  constexpr int draws = 20000;
  double sum = 0;
  double squares = 0;
  int inside = 0;
  for (int i = 0; i < draws; ++i) {
    const double x = random.normal();
    sum += x;
    squares += x * x;
    inside += std::fabs(x) < 1.959963984540054 ? 1 : 0;
  }
  CHECK(std::fabs(sum / draws) < 4 / std::sqrt(draws));
  CHECK(std::fabs(squares / draws - 1) < 4 * std::sqrt(2.0 / draws));
  CHECK(std::fabs(sigmas_off(inside, draws, 0.95)) < 4);
}

}  // namespace evenclaw
