// Checks about where a block goes: never on a claw that hurts, never on both claws of a foot, and
// never on a side that nobody called.
#include <algorithm>
#include <optional>
#include <utility>

#include "core/base/text.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t most_characters = 90;  // of a warning

constexpr Claw single_claws[] = {Claw::outside, Claw::inside};

bool includes(Claw claw, Claw single) {
  return claw == single || claw == Claw::both;
}

std::optional<FixtureStep> block_step(const Action& action) {
  const std::optional<FixtureSaid> said = fixture_said(action.kind);
  if (!said || said->fixture != Fixture::block) return std::nullopt;
  return said->step;
}

bool puts_block_on(const Action& action) {
  const std::optional<FixtureStep> step = block_step(action);
  return step && is_on_after(*step) && *step != FixtureStep::left_on;
}

/// Said of that claw by name; "opened" alone may be of either.
bool was_opened(const FootCall& call, Claw claw) {
  return std::any_of(call.actions.begin(), call.actions.end(), [claw](const Action& action) {
    return action.kind == ActionKind::opened && includes(action.claw, claw);
  });
}

/// The open case of that lesion on the foot is of that claw, and there is no other such case.
bool is_known_of(const Rows& past, const FootCall& call, Lesion lesion, Claw claw) {
  ClawPair claws;
  for (const CaseRow& row : past.cases) {
    const bool is_it = row.foot == call.foot && row.family == facts_of(lesion).family;
    if (is_it && !row.not_found_on) claws.add(row.claw);
  }
  return claws.claw() == claw;
}

/// What hurts on this claw: called of it, or called of no claw where it is known on which it was.
const Finding* painful_on(const Rows& past, const FootCall& call, Claw claw) {
  if (const Finding* called = painful_finding(call, claw)) return called;
  const auto known =
      std::find_if(call.findings.begin(), call.findings.end(), [&](const Finding& finding) {
        return hurts(finding) && finding.claw == Claw::not_called &&
               is_known_of(past, call, finding.lesion, claw);
      });
  return known == call.findings.end() ? nullptr : &*known;
}

bool cannot_bear_a_block(const Rows& past, const FootCall& call, Claw claw) {
  return painful_on(past, call, claw) != nullptr || was_opened(call, claw);
}

/// "Blocked again" is a new block too: where the one before sat does not say where this one goes.
bool is_new_without_claw(const Action& action) {
  return action.kind == ActionKind::block_again && !is_called(action.claw);
}

/// The claws on which the act leaves a block though something hurts there.
std::vector<Claw> painful_claws_under(const Rows& past, const FootCall& call,
                                      const Action& action) {
  const std::optional<FixtureStep> step = block_step(action);
  if (!step || !is_on_after(*step) || is_new_without_claw(action)) return {};
  const Claw meant = claw_meant(past, call, action);
  std::vector<Claw> claws;
  for (const Claw claw : single_claws) {
    if (includes(meant, claw) && cannot_bear_a_block(past, call, claw)) claws.push_back(claw);
  }
  return claws;
}

void with_go_ahead(Warning& warning, std::vector<std::string> others, const Language& language) {
  warning.answers = std::move(others);
  warning.answers.push_back(offered_go_ahead(language));
}

Firing on_painful(const Situation& situation, const FootCall& call, const Action& action,
                  Claw claw) {
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.claw = claw;
  firing.causes = {{call.foot, About::block}};
  const std::string where = std::string(spoken(call.foot)) + ' ' + std::string(spoken(claw));
  const Rows& past = situation.past.rows;
  const Finding* painful = painful_on(past, call, claw);
  const bool is_called_of_it = painful_finding(call, claw) != nullptr;
  const std::string why =
      painful != nullptr ? (is_called_of_it ? "with the " : "that had the ") + spoken_name(*painful)
                         : std::string("that was opened");
  const std::string what = "Block on the claw " + why + " (" + where + ").";
  if (cannot_bear_a_block(past, call, partner(claw))) {
    firing.warning.words =
        sentence(where) + " is blocked: both claws hurt, no good one for a block. Vet?";
    with_go_ahead(firing.warning, {}, situation.language);
    return firing;
  }
  const std::string good(spoken(partner(claw)));
  firing.warning.words = what + ' ' + sentence(good) + " meant?";
  with_go_ahead(firing.warning, claw_correction(situation, call, action, partner(claw)),
                situation.language);
  return firing;
}

void add_painful(std::vector<Firing>& firings, const Situation& situation, const FootCall& call,
                 const Action& action) {
  for (const Claw claw : painful_claws_under(situation.past.rows, call, action)) {
    firings.push_back(on_painful(situation, call, action, claw));
  }
}

std::optional<Day> blocked_since(const Rows& past, Foot foot, Claw claw) {
  for (const OnFootRow& row : fixtures_left(past, foot, Fixture::block)) {
    if (row.ended == FixtureEnd::still_on && includes(row.claw, claw)) return row.since;
  }
  return std::nullopt;
}

