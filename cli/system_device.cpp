#include "cli/system_device.hpp"

#include <sys/random.h>
#include <time.h>

#include <algorithm>
#include <array>
#include <cstdlib>

namespace evenclaw::cli {
namespace {

constexpr std::int64_t ms_per_second = 1000;
constexpr std::int64_t ns_per_ms = 1'000'000;
constexpr std::uint32_t most_within_ms = 0xFFF;

}  // namespace

Instant SystemClock::now() {
  timespec wall{};
  clock_gettime(CLOCK_REALTIME, &wall);
  tm local{};
  localtime_r(&wall.tv_sec, &local);
  return {wall.tv_sec * ms_per_second + wall.tv_nsec / ns_per_ms,
          static_cast<std::int32_t>(local.tm_gmtoff / 60)};
}

Uuid SystemFreshIds::next() {
  const std::int64_t now = clock_.now().ms;
  if (now > last_ms_) {
    last_ms_ = now;
    within_ms_ = 0;
  } else if (++within_ms_ > most_within_ms) {
    ++last_ms_;
    within_ms_ = 0;
  }
  std::array<std::uint8_t, 10> random{};
  // Without randomness two devices could name two entries alike, so going on is not an option.
  if (getrandom(random.data(), random.size(), 0) != static_cast<ssize_t>(random.size())) abort();
  // The twelve bits after the version count within the millisecond (RFC 9562, 6.2 method 1).
  random[0] = static_cast<std::uint8_t>((random[0] & 0xF0U) | (within_ms_ >> 8U));
  random[1] = static_cast<std::uint8_t>(within_ms_ & 0xFFU);
  return uuid_v7(last_ms_, random);
}

}  // namespace evenclaw::cli
