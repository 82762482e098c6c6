#include "cli/output_file.hpp"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>

namespace evenclaw::cli {
namespace {

namespace fs = std::filesystem;

Fault fault_of_errno(const std::string& path, int error) {
  std::string slug = "disk-failed";
  if (error == ENOSPC || error == EDQUOT || error == EFBIG) slug = "disk-full";
  if (error == EACCES || error == EROFS || error == EPERM) slug = "file-read-only";
  if (error == ENOENT || error == ENOTDIR) slug = "file-not-found";
  return {slug, path + " cannot be written: " + std::strerror(error), path, 0, 0, ""};
}

bool begins_with_ours(const std::string& path, std::string_view ours) {
  if (ours.empty()) return false;
  std::ifstream stream(path, std::ios::binary);
  std::string head(ours.size(), '\0');
  stream.read(head.data(), static_cast<std::streamsize>(head.size()));
  return stream.gcount() == static_cast<std::streamsize>(head.size()) && head == ours;
}

/// Everything, durable, into a file nobody else has open; errno's value on failure.
int write_all(const std::string& path, std::string_view content) {
  const int file = open(path.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
  if (file < 0) return errno;
  int error = 0;
  while (!content.empty() && error == 0) {
    const ssize_t written = write(file, content.data(), content.size());
    if (written < 0) {
      error = errno == EINTR ? 0 : errno;
    } else {
      content.remove_prefix(static_cast<std::size_t>(written));
    }
  }
  if (error == 0 && fsync(file) != 0) error = errno;
  if (close(file) != 0 && error == 0) error = errno;
  return error;
}

}  // namespace

Outcome write_file(const std::string& path, std::string_view content, std::string_view ours) {
  std::error_code ignored;
  if (fs::exists(path, ignored) && !begins_with_ours(path, ours)) {
    return Fault{"output-exists", path + " is there already and not a page of ours", path};
  }
  const fs::path folder = fs::path(path).parent_path();
  if (!folder.empty()) fs::create_directories(folder, ignored);
  const std::string beside_it = path + ".part";
  int error = write_all(beside_it, content);
  if (error == 0 && rename(beside_it.c_str(), path.c_str()) != 0) error = errno;
  if (error == 0) return Done{};
  unlink(beside_it.c_str());
  return fault_of_errno(path, error);
}

std::string beside(const std::string& records_file, const std::string& name) {
  return (fs::path(records_file).parent_path() / "sheets" / name).string();
}

}  // namespace evenclaw::cli
