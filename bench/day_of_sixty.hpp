// The day whose sheet is timed: sixty cows, of whom three of five have something found.
#pragma once

#include <fstream>
#include <iterator>
#include <string>

#include "tests/core/sheets/invented_day.hpp"

namespace evenclaw::bench {

inline constexpr int cows_of_the_day = 60;

/// Of five cows one has a case with block and vet, one a wrap, one something slight, two nothing.
inline void add_cow(InventedDay& day, int cow) {
  const Foot foot = cow % 2 == 0 ? Foot::lh : Foot::rh;
  const bool lame = cow % 5 == 0;
  day.turn(std::to_string(101 + cow), lame ? Reason::lame : Reason::routine);
  day.rest_fine();
  if (cow % 5 == 0) {
    day.found({foot, Claw::outside, Lesion::wla, Place::white_line_heel, Degree::bad});
    day.did({ActionKind::block_on, foot, Claw::inside});
    day.task_on(foot, Claw::none, TaskKind::vet, Owner::vet, 0);
    day.task_on(foot, Claw::inside, TaskKind::block_check, Owner::trimmer, 28);
  } else if (cow % 5 == 1) {
    day.found({foot, Claw::none, Lesion::dd, Place::behind, Degree::not_called, DdStage::raw});
    day.did({ActionKind::wrap_on, foot});
    day.task_on(foot, Claw::none, TaskKind::wrap_off, Owner::farmer, 3);
  } else if (cow % 5 == 2) {
    day.found({foot, Claw::outside, Lesion::su, Place::sole_middle, Degree::slight});
  }
}

inline VisitSheetInput day_of_sixty() {
  InventedDay day("Bench Farm", four_feet);
  for (int cow = 0; cow < cows_of_the_day; ++cow) add_cow(day, cow);
  return day.input();
}

/// From the root of the repository, where the fonts lie; "" when it is not there.
inline std::string bytes_of(const char* file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

}  // namespace evenclaw::bench
