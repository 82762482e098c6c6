#include "store/sqlite/file_identity.hpp"

#include <fcntl.h>
#include <sys/stat.h>

#include <filesystem>
#include <system_error>

namespace evenclaw {

namespace {

std::string birth_time_of(const std::string& file) {
  struct statx status = {};
  const int failed = ::statx(AT_FDCWD, file.c_str(), 0, STATX_BTIME, &status);
  if (failed != 0 || (status.stx_mask & STATX_BTIME) == 0) return {};
  return std::to_string(status.stx_btime.tv_sec) + "." + std::to_string(status.stx_btime.tv_nsec);
}

}  // namespace

std::optional<FileIdentity> file_identity(const std::string& file) {
  struct stat status = {};
  if (::stat(file.c_str(), &status) != 0) return std::nullopt;
  std::error_code failed;
  const std::filesystem::path path = std::filesystem::canonical(file, failed);
  return FileIdentity{static_cast<std::uint64_t>(status.st_dev),
                      static_cast<std::uint64_t>(status.st_ino), failed ? file : path.string(),
                      birth_time_of(file)};
}

std::string absolute_name(const std::string& file) {
  std::error_code failed;
  const std::filesystem::path path = std::filesystem::weakly_canonical(file, failed);
  if (failed || path.empty() || !path.is_absolute()) {
    const std::filesystem::path plain = std::filesystem::absolute(file, failed);
    return failed ? file : plain.string();
  }
  return path.string();
}

}  // namespace evenclaw
