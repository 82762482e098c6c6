#include "core/sheets/farmers_page.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <utility>

#include "core/sheets/advice.hpp"
#include "core/sheets/batch_words.hpp"
#include "core/sheets/day_sentences.hpp"
#include "core/sheets/task_blocks.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/medicine_use.hpp"

namespace evenclaw {

namespace {

void append(std::vector<Block>& blocks, std::vector<Block> more) {
  std::move(more.begin(), more.end(), std::back_inserter(blocks));
}

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

/// What was found where the vet is to look, or else what she came with.
std::string why_vet(const VisitView& view, const TaskRow& task) {
  const Wording& wording = view.wording;
  const CowSeen* cow = find_cow(view, task.cow);
  if (task.visit != view.input.visit.visit || cow == nullptr) {
    return wording.say(Saying::vet_asked_on,
                       {{"date", wording.date(task.made_on, view.input.printed)}});
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
  return item;
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

/// What holds back her milk or meat, as it was said at this visit.
std::string held_back_for(const CowSeen& cow, const Wording& wording) {
  std::vector<std::string> products;
  for (const ActionRow* row : cow.actions) {
    const bool is_product = takes_product(row->action);
    if (!is_product || row->withdrawal != WithdrawalKnown::held_back) continue;
    std::string words = wording.act(*row, row->day);
    if (std::find(products.begin(), products.end(), words) == products.end()) {
      products.push_back(std::move(words));
    }
  }
  return products.empty() ? std::string() : wording.list(products);
}

Runs end_line(const TaskRow& task, const VisitView& view) {
  Runs line = {strong(capitalised(task.words))};
  if (task.overdue <= view.input.printed) {
    line.push_back(plain(", " + view.wording.say(Saying::its_time_is_over)));
  }
  line.push_back(plain("."));
  return line;
}

/// A cow without a number is told by what she looks like and what was found on her.
std::vector<Runs> who_she_is(const VisitView& view, CowId id) {
  std::vector<Runs> lines;
  const Wording& wording = view.wording;
  if (view.names.label(id) != wording.say(Saying::no_number)) return lines;
  const std::string looks = view.names.looks(id);
  if (!looks.empty()) lines.push_back({strong(looks)});
  const CowSeen* cow = find_cow(view, id);
  if (cow == nullptr || cow->findings.empty()) return lines;
  std::vector<std::string> found;
  for (const FindingRow* row : cow->findings) {
    found.push_back(wording.foot(row->foot) + ", " + wording.finding_at_claw(*row));
  }
  lines.push_back({plain(as_sentence(wording.list(found)))});
  return lines;
}

/// The ends come first: by date, the milk before the meat.
std::vector<NoticeItem> ends_named(const VisitView& view) {
  std::vector<NoticeItem> items;
  std::map<CowId, std::size_t> item_of;
  for (const TaskRow* task : view.tasks) {
    if (task->kind != TaskKind::withdrawal_end) continue;
    const auto [at, is_new] = item_of.try_emplace(task->cow, items.size());
    if (is_new) items.push_back({view.names.label(task->cow), who_she_is(view, task->cow)});
    items[at->second].lines.push_back(end_line(*task, view));
  }
  for (const CowSeen& cow : view.cows) {
    const auto at = item_of.find(cow.cow);
    const std::string products = held_back_for(cow, view.wording);
    if (at == item_of.end() || products.empty()) continue;
    items[at->second].lines.push_back({plain(as_sentence(products))});
  }
  return items;
}

bool was_told_by_mouth(const CowSeen& cow) {
  return std::any_of(cow.actions.begin(), cow.actions.end(),
                     [](const ActionRow* row) { return tells_withdrawal(row->action); });
}

/// Products of which nobody stated a withdrawal, and the cows that got them.
std::vector<NoticeItem> not_known(const VisitView& view) {
  const Wording& wording = view.wording;
  std::map<std::string, std::vector<std::string>> cows_by_product;
  for (const CowSeen& cow : view.cows) {
    if (was_told_by_mouth(cow)) continue;
    for (const ActionRow* row : cow.actions) {
      if (!takes_product(row->action) || row->withdrawal != WithdrawalKnown::not_known) continue;
      ActionRow product = *row;
      product.claw = Claw::none;
      product.said_for = std::nullopt;
      auto& cows = cows_by_product[wording.act(product, row->day)];
      const std::string name = view.names.in_text(cow.cow);
      if (cows.empty() || cows.back() != name) cows.push_back(name);
    }
  }
  std::vector<NoticeItem> items;
  items.reserve(cows_by_product.size());
  for (const auto& [product, cows] : cows_by_product) {
    items.push_back(
        {"", {{plain(capitalised(product) + ": "), strong(wording.list(cows)), plain(".")}}});
  }
  return items;
}

std::vector<Block> withdrawal_box(const VisitView& view) {
  const Wording& wording = view.wording;
  BoxedNotice box{wording.say(Saying::withdrawal_title), ends_named(view), {}};
  const bool some_told = !box.items.empty();
  std::vector<NoticeItem> asked = not_known(view);
  const bool some_asked = !asked.empty();
  std::move(asked.begin(), asked.end(), std::back_inserter(box.items));
  if (box.items.empty()) return {};
  if (some_told) box.foot.push_back(plain(wording.say(Saying::withdrawal_told)));
  if (some_told && some_asked) box.foot.push_back(plain(" "));
  if (some_asked) {
    box.foot.push_back(
        plain(wording.say(some_told ? Saying::withdrawal_ask_of_these : Saying::withdrawal_ask)));
  }
  return {std::move(box)};
}

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
    const Saying words = view.tasks.empty() ? Saying::nothing_to_do : Saying::nothing_else_to_do;
    return {std::move(heading), Paragraph{{plain(wording.say(words))}}};
  }
  heading.aside = task_count_words(tasks, wording);
  std::vector<Block> blocks = {std::move(heading)};
  append(blocks, task_blocks(tasks, view.names, 3, view.input.printed, wording));
  return blocks;
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
    if (not_lifted_said) not_lifted.add(foot);
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

std::vector<std::string> who_she_is(const CowSeen& cow, const Wording& wording) {
  std::vector<std::string> parts;
  for (const DoubtRow* doubt : cow.doubts) {
    if (doubt->kind == DoubtKind::doubtful_number) {
      parts.push_back(wording.say(Saying::number_in_doubt));
    }
    if (doubt->kind == DoubtKind::unnumbered) parts.push_back(wording.say(Saying::has_no_number));
  }
  return parts;
}

Runs cow_bullet(const std::string& cow, const std::vector<std::string>& parts) {
  std::string words;
  for (const std::string& part : parts) words += (words.empty() ? "" : "; ") + part;
  const bool is_asked = !words.empty() && words.back() == '?';
  return {strong(cow), plain(" " + words + (is_asked ? "" : "."))};
}

Runs removed_bullet(const RemovedFromSheet& removed, const VisitView& view) {
  const Wording& wording = view.wording;
  const std::string name = removed.cow.empty() ? wording.say(Saying::a_cow) : removed.cow;
  if (!removed.on) return cow_bullet(name, {wording.say(Saying::record_is_removed)});
  const std::string date = wording.date(*removed.on, view.input.visit.day);
  return cow_bullet(name, {wording.say(Saying::record_removed, {{"date", date}})});
}

std::vector<Block> not_done(const VisitView& view) {
  const Wording& wording = view.wording;
  Bullets bullets;
  for (const CowSeen& cow : view.cows) {
    std::vector<std::string> parts = left_undone(cow, view);
    for (std::string& part : who_she_is(cow, wording)) parts.push_back(std::move(part));
    if (!parts.empty()) bullets.items.push_back(cow_bullet(view.names.in_text(cow.cow), parts));
  }
  for (const NotSeenCow* cow : view.not_seen) {
    const std::string name = cow->number.empty() ? view.names.in_text(cow->cow) : cow->number;
    bullets.items.push_back(
        cow_bullet(name, {with_reason(Saying::was_not_seen, cow->why, wording)}));
  }
  for (const RemovedFromSheet& removed : view.input.removed) {
    bullets.items.push_back(removed_bullet(removed, view));
  }
  Heading heading{2, wording.say(Saying::not_done_title)};
  if (bullets.items.empty()) {
    const bool is_nobody = view.cows.empty() && view.input.rows.batches.empty();
    const Saying all_well = is_nobody ? Saying::looked_at_nobody : Saying::everything_done;
    return {std::move(heading), Paragraph{{plain(wording.say(all_well))}}};
  }
  return {std::move(heading), std::move(bullets)};
}

/// In the words in which it was told.
std::vector<Block> told_at_visit(const VisitView& view) {
  if (view.input.told.empty()) return {};
  Bullets bullets;
  bullets.items.reserve(view.input.told.size());
  for (const std::string& words : view.input.told) bullets.items.push_back({plain(words)});
  return {Heading{2, view.wording.say(Saying::told_title)}, std::move(bullets)};
}

/// Often the farm knows: it told of number 66.
std::vector<Block> still_asked(const VisitView& view) {
  if (view.input.asked.empty()) return {};
  Bullets bullets;
  for (const AskedOnSheet& asked : view.input.asked) {
    Runs runs;
    if (!asked.cow.empty()) runs.push_back(strong(asked.cow + " "));
    runs.push_back(plain(asked.words));
    bullets.items.push_back(std::move(runs));
  }
  return {Heading{2, view.wording.say(Saying::still_asked)}, std::move(bullets)};
}

std::vector<Block> the_day(const VisitView& view) {
  Bullets sentences;
  for (std::string& sentence : day_sentences(view)) {
    sentences.items.push_back({plain(std::move(sentence))});
  }
  return {Heading{2, view.wording.say(Saying::the_day)}, std::move(sentences)};
}

}  // namespace

std::vector<Block> farmers_page(const VisitView& view) {
  std::vector<Block> blocks = vet_box(view);
  append(blocks, withdrawal_box(view));
  append(blocks, to_do(view));
  append(blocks, not_done(view));
  append(blocks, told_at_visit(view));
  append(blocks, still_asked(view));
  append(blocks, the_day(view));
  append(blocks, counted_together(view.input.rows.batches, view.wording));
  append(blocks, when_to_ring(view));
  append(blocks, cautions(view));
  return blocks;
}

}  // namespace evenclaw
