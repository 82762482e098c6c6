// Blank call lines to be written in by hand (core/sheets/due_sheet.hpp).
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

#include "core/paper/html.hpp"
#include "core/paper/text.hpp"
#include "core/sheets/due_sheet.hpp"
#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw {

namespace {

DueSheetInput due_sheet_of(const VisitSheetInput& input) {
  return {input.herd_name, input.printed, input.version, input.rows.tasks, input.rows.cows};
}

const WritingForm& form_in(const std::vector<Block>& blocks) {
  const auto found = std::find_if(blocks.begin(), blocks.end(), [](const Block& block) {
    return std::holds_alternative<WritingForm>(block);
  });
  REQUIRE(found != blocks.end());
  return std::get<WritingForm>(*found);
}

Document on_paper(InventedDay& day) {
  Document document;
  document.title = "Hollow Meadow";
  document.blocks = writing_pages(due_sheet_of(day.input()), hind_feet);
  return document;
}

}  // namespace

TEST_CASE("each cow that is due has a box once, with why, and empty ones fill the sheets") {
  InventedDay day("Hollow Meadow");
  TaskRow& first = day.task("412", TaskKind::wrap_off, Owner::farmer, 0);
  first.earliest = day.input().printed;
  day.task("412", TaskKind::block_check, Owner::trimmer, 0).earliest = day.input().printed;
  day.task("77", TaskKind::wrap_off, Owner::farmer, 9);
  const std::vector<Block> pages = writing_pages(due_sheet_of(day.input()), hind_feet);
  const WritingForm& form = form_in(pages);
  CHECK(std::count_if(form.items.begin(), form.items.end(),
                      [](const WritingItem& item) { return item.label == "412"; }) == 1);
  CHECK(std::none_of(form.items.begin(), form.items.end(),
                     [](const WritingItem& item) { return item.label == "77"; }));
  CHECK(form.items.back().label.empty());
  CHECK(form.items.size() == 8);
  CHECK(form.items.front().about.front().text.find(';') != std::string::npos);
}

TEST_CASE("a row is there for each of today's feet, for all four when nobody said") {
  InventedDay day("Hollow Meadow");
  using Rows = std::vector<std::string>;
  CHECK(form_in(writing_pages(due_sheet_of(day.input()), hind_feet)).rows == Rows{"LH", "RH"});
  CHECK(form_in(writing_pages(due_sheet_of(day.input()), {})).rows == Rows{"LF", "RF", "LH", "RH"});
}

TEST_CASE("the blanks stand in the order in which a cow is called") {
  InventedDay day("Hollow Meadow");
  const Document document = on_paper(day);
  const std::string text = to_plain_text(document, 200);
  std::size_t at = 0;
  for (const char* blank : {"Cow", "Came for", "Lame on", "LH", "claw", "what", "where", "how bad",
                            "done to it", "RH", "See again"}) {
    INFO(blank);
    at = text.find(blank, at);
    REQUIRE(at != std::string::npos);
  }
}

TEST_CASE("the boxes are printed from a new sheet on and never broken") {
  InventedDay day("Hollow Meadow");
  const Document document = on_paper(day);
  const std::string html = to_html(document, {});
  CHECK(html.find("<h2 class=\"page\">To write in by the crush") != std::string::npos);
  CHECK(html.find("class=\"label blank\"") != std::string::npos);
  CHECK(html.find(".writing article,") != std::string::npos);
}

}  // namespace evenclaw
