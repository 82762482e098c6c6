// Foul: a deep infection between the claws that trimming does not touch.
#include <algorithm>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"

namespace evenclaw {

namespace {

/// Called by its name, or as a foot that is swollen above both claws.
const Finding* foul_on(const FootCall& call) {
  const auto found =
      std::find_if(call.findings.begin(), call.findings.end(), [](const Finding& finding) {
        const bool swollen_all_round = finding.lesion == Lesion::sw && finding.claw == Claw::both;
        return finding.lesion == Lesion::ip || swollen_all_round;
      });
  return found == call.findings.end() ? nullptr : &*found;
}

/// Put on today and not taken off again.
bool is_wrapped_today(const FootCall& call) {
  bool wrapped = false;
  for (const Action& action : call.actions) {
    const std::optional<FixtureSaid> said = fixture_said(action.kind);
    if (!said || said->fixture != Fixture::wrap) continue;
    if (said->step == FixtureStep::put_on) wrapped = true;
    if (is_off_after(said->step)) wrapped = false;
  }
  return wrapped;
}

/// News of this visit told that the vet has been.
bool vet_came(const Situation& situation) {
  const std::vector<TaskRow>& tasks = situation.past.rows.tasks;
  return std::any_of(tasks.begin(), tasks.end(), [&](const TaskRow& task) {
    return task.kind == TaskKind::vet && !task.open && task.closed_on == situation.today;
  });
}

bool is_the_vets_medicine(const Action& action) {
  const bool medicine = action.kind == ActionKind::given || action.kind == ActionKind::injected;
  return medicine && is_on_the_vets_word(action);
}

/// A medicine that works in all of her, given by the vet or as he said: that foul needs. It may
/// have been called of another foot or of none.
bool treated_as_the_vet_said(const Turn& turn) {
  const auto given_among = [](const std::vector<Action>& actions) {
    return std::any_of(actions.begin(), actions.end(), is_the_vets_medicine);
  };
  return given_among(turn.actions) ||
         std::any_of(turn.feet.begin(), turn.feet.end(),
                     [&](const FootCall& call) { return given_among(call.actions); });
}

Firing vet_or_plan(const Situation& situation, const FootCall& call, const Finding& finding) {
  const std::string where = " (" + spoken_where(call.foot, Claw::none) + "): ";
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.words =
      finding.lesion == Lesion::ip
          ? "Foul" + where + "look for a stick; vet, or the vet's plan, today."
          : "Swollen above both claws" + where + "foul? Stick? Vet, or the vet's plan, today.";
  firing.warning.answers = vet_or_go_ahead(call.foot, situation.language);
  firing.warning.answers.insert(
      firing.warning.answers.begin() + 1,
      offered_act(call.foot, ActionKind::vet_plan, Claw::none, situation.language));
  firing.causes = {{call.foot, About::deep_infection}};
  return firing;
}

}  // namespace

std::vector<Firing> foul_without_the_vet(const Situation& situation) {
  const Turn& turn = situation.turn;
  std::vector<Firing> firings;
  const bool plan = was_called(turn, ActionKind::vet_plan) || treated_as_the_vet_said(turn);
  if (plan || vet_called(turn) || vet_came(situation)) return firings;
  for (const FootCall& call : turn.feet) {
    const Finding* foul = foul_on(call);
    if (foul != nullptr && !vet_had_a_hand_in(call))
      firings.push_back(vet_or_plan(situation, call, *foul));
  }
  return firings;
}

std::vector<Firing> foul_wrapped(const Situation& situation) {
  std::vector<Firing> firings;
  for (const FootCall& call : situation.turn.feet) {
    if (foul_on(call) == nullptr || !is_wrapped_today(call)) continue;
    Firing firing;
    firing.warning.foot = call.foot;
    firing.warning.words = "Foul under a wrap (" + spoken_where(call.foot, Claw::none) +
                           "): better left open to the air?";
    firing.warning.answers = {offered_go_ahead(situation.language)};
    firing.causes = {{call.foot, About::wrap}};
    firings.push_back(std::move(firing));
  }
  return firings;
}

}  // namespace evenclaw
