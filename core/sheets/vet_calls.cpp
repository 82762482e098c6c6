#include "core/sheets/vet_calls.hpp"

#include <algorithm>
#include <span>
#include <utility>

#include "core/sheets/earlier_signs.hpp"
#include "core/sheets/foot_lines.hpp"
#include "core/sheets/notifiable.hpp"
#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/task_blocks.hpp"
#include "core/sheets/vet_asked_before.hpp"
#include "core/sheets/vet_on_record.hpp"
#include "core/sheets/vet_stops.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view lame_nothing_found_rule = "lame-nothing-found";

std::string why_she_came(const CowSeen& cow, const Wording& wording) {
  std::string why;
  for (const TurnRow* turn : cow.turns) {
    const bool is_told = turn->reason != Reason::not_called || turn->came_lame;
    if (is_told) why += (why.empty() ? "" : ", ") + wording.reasons(*turn);
  }
  return why.empty() ? wording.reasons(TurnRow{}) : why;
}

/// Nothing is called "nothing found" that was not called so.
std::string without_finding(const CowSeen& cow, std::optional<Foot> foot, const Wording& wording) {
  if (!foot) return why_she_came(cow, wording);
  const std::string state = state_words(cow, *foot, wording);
  const bool lame_there = cow.came_lame && (cow.lame.empty() || cow.lame.has(*foot));
  return lame_there ? wording.say(Saying::vet_came_lame) + ", " + state : state;
}

/// Signs, toes far too short and acts the law keeps for the vet; of the whole cow when no foot is
/// given.
std::vector<std::string> seen_beside(const VisitView& view, const CowSeen& cow,
                                     std::optional<Foot> foot) {
  std::vector<std::string> seen = signs_of(view, cow, foot);
  if (foot) {
    for (std::string& toe : short_toes_on(view, cow, *foot)) seen.push_back(std::move(toe));
  }
  for (std::string& act : reserved_acts_on(view, cow, foot)) seen.push_back(std::move(act));
  return seen;
}

/// What was seen and found there at this visit; of every foot when none is given. The sign stands
/// before the lesion: it tells how soon he is needed.
std::vector<std::string> seen_there(const VisitView& view, const CowSeen& cow,
                                    std::optional<Foot> foot) {
  const Wording& wording = view.wording;
  std::vector<std::string> seen;
  const auto add = [&](Foot one, const std::string& words) {
    seen.push_back(foot ? words : wording.foot(one) + ", " + words);
  };
  if (!foot) seen = seen_beside(view, cow, std::nullopt);
  for (const Foot one : all_feet) {
    if (foot && one != *foot) continue;
    for (const std::string& words : seen_beside(view, cow, one)) add(one, words);
  }
  for (const FindingRow* row : cow.findings) {
    const bool is_elsewhere = foot && row->foot != *foot;
    if (!is_elsewhere) add(row->foot, wording.finding_at_claw(*row));
  }
  return seen;
}

std::string why_vet_today(const VisitView& view, const CowSeen& cow, std::optional<Foot> foot) {
  const std::vector<std::string> seen = seen_there(view, cow, foot);
  return seen.empty() ? without_finding(cow, foot, view.wording) : view.wording.list(seen);
}

/// "pain relief asked for": as it was called, where that is known.
std::string pain_relief_words(const TaskRow& task, const CowSeen& cow, const VisitView& view) {
  const auto called = std::find_if(
      cow.actions.begin(), cow.actions.end(),
      [&](const ActionRow* row) { return row->action == ActionKind::pain_relief_asked; });
  return called == cow.actions.end() ? task.words
                                     : view.wording.act(**called, view.input.visit.day);
}

/// Another call of today tells what was found on her.
bool is_called_beside(const VisitView& view, const TaskRow& task,
                      const std::vector<const Warning*>& stops) {
  return !stops.empty() ||
         std::any_of(view.tasks.begin(), view.tasks.end(), [&](const TaskRow* other) {
           return other != &task && other->cow == task.cow && is_for_vet(*other) &&
                  other->visit == task.visit && !is_for_pain_relief(*other);
         });
}

