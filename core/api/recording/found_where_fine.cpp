// What a line did that nobody may have seen: a finding on a foot that "rest fine" spoke of a line
// before, hers after all or of the next cow, whose number nobody said; and what was taken back of
// several feet at once; and a time that was said once more.
#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "core/api/recording/checking.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/late_mending.hpp"
#include "core/api/recording/time_said_anew.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/call_line/quoted_words.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

const FootCall* call_of(const Turn& turn, Foot foot) {
  const auto at = std::find_if(turn.feet.begin(), turn.feet.end(),
                               [&](const FootCall& call) { return call.foot == foot; });
  return at == turn.feet.end() ? nullptr : &*at;
}

FootSet found_where_fine(const Turn& before, const Turn& now) {
  FootSet feet;
  if (!before.rest_fine) return feet;
  for (const FootCall& call : now.feet) {
    if (!call.findings.empty() && call_of(before, call.foot) == nullptr) feet.add(call.foot);
  }
  return feet;
}

bool has_act(const FootCall* call, const Action& act) {
  return call != nullptr &&
         std::find(call->actions.begin(), call->actions.end(), act) != call->actions.end();
}

/// One is done now that was not: moved to that foot, or put in the place of another.
bool is_one_done_anew(const Turn& before, const Turn& now) {
  return std::any_of(now.feet.begin(), now.feet.end(), [&](const FootCall& call) {
    return std::any_of(call.actions.begin(), call.actions.end(), [&](const Action& act) {
      return !has_act(call_of(before, call.foot), act);
    });
  });
}

FootSet taken_back_on(const Turn& before, const Turn& now, const Action& act) {
  FootSet feet;
  for (const FootCall& call : before.feet) {
    const FootCall* still = call_of(now, call.foot);
    if (has_act(&call, act) && still != nullptr && !has_act(still, act)) feet.add(call.foot);
  }
  return feet;
}

/// "\"wrap on\" taken back: both hinds", of what was done on several feet.
std::vector<std::string> taken_back(const Turn& before, const Turn& now, const Language& language) {
  std::vector<std::string> told;
  if (is_one_done_anew(before, now)) return told;
  for (const FootCall& call : before.feet) {
    for (const Action& act : call.actions) {
      const FootSet feet = taken_back_on(before, now, act);
      if (feet.count() < 2) continue;
      std::string words = '"' + offered_act(std::nullopt, act.kind, act.claw, language) +
                          "\" taken back: " + spoken(feet);
      if (std::find(told.begin(), told.end(), words) == told.end()) told.push_back(words);
    }
  }
  return told;
}

}  // namespace

void ChecksOfHer::tell_found_where_fine(const Turn& before) {
  const Turn& now = crush_.cow->draft.turn;
  for (const std::string& told : taken_back(before, now, book_.language)) show_mark(told);
  const FootSet feet = found_where_fine(before, now);
  if (feet.empty()) return;
  show_mark(with_quoted_words(
      spoken(feet) +
          " was fine a line before. Not hers? \"{nothing after all}\", then the right number",
      book_.language));
}

void ChecksOfHer::tell_times_said_anew(const Turn& before, const Line& line) {
  const bool corrects =
      std::any_of(line.clauses.begin(), line.clauses.end(), [](const Clause& clause) {
        const auto* said = std::get_if<TurnClause>(&clause);
        return said != nullptr && mends_or_takes_back(*said);
      });
  // What a correction says is what whoever said it meant to change.
  if (corrects) return;
  const Turn& now = crush_.cow->draft.turn;
  if (before.cow == now.cow) {
    for (const std::string& told : times_said_anew(before, now, book_.visit.day, book_.language)) {
      show_mark(told);
    }
    for (const std::string& told :
         shorter_times_said(before, now, book_.visit.day, book_.language)) {
      show_mark(told);
    }
  }
  const std::optional<Turn> whole = whole_turn(book_, *crush_.cow);
  if (!whole) return;
  for (const std::string& told : times_said_anew(crush_.cow->earlier->turn.body.turn, *whole,
                                                 book_.visit.day, book_.language)) {
    if (crush_.cow->marks.insert(told).second) show_mark(told);
  }
}

}  // namespace evenclaw
