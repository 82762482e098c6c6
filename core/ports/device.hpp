// Time and fresh ids, which the core may not take by itself.
#pragma once

#include "core/base/date.hpp"
#include "core/base/id.hpp"

namespace evenclaw {

class Clock {
 public:
  Clock() = default;
  Clock(const Clock&) = delete;
  Clock& operator=(const Clock&) = delete;
  virtual ~Clock() = default;
  virtual Instant now() = 0;
};

class FreshIds {
 public:
  FreshIds() = default;
  FreshIds(const FreshIds&) = delete;
  FreshIds& operator=(const FreshIds&) = delete;
  virtual ~FreshIds() = default;
  /// A version 7 id; later calls of one object give greater ids.
  virtual Uuid next() = 0;
};

}  // namespace evenclaw
