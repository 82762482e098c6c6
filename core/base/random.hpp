// Counter-based random streams: any draw can be made anew from (seed, stream, index) alone.
#pragma once

#include <array>
#include <cstdint>

namespace evenclaw {

/// Philox4x32-10 (Salmon, Moraes, Dror, Shaw 2011, "Parallel random numbers: as easy as 1, 2, 3").
/// One block of four words from a 128-bit counter and a 64-bit key; checked against the
/// known-answer vectors of that paper's reference material.
std::array<std::uint32_t, 4> philox4x32(const std::array<std::uint32_t, 4>& counter,
                                        const std::array<std::uint32_t, 2>& key);

/// A sequence of draws fixed by (seed, stream). Integers and uniforms are equal on every target;
/// draws through exp and log agree within a tolerance only. Two draws belong in two statements:
/// the arguments of one call are evaluated in an order that differs between compilers.
class RandomStream {
 public:
  RandomStream(std::uint64_t seed, std::uint64_t stream);

  std::uint32_t next_u32();
  std::uint64_t next_u64();
  /// Uniform whole number in [0, bound), without modulo bias (Lemire 2019). bound > 0.
  std::uint32_t below(std::uint32_t bound);
  /// Uniform in [0, 1), 53 bits.
  double uniform();
  /// True with probability p (0 to 1).
  bool chance(double p);
  /// Exponential with mean 1.
  double exponential();
  /// Standard normal (Box-Muller).
  double normal();

 private:
  std::uint64_t seed_;
  std::uint64_t stream_;
  std::uint64_t block_ = 0;
  int used_ = 4;
  std::array<std::uint32_t, 4> words_{};
};

}  // namespace evenclaw
