#include "core/api/sheet.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <utility>

#include "core/api/filled_rows.hpp"
#include "core/api/routine_trims.hpp"
#include "core/api/sheet_input.hpp"
#include "core/api/tasks_as_told.hpp"
#include "core/base/text.hpp"
#include "core/exchange/csv_written.hpp"
#include "core/paper/text.hpp"
#include "core/sheets/due_sheet.hpp"
#include "core/sheets/visit_lines.hpp"
#include "core/sheets/visit_sheet.hpp"
#include "core/sheets/yard_list.hpp"
#include "core/trade/after_leaving.hpp"

namespace evenclaw {

namespace {

/// Day and herd, letters and digits of the name and the rest as single hyphens.
std::string file_name(Day day, const std::string& herd_name) {
  std::string name = to_text(day) + "-";
  for (const char c : fold_case(herd_name)) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    if (plain) {
      name += c;
    } else if (name.back() != '-') {
      name += '-';
    }
  }
  while (name.back() == '-') name.pop_back();
  return name;
}

std::string file_name(const Visit& visit) {
  const std::string which = visit.ordinal > 1 ? "-" + std::to_string(visit.ordinal) : "";
  return file_name(visit.day, visit.herd_name) + which;
}

/// Empty when none is open, or when nobody said.
Result<FootSet> feet_of_the_open_visit(Store& store, HerdId herd) {
  const auto visits = select_as<VisitRow>(store, herd, {}, {"day", "ordinal"});
  if (!visits) return visits.faults();
  FootSet feet;
  for (const VisitRow& visit : *visits) {
    if (!visit.closed) feet = visit.todays_feet;
  }
  return feet;
}

SheetMade sheet_of(std::string name, Document document, const SheetLook& look) {
  std::string html = to_html(document, look.fonts);
  std::string text = to_plain_text(document);
  return {std::move(document), std::move(name), std::move(html), std::move(text)};
}

}  // namespace

Result<SheetMade> make_sheet(const Ports& ports, const Visit& visit, Day today,
                             const SheetLook& look) {
  auto input = sheet_input(ports, visit, today);
  if (!input) return input.faults();
  input->version = look.version;
  return sheet_of(file_name(visit) + ".html", visit_sheet(*input), look);
}

Result<LinesMade> make_sheet_lines(const Ports& ports, const Visit& visit, Day today) {
  const auto input = sheet_input(ports, visit, today);
  if (!input) return input.faults();
  return LinesMade{file_name(visit) + ".csv", csv_of(visit_lines(*input))};
}

Result<SheetMade> make_due_sheet(Store& store, const Herd& herd, Day today, const SheetLook& look) {
  DueSheetInput input;
  input.herd_name = herd.name;
  input.today = today;
  input.version = look.version;
  Faults faults;
  fill(input.cows, faults, store, herd.herd, {});
  fill(input.tasks, faults, store, herd.herd, {{"open", Compare::equal, Cell(std::int64_t{1})}});
  fill(input.handling, faults, store, herd.herd, {});
  const auto trims = routine_trims(store, herd.herd, today);
  if (!trims) faults.insert(faults.end(), trims.faults().begin(), trims.faults().end());
  if (!faults.empty()) return faults;
  const Outcome as_told = tell_open_tasks(store, herd.herd, today, input.tasks);
  if (!as_told) return as_told.faults();
  input.tasks.insert(input.tasks.end(), trims->begin(), trims->end());
  std::map<CowId, const CowRow*> left;
  for (const CowRow& cow : input.cows) {
    if (cow.left_on) left[cow.cow] = &cow;
  }
  std::erase_if(input.tasks, [&](const TaskRow& task) {
    const auto cow = left.find(task.cow);
    return cow != left.end() && !holds_after_leaving(task, *cow->second, today);
  });
  for (TaskRow& task : input.tasks) {
    const auto cow = left.find(task.cow);
    if (cow != left.end()) task.words = words_after_leaving(task, *cow->second);
  }
  std::erase_if(input.handling, [&](const HandlingRow& row) { return left.count(row.cow) > 0; });
  auto feet = feet_of_the_open_visit(store, herd.herd);
  if (!feet) return feet.faults();
  Document document = due_sheet(input);
  std::vector<Block> pages = writing_pages(input, *feet);
  std::vector<Block> yard = before_leaving();
  std::move(yard.begin(), yard.end(), std::back_inserter(pages));
  std::move(pages.begin(), pages.end(), std::back_inserter(document.blocks));
  return sheet_of(file_name(today, herd.name) + "-due.html", std::move(document), look);
}

}  // namespace evenclaw
