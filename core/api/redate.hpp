// The tasks of a visit, counted anew from its right day.
#pragma once

#include <string>
#include <vector>

#include "core/api/journal.hpp"
#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

/// The day under which a visit stood, and the one on which it was.
struct RightDay {
  HerdId herd;
  VisitId visit;
  Day was;
  Day is;
};

/// An open task whose day is another one when it is counted from the right day.
struct TaskRedated {
  std::string cow_said;
  Owner owner = Owner::farmer;
  std::string words;
  Day told;   // as it was made
  Day right;  // counted from the right day

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cow_said", &TaskRedated::cow_said, "her number, or what she looks like");
    visit("owner", &TaskRedated::owner, "who does it");
    visit("words", &TaskRedated::words, "as told to the owner");
    visit("told", &TaskRedated::told, "by this day, as it was made");
    visit("right", &TaskRedated::right, "by this day, counted from the right day");
  }
};

/// Whether the turns are to be corrected, or only looked at.
enum class Redating { corrects, looks };

/// The open tasks that turns and news of the visit made and nobody moved, where their day differs.
/// With Redating::corrects each such turn or news gets its correction in `journal`, unwritten: the
/// same words, the same tasks under the same ids, the days counted from the right day by the rules
/// of today ("off Thu" is the Thursday after it). A look that was too early under the wrong day and
/// is not under the right one is closed by it. docs/method/follow-up.md says why.
Result<std::vector<TaskRedated>> redate_tasks(const Ports& ports, const RightDay& day,
                                              Redating redating, Journal& journal);

}  // namespace evenclaw
