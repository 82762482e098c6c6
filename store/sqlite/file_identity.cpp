#include "store/sqlite/file_identity.hpp"

#include <sys/stat.h>

#include <filesystem>
#include <system_error>

namespace evenclaw {

std::optional<FileIdentity> file_identity(const std::string& file) {
  struct stat status = {};
  if (::stat(file.c_str(), &status) != 0) return std::nullopt;
  std::error_code failed;
  const std::filesystem::path path = std::filesystem::canonical(file, failed);
  return FileIdentity{static_cast<std::uint64_t>(status.st_dev),
                      static_cast<std::uint64_t>(status.st_ino), failed ? file : path.string()};
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
