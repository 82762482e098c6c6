// What is to be answered to the lines taken so far and was not given yet.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/api/reply.hpp"
#include "core/base/id.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

/// The answers stand in the order they arose, each with the number of the line that was being taken
/// then. Lines that come in together are answered together, so what was answered of a cow may still
/// be taken out again while nobody has heard it.
class AnswersDue {
 public:
  /// From now on answers are to the next line.
  void next_line() { ++line_; }

  /// The line answered now, from 1; 0 before the first.
  [[nodiscard]] int line() const { return line_; }

  /// Adds one; the reference is good until the next one is added.
  ReplyItem& add(ReplyKind kind, std::string words);

  /// The same is on record as `entry` already, and nothing is written.
  void add_there_already(std::string cow, EntryId entry);

  /// A note is for the sheet; beside the crush nobody is told.
  void show(const std::vector<Warning>& warnings, const std::string& cow);

  /// What came in together is answered together, and each warning once.
  [[nodiscard]] bool shows(const Warning& warning, const std::string& cow) const;

  [[nodiscard]] std::size_t count() const { return items_.size(); }

  /// What was shown and asked of her in the crush is not given after all, from the `first` on: what
  /// is saved, told and refused stays.
  void forget_of(const std::string& cow, std::size_t first);

  /// All of them; none is due any more.
  std::vector<ReplyItem> given();

 private:
  int line_ = 0;
  std::vector<ReplyItem> items_;
};

}  // namespace evenclaw
