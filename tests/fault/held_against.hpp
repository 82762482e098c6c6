// What a file holds after a fault, held against what was acknowledged before.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <string>

#include "tests/fault/acknowledging_store.hpp"

namespace evenclaw::test {

struct Verdict {
  int lost = 0;     // acknowledged entries that are not there as they were
  int doubled = 0;  // entries that are there twice
  int half = 0;     // parts of a write that was not acknowledged; rows that do not fit the log
  std::string why;  // the first thing that was wrong

  [[nodiscard]] bool is_good() const { return lost == 0 && doubled == 0 && half == 0; }
};

/// The first `certain` writes were acknowledged; the next may be there, whole. Every row is
/// compared with the picture made anew. What the file holds is not changed.
Verdict held_against(const std::string& file, const Acknowledged& writes, std::size_t certain);

/// How many of the writes, from the first on, the file holds: these and no part of another. Nothing
/// when it holds anything else, cannot be read, or its rows do not fit.
std::optional<std::size_t> writes_held(const std::string& file, const Acknowledged& writes);

/// The folder holds these files (by their whole names) and nothing else.
void lay_out(const std::string& folder, const std::map<std::string, std::string>& files);

}  // namespace evenclaw::test
