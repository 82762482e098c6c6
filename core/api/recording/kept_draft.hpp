// The half-entered turn as the store keeps it, so that a dead battery loses nothing.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/turn.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

/// Her lines are kept as said and read again: what was said is what is recorded. What the last line
/// leaves to the next one is kept with them, and by itself while nobody stands there.
struct KeptDraft {
  HerdId herd;
  VisitId visit;
  CowId cow;
  CowSaid said;  // as she was named, perhaps in a line that was not understood
  PersonId caller;
  PersonId writer;
  std::vector<std::string> words;
  std::vector<std::string> refused;       // lines about her that were not understood
  std::vector<FootSet> spoken_of;         // the feet each of them came behind
  std::vector<std::int32_t> said_before;  // how many lines of hers were taken before each of them
  std::vector<std::string> called_first;  // what she was called before her number was put right
  std::vector<WarningShown> warnings;
  bool done_said = false;
  std::optional<std::string> held_back_by;
  std::optional<PersonId> called_by;        // when somebody else calls since she was called
  std::optional<std::string> just_refused;  // with the last line
  std::optional<std::string> told_of;       // the number of another cow of whom news came last
  bool nobody = false;                      // stands there
  std::optional<EntryId> last_turn;         // of her who was let out last
  std::optional<EntryId> registered;        // her number, by this recording
  bool let_out = false;                     // with the last line
  std::optional<std::string> whose;         // the last line, when it was asked whose it is
  bool counted = false;
  std::vector<std::string> news_of;       // the numbers of whom the last line told news
  std::optional<std::string> lacks_foot;  // the last line, when nothing else was missing
  std::optional<EntryId> in_doubt;        // her first call, when it is on record of another cow

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &KeptDraft::herd, "herd");
    visit("visit", &KeptDraft::visit, "visit");
    visit("cow", &KeptDraft::cow, "cow");
    visit("said", &KeptDraft::said, "the cow as named");
    visit("caller", &KeptDraft::caller, "who calls");
    visit("writer", &KeptDraft::writer, "who types");
    visit("words", &KeptDraft::words, "the lines as said");
    visit("refused", &KeptDraft::refused, "lines that were not understood");
    visit("spoken_of", &KeptDraft::spoken_of, "the feet each of them came behind");
    visit("said_before", &KeptDraft::said_before, "lines of hers taken before each of them");
    visit("called_first", &KeptDraft::called_first, "what she was called until it was put right");
    visit("warnings", &KeptDraft::warnings, "warnings shown so far");
    visit("done_said", &KeptDraft::done_said, "she was to be let out");
    visit("held_back_by", &KeptDraft::held_back_by,
          "a line not understood that may have named another cow");
    visit("called_by", &KeptDraft::called_by, "who called her, when another one calls now");
    visit("just_refused", &KeptDraft::just_refused, "the last line, when it was not understood");
    visit("told_of", &KeptDraft::told_of, "another cow of whom news came last");
    visit("nobody", &KeptDraft::nobody, "nobody stands in the crush");
    visit("last_turn", &KeptDraft::last_turn, "the turn of her who was let out last");
    visit("registered", &KeptDraft::registered, "the entry that gave her her number");
    visit("let_out", &KeptDraft::let_out, "she was let out with the last line");
    visit("whose", &KeptDraft::whose, "the last line, when it was asked whom it puts right");
    visit("counted", &KeptDraft::counted, "the last line counted animals");
    visit("news_of", &KeptDraft::news_of, "the numbers of whom the last line told news");
    visit("lacks_foot", &KeptDraft::lacks_foot, "the last line, when only its foot was missing");
    visit("in_doubt", &KeptDraft::in_doubt, "her first call, under a number that was put right");
  }
};

std::string kept_text(const KeptDraft& draft);
/// Fault "json-unreadable" when the text is no half-entered turn.
Result<KeptDraft> kept_draft(std::string_view text);

}  // namespace evenclaw
