// Who is who, settled by a person: numbers given, cows united and parted, cows that left, entries
// blanked.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/bodies.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

/// A cow by any number valid on `day`, else by any number she had, else by her ear tag, electronic
/// number or another name of hers, else by the words an unnumbered or doubtful one is called by,
/// else by any words she was called by in a turn, also before she got a number; the one seen last
/// when several fit. Fault "cow-not-found" with the nearest numbers as remedy, and with the cows in
/// doubt that may be her. `said` in the form of records: recorded_as() of core/api/cow_names.hpp,
/// here and below.
Result<CowId> find_cow(Store& store, HerdId herd, std::string_view said, std::optional<Day> day);

/// The cows whose number is in doubt and may be this one ("159 or 195" may be 159), the one seen
/// last first.
Result<std::vector<CowRow>> cows_that_may_be(Store& store, HerdId herd, std::string_view said);

/// The cow that was last called so until it was put right; nothing when none was.
Result<std::optional<CowId>> find_cow_called(Store& store, HerdId herd, std::string_view said);

/// Of a cow that was united of several the one that carries this number or was called so; the cow
/// itself where she was not united. Faults as find_cow().
Result<CowId> find_member(Store& store, HerdId herd, std::string_view said, std::optional<Day> day);

/// The other cow that carries this number or carried it last. Fault "usage" when there is none.
Result<CowId> other_carrier(Store& store, HerdId herd, std::string_view number, CowId than);

/// A cow gets a number from a day on: an unnumbered one was recognised, or a tag was replaced. When
/// another cow carries that number already the answer is "answer-needed" (they may be the same:
/// unite_cows()), unless `sure`.
Result<EntryId> give_number(const Ports& ports, HerdId herd, NumberGiven given, bool sure);

/// Says that two records are one cow. Both seen in one visit gives "answer-needed" unless `sure`,
/// for two cows in the crush on one day are more likely two.
Result<EntryId> unite_cows(const Ports& ports, HerdId herd, CowId first, CowId second, bool sure);

/// Takes back what united the two; "usage" when nothing did. Name them by find_member(), for united
/// they are one.
Result<EntryId> part_cows(const Ports& ports, HerdId herd, CowId first, CowId second);

/// She left the herd; her open tasks are closed with the same words.
Result<EntryId> cow_left(const Ports& ports, HerdId herd, CowId cow, Day day,
                         std::string_view words);

/// An open task nobody will be reminded of any more, because the entry that made it lost its body.
struct TaskLost {
  std::string cow_said;
  Owner owner = Owner::farmer;
  std::string words;
  Day due;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cow_said", &TaskLost::cow_said, "her number, or what she looks like");
    visit("owner", &TaskLost::owner, "whose it was");
    visit("words", &TaskLost::words, "as told to the owner");
    visit("due", &TaskLost::due, "by this day");
  }
};

struct Redacted {
  EntryId entry;  // that takes the body away
  std::vector<TaskLost> tasks_lost;
  std::vector<EntryId> still_told_by;  // corrections that stand for it and keep their contents

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("entry", &Redacted::entry, "the entry that was written");
    visit("tasks_lost", &Redacted::tasks_lost, "open tasks that went with the contents");
    visit("still_told_by", &Redacted::still_told_by, "corrections of it, which keep theirs");
  }
};

/// Takes away the body of an entry for good; envelope and digest stay. Fault "usage" when there is
/// no such entry, or no reason was given. What the entry made goes with it: where open tasks would,
/// the answer is "answer-needed" with all of them, unless `sure`.
Result<Redacted> redact_entry(const Ports& ports, EntryId target, std::string_view words,
                              bool sure);

}  // namespace evenclaw
