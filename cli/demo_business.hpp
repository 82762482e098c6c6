// Invents a trimming business and records it into a file of its own, its truth beside it.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/result.hpp"
#include "demo/story.hpp"

namespace evenclaw::cli {

struct DemoFarm {
  std::string name;
  std::int32_t cows = 0;
  std::int32_t visits = 0;
  std::int32_t turns = 0;
  std::int32_t asked = 0;
  std::int32_t left_open = 0;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("name", &DemoFarm::name, "the herd, which is invented");
    visit("cows", &DemoFarm::cows, "cows it keeps");
    visit("visits", &DemoFarm::visits, "visits that were recorded");
    visit("turns", &DemoFarm::turns, "turns that were saved");
    visit("asked", &DemoFarm::asked, "Stops and Asks that were shown");
    visit("left_open", &DemoFarm::left_open, "points nobody settled when a visit ended");
  }
};

struct DemoMade {
  std::vector<DemoFarm> farms;
  Day first_day;
  Day last_day;
  std::string records;
  std::string truth;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("farms", &DemoMade::farms, "the invented herds");
    visit("first_day", &DemoMade::first_day, "no visit lies before it");
    visit("last_day", &DemoMade::last_day, "nor after it");
    visit("records", &DemoMade::records, "where the records lie");
    visit("truth", &DemoMade::truth, "where the truth lies");
  }
};

/// Several farms at a time, each in a thread of its own; what comes of it is the same however many
/// there are. The folder is made when it is not there. Faults: "output-exists" when it holds such
/// files already, those of the store and the disk.
Result<DemoMade> make_demo(const demo::BusinessWanted& wanted, const std::string& folder);

}  // namespace evenclaw::cli
