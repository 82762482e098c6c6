// Prints what recording answers, one item a line, and remembers whether anything is left to settle.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "cli/command.hpp"
#include "core/api/reply.hpp"

namespace evenclaw::cli {

/// Exit::asked when anything was refused or has to be answered; else Exit::fine.
Exit exit_after(const std::vector<ReplyItem>& items);

class ReplyPrinter {
 public:
  explicit ReplyPrinter(bool json) : json_(json) {}

  /// "saved 412 0190..." lines are flushed at once: other programs take them as the
  /// acknowledgement.
  void print(const Reply& reply);
  /// A person has just typed the line behind a prompt so wide: what is wrong is pointed at.
  void print_below(const Reply& reply, std::size_t prompt_width);
  void print(const ReplyItem& item);

  /// Exit::asked after a refusal or a question; else Exit::fine.
  [[nodiscard]] Exit exit() const { return exit_; }

 private:
  void print(const ReplyItem& item, std::optional<std::size_t> prompt_width);

  bool json_;
  Exit exit_ = Exit::fine;
};

}  // namespace evenclaw::cli
