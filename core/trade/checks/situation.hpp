// What the single checks share: the situation they look at and what they give back.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/trade/call_line/language.hpp"
#include "core/trade/check.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

struct Situation {
  const Turn& turn;
  const CowPast& past;
  Day today;
  bool finished;
  const Language& language;  // in which answers are offered
};

/// What a warning is about. Warnings of different rules that share one have one cause.
enum class About {
  block,
  old_block,  // on the claw beside the one that gets a block now
  wrap,
  finding,
  measure,
  deep_infection,
  bleeding,
  not_healing,
  toe_length,
  how_she_walks,
  cull,
  calving,
  fall,
  signs_of_disease,
  callers_knife,
  day_off,
  smell,
  doubt,
  thin_sole,
  withdrawal,
  handling
};

struct Cause {
  std::optional<Foot> foot;  // nothing: all of her
  About about;
  friend bool operator==(const Cause&, const Cause&) = default;
};

/// A rule that fires; slug and rank are filled in from the table.
struct Firing {
  Warning warning;
  std::vector<Cause> causes;
};

std::vector<Firing> block_on_painful_claw(const Situation& situation);
std::vector<Firing> both_claws_blocked(const Situation& situation);
std::vector<Firing> notifiable_signs(const Situation& situation);
std::vector<Firing> pus_above_the_horn(const Situation& situation);
std::vector<Firing> toe_or_bone(const Situation& situation);
std::vector<Firing> swollen_on_one_side(const Situation& situation);
std::vector<Firing> bleeding_goes_on(const Situation& situation);
std::vector<Firing> down_in_the_crush(const Situation& situation);
std::vector<Firing> foul_without_the_vet(const Situation& situation);
std::vector<Firing> lame_on_two_legs(const Situation& situation);
std::vector<Firing> lame_nothing_found(const Situation& situation);
std::vector<Firing> worst_walk_needs_the_vet(const Situation& situation);
std::vector<Firing> toe_far_too_short(const Situation& situation);
std::vector<Firing> both_claws_painful(const Situation& situation);
std::vector<Firing> claw_that_is_missing(const Situation& situation);
std::vector<Firing> block_side_not_called(const Situation& situation);
std::vector<Firing> block_over_what_may_hurt(const Situation& situation);
std::vector<Firing> comes_off_on_that_day(const Situation& situation);
std::vector<Firing> swelling_side_not_called(const Situation& situation);
std::vector<Firing> it_stinks(const Situation& situation);
std::vector<Firing> called_in_doubt(const Situation& situation);
std::vector<Firing> side_or_claw_swapped(const Situation& situation);
std::vector<Firing> fixture_nobody_knows(const Situation& situation);
std::vector<Firing> called_in_two_ways(const Situation& situation);
std::vector<Firing> still_on_not_mentioned(const Situation& situation);
std::vector<Firing> blocked_again_twice(const Situation& situation);
std::vector<Firing> third_visit_same_lesion(const Situation& situation);
std::vector<Firing> one_hind_lifted(const Situation& situation);
std::vector<Firing> lame_cause_not_found(const Situation& situation);
std::vector<Firing> foul_wrapped(const Situation& situation);
std::vector<Firing> worst_walk_nursing(const Situation& situation);
std::vector<Firing> toe_short(const Situation& situation);
std::vector<Firing> leaving_with_block_or_wrap(const Situation& situation);
std::vector<Firing> near_calving(const Situation& situation);
std::vector<Firing> blood_drawn_on_several(const Situation& situation);
std::vector<Firing> thin_soles_on_several(const Situation& situation);
std::vector<Firing> blocked_again(const Situation& situation);
std::vector<Firing> no_pain_relief_said(const Situation& situation);
std::vector<Firing> scab_without_treatment(const Situation& situation);
std::vector<Firing> block_past_four_weeks(const Situation& situation);
std::vector<Firing> raw_again(const Situation& situation);
std::vector<Firing> thin_sole(const Situation& situation);
std::vector<Firing> walk_watched_early(const Situation& situation);
std::vector<Firing> act_reserved_for_vet(const Situation& situation);
std::vector<Firing> withdrawal_below_floor(const Situation& situation);
std::vector<Firing> medicine_name_near(const Situation& situation);
std::vector<Firing> withdrawal_missing(const Situation& situation);
std::vector<Firing> long_in_the_crush(const Situation& situation);

About about(Fixture fixture);
/// One was put on the foot in this turn.
bool put_on_today(const FootCall& call, Fixture fixture);

/// A finding of a lesion that hurts when the claw is loaded: no block goes on that claw. Some, as
/// blood in the sole, only when they were called bad (core/trade/lesion.hpp).
bool hurts(const Finding& finding);
/// The finding of the foot that hurts on this claw (outside or inside), or null.
const Finding* painful_finding(const FootCall& call, Claw claw);

/// The claws of the foot that are not there: told today or at an earlier visit.
ClawPair missing_claws(const Situation& situation, const FootCall& call);

/// The vet was called for her or for one of her feet.
bool vet_called(const Turn& turn);
/// The vet did it, or it was done as he said.
bool is_on_the_vets_word(const Action& action);
/// Something was done to that foot by the vet or as he said: he knows of it.
bool vet_had_a_hand_in(const FootCall& call);
/// "LH vet" and "go ahead"; "vet" without a foot.
std::vector<std::string> vet_or_go_ahead(std::optional<Foot> foot, const Language& language);

/// She is let out, and her mobility score is the worst of its scale.
bool walks_worst(const Situation& situation);

/// "left hind outside"; without a claw where none was called.
std::string spoken_where(Foot foot, Claw claw);

/// "sole ulcer"; an `other` lesion by its words, one with a long name by the general one.
std::string spoken_name(const Finding& finding);

/// Answers that put right by word of mouth what was said last; empty when something else was said
/// since, which they would change instead.
std::vector<std::string> foot_correction(const Situation& situation, Foot said, Foot meant);
std::vector<std::string> claw_correction(const Situation& situation, const FootCall& call,
                                         const Action& said, Claw meant);
std::vector<std::string> claw_correction(const Situation& situation, const FootCall& call,
                                         const Finding& said, Claw meant);

}  // namespace evenclaw
