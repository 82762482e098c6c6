// What was done to a foot or for a cow, as called.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/medicine.hpp"

namespace evenclaw {

/// A time as said: a number of days (weeks are seven each), a weekday or a date; none of them when
/// not said. `milking` is the last one of that day that is meant.
struct TimeSaid {
  std::optional<std::int32_t> days;
  std::optional<Weekday> weekday;
  std::optional<Day> date;
  std::optional<Milking> milking;

  [[nodiscard]] bool said() const {
    return days.has_value() || weekday.has_value() || date.has_value();
  }

  friend bool operator==(const TimeSaid&, const TimeSaid&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("days", &TimeSaid::days, "days from the visit");
    visit("weekday", &TimeSaid::weekday, "the next such day after the visit");
    visit("date", &TimeSaid::date, "that day");
    visit("milking", &TimeSaid::milking, "up to and with this milking of it");
  }
};

/// The day meant from the visit on; nothing for no time, or for days that nobody can have said.
std::optional<Day> day_meant(const TimeSaid& said, Day visit_day);

enum class ActionKind {
  opened,
  loose_horn_off,
  modelled,        // the inner part of the sole hollowed out
  claw_missing,    // no act: seen, and true of the foot from then on
  block_on,        // on the good claw
  block_stacked,   // a second one on top
  block_refitted,  // the old one was lost, a new one put on
  block_again,     // blocked again because not healed
  block_off,       // taken off
  block_came_off,  // came off by itself
  block_still_on,  // seen and left on
  block_unknown,   // asked about, nobody knows
  wrap_on,
  wrap_off,
  wrap_came_off,
  wrap_still_on,
  wrap_unknown,
  spray,
  paste,
  powder,
  gel,
  see_again,
  watch_her_walk,
  vet,
  told_farmer,
  marked,  // so that she is found again
  to_straw,
  near_parlour,
  short_walk,
  cull_advised,
  pain_relief_asked,  // the vet or the farmer is to see to it
  pain_relief_given,
  photo,
  vet_plan,  // treated as the herd's written plan of the vet says
  // Signs, no acts: what was seen of a foot or of her, said in so few words that a check hears it.
  bleeding,  // and it does not stop
  bone_showing,
  pus_above,     // running out above the horn
  blisters,      // on a foot
  went_down,     // in the crush
  near_calving,  // the time is that of the calving
  heavy_in_calf,
  sore_mouth,
  fever,
  given,  // a medicine, by mouth or however the product is given
  injected,
  anaesthetised,
  amputated,
  withheld,  // milk and meat, till the time said with it
  milk_withheld,
  meat_withheld,
  no_withdrawal,  // somebody said that there is none
  // How she has to be handled: known of her from then on, until it is said to be over.
  kicks,
  jumps,
  lies_down,    // in the crush, of her own will
  needs_hoist,  // or the belly band
  kicks_no_more,
  jumps_no_more,
  lies_down_no_more,
  hoist_no_more
};

template <>
struct EnumWords<ActionKind> {
  static constexpr EnumWord<ActionKind> table[] = {
      {ActionKind::opened, "opened"},
      {ActionKind::loose_horn_off, "loose_horn_off"},
      {ActionKind::modelled, "modelled"},
      {ActionKind::claw_missing, "claw_missing"},
      {ActionKind::block_on, "block_on"},
      {ActionKind::block_stacked, "block_stacked"},
      {ActionKind::block_refitted, "block_refitted"},
      {ActionKind::block_again, "block_again"},
      {ActionKind::block_off, "block_off"},
      {ActionKind::block_came_off, "block_came_off"},
      {ActionKind::block_still_on, "block_still_on"},
      {ActionKind::block_unknown, "block_unknown"},
      {ActionKind::wrap_on, "wrap_on"},
      {ActionKind::wrap_off, "wrap_off"},
      {ActionKind::wrap_came_off, "wrap_came_off"},
      {ActionKind::wrap_still_on, "wrap_still_on"},
      {ActionKind::wrap_unknown, "wrap_unknown"},
      {ActionKind::spray, "spray"},
      {ActionKind::paste, "paste"},
      {ActionKind::powder, "powder"},
      {ActionKind::gel, "gel"},
      {ActionKind::see_again, "see_again"},
      {ActionKind::watch_her_walk, "watch_her_walk"},
      {ActionKind::vet, "vet"},
      {ActionKind::told_farmer, "told_farmer"},
      {ActionKind::marked, "marked"},
      {ActionKind::to_straw, "to_straw"},
      {ActionKind::near_parlour, "near_parlour"},
      {ActionKind::short_walk, "short_walk"},
      {ActionKind::cull_advised, "cull_advised"},
      {ActionKind::pain_relief_asked, "pain_relief_asked"},
      {ActionKind::pain_relief_given, "pain_relief_given"},
      {ActionKind::photo, "photo"},
      {ActionKind::vet_plan, "vet_plan"},
      {ActionKind::bleeding, "bleeding"},
      {ActionKind::bone_showing, "bone_showing"},
      {ActionKind::pus_above, "pus_above"},
      {ActionKind::blisters, "blisters"},
      {ActionKind::went_down, "went_down"},
      {ActionKind::near_calving, "near_calving"},
      {ActionKind::heavy_in_calf, "heavy_in_calf"},
      {ActionKind::sore_mouth, "sore_mouth"},
      {ActionKind::fever, "fever"},
      {ActionKind::given, "given"},
      {ActionKind::injected, "injected"},
      {ActionKind::anaesthetised, "anaesthetised"},
      {ActionKind::amputated, "amputated"},
      {ActionKind::withheld, "withheld"},
      {ActionKind::milk_withheld, "milk_withheld"},
      {ActionKind::meat_withheld, "meat_withheld"},
      {ActionKind::no_withdrawal, "no_withdrawal"},
      {ActionKind::kicks, "kicks"},
      {ActionKind::jumps, "jumps"},
      {ActionKind::lies_down, "lies_down"},
      {ActionKind::needs_hoist, "needs_hoist"},
      {ActionKind::kicks_no_more, "kicks_no_more"},
      {ActionKind::jumps_no_more, "jumps_no_more"},
      {ActionKind::lies_down_no_more, "lies_down_no_more"},
      {ActionKind::hoist_no_more, "hoist_no_more"}};
};

/// What a block is made of, or how she was marked.
enum class Material { not_called, wood, rubber, plastic, shoe, glue_on, band, paint };

template <>
struct EnumWords<Material> {
  static constexpr EnumWord<Material> table[] = {{Material::not_called, "not_called"},
                                                 {Material::wood, "wood"},
                                                 {Material::rubber, "rubber"},
                                                 {Material::plastic, "plastic"},
                                                 {Material::shoe, "shoe"},
                                                 {Material::glue_on, "glue_on"},
                                                 {Material::band, "band"},
                                                 {Material::paint, "paint"}};
};

/// Who gave a medicine or the pain relief, was asked for it, or directed it.
enum class ByWhom { not_called, farmer, vet };

template <>
struct EnumWords<ByWhom> {
  static constexpr EnumWord<ByWhom> table[] = {
      {ByWhom::not_called, "not_called"}, {ByWhom::farmer, "farmer"}, {ByWhom::vet, "vet"}};
};

struct Action {
  ActionKind kind = ActionKind::opened;
  Claw claw = Claw::none;  // the claw acted on; none for wrap, spray, see again, vet ...
  std::string product;     // name of what was put on or given, "" when not said
  Material material = Material::not_called;
  ByWhom by_whom = ByWhom::not_called;
  ByWhom directed_by = ByWhom::not_called;
  TimeSaid when;                     // "off Thu", "see again 28d"
  std::optional<Medicine> medicine;  // as the herd's list stood then; nothing when not on it

  friend bool operator==(const Action&, const Action&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("kind", &Action::kind, "what was done");
    visit("claw", &Action::claw, "the claw it was done to");
    visit("product", &Action::product, "spray, paste, powder, gel or medicine by name");
    visit("material", &Action::material, "what a block is made of, how she was marked");
    visit("by_whom", &Action::by_whom, "who gave the medicine, or was asked for it");
    visit("directed_by", &Action::directed_by, "on whose direction");
    visit("when", &Action::when, "the time said with it");
    visit("medicine", &Action::medicine, "what the herd's list said of the product then");
  }
};

}  // namespace evenclaw
