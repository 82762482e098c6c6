#include "core/sheets/withdrawal_box.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>

#include "core/sheets/asked_first.hpp"
#include "core/sheets/held_back_ends.hpp"
#include "core/sheets/left_to_ask.hpp"
#include "core/sheets/off_label_floor.hpp"
#include "core/sheets/withdrawal_said.hpp"
#include "core/trade/medicine_use.hpp"

namespace evenclaw {

namespace {

bool holds_back(const ActionRow& row) {
  return row.withdrawal == WithdrawalKnown::held_back && !tells_withdrawal(row.action);
}

/// Somebody told till when, and it may have been meant of this.
bool may_be_told_to_hold_back(const std::vector<SaidOf>& said, const ActionRow& row) {
  return std::any_of(said.begin(), said.end(), [&](const SaidOf& one) {
    const auto& of = one.may_be_of;
    return one.telling->action != ActionKind::no_withdrawal &&
           std::find(of.begin(), of.end(), &row) != of.end();
  });
}

bool is_by_plan(const std::vector<const ActionRow*>& acts, EntryId turn) {
  return std::any_of(acts.begin(), acts.end(), [&](const ActionRow* row) {
    return row->turn == turn && row->action == ActionKind::vet_plan;
  });
}

bool is_end_of(const TaskRow& task, CowId cow) {
  return task.kind == TaskKind::withdrawal_end && task.cow == cow;
}

/// All that was done for her at the visits at which her open ends were made, what these were told
/// of where it was given before, and what the law's floor still holds back.
std::vector<const ActionRow*> acts_behind(const VisitView& view, CowId cow,
                                          const std::vector<const ActionRow*>& all,
                                          const std::vector<LeftToAsk>& asked) {
  const std::vector<SaidOf> said = withdrawals_said(all);
  std::set<VisitId> visits;
  for (const TaskRow* task : view.tasks) {
    if (is_end_of(*task, cow)) visits.insert(task->visit);
  }
  std::set<const ActionRow*> meant;
  for (const SaidOf& one : said) {
    if (visits.count(one.telling->visit) == 0) continue;
    meant.insert(one.may_be_of.begin(), one.may_be_of.end());
  }
  for (const LeftToAsk& one : asked) {
    if (one.cow == cow && one.floor.is_open()) meant.insert(one.row);
  }
  std::vector<const ActionRow*> acts;
  std::copy_if(all.begin(), all.end(), std::back_inserter(acts), [&](const ActionRow* row) {
    return visits.count(row->visit) > 0 || meant.count(row) > 0;
  });
  return acts;
}

/// "time as the vet states it (vet: Dr Moor)"; "" when the list says neither.
std::string stated_words(const ProductStated* stated, const Wording& wording) {
  if (stated == nullptr) return {};
  std::vector<std::string> parts;
  switch (stated->by) {
    case StatedBy::not_said:
      break;
    case StatedBy::label:
      parts.push_back(wording.say(Saying::as_label_states));
      break;
    case StatedBy::vet:
      parts.push_back(wording.say(Saying::as_vet_states));
      break;
  }
  if (!stated->vet.empty()) {
    parts.push_back(wording.say(Saying::directed_by_name, {{"name", stated->vet}}));
  }
  return wording.list(parts);
}

/// What holds back her milk or meat, and on whose word; each product and act once.
std::vector<std::string> causes_of(const std::vector<const ActionRow*>& acts,
                                   const std::vector<SaidOf>& said, const VisitView& view) {
  const Wording& wording = view.wording;
  std::vector<std::string> causes;
  const auto add = [&](std::string words) {
    const bool is_new = std::find(causes.begin(), causes.end(), words) == causes.end();
    if (is_new) causes.push_back(std::move(words));
  };
  // What makes her wait is read first: a product without a wait only stands beside it.
  std::vector<const ActionRow*> in_order = acts;
  std::stable_partition(in_order.begin(), in_order.end(),
                        [](const ActionRow* row) { return holds_back(*row); });
  for (const ActionRow* row : in_order) {
    const bool is_plan = row->action == ActionKind::vet_plan;
    const bool is_cause = is_plan || holds_back(*row) || may_be_told_to_hold_back(said, *row);
    if (!is_cause) continue;
    ActionRow act = *row;
    act.claw = Claw::none;
    const ProductStated* listed = stated_of(view, *row);
    // Who is named is not told a second time without the name.
    const bool is_named = listed != nullptr && !listed->vet.empty();
    if (is_named && act.directed_by == ByWhom::vet) act.directed_by = ByWhom::not_called;
    std::string words = wording.act(act, view.input.visit.day);
    const std::string stated = stated_words(listed, wording);
    if (!stated.empty()) words += ", " + stated;
    const bool is_directed = !stated.empty() || row->directed_by != ByWhom::not_called ||
                             row->by_whom == ByWhom::vet || is_by_plan(acts, row->turn);
    if (!is_directed) {
      words += ", " + wording.say(Saying::nobody_directed);
    }
    add(std::move(words));
  }
  return causes;
}

/// A cow without a number is told by what was found on her too.
std::optional<Runs> found_on_unnumbered(const VisitView& view, CowId id) {
  const Wording& wording = view.wording;
  const CowSeen* cow = find_cow(view, id);
  const bool is_numbered = !view.names.number(id).empty();
  if (is_numbered || cow == nullptr || cow->findings.empty()) return std::nullopt;
  std::vector<std::string> found;
  for (const FindingRow* row : cow->findings) {
    found.push_back(wording.foot(row->foot) + ", " + wording.finding_at_claw(*row));
  }
  return Runs{plain(as_sentence(wording.list(found)))};
}

/// "Which is her number: 513 or 531? Until it is known both cows are held back." Where one number
/// alone was said nobody knows which other cow it may be.
std::optional<Runs> which_number(const VisitView& view, CowId id) {
  const CowSeen* cow = find_cow(view, id);
  if (cow == nullptr) return std::nullopt;
  for (const DoubtRow* doubt : cow->doubts) {
    if (doubt->kind != DoubtKind::doubtful_number) continue;
    const bool is_of_two = doubt->words.find(" or ") != std::string::npos;
    const std::string keep = as_sentence(
        view.wording.say(is_of_two ? BoxSaying::keep_both_back : BoxSaying::it_may_be_another));
    return Runs{strong(as_sentence(doubt->words) + ' ' + keep)};
  }
  return std::nullopt;
}

/// Beside the ends what the law asks at least, each once.
void add_floors(NoticeItem& item, const VisitView& view, const std::vector<LeftToAsk>& asked,
                CowId cow) {
  std::vector<std::string> told;
  for (const LeftToAsk& one : asked) {
    if (one.cow != cow || !one.floor.is_open()) continue;
    std::string words = floor_words(view, *one.row, one.floor);
    const bool is_new = std::find(told.begin(), told.end(), words) == told.end();
    if (!is_new) continue;
    item.lines.push_back({strong(as_sentence(words))});
    told.push_back(std::move(words));
  }
}

/// How she is marked stands in the words of the task; that nobody called a mark stands here.
NoticeItem held_back_item(const VisitView& view, CowId cow,
                          const std::vector<const ActionRow*>& all,
                          const std::vector<LeftToAsk>& asked) {
  const Wording& wording = view.wording;
  NoticeItem item{view.names.label(cow), head_lines(view, cow)};
  const CowRow* left = who_left(view, cow);
  if (auto which = which_number(view, cow)) item.lines.push_back(*std::move(which));
  if (auto found = found_on_unnumbered(view, cow)) item.lines.push_back(*std::move(found));
  for (Runs& line : end_lines(view, cow, asked)) item.lines.push_back(std::move(line));
  add_floors(item, view, asked, cow);
  for (Runs& line : half_lines(view, cow, asked, all)) item.lines.push_back(std::move(line));
  const std::vector<SaidOf> said = withdrawals_said(all);
  const std::vector<const ActionRow*> acts = acts_behind(view, cow, all, asked);
  for (const std::string& cause : causes_of(acts, said, view)) {
    item.lines.push_back({plain(as_sentence(cause))});
  }
  const bool is_marked = std::any_of(acts.begin(), acts.end(), [](const ActionRow* row) {
    return row->action == ActionKind::marked;
  });
  if (!is_marked && left == nullptr)
    item.lines.push_back({plain(wording.say(Saying::no_mark_called))});
  return item;
}

/// Cows by number: those one of whose ends is to come, be it the law's, then those whose ends are
/// over. Over is the time of none of whom something has to be asked still.
struct EndsNamed {
  std::vector<NoticeItem> held_back;
  std::vector<NoticeItem> over;
  std::vector<OverOf> asked;
};

/// Each cow with an end, and whether all of hers are over.
std::map<CowId, bool> cows_with_ends(const VisitView& view, const std::vector<LeftToAsk>& left) {
  std::map<CowId, bool> are_over;
  for (const TaskRow* task : view.tasks) {
    if (task->kind != TaskKind::withdrawal_end) continue;
    const auto cow = are_over.try_emplace(task->cow, true).first;
    cow->second = cow->second && is_end_over(*task, view);
  }
  for (const LeftToAsk& one : left) {
    if (one.floor.is_open()) are_over[one.cow] = false;
  }
  return are_over;
}

EndsNamed ends_named(const VisitView& view, const std::vector<LeftToAsk>& left) {
  const std::map<CowId, bool> are_over = cows_with_ends(view, left);
  std::vector<CowId> cows;
  cows.reserve(are_over.size());
  for (const auto& [cow, is_over] : are_over) cows.push_back(cow);
  std::sort(cows.begin(), cows.end(), [&](CowId a, CowId b) { return view.names.before(a, b); });
  std::set<CowId> asked;
  for (const LeftToAsk& one : left) asked.insert(one.cow);
  std::map<CowId, std::vector<const ActionRow*>> acts = acts_by_cow(view);
  EndsNamed ends;
  for (const CowId cow : cows) {
    NoticeItem item = held_back_item(view, cow, acts[cow], left);
    if (are_over.at(cow) && asked.count(cow) > 0) {
      ends.asked.push_back({cow, std::move(item.lines)});
      continue;
    }
    auto& items = are_over.at(cow) ? ends.over : ends.held_back;
    items.push_back(std::move(item));
  }
  return ends;
}

BoxedNotice box_of(Saying title, std::vector<NoticeItem> items, const Wording& wording) {
  BoxedNotice box{wording.say(title), std::move(items)};
  box.title_continued = wording.say(Saying::box_continued, {{"what", box.title}});
  return box;
}

}  // namespace

std::vector<Block> withdrawal_box(const VisitView& view) {
  const Wording& wording = view.wording;
  const std::vector<LeftToAsk> left = left_to_ask(view);
  EndsNamed ends = ends_named(view, left);
  std::vector<Block> boxes;
  if (!ends.held_back.empty()) {
    BoxedNotice box = box_of(Saying::withdrawal_title, std::move(ends.held_back), wording);
    box.foot.push_back(plain(wording.say(Saying::withdrawal_told)));
    boxes.emplace_back(std::move(box));
  }
  const bool some_end = !ends.asked.empty();
  AskedFirst asked = asked_first(view, left, std::move(ends.asked));
  if (asked.items.empty()) return boxes;
  BoxedNotice box = box_of(Saying::withdrawal_ask_title, std::move(asked.items), wording);
  const bool is_told_above = !boxes.empty();
  if (some_end && !is_told_above) box.foot.push_back(plain(wording.say(Saying::withdrawal_told)));
  if (asked.holds_not_stated) {
    if (!box.foot.empty()) box.foot.push_back(plain(" "));
    box.foot.push_back(
        plain(wording.say(some_end ? Saying::withdrawal_ask_of_these : Saying::withdrawal_ask)));
  }
  if (asked.holds_words) {
    if (!box.foot.empty()) box.foot.push_back(plain(" "));
    box.foot.push_back(strong(wording.say(BoxSaying::ask_what_was_given)));
  }
  boxes.emplace_back(std::move(box));
  return boxes;
}

std::vector<Block> withdrawals_over(const VisitView& view) {
  Bullets bullets;
  for (const NoticeItem& item : ends_named(view, left_to_ask(view)).over) {
    Runs runs = {strong(item.label)};
    for (const Runs& line : item.lines) {
      runs.push_back(plain(" "));
      for (const Run& run : line) runs.push_back(plain(run.text));
    }
    bullets.items.push_back(std::move(runs));
  }
  if (bullets.items.empty()) return {};
  return {Heading{2, view.wording.say(BoxSaying::withdrawals_over_title)}, std::move(bullets)};
}

}  // namespace evenclaw
