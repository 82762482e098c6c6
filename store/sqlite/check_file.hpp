// Looking a whole file over: every page, every entry against its digest, every device's count.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "core/log/merge.hpp"

namespace evenclaw {

struct FileReport {
  std::int64_t entries = 0;  // versions of entries that could be read
  /// What cannot be read or was changed: "file-damaged" for pages, "entry-not-canonical" and
  /// "entry-digest-wrong" for entries, "row-unreadable" where what an entry is found by does not
  /// say what the entry says. `token` is the entry's id where there is one.
  Faults damaged;
  /// Holes, double counts, jumps and corrections that do not fit, scope by scope.
  std::vector<LogFlaw> flaws;
};

/// Only reads. A fault means that the file could not be looked at: "file-not-found",
/// "file-unreadable", "not-our-file", "file-newer". Holds the envelopes of one scope in memory at
/// a time.
Result<FileReport> check_file(const std::string& file);

}  // namespace evenclaw
