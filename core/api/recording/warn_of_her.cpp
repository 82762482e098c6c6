// How she has to be handled is told before anybody stands behind her.
#include <string>

#include "core/api/recording/checking.hpp"
#include "core/trade/call_line/known_of_her.hpp"
#include "core/trade/handling_rows.hpp"

namespace evenclaw {

void ChecksOfHer::warn_of_her() {
  const CowPast& past = crush_.cow->past;
  const std::string words = spoken(standing_in(past.rows.handling));
  if (book_.typed && past.same_visit.empty() && !words.empty()) show_mark("careful: " + words);
}

void ChecksOfHer::offer_to_warn(std::string_view reason) {
  if (!book_.typed || reason.empty()) return;
  for (const EnumWord<Handling>& row : EnumWords<Handling>::table) {
    const ActionKind kind = said_as(row.value);
    if (!holds_phrase(reason, TermKind::handling, static_cast<int>(kind), book_.language)) continue;
    show_mark("kept as why; to be told so when she comes again say \"" +
              std::string(book_.language.say(TermKind::handling, kind)) + "\" on its own");
  }
}

}  // namespace evenclaw
