// What was worked at a visit, counted by kind of work: for the sheet, and for whoever writes a
// bill.
#pragma once

#include <string>
#include <vector>

#include "core/base/enum_words.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

enum class Work {
  cows,          // in the crush, those not finished among them
  not_finished,  // of these, never finished later that day
  feet_lifted,
  feet_not_trimmed,  // of these, said not to be trimmed
  block_on,
  block_again,  // blocked again because not healed
  block_stacked,
  block_refitted,  // a new one for one that was lost
  block_off,
  wrap_on,
  wrap_off,
  product,           // put on or given, one line for each
  animals_together,  // counted together, without those that were called as cows of their own
  feet_together      // of these, lifted
};

template <>
struct EnumWords<Work> {
  static constexpr EnumWord<Work> table[] = {{Work::cows, "cows"},
                                             {Work::not_finished, "not_finished"},
                                             {Work::feet_lifted, "feet_lifted"},
                                             {Work::feet_not_trimmed, "feet_not_trimmed"},
                                             {Work::block_on, "block_on"},
                                             {Work::block_again, "block_again"},
                                             {Work::block_stacked, "block_stacked"},
                                             {Work::block_refitted, "block_refitted"},
                                             {Work::block_off, "block_off"},
                                             {Work::wrap_on, "wrap_on"},
                                             {Work::wrap_off, "wrap_off"},
                                             {Work::product, "product"},
                                             {Work::animals_together, "animals_together"},
                                             {Work::feet_together, "feet_together"}};
};

/// One line of the tally.
struct WorkDone {
  Work work = Work::cows;
  ActionKind act = ActionKind::opened;  // of a product: how it was put on or given
  std::string product;                  // its name as said; may be empty
  std::int64_t count = 0;               // cows, animals, feet, blocks, wraps; of a product, times
  std::int64_t cows = 0;                // on how many cows; of animals together 0
  ByWhom by_whom = ByWhom::not_called;  // of a product: the farmer or the vet gave it
};

/// What the rows of that visit tell, in the order of Work, products by act and name; kinds of which
/// there was nothing are left out. A foot, a block or a wrap that was called in two turns of the
/// visit counts once: nobody pays twice for what was written twice. A block on both claws is two.
/// What came off by itself, or was told to be gone since last time, is nobody's work.
std::vector<WorkDone> work_done(const Rows& rows, VisitId visit);

}  // namespace evenclaw
