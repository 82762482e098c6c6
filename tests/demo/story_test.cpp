#include "demo/story.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

#include "demo/call_lines.hpp"
#include "tests/demo/small_business.hpp"

namespace evenclaw::demo {

namespace {

std::vector<std::string> all_lines(const HerdStory& story) {
  std::vector<std::string> lines;
  for (const CalledVisit& visit : story.visits) {
    lines.push_back(to_text(visit.day));
    const auto of_visit = call_lines(visit);
    lines.insert(lines.end(), of_visit.begin(), of_visit.end());
  }
  return lines;
}

}  // namespace

TEST_CASE("a story is the same in every telling, and however many farms there are") {
  const BusinessWanted few = half_a_year();
  BusinessWanted many = few;
  many.farms = 40;
  const auto lines = all_lines(tell_story(few, small_farm_index));
  CHECK(lines.size() > 100);
  CHECK(lines == all_lines(tell_story(few, small_farm_index)));
  CHECK(lines == all_lines(tell_story(many, small_farm_index)));
}

TEST_CASE("another seed tells another story") {
  BusinessWanted other = half_a_year();
  other.seed = 2;
  CHECK(all_lines(tell_story(half_a_year(), small_farm_index)) !=
        all_lines(tell_story(other, small_farm_index)));
}

TEST_CASE("visits lie within the records and in their order, and hold no more than a day's work") {
  const BusinessWanted wanted = half_a_year();
  const HerdStory story = tell_story(wanted, small_farm_index);
  Day before = first_day_of_week(wanted, weeks_before_records) - 1;
  for (const CalledVisit& visit : story.visits) {
    CHECK(visit.day > before);
    CHECK(visit.day <= wanted.last_day);
    CHECK(visit.turns.size() <= 60);
    CHECK(!visit.turns.empty());
    before = visit.day;
  }
}

TEST_CASE("a cow that left is told of once, and is not in the crush after that") {
  BusinessWanted wanted = half_a_year();
  wanted.weeks = 60;
  const HerdStory story = tell_story(wanted, small_farm_index);
  std::set<int> gone;
  for (const CalledVisit& visit : story.visits) {
    for (const int number : visit.talk.gone) CHECK(gone.insert(number).second);
    for (const CalledTurn& turn : visit.turns) CHECK(gone.count(turn.number) == 0);
  }
  CHECK(!gone.empty());
}

TEST_CASE("where tasks are never told of, nobody says a word at the gate") {
  const BusinessWanted wanted = half_a_year();
  constexpr int silent_farm = 1;
  const HerdStory story = tell_story(wanted, silent_farm);
  CHECK(!story.farm.tells_what_was_done);
  for (const CalledVisit& visit : story.visits) {
    CHECK(visit.talk.gone.empty());
    CHECK(visit.talk.wraps_off.empty());
    CHECK(visit.talk.blocks_came_off.empty());
  }
}

TEST_CASE("each week of the records is shown once") {
  const BusinessWanted wanted = half_a_year();
  int weeks = 0;
  int last = 0;
  const HerdStory story = tell_story(wanted, small_farm_index, [&](const Herd&, int week) {
    ++weeks;
    last = week;
  });
  CHECK(weeks == wanted.weeks);
  CHECK(last == weeks_before_records + wanted.weeks - 1);
  CHECK(first_day_of_week(wanted, last + 1) == wanted.last_day + 1);
}

TEST_CASE("looks point at the visit at which the cow was in the crush") {
  const HerdStory story = tell_story(half_a_year(), small_farm_index);
  CHECK(!story.looks.empty());
  for (const Look& look : story.looks) {
    const CalledVisit& visit = story.visits.at(static_cast<std::size_t>(look.visit));
    CHECK(std::any_of(visit.turns.begin(), visit.turns.end(),
                      [&](const CalledTurn& turn) { return turn.number == look.cow; }));
  }
}

}  // namespace evenclaw::demo
