#include "demo/parameters.hpp"

#include <cassert>
#include <cmath>
#include <cstddef>
#include <iterator>

namespace evenclaw::demo {

namespace {

using P = Parameter;

constexpr ParameterFacts parameter_table[] = {
    {P::smallest_herd, "smallest_herd", 60, "cows", "set by what the business is to show"},
    {P::largest_herd, "largest_herd", 600, "cows", "set by what the business is to show"},
    {P::barn_correlation, "barn_correlation", 0.6, "correlation", "invented"},
    {P::horn_herd_spread, "horn_herd_spread", 0.45, "SD of the log rate",
     "below the 0.59 to 0.83 that follow from 9.5 to 17.3 % of the variance between herds (Cramer "
     "2008), for floors add to it"},
    {P::skin_herd_spread, "skin_herd_spread", 0.25, "SD of the log rate",
     "invented; spread from cow to cow widens it to what 28 to 38.7 % of the variance between "
     "herds (Cramer 2008) say"},
    {P::season_swing, "season_swing", 0.15, "amplitude of the log rate", "invented"},

    {P::calving_interval, "calving_interval", 55, "weeks", "common practice, no source"},
    {P::calving_interval_spread, "calving_interval_spread", 5, "weeks, SD", "invented"},
    {P::calving_interval_in_season, "calving_interval_in_season", 52, "weeks",
     "a herd that calves in one season: a year"},
    {P::first_calving_age, "first_calving_age", 110, "weeks",
     "about 25 months: common practice, no source"},
    {P::dry_weeks, "dry_weeks", 8, "weeks", "six to eight weeks: from memory"},
    {P::leaves_in_lactation_1, "leaves_in_lactation_1", 0.20, "of cows", "invented"},
    {P::leaves_in_lactation_2, "leaves_in_lactation_2", 0.25, "of cows", "invented"},
    {P::leaves_in_lactation_3, "leaves_in_lactation_3", 0.32, "of cows", "invented"},
    {P::leaves_in_lactation_4, "leaves_in_lactation_4", 0.42, "of cows, from the fourth on",
     "invented"},
    {P::leaves_lame, "leaves_lame", 0.006, "a week for each bad lesion",
     "invented; culling is among the largest costs of lesions (Dolecheck 2018)"},
    {P::horn_cow_spread, "horn_cow_spread", 0.7, "SD of the log rate", "invented"},
    {P::skin_cow_spread, "skin_cow_spread", 0.6, "SD of the log rate", "invented"},

    {P::bruise_begins, "bruise_begins", 0.00215, "an outside hind claw",
     "fitted to 7.7 to 11 % of cows (Cramer 2008)"},
    {P::fissure_begins, "fissure_begins", 0.00075, "an outside hind claw",
     "fitted to about 4 % of cows (Solano 2016)"},
    {P::bruise_becomes_ulcer, "bruise_becomes_ulcer", 0.075, "a week",
     "fitted to 4.7 to 9.2 % of cows with an ulcer (Cramer 2008; 6 %: Solano 2016)"},
    {P::fissure_becomes_abscess, "fissure_becomes_abscess", 0.030, "a week", "invented"},
    {P::bruise_heals, "bruise_heals", 0.06, "a week", "invented"},
    {P::fissure_heals, "fissure_heals", 0.06, "a week", "invented"},
    {P::late_heals_alone, "late_heals_alone", 0.02, "a week", "invented"},
    {P::late_heals_trimmed, "late_heals_trimmed", 0.0544, "a week",
     "24.4 % sound in 5 weeks, trim only (Thomas 2015)"},
    {P::late_heals_blocked, "late_heals_blocked", 0.0851, "a week",
     "35.9 % sound in 5 weeks, trim and block (Thomas 2015)"},
    {P::horn_worsens, "horn_worsens", 0.05, "a week, one degree", "invented"},
    {P::horn_comes_back, "horn_comes_back", 2.2, "times, on a claw that had it",
     "invented; lameness before makes lameness (Randall 2018, from memory)"},
    {P::horn_lactation_1, "horn_lactation_1", 0.65, "times the second",
     "direction: Solano 2016; lameness odds 1 : 1.6 (Solano 2015)"},
    {P::horn_lactation_3, "horn_lactation_3", 1.5, "times the second",
     "direction: Solano 2016; lameness odds 3.3 : 1.6 (Solano 2015)"},
    {P::horn_lactation_4, "horn_lactation_4", 1.8, "times the second, from the fourth on",
     "direction: Solano 2016; lameness odds 4.0 : 1.6 (Solano 2015)"},
    {P::horn_early_milk, "horn_early_milk", 1.1, "times, weeks 0 to 6 after calving", "invented"},
    {P::horn_peak, "horn_peak", 1.7, "times, weeks 7 to 17 after calving",
     "direction: first 120 days (Oehm 2019)"},
    {P::horn_dry, "horn_dry", 0.6, "times, dry", "invented"},
    {P::front_horn, "front_horn", 0.10, "times the hind foot, inside claw",
     "92 % of lesions on hind limbs (Murray 1996, from memory); inside in front: van der Tol 2002"},
    {P::inside_hind, "inside_hind", 0.25, "times the outside claw",
     "65 % outside, 14 % inside (Murray 1996, from memory)"},
    {P::hard_floor_sole, "hard_floor_sole", 2.2, "times rubber",
     "odds ratio for sole haemorrhage and ulcer (Bergsten 2015)"},
    {P::hard_floor_white_line, "hard_floor_white_line", 2.8, "times rubber",
     "odds ratio for haemorrhage in the white line (Bergsten 2015)"},
    {P::straw_floor, "straw_floor", 0.9, "times rubber",
     "invented; fewer lesions in straw yards (Somers 2003, from memory)"},

    {P::dd_reproduction, "dd_reproduction", 1.33, "feet infected by one foot",
     "below R0 2.36 (Biemans 2018), which was found without treatment"},
    {P::dd_from_outside, "dd_from_outside", 0.001, "a hind foot", "invented"},
    {P::dd_first_chronic, "dd_first_chronic", 0.94, "of first lesions, seen first as M4",
     "93.89 % of exits from M0 (Biemans 2018)"},
    {P::dd_early_grows, "dd_early_grows", 0.40, "M1 to M2", "invented"},
    {P::dd_early_settles, "dd_early_settles", 0.20, "M1 to M4", "invented"},
    {P::dd_raw_settles, "dd_raw_settles", 0.13, "M2 to M4",
     "fitted with the next ones to 70 % of infected time in M4 (Biemans 2018)"},
    {P::dd_chronic_flares, "dd_chronic_flares", 0.068, "M4 to M4.1", "as above"},
    {P::dd_flare_settles, "dd_flare_settles", 0.10, "M4.1 to M4", "as above"},
    {P::dd_flare_opens, "dd_flare_opens", 0.06, "M4.1 to M2", "as above"},
    {P::dd_chronic_heals, "dd_chronic_heals", 0.028, "M4 to M0", "invented"},
    {P::dd_scab_settles, "dd_scab_settles", 0.5, "M3 to M4", "invented"},
    {P::dd_treated_raw_closes, "dd_treated_raw_closes", 0.58, "of treated M1, M2 and M4.1, to M3",
     "58 % of M2 to M0 or M4 in 28 days, antibiotic spray (Holzhauer 2011, year from memory)"},
    {P::dd_treated_heals, "dd_treated_heals", 0.26, "M3 to M0 in a week",
     "with the settling above a third: 24 to 28 % healed by day 21 (Kofler 2015)"},
    {P::dd_in_heifers, "dd_in_heifers", 0.8, "times the share of the herd's feet, at first calving",
     "invented; heifers have it before they calve (Gomez 2015, as told by Cramer)"},
    {P::dd_lactation_1, "dd_lactation_1", 2.0, "times later lactations",
     "direction: falls with parity (Solano 2016)"},
    {P::dd_lactation_1_late, "dd_lactation_1_late", 1.3, "times, first lactation from day 100",
     "direction: Solano 2016"},
    {P::dd_lactation_3, "dd_lactation_3", 0.45, "times, from the third on",
     "direction: falls with parity (Solano 2016)"},
    {P::dd_front, "dd_front", 0.13, "times the hind foot",
     "92 % of lesions on hind limbs (Murray 1996, from memory)"},
    {P::dirt_on_skin, "dirt_on_skin", 1.25, "times for one SD of dirt", "invented"},
    {P::bath_regular, "bath_regular", 0.60, "times no bath",
     "invented; for collective treatment no benefit is proven (Ariza 2017)"},
    {P::bath_now_and_then, "bath_now_and_then", 0.85, "times no bath", "invented"},

    {P::sees_slight, "sees_slight", 0.55, "of slight lesions", "invented"},
    {P::sees_plain, "sees_plain", 0.85, "of plain lesions", "invented"},
    {P::sees_bad, "sees_bad", 0.97, "of bad lesions", "invented"},
    {P::sees_chronic_dd, "sees_chronic_dd", 0.25, "of M4, called at a trim",
     "invented; M4 is seen in 82 of 100 when looked for (Solano 2017)"},
    {P::caller_spread, "caller_spread", 0.45, "SD of the log odds of seeing",
     "0.18 to 0.91 follow from 1 to 20 % of the variance (Solano 2016)"},
    {P::calls_place, "calls_place", 0.85, "of findings", "invented"},
    {P::calls_degree, "calls_degree", 0.90, "of findings", "invented"},
    {P::calls_a_bruise_too_many, "calls_a_bruise_too_many", 0.006, "of sound hind claws",
     "invented"},
    {P::drift_a_year, "drift_a_year", 0.5, "log odds a year, slight ones", "invented"},

    {P::block_when_slight, "block_when_slight", 0.1, "of late horn lesions", "invented"},
    {P::block_when_plain, "block_when_plain", 0.55, "of late horn lesions", "invented"},
    {P::block_when_bad, "block_when_bad", 0.95, "of late horn lesions", "invented"},
    {P::block_whatever_degree, "block_whatever_degree", 0.6,
     "of late horn lesions, where the degree plays no part", "invented"},
    {P::wrap_when_raw, "wrap_when_raw", 0.6, "of treated M2", "invented"},
    {P::looks_again_without_block, "looks_again_without_block", 0.3, "of late horn lesions",
     "invented"},
    {P::misses_recheck, "misses_recheck", 0.25, "of rechecks", "invented"},
    {P::block_comes_off, "block_comes_off", 0.08, "a week",
     "invented; how long blocks stay on is not published"},
    {P::farmer_takes_wrap_off, "farmer_takes_wrap_off", 0.85, "of wraps", "invented"},
    {P::farmer_tells, "farmer_tells", 0.8, "of what was done", "invented"},
    {P::farmer_sees_lame, "farmer_sees_lame", 0.35, "of lame cows at a visit",
     "farmers guessed a quarter to a third of the lame cows (PraeRi 2020; Espejo 2006)"},

    {P::change_after_bad_visit, "change_after_bad_visit", 0.08, "of bad visits", "invented"},
    {P::bad_visit, "bad_visit", 1.3, "times the mean of the visits before", "invented"},
    {P::effect_rubber, "effect_rubber", 0.5, "times, lesions of the horn", "planted"},
    {P::effect_bath, "effect_bath", 0.55, "times, digital dermatitis", "planted"},
    {P::effect_scraping, "effect_scraping", 1.0, "times: no effect at all", "planted"},
};

constexpr bool stands_in_order() {
  for (std::size_t at = 0; at < std::size(parameter_table); ++at) {
    if (parameter_table[at].parameter != static_cast<Parameter>(at)) return false;
  }
  return std::size(parameter_table) == static_cast<std::size_t>(P::effect_scraping) + 1;
}

static_assert(stands_in_order(), "the table names every parameter, in the order of the enum");

}  // namespace

std::span<const ParameterFacts> all_parameters() {
  return parameter_table;
}

double value_of(Parameter parameter) {
  return parameter_table[static_cast<std::size_t>(parameter)].value;
}

double within_weeks(double chance_a_week, int weeks) {
  assert(weeks >= 0);
  return 1.0 - std::pow(1.0 - chance_a_week, weeks);
}

}  // namespace evenclaw::demo
