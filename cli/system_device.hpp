// The real machine's clock and fresh ids.
#pragma once

#include <cstdint>

#include "core/ports/device.hpp"

namespace evenclaw::cli {

/// Wall time with the machine's present offset from UTC.
class SystemClock final : public Clock {
 public:
  Instant now() override;
};

/// Version 7 ids from the kernel's random source; within one millisecond, and when the clock goes
/// back, each is still greater than the one before.
class SystemFreshIds final : public FreshIds {
 public:
  explicit SystemFreshIds(Clock& clock) : clock_(clock) {}

  Uuid next() override;

 private:
  Clock& clock_;
  std::int64_t last_ms_ = 0;
  std::uint32_t within_ms_ = 0;
};

}  // namespace evenclaw::cli