std::string both_blocked_words(const Rows& past, const FootCall& call) {
  const std::string foot = sentence(std::string(spoken(call.foot)));
  ClawPair put_on;
  for (const Action& action : call.actions) {
    if (puts_block_on(action)) put_on.add(claw_meant(past, call, action));
  }
  for (const Claw claw : single_claws) {
    const std::optional<Day> since = blocked_since(past, call.foot, claw);
    if (!since || put_on.has(claw)) continue;
    return foot + ": both claws blocked (" + std::string(spoken(claw)) + " since " +
           spoken(*since) + "). A block rests one claw.";
  }
  return foot + ": a block on both claws. A block rests one claw only.";
}

std::vector<std::string> old_block_answers(const Rows& past, const FootCall& call,
                                           const Language& language) {
  for (const Claw claw : single_claws) {
    if (!blocked_since(past, call.foot, claw)) continue;
    return {offered_act(call.foot, ActionKind::block_off, claw, language),
            offered_act(call.foot, ActionKind::block_came_off, claw, language)};
  }
  return {};
}

/// Two acts of this turn put a block on one claw each. No word of mouth about one of them mends the
/// other, so this is asked about beside a block on a claw that hurts.
bool is_put_on_twice(const Rows& past, const FootCall& call) {
  const auto on = [&](Claw claw) {
    return std::any_of(call.actions.begin(), call.actions.end(), [&](const Action& action) {
      return puts_block_on(action) && claw_meant(past, call, action) == claw;
    });
  };
  return on(Claw::outside) && on(Claw::inside);
}

bool hurts_under_a_block(const Rows& past, const FootCall& call) {
  return std::any_of(call.actions.begin(), call.actions.end(), [&](const Action& action) {
    return !painful_claws_under(past, call, action).empty();
  });
}

/// Of two blocks put on today, the one on a claw that hurts is the one to take back.
std::vector<std::string> today_block_answers(const Rows& past, const FootCall& call,
                                             const Language& language) {
  std::vector<std::string> answers;
  for (const Action& action : call.actions) {
    const Claw claw = puts_block_on(action) ? claw_meant(past, call, action) : Claw::none;
    if (!is_called(action.claw) || claw == Claw::none || claw == Claw::both) continue;
    const bool is_the_bad_one =
        cannot_bear_a_block(past, call, claw) && !cannot_bear_a_block(past, call, partner(claw));
    if (is_the_bad_one) {
      answers.push_back(offered_taking_back(call.foot, action.kind, claw, language));
    }
  }
  return answers;
}

bool lacks_side(const Rows& past, const FootCall& call, const Action& action) {
  const std::optional<FixtureStep> step = block_step(action);
  if (!step) return false;
  if (is_called(claw_meant(past, call, action)) && !is_new_without_claw(action)) return false;
  switch (*step) {
    case FixtureStep::put_on:
    case FixtureStep::stacked:
    case FixtureStep::renewed:
      return true;
    case FixtureStep::taken_off:
    case FixtureStep::came_off:
      return blocked_before(past, call.foot).both();
    case FixtureStep::left_on:
    case FixtureStep::not_known:
      return false;
  }
  return false;
}

/// The claw a block would go on: the good one beside the one that hurts.
Claw likely_side(const Rows& past, const FootCall& call) {
  const Finding* outside = painful_on(past, call, Claw::outside);
  const Finding* inside = painful_on(past, call, Claw::inside);
  if ((outside == nullptr) == (inside == nullptr)) return Claw::not_called;
  return outside != nullptr ? Claw::inside : Claw::outside;
}

/// What is known of the two claws of the foot: " The sole ulcer is outside."
std::string known_of_the_claws(const Situation& situation, const FootCall& call, Claw likely,
                               const ClawPair& missing) {
  std::string words;
  if (is_called(likely)) {
    const Claw sick = partner(likely);
    words = " The " + spoken_name(*painful_on(situation.past.rows, call, sick)) + " is " +
            std::string(spoken(sick));
  }
  const Claw gone = missing.claw();
  if (gone == Claw::outside || gone == Claw::inside) {
    const std::string which(spoken(gone));
    words += (words.empty() ? " " + sentence(which) : "; " + which) + " is missing";
  }
  return words.empty() ? words : words + '.';
}

struct Sides {
  Claw likely;
  ClawPair missing;
};

/// A claw that is missing is not offered, and beside one that hurts no block is left to offer.
std::vector<std::string> side_answers(const FootCall& call, const Action& action,
                                      const Sides& sides, const Language& language) {
  if (is_called(sides.likely) && sides.missing.has(sides.likely)) {
    return {offered_taking_back(call.foot, action.kind, Claw::none, language)};
  }
  std::vector<std::string> answers;
  const Claw first = is_called(sides.likely) ? sides.likely : Claw::inside;
  for (const Claw claw : {first, partner(first)}) {
    if (sides.missing.has(claw)) continue;
    answers.push_back(offered_act(call.foot, action.kind, claw, language));
  }
  return answers;
}

