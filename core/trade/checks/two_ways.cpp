// One thing that was called in two ways: raw and chronic, slight and bad, off and still on, one
// length of a claw and another, sound and lame, a withdrawal and none.
#include <algorithm>
#include <optional>
#include <string>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/handling.hpp"
#include "core/trade/lame_score.hpp"
#include "core/trade/medicine_use.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

bool same_spot(const Finding& a, const Finding& b) {
  return a.lesion == b.lesion && a.claw == b.claw && a.place == b.place && a.zone == b.zone &&
         a.words == b.words;
}

bool differ_in_stage(const Finding& a, const Finding& b) {
  const bool both = a.stage != DdStage::not_called && b.stage != DdStage::not_called;
  return both && a.stage != b.stage;
}

bool differ_in_degree(const Finding& a, const Finding& b) {
  const bool both = a.degree != Degree::not_called && b.degree != Degree::not_called;
  return both && a.degree != b.degree;
}

std::string way_of(const Finding& finding, bool in_stage) {
  return std::string(in_stage ? word_of(finding.stage) : word_of(finding.degree));
}

/// The place is the same in both, and what differs is enough to tell them apart.
std::string taking_back(const FootCall& call, const Finding& finding, bool in_stage,
                        const Language& language) {
  Finding wrong;
  wrong.lesion = finding.lesion;
  if (finding.claw != Claw::both) wrong.claw = finding.claw;
  if (in_stage) wrong.stage = finding.stage;
  if (!in_stage) wrong.degree = finding.degree;
  return offered_taking_back(call.foot, wrong, language);
}

Firing asked(const FootCall& call, const Finding& first, const Finding& second,
             const Language& language) {
  const bool in_stage = differ_in_stage(first, second);
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.claw = second.claw;
  firing.warning.words = sentence(std::string(spoken(call.foot))) + ", " + spoken_name(second) +
                         ": " + way_of(first, in_stage) + " and " + way_of(second, in_stage) +
                         " at one place. Which holds?";
  firing.warning.answers = {taking_back(call, first, in_stage, language),
                            taking_back(call, second, in_stage, language),
                            offered_go_ahead(language)};
  firing.causes = {{call.foot, About::finding}};
  return firing;
}

bool contradict(const Finding& a, const Finding& b) {
  const bool differ = differ_in_stage(a, b) || differ_in_degree(a, b);
  return !is_named_by_words(a.lesion) && same_spot(a, b) && differ;
}

void add_contradictions(std::vector<Firing>& firings, const FootCall& call,
                        const Language& language) {
  for (auto second = call.findings.begin(); second != call.findings.end(); ++second) {
    for (auto first = call.findings.begin(); first != second; ++first) {
      if (!contradict(*first, *second)) continue;
      firings.push_back(asked(call, *first, *second, language));
    }
  }
}

std::string at(Foot foot, Claw claw) {
  return sentence(spoken_where(foot, claw)) + ": ";
}

Firing asked_on(Foot foot, Claw claw, std::string words, Cause cause) {
  Firing firing;
  firing.warning.foot = foot;
  firing.warning.claw = claw;
  firing.warning.words = std::move(words);
  firing.causes = {cause};
  return firing;
}

/// "Block taken off; block still on". One taken off and a new one put on is no contradiction.
bool off_and_on(const Action& off, const Action& on) {
  const std::optional<FixtureSaid> first = fixture_said(off.kind);
  const std::optional<FixtureSaid> second = fixture_said(on.kind);
  return first && second && first->fixture == second->fixture && is_off_after(first->step) &&
         second->step == FixtureStep::left_on && claws_agree(off.claw, on.claw);
}

