#include "core/sheets/stay_near.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <utility>

#include "core/sheets/left_to_ask.hpp"
#include "core/sheets/medicine_in_words.hpp"
#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/task_blocks.hpp"
#include "core/sheets/vet_on_record.hpp"
#include "core/sheets/vet_stops.hpp"
#include "core/sheets/vet_work_to_ask.hpp"
#include "core/sheets/withdrawal_known.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/lame_score.hpp"
#include "core/trade/lesion.hpp"

namespace evenclaw {

namespace {

using Whys = std::map<CowId, std::vector<std::string>>;

void add(Whys& whys, CowId cow, std::string why) {
  std::vector<std::string>& of_her = whys[cow];
  const bool is_new = std::find(of_her.begin(), of_her.end(), why) == of_her.end();
  if (is_new) of_her.push_back(std::move(why));
}

bool keeps_her(ActionKind kind) {
  return kind == ActionKind::to_straw || kind == ActionKind::near_parlour ||
         kind == ActionKind::short_walk || kind == ActionKind::near_calving ||
         kind == ActionKind::heavy_in_calf;
}

void add_told(Whys& whys, const VisitView& view) {
  for (const CowSeen& cow : view.cows) {
    for (const ActionRow* row : cow.actions) {
      if (!keeps_her(row->action)) continue;
      add(whys, cow.cow, view.wording.act(*row, view.input.visit.day));
    }
  }
}

std::string worn_words(const OnFootRow& row, const VisitView& view) {
  const Wording& wording = view.wording;
  const Day day = view.input.visit.day;
  const CowSeen* cow = find_cow(view, row.cow);
  std::string where = wording.foot(row.foot);
  const bool is_block = row.fixture == Fixture::block;
  if (is_block && row.claw != Claw::none) where += ", " + wording.claw(row.claw);
  const bool is_known = was_seen_on(row, cow, day) && !is_on_in_doubt(row, cow, day);
  if (is_known) {
    return wording.say(is_block ? Saying::wears_block : Saying::wears_wrap, {{"where", where}});
  }
  const std::string words =
      wording.say(is_block ? Saying::block_worn : Saying::wrap_worn, {{"where", where}});
  if (is_on_in_doubt(row, cow, day)) return wording.say(Saying::since_unknown, {{"what", words}});
  const std::string since = wording.date(row.since, day);
  return wording.say(Saying::put_on_not_seen, {{"what", words}, {"date", since}});
}

void add_worn(Whys& whys, const VisitView& view) {
  std::vector<const OnFootRow*> worn;
  for (const OnFootRow& row : view.input.rows.on_feet) {
    if (is_on(row, view.input.visit.day)) worn.push_back(&row);
  }
  std::sort(worn.begin(), worn.end(), [](const OnFootRow* a, const OnFootRow* b) {
    return std::tie(a->fixture, a->foot, a->claw) < std::tie(b->fixture, b->foot, b->claw);
  });
  for (const OnFootRow* row : worn) add(whys, row->cow, worn_words(*row, view));
}

/// A swelling, dead horn or bone, foul: what is deep, whoever looks after it. And horn that hurts
/// under load.
bool keeps_her(const FindingRow& row) {
  const bool is_deep =
      row.lesion == Lesion::sw || row.lesion == Lesion::tn || row.lesion == Lesion::ip;
  const Hurts hurts = facts_of(row.lesion).hurts;
  const bool is_bad = hurts == Hurts::when_bad && row.degree == Degree::bad;
  return is_deep || hurts == Hurts::yes || is_bad;
}

void add_signs(Whys& whys, const VisitView& view, const CowSeen& cow) {
  const Wording& wording = view.wording;
  for (std::string& sign : signs_of(view, cow, std::nullopt)) {
    add(whys, cow.cow, std::move(sign));
  }
  for (const Foot foot : all_feet) {
    for (const std::string& sign : signs_of(view, cow, foot)) {
      add(whys, cow.cow, sign + ", " + wording.foot(foot));
    }
  }
  for (const FindingRow* row : cow.findings) {
    if (!keeps_her(*row)) continue;
    add(whys, cow.cow, wording.lesion(row->lesion) + ", " + wording.foot(row->foot));
  }
}

/// Whom he was asked for, to see her, is not told of as not asked for.
void add_not_asked_for(Whys& whys, const VisitView& view, CowId cow) {
  const bool is_asked = std::any_of(view.tasks.begin(), view.tasks.end(), [&](const TaskRow* task) {
    return task->cow == cow && is_for_vet(*task) && !is_for_pain_relief(*task);
  });
  if (!is_asked) add(whys, cow, view.wording.say(Saying::vet_is_not_asked_for));
}

void add_for_vet(Whys& whys, const VisitView& view) {
  const Wording& wording = view.wording;
  for (const TaskRow* task : view.tasks) {
    if (!is_for_vet(*task)) continue;
    ActionRow relief;
    relief.action = ActionKind::pain_relief_asked;
    add(whys, task->cow,
        is_for_pain_relief(*task) ? wording.act(relief, view.input.visit.day)
                                  : wording.say(Saying::vet_is_asked_for));
  }
  for (const CowSeen& cow : view.cows) {
    const bool is_open =
        !open_vet_stops(view, cow).empty() || !signs_without_vet(view, cow).empty();
    if (is_open) {
      add_not_asked_for(whys, view, cow.cow);
    }
    add_signs(whys, view, cow);
  }
  for (const EarlierStop& stop : view.input.earlier_stops) {
    if (!open_earlier_stops(view, stop.cow).empty()) add_not_asked_for(whys, view, stop.cow);
  }
}

bool scored_lame(const TurnRow& turn) {
  return turn.mobility_scale && turn.mobility_score &&
         is_lame_score({*turn.mobility_scale, *turn.mobility_score});
}

std::string lame_words(const FootSet& feet, const Wording& wording) {
  return feet.empty() ? wording.say(Saying::vet_came_lame)
                      : wording.say(Saying::came_lame_on, {{"feet", wording.feet(feet)}});
}

void add_lame_before(Whys& whys, const VisitView& view) {
  const Wording& wording = view.wording;
  for (const StillLame& lame : view.input.still_lame) {
    const std::string date = wording.date(lame.on, view.input.visit.day);
    add(whys, lame.cow,
        wording.say(Saying::not_lifted_then,
                    {{"what", lame_words(lame.feet, wording)}, {"date", date}}));
  }
}

/// News of her, and nobody has seen since that she walks well.
void add_told_lame(Whys& whys, const VisitView& view) {
  const Wording& wording = view.wording;
  for (const TaskRow* task : view.tasks) {
    if (task->rule != still_lame_rule.slug) continue;
    const std::string date = wording.date(task->made_on, view.input.visit.day);
    add(whys, task->cow, wording.say(Saying::told_still_lame, {{"date", date}}));
  }
}

/// Whatever was found and done: that she walks well again nobody has seen yet.
void add_lame(Whys& whys, const VisitView& view) {
  const Wording& wording = view.wording;
  for (const CowSeen& cow : view.cows) {
    if (cow.came_lame) add(whys, cow.cow, lame_words(cow.lame, wording));
    for (const TurnRow* turn : cow.turns) {
      if (scored_lame(*turn)) add(whys, cow.cow, wording.mobility(*turn));
    }
  }
}

void add_held_back(Whys& whys, const VisitView& view) {
  for (const TaskRow* task : view.tasks) {
    const bool is_open =
        task->kind == TaskKind::withdrawal_end && view.input.printed < task->overdue;
    if (is_open) add(whys, task->cow, view.wording.say(Saying::is_held_back));
  }
  for (const LeftToAsk& left : left_to_ask(view)) {
    if (left.floor.is_open()) {
      add(whys, left.cow, view.wording.say(Saying::is_held_back));
      continue;
    }
    add(whys, left.cow,
        left.half ? half_words(*left.half, view.wording)
                  : view.wording.say(Saying::withdrawal_ask_line));
  }
  for (const VetWork& work : vet_work_to_ask(view)) {
    add(whys, work.cow, view.wording.say(Saying::withdrawal_ask_line));
  }
  for (const MedicineTold& told : medicine_to_ask(view)) {
    add(whys, told.cow, view.wording.say(Saying::withdrawal_ask_line));
  }
}

}  // namespace

std::vector<Block> stay_near(const VisitView& view) {
  const Wording& wording = view.wording;
  Whys whys;
  add_told(whys, view);
  add_for_vet(whys, view);
  add_lame(whys, view);
  add_lame_before(whys, view);
  add_told_lame(whys, view);
  add_worn(whys, view);
  add_held_back(whys, view);
  for (const CowRow& cow : view.input.rows.cows) {
    if (cow.left_on) whys.erase(cow.cow);
  }
  if (whys.empty()) return {};
  std::vector<CowId> cows;
  cows.reserve(whys.size());
  for (const auto& [cow, why] : whys) cows.push_back(cow);
  std::sort(cows.begin(), cows.end(), [&](CowId a, CowId b) { return view.names.before(a, b); });
  Table table{"", {{wording.say(Saying::column_cow)}, {wording.say(Saying::column_why)}}, {}};
  for (const CowId cow : cows) {
    // What a cow without a number looks like would widen the column of all others.
    const std::string looks = view.names.beside_label(cow);
    Runs why = {plain(clauses(whys.at(cow)))};
    if (!looks.empty()) why.insert(why.begin(), strong(looks + ": "));
    table.rows.push_back({{plain(view.names.label(cow))}, std::move(why)});
  }
  return {Heading{2, wording.say(Saying::stay_near_title),
                  wording.count(Saying::cow_count, cows.size())},
          std::move(table), Note{{plain(wording.say(Saying::stay_near_note))}}};
}

}  // namespace evenclaw