/// What was found where the vet is to look, or else what she came with.
std::string why_vet(const VisitView& view, const TaskRow& task,
                    const std::vector<const Warning*>& stops) {
  const CowSeen* cow = find_cow(view, task.cow);
  if (task.visit == view.input.visit.visit && cow != nullptr) {
    if (!is_for_pain_relief(task)) return why_vet_today(view, *cow, task.foot);
    const std::string what = pain_relief_words(task, *cow, view);
    const bool is_found_told =
        is_called_beside(view, task, stops) || !signs_without_vet(view, *cow).empty();
    return is_found_told ? what : what + "; " + why_vet_today(view, *cow, task.foot);
  }
  return asked_before_words(view, task);
}

std::string when_vet(const TaskRow& task, Day today, const Wording& wording) {
  if (task.overdue <= today) {
    const std::string late =
        wording.say(Saying::was_due_by, {{"date", wording.date(task.due, today)}});
    return clauses({late, wording.say(Saying::vet_ring_today)});
  }
  if (task.due <= today) return wording.say(Saying::vet_ring_today);
  return wording.say(Saying::vet_by, {{"date", wording.date(task.due, today)}});
}

/// Asked for twice for one place, he is rung once: as late as the first was, for what was seen
/// last.
void add_call(std::vector<VetCall>& calls, VetCall call) {
  const auto same = std::find_if(calls.begin(), calls.end(),
                                 [&](const VetCall& other) { return other.foot == call.foot; });
  if (same == calls.end()) {
    calls.push_back(std::move(call));
    return;
  }
  const bool is_told = same->why == call.why && same->when == call.when;
  if (is_told) return;
  same->why = clauses({call.why, same->why});
  same->urgency = std::min(same->urgency, call.urgency);
  same->is_of_today = same->is_of_today || call.is_of_today;
}

bool is_called_to(const std::vector<VetCall>& calls, std::optional<Foot> foot) {
  return std::any_of(calls.begin(), calls.end(), [&](const VetCall& call) {
    const bool is_there = !call.foot || call.foot == foot;
    return call.is_of_today && call.is_to_see_her && is_there;
  });
}

/// Where he was asked for at an earlier visit, what is there today is told before that.
void add_beside_asked_before(std::vector<VetCall>& calls, VetCall call) {
  const bool was_asked = std::any_of(calls.begin(), calls.end(), [&](const VetCall& other) {
    return other.foot == call.foot && !other.is_of_today && other.is_to_see_her;
  });
  if (was_asked) {
    add_call(calls, std::move(call));
  } else {
    calls.push_back(std::move(call));
  }
}

/// What is known of that place from this visit; "" when nothing is.
std::string told_today(const VisitView& view, const CowSeen& cow, std::optional<Foot> foot) {
  const bool is_told = foot ? is_spoken_of(cow, *foot) : cow.came_lame;
  const bool is_seen = !seen_there(view, cow, foot).empty();
  return is_told || is_seen ? why_vet_today(view, cow, foot) : std::string();
}

void put_today_first(std::vector<VetCall>& calls, const VisitView& view, const CowSeen& cow) {
  const bool is_told =
      std::any_of(calls.begin(), calls.end(), [](const VetCall& call) { return call.is_of_today; });
  for (VetCall& call : calls) {
    if (call.is_of_today || (is_told && !call.foot)) continue;
    const std::string today = told_today(view, cow, call.foot);
    if (!today.empty()) call.why = clauses({today, call.why});
  }
}

/// How soon what is seen there wants him; of every foot when none is given.
VetUrgency urgency_there(const VisitView& view, const CowSeen& cow, std::optional<Foot> foot) {
  VetUrgency urgency = VetUrgency::later;
  for (const SignOfHer& sign : signs_of_her(cow)) {
    const bool is_elsewhere = foot && sign.foot && sign.foot != foot;
    const bool is_known = vet_on_record(view, cow, sign) == VetOnRecord::knows;
    if (!is_elsewhere && !is_known) urgency = std::min(urgency, sign.sign->urgency);
  }
  return urgency;
}

