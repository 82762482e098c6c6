// Result<T>: a value, or every fault found with its place; how bad input and a failed world are
// told.
#pragma once

#include <cassert>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace evenclaw {

/// One thing that is wrong, said so that a person can mend it.
/// `slug` is a key of docs/errors.md (core/base/errors.hpp); `line` and `column` count from 1,
/// 0 means "no place"; `token` is the offending text as given; `remedy` says what to do.
struct Fault {
  std::string slug;
  std::string message;
  std::string token = {};
  int line = 0;
  int column = 0;
  std::string remedy = {};

  friend bool operator==(const Fault&, const Fault&) = default;
};

using Faults = std::vector<Fault>;

/// Holds either a T or at least one fault. Reading the wrong side is our mistake (assert).
template <class T>
class [[nodiscard]] Result {
 public:
  Result(T value) : value_(std::move(value)) {}  // NOLINT(google-explicit-constructor): reads well

  Result(Fault fault) {  // NOLINT(google-explicit-constructor)
    faults_.push_back(std::move(fault));
  }

  Result(Faults faults) : faults_(std::move(faults)) {  // NOLINT(google-explicit-constructor)
    assert(!faults_.empty());
  }

  [[nodiscard]] bool ok() const { return value_.has_value(); }

  explicit operator bool() const { return ok(); }

  [[nodiscard]] const T& value() const& {
    assert(ok());
    return *value_;
  }

  [[nodiscard]] T& value() & {
    assert(ok());
    return *value_;
  }

  /// By value, so that a loop over the value of a result nobody named stands on living ground.
  [[nodiscard]] T value() && {
    assert(ok());
    return std::move(*value_);
  }

  const T& operator*() const& { return value(); }

  T& operator*() & { return value(); }

  T operator*() && { return std::move(*this).value(); }

  const T* operator->() const { return &value(); }

  T* operator->() { return &value(); }

  [[nodiscard]] const Faults& faults() const {
    assert(!ok());
    return faults_;
  }

 private:
  // Not a variant: that costs the compiler far more in every source that names one.
  std::optional<T> value_;
  Faults faults_;
};

/// What an act returns that has nothing to tell but that it worked.
struct Done {
  friend bool operator==(const Done&, const Done&) = default;
};

using Outcome = Result<Done>;

}  // namespace evenclaw
