// Animals counted together leave every figure about cows as it was.
#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/api/show.hpp"
#include "core/log/body.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

/// Each named count of cows as text, those of batches left out.
std::vector<std::string> counts_of_cows(const HerdShown& shown) {
  std::vector<std::string> counts;
  for (const NamedCount& count : shown.counts) {
    if (count.name == "batches_by_visit") continue;
    std::string text = count.name;
    for (const CountLine& line : count.lines) {
      for (const std::string& group : line.groups) text += " " + group;
      text += " " + std::to_string(line.count);
      for (const std::int64_t sum : line.sums) text += " " + std::to_string(sum);
    }
    counts.push_back(std::move(text));
  }
  return counts;
}

VisitShown visited(Workplace& place, const std::vector<std::string>& lines) {
  const Visit visit = place.start();
  Recording recording = place.record(visit);
  for (const std::string& line : lines) (void)recording.say(line).value();
  (void)recording.end_of_visit().value();
  return show_visit(place.ports(), visit).value();
}

}  // namespace

TEST_CASE("a count changes no figure of cows, turns, feet, findings or tasks") {
  const std::vector<std::string> cows = {"412 LH outside sole ulcer middle, bad", "rest fine",
                                         "done"};
  Workplace without;
  (void)visited(without, cows);
  Workplace with;
  std::vector<std::string> lines = {"12 heifers, far yard, all good"};
  lines.insert(lines.end(), cows.begin(), cows.end());
  lines.emplace_back("8 cows, all trimmed, just the backs");
  const VisitShown shown = visited(with, lines);
  const HerdShown herd_without = show_herd(without.store, without.herd().herd).value();
  const HerdShown herd_with = show_herd(with.store, with.herd().herd).value();
  CHECK(herd_with.cows.size() == herd_without.cows.size());
  CHECK(shown.cows == 1);
  CHECK(shown.together == 20);

  // The visit has the same id in both, for its herd has.
  std::vector<std::string> counts = counts_of_cows(herd_with);
  CHECK(counts.size() == counts_of_cows(herd_without).size());
  CHECK(counts == counts_of_cows(herd_without));
}

TEST_CASE("who is apart is one cow more, and counted once with those together") {
  Workplace place;
  const VisitShown shown =
      visited(place, {"12 heifers, all good bar the little black one",
                      "LH outside sole ulcer middle, bad", "rest fine", "done"});
  CHECK(shown.cows == 1);
  CHECK(shown.together == 11);
  REQUIRE(shown.batches.size() == 1);
  CHECK(shown.batches[0].row.counted == 12);
  CHECK(shown.batches[0].row.apart == 1);
}

TEST_CASE("today's feet said later hold for those counted before") {
  Workplace place;
  const Visit visit = place.start("2026-10-27", {});
  Recording recording = place.record(visit);
  const Reply counted = recording.say("12 heifers, all good").value();
  CHECK(std::any_of(counted.items.begin(), counted.items.end(), [](const ReplyItem& item) {
    return item.kind == ReplyKind::mark && item.words.find("which feet") == 0;
  }));
  (void)recording.say("today hinds").value();
  const VisitShown shown = show_visit(place.ports(), visit).value();
  REQUIRE(shown.batches.size() == 1);
  CHECK(shown.batches[0].row.lifted == hind_feet);
  CHECK(shown.batches[0].row.feet == 24);
}

TEST_CASE(
    "of a cow called live it is known how long she stood there, of one from paper it is not") {
  Workplace place;
  (void)visited(place, {"412 LH outside sole ulcer middle, bad", "rest fine", "done"});
  const auto turns = select_as<TurnRow>(place.store, place.herd().herd).value();
  REQUIRE(turns.size() == 1);
  REQUIRE(turns[0].seconds_in_crush.has_value());
  CHECK(*turns[0].seconds_in_crush > 0);

  Workplace paper;
  VisitWanted wanted;
  wanted.herd = paper.herd().herd;
  wanted.day = day("2026-10-26");
  wanted.todays_feet = four_feet;
  wanted.from_paper = true;
  const Visit visit = start_visit(paper.ports(), wanted).value();
  CHECK(visit.from_paper);
  Recording recording = paper.record(visit);
  for (const char* line : {"412 LH outside sole ulcer middle, bad", "rest fine", "done"}) {
    (void)recording.say(line).value();
  }
  const auto rows = select_as<TurnRow>(paper.store, paper.herd().herd).value();
  REQUIRE(rows.size() == 1);
  CHECK_FALSE(rows[0].seconds_in_crush.has_value());
  CHECK_FALSE(rows[0].let_out_at.has_value());
  CHECK(rows[0].day == day("2026-10-26"));
}

}  // namespace evenclaw::test
