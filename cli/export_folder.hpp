// A folder with all that is on record, for other programs.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/api/herds.hpp"
#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/result.hpp"

namespace evenclaw::cli {

struct Exported {
  std::string folder;
  std::vector<std::string> files;
  std::int64_t rows = 0;
  std::int64_t entries = 0;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("folder", &Exported::folder, "where it lies");
    visit("files", &Exported::files, "the files in it");
    visit("rows", &Exported::rows, "lines of the tables, their heads left out");
    visit("entries", &Exported::entries, "entries of the log; 0 of one herd alone");
  }
};

/// Whole or not at all: written beside its place, then renamed. Of one herd when one is given, then
/// without people and log, which tell of others. Faults: "output-exists", those of
/// write_new_file(), and "file-damaged" when an entry of the log cannot be read.
Result<Exported> export_into(const Ports& ports, const std::optional<Herd>& herd, Day today,
                             const std::string& folder);

}  // namespace evenclaw::cli
