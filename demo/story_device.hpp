// A clock that shows the days of a story, and ids that are the same in every telling.
#pragma once

#include <array>
#include <cstdint>

#include "core/base/date.hpp"
#include "core/ports/device.hpp"
#include "demo/streams.hpp"

namespace evenclaw::demo {

/// Begins each day at eight; a little time passes with each look.
class StoryClock final : public Clock {
 public:
  void begin(Day day) {
    constexpr std::int64_t ms_a_day = 86'400'000;
    constexpr std::int64_t eight_o_clock = std::int64_t{8} * 3'600'000;
    now_.ms = std::int64_t{day.since_epoch} * ms_a_day + eight_o_clock;
  }

  Instant now() override {
    constexpr std::int64_t a_little = 20'000;
    now_.ms += a_little;
    return now_;
  }

 private:
  Instant now_;
};

/// Drawn for one farm, or for the business itself with farm -1; greater with each one.
class StoryIds final : public FreshIds {
 public:
  /// `clock` is looked at by nobody else while an id is made.
  StoryIds(std::uint64_t seed, int farm, Day first_day)
      : draws_(stream_for(seed, DrawnFor::ids, farm + 1, 0)),
        ms_(std::int64_t{first_day.since_epoch} * 86'400'000) {}

  Uuid next() override {
    std::array<std::uint8_t, 10> bytes{};
    for (std::size_t at = 0; at < 8; at += 4) {
      std::uint32_t drawn = draws_.next_u32();
      for (std::size_t byte = at; byte < at + 4; ++byte, drawn >>= 8U) {
        bytes[byte] = static_cast<std::uint8_t>(drawn);
      }
    }
    return uuid_v7(++ms_, bytes);
  }

 private:
  RandomStream draws_;
  std::int64_t ms_;
};

}  // namespace evenclaw::demo
