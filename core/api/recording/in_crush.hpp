// The cow in the crush, and what is remembered of those that stood there before her.
#pragma once

#include <cstddef>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/journal.hpp"
#include "core/api/recording/number_slip.hpp"
#include "core/api/recording/recorded_before.hpp"
#include "core/api/recording/refused_feet.hpp"
#include "core/api/recording/warning_ledger.hpp"
#include "core/base/date.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/check.hpp"

namespace evenclaw {

/// A turn of this visit in which something about her stayed open, and what was known before it.
struct EarlierTurn {
  RecordedTurn turn;
  CowPast past;
  WarningLedger warnings;
};

/// The cow in the crush.
struct InCrush {
  TurnDraft draft;
  CowId cow;
  CowPast past;
  std::vector<NearCow> near;  // when she is new here
  WarningLedger warnings;
  std::optional<EarlierTurn> earlier;  // gone on with unless she contradicts it
  std::set<std::string> marks;         // shown already
  FootSet fine_before_named;  // "rest fine" speaks of them: said before they were, or not named
  std::vector<RefusedLine> refused;       // lines about her that nobody could read
  std::vector<std::string> taken_anew;    // of last time, for what was put right; not shown yet
  std::string told_of;                    // the number of another cow of whom news came last
  std::string of_which;                   // as said: a line that may be of either of the two
  std::vector<std::string> called_first;  // before her number was put right
  bool done_said = false;                 // kept in only because a warning was open
  bool named_in_refused = false;          // nobody has named her in a line that could be read
  bool called_to_the_end = false;         // "done" was said of her
  bool mended_before = false;             // called again to mend what was called before
  bool broke_off = false;                 // taken up again, and nothing said since
  bool was_finished = false;              // with the line before
  bool plan_awaited = false;              // the next line may say what is done about her lameness
  std::size_t taken_up = 0;               // of her lines, those said before the recording broke off
  std::size_t given_again = 0;            // of those, the ones a pipe or file gave once more
  std::size_t first_answer = 0;           // of the answers not given yet, the first about her
  std::optional<FootSet> filled_then;     // by "rest fine", when she was let out before
  SaidBy by;                              // who called her, and who typed
  std::optional<Instant> began;           // when she was named, where that is known
};

/// The cow that was let out last, as she stood there, and the entry that holds her turn.
struct LastOut {
  InCrush cow;
  EntryId turn;
};

/// Why a cow is let out.
enum class LetOutBy { next_cow, done, end_of_input, end_of_visit, other_visit };

}  // namespace evenclaw
