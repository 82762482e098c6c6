#include "core/trade/call_line/gone_on.hpp"

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "core/trade/call_line/said_again.hpp"

namespace evenclaw {

namespace {

void append(std::string& text, const std::string& more) {
  if (!text.empty() && !more.empty()) text += "; ";
  text += more;
}

template <class T>
std::size_t count_like(const std::vector<T>& all, const T& said) {
  return static_cast<std::size_t>(std::count_if(
      all.begin(), all.end(), [&said](const T& each) { return are_one(each, said); }));
}

/// False when it could be either of two.
template <class T>
bool add_or_complete(std::vector<T>& all, const T& said) {
  if (count_like(all, said) > 1) return false;
  const auto like =
      std::find_if(all.begin(), all.end(), [&said](const T& each) { return are_one(each, said); });
  if (like == all.end()) {
    all.push_back(said);
  } else {
    complete(*like, said);
  }
  return true;
}

template <class T>
bool add_all(std::vector<T>& all, const std::vector<T>& more) {
  return std::all_of(more.begin(), more.end(),
                     [&all](const T& said) { return add_or_complete(all, said); });
}

/// A foot called before is the same foot only when a lesion of then is told of again; a lesion told
/// in another way contradicts.
bool add_findings(std::vector<Finding>& all, const std::vector<Finding>& more) {
  const std::vector<Finding> before = all;
  const bool tells_of_one_again = std::any_of(
      more.begin(), more.end(), [&](const Finding& said) { return count_like(before, said) > 0; });
  const bool contradicts = std::any_of(more.begin(), more.end(), [&](const Finding& said) {
    const bool same_lesion = std::any_of(before.begin(), before.end(), [&](const Finding& found) {
      return found.lesion == said.lesion;
    });
    return same_lesion && count_like(before, said) == 0;
  });
  if (contradicts || (!before.empty() && !more.empty() && !tells_of_one_again)) return false;
  return add_all(all, more);
}

bool add_measures(std::vector<Measure>& all, const std::vector<Measure>& more) {
  for (const Measure& said : more) {
    const bool measured_otherwise = std::any_of(all.begin(), all.end(), [&](const Measure& known) {
      return known.kind == said.kind && known.claw == said.claw && known != said;
    });
    if (measured_otherwise) return false;
  }
  return add_all(all, more);
}

/// A foot that stayed down may be lifted later; one that was only named takes what is said now.
bool add_state(FootCall& call, const FootCall& more) {
  if (more.state == FootState::unsaid || more.state == call.state) return true;
  const bool was_worked_on = !call.actions.empty() || !call.measures.empty();
  const bool was_left_open = call.state == FootState::unsaid;
  if (more.state == FootState::not_lifted && (!was_left_open || was_worked_on)) return false;
  const bool is_open = was_left_open || call.state == FootState::not_lifted;
  if (!is_open) return false;
  call.state = more.state;
  return true;
}

bool add_trimmed(Trimmed& trimmed, Trimmed more) {
  if (trimmed != Trimmed::not_called && more != Trimmed::not_called) return trimmed == more;
  if (trimmed == Trimmed::not_called) trimmed = more;
  return true;
}

bool add_call(FootCall& call, const FootCall& more) {
  append(call.note, more.note);
  return add_state(call, more) && add_findings(call.findings, more.findings) &&
         add_all(call.actions, more.actions) && add_measures(call.measures, more.measures) &&
         add_trimmed(call.trimmed, more.trimmed);
}

bool add_feet(Turn& turn, const Turn& more) {
  for (const FootCall& call : more.feet) {
    FootCall* known = find_foot(turn, call.foot);
    if (known == nullptr) {
      turn.feet.push_back(call);
    } else if (!add_call(*known, call)) {
      return false;
    }
  }
  return true;
}

void add_reason(Turn& turn, Reason reason) {
  if (reason == Reason::not_called || came_for(turn, reason)) return;
  if (turn.reason == Reason::not_called) {
    turn.reason = reason;
  } else {
    turn.also.push_back(reason);
  }
}

void add_reasons(Turn& turn, const Turn& more) {
  add_reason(turn, more.reason);
  for (const Reason reason : more.also) add_reason(turn, reason);
  if (turn.reason_words != more.reason_words) append(turn.reason_words, more.reason_words);
  turn.lame.add(more.lame);
}

bool add_mobility(Turn& turn, const Turn& more) {
  if (turn.mobility.said() && more.mobility.said()) return turn.mobility == more.mobility;
  if (more.mobility.said()) turn.mobility = more.mobility;
  return true;
}

/// Gone on with to its end it is done, whatever had kept it from that.
void add_end(Turn& turn, const Turn& more) {
  if (more.end == TurnEnd::done) {
    turn.end = TurnEnd::done;
    turn.end_reason.clear();
    return;
  }
  const bool was_worked_on = !turn.feet.empty();
  turn.end = was_worked_on ? TurnEnd::unfinished : more.end;
  append(turn.end_reason, more.end_reason);
}

}  // namespace

std::optional<Turn> gone_on(const Turn& before, const Turn& more) {
  Turn turn = before;
  turn.cow = more.cow;
  add_reasons(turn, more);
  const bool fits =
      add_feet(turn, more) && add_all(turn.actions, more.actions) && add_mobility(turn, more);
  if (!fits) return std::nullopt;
  turn.rest_fine = turn.rest_fine || more.rest_fine;
  turn.walks_sound = turn.walks_sound || more.walks_sound;
  append(turn.note, more.note);
  add_end(turn, more);
  return turn;
}

}  // namespace evenclaw
