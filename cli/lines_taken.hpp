// Lines from a file, a pipe or the keyboard, told to whoever takes them; remembers how it ended.
#pragma once

#include <cstddef>
#include <functional>
#include <span>
#include <string>
#include <utility>

#include "cli/command.hpp"
#include "cli/reply_printer.hpp"
#include "core/api/reply.hpp"
#include "core/base/result.hpp"

namespace evenclaw::cli {

/// Who takes the lines, those that are there together, and hears when no more come.
struct LineTaker {
  std::function<Result<Reply>(std::span<const std::string>)> say;
  std::function<Result<Reply>()> end;
};

class LinesTaken {
 public:
  /// The invocation outlives it.
  LinesTaken(const Invocation& invocation, LineTaker taker)
      : invocation_(invocation), taker_(std::move(taker)), printer_(invocation.json) {}

  /// From the file named first among the operands, which is read whole before anything of it is
  /// recorded; by hand when a person sits there; or else from a pipe. Exit::asked when a line was
  /// refused or a question is open.
  Exit take(const std::function<Exit()>& by_hand);

  /// Lines of a person, who sees the answer to every one before the next: `answer` has it printed.
  /// Faults: those of `answer`, and "disk-failed".
  static Outcome each_typed(const std::function<std::string()>& prompt,
                            const std::function<Outcome(const std::string& typed)>& answer);

  void print(const Reply& reply) { printer_.print(reply); }

  /// The line was typed behind a prompt so wide: what is wrong is pointed at.
  void print_below(const Reply& reply, std::size_t prompt_width) {
    printer_.print_below(reply, prompt_width);
  }

  /// No more lines come.
  Exit end();

 private:
  Exit take_file(const std::string& path);
  Exit take_pipe();
  bool answered(const Result<Reply>& reply);

  const Invocation& invocation_;
  LineTaker taker_;
  ReplyPrinter printer_;
  Exit failed_ = Exit::world;
};

}  // namespace evenclaw::cli
