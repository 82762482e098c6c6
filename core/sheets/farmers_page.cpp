#include "core/sheets/farmers_page.hpp"

#include <algorithm>
#include <iterator>
#include <set>
#include <tuple>
#include <utility>

#include "core/sheets/advice.hpp"
#include "core/sheets/also_said.hpp"
#include "core/sheets/appended.hpp"
#include "core/sheets/batch_words.hpp"
#include "core/sheets/day_sentences.hpp"
#include "core/sheets/last_time.hpp"
#include "core/sheets/left_to_ask.hpp"
#include "core/sheets/medicine_in_words.hpp"
#include "core/sheets/stay_near.hpp"
#include "core/sheets/task_blocks.hpp"
#include "core/sheets/vet_box.hpp"
#include "core/sheets/vet_stops.hpp"
#include "core/sheets/vet_work_to_ask.hpp"
#include "core/sheets/withdrawal_box.hpp"
#include "core/sheets/work_tally.hpp"
#include "core/trade/call_line/act_facts.hpp"

namespace evenclaw {

namespace {

std::vector<Block> to_do(const VisitView& view) {
  const Wording& wording = view.wording;
  std::vector<const TaskRow*> tasks;
  std::copy_if(view.tasks.begin(), view.tasks.end(), std::back_inserter(tasks),
               [](const TaskRow* task) {
                 return !is_for_vet(*task) && task->kind != TaskKind::withdrawal_end;
               });
  Heading heading{2, wording.say(Saying::to_do)};
  if (tasks.empty()) {
    // What is the vet's and what is held back have boxes of their own.
    const bool is_nothing_left = view.tasks.empty() && !is_vet_told_of_any(view) &&
                                 left_to_ask(view).empty() && medicine_to_ask(view).empty() &&
                                 vet_work_to_ask(view).empty();
    const Saying words = is_nothing_left ? Saying::nothing_to_do : Saying::nothing_else_to_do;
    return {std::move(heading), Paragraph{{plain(wording.say(words))}}};
  }
  heading.aside = task_count_words(tasks, wording);
  std::vector<Block> blocks = {std::move(heading)};
  append(blocks, task_blocks(tasks, view.names, 3, view.input.printed, wording));
  return blocks;
}

/// By cow, then by how anybody knows.
std::vector<const TaskRow*> tasks_settled_since(const VisitView& view) {
  std::vector<const TaskRow*> settled;
  for (const TaskRow& task : view.input.rows.tasks) {
    const bool is_since = !task.open && task.closed_on && *task.closed_on > view.input.visit.day;
    if (is_since) settled.push_back(&task);
  }
  std::sort(settled.begin(), settled.end(), [&](const TaskRow* a, const TaskRow* b) {
    if (a->cow != b->cow) return view.names.before(a->cow, b->cow);
    return std::tie(a->closed_on, a->closed_how, a->due, a->foot, a->kind, a->task) <
           std::tie(b->closed_on, b->closed_how, b->due, b->foot, b->kind, b->task);
  });
  return settled;
}

Runs settled_bullet(const std::vector<const TaskRow*>& alike, const VisitView& view) {
  const Wording& wording = view.wording;
  const Day day = view.input.visit.day;
  const TaskRow& first = *alike.front();
  std::vector<std::string> tasks;
  tasks.reserve(alike.size());
  for (const TaskRow* task : alike) {
    tasks.push_back(task->words + ", " +
                    wording.say(Saying::by_day, {{"date", wording.date(task->due, day)}}));
  }
  std::string words =
      wording.say(Saying::settled_on,
                  {{"tasks", clauses(tasks)}, {"date", wording.date(*first.closed_on, day)}});
  if (!first.closed_how.empty()) {
    words = wording.say(Saying::with_reason, {{"what", words}, {"why", first.closed_how}});
  }
  return {strong(view.names.in_text(first.cow)), plain(' ' + words + '.')};
}

/// Its tasks that are no longer open; what was settled together stands together.
std::vector<Block> settled_since(const VisitView& view) {
  const std::vector<const TaskRow*> settled = tasks_settled_since(view);
  if (settled.empty()) return {};
  Bullets bullets;
  for (auto at = settled.begin(); at != settled.end();) {
    const TaskRow& first = **at;
    const auto end = std::find_if(at, settled.end(), [&](const TaskRow* task) {
      return std::tie(task->cow, task->closed_on, task->closed_how) !=
             std::tie(first.cow, first.closed_on, first.closed_how);
    });
    bullets.items.push_back(settled_bullet({at, end}, view));
    at = end;
  }
  return {Heading{2, view.wording.say(Saying::settled_title)}, std::move(bullets)};
}

std::string with_reason(Saying what, const std::string& why, const Wording& wording) {
  const std::string words = wording.say(what);
  return why.empty() ? words : wording.say(Saying::with_reason, {{"what", words}, {"why", why}});
}

std::vector<std::string> left_undone(const CowSeen& cow, const VisitView& view) {
  const Wording& wording = view.wording;
  std::vector<std::string> parts;
  const bool done_in_the_end = std::any_of(
      cow.turns.begin(), cow.turns.end(), [](const TurnRow* t) { return t->end == TurnEnd::done; });
  for (const TurnRow* turn : cow.turns) {
    if (done_in_the_end) break;
    parts.push_back(
        with_reason(turn->end == TurnEnd::not_done ? Saying::was_not_done : Saying::was_unfinished,
                    turn->end_reason, wording));
  }
  FootSet not_lifted;
  for (const Foot foot : all_feet) {
    const bool not_lifted_said =
        is_spoken_of(cow, foot) && state_of(cow, foot) == FootState::not_lifted;
    // The fronts on a day of hinds were not meant, unless she is lame there.
    const bool was_meant = view.input.visit.todays_feet.has(foot) || cow.lame.has(foot);
    if (not_lifted_said && was_meant) not_lifted.add(foot);
  }
  if (!not_lifted.empty()) {
    parts.push_back(wording.say(Saying::foot_not_lifted, {{"feet", wording.feet(not_lifted)}}));
  }
  const FootSet unsaid = unsaid_feet(cow, view.input.visit.todays_feet);
  if (!unsaid.empty() && done_in_the_end) {
    parts.push_back(wording.say(Saying::feet_unsaid, {{"feet", wording.feet(unsaid)}}));
  }
  const FootSet not_judged = feet_not_judged(cow);
  if (!not_judged.empty() && done_in_the_end) {
    parts.push_back(wording.say(Saying::feet_not_judged, {{"feet", wording.feet(not_judged)}}));
  }
  return parts;
}

bool is_raw(const FindingRow& row) {
  return row.stage == DdStage::raw || row.stage == DdStage::m1 || row.stage == DdStage::m2;
}

/// Somebody looks at that foot again, or at her: a check of a block or of how she walks does not
/// look at the skin.
bool is_look_at(const TaskRow& task, const CowSeen& cow, Foot foot) {
  const bool is_vets = task.kind == TaskKind::vet && !is_for_pain_relief(task);
  const bool is_look = task.kind == TaskKind::look_at_foot || is_vets;
  return is_look && task.cow == cow.cow && (!task.foot || task.foot == foot);
}

/// A product or a wrap came on that foot, or somebody looks at it again: then it is in hand.
bool is_in_hand(const CowSeen& cow, Foot foot, const VisitView& view) {
  const bool is_treated =
      std::any_of(cow.actions.begin(), cow.actions.end(), [foot](const ActionRow* row) {
        const bool is_put_on = takes_product(row->action) || row->action == ActionKind::wrap_on;
        return row->foot == foot && is_put_on;
      });
  return is_treated || std::any_of(view.tasks.begin(), view.tasks.end(), [&](const TaskRow* task) {
           return is_look_at(*task, cow, foot);
         });
}

/// Nobody called why: that may be meant, so it is only kept before the farmer's eyes.
std::vector<std::string> raw_and_left(const CowSeen& cow, const VisitView& view) {
  FootSet feet;
  for (const FindingRow* row : cow.findings) {
    if (is_raw(*row) && !is_in_hand(cow, row->foot, view)) feet.add(row->foot);
  }
  if (feet.empty()) return {};
  return {view.wording.say(Saying::raw_left, {{"feet", view.wording.feet(feet)}})};
}

bool is_to_be_identified(const CowSeen& cow) {
  return std::any_of(cow.doubts.begin(), cow.doubts.end(), [](const DoubtRow* doubt) {
    return doubt->kind == DoubtKind::doubtful_number || doubt->kind == DoubtKind::unnumbered;
  });
}

Runs cow_bullet(const std::string& cow, const std::vector<std::string>& parts) {
  std::string words = clauses(parts);
  const bool has_end = !words.empty() && (words.back() == '?' || words.back() == '.');
  if (!has_end) words += '.';
  return {strong(cow), plain(" " + words)};
}

Runs removed_bullet(const RemovedFromSheet& removed, const VisitView& view) {
  const Wording& wording = view.wording;
  const std::string name = removed.cow.empty() ? wording.say(Saying::a_cow) : removed.cow;
  if (!removed.on) return cow_bullet(name, {wording.say(Saying::record_is_removed)});
  const std::string date = wording.date(*removed.on, view.input.visit.day);
  return cow_bullet(name, {wording.say(Saying::record_removed, {{"date", date}})});
}

/// How she is called everywhere; by what was said where nobody knows her.
std::string name_not_seen(const NotSeenCow& cow, const VisitView& view) {
  const bool is_known = !view.names.number(cow.cow).empty() || !view.names.looks(cow.cow).empty();
  return is_known || cow.number.empty() ? view.names.in_text(cow.cow) : cow.number;
}

/// Not there today, and still without a sure number: what is open of her finds her by none.
std::vector<const CowRow*> not_known_of_before(const VisitView& view) {
  std::set<CowId> open;
  for (const TaskRow* task : view.tasks) open.insert(task->cow);
  for (const OnFootRow& row : view.input.rows.on_feet) {
    if (is_on(row, view.input.visit.day)) open.insert(row.cow);
  }
  for (const EarlierStop& stop : view.input.earlier_stops) {
    if (!open_earlier_stops(view, stop.cow).empty()) open.insert(stop.cow);
  }
  std::vector<const CowRow*> cows;
  for (const CowRow& row : view.input.rows.cows) {
    const bool is_meant =
        row.known != CowKnown::numbered && !row.left_on && open.count(row.cow) > 0;
    if (is_meant && find_cow(view, row.cow) == nullptr) cows.push_back(&row);
  }
  std::sort(cows.begin(), cows.end(),
            [&](const CowRow* a, const CowRow* b) { return view.names.before(a->cow, b->cow); });
  return cows;
}

std::vector<Block> which_number(const VisitView& view) {
  const Wording& wording = view.wording;
  Bullets bullets;
  for (const CowSeen& cow : view.cows) {
    if (is_to_be_identified(cow)) {
      bullets.items.push_back({strong(view.names.in_text(cow.cow))});
    }
  }
  for (const CowRow* row : not_known_of_before(view)) {
    const std::string then = wording.date(row->last_seen, view.input.printed);
    bullets.items.push_back({strong(wording.say(
        BoxSaying::seen_of_whom, {{"who", view.names.in_text(row->cow)}, {"date", then}}))});
  }
  if (bullets.items.empty()) return {};
  return {Heading{2, wording.say(Saying::which_number_title)}, std::move(bullets),
          Paragraph{{plain(wording.say(Saying::which_number_note))}}};
}

std::vector<Block> not_done(const VisitView& view) {
  const Wording& wording = view.wording;
  Bullets bullets;
  for (const CowSeen& cow : view.cows) {
    std::vector<std::string> parts = left_undone(cow, view);
    for (std::string& part : raw_and_left(cow, view)) parts.push_back(std::move(part));
    if (!parts.empty()) bullets.items.push_back(cow_bullet(view.names.in_text(cow.cow), parts));
  }
  for (const NotSeenCow* cow : view.not_seen) {
    bullets.items.push_back(cow_bullet(name_not_seen(*cow, view),
                                       {with_reason(Saying::was_not_seen, cow->why, wording)}));
  }
  for (const RemovedFromSheet& removed : view.input.removed) {
    bullets.items.push_back(removed_bullet(removed, view));
  }
  if (bullets.items.empty()) return {};
  return {Heading{2, wording.say(Saying::not_done_title)}, std::move(bullets)};
}

/// In the words in which it was told.
std::vector<Block> told_at_visit(const VisitView& view) {
  if (view.input.told.empty()) return {};
  Bullets bullets;
  bullets.items.reserve(view.input.told.size());
  std::set<std::string> told;
  for (const std::string& words : view.input.told) {
    if (told.insert(words).second) bullets.items.push_back({plain(words)});
  }
  return {Heading{2, view.wording.say(Saying::told_title)}, std::move(bullets)};
}

/// What was asked, of whom all of it was.
struct AskedAlike {
  std::string words;
  std::vector<std::string> cows;
};

void add_asked(std::vector<AskedAlike>& all, const std::string& cow, const std::string& words) {
  auto alike = std::find_if(all.begin(), all.end(), [&](const AskedAlike& one) {
    return one.words == words && one.cows.empty() == cow.empty();
  });
  if (alike == all.end()) alike = all.insert(all.end(), {words, {}});
  const bool is_new = std::find(alike->cows.begin(), alike->cows.end(), cow) == alike->cows.end();
  if (is_new && !cow.empty()) alike->cows.push_back(cow);
}

/// Often the farm knows: it told of number 66, and that 77 is gone. What is asked of several stands
/// once.
std::vector<Block> still_asked(const VisitView& view) {
  std::vector<AskedAlike> all;
  for (const AskedOnSheet& asked : view.input.asked) add_asked(all, asked.cow, asked.words);
  for (const CowSeen& cow : view.cows) {
    for (const DoubtRow* doubt : cow.doubts) {
      const bool is_gone = doubt->kind == DoubtKind::told_gone;
      if (is_gone) add_asked(all, view.names.in_text(cow.cow), doubt->words);
    }
  }
  if (all.empty()) return {};
  Bullets bullets;
  for (const AskedAlike& asked : all) {
    Runs runs;
    if (!asked.cows.empty()) runs.push_back(strong(view.wording.list(asked.cows) + " "));
    runs.push_back(plain(asked.words));
    bullets.items.push_back(std::move(runs));
  }
  return {Heading{2, view.wording.say(Saying::still_asked)}, std::move(bullets)};
}

/// That nothing was left undone is a sentence of the day and needs no heading of its own.
std::vector<Block> the_day(const VisitView& view, bool all_is_done) {
  Bullets sentences;
  for (std::string& sentence : day_sentences(view)) {
    sentences.items.push_back({plain(std::move(sentence))});
  }
  if (all_is_done) {
    const std::string done = view.wording.say(Saying::everything_done);
    sentences.items.insert(sentences.items.begin() + 1, {plain(done)});
  }
  const AgainstLastTime last_time = against_last_time(view);
  if (!last_time.sentence.empty()) sentences.items.push_back({plain(last_time.sentence)});
  std::vector<Block> blocks = {Heading{2, view.wording.say(Saying::the_day)}, std::move(sentences)};
  if (!last_time.note.empty()) blocks.emplace_back(Note{{plain(last_time.note)}});
  return blocks;
}

/// Said only where all that was done is known: nobody was left unfinished and no record was
/// removed.
std::vector<Block> nothing_held_back(const VisitView& view) {
  const bool is_whole = std::all_of(view.cows.begin(), view.cows.end(), [](const CowSeen& cow) {
    return std::none_of(cow.turns.begin(), cow.turns.end(),
                        [](const TurnRow* turn) { return turn->end == TurnEnd::unfinished; });
  });
  const bool is_open = std::any_of(view.tasks.begin(), view.tasks.end(), [](const TaskRow* task) {
    return task->kind == TaskKind::withdrawal_end;
  });
  const bool is_known = is_whole && !is_open && view.input.removed.empty() &&
                        view.input.asked.empty() && view.input.visit.closed;
  if (view.cows.empty() || !is_known) return {};
  return {Paragraph{{plain(view.wording.say(Saying::nothing_held_back))}}};
}

}  // namespace

std::vector<Block> farmers_page(const VisitView& view) {
  std::vector<Block> blocks = standstill_box(view);
  std::vector<Block> held = withdrawal_box(view);
  const bool is_none_held = held.empty() && withdrawals_over(view).empty();
  // A cow for today cannot wait; what is held back is read before the next milking.
  const bool is_vet_first = is_vet_needed_today(view);
  if (is_vet_first) append(blocks, vet_box(view));
  append(blocks, std::move(held));
  if (!is_vet_first) append(blocks, vet_box(view));
  if (is_none_held) append(blocks, nothing_held_back(view));
  append(blocks, to_do(view));
  append(blocks, withdrawals_over(view));
  append(blocks, also_said_for_farmer(view));
  append(blocks, settled_since(view));
  append(blocks, stay_near(view));
  std::vector<Block> undone = not_done(view);
  const bool all_is_done = undone.empty() && !view.cows.empty();
  append(blocks, std::move(undone));
  append(blocks, which_number(view));
  append(blocks, told_at_visit(view));
  append(blocks, still_asked(view));
  append(blocks, the_day(view, all_is_done));
  append(blocks, counted_together(view.input.rows.batches, view.wording));
  append(blocks, work_tally(view));
  append(blocks, when_to_ring(view));
  append(blocks, cautions(view));
  return blocks;
}

}  // namespace evenclaw
