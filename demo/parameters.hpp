// Every number the invented business is made with, each with where it comes from.
#pragma once

#include <span>
#include <string_view>

namespace evenclaw::demo {

/// In the order of the table. Chances and rates are for one week where the unit does not say more;
/// "times" multiplies such a chance.
enum class Parameter {
  // the herds
  smallest_herd,
  largest_herd,
  barn_correlation,
  horn_herd_spread,
  skin_herd_spread,
  season_swing,
  // the cows
  calving_interval,
  calving_interval_spread,
  calving_interval_in_season,
  first_calving_age,
  dry_weeks,
  leaves_in_lactation_1,
  leaves_in_lactation_2,
  leaves_in_lactation_3,
  leaves_in_lactation_4,
  leaves_lame,
  horn_cow_spread,
  skin_cow_spread,
  // lesions of the horn
  bruise_begins,
  fissure_begins,
  bruise_becomes_ulcer,
  fissure_becomes_abscess,
  bruise_heals,
  fissure_heals,
  late_heals_alone,
  late_heals_trimmed,
  late_heals_blocked,
  horn_worsens,
  horn_comes_back,
  horn_lactation_1,
  horn_lactation_3,
  horn_lactation_4,
  horn_early_milk,
  horn_peak,
  horn_dry,
  front_horn,
  inside_hind,
  hard_floor_sole,
  hard_floor_white_line,
  straw_floor,
  // digital dermatitis
  dd_reproduction,
  dd_from_outside,
  dd_first_chronic,
  dd_early_grows,
  dd_early_settles,
  dd_raw_settles,
  dd_chronic_flares,
  dd_flare_settles,
  dd_flare_opens,
  dd_chronic_heals,
  dd_scab_settles,
  dd_treated_raw_closes,
  dd_treated_heals,
  dd_in_heifers,
  dd_lactation_1,
  dd_lactation_1_late,
  dd_lactation_3,
  dd_front,
  dirt_on_skin,
  bath_regular,
  bath_now_and_then,
  // the callers
  sees_slight,
  sees_plain,
  sees_bad,
  sees_chronic_dd,
  caller_spread,
  calls_place,
  calls_degree,
  calls_a_bruise_too_many,
  drift_a_year,
  // what is done
  block_when_slight,
  block_when_plain,
  block_when_bad,
  block_whatever_degree,
  wrap_when_raw,
  looks_again_without_block,
  misses_recheck,
  block_comes_off,
  farmer_takes_wrap_off,
  farmer_tells,
  farmer_sees_lame,
  // changes
  change_after_bad_visit,
  bad_visit,
  effect_rubber,
  effect_bath,
  effect_scraping
};

struct ParameterFacts {
  Parameter parameter;
  std::string_view name;
  double value;
  std::string_view unit;
  std::string_view source;  // "invented" where there is none
};

std::span<const ParameterFacts> all_parameters();

double value_of(Parameter parameter);

/// Chance within `weeks` weeks that something with that chance a week happens.
double within_weeks(double chance_a_week, int weeks);

}  // namespace evenclaw::demo
