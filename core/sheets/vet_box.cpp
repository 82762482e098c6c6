#include "core/sheets/vet_box.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "core/sheets/task_blocks.hpp"
#include "core/trade/lesion.hpp"

namespace evenclaw {

namespace {

std::string why_she_came(const CowSeen& cow, const Wording& wording) {
  std::string why;
  for (const TurnRow* turn : cow.turns) {
    const bool is_told = turn->reason != Reason::not_called || turn->came_lame;
    if (is_told) why += (why.empty() ? "" : ", ") + wording.reasons(*turn);
  }
  return why.empty() ? wording.say(Saying::vet_reason_not_called) : why;
}

/// Nothing is called "nothing found" that was not called so.
std::string without_finding(const CowSeen& cow, const TaskRow& task, const Wording& wording) {
  if (!task.foot) return why_she_came(cow, wording);
  const std::string state = wording.state(state_of(cow, *task.foot));
  const bool lame_there = cow.came_lame && (cow.lame.empty() || cow.lame.has(*task.foot));
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

/// What was found where the vet is to look, or else what she came with.
std::string why_vet(const VisitView& view, const TaskRow& task) {
  const Wording& wording = view.wording;
  const CowSeen* cow = find_cow(view, task.cow);
  if (task.visit != view.input.visit.visit || cow == nullptr) {
    const std::string asked = wording.say(
        Saying::vet_asked_on, {{"date", wording.date(task.made_on, view.input.printed)}});
    const std::string known = known_there(view, task);
    return known.empty() ? asked : asked + ", " + known;
  }
  std::vector<std::string> found;
  for (const FindingRow* row : cow->findings) {
    if (task.foot && row->foot != *task.foot) continue;
    const std::string words = wording.finding_at_claw(*row);
    found.push_back(task.foot ? words : wording.foot(row->foot) + ", " + words);
  }
  return found.empty() ? without_finding(*cow, task, wording) : wording.list(found);
}

std::string when_vet(const TaskRow& task, Day today, const Wording& wording) {
  if (task.overdue <= today) {
    return wording.say(Saying::vet_late, {{"date", wording.date(task.overdue, today)}});
  }
  if (task.due <= today) return wording.say(Saying::vet_ring_today);
  return wording.say(Saying::vet_by, {{"date", wording.date(task.due, today)}});
}

NoticeItem vet_item(const VisitView& view, const TaskRow& task) {
  const Wording& wording = view.wording;
  const std::string where = task.foot ? wording.foot(*task.foot) : wording.say(Saying::the_cow);
  NoticeItem item{view.names.label(task.cow), {}};
  item.lines.push_back({strong(capitalised(where)), plain(", " + why_vet(view, task))});
  const std::string looks = view.names.looks(task.cow);
  if (!looks.empty()) item.lines.push_back({strong(looks)});
  item.lines.push_back({plain(as_sentence(when_vet(task, view.input.printed, wording)))});
  const CowSeen* cow = find_cow(view, task.cow);
  if (task.visit != view.input.visit.visit || cow == nullptr) return item;
  for (const std::string& words : left_for_vet(view, *cow, task.foot)) {
    item.lines.push_back(
        {strong(as_sentence(words)), plain(' ' + wording.say(Saying::status_practice))});
  }
  return item;
}

struct SignForVet {
  ActionKind sign;
  Saying words;
};

constexpr SignForVet signs_for_vet[] = {{ActionKind::bone_showing, Saying::cut_no_further},
                                        {ActionKind::pus_above, Saying::cut_no_further},
                                        {ActionKind::bleeding, Saying::stop_bleeding},
                                        {ActionKind::went_down, Saying::cut_no_more_today}};

/// Foul, or a swelling above both claws, which is taken for it.
bool is_foul(const FindingRow& row) {
  return row.lesion == Lesion::ip || (row.lesion == Lesion::sw && row.claw == Claw::both);
}

bool hurts_on(const CowSeen& cow, Foot foot, Claw claw) {
  return std::any_of(cow.findings.begin(), cow.findings.end(), [&](const FindingRow* row) {
    const bool is_there = row->foot == foot && (row->claw == claw || row->claw == Claw::both);
    const Hurts hurts = facts_of(row->lesion).hurts;
    const bool is_bad = hurts == Hurts::when_bad && row->degree == Degree::bad;
    return is_there && !is_foul(*row) && (hurts == Hurts::yes || is_bad);
  });
}

bool is_beyond_trimming(const FindingRow& row) {
  const bool is_one_sided = row.claw == Claw::outside || row.claw == Claw::inside;
  return row.lesion == Lesion::tn || (row.lesion == Lesion::sw && is_one_sided);
}

bool shows(const CowSeen& cow, ActionKind sign) {
  return std::any_of(cow.actions.begin(), cow.actions.end(),
                     [sign](const ActionRow* row) { return row->action == sign; });
}

/// As the check notifiable-signs counts: two signs of hers, or one beside another cow's mouth or
/// feet.
bool may_be_notifiable(const VisitView& view, const CowSeen& cow) {
  int signs = 0;
  for (const ActionKind sign : {ActionKind::sore_mouth, ActionKind::blisters, ActionKind::fever}) {
    signs += shows(cow, sign) ? 1 : 0;
  }
  const bool of_others = std::any_of(view.cows.begin(), view.cows.end(), [&](const CowSeen& other) {
    return other.cow != cow.cow &&
           (shows(other, ActionKind::sore_mouth) || shows(other, ActionKind::blisters));
  });
  return signs >= 2 || (signs == 1 && of_others);
}

}  // namespace

std::vector<std::string> left_for_vet(const VisitView& view, const CowSeen& cow,
                                      std::optional<Foot> foot) {
  const Wording& wording = view.wording;
  std::vector<std::string> words;
  const auto add = [&](Saying saying) {
    std::string one = wording.say(saying);
    if (std::find(words.begin(), words.end(), one) == words.end()) words.push_back(std::move(one));
  };
  if (may_be_notifiable(view, cow)) add(Saying::nothing_leaves);
  for (const ActionRow* row : cow.actions) {
    if (foot && row->foot && row->foot != foot) continue;
    for (const SignForVet& known : signs_for_vet) {
      if (known.sign == row->action) add(known.words);
    }
  }
  for (const FindingRow* row : cow.findings) {
    if (foot && row->foot != *foot) continue;
    if (is_beyond_trimming(*row)) add(Saying::cut_no_further);
    if (is_foul(*row)) add(Saying::no_wrap_on_foul);
    if (hurts_on(cow, row->foot, Claw::outside) && hurts_on(cow, row->foot, Claw::inside)) {
      add(Saying::no_block_both_hurt);
    }
  }
  return words;
}

std::vector<Block> vet_box(const VisitView& view) {
  const Wording& wording = view.wording;
  BoxedNotice box{wording.say(Saying::vet_title), {}, {}};
  for (const TaskRow* task : view.tasks) {
    if (!is_for_vet(*task)) continue;
    if (task->due <= view.input.printed) box.title = wording.say(Saying::vet_today_title);
    box.items.push_back(vet_item(view, *task));
  }
  if (box.items.empty()) return {Paragraph{{plain(wording.say(Saying::no_vet))}}};
  box.foot = {plain(wording.say(Saying::vet_decides))};
  return {std::move(box)};
}

}  // namespace evenclaw
