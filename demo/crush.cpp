#include "demo/crush.hpp"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <utility>

#include "demo/dermatitis.hpp"
#include "demo/herd.hpp"
#include "demo/horn.hpp"
#include "demo/on_off_lesions.hpp"
#include "demo/parameters.hpp"

namespace evenclaw::demo {

namespace {

constexpr int weeks_to_recheck = 4;

class FootAtCrush {
 public:
  FootAtCrush(Cow& cow, Foot foot, const AtCrush& at, RandomStream& draws)
      : cow_(cow), state_(cow.feet[index_of(foot)]), at_(at), draws_(draws) {
    called_.foot = foot;
  }

  /// In the order of the trade: look at what is on her, look at horn and skin, then act.
  CalledFoot called(Looks& looks) {
    const bool carried_block = state_.on.block_since >= 0;
    see_horn(looks);
    see_skin(looks);
    see_others(looks);
    if (carried_block) {
      judge_block();
    } else {
      perhaps_block();
    }
    treat_skin();
    take_off_wrap();
    return std::move(called_);
  }

 private:
  Look look_at(Lesion lesion, Claw claw) const {
    Look look;
    look.visit = at_.visit;
    look.cow = cow_.number;
    look.foot = called_.foot;
    look.claw = claw;
    look.lesion = lesion;
    return look;
  }

  void call(CalledFinding finding) {
    if (!draws_.chance(value_of(Parameter::calls_place))) finding.place = Place::not_called;
    if (!draws_.chance(value_of(Parameter::calls_degree))) finding.degree = Degree::not_called;
    called_.findings.push_back(finding);
  }

  /// Where in the white line: the heel mostly. It stays where it is.
  [[nodiscard]] Place place_of(HornSpot spot, Claw claw) const {
    if (spot == HornSpot::sole) return Place::sole_middle;
    const auto fixed = (static_cast<std::size_t>(cow_.number) * 7 + index_of(called_.foot) * 3 +
                        (claw == Claw::outside ? 0 : 1)) %
                       10;
    if (fixed < 7) return Place::white_line_heel;
    return fixed < 9 ? Place::white_line_side : Place::white_line_toe;
  }

  void see_horn(Looks& looks) {
    for (std::size_t claw = 0; claw < state_.claws.size(); ++claw) {
      for (const HornSpot spot : {HornSpot::sole, HornSpot::white_line})
        see_spot(claw, spot, looks);
    }
  }

  void see_spot(std::size_t claw_index, HornSpot spot, Looks& looks) {
    HornState& horn = state_.claws[claw_index].horn[static_cast<std::size_t>(spot)];
    const Claw claw = demo::claw_of(claw_index);
    const bool is_there = horn.stage != HornStage::sound;
    const bool may_be_mistaken = spot == HornSpot::sole && is_hind(called_.foot);
    if (!is_there && !may_be_mistaken) return;
    const double chance = is_there ? chance_to_see(at_.caller, horn.degree, at_.years)
                                   : value_of(Parameter::calls_a_bruise_too_many);
    const bool is_called = draws_.chance(chance);
    if (!is_there && !is_called) return;
    Look look = look_at(is_there ? lesion_of(spot, horn.stage) : Lesion::sh, claw);
    look.degree = horn.degree;
    look.was_there = is_there;
    look.was_called = is_called;
    looks.push_back(look);
    if (!is_called) return;
    call({look.lesion, claw, place_of(spot, claw), is_there ? horn.degree : Degree::slight});
    if (horn.stage != HornStage::late) return;
    called_.was_opened = true;
    if (!sore_claw_ || horn.degree == Degree::bad) sore_degree_ = horn.degree;
    both_sore_ = both_sore_ || (sore_claw_ && *sore_claw_ != claw);
    sore_claw_ = sore_claw_.value_or(claw);
    trim_lesion(horn, at_.complications.has(Complication::treatment_resets));
  }

