#include <doctest/doctest.h>

#include <fstream>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include "core/trade/check.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/follow_up_decided.hpp"
#include "core/trade/routine_trim.hpp"
#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using evenclaw::told::Names;

namespace {

std::string page(const std::string& name) {
  std::ifstream file("docs/method/" + name, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

bool says(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

std::string section(const std::string& text, const std::string& heading) {
  const std::size_t from = text.find("\n## " + heading + "\n");
  if (from == std::string::npos) return {};
  return text.substr(from, text.find("\n## ", from + 1) - from);
}

std::string rank_said(Rank rank) {
  switch (rank) {
    case Rank::note:
      return "**Note.**";
    case Rank::ask:
      return "**Ask.**";
    case Rank::stop:
      return "**Stop.**";
  }
  return {};
}

}  // namespace

TEST_CASE("the page of checks tells rank, reason, source and examples of each") {
  const std::string text = page("checks.md");
  for (const CheckRule& rule : all_checks()) {
    CAPTURE(rule.slug);
    const std::string told = section(text, std::string(rule.slug));
    CHECK(says(told, rank_said(rule.rank) + ' ' + std::string(rule.why)));
    CHECK(says(told, "Source: " + std::string(rule.source) + "."));
    CHECK(says(told, "```\n" + std::string(rule.fires_on) + "\n```"));
    CHECK(says(told, "```\n" + std::string(rule.silent_on) + "\n```"));
  }
}

TEST_CASE("the page of follow-up tells task, owner, days and source of each rule") {
  const std::string text = page("follow-up.md");
  for (const FollowUpRule& rule : all_follow_up_rules()) {
    CAPTURE(rule.slug);
    const std::string row =
        "| `" + std::string(rule.slug) + "` | " + std::to_string(rule.version) + " | " +
        std::string(word_of(rule.kind)) + " | " + std::string(word_of(rule.owner)) + " | " +
        std::to_string(rule.earliest_days) + " | " + std::to_string(rule.due_days) + " | " +
        std::to_string(rule.overdue_days) + " | " + std::string(rule.source) + " |";
    CHECK(says(text, row));
  }
}

TEST_CASE("the page of follow-up tells what every act and every lesion decides") {
  const std::string text = page("follow-up.md");
  const auto row = [](std::string_view word, std::string_view follow_up, std::string_view why) {
    return "| `" + std::string(word) + "` | " + std::string(follow_up) + " | " + std::string(why) +
           " |";
  };
  for (const ActDecision& decision : all_act_decisions()) {
    CAPTURE(word_of(decision.kind));
    CHECK(says(section(text, "Every act decides"),
               row(word_of(decision.kind), word_of(decision.follow_up), decision.why)));
  }
  for (const LesionDecision& decision : all_lesion_decisions()) {
    CAPTURE(word_of(decision.lesion));
    CHECK(says(section(text, "Every lesion decides"),
               row(word_of(decision.lesion), word_of(decision.follow_up), decision.why)));
  }
}

TEST_CASE("the page of follow-up tells days and source of each routine trim") {
  const std::string text = section(page("follow-up.md"), "Routine trims");
  for (const RoutineTrimRule& rule : all_routine_trim_rules()) {
    CAPTURE(rule.slug);
    std::string row = "| `" + std::string(rule.slug) + "` | " + std::to_string(rule.version) +
                      " | " + std::string(word_of(rule.anchor));
    for (const int days : {rule.from_days, rule.due_days, rule.overdue_days, rule.until_days}) {
      row += " | " + std::to_string(days);
    }
    CHECK(says(text, row + " | " + std::string(rule.source) + " |"));
  }
}

TEST_CASE("the worked example of the routine trims comes out as told there") {
  const auto day = [](std::string_view text) { return day_from_text(text).value(); };
  CowFacts facts;
  facts.calved = day("2026-09-01");
  facts.dry_off = day("2027-06-20");
  CHECK_FALSE(routine_trim_due(facts, {}, day("2026-10-30")));
  const auto in_milk = routine_trim_due(facts, {}, day("2026-10-31"));
  REQUIRE(in_milk);
  CHECK(in_milk->due == day("2027-01-29"));
  CHECK(in_milk->overdue == day("2027-01-30"));
  const std::vector<Day> trimmed = {day("2026-11-03")};
  CHECK_FALSE(routine_trim_due(facts, trimmed, day("2027-05-20")));
  const auto drying_off = routine_trim_due(facts, trimmed, day("2027-05-21"));
  REQUIRE(drying_off);
  CHECK(drying_off->due == day("2027-06-20"));
}

TEST_CASE("the worked example of the page of follow-up comes out as told there") {
  const told::ToldDay day =
      told::told_day("412\nLH outside white line abscess; block on inside; wrap on, off Thu");
  Names told_days;
  for (const TaskMade& task : tasks_made(day.draft.turn, {}, day.today, told::entry(1))) {
    told_days.push_back(task.rule + ' ' + to_text(task.earliest) + ' ' + to_text(task.due) + ' ' +
                        to_text(task.overdue));
  }
  CHECK(told_days == Names{"block-first-look 2026-11-06 2026-11-09 2026-11-13",
                           "block-check 2026-11-22 2026-11-29 2026-12-06",
                           "block-off 2026-11-29 2026-12-06 2026-12-13",
                           "wrap-off 2026-11-03 2026-11-05 2026-11-06"});
}