/// It carried one from before that is meant by "off": the claws agree, and nothing said before that
/// was the end of it.
bool is_of_an_older_one(const Action& off, const FootCall& call, const Rows& past) {
  const std::optional<FixtureSaid> said = fixture_said(off.kind);
  const std::vector<OnFootRow> left = fixtures_left(past, call.foot, said->fixture);
  return std::any_of(left.begin(), left.end(), [&](const OnFootRow& older) {
    const auto ends_it = [&](const Action& act) {
      const std::optional<FixtureSaid> told = fixture_said(act.kind);
      return told && told->fixture == said->fixture && is_off_after(told->step) &&
             claws_agree(act.claw, older.claw);
    };
    return claws_agree(off.claw, older.claw) && std::none_of(call.actions.data(), &off, ends_it);
  });
}

/// "Wrap on", and behind it "wrap off", where none from before is meant: not one for another.
bool on_and_off_again(const Action& off, const Action& on, const Situation& situation,
                      const FootCall& call) {
  const std::optional<FixtureSaid> first = fixture_said(on.kind);
  const std::optional<FixtureSaid> second = fixture_said(off.kind);
  const bool is_said_later = &on < &off;
  return first && second && first->fixture == second->fixture && is_said_later &&
         first->step == FixtureStep::put_on && is_off_after(second->step) &&
         claws_agree(off.claw, on.claw) && !is_of_an_older_one(off, call, situation.past.rows);
}

void add_off_and_on(std::vector<Firing>& firings, const FootCall& call,
                    const Situation& situation) {
  const Language& language = situation.language;
  for (const Action& off : call.actions) {
    const auto on =
        std::find_if(call.actions.begin(), call.actions.end(), [&](const Action& action) {
          return off_and_on(off, action) || on_and_off_again(off, action, situation, call);
        });
    if (on == call.actions.end()) continue;
    const Fixture fixture = fixture_said(off.kind)->fixture;
    const bool is_new = fixture_said(on->kind)->step == FixtureStep::put_on;
    Firing firing =
        asked_on(call.foot, on->claw,
                 at(call.foot, on->claw) + std::string(name_of(fixture)) +
                     (is_new ? " put on and off. Which holds?" : " off and still on. Which holds?"),
                 {call.foot, about(fixture)});
    firing.warning.answers = {offered_taking_back(call.foot, off.kind, off.claw, language),
                              offered_taking_back(call.foot, on->kind, on->claw, language),
                              offered_go_ahead(language)};
    firings.push_back(std::move(firing));
    return;
  }
}

void add_two_lengths(std::vector<Firing>& firings, const FootCall& call, const Language& language) {
  for (auto second = call.measures.begin(); second != call.measures.end(); ++second) {
    const auto first = std::find_if(call.measures.begin(), second, [&](const Measure& measure) {
      return measure.kind == second->kind && measure.claw == second->claw &&
             measure.length != second->length;
    });
    if (first == second) continue;
    Firing firing = asked_on(call.foot, second->claw,
                             at(call.foot, second->claw) + to_text(first->length) + " and " +
                                 to_text(second->length) + " measured. Which holds?",
                             {call.foot, About::measure});
    firing.warning.answers = {offered_taking_back(call.foot, *first, language),
                              offered_taking_back(call.foot, *second, language),
                              offered_go_ahead(language)};
    firings.push_back(std::move(firing));
    return;
  }
}

std::string score_of(const MobilitySaid& said) {
  return "mobility " + std::to_string(*said.score) + " of " +
         std::to_string(facts_of(*said.scale).highest);
}

/// Without a score: she came lame, and walks sound.
void add_lame_and_walks_sound(std::vector<Firing>& firings, const Turn& turn,
                              const Language& language) {
  if (!turn.walks_sound || !came_for(turn, Reason::lame)) return;
  Firing firing;
  firing.warning.words = "Came lame, and walks sound. Which holds?";
  firing.warning.answers = {offered_not_lame(language), offered_lame(turn.lame, language),
                            offered_go_ahead(language)};
  firing.causes = {{std::nullopt, About::how_she_walks}};
  firings.push_back(std::move(firing));
}

