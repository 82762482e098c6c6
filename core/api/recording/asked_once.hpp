// A question that is answered by saying the same thing once more.
#pragma once

#include <string>
#include <utility>

namespace evenclaw {

/// Only what was asked about last can be meant by its repetition.
class AskedOnce {
 public:
  /// `said` was asked about in answer to that line.
  void ask(std::string said, int line) {
    said_ = std::move(said);
    line_ = line;
  }

  /// It is said once more, however many lines later.
  [[nodiscard]] bool is_repeated(const std::string& said) const {
    return !said_.empty() && said_ == said;
  }

  /// And `line` is the very next one.
  [[nodiscard]] bool is_repeated_at_once(const std::string& said, int line) const {
    return is_repeated(said) && line == line_ + 1;
  }

  /// As it was said; "" when nothing was asked yet.
  [[nodiscard]] const std::string& said() const { return said_; }

 private:
  std::string said_;
  int line_ = 0;
};

}  // namespace evenclaw