void add_tasks(std::vector<VetCall>& calls, const VisitView& view, CowId cow,
               const std::vector<const Warning*>& stops) {
  const Wording& wording = view.wording;
  for (const TaskRow* task : view.tasks) {
    if (task->cow != cow || !is_for_vet(*task)) continue;
    const bool is_of_today =
        task->visit == view.input.visit.visit && find_cow(view, cow) != nullptr;
    VetCall call{task->foot, why_vet(view, *task, stops),
                 when_vet(*task, view.input.printed, wording), is_of_today};
    call.is_to_see_her = !is_for_pain_relief(*task);
    call.urgency = task->due <= view.input.printed ? VetUrgency::today : VetUrgency::later;
    if (is_of_today && call.is_to_see_her) {
      const CowSeen& seen = *find_cow(view, cow);
      call.urgency = std::min(call.urgency, urgency_there(view, seen, task->foot));
    }
    if (is_of_today && call.is_to_see_her) call.status = wording.say(Saying::vet_is_asked_for);
    add_call(calls, std::move(call));
  }
}

Saying status_of(const VisitView& view, const CowSeen& cow, const SignOfHer& sign,
                 const std::vector<const Warning*>& stops) {
  if (is_vet_asked_for(view, cow)) return Saying::vet_is_asked_for;
  if (was_gone_past(cow, sign)) return Saying::was_gone_past;
  const bool is_unanswered = std::any_of(stops.begin(), stops.end(), [&](const Warning* stop) {
    return stop->rule == sign.sign->check && stop->foot == sign.foot;
  });
  return is_unanswered ? Saying::nobody_answered : Saying::vet_is_not_asked_for;
}

/// Called for one foot, he is told of the signs on the others too.
void add_signs(std::vector<VetCall>& calls, const VisitView& view, const CowSeen& cow,
               const std::vector<const Warning*>& stops) {
  const Wording& wording = view.wording;
  std::vector<SignOfHer> signs = signs_without_vet(view, cow);
  const bool is_asked_for = is_vet_asked_for(view, cow) && !is_past_the_vet(view, cow.cow);
  if (is_asked_for) signs = signs_of_her(cow);
  const bool is_of_her_alone =
      calls.empty() &&
      std::none_of(signs.begin(), signs.end(), [](const SignOfHer& one) { return one.foot; });
  for (const SignOfHer& sign : signs) {
    if (is_called_to(calls, sign.foot)) continue;
    const bool tells_all = sign.foot || is_of_her_alone;
    const std::string why = tells_all ? why_vet_today(view, cow, sign.foot)
                                      : wording.list(signs_of(view, cow, std::nullopt));
    VetCall call{sign.foot, why, wording.say(Saying::vet_ring_today)};
    call.urgency = sign.sign->urgency;
    call.is_only_asked = sign.is_only_asked;
    if (sign.is_only_asked) {
      call.when = wording.say(Saying::ask_what_was_meant);
    } else {
      call.status = wording.say(status_of(view, cow, sign, stops));
    }
    add_beside_asked_before(calls, std::move(call));
  }
}

/// Whoever names him in words nobody has read as a call wants him for something.
void add_named_in_words(std::vector<VetCall>& calls, const VisitView& view, const CowSeen& cow) {
  const std::vector<WordsOfHer> naming = vet_only_named(view, cow);
  if (naming.empty()) return;
  std::vector<std::string> told;
  std::optional<Foot> foot = naming.front().foot;
  for (const WordsOfHer& said : naming) {
    told.push_back(words_as_told(said, view.wording));
    if (said.foot != foot) foot = std::nullopt;
  }
  VetCall call{foot, clauses(told), view.wording.say(BoxSaying::ask_what_vet_is_to_see)};
  call.is_only_asked = true;
  calls.push_back(std::move(call));
}

bool is_of_illness(const Warning& stop) {
  const std::span<const SignForVet> signs = signs_for_vet();
  return std::any_of(signs.begin(), signs.end(), [&](const SignForVet& sign) {
    return sign.urgency == VetUrgency::reportable && sign.check == stop.rule;
  });
}

