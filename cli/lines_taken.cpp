#include "cli/lines_taken.hpp"

#include <unistd.h>

#include <algorithm>
#include <iostream>
#include <vector>

#include "cli/answer.hpp"
#include "cli/line_source.hpp"

namespace evenclaw::cli {
namespace {

/// A day is one batch or two; more at once would only grow without end.
constexpr std::size_t lines_a_batch = 2000;

}  // namespace

Exit LinesTaken::take(const std::function<Exit()>& by_hand) {
  const bool from_file = !invocation_.operands.empty() && invocation_.operands.front() != "-";
  if (from_file) return take_file(invocation_.operands.front());
  const bool is_typed = isatty(STDIN_FILENO) == 1 && !invocation_.json;
  return is_typed ? by_hand() : take_pipe();
}

Outcome LinesTaken::each_typed(const std::function<std::string()>& prompt,
                               const std::function<Outcome(const std::string&)>& answer) {
  LineReader reader(STDIN_FILENO, longest_called_line);
  while (true) {
    std::cout << prompt() << std::flush;
    const auto typed = reader.next(1);
    if (!typed) return typed.faults();
    if (typed->empty()) break;
    const Outcome answered = answer(typed->front());
    if (!answered) return answered;
  }
  std::cout << '\n';
  return Done{};
}

Exit LinesTaken::end() {
  return answered(taker_.end()) ? printer_.exit() : failed_;
}

Exit LinesTaken::take_file(const std::string& path) {
  const auto lines = lines_of_file(path);
  if (!lines) return tell_faults(lines.faults(), invocation_);
  if (lines->empty()) {
    return tell_faults({{"nothing-to-do", path + " holds no line", path}}, invocation_);
  }
  std::span<const std::string> left(*lines);
  while (!left.empty()) {
    const std::size_t now = std::min(left.size(), lines_a_batch);
    if (!answered(taker_.say(left.first(now)))) return failed_;
    left = left.subspan(now);
  }
  return end();
}

// What a pipe holds already is recorded and acknowledged together, so that a fast writer is not
// slowed down and one who waits for the answer gets it.
Exit LinesTaken::take_pipe() {
  LineReader reader(STDIN_FILENO, longest_called_line);
  while (true) {
    const auto lines = reader.next(lines_a_batch);
    if (!lines) return tell_faults(lines.faults(), invocation_);
    if (lines->empty()) return end();
    if (!answered(taker_.say(*lines))) return failed_;
  }
}

bool LinesTaken::answered(const Result<Reply>& reply) {
  if (reply) {
    printer_.print(*reply);
    return true;
  }
  failed_ = tell_faults(reply.faults(), invocation_);
  return false;
}

}  // namespace evenclaw::cli
