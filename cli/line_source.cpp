#include "cli/line_source.hpp"

#include <fcntl.h>
#include <poll.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <iterator>
#include <optional>
#include <string_view>

#include "core/base/text.hpp"

namespace evenclaw::cli {
namespace {

constexpr std::size_t chunk_bytes = 64UL * 1024;
constexpr std::size_t lines_at_once = 1000;
constexpr std::size_t enough_faults = 5;  // junk would give one for every line
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

std::optional<Fault> fault_in(const std::string& line, int number) {
  if (line.size() > longest_called_line) {
    return Fault{
        "line-too-long", "this line is longer than a called line can be", "", number, 0, ""};
  }
  if (line.find('\0') != std::string::npos || !is_utf8(line)) {
    return Fault{"file-unreadable",
                 "this line is not text in UTF-8",
                 "",
                 number,
                 0,
                 "Save the file as text in UTF-8 and give it again."};
  }
  return std::nullopt;
}

Fault too_large(const std::string& path) {
  return {"file-too-large", path + " is over 8 MB, which is no day's calls", path};
}

/// The first faults, and how many lines more are of that kind.
class LineFaults {
 public:
  void add(Fault fault) {
    ++count_;
    if (kept_.size() < enough_faults) kept_.push_back(std::move(fault));
  }

  [[nodiscard]] bool none() const { return count_ == 0; }

  [[nodiscard]] Faults told(const std::string& path) && {
    if (count_ > kept_.size()) {
      kept_.back().message += ", and " + std::to_string(count_ - kept_.size()) +
                              " more of the lines of " + path + " are no called lines either";
    }
    return std::move(kept_);
  }

 private:
  Faults kept_;
  std::size_t count_ = 0;
};

}  // namespace

LineReader::LineReader(int file, std::size_t longest)
    : file_(file), is_terminal_(isatty(file) == 1), longest_(longest) {}

LineReader::~LineReader() {
  if (owned_) close(file_);
}

Result<std::unique_ptr<LineReader>> LineReader::of_file(const std::string& path,
                                                        std::size_t longest) {
  const int file = open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (file < 0) {
    const bool missing = errno == ENOENT || errno == ENOTDIR;
    if (missing) return Fault{"file-not-found", "there is no file " + path, path};
    return Fault{"file-unreadable", path + " cannot be opened: " + std::strerror(errno), path};
  }
  auto reader = std::make_unique<LineReader>(file, longest);
  reader->owned_ = true;

  struct stat seen {};

  if (fstat(file, &seen) == 0 && S_ISDIR(seen.st_mode)) {
    return Fault{"file-unreadable", path + " is a folder", path, 0, 0, "Name a file in it."};
  }
  return reader;
}

bool LineReader::more_is_there() const {
  pollfd waiting{file_, POLLIN, 0};
  return poll(&waiting, 1, 0) > 0;
}

void LineReader::end_line() {
  if (!begun_.empty() && begun_.back() == '\r') begun_.pop_back();
  if (first_line_ && begun_.rfind(byte_order_mark, 0) == 0) begun_.erase(0, byte_order_mark.size());
  first_line_ = false;
  whole_.push_back(std::move(begun_));
  begun_.clear();
}

void LineReader::take(const char* begin, std::size_t size) {
  const std::size_t room = longest_ + 2 - std::min(begun_.size(), longest_ + 2);
  begun_.append(begin, std::min(size, room));
}

Outcome LineReader::read_once() {
  char chunk[chunk_bytes];
  const ssize_t got = read(file_, chunk, sizeof chunk);
  if (got < 0 && errno == EINTR) return Done{};
  // A terminal that was closed answers with an error where a pipe just ends.
  if (got == 0 || (got < 0 && errno == EIO && is_terminal_)) {
    ended_ = true;
    if (!begun_.empty()) end_line();
    return Done{};
  }
  if (got < 0) {
    return Fault{"disk-failed", std::string("the lines cannot be read: ") + std::strerror(errno)};
  }
  bytes_ += got;
  const char* at = chunk;
  const char* const end = chunk + got;
  while (at < end) {
    const char* const line_end = std::find(at, end, '\n');
    take(at, static_cast<std::size_t>(line_end - at));
    if (line_end == end) break;
    end_line();
    at = line_end + 1;
  }
  return Done{};
}

Result<std::vector<std::string>> LineReader::next(std::size_t most) {
  while (!ended_ && (whole_.empty() || (whole_.size() < most && more_is_there()))) {
    const Outcome read = read_once();
    if (!read) return read.faults();
  }
  const auto count = static_cast<std::ptrdiff_t>(std::min(most, whole_.size()));
  std::vector<std::string> lines(std::move_iterator(whole_.begin()),
                                 std::move_iterator(whole_.begin() + count));
  whole_.erase(whole_.begin(), whole_.begin() + count);
  return lines;
}

Result<std::vector<std::string>> lines_of_file(const std::string& path) {
  auto reader = LineReader::of_file(path, longest_called_line);
  if (!reader) return reader.faults();
  std::vector<std::string> all;
  LineFaults faults;
  int number = 0;
  while (true) {
    auto lines = (*reader)->next(lines_at_once);
    if (!lines) return lines.faults();
    if ((*reader)->bytes() > largest_call_file) return too_large(path);
    if (lines->empty()) break;
    for (std::string& line : *lines) {
      if (auto fault = fault_in(line, ++number)) faults.add(*std::move(fault));
      if (faults.none()) all.push_back(std::move(line));
    }
  }
  if (!faults.none()) return std::move(faults).told(path);
  return all;
}

}  // namespace evenclaw::cli
