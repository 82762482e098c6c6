// Lines of a file, a pipe or the keyboard, with the limits a called line has.
#pragma once

#include <cstddef>
#include <cstdint>
#include <deque>
#include <memory>
#include <string>
#include <vector>

#include "core/base/result.hpp"

namespace evenclaw::cli {

/// Larger files are no day's calls: a very long day is under 100 kB.
inline constexpr std::int64_t largest_call_file = 8LL * 1024 * 1024;

/// Longer lines are refused by the call line itself.
inline constexpr std::size_t longest_called_line = 4096;

/// Reads lines as they arrive, in bounded memory. Line endings of either kind and the mark some
/// editors put at the beginning of a text are left out.
class LineReader {
 public:
  /// Of a descriptor that is open already and stays so. Of a line with more than `longest` bytes
  /// its beginning is given, still longer than `longest`, so that it is seen to be too long.
  LineReader(int file, std::size_t longest);
  /// Faults: "file-not-found", "file-unreadable" (a folder, no right to read).
  static Result<std::unique_ptr<LineReader>> of_file(const std::string& path, std::size_t longest);
  ~LineReader();
  LineReader(const LineReader&) = delete;
  LineReader& operator=(const LineReader&) = delete;

  /// Waits until there is a line, then gives all that are there already, at most `most`; none at
  /// the end. Who writes into a pipe and waits for the answer to his line is never kept waiting.
  /// Fault "disk-failed" when it cannot be read.
  Result<std::vector<std::string>> next(std::size_t most);

  /// Bytes read so far.
  [[nodiscard]] std::int64_t bytes() const { return bytes_; }

 private:
  Outcome read_once();
  void take(const char* begin, std::size_t size);
  void end_line();
  [[nodiscard]] bool more_is_there() const;

  int file_;
  bool owned_ = false;
  bool is_terminal_;
  std::size_t longest_;
  std::string begun_;  // a line whose end has not arrived
  std::deque<std::string> whole_;
  std::int64_t bytes_ = 0;
  bool first_line_ = true;
  bool ended_ = false;
};

/// All lines of a file of calls. Refused whole, so that nothing is half recorded: a file that is
/// not there or cannot be read, one over largest_call_file, and one with lines that are no text in
/// UTF-8 or longer than a called line may be, with their numbers.
Result<std::vector<std::string>> lines_of_file(const std::string& path);

}  // namespace evenclaw::cli
