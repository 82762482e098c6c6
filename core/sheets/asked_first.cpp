#include "core/sheets/asked_first.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "core/sheets/held_back_ends.hpp"
#include "core/sheets/medicine_in_words.hpp"
#include "core/sheets/vet_work_to_ask.hpp"
#include "core/sheets/who_has_her.hpp"
#include "core/trade/medicine_use.hpp"

namespace evenclaw {

namespace {

struct AskedOf {
  CowId cow;
  std::vector<Runs> lines;
};

bool is_line_of(const std::vector<Runs>& lines, const std::string& words) {
  return std::any_of(lines.begin(), lines.end(),
                     [&](const Runs& line) { return !line.empty() && line.front().text == words; });
}

/// By number; each line of hers once.
class Asked {
 public:
  explicit Asked(const VisitView& view) : view_(view) {}

  std::vector<Runs>& of(CowId cow) {
    const auto found = std::find_if(all_.begin(), all_.end(),
                                    [cow](const AskedOf& one) { return one.cow == cow; });
    if (found != all_.end()) return found->lines;
    all_.push_back({cow, head_lines(view_, cow)});
    return all_.back().lines;
  }

  void add(CowId cow, const std::string& words) {
    std::vector<Runs>& lines = of(cow);
    const std::string sentence = as_sentence(words);
    if (!is_line_of(lines, sentence)) lines.push_back({plain(sentence)});
  }

  std::vector<AskedOf> by_number() && {
    std::stable_sort(all_.begin(), all_.end(), [&](const AskedOf& a, const AskedOf& b) {
      return view_.names.before(a.cow, b.cow);
    });
    return std::move(all_);
  }

 private:
  const VisitView& view_;
  std::vector<AskedOf> all_;
};

/// "Spray (blue), on Mon 2 Nov, meat withdrawal not known"; of what was told the day is its end.
std::string words_of_unknown(const VisitView& view, const LeftToAsk& left) {
  const Wording& wording = view.wording;
  const Day today = view.input.visit.day;
  ActionRow product = *left.row;
  product.claw = Claw::none;
  product.said_for = std::nullopt;
  std::string words = wording.act(product, today);
  const bool is_earlier = left.row->visit != view.input.visit.visit;
  if (is_earlier && !tells_withdrawal(product.action)) {
    const std::string day = wording.date(product.day, today);
    words = wording.say(Saying::done_on_day, {{"what", words}, {"date", day}});
  }
  return left.half ? words + ", " + half_words(*left.half, wording) : words;
}

std::string words_told(const VisitView& view, const MedicineTold& told) {
  const Wording& wording = view.wording;
  if (told.on == view.input.visit.day) return told.words;
  const std::string date = wording.date(told.on, view.input.visit.day);
  return wording.say(Saying::done_on_day, {{"what", told.words}, {"date", date}});
}

std::string key_of(const std::vector<Runs>& lines) {
  std::string key;
  for (const Runs& line : lines) {
    for (const Run& run : line) key += run.text;
    key += '\n';
  }
  return key;
}

/// Few numbers stand as large as beside what is held back; of many, or of names, the words tell.
NoticeItem item_of(const VisitView& view, const std::vector<const AskedOf*>& alike) {
  constexpr std::size_t most_large = 6;  // they share one label as wide as a third of the page
  const AskedOf& first = *alike.front();
  if (alike.size() == 1) return {view.names.label(first.cow), first.lines};
  std::vector<std::string> cows;
  bool are_numbers = true;
  for (const AskedOf* one : alike) {
    cows.push_back(view.names.in_text(one->cow));
    are_numbers = are_numbers && cows.back() == view.names.number(one->cow);
  }
  const std::string who = view.wording.list(cows);
  if (are_numbers && alike.size() <= most_large) return {who, first.lines};
  std::vector<Runs> lines = first.lines;
  std::string& last = lines.back().back().text;
  const bool ends_in_stop = !last.empty() && last.back() == '.';
  if (ends_in_stop) last.pop_back();
  lines.back().push_back(plain(": "));
  lines.back().push_back(strong(who));
  lines.back().push_back(plain("."));
  return {"", std::move(lines)};
}

std::vector<NoticeItem> rows_of(const VisitView& view, const std::vector<AskedOf>& asked) {
  std::vector<std::vector<const AskedOf*>> rows;
  std::map<std::string, std::size_t> row_of;
  for (const AskedOf& one : asked) {
    const auto row = row_of.try_emplace(key_of(one.lines), rows.size());
    if (row.second) rows.emplace_back();
    rows[row.first->second].push_back(&one);
  }
  std::vector<NoticeItem> items;
  items.reserve(rows.size());
  for (const auto& alike : rows) items.push_back(item_of(view, alike));
  return items;
}

}  // namespace

std::vector<Runs> head_lines(const VisitView& view, CowId cow) {
  std::vector<Runs> lines;
  const std::string looks = view.names.beside_label(cow);
  if (!looks.empty()) lines.push_back({strong(looks)});
  const CowRow* left = who_left(view, cow);
  if (left != nullptr) lines.push_back({strong(as_sentence(who_has_her(*left, view)))});
  return lines;
}

AskedFirst asked_first(const VisitView& view, const std::vector<LeftToAsk>& left,
                       std::vector<OverOf> over) {
  Asked asked(view);
  AskedFirst box;
  std::set<CowId> with_end;  // the box "not for sale" or her line here tells of the half
  for (const TaskRow* task : view.tasks) {
    if (task->kind == TaskKind::withdrawal_end) with_end.insert(task->cow);
  }
  for (const LeftToAsk& one : left) {
    if (one.floor.is_open()) with_end.insert(one.cow);
  }
  for (OverOf& one : over) asked.of(one.cow) = std::move(one.lines);
  for (const LeftToAsk& one : left) {
    if (one.floor.is_open() || (one.half && with_end.count(one.cow) > 0)) continue;
    asked.add(one.cow, words_of_unknown(view, one));
    box.holds_not_stated = true;
  }
  for (const VetWork& work : vet_work_to_ask(view)) asked.add(work.cow, work.words);
  for (const MedicineTold& told : medicine_to_ask(view)) {
    asked.add(told.cow, words_told(view, told));
    box.holds_words = true;
  }
  box.items = rows_of(view, std::move(asked).by_number());
  return box;
}

}  // namespace evenclaw
