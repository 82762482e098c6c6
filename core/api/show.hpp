// What is shown of a cow, a herd and a visit: the picture, read for people.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/due.hpp"
#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/foot_rows.hpp"

namespace evenclaw {

/// One time a foot was in hand, said in words.
struct FootSeen {
  Day day;
  Foot foot = Foot::lf;
  EntryId turn;
  FootState state = FootState::unsaid;
  Trimmed trimmed = Trimmed::not_called;
  bool called_lame = false;
  std::vector<std::string> found;     // "outside claw: white line abscess, heel, bad (WLA)"
  std::vector<std::string> acts;      // "block on inside claw"
  std::vector<std::string> measured;  // "outside claw, toe length 78 mm"

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("day", &FootSeen::day, "day of the visit");
    visit("foot", &FootSeen::foot, "LF RF LH RH");
    visit("turn", &FootSeen::turn, "the entry that recorded it");
    visit("state", &FootSeen::state, "not lifted, nothing found, finding, or unsaid");
    visit("trimmed", &FootSeen::trimmed, "whether it was trimmed");
    visit("called_lame", &FootSeen::called_lame, "she came lame on this leg");
    visit("found", &FootSeen::found, "findings in words");
    visit("acts", &FootSeen::acts, "acts in words");
    visit("measured", &FootSeen::measured, "measures in words");
  }
};

struct CowShown {
  std::string herd_name;
  std::string cow_said;
  CowRow cow;
  std::vector<CowNumberRow> numbers;
  std::vector<CowCalledRow> called_first;  // what she was called until it was put right
  std::vector<OnFootRow> on_her;           // wraps and blocks still on
  std::vector<CaseRow> open_cases;         // not found gone yet
  std::vector<DueTask> open_tasks;
  std::vector<FootSeen> feet;  // newest first, LF RF LH RH within a day
  std::vector<TurnRow> turns;  // newest first, with the words as said

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd_name", &CowShown::herd_name, "name of the herd");
    visit("cow_said", &CowShown::cow_said, "her number, or what she looks like");
    visit("cow", &CowShown::cow, "the cow");
    visit("numbers", &CowShown::numbers, "numbers she has or had");
    visit("called_first", &CowShown::called_first, "what she was called until it was put right");
    visit("on_her", &CowShown::on_her, "wraps and blocks still on");
    visit("open_cases", &CowShown::open_cases, "lesions not found gone yet");
    visit("open_tasks", &CowShown::open_tasks, "open tasks");
    visit("feet", &CowShown::feet, "her feet through time, newest first");
    visit("turns", &CowShown::turns, "her turns, newest first");
  }
};

/// A cow by any number she has or had (the newest holder of a number first), by the words an
/// unnumbered one was called by, or by what she was called until it was put right. Fault
/// "cow-not-found" with the nearest numbers as remedy.
Result<CowShown> show_cow(Store& store, HerdId herd, std::string_view said, Day today);

/// One row of a named count.
struct CountLine {
  std::vector<std::string> groups;
  std::int64_t count = 0;
  std::vector<std::int64_t> sums;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("groups", &CountLine::groups, "the group's values");
    visit("count", &CountLine::count, "how many rows");
    visit("sums", &CountLine::sums, "the sums asked for");
  }
};

struct NamedCount {
  std::string name;
  std::vector<std::string> columns;  // of the groups, then "count", then of the sums
  std::vector<CountLine> lines;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("name", &NamedCount::name, "name of the count");
    visit("columns", &NamedCount::columns, "what the columns hold");
    visit("lines", &NamedCount::lines, "one per group");
  }
};

struct HerdShown {
  HerdId herd;
  std::string name;
  std::vector<CowRow> cows;
  std::vector<VisitRow> visits;  // newest first
  std::vector<NamedCount> counts;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &HerdShown::herd, "herd");
    visit("name", &HerdShown::name, "its name");
    visit("cows", &HerdShown::cows, "cows on record");
    visit("visits", &HerdShown::visits, "visits, newest first");
    visit("counts", &HerdShown::counts, "the named counts");
  }
};

/// A herd with its cows, visits and the named counts.
Result<HerdShown> show_herd(Store& store, HerdId herd);

}  // namespace evenclaw
