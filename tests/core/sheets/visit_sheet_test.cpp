#include "core/sheets/visit_sheet.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <variant>

#include "core/base/random.hpp"
#include "core/paper/html.hpp"
#include "core/paper/text.hpp"
#include "tests/core/sheets/approved.hpp"
#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

std::string html_of(const VisitSheetInput& input) {
  return to_html(visit_sheet(input));
}

std::size_t times(const std::string& text, const std::string& part) {
  std::size_t count = 0;
  for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++count;
  return count;
}

std::size_t tick_boxes(const Document& document) {
  std::size_t lines = 0;
  for (const Block& block : document.blocks) {
    const TaskList* list = std::get_if<TaskList>(&block);
    if (list == nullptr) continue;
    for (const TaskItem& item : list->items) lines += item.lines.size();
  }
  return lines;
}

/// Tasks of all kinds and owners, open and closed; each open one for others than the vet has words
/// of its own.
VisitSheetInput random_tasks(RandomStream& random) {
  InventedDay day("Hollow Meadow");
  day.turn("412");
  const auto count = static_cast<int>(random.below(60));
  for (int i = 0; i < count; ++i) {
    const std::string cow = std::to_string(400 + random.below(12));
    const auto owner = static_cast<Owner>(random.below(3));
    const auto days = static_cast<int>(random.below(30));
    TaskRow& task = day.task(cow, TaskKind::block_check, owner, days - 8);
    task.words = "errand number " + std::to_string(i) + '!';
    task.open = random.below(5) != 0;
  }
  return day.input();
}

}  // namespace

TEST_CASE("sheets that people have read stay as they are") {
  const struct {
    const char* name;
    VisitSheetInput (*day)();
  } rows[] = {{"three_cows", three_cow_day},
              {"nothing_found", day_with_nothing_found},
              {"forty_tasks", day_with_forty_tasks},
              {"long_names", day_with_long_names},
              {"doubts", day_with_doubts}};

  const struct {
    const char* name;
    VisitSheetInput (*day)();
  } texts[] = {{"three_cows", three_cow_day},
               {"many_cows", day_with_many_cows},
               {"better_than_last_time", day_better_than_last_time},
               {"lame_cows", day_of_lame_cows}};

  for (const auto& row : rows) {
    const std::string name = row.name;
    CHECK_MESSAGE(difference_to_approved(name + ".html", html_of(row.day())) == "", name);
  }
  for (const auto& row : texts) {
    const std::string text = to_plain_text(visit_sheet(row.day()));
    CHECK_MESSAGE(difference_to_approved(std::string(row.name) + ".txt", text) == "", row.name);
  }
}

TEST_CASE("a day of routine work is set beside the one before it, a day of lame cows is not") {
  const std::string same = "Something was found on fewer cows than on Tue 29 Sep";
  CHECK(times(to_plain_text(visit_sheet(day_better_than_last_time()), 1000), same) == 1);
  const std::string lame = to_plain_text(visit_sheet(day_of_lame_cows()), 1000);
  CHECK(times(lame, "to compare with") == 0);
  CHECK(times(lame, "29 Sep") == 0);
}

TEST_CASE("every open task stands on the sheet once, a cow for the vet once, and no closed one") {
  RandomStream random(412, 7);
  for (int round = 0; round < 100; ++round) {
    const VisitSheetInput input = random_tasks(random);
    const Document document = visit_sheet(input);
    const std::string text = to_plain_text(document, 1000);
    std::set<CowId> for_vet;
    std::size_t for_others = 0;
    for (const TaskRow& task : input.rows.tasks) {
      const bool in_list = task.open && task.owner != Owner::vet;
      CHECK(times(text, task.words) == (in_list ? 1U : 0U));
      if (task.open && task.owner == Owner::vet) for_vet.insert(task.cow);
      for_others += in_list ? 1 : 0;
    }
    CHECK(tick_boxes(document) == for_others);
    const BoxedNotice* box = std::get_if<BoxedNotice>(&document.blocks.at(0));
    CHECK((box == nullptr ? 0U : box->items.size()) == for_vet.size());
  }
}

TEST_CASE("a cow stands once under each date") {
  const Document document = visit_sheet(day_with_forty_tasks());
  std::vector<std::string> under_date;
  for (const Block& block : document.blocks) {
    if (std::holds_alternative<Heading>(block)) under_date.clear();
    const TaskList* list = std::get_if<TaskList>(&block);
    if (list == nullptr) continue;
    for (const TaskItem& item : list->items) {
      CHECK(std::count(under_date.begin(), under_date.end(), item.label) == 0);
      under_date.push_back(item.label);
    }
  }
}

TEST_CASE("headings go down one level at a time") {
  for (const auto& input : {three_cow_day(), day_with_doubts(), day_with_forty_tasks()}) {
    int level = 1;
    for (const Block& block : visit_sheet(input).blocks) {
      const Heading* heading = std::get_if<Heading>(&block);
      if (heading == nullptr) continue;
      CHECK(heading->level >= 2);
      CHECK(heading->level <= level + 1);
      level = heading->level;
    }
  }
}

TEST_CASE("hostile names stay names") {
  const std::string page = html_of(day_with_long_names());
  CHECK(times(page, "<script") == 0);
  CHECK(times(page, "</style>") == 1);
  CHECK(page.find("O&#39;Neill &amp; Daughter") != std::string::npos);
  CHECK(page.find("S\xC3\xB6hne &lt;&quot;Milchhof") != std::string::npos);
}

TEST_CASE("the order in which rows come does not change the sheet") {
  VisitSheetInput input = three_cow_day();
  const std::string page = html_of(input);
  for_each_table(input.rows, [](auto& rows) { std::reverse(rows.begin(), rows.end()); });
  CHECK(html_of(input) == page);
}

TEST_CASE("a visit still open says that the sheet may change") {
  VisitSheetInput input = three_cow_day();
  CHECK(html_of(input).find("not closed yet") == std::string::npos);
  input.visit.closed = false;
  CHECK(html_of(input).find("not closed yet") != std::string::npos);
}

TEST_CASE("a visit without a single row is still a sheet") {
  InventedDay day("Hollow Meadow");
  const std::string text = to_plain_text(visit_sheet(day.input()));
  CHECK(text.find("No cow was called at this visit.") != std::string::npos);
  CHECK(text.find("Nothing is left to do.") != std::string::npos);
  CHECK(text.find("Cow by cow") == std::string::npos);
}

}  // namespace evenclaw