/// Said again with the side, an act is completed and not doubled.
Firing side_asked(const Situation& situation, const FootCall& call, const Action& action) {
  const Language& language = situation.language;
  const ClawPair missing = missing_claws(situation, call);
  const Claw likely = likely_side(situation.past.rows, call);
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.claw = Claw::not_called;
  firing.causes = {{call.foot, About::block}};
  const std::string asked = sentence(std::string(spoken(call.foot))) + ": " +
                            offered_act({}, action.kind, Claw::none, language) + ", which claw?";
  firing.warning.words = asked + known_of_the_claws(situation, call, likely, missing);
  if (character_count(firing.warning.words) > most_characters) {
    firing.warning.words = asked + known_of_the_claws(situation, call, Claw::not_called, missing);
  }
  with_go_ahead(firing.warning, side_answers(call, action, {likely, missing}, language), language);
  return firing;
}

/// It would hurt if it is bad, and nobody said how bad it is.
const Finding* perhaps_painful_on(const FootCall& call, Claw claw) {
  const auto found =
      std::find_if(call.findings.begin(), call.findings.end(), [&](const Finding& finding) {
        return facts_of(finding.lesion).hurts == Hurts::when_bad &&
               finding.degree == Degree::not_called && includes(finding.claw, claw);
      });
  return found == call.findings.end() ? nullptr : &*found;
}

Firing how_bad_asked(const FootCall& call, const Finding& finding, Claw claw,
                     const Language& language) {
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.claw = claw;
  firing.causes = {{call.foot, About::block}};
  firing.warning.words = "Block on " + std::string(spoken(call.foot)) + ' ' +
                         std::string(spoken(claw)) + ", over the " + spoken_name(finding) +
                         ": how bad is that?";
  const std::string again = offered_finding(call.foot, finding.claw, finding.lesion, language);
  std::vector<std::string> answers;
  for (const Degree degree : {Degree::slight, Degree::bad}) {
    answers.push_back(again + ' ' + std::string(language.say(TermKind::degree, degree)));
  }
  with_go_ahead(firing.warning, std::move(answers), language);
  return firing;
}

void ask_how_bad(std::vector<Firing>& firings, const Situation& situation, const FootCall& call,
                 const Action& action) {
  if (!puts_block_on(action)) return;
  for (const Claw claw : single_claws) {
    const Finding* finding = includes(action.claw, claw) ? perhaps_painful_on(call, claw) : nullptr;
    if (finding != nullptr) {
      firings.push_back(how_bad_asked(call, *finding, claw, situation.language));
    }
  }
}

}  // namespace

std::vector<Firing> block_over_what_may_hurt(const Situation& situation) {
  std::vector<Firing> firings;
  if (!situation.finished) return firings;
  for (const FootCall& call : situation.turn.feet) {
    for (const Action& action : call.actions) ask_how_bad(firings, situation, call, action);
  }
  return firings;
}

std::vector<Firing> block_on_painful_claw(const Situation& situation) {
  std::vector<Firing> firings;
  for (const FootCall& call : situation.turn.feet) {
    for (const Action& action : call.actions) add_painful(firings, situation, call, action);
  }
  return firings;
}

std::vector<Firing> both_claws_blocked(const Situation& situation) {
  std::vector<Firing> firings;
  const Rows& past = situation.past.rows;
  for (const FootCall& call : situation.turn.feet) {
    const bool puts_one_on = std::any_of(call.actions.begin(), call.actions.end(), puts_block_on);
    if (!puts_one_on || !blocked_after(past, call).both()) continue;
    Firing firing;
    firing.warning.foot = call.foot;
    firing.warning.claw = Claw::both;
    firing.warning.words = both_blocked_words(past, call);
    const bool is_of_today = is_put_on_twice(past, call);
    with_go_ahead(firing.warning,
                  is_of_today ? today_block_answers(past, call, situation.language)
                              : old_block_answers(past, call, situation.language),
                  situation.language);
    const bool is_of_its_own = is_of_today && hurts_under_a_block(past, call);
    if (!is_of_its_own) firing.causes = {{call.foot, About::block}};
    if (!is_of_today) firing.causes.push_back({call.foot, About::old_block});
    firings.push_back(std::move(firing));
  }
  return firings;
}

std::vector<Firing> block_side_not_called(const Situation& situation) {
  std::vector<Firing> firings;
  for (const FootCall& call : situation.turn.feet) {
    for (const Action& action : call.actions) {
      if (!lacks_side(situation.past.rows, call, action)) continue;
      firings.push_back(side_asked(situation, call, action));
    }
  }
  return firings;
}

}  // namespace evenclaw
