#include "core/sheets/vet_box.hpp"

#include <algorithm>
#include <iterator>
#include <optional>
#include <span>
#include <utility>

#include "core/sheets/foot_lines.hpp"
#include "core/sheets/left_for_vet.hpp"
#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/signs_in_words.hpp"
#include "core/sheets/task_blocks.hpp"
#include "core/sheets/vet_on_record.hpp"
#include "core/sheets/vet_stops.hpp"
#include "core/sheets/vet_urgency.hpp"
#include "core/sheets/who_has_her.hpp"

namespace evenclaw {

namespace {

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

/// What was there when the vet was asked for, and nobody has found gone since.
std::string known_there(const VisitView& view, const TaskRow& task) {
  std::vector<std::string> lesions;
  for (const CaseRow& row : view.input.rows.cases) {
    const bool is_there = row.cow == task.cow && (!task.foot || row.foot == *task.foot);
    const bool was_there_then = row.first_day <= task.made_on && row.last_day >= task.made_on;
    if (!is_there || row.not_found_on || !was_there_then) continue;
    const std::string lesion = view.wording.lesion(row.lesion);
    const bool is_new = std::find(lesions.begin(), lesions.end(), lesion) == lesions.end();
    if (is_new) lesions.push_back(lesion);
  }
  std::sort(lesions.begin(), lesions.end());
  return view.wording.list(lesions);
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
  const Wording& wording = view.wording;
  const CowSeen* cow = find_cow(view, task.cow);
  if (task.visit == view.input.visit.visit && cow != nullptr) {
    if (!is_for_pain_relief(task)) return why_vet_today(view, *cow, task.foot);
    const std::string what = pain_relief_words(task, *cow, view);
    const bool is_found_told =
        is_called_beside(view, task, stops) || !signs_without_vet(view, *cow).empty();
    return is_found_told ? what : what + "; " + why_vet_today(view, *cow, task.foot);
  }
  std::string asked =
      wording.say(Saying::vet_asked_on, {{"date", wording.date(task.made_on, view.input.printed)}});
  if (is_for_pain_relief(task)) asked += ", " + task.words;
  const std::string known = known_there(view, task);
  return known.empty() ? asked : asked + ", " + known;
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

/// One place of a cow that the vet is to see: asked for, or only stopped for.
struct VetCall {
  std::optional<Foot> foot;
  std::string why;
  std::string when;
  bool is_of_today = true;    // made at this visit
  std::string status = {};    // whether he was asked for
  bool is_to_see_her = true;  // not only asked for pain relief
  VetUrgency urgency = VetUrgency::today;
};

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
  same->why = call.why + "; " + same->why;
  same->urgency = std::min(same->urgency, call.urgency);
  same->is_of_today = same->is_of_today || call.is_of_today;
}

bool is_called_to(const std::vector<VetCall>& calls, std::optional<Foot> foot) {
  return std::any_of(calls.begin(), calls.end(), [&](const VetCall& call) {
    const bool is_there = !call.foot || call.foot == foot;
    return call.is_of_today && call.is_to_see_her && is_there;
  });
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
    if (sign.is_only_asked) {
      call.when = wording.say(Saying::ask_what_was_meant);
    } else {
      call.status = wording.say(status_of(view, cow, sign, stops));
    }
    calls.push_back(std::move(call));
  }
}

bool is_of_illness(const Warning& stop) {
  const std::span<const SignForVet> signs = signs_for_vet();
  return std::any_of(signs.begin(), signs.end(), [&](const SignForVet& sign) {
    return sign.urgency == VetUrgency::reportable && sign.check == stop.rule;
  });
}

/// The sign itself is told: what the check said beside it would say it twice.
bool is_told_by_sign(const VisitView& view, const CowSeen& cow, const Warning& stop) {
  const std::vector<SignOfHer> signs = signs_of_her(cow);
  const bool has_sign = std::any_of(signs.begin(), signs.end(), [&](const SignOfHer& sign) {
    return sign.sign->check == stop.rule && sign.foot == stop.foot;
  });
  return has_sign || (may_be_notifiable(view, cow) && is_of_illness(stop));
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
    calls.push_back({stop->foot, why_vet_today(view, cow, stop->foot),
                     wording.say(Saying::vet_ring_today), true, wording.say(status)});
  }
}

