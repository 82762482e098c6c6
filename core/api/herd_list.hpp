// Taking over the list of a herd's cows: who is new is entered, of who is known more is told.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

struct HerdListTaken {
  std::int32_t cows = 0;       // lines of cows
  std::int32_t entered = 0;    // nobody had recorded them yet
  std::int32_t told_more = 0;  // known, and something of them is new
  std::int32_t unchanged = 0;
  std::vector<std::string> not_read;  // columns that hold something else

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cows", &HerdListTaken::cows, "cows on the list");
    visit("entered", &HerdListTaken::entered, "cows nobody had recorded yet");
    visit("told_more", &HerdListTaken::told_more, "known cows of whom something is new");
    visit("unchanged", &HerdListTaken::unchanged, "known cows of whom nothing is new");
    visit("not_read", &HerdListTaken::not_read, "columns that hold something else");
  }
};

/// Written whole or not at all; the same list again writes nothing. A cow is known by her ear tag
/// or electronic number, or else by the herd number she carries on `from` or carries since. What
/// the list leaves empty stays as it is known. Faults, all of them with their lines: those of
/// cow_list() and of tell_of_cow(), and "list-unreadable" when one line names two known cows.
/// "answer-needed" unless `sure`: a known tag, number or later calving is told otherwise, the
/// number is that of a cow who was said to be gone, an electronic number is one for tests.
Result<HerdListTaken> take_herd_list(const Ports& ports, HerdId herd,
                                     std::span<const std::string> lines, Day from, bool sure);

}  // namespace evenclaw
