// A cow that can hardly walk: nursing and an early look, and the vet where trimming cannot be all.
#include <algorithm>
#include <optional>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

/// Where it does not get better the foot is looked at again after 5 to 7 days.
constexpr int early_look_days = 7;
/// As long as a block stays on at most: what was as bad before that is another story.
constexpr int same_story_days = 42;

bool is_worst(std::optional<MobilityScale> scale, std::optional<std::int32_t> score) {
  return scale && score && *score == facts_of(*scale).highest;
}

std::string walks(const MobilitySaid& mobility) {
  return "Walks " + std::to_string(*mobility.score) + " of " +
         std::to_string(facts_of(*mobility.scale).highest);
}

bool looked_and_found_nothing(const Turn& turn) {
  const bool found = std::any_of(turn.feet.begin(), turn.feet.end(),
                                 [](const FootCall& call) { return !call.findings.empty(); });
  const bool looked = std::any_of(turn.feet.begin(), turn.feet.end(), [](const FootCall& call) {
    return call.state == FootState::nothing_found;
  });
  return looked && !found;
}

std::optional<Day> as_bad_before(const Situation& situation) {
  std::optional<Day> latest;
  for (const TurnRow& row : situation.past.rows.turns) {
    const int days = situation.today - row.day;
    const bool same_story =
        days > 0 && days <= same_story_days && row.mobility_scale == situation.turn.mobility.scale;
    if (same_story && is_worst(row.mobility_scale, row.mobility_score)) {
      latest = latest ? std::max(*latest, row.day) : row.day;
    }
  }
  return latest;
}

bool is_early_look(const Action& action, Day today) {
  const bool looks =
      action.kind == ActionKind::see_again || action.kind == ActionKind::watch_her_walk;
  const std::optional<Day> when = day_meant(action.when, today);
  return looks && when && *when - today <= early_look_days;
}

bool early_look_said(const Situation& situation) {
  const auto in = [&](const std::vector<Action>& actions) {
    return std::any_of(actions.begin(), actions.end(), [&](const Action& action) {
      return is_early_look(action, situation.today);
    });
  };
  const Turn& turn = situation.turn;
  return in(turn.actions) || std::any_of(turn.feet.begin(), turn.feet.end(),
                                         [&](const FootCall& call) { return in(call.actions); });
}

Firing about_her_walk(std::string words, std::vector<std::string> answers) {
  Firing firing;
  firing.warning.words = std::move(words);
  firing.warning.answers = std::move(answers);
  firing.causes = {{std::nullopt, About::how_she_walks}};
  return firing;
}

}  // namespace

bool walks_worst(const Situation& situation) {
  const Turn& turn = situation.turn;
  const bool let_out = situation.finished && turn.end == TurnEnd::done;
  return let_out && is_worst(turn.mobility.scale, turn.mobility.score);
}

std::vector<Firing> worst_walk_needs_the_vet(const Situation& situation) {
  const Turn& turn = situation.turn;
  if (!walks_worst(situation) || vet_called(turn)) return {};
  const std::vector<std::string> answers = vet_or_go_ahead(std::nullopt, situation.language);
  if (looked_and_found_nothing(turn)) {
    Firing firing = about_her_walk(walks(turn.mobility) + ", and no cause found: vet.", answers);
    for (const Foot foot : all_feet) firing.causes.push_back({foot, About::finding});
    return {firing};
  }
  for (const FootCall& call : turn.feet) {
    const bool swollen = std::any_of(call.findings.begin(), call.findings.end(),
                                     [](const Finding& each) { return each.lesion == Lesion::sw; });
    if (!swollen) continue;
    Firing firing = about_her_walk(
        walks(turn.mobility) + ", and " + std::string(spoken(call.foot)) + " is swollen: vet.",
        answers);
    firing.causes.push_back({call.foot, About::deep_infection});
    return {firing};
  }
  if (const std::optional<Day> before = as_bad_before(situation)) {
    return {about_her_walk(
        walks(turn.mobility) + ", no better than on " + spoken(*before) + ": vet.", answers)};
  }
  return {};
}

std::vector<Firing> worst_walk_nursing(const Situation& situation) {
  if (!walks_worst(situation)) return {};
  const Turn& turn = situation.turn;
  const Language& language = situation.language;
  const bool nursed =
      was_called(turn, ActionKind::to_straw) || was_called(turn, ActionKind::near_parlour);
  const bool looked_at_soon = early_look_said(situation);
  if (nursed && looked_at_soon) return {};
  std::vector<std::string> answers;
  if (looked_at_soon) {
    answers = {offered_act(std::nullopt, ActionKind::to_straw, Claw::none, language),
               offered_act(std::nullopt, ActionKind::near_parlour, Claw::none, language)};
  }
  answers.push_back(offered_go_ahead(language));
  const std::string nursing = nursed ? "" : " straw, or near the parlour";
  const std::string look = looked_at_soon ? "" : " a look within a week";
  const std::string both = nursing.empty() || look.empty() ? "" : ", and";
  return {about_her_walk(walks(turn.mobility) + ':' + nursing + both + look + '?', answers)};
}

}  // namespace evenclaw
