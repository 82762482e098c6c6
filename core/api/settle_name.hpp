// Who called or typed, put right where a name was read as a known one.
#pragma once

#include <string>
#include <vector>

#include "core/api/journal.hpp"
#include "core/api/ports.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// The question a doubtful name left, and who it was.
struct NameSettled {
  HerdId herd;
  VisitId visit;
  EntryId question;
  bool is_writer = false;
  PersonId read_as;
  PersonId was;
};

/// Corrects, unwritten in `journal`, the turns that count to `read_as` because of that question:
/// those of the same device from the question on, up to the first of somebody else. Returns what
/// their cows were called, in order; empty when `was` is `read_as`.
Result<std::vector<std::string>> put_name_right(const Ports& ports, const NameSettled& name,
                                                Journal& journal);

}  // namespace evenclaw
