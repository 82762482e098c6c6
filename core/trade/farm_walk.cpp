#include "core/trade/farm_walk.hpp"

#include <cassert>
#include <cstddef>
#include <cstdint>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

using W = WalkMeasure;
using U = WalkUnit;

constexpr std::string_view no_source = "common practice, no source";

constexpr WalkMeasureFacts walk_table[] = {
    {W::cow_weight, "cow weight", U::kg, 250, 1100, "the size cubicles are compared with",
     no_source},
    {W::cow_height, "cow height at the withers", U::mm, 1000, 1900,
     "the size cubicles are compared with", no_source},
    {W::cubicle_width, "cubicle width", U::mm, 600, 1600, "the size of the cows", no_source},
    {W::cubicle_length, "cubicle length", U::mm, 1200, 3200, "the size of the cows", no_source},
    {W::cows, "cows", U::count, 1, 9999, "the cubicles they have: under 120 cows to 100 cubicles",
     "advice of a breeding company (wwsires.com), no trial"},
    {W::cubicles, "cubicles", U::count, 1, 9999,
     "the cows that share them: under 120 cows to 100 cubicles",
     "advice of a breeding company (wwsires.com), no trial"},
    {W::passage_width, "passage width", U::mm, 800, 12000, "whether two cows pass", no_source},
    {W::turn_width, "width at the turn", U::mm, 500, 12000, "the width of the passage", no_source},
    {W::floor, "floor", U::said, 0, 0,
     "hard slats against rubber: 3.6 times the odds of lameness in first lactation",
     "Bergsten, Telezhenko and Ventorp 2015, Animals 5:662"},
    {W::grip, "grip", U::said, 0, 0,
     "friction elsewhere: concrete 0.29 to 0.41, asphalt 0.38 to 0.45, rubber 0.49 to 0.57",
     "Telezhenko 2017, Journal of Dairy Science"},
    {W::scraping_interval, "scraping interval", U::minutes, 5, 20160,
     "how deep the dung stands by then", no_source},
    {W::standing_time, "away for milking a day", U::minutes, 10, 1200,
     "under 3 h a day, all milkings together",
     "advice of a breeding company (wwsires.com), no trial"},
    {W::footbath_length, "footbath length", U::mm, 500, 8000, "3.0 to 3.7 m",
     "two dunks of each hind foot in 95 % at 3.0 m: Cook 2012, Vet J 193:669"},
    {W::footbath_width, "footbath width", U::mm, 300, 3000, "0.5 to 0.6 m",
     "Cook 2012, Vet J 193:669"},
    {W::footbath_depth, "footbath fill depth", U::mm, 10, 500, "10 cm or more; one text says 13 cm",
     "nxtbook 2016 (Perspectives), Cook 2012; informedfarmers.com"},
    {W::footbath_product, "footbath product", U::said, 0, 0,
     "its label and local law; formalin hurts raw sores", "Vet Times 2012"},
    {W::footbath_strength, "footbath strength", U::tenths_of_percent, 1, 300,
     "copper sulphate 5 % usual; formalin 2.5 to 5 %", "Cook; Vet Times 2012, Farmers Weekly"},
    {W::footbath_passes, "cows through since the fill", U::count, 0, 9999,
     "changed after 100 to 300 cows; others say 150 to 350",
     "nxtbook 2016 (Perspectives), agupdate.com; UW-Madison extension"},
    {W::footbath_times, "footbath used", U::times_a_week, 1, 42,
     "as dirty as the legs are: as needed under a quarter dirty, about daily over three quarters",
     "Cook (studylib 11306086); what lies between is worked out from it"},
};

/// "1.15" of 1150 thousandths, without zeros at the end.
std::string thousandths(std::int64_t value) {
  std::string text = std::to_string(value / 1000);
  std::string rest = std::to_string(1000 + value % 1000).substr(1);
  while (!rest.empty() && rest.back() == '0') rest.pop_back();
  return rest.empty() ? text : text + '.' + rest;
}

std::string said_minutes(std::int32_t minutes) {
  constexpr std::int32_t an_hour = 60;
  if (minutes < an_hour) return std::to_string(minutes) + " min";
  const std::string hours = std::to_string(minutes / an_hour) + " h";
  return minutes % an_hour == 0 ? hours : hours + ' ' + std::to_string(minutes % an_hour) + " min";
}

std::string said_times(std::int32_t times) {
  return times == 1 ? std::string("once a week") : std::to_string(times) + " times a week";
}

}  // namespace

std::span<const WalkMeasureFacts> all_walk_measures() {
  return walk_table;
}

const WalkMeasureFacts& facts_of(WalkMeasure measure) {
  const auto index = static_cast<std::size_t>(measure);
  assert(walk_table[index].measure == measure);
  return walk_table[index];
}

std::string said_value(WalkUnit unit, std::int32_t value) {
  constexpr std::int32_t from_metres = 1000;
  switch (unit) {
    case WalkUnit::said:
      return {};
    case WalkUnit::mm:
      return value < from_metres ? thousandths(std::int64_t{value} * 100) + " cm"
                                 : thousandths(value) + " m";
    case WalkUnit::kg:
      return std::to_string(value) + " kg";
    case WalkUnit::count:
      return std::to_string(value);
    case WalkUnit::minutes:
      return said_minutes(value);
    case WalkUnit::tenths_of_percent:
      return thousandths(std::int64_t{value} * 100) + " %";
    case WalkUnit::times_a_week:
      return said_times(value);
  }
  return {};
}

VisitId walk_id(HerdId herd, Day day, std::string_view place) {
  return {uuid_derived("farm walk\n" + to_text(herd) + '\n' + to_text(day) + '\n' +
                       fold_case(trimmed(place)))};
}

}  // namespace evenclaw
