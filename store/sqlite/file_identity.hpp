// Which file this is on this machine, so that a copy notices that it is one. A file whose bytes
// were overwritten in place with an older state of its own looks the same from outside (decision
// 0006).
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace evenclaw {

struct FileIdentity {
  std::uint64_t device = 0;
  std::uint64_t inode = 0;
  std::string path;  // absolute, links followed
  /// When it was made, to the nanosecond: a number the file system gives to a new file although it
  /// was another's before does not pass for the old file. Empty where the file system keeps none.
  std::string born;

  friend bool operator==(const FileIdentity&, const FileIdentity&) = default;
};

/// Nothing when there is no such file.
std::optional<FileIdentity> file_identity(const std::string& file);

/// The name from the root of the file system, links of its folder followed; the name itself when
/// the folder does not exist.
std::string absolute_name(const std::string& file);

}  // namespace evenclaw
