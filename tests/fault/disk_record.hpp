// What was done to the files of a folder, act by act, so that any power cut can be played later.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace evenclaw::test {

/// One act. Files carry numbers, because names change.
struct DiskAct {
  enum class Kind {
    found,        // it lay there, durable, before anything was recorded: `bytes` are its contents
    created,      // under `name`; only a synced folder keeps the name
    written,      // `bytes` from `at` on
    cut_to,       // to the length `at`
    synced,       // all that was done to the contents before is durable
    sync_failed,  // what was not durable is kept or lost, and no later sync brings it back
    renamed,      // to `name`
    removed,
    folder_synced  // all names are durable as they are now
  };
  Kind kind;
  int file = 0;
  std::int64_t at = 0;
  std::string bytes = {};
  std::string name = {};
};

struct DiskRecord {
  std::vector<DiskAct> acts;
  /// How many acts had been done when the first, second ... acknowledgement was given.
  std::vector<std::size_t> acknowledged_after;
};

}  // namespace evenclaw::test
