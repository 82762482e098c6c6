// The contents of an entry are taken away for good, and what that undoes is told before.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

/// A task that stands otherwise once an entry lost its body.
struct TaskChanged {
  std::string cow_said;
  Owner owner = Owner::farmer;
  std::string words;
  Day due;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cow_said", &TaskChanged::cow_said, "her number, or what she looks like");
    visit("owner", &TaskChanged::owner, "whose it is");
    visit("words", &TaskChanged::words, "as told to the owner");
    visit("due", &TaskChanged::due, "by this day");
  }
};

struct Redacted {
  EntryId entry;                        // that takes the body away
  std::vector<TaskChanged> tasks_lost;  // open, and nobody will be reminded of them any more
  std::vector<TaskChanged> tasks_back;  // it had closed them; open again
  std::vector<EntryId> still_told_by;   // corrections that stand for it and keep their contents

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("entry", &Redacted::entry, "the entry that was written");
    visit("tasks_lost", &Redacted::tasks_lost, "open tasks that went with the contents");
    visit("tasks_back", &Redacted::tasks_back, "tasks it had closed, which are open again");
    visit("still_told_by", &Redacted::still_told_by, "corrections of it, which keep theirs");
  }
};

/// Takes away the body of an entry for good; envelope and digest stay. Fault "usage" when there is
/// no such entry, it is a removal itself, or no reason was given; "nothing-to-do" when its body is
/// gone already. What the entry made goes with it and what it closed is open again: where there are
/// such tasks the answer is "answer-needed" with all of them, unless `sure`.
Result<Redacted> redact_entry(const Ports& ports, EntryId target, std::string_view words,
                              bool sure);

}  // namespace evenclaw
