#include "core/sheets/vet_box.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "core/sheets/left_for_vet.hpp"
#include "core/sheets/task_blocks.hpp"
#include "core/sheets/vet_stops.hpp"
#include "core/sheets/vet_urgency.hpp"

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
  const std::string state = wording.state(state_of(cow, *foot));
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

/// What was found and seen there at this visit; of every foot when none is given.
std::vector<std::string> seen_there(const VisitView& view, const CowSeen& cow,
                                    std::optional<Foot> foot) {
  const Wording& wording = view.wording;
  std::vector<std::string> seen;
  if (!foot) seen = seen_beside(view, cow, std::nullopt);
  for (const FindingRow* row : cow.findings) {
    if (foot && row->foot != *foot) continue;
    const std::string words = wording.finding_at_claw(*row);
    seen.push_back(foot ? words : wording.foot(row->foot) + ", " + words);
  }
  for (const Foot one : all_feet) {
    if (foot && one != *foot) continue;
    for (const std::string& words : seen_beside(view, cow, one)) {
      seen.push_back(foot ? words : wording.foot(one) + ", " + words);
    }
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
    const bool is_found_told = is_called_beside(view, task, stops);
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
  bool is_of_today = true;  // made at this visit
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
  same->is_of_today = same->is_of_today || call.is_of_today;
}

/// Called for one foot, he is told of what is beyond trimming on the others too.
void add_other_feet(const VisitView& view, const CowSeen& cow, std::vector<VetCall>& calls) {
  const auto asked = std::find_if(calls.begin(), calls.end(),
                                  [](const VetCall& call) { return call.is_of_today; });
  if (asked == calls.end()) return;
  const std::string when = asked->when;
  for (const Foot foot : all_feet) {
    const bool is_told = std::any_of(calls.begin(), calls.end(), [&](const VetCall& call) {
      return call.is_of_today && (!call.foot || call.foot == foot);
    });
    if (is_told || !is_left_for_vet(cow, foot)) continue;
    calls.push_back({foot, why_vet_today(view, cow, foot), when});
  }
}

std::vector<VetCall> calls_for(const VisitView& view, CowId cow, const CowSeen* seen,
                               const std::vector<const Warning*>& stops) {
  const Wording& wording = view.wording;
  std::vector<VetCall> calls;
  for (const TaskRow* task : view.tasks) {
    if (task->cow != cow || !is_for_vet(*task)) continue;
    const bool is_of_today = task->visit == view.input.visit.visit && seen != nullptr;
    VetCall call{task->foot, why_vet(view, *task, stops),
                 when_vet(*task, view.input.printed, wording), is_of_today};
    add_call(calls, std::move(call));
  }
  for (const Warning* stop : stops) {
    const bool is_known = std::any_of(calls.begin(), calls.end(), [&](const VetCall& call) {
      return call.foot == stop->foot && call.is_of_today;
    });
    if (is_known) continue;
    const std::vector<std::string> signs = signs_of(view, *seen, stop->foot);
    const bool is_told = !stop->foot && !signs.empty();
    const std::string why = is_told ? wording.list(signs) : why_vet_today(view, *seen, stop->foot);
    calls.push_back({stop->foot, why, wording.say(Saying::vet_ring_today)});
  }
  if (seen != nullptr) add_other_feet(view, *seen, calls);
  for (const EarlierStop* stop : open_earlier_stops(view, cow)) {
    const std::string date = wording.date(stop->on, view.input.printed);
    add_call(
        calls,
        {stop->warning.foot,
         clauses({wording.say(Saying::stop_of_day, {{"date", date}}) + ' ' + stop->warning.words}),
         wording.say(Saying::vet_ring_today), false});
  }
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

/// She stands once; when to ring is said once where it is the same of all that is hers.
NoticeItem vet_item(const VisitView& view, CowId cow) {
  const Wording& wording = view.wording;
  const CowSeen* seen = find_cow(view, cow);
  const auto stops = seen == nullptr ? std::vector<const Warning*>() : open_vet_stops(view, *seen);
  const std::vector<VetCall> calls = calls_for(view, cow, seen, stops);
  NoticeItem item{view.names.label(cow), {}};
  const std::string looks = view.names.looks(cow);
  for (std::size_t i = 0; i < calls.size(); ++i) {
    const VetCall& call = calls[i];
    const std::string where = call.foot ? wording.foot(*call.foot) : wording.say(Saying::the_cow);
    item.lines.push_back({strong(capitalised(where)), plain(", " + call.why)});
    if (i == 0 && !looks.empty()) item.lines.push_back({strong(looks)});
    for (const Warning* stop : stops) {
      if (!call.is_of_today || stop->foot != call.foot) continue;
      item.lines.push_back(
          {strong(stop->words), plain(' ' + wording.say(Saying::nobody_answered))});
    }
    const bool is_last_of_day = i + 1 == calls.size() || calls[i + 1].when != call.when;
    if (is_last_of_day) item.lines.push_back({plain(as_sentence(call.when))});
  }
  const bool is_of_feet = std::all_of(calls.begin(), calls.end(), [](const VetCall& call) {
    return call.is_of_today && call.foot.has_value();
  });
  if (seen != nullptr && is_of_feet) {
    for (const std::string& sign : signs_of(view, *seen, std::nullopt)) {
      item.lines.push_back({strong(wording.say(Saying::the_cow)), plain(", " + sign)});
    }
  }
  for (const std::string& words : left_alone(view, seen, calls)) {
    item.lines.push_back(
        {strong(as_sentence(words)), plain(' ' + wording.say(Saying::status_practice))});
  }
  return item;
}

Saying title_of(const std::vector<CowForVet>& cows) {
  const bool is_later = cows.empty() || cows.front().urgency == VetUrgency::later;
  return is_later ? Saying::vet_title : Saying::vet_today_title;
}

}  // namespace

std::vector<Block> vet_box(const VisitView& view) {
  const Wording& wording = view.wording;
  const std::vector<CowForVet> cows = cows_for_vet(view);
  BoxedNotice box{wording.say(title_of(cows)), {}, {}};
  for (const CowForVet& called : cows) box.items.push_back(vet_item(view, called.cow));
  if (box.items.empty()) return {Paragraph{{plain(wording.say(Saying::no_vet))}}};
  box.foot = {plain(wording.say(Saying::vet_decides))};
  return {std::move(box)};
}

std::vector<Block> called_to(const VisitView& view) {
  const Wording& wording = view.wording;
  const std::vector<CowForVet> cows = cows_for_vet(view);
  Bullets bullets;
  for (const auto& [cow, urgency] : cows) {
    const CowSeen* seen = find_cow(view, cow);
    const auto stops =
        seen == nullptr ? std::vector<const Warning*>() : open_vet_stops(view, *seen);
    std::vector<std::string> parts;
    for (const VetCall& call : calls_for(view, cow, seen, stops)) {
      const std::string where = call.foot ? wording.foot(*call.foot) : wording.say(Saying::the_cow);
      parts.push_back(where + ", " + call.why);
    }
    bullets.items.push_back(
        {strong(view.names.in_text(cow)), plain(": " + as_sentence(clauses(parts)))});
  }
  if (bullets.items.empty()) return {};
  return {Heading{3, wording.say(title_of(cows))}, std::move(bullets)};
}

}  // namespace evenclaw
