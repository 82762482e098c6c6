#include "core/sheets/due_sheet.hpp"

#include <algorithm>
#include <iterator>
#include <optional>
#include <string>
#include <utility>

#include "core/sheets/task_blocks.hpp"
#include "core/sheets/track.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

namespace {

using Tasks = std::vector<const TaskRow*>;

struct Part {
  Saying title;
  Tasks tasks;
};

std::vector<Part> parts_of(const Tasks& tasks, Day today) {
  std::vector<Part> parts = {{Saying::due_held_back, {}},
                             {Saying::due_late, {}},
                             {Saying::due_now, {}},
                             {Saying::due_coming, {}}};
  for (const TaskRow* task : tasks) {
    const bool is_held_back = task->kind == TaskKind::withdrawal_end && today < task->overdue;
    const std::size_t part = task->overdue <= today ? 1 : (task->earliest <= today ? 2 : 3);
    parts[is_held_back ? 0 : part].tasks.push_back(task);
  }
  return parts;
}

/// Boxes on one sheet of A4, as printed with rows that high.
std::size_t boxes_on_a_sheet(int feet) {
  if (feet <= 1) return 5;
  return feet == 2 ? 4 : 3;
}

std::string why_due(const Tasks& tasks, CowId cow, Day today, const Wording& wording) {
  std::string why;
  for (const TaskRow* task : tasks) {
    if (task->cow != cow) continue;
    why += (why.empty() ? "" : "; ") + task->words + ", " + wording.date(task->due, today);
  }
  return why;
}

/// "kicks and needs the hoist"; "" of a cow of whom nothing holds.
std::string how_handled(const DueSheetInput& input, CowId cow, const Wording& wording) {
  std::vector<HandlingRow> hers;
  std::copy_if(input.handling.begin(), input.handling.end(), std::back_inserter(hers),
               [cow](const HandlingRow& row) { return row.cow == cow; });
  std::vector<std::string> words;
  for (const Handling what : standing_in(hers)) {
    ActionRow row;
    row.action = said_as(what);
    words.push_back(wording.act(row, input.today));
  }
  return wording.list(words);
}

/// Read before the first cow is fetched, whether anything of theirs is due or not.
std::optional<BoxedNotice> careful_with(const DueSheetInput& input, const CowNames& names,
                                        const Wording& wording) {
  std::vector<CowId> cows;
  for (const HandlingRow& row : input.handling) {
    const bool is_new = std::find(cows.begin(), cows.end(), row.cow) == cows.end();
    if (!row.over_on && is_new) cows.push_back(row.cow);
  }
  if (cows.empty()) return std::nullopt;
  std::sort(cows.begin(), cows.end(), [&](CowId a, CowId b) { return names.before(a, b); });
  BoxedNotice box{wording.say(Saying::careful_title), {}, {}};
  for (const CowId cow : cows) {
    NoticeItem item{names.label(cow), {}};
    if (const std::string looks = names.beside_label(cow); !looks.empty()) {
      item.lines.push_back({strong(looks)});
    }
    item.lines.push_back({plain(as_sentence(how_handled(input, cow, wording)))});
    box.items.push_back(std::move(item));
  }
  return box;
}

std::vector<WritingItem> boxes(const DueSheetInput& input, std::size_t on_a_sheet,
                               const Wording& wording) {
  const CowNames names(input.cows, wording);
  Tasks due;
  std::vector<CowId> cows;
  for (const TaskRow* task : open_tasks_in_order(input.tasks, names)) {
    if (task->kind == TaskKind::withdrawal_end || input.today < task->earliest) continue;
    due.push_back(task);
    if (std::find(cows.begin(), cows.end(), task->cow) == cows.end()) cows.push_back(task->cow);
  }
  std::vector<WritingItem> items;
  items.reserve(cows.size() + 2 * on_a_sheet);
  for (const CowId cow : cows) {
    WritingItem item{names.label(cow), {}};
    if (const std::string looks = names.beside_label(cow); !looks.empty()) {
      item.about.push_back(strong(looks + ": "));
    }
    if (const std::string how = how_handled(input, cow, wording); !how.empty()) {
      item.about.push_back(
          strong(as_sentence(wording.say(Saying::careful, {{"what", how}})) + ' '));
    }
    item.about.push_back(plain(why_due(due, cow, input.today, wording)));
    items.push_back(std::move(item));
  }
  // The sheet is filled, and one more is empty.
  const std::size_t begun = items.size() % on_a_sheet;
  const std::size_t empty = on_a_sheet + (begun == 0 ? 0 : on_a_sheet - begun);
  items.insert(items.end(), empty, WritingItem{});
  return items;
}

}  // namespace

std::vector<Block> writing_pages(const DueSheetInput& input, const FootSet& feet,
                                 const Wording& wording) {
  const FootSet lifted = feet.empty() ? four_feet : feet;
  WritingForm form;
  form.label_head = wording.say(Saying::column_cow);
  form.before = {wording.say(Saying::column_reason), wording.say(Saying::writing_lame_on)};
  form.tick_head = wording.state(FootState::nothing_found);
  form.columns = {{wording.say(Saying::writing_claw), 2},
                  {wording.say(Saying::writing_what), 5},
                  {wording.say(Saying::writing_where), 3},
                  {wording.say(Saying::writing_how_bad), 2},
                  {wording.say(Saying::writing_done), 5}};
  for (const Foot foot : all_feet) {
    if (lifted.has(foot)) form.rows.emplace_back(word_of(foot));
  }
  form.behind = {wording.say(Saying::writing_of_her), wording.say(Saying::writing_see_again),
                 wording.say(Saying::writing_vet_told)};
  form.items = boxes(input, boxes_on_a_sheet(lifted.count()), wording);
  return {PageBreak{}, Heading{2, wording.say(Saying::writing_title)},
          Paragraph{{plain(wording.say(Saying::writing_how))}}, std::move(form)};
}

Document due_sheet(const DueSheetInput& input, const Wording& wording) {
  const CowNames names(input.cows, wording);
  const std::string date = wording.full_date(input.today);
  Document document;
  document.language = std::string(wording.tables().language);
  document.kind = wording.say(Saying::due_kind);
  document.title = wording.say(Saying::title, {{"herd", input.herd_name}, {"date", date}});
  document.mark = product_mark(wording);
  document.foot = wording.say(
      Saying::due_foot, {{"herd", input.herd_name}, {"date", date}, {"version", input.version}});
  if (auto careful = careful_with(input, names, wording)) {
    document.blocks.emplace_back(*std::move(careful));
  }
  const std::size_t before_tasks = document.blocks.size();
  for (const Part& part : parts_of(open_tasks_in_order(input.tasks, names), input.today)) {
    if (part.tasks.empty()) continue;
    document.blocks.emplace_back(
        Heading{2, wording.say(part.title), task_count_words(part.tasks, wording)});
    std::vector<Block> blocks = task_blocks(part.tasks, names, 3, input.today, wording);
    std::move(blocks.begin(), blocks.end(), std::back_inserter(document.blocks));
  }
  if (document.blocks.size() == before_tasks) {
    document.blocks.emplace_back(Paragraph{{plain(wording.say(Saying::nothing_due))}});
  }
  return document;
}

}  // namespace evenclaw