void add_stops(std::vector<VetCall>& calls, const VisitView& view, const CowSeen& cow,
               const std::vector<const Warning*>& stops) {
  const Wording& wording = view.wording;
  const Saying status =
      is_vet_asked_for(view, cow) ? Saying::vet_is_asked_for : Saying::nobody_answered;
  for (const Warning* stop : stops) {
    if (!calls.empty() && is_told_by_sign(view, cow, *stop)) continue;
    const bool is_known = std::any_of(calls.begin(), calls.end(), [&](const VetCall& call) {
      return call.is_of_today && call.foot == stop->foot;
    });
    if (is_known) continue;
    VetCall call{stop->foot, why_vet_today(view, cow, stop->foot),
                 wording.say(Saying::vet_ring_today), true, wording.say(status)};
    if (stop->rank == Rank::note) {
      call.when = wording.say(BoxSaying::ring_this_week);
      call.urgency = VetUrgency::later;
      if (status == Saying::nobody_answered)
        call.status = wording.say(Saying::vet_is_not_asked_for);
    }
    calls.push_back(std::move(call));
  }
}

/// "Stop of Tue 17 Nov, nobody answered ...: Swollen above one claw: vet."
std::string stop_words(const EarlierStop& stop, const VisitView& view) {
  const std::string date = view.wording.date(stop.on, view.input.printed);
  const Saying which = stop.was_gone_past ? Saying::stop_gone_past : Saying::stop_of_day;
  const std::string words = view.wording.say(which, {{"date", date}}) + ' ' + stop.warning.words;
  if (stop.found.empty()) return words;
  return clauses({words, view.wording.say(BoxSaying::found_then, {{"what", stop.found}})});
}

bool is_only_asked(const EarlierStop& stop) {
  return stop.was_only_seen && stop.warning.rank == Rank::note;
}

std::string when_of(const EarlierStop& stop, const Wording& wording) {
  if (!is_only_asked(stop)) return wording.say(Saying::vet_ring_today);
  return stop.warning.rule == vet_named_rule ? wording.say(BoxSaying::ask_what_vet_is_to_see)
                                             : wording.say(Saying::ask_what_was_meant);
}

/// "seen Tue 17 Nov, and nobody said since what is there: fever and sore mouth": all that was seen
/// there that day; "" where an earlier one of them told it.
std::string seen_words(const EarlierStop& stop, const std::vector<const EarlierStop*>& all,
                       const VisitView& view) {
  std::vector<std::string> what;
  for (const EarlierStop* other : all) {
    const bool is_with_it = other->was_only_seen && other->on == stop.on &&
                            other->warning.foot == stop.warning.foot &&
                            is_only_asked(*other) == is_only_asked(stop);
    if (!is_with_it) continue;
    if (what.empty() && other != &stop) return {};
    const std::string& words = other->warning.words;
    if (std::find(what.begin(), what.end(), words) == what.end()) what.push_back(words);
  }
  const std::string date = view.wording.date(stop.on, view.input.printed);
  const BoxSaying saying = is_only_asked(stop) ? BoxSaying::told_on_day : BoxSaying::seen_on_day;
  return view.wording.say(saying, {{"date", date}, {"what", view.wording.list(what)}});
}

/// Lame and no lesion, where a sign of that day says why: nobody has to look again for it.
bool is_explained_then(const EarlierStop& stop, const std::vector<const EarlierStop*>& all) {
  return stop.warning.rule == lame_nothing_found_rule &&
         std::any_of(all.begin(), all.end(), [&](const EarlierStop* other) {
           return other->was_only_seen && !is_only_asked(*other) && other->on == stop.on &&
                  other->warning.foot && other->warning.foot == stop.warning.foot;
         });
}