  void see_skin(Looks& looks) {
    if (!is_infected(state_.dd)) return;
    Look look = look_at(Lesion::dd, Claw::none);
    look.stage = state_.dd;
    look.was_called = draws_.chance(chance_to_see(at_.caller, state_.dd, at_.years));
    looks.push_back(look);
    if (!look.was_called) return;
    sore_was_seen_ = is_raw(state_.dd);
    CalledFinding finding{Lesion::dd, Claw::none, Place::behind};
    const bool says_stage = draws_.chance(value_of(Parameter::calls_degree));
    if (says_stage) finding.stage = as_called(at_.caller, state_.dd);
    if (!draws_.chance(value_of(Parameter::calls_place))) finding.place = Place::not_called;
    called_.findings.push_back(finding);
  }

  void see_others(Looks& looks) {
    for (const OnOffFacts& facts : all_on_off_lesions()) {
      OnOffState& other = state_.others[static_cast<std::size_t>(facts.which)];
      if (!other.is_there) continue;
      const Claw claw = !facts.has_claw         ? Claw::none
                        : is_hind(called_.foot) ? Claw::outside
                                                : Claw::inside;
      Look look = look_at(facts.lesion, claw);
      look.degree = other.degree;
      look.was_called = draws_.chance(chance_to_see(at_.caller, other.degree, at_.years));
      looks.push_back(look);
      if (!look.was_called) continue;
      call({facts.lesion, claw, facts.place, other.degree});
      other.was_treated = at_.complications.has(Complication::treatment_resets);
      called_.needs_vet = called_.needs_vet || facts.which == OnOff::foul;
      // No block beside another claw that hurts.
      both_sore_ = both_sore_ || facts.which == OnOff::toe_ulcer;
    }
  }

  [[nodiscard]] double chance_of_block() const {
    if (!at_.complications.has(Complication::worse_feet_treated_more)) {
      return value_of(Parameter::block_whatever_degree);
    }
    switch (sore_degree_) {
      case Degree::not_called:
      case Degree::slight:
        return value_of(Parameter::block_when_slight);
      case Degree::plain:
        return value_of(Parameter::block_when_plain);
      case Degree::bad:
        return value_of(Parameter::block_when_bad);
    }
    return 0.0;
  }

  void put_block(BlockCalled how, Claw claw) {
    called_.block = how;
    called_.block_claw = claw;
    state_.on.block_since = at_.week;
    state_.on.block_claw = claw;
    state_.on.block_was_lost = false;
    cow_.recheck_from = at_.week + weeks_to_recheck;
  }

  void perhaps_block() {
    if (!sore_claw_ || both_sore_) return see_again_without_block();
    if (!draws_.chance(chance_of_block())) return see_again_without_block();
    put_block(BlockCalled::put_on, partner(*sore_claw_));
  }

  void see_again_without_block() {
    if (!sore_claw_ || !draws_.chance(value_of(Parameter::looks_again_without_block))) return;
    called_.see_again = true;
    cow_.recheck_from = std::min(cow_.recheck_from, at_.week + weeks_to_recheck);
  }

  void take_block_off(BlockCalled how) {
    called_.block = how;
    called_.block_claw = state_.on.block_claw;
    state_.on.block_since = -1;
    state_.on.block_was_lost = false;
  }

  void judge_block() {
    const Claw claw = state_.on.block_claw;
    const bool still_needed = sore_claw_ && *sore_claw_ != claw && !both_sore_;
    constexpr int weeks_on = 3;
    const bool is_old = at_.week - state_.on.block_since >= weeks_on;
    if (state_.on.block_was_lost) {
      if (still_needed) return put_block(BlockCalled::refitted, claw);
      return take_block_off(BlockCalled::came_off);
    }
    if (!is_old && still_needed) {
      called_.block = BlockCalled::still_on;
      called_.block_claw = claw;
      return;
    }
    if (still_needed) return put_block(BlockCalled::again, claw);
    take_block_off(BlockCalled::taken_off);
  }