/// "Stop of Tue 17 Nov, nobody answered ...: Swollen above one claw: vet."; "seen Tue 17 Nov ...".
std::string earlier_words(const EarlierStop& stop, const VisitView& view) {
  const Wording& wording = view.wording;
  const std::string date = wording.date(stop.on, view.input.printed);
  if (stop.was_only_seen) {
    return wording.say(BoxSaying::seen_on_day, {{"date", date}, {"what", stop.warning.words}});
  }
  const Saying which = stop.was_gone_past ? Saying::stop_gone_past : Saying::stop_of_day;
  return clauses({wording.say(which, {{"date", date}}) + ' ' + stop.warning.words});
}

void add_earlier_stops(std::vector<VetCall>& calls, const VisitView& view, CowId cow) {
  const Wording& wording = view.wording;
  for (const EarlierStop* stop : open_earlier_stops(view, cow)) {
    add_call(calls, {stop->warning.foot, earlier_words(*stop, view),
                     wording.say(Saying::vet_ring_today), false});
  }
}

/// "came lame on right hind": a cow with sores that is lame is what the vet asks after first.
void add_how_she_came(std::vector<VetCall>& calls, const VisitView& view, const CowSeen& cow) {
  const bool is_told = calls.empty() || !cow.came_lame || !may_be_notifiable(view, cow);
  if (is_told) return;
  const Wording& wording = view.wording;
  calls.front().why += ", " + (cow.lame.empty() ? wording.say(Saying::vet_came_lame)
                                                : wording.say(Saying::came_lame_on,
                                                              {{"feet", wording.feet(cow.lame)}}));
}

/// The most urgent first.
std::vector<VetCall> calls_for(const VisitView& view, CowId cow, const CowSeen* seen,
                               const std::vector<const Warning*>& stops) {
  std::vector<VetCall> calls;
  add_tasks(calls, view, cow, stops);
  if (seen != nullptr) {
    add_signs(calls, view, *seen, stops);
    add_stops(calls, view, *seen, stops);
  }
  add_earlier_stops(calls, view, cow);
  std::stable_sort(calls.begin(), calls.end(),
                   [](const VetCall& a, const VetCall& b) { return a.urgency < b.urgency; });
  if (seen != nullptr) add_how_she_came(calls, view, *seen);
  return calls;
}

std::vector<std::string> left_alone(const VisitView& view, const CowSeen* cow,
                                    const std::vector<VetCall>& calls) {
  std::vector<std::string> words;
  for (const VetCall& call : calls) {
    if (cow == nullptr || !call.is_of_today) continue;
    for (std::string& one : left_for_vet(view, *cow, call.foot)) {
      const bool is_new = std::find(words.begin(), words.end(), one) == words.end();
      if (is_new) words.push_back(std::move(one));
    }
  }
  return words;
}

std::string when_to_ring(const VetCall& call) {
  return call.status.empty() ? call.when : clauses({call.when, call.status});
}

std::string where_called(const VetCall& call, const Wording& wording) {
  return call.foot ? wording.foot(*call.foot) : wording.say(Saying::the_cow);
}

/// What the checks said of that place and no sign tells.
void add_warnings(NoticeItem& item, const VetCall& call, const VisitView& view, const CowSeen& cow,
                  const std::vector<const Warning*>& stops) {
  if (!call.is_of_today) return;
  for (const Warning* stop : stops) {
    const bool is_there = stop->foot == call.foot;
    if (is_there && !is_told_by_sign(view, cow, *stop)) item.lines.push_back({strong(stop->words)});
  }
}

/// She stands once; when to ring is said once where it is the same of all that is hers.
NoticeItem vet_item(const VisitView& view, CowId cow) {
  const Wording& wording = view.wording;
  const CowSeen* seen = find_cow(view, cow);
  const auto stops = seen == nullptr ? std::vector<const Warning*>() : open_vet_stops(view, *seen);
  const std::vector<VetCall> calls = calls_for(view, cow, seen, stops);
  NoticeItem item{view.names.label(cow), {}};
  const CowRow* left = who_left(view, cow);
  const std::string looks = view.names.beside_label(cow);
  for (std::size_t i = 0; i < calls.size(); ++i) {
    const VetCall& call = calls[i];
    if (i == 0 && !looks.empty()) item.lines.push_back({strong(looks)});
    if (i == 0 && left != nullptr) {
      item.lines.push_back({strong(as_sentence(who_has_her_and_authority(*left, view)))});
    }
    item.lines.push_back(
        {strong(capitalised(where_called(call, wording))), plain(", " + call.why)});
    if (seen != nullptr) add_warnings(item, call, view, *seen, stops);
    const std::string when = when_to_ring(call);
    const bool is_last_of_day = i + 1 == calls.size() || when_to_ring(calls[i + 1]) != when;
    if (is_last_of_day) item.lines.push_back({plain(as_sentence(when))});
  }
  for (const std::string& words : left_alone(view, seen, calls)) {
    item.lines.push_back({strong(as_sentence(words))});
  }
  return item;
}

