// What a piece of the program prints while it runs inside a test.
#pragma once

#include <iostream>
#include <sstream>
#include <string>

namespace evenclaw::cli {

/// Takes what is printed to a stream for as long as it lives.
class Captured {
 public:
  explicit Captured(std::ostream& stream) : stream_(stream), before_(stream.rdbuf(held_.rdbuf())) {}

  Captured(const Captured&) = delete;
  Captured& operator=(const Captured&) = delete;

  ~Captured() { stream_.rdbuf(before_); }

  [[nodiscard]] std::string text() const { return held_.str(); }

 private:
  std::ostringstream held_;
  std::ostream& stream_;
  std::streambuf* before_;
};

}  // namespace evenclaw::cli
