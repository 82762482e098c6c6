#include "core/log/foot_cases.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <utility>

#include "tests/core/log/farm.hpp"

namespace evenclaw {

namespace {

constexpr const char* visit_days[] = {"2026-09-01", "2026-10-01", "2026-11-01", "2026-12-01"};

/// One call of the left hind per visit, a month apart.
Rows called(const std::vector<std::vector<Finding>>& visits) {
  Farm farm;
  for (std::size_t i = 0; i < visits.size(); ++i) {
    farm.turn(cow_named("412"), visit_days[i],
              {visits[i].empty() ? nothing_found(Foot::lh) : foot(Foot::lh, visits[i])});
  }
  return farm.rows_of(cow_named("412"));
}

std::vector<CaseStep> steps_by_day(const Rows& rows) {
  std::vector<FindingRow> findings = rows.findings;
  std::stable_sort(findings.begin(), findings.end(), [](const FindingRow& a, const FindingRow& b) {
    return a.day < b.day || (a.day == b.day && a.position < b.position);
  });
  std::vector<CaseStep> steps;
  steps.reserve(findings.size());
  for (const FindingRow& row : findings) steps.push_back(row.step);
  return steps;
}

const CaseRow& case_of(const Rows& rows, CaseId id) {
  const auto at = std::find_if(rows.cases.begin(), rows.cases.end(),
                               [&](const CaseRow& row) { return row.case_id == id; });
  REQUIRE(at != rows.cases.end());
  return *at;
}

Finding with_degree(Finding finding, Degree degree) {
  finding.degree = degree;
  return finding;
}

using Steps = std::vector<CaseStep>;

}  // namespace

TEST_CASE("the same lesion at the same place in the next visit goes on as one case") {
  const Rows rows = called({{lesion(Lesion::su, Claw::outside, Place::sole_middle)},
                            {lesion(Lesion::su, Claw::outside, Place::sole_middle)}});
  REQUIRE(rows.cases.size() == 1);
  CHECK(rows.cases[0].times_found == 2);
  CHECK(rows.cases[0].first_day == day(visit_days[0]));
  CHECK(rows.cases[0].last_day == day(visit_days[1]));
  CHECK(steps_by_day(rows) == Steps{CaseStep::first, CaseStep::goes_on});
}

TEST_CASE("a lesion that turns into the worse form of its family stays one case") {
  const Rows rows = called({{with_degree(lesion(Lesion::wlf), Degree::slight)},
                            {with_degree(lesion(Lesion::wla), Degree::bad)},
                            {with_degree(lesion(Lesion::wl), Degree::not_called)}});
  REQUIRE(rows.cases.size() == 1);
  CHECK(rows.cases[0].family == Lesion::wl);
  CHECK(rows.cases[0].lesion == Lesion::wl);
  CHECK(rows.cases[0].degree == Degree::bad);
}

TEST_CASE("a case tells the worst it was called and whether it got there from a milder form") {
  struct Row {
    const char* what;
    std::vector<Lesion> called;
    Lesion worst;
    bool grew_worse;
  };

  const Row rows_of_tale[] = {
      {"bruise, then ulcer, then bruise", {Lesion::sh, Lesion::su, Lesion::sh}, Lesion::su, true},
      {"fissure, then abscess", {Lesion::wlf, Lesion::wla}, Lesion::wla, true},
      {"toe ulcer, then dead bone", {Lesion::tu, Lesion::tn}, Lesion::tn, true},
      {"an ulcer named only later", {Lesion::u, Lesion::su}, Lesion::su, false},
      {"white line, an abscess later", {Lesion::wl, Lesion::wla}, Lesion::wla, false},
      {"ulcer, then only blood", {Lesion::su, Lesion::shc}, Lesion::su, false},
  };
  for (const Row& row : rows_of_tale) {
    CAPTURE(row.what);
    std::vector<std::vector<Finding>> visits;
    for (const Lesion one : row.called) {
      visits.push_back({lesion(one, Claw::outside, Place::not_called)});
    }
    const Rows rows = called(visits);
    REQUIRE(rows.cases.size() == 1);
    CHECK(rows.cases[0].worst == row.worst);
    CHECK(rows.cases[0].grew_worse == row.grew_worse);
    CHECK(rows.cases[0].lesion == row.called.back());
  }
}

TEST_CASE("names that tie it to different parts of the claw are different cases") {
  const std::pair<Lesion, Lesion> pairs[] = {{Lesion::su, Lesion::tu},
                                             {Lesion::tu, Lesion::bu},
                                             {Lesion::hfa, Lesion::hfh},
                                             {Lesion::hfh, Lesion::hfv}};
  for (const auto& pair : pairs) {
    const Lesion first = pair.first;
    const Lesion second = pair.second;
    CAPTURE(word_of(first));
    const Rows rows = called({{lesion(first, Claw::outside, Place::not_called)},
                              {lesion(second, Claw::outside, Place::not_called)}});
    CHECK(rows.cases.size() == 2);
  }
  const Rows one_place = called({{lesion(Lesion::su, Claw::outside, Place::heel)},
                                 {lesion(Lesion::bu, Claw::outside, Place::heel)}});
  CHECK(one_place.cases.size() == 1);
}

TEST_CASE("digital dermatitis called once in an ulcer stays with its case") {
  Finding infected = lesion(Lesion::su, Claw::outside, Place::sole_middle);
  infected.dd_infected = true;
  const Rows rows = called({{infected}, {lesion(Lesion::su, Claw::outside, Place::sole_middle)}});
  REQUIRE(rows.cases.size() == 1);
  CHECK(rows.cases[0].dd_infected);
  CHECK(std::count_if(rows.findings.begin(), rows.findings.end(),
                      [](const FindingRow& row) { return row.dd_infected; }) == 1);
}

TEST_CASE("other claw, other place, other family or other foot is another case") {
  const struct {
    const char* what;
    Finding second;
  } others[] = {
      {"claw", lesion(Lesion::wl, Claw::inside)},
      {"place", lesion(Lesion::wl, Claw::outside, Place::white_line_toe)},
      {"family", lesion(Lesion::hhe)},
  };

  for (const auto& other : others) {
    CAPTURE(other.what);
    const Rows rows = called({{lesion(Lesion::wl)}, {lesion(Lesion::wl), other.second}});
    CHECK(rows.cases.size() == 2);
    CHECK(steps_by_day(rows) == Steps{CaseStep::first, CaseStep::goes_on, CaseStep::first});
  }
  Farm farm;
  farm.turn(cow_named("412"), visit_days[0],
            {foot(Foot::lh, {lesion(Lesion::wl)}), foot(Foot::rh, {lesion(Lesion::wl)})});
  CHECK(farm.rows_of(cow_named("412")).cases.size() == 2);
}

TEST_CASE("a case ends when the foot is looked at without it, found again it is a relapse") {
  const Rows rows = called({{lesion(Lesion::wl)}, {}, {lesion(Lesion::wl)}, {lesion(Lesion::wl)}});
  REQUIRE(rows.cases.size() == 2);
  CHECK(steps_by_day(rows) == Steps{CaseStep::first, CaseStep::relapse, CaseStep::goes_on});
  for (const FindingRow& finding : rows.findings) {
    const CaseRow& row = case_of(rows, finding.case_id);
    CHECK(row.relapse == (finding.day > day(visit_days[1])));
    CHECK(row.not_found_on ==
          (row.relapse ? std::nullopt : std::optional<Day>(day(visit_days[1]))));
  }
}

TEST_CASE("another lesion found on the foot ends a case that was not found there") {
  const Rows rows = called({{lesion(Lesion::wl)}, {lesion(Lesion::hhe)}});
  REQUIRE(rows.cases.size() == 2);
  CHECK(std::count_if(rows.cases.begin(), rows.cases.end(), [](const CaseRow& row) {
          return row.not_found_on == day(visit_days[1]) && row.family == Lesion::wl;
        }) == 1);
}

TEST_CASE("silence ends no case: not lifted, nothing said of findings, not finished") {
  FootCall not_lifted;
  not_lifted.foot = Foot::lh;
  not_lifted.state = FootState::not_lifted;
  const FootCall unsaid = foot(Foot::lh, {}, {act(ActionKind::wrap_off)});
  for (const FootCall& call : {not_lifted, unsaid, nothing_found(Foot::rh)}) {
    Farm farm;
    farm.turn(cow_named("412"), visit_days[0], {foot(Foot::lh, {lesion(Lesion::wl)})});
    farm.turn(cow_named("412"), visit_days[1], {call});
    CHECK_FALSE(farm.rows_of(cow_named("412")).cases[0].not_found_on);
  }
  Farm farm;
  farm.turn(cow_named("412"), visit_days[0], {foot(Foot::lh, {lesion(Lesion::wl)})});
  TurnRecorded broken_off =
      farm.turn_body(cow_named("412"), visit_days[1], {foot(Foot::lh, {lesion(Lesion::hhe)})});
  broken_off.turn.end = TurnEnd::unfinished;
  farm.turn(broken_off);
  for (const CaseRow& row : farm.rows_of(cow_named("412")).cases) CHECK_FALSE(row.not_found_on);
}

TEST_CASE("a place or claw nobody called joins the single open case it fits") {
  const Finding no_place = lesion(Lesion::wl, Claw::outside, Place::not_called);
  const Finding no_claw = lesion(Lesion::wl, Claw::not_called);
  for (const Finding& vague : {no_place, no_claw}) {
    CHECK(called({{lesion(Lesion::wl)}, {vague}}).cases.size() == 1);
    const Rows rows = called({{vague}, {lesion(Lesion::wl)}});
    REQUIRE(rows.cases.size() == 1);
    CHECK(rows.cases[0].claw == Claw::outside);
    CHECK(rows.cases[0].place == Place::white_line_heel);
  }
}

TEST_CASE("a place nobody called that fits two open cases opens its own") {
  const Finding vague = lesion(Lesion::wl, Claw::not_called, Place::not_called);
  const Rows rows =
      called({{lesion(Lesion::wl, Claw::outside), lesion(Lesion::wl, Claw::inside)}, {vague}});
  CHECK(rows.cases.size() == 3);
}

TEST_CASE("what is called exactly takes its case before what was called in passing") {
  const Finding vague = lesion(Lesion::wl, Claw::not_called, Place::not_called);
  const Rows rows = called({{lesion(Lesion::wl)}, {vague, lesion(Lesion::wl)}});
  CHECK(rows.cases.size() == 2);
  CHECK(steps_by_day(rows) == Steps{CaseStep::first, CaseStep::first, CaseStep::goes_on});
}

TEST_CASE("skin lesions are followed without regard to a claw") {
  const Rows rows = called({{lesion(Lesion::dd, Claw::none, Place::behind)},
                            {lesion(Lesion::dd, Claw::outside, Place::behind)}});
  REQUIRE(rows.cases.size() == 1);
  CHECK(rows.cases[0].claw == Claw::none);
}

TEST_CASE("a lesion on both claws goes on when one of them is still called") {
  const Rows rows = called({{lesion(Lesion::sh, Claw::both, Place::sole_middle)},
                            {lesion(Lesion::sh, Claw::inside, Place::sole_middle)}});
  CHECK(rows.cases.size() == 1);
}

TEST_CASE("lesions named by words are one case when the words are the same") {
  Finding crack = lesion(Lesion::other, Claw::outside, Place::outer_wall);
  crack.words = "Cracked wall";
  Finding same = crack;
  same.words = "cracked wall";
  Finding swelling = crack;
  swelling.words = "swelling";
  const Rows rows = called({{crack}, {same, swelling}});
  CHECK(rows.cases.size() == 2);
}

TEST_CASE("times found counts visits, not findings") {
  Farm farm;
  for (int i = 0; i < 3; ++i) {
    farm.turn(cow_named("412"), visit_days[0], {foot(Foot::lh, {lesion(Lesion::wl)})});
  }
  const Rows rows = farm.rows_of(cow_named("412"));
  REQUIRE(rows.cases.size() == 1);
  CHECK(rows.cases[0].times_found == 1);
}

TEST_CASE("a case keeps its id when cows are united") {
  Farm farm;
  farm.turn(cow_named("412"), visit_days[0], {foot(Foot::lh, {lesion(Lesion::wl)})});
  const CaseId before = farm.rows_of(cow_named("412")).cases[0].case_id;
  farm.turn(cow_named("star"), visit_days[1], {foot(Foot::lh, {lesion(Lesion::wl)})});
  farm.write(SameCow{cow_named("star"), cow_named("412")});
  const Rows rows = farm.rows_of(cow_named("412"));
  REQUIRE(rows.cases.size() == 1);
  CHECK(rows.cases[0].case_id == before);
  CHECK(rows.cases[0].times_found == 2);
}

TEST_CASE("a visit recorded late takes its place by its day") {
  Farm farm;
  const CowId cow = cow_named("412");
  farm.turn(cow, visit_days[2], {foot(Foot::lh, {lesion(Lesion::wl)})});
  farm.turn(cow, visit_days[0], {foot(Foot::lh, {lesion(Lesion::wl)})});
  farm.turn(cow, visit_days[1], {nothing_found(Foot::lh)});
  CHECK(steps_by_day(farm.rows_of(cow)) == Steps{CaseStep::first, CaseStep::relapse});
}

TEST_CASE("blisters and no lesion are found on a lifted foot, and say nothing of an old lesion") {
  for (const TurnEnd end : {TurnEnd::done, TurnEnd::not_done}) {
    Farm farm;
    farm.turn(cow_named("412"), visit_days[0],
              {foot(Foot::lh, {lesion(Lesion::dd, Claw::none, Place::behind)})});
    TurnRecorded later = farm.turn_body(cow_named("412"), visit_days[1],
                                        {foot(Foot::lh, {}, {act(ActionKind::blisters)})});
    later.turn.end = end;
    farm.turn(std::move(later));
    const Rows rows = farm.rows_of(cow_named("412"));
    const bool is_found = std::any_of(rows.feet.begin(), rows.feet.end(), [](const FootRow& row) {
      return row.day == *day_from_text(visit_days[1]) && row.state == FootState::finding;
    });
    CHECK(is_found == (end == TurnEnd::done));
    REQUIRE(rows.cases.size() == 1);
    CHECK_FALSE(rows.cases.front().not_found_on.has_value());
  }
}

}  // namespace evenclaw