bool leaves_something_alone(const VisitView& view, CowId cow) {
  const CowSeen* seen = find_cow(view, cow);
  const auto stops = seen == nullptr ? std::vector<const Warning*>() : open_vet_stops(view, *seen);
  return !left_alone(view, seen, calls_for(view, cow, seen, stops)).empty();
}

/// News nobody could read, or of which nobody could be sure, that may tell of a sign.
std::vector<NoticeItem> asked_items(const VisitView& view) {
  const Wording& wording = view.wording;
  std::vector<NoticeItem> items;
  for (const AskedOnSheet& asked : view.input.asked) {
    if (signs_in_words(asked.words).empty()) continue;
    items.push_back(
        {asked.cow,
         {{plain(asked.words)}, {plain(as_sentence(wording.say(Saying::ask_what_was_meant)))}}});
  }
  return items;
}

/// That nobody leaves is read before any cow.
std::optional<Runs> standstill(const VisitView& view, const std::vector<CowForVet>& cows) {
  const bool is_told = !cows.empty() && cows.front().urgency == VetUrgency::reportable;
  if (!is_told) return std::nullopt;
  return Runs{strong(as_sentence(view.wording.say(Saying::nothing_leaves)))};
}

Saying title_of(const std::vector<CowForVet>& cows) {
  const bool is_later = cows.empty() || cows.front().urgency == VetUrgency::later;
  return is_later ? Saying::vet_title : Saying::vet_today_title;
}

}  // namespace

std::vector<Block> vet_box(const VisitView& view) {
  const Wording& wording = view.wording;
  const std::vector<CowForVet> cows = cows_for_vet(view);
  std::vector<NoticeItem> asked = asked_items(view);
  const Saying title = asked.empty() ? title_of(cows) : Saying::vet_today_title;
  BoxedNotice box{wording.say(title), {}, {}};
  if (cows.empty() && asked.empty()) return {Paragraph{{plain(wording.say(Saying::no_vet))}}};
  if (auto lead = standstill(view, cows)) box.items.push_back({"", {*std::move(lead)}});
  bool is_left_alone = false;
  for (const CowForVet& called : cows) {
    box.items.push_back(vet_item(view, called.cow));
    is_left_alone = is_left_alone || leaves_something_alone(view, called.cow);
  }
  std::move(asked.begin(), asked.end(), std::back_inserter(box.items));
  box.title_continued = wording.say(Saying::box_continued, {{"what", box.title}});
  box.foot = {plain(wording.say(Saying::vet_decides))};
  if (is_left_alone) box.foot.push_back(plain(' ' + wording.say(Saying::left_alone_status)));
  return {std::move(box)};
}

std::vector<Block> called_to(const VisitView& view) {
  const Wording& wording = view.wording;
  const std::vector<CowForVet> cows = cows_for_vet(view);
  Bullets bullets;
  if (auto lead = standstill(view, cows)) bullets.items.push_back(*std::move(lead));
  for (const auto& [cow, urgency] : cows) {
    const CowSeen* seen = find_cow(view, cow);
    const auto stops =
        seen == nullptr ? std::vector<const Warning*>() : open_vet_stops(view, *seen);
    std::vector<std::string> parts;
    for (const VetCall& call : calls_for(view, cow, seen, stops)) {
      parts.push_back(where_called(call, wording) + ", " + call.why);
    }
    for (const Warning* stop : stops) {
      if (!is_told_by_sign(view, *seen, *stop)) parts.push_back(stop->words);
    }
    bullets.items.push_back(
        {strong(view.names.in_text(cow)), plain(": " + as_sentence(clauses(parts)))});
  }
  if (bullets.items.empty()) return {};
  return {Heading{3, wording.say(title_of(cows))}, std::move(bullets)};
}

}  // namespace evenclaw