void add_sound_and_lame(std::vector<Firing>& firings, const Turn& turn, const Language& language) {
  const bool sound_and_lame = turn.walks_sound && is_lame_score(turn.mobility);
  const bool lame_and_sound = is_best_score(turn.mobility) && came_for(turn, Reason::lame);
  if (!sound_and_lame && !lame_and_sound) return add_lame_and_walks_sound(firings, turn, language);
  Firing firing;
  firing.warning.words = std::string(sound_and_lame ? "Walks sound" : "Came lame") + ", and " +
                         score_of(turn.mobility) + ". Which holds?";
  if (lame_and_sound) firing.warning.answers.push_back(offered_not_lame(language));
  if (sound_and_lame) {
    // Said once more behind "no", the score stands; the best one says that she walks sound.
    firing.warning.answers.push_back(offered_correction(turn.mobility, language));
    firing.warning.answers.push_back(
        offered_correction(best_score_beside(turn.mobility), language));
  }
  firing.warning.answers.push_back(offered_go_ahead(language));
  firing.causes = {{std::nullopt, About::how_she_walks}};
  firings.push_back(std::move(firing));
}

bool tells_an_end(const Action& action) {
  return action.kind == ActionKind::withheld || action.kind == ActionKind::milk_withheld ||
         action.kind == ActionKind::meat_withheld;
}

/// The end that was told of what it was also said of that it has none; nothing when there is none.
/// What is given to her between the two has a withdrawal of its own.
const Action* withheld_and_not(const Turn& turn) {
  const Action* withheld = nullptr;
  bool is_denied = false;
  for (const Action& action : turn.actions) {
    if (is_medicine_act(action.kind) || is_given_unnamed(action.kind)) {
      withheld = nullptr;
      is_denied = false;
    }
    if (tells_an_end(action) && withheld == nullptr) withheld = &action;
    is_denied = is_denied || action.kind == ActionKind::no_withdrawal;
    if (withheld != nullptr && is_denied) return withheld;
  }
  return nullptr;
}

void add_withheld_or_not(std::vector<Firing>& firings, const Turn& turn, const Language& language) {
  const Action* withheld = withheld_and_not(turn);
  if (withheld == nullptr) return;
  Firing firing;
  firing.warning.words = "A withdrawal, and no withdrawal. Which holds?";
  firing.warning.answers = {offered_taking_back(withheld->kind, language),
                            offered_taking_back(ActionKind::no_withdrawal, language),
                            offered_go_ahead(language)};
  firing.causes = {{std::nullopt, About::withdrawal}};
  firings.push_back(std::move(firing));
}

/// "Kicks" and "no longer kicks".
void add_handled_in_two_ways(std::vector<Firing>& firings, const Turn& turn,
                             const Language& language) {
  for (const Action& action : turn.actions) {
    const std::optional<HandlingSaid> does = handling_said(action.kind);
    if (!does || !does->holds) continue;
    const auto ended =
        std::find_if(turn.actions.begin(), turn.actions.end(), [&](const Action& other) {
          return handling_said(other.kind) == HandlingSaid{does->what, false};
        });
    if (ended == turn.actions.end()) continue;
    Firing firing;
    firing.warning.words = sentence(std::string(language.say(TermKind::handling, action.kind))) +
                           ", and " + std::string(language.say(TermKind::handling, ended->kind)) +
                           ". Which holds?";
    firing.warning.answers = {offered_taking_back(action.kind, language),
                              offered_taking_back(ended->kind, language),
                              offered_go_ahead(language)};
    firing.causes = {{std::nullopt, About::handling}};
    firings.push_back(std::move(firing));
    return;
  }
}

}  // namespace

std::vector<Firing> called_in_two_ways(const Situation& situation) {
  std::vector<Firing> firings;
  for (const FootCall& call : situation.turn.feet) {
    add_contradictions(firings, call, situation.language);
    add_off_and_on(firings, call, situation);
    add_two_lengths(firings, call, situation.language);
  }
  add_sound_and_lame(firings, situation.turn, situation.language);
  add_withheld_or_not(firings, situation.turn, situation.language);
  add_handled_in_two_ways(firings, situation.turn, situation.language);
  return firings;
}

}  // namespace evenclaw
