// Prints what recording answers, one item a line, and remembers whether anything is left to settle.
#pragma once

#include "cli/command.hpp"
#include "core/api/reply.hpp"

namespace evenclaw::cli {

class ReplyPrinter {
 public:
  explicit ReplyPrinter(bool json) : json_(json) {}

  /// "saved 412 0190..." lines are flushed at once: other programs take them as the
  /// acknowledgement.
  void print(const Reply& reply);
  void print(const ReplyItem& item);

  /// Exit::asked after a refusal or a question; else Exit::fine.
  [[nodiscard]] Exit exit() const { return exit_; }

  void note_exit(Exit exit);

 private:
  bool json_;
  Exit exit_ = Exit::fine;
};

}  // namespace evenclaw::cli
