#include "core/base/random.hpp"

#include <cassert>
#include <cmath>
#include <cstddef>

namespace evenclaw {

namespace {

constexpr std::uint32_t low_word(std::uint64_t value) {
  return static_cast<std::uint32_t>(value);
}

constexpr std::uint32_t high_word(std::uint64_t value) {
  return static_cast<std::uint32_t>(value >> 32U);
}

}  // namespace

std::array<std::uint32_t, 4> philox4x32(const std::array<std::uint32_t, 4>& counter,
                                        const std::array<std::uint32_t, 2>& key) {
  constexpr int rounds = 10;
  constexpr std::uint64_t multiplier0 = 0xD2511F53;
  constexpr std::uint64_t multiplier1 = 0xCD9E8D57;
  constexpr std::uint32_t weyl0 = 0x9E3779B9;
  constexpr std::uint32_t weyl1 = 0xBB67AE85;

  std::array<std::uint32_t, 4> words = counter;
  std::uint32_t key0 = key[0];
  std::uint32_t key1 = key[1];
  for (int round = 0; round < rounds; ++round) {
    const std::uint64_t product0 = multiplier0 * words[0];
    const std::uint64_t product1 = multiplier1 * words[2];
    words = {high_word(product1) ^ words[1] ^ key0, low_word(product1),
             high_word(product0) ^ words[3] ^ key1, low_word(product0)};
    key0 += weyl0;
    key1 += weyl1;
  }
  return words;
}

RandomStream::RandomStream(std::uint64_t seed, std::uint64_t stream)
    : seed_(seed), stream_(stream) {}

std::uint32_t RandomStream::next_u32() {
  if (used_ == 4) {
    words_ =
        philox4x32({low_word(block_), high_word(block_), low_word(stream_), high_word(stream_)},
                   {low_word(seed_), high_word(seed_)});
    ++block_;
    used_ = 0;
  }
  return words_[static_cast<std::size_t>(used_++)];
}

std::uint64_t RandomStream::next_u64() {
  const std::uint64_t low = next_u32();
  const std::uint64_t high = next_u32();
  return high << 32U | low;
}

std::uint32_t RandomStream::below(std::uint32_t bound) {
  assert(bound > 0);
  std::uint64_t product = std::uint64_t{next_u32()} * bound;
  if (low_word(product) < bound) {
    // 2^32 mod bound: draws whose low half falls below it would make small results likelier.
    const std::uint32_t unfair = (0U - bound) % bound;
    while (low_word(product) < unfair) product = std::uint64_t{next_u32()} * bound;
  }
  return high_word(product);
}

double RandomStream::uniform() {
  constexpr double two_to_minus_53 = 1.0 / 9007199254740992.0;
  return static_cast<double>(next_u64() >> 11U) * two_to_minus_53;
}

bool RandomStream::chance(double p) {
  return uniform() < p;
}

double RandomStream::exponential() {
  // 1 - u lies in (0, 1], so the logarithm is finite.
  return -std::log1p(-uniform());
}

double RandomStream::normal() {
  constexpr double two_pi = 6.283185307179586476925286766559;
  const double radius = std::sqrt(2.0 * exponential());
  return radius * std::cos(two_pi * uniform());
}

}  // namespace evenclaw