  void treat_skin() {
    if (!sore_was_seen_) return;
    called_.was_sprayed = true;
    const bool is_big = state_.dd == DdStage::m2;
    treat_sore(state_, at_.complications.has(Complication::treatment_resets), draws_);
    const bool has_wrap = state_.on.wrap_since >= 0;
    if (has_wrap || !is_big || !draws_.chance(value_of(Parameter::wrap_when_raw))) return;
    called_.wrap = WrapCalled::put_on;
    state_.on.wrap_since = at_.week;
  }

  void take_off_wrap() {
    if (state_.on.wrap_since < 0 || state_.on.wrap_since == at_.week) return;
    called_.wrap = WrapCalled::taken_off;
    state_.on.wrap_since = -1;
  }

  Cow& cow_;
  FootState& state_;
  const AtCrush& at_;
  RandomStream& draws_;
  CalledFoot called_;
  std::optional<Claw> sore_claw_;  // the first with a late lesion of the horn
  Degree sore_degree_ = Degree::slight;
  bool both_sore_ = false;
  bool sore_was_seen_ = false;
};

/// The foot on which she walks lame, when she does.
std::optional<Foot> lame_foot(const Cow& cow) {
  for (const Foot foot : all_feet) {
    if (is_lame_on(cow.feet[index_of(foot)])) return foot;
  }
  return std::nullopt;
}

bool hurts(const CalledFinding& finding) {
  const Hurts hurts = facts_of(finding.lesion).hurts;
  return hurts == Hurts::yes || (hurts == Hurts::when_bad && finding.degree == Degree::bad);
}

/// On both claws something hurts, so that no block helps: a check asks for the vet.
bool has_no_good_claw(const CalledFoot& foot) {
  const auto hurts_on = [&](Claw claw) {
    return std::any_of(foot.findings.begin(), foot.findings.end(), [&](const CalledFinding& found) {
      return found.claw == claw && hurts(found);
    });
  };
  return hurts_on(Claw::outside) && hurts_on(Claw::inside);
}

/// A lame foot on which nothing is found is for the vet.
void leave_to_vet(CalledTurn& turn, Foot foot) {
  const auto called = std::find_if(turn.feet.begin(), turn.feet.end(),
                                   [&](const CalledFoot& of) { return of.foot == foot; });
  if (called != turn.feet.end()) {
    called->needs_vet = called->needs_vet || called->findings.empty();
    return;
  }
  CalledFoot of_vet;
  of_vet.foot = foot;
  of_vet.needs_vet = true;
  turn.feet.push_back(of_vet);
}

}  // namespace

CalledTurn stand_in_crush(Cow& cow, const Coming& coming, const AtCrush& at, RandomStream& draws,
                          Looks& looks) {
  CalledTurn turn;
  turn.number = cow.number;
  turn.reason = coming.reason;
  turn.lactation = lactation_of(cow);
  turn.weeks_in_milk = weeks_in_milk(cow, at.week);
  turn.is_dry = is_dry(cow, at.week);
  if (coming.reason == Reason::lame) turn.lame_on = lame_foot(cow);
  cow.last_trim = at.week;
  cow.recheck_from = never;
  for (const Foot foot : all_feet) {
    const bool is_lifted = at.todays_feet.has(foot) || turn.lame_on == foot;
    if (!is_lifted) continue;
    CalledFoot called = FootAtCrush(cow, foot, at, draws).called(looks);
    if (called.says_anything()) turn.feet.push_back(std::move(called));
  }
  if (turn.lame_on) leave_to_vet(turn, *turn.lame_on);
  turn.goes_ahead = std::any_of(turn.feet.begin(), turn.feet.end(), has_no_good_claw);
  turn.rest_is_fine = at.caller.writes_sound_feet || turn.feet.empty();
  return turn;
}

}  // namespace evenclaw::demo