void add_earlier_stops(std::vector<VetCall>& calls, const VisitView& view, CowId cow) {
  const std::vector<const EarlierStop*> stops = open_earlier_stops(view, cow);
  for (const EarlierStop* stop : stops) {
    if (is_explained_then(*stop, stops)) continue;
    const std::string words =
        stop->was_only_seen ? seen_words(*stop, stops, view) : stop_words(*stop, view);
    if (words.empty()) continue;
    VetCall call{stop->warning.foot, words, when_of(*stop, view.wording), false};
    call.is_only_asked = is_only_asked(*stop);
    add_call(calls, std::move(call));
  }
}

/// "came lame on right hind": a cow with sores that is lame is what the vet asks after first.
void add_how_she_came(std::vector<VetCall>& calls, const VisitView& view, const CowSeen& cow) {
  const bool is_told = calls.empty() || !cow.came_lame || !may_be_notifiable(view, cow.cow);
  if (is_told) return;
  const Wording& wording = view.wording;
  calls.front().why += ", " + (cow.lame.empty() ? wording.say(Saying::vet_came_lame)
                                                : wording.say(Saying::came_lame_on,
                                                              {{"feet", wording.feet(cow.lame)}}));
}

/// That she walks sound the vet wants to know before he comes.
void add_how_she_walks(std::vector<VetCall>& calls, const VisitView& view, const CowSeen& cow) {
  const bool is_sound = std::any_of(cow.turns.begin(), cow.turns.end(),
                                    [](const TurnRow* turn) { return turn->walks_sound; });
  if (calls.empty() || !is_sound) return;
  calls.front().why = clauses({calls.front().why, view.wording.say(Saying::walks_sound)});
}

void ring_now(std::vector<VetCall>& calls, const Wording& wording) {
  const std::string today = wording.say(Saying::vet_ring_today);
  for (VetCall& call : calls) {
    const std::size_t at = call.when.rfind(today);
    if (at == std::string::npos || at + today.size() != call.when.size()) continue;
    call.when.replace(at, today.size(), wording.say(BoxSaying::ring_vet_or_authority_now));
  }
}

}  // namespace

namespace {

/// Lame, and no lesion: a sign on that foot says why, and nobody has to look again for it.
bool is_why_she_is_lame(const SignOfHer& sign, const Warning& stop) {
  const bool is_of_foot = sign.foot && sign.foot == stop.foot;
  return stop.rule == lame_nothing_found_rule && !sign.is_only_asked && is_of_foot;
}

}  // namespace

bool is_told_by_sign(const VisitView& view, const CowSeen& cow, const Warning& stop) {
  const std::vector<SignOfHer> signs = signs_of_her(cow);
  const bool has_sign = std::any_of(signs.begin(), signs.end(), [&](const SignOfHer& sign) {
    const bool is_it = sign.sign->check == stop.rule && sign.foot == stop.foot;
    return is_it || is_why_she_is_lame(sign, stop);
  });
  return has_sign || (may_be_notifiable(view, cow.cow) && is_of_illness(stop));
}

std::vector<VetCall> vet_calls(const VisitView& view, CowId cow) {
  const CowSeen* seen = find_cow(view, cow);
  const auto stops = seen == nullptr ? std::vector<const Warning*>() : open_vet_stops(view, *seen);
  std::vector<VetCall> calls;
  add_tasks(calls, view, cow, stops);
  if (seen != nullptr) {
    add_signs(calls, view, *seen, stops);
    add_stops(calls, view, *seen, stops);
    if (calls.empty()) add_named_in_words(calls, view, *seen);
    put_today_first(calls, view, *seen);
  }
  add_earlier_stops(calls, view, cow);
  std::stable_sort(calls.begin(), calls.end(), [](const VetCall& a, const VetCall& b) {
    const bool is_later_told = b.is_of_today < a.is_of_today;
    return a.urgency == b.urgency ? is_later_told : a.urgency < b.urgency;
  });
  if (may_be_notifiable(view, cow)) ring_now(calls, view.wording);
  if (seen != nullptr) add_how_she_came(calls, view, *seen);
  if (seen != nullptr) add_how_she_walks(calls, view, *seen);
  return calls;
}

}  // namespace evenclaw
