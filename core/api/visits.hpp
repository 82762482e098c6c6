// A visit: started, found again, corrected, ended with everything that is still to be asked.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/api/ports.hpp"
#include "core/api/redate.hpp"
#include "core/api/reply.hpp"
#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

struct VisitWanted {
  HerdId herd;
  std::optional<Day> day;    // `today` when not given
  std::optional<Day> today;  // the clock's day at its own offset when not given
  FootSet todays_feet;       // empty: not said yet
  std::string caller;        // "" when not said
  std::string writer;
  bool from_paper = false;       // typed from what was written down that day
  bool second_that_day = false;  // a visit of its own although that day has one already
  bool sure = false;             // names are spelt as meant, and so is a day long ago
};

struct Visit {
  HerdId herd;
  std::string herd_name;
  VisitId visit;
  Day day;
  std::int32_t ordinal = 1;
  FootSet todays_feet;
  std::string caller;
  std::string writer;
  bool from_paper = false;  // no time of it is known
  bool goes_on = false;     // it had been started before
  bool closed = false;      // it had been ended before; lines may still be added

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &Visit::herd, "herd");
    visit("herd_name", &Visit::herd_name, "its name");
    visit("visit", &Visit::visit, "visit");
    visit("day", &Visit::day, "day of the visit");
    visit("ordinal", &Visit::ordinal, "which visit of that day");
    visit("todays_feet", &Visit::todays_feet, "feet lifted today");
    visit("caller", &Visit::caller, "who calls");
    visit("writer", &Visit::writer, "who types");
    visit("from_paper", &Visit::from_paper, "typed from paper: no time of it is known");
    visit("goes_on", &Visit::goes_on, "it had been started before");
    visit("closed", &Visit::closed, "it had been ended before");
  }
};

/// A visit as its row tells it; the names of herd, caller and writer do not stand there.
Visit visit_of(const VisitRow& row);

/// Starts a visit, or goes on with the one that herd has on that day (ended or not) unless a second
/// one is wanted. Faults: "date-in-future" (later than today), "two-visits-open" when
/// another day of that herd was never ended, "answer-needed" for a name that may be misspelt, a
/// new visit more than half a year back, whose year may be, or a visit to go on with from paper
/// that was not begun so.
