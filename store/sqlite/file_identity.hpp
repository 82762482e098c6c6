// Which file this is on this machine, so that a copy notices that it is one.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace evenclaw {

struct FileIdentity {
  std::uint64_t device = 0;
  std::uint64_t inode = 0;
  std::string path;  // absolute, links followed

  friend bool operator==(const FileIdentity&, const FileIdentity&) = default;
};

/// Nothing when there is no such file.
std::optional<FileIdentity> file_identity(const std::string& file);

/// The name from the root of the file system, links of its folder followed; the name itself when
/// the folder does not exist.
std::string absolute_name(const std::string& file);

}  // namespace evenclaw
