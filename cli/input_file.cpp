#include "cli/input_file.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstddef>
#include <cstring>

namespace evenclaw::cli {
namespace {

constexpr std::size_t bytes_at_once = 1024UL * 1024;

/// Closes what it was given.
class OpenFile {
 public:
  explicit OpenFile(int file) : file_(file) {}

  ~OpenFile() {
    if (file_ >= 0) close(file_);
  }

  OpenFile(const OpenFile&) = delete;
  OpenFile& operator=(const OpenFile&) = delete;

  [[nodiscard]] int get() const { return file_; }

 private:
  int file_;
};

Fault not_read(const std::string& path, const std::string& why) {
  return {"file-unreadable",
          path + " cannot be read: " + why,
          path,
          0,
          0,
          "Check who may read it and whether its disk is connected."};
}

Fault above_limit(const std::string& path, std::int64_t largest) {
  constexpr std::int64_t a_megabyte = 1024LL * 1024;
  return {"file-too-large",
          path + " is over " + std::to_string(largest / a_megabyte) + " MB",
          path,
          0,
          0,
          "Check that it is the right file; split it if it is."};
}

Result<std::string> contents(const std::string& path, int file, std::int64_t largest) {
  std::string bytes;
  while (true) {
    const std::size_t there = bytes.size();
    bytes.resize(there + bytes_at_once);
    const ssize_t got = read(file, bytes.data() + there, bytes_at_once);
    if (got < 0 && errno == EINTR) {
      bytes.resize(there);
      continue;
    }
    if (got < 0) return not_read(path, std::strerror(errno));
    bytes.resize(there + static_cast<std::size_t>(got));
    if (static_cast<std::int64_t>(bytes.size()) > largest) return above_limit(path, largest);
    if (got == 0) return bytes;
  }
}

}  // namespace

Result<std::string> bytes_of_file(const std::string& path, std::int64_t largest) {
  const OpenFile file(open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (file.get() < 0) {
    const bool missing = errno == ENOENT || errno == ENOTDIR;
    if (missing) return Fault{"file-not-found", "there is no file " + path, path};
    return not_read(path, std::strerror(errno));
  }

  struct stat seen {};

  if (fstat(file.get(), &seen) == 0) {
    if (S_ISDIR(seen.st_mode)) return not_read(path, "it is a folder");
    if (S_ISREG(seen.st_mode) && seen.st_size > largest) return above_limit(path, largest);
  }
  return contents(path, file.get(), largest);
}

}  // namespace evenclaw::cli
