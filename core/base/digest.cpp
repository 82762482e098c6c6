#include "core/base/digest.hpp"

#include <bit>
#include <cstddef>

#include "core/base/hex.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t block_size = 64;
using State = std::array<std::uint32_t, 8>;

// FIPS 180-4, 4.2.2: fractional parts of the cube roots of the first 64 primes.
constexpr std::array<std::uint32_t, 64> round_constants = {
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
    0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
    0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
    0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
    0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
    0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
    0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
    0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

// FIPS 180-4, 5.3.3: fractional parts of the square roots of the first 8 primes.
constexpr State initial_state = {0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
                                 0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};

std::uint32_t word_at(const char* bytes) {
  std::uint32_t word = 0;
  for (int i = 0; i < 4; ++i) word = word << 8U | static_cast<std::uint8_t>(bytes[i]);
  return word;
}

std::array<std::uint32_t, 64> message_schedule(const char* block) {
  std::array<std::uint32_t, 64> w{};
  for (std::size_t t = 0; t < 16; ++t) w[t] = word_at(block + 4 * t);
  for (std::size_t t = 16; t < 64; ++t) {
    const std::uint32_t x = w[t - 15];
    const std::uint32_t y = w[t - 2];
    const std::uint32_t sigma0 = std::rotr(x, 7) ^ std::rotr(x, 18) ^ (x >> 3U);
    const std::uint32_t sigma1 = std::rotr(y, 17) ^ std::rotr(y, 19) ^ (y >> 10U);
    w[t] = sigma1 + w[t - 7] + sigma0 + w[t - 16];
  }
  return w;
}

// FIPS 180-4, 6.2.2; the letters are those of the standard.
State after_block(const State& before, const char* block) {
  const auto w = message_schedule(block);
  auto [a, b, c, d, e, f, g, h] = before;
  for (std::size_t t = 0; t < 64; ++t) {
    const std::uint32_t sum1 = std::rotr(e, 6) ^ std::rotr(e, 11) ^ std::rotr(e, 25);
    const std::uint32_t choice = (e & f) ^ (~e & g);
    const std::uint32_t t1 = h + sum1 + choice + round_constants[t] + w[t];
    const std::uint32_t sum0 = std::rotr(a, 2) ^ std::rotr(a, 13) ^ std::rotr(a, 22);
    const std::uint32_t majority = (a & b) ^ (a & c) ^ (b & c);
    h = g;
    g = f;
    f = e;
    e = d + t1;
    d = c;
    c = b;
    b = a;
    a = t1 + sum0 + majority;
  }
  return {before[0] + a, before[1] + b, before[2] + c, before[3] + d,
          before[4] + e, before[5] + f, before[6] + g, before[7] + h};
}

// What is left after the last full block, a one bit, zeros, and the length in bits (5.1.1).
std::string padded_tail(std::string_view tail, std::uint64_t total_bytes) {
  std::string padded(tail);
  padded += static_cast<char>(0x80);
  while (padded.size() % block_size != block_size - 8) padded += '\0';
  const std::uint64_t bits = total_bytes * 8;
  for (int shift = 56; shift >= 0; shift -= 8) padded += static_cast<char>(bits >> shift & 0xFFU);
  return padded;
}

}  // namespace

Digest sha256(std::string_view bytes) {
  State state = initial_state;
  const std::size_t whole = bytes.size() - bytes.size() % block_size;
  for (std::size_t at = 0; at < whole; at += block_size) {
    state = after_block(state, bytes.data() + at);
  }
  const std::string tail = padded_tail(bytes.substr(whole), bytes.size());
  for (std::size_t at = 0; at < tail.size(); at += block_size) {
    state = after_block(state, tail.data() + at);
  }
  Digest digest;
  for (std::size_t i = 0; i < digest.bytes.size(); ++i) {
    digest.bytes[i] = static_cast<std::uint8_t>(state[i / 4] >> (24 - 8 * (i % 4)) & 0xFFU);
  }
  return digest;
}

std::string to_text(const Digest& digest) {
  std::string text;
  for (const std::uint8_t byte : digest.bytes) append_hex(text, byte);
  return text;
}

std::optional<Digest> digest_from_text(std::string_view text) {
  Digest digest;
  if (text.size() != 2 * digest.bytes.size()) return std::nullopt;
  for (std::size_t i = 0; i < digest.bytes.size(); ++i) {
    const int high = hex_value(text[2 * i], HexCase::lower_only);
    const int low = hex_value(text[2 * i + 1], HexCase::lower_only);
    if (high < 0 || low < 0) return std::nullopt;
    digest.bytes[i] = static_cast<std::uint8_t>(high * 16 + low);
  }
  return digest;
}

}  // namespace evenclaw
