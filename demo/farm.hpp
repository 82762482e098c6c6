// An invented farm: its size, barn and habits, and what these do to claws.
#pragma once

#include <cstdint>
#include <string>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "demo/complication.hpp"

namespace evenclaw::demo {

enum class Floor { concrete, rubber, straw };
enum class Bath { none, now_and_then, regular };
enum class Season { all_year, spring, autumn };

/// How the trimmer comes: small herds are trimmed whole, of large ones those whose time has come.
enum class Rhythm { whole_herd, part_of_herd };

struct Farm {
  int index = 0;     // from 0
  std::string name;  // invented
  int cows = 0;      // milking and dry, aimed at
  Floor floor = Floor::concrete;
  Bath bath = Bath::none;
  double dirt = 0;         // standard deviations from the mean farm
  double horn_effect = 0;  // of the farm itself, added to the log rates
  double skin_effect = 0;
  double season_peak = 0;  // the week of the year when lesions begin most
  Season calves = Season::all_year;
  Rhythm rhythm = Rhythm::part_of_herd;
  int weeks_between_visits = 4;
  int weekday = 0;  // of its visits, days after the first day of a week
  int callers = 0;  // which of the business' crews comes
  bool tells_what_was_done = true;
};

/// A farm follows from (seed, index) alone. `index` from 0.
Farm invent_farm(std::uint64_t seed, int index, const Complications& complications);

/// What the barn does to claws in one week, each times what it would be elsewhere.
struct Pressure {
  double sole = 1;
  double white_line = 1;
  double skin = 1;  // of catching digital dermatitis
  double dirt = 1;  // of what else wet floors make
};

/// Of the farm as it stands, `week_of_year` 0 to 52.
Pressure pressure_of(const Farm& farm, double week_of_year);

}  // namespace evenclaw::demo

namespace evenclaw {

template <>
struct EnumWords<demo::Floor> {
  static constexpr EnumWord<demo::Floor> table[] = {{demo::Floor::concrete, "concrete"},
                                                    {demo::Floor::rubber, "rubber"},
                                                    {demo::Floor::straw, "straw"}};
};

template <>
struct EnumWords<demo::Bath> {
  static constexpr EnumWord<demo::Bath> table[] = {{demo::Bath::none, "none"},
                                                   {demo::Bath::now_and_then, "now_and_then"},
                                                   {demo::Bath::regular, "regular"}};
};

template <>
struct EnumWords<demo::Season> {
  static constexpr EnumWord<demo::Season> table[] = {{demo::Season::all_year, "all_year"},
                                                     {demo::Season::spring, "spring"},
                                                     {demo::Season::autumn, "autumn"}};
};

template <>
struct EnumWords<demo::Rhythm> {
  static constexpr EnumWord<demo::Rhythm> table[] = {{demo::Rhythm::whole_herd, "whole_herd"},
                                                     {demo::Rhythm::part_of_herd, "part_of_herd"}};
};

}  // namespace evenclaw
