// What is seen in the crush and is beyond trimming: the vet comes before more is cut.
#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

#include "core/trade/call_line/known_of_her.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/checks/situation.hpp"
#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

Firing vet_for_foot(const Situation& situation, const FootCall& call, Claw claw, About about) {
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.claw = claw;
  firing.warning.answers = vet_or_go_ahead(call.foot, situation.language);
  firing.causes = {{call.foot, about}};
  return firing;
}

Firing vet_for_her(const Situation& situation, std::string words, About about) {
  Firing firing;
  firing.warning.words = std::move(words);
  firing.warning.answers = vet_or_go_ahead(std::nullopt, situation.language);
  firing.causes = {{std::nullopt, about}};
  return firing;
}

/// Above one of the two claws, be it said which or only that.
bool is_one_sided(const Finding& finding, const Situation& situation) {
  if (finding.lesion != Lesion::sw || finding.claw == Claw::both) return false;
  return is_called(finding.claw) ||
         holds_phrase(finding.words, TermKind::one_side, 0, situation.language);
}

/// "Lay down in the crush" holds "down in the crush", and is another thing.
bool is_why_let_out(const Turn& turn, ActionKind kind, const Language& language) {
  const std::vector<Token> tokens = spoken_tokens(turn.end_reason, language);
  for (std::size_t at = 0; at < tokens.size();) {
    const Language::Match match = language.longest_match(tokens, at);
    const bool is_it = match.phrase != nullptr && match.phrase->kind == TermKind::plain_act &&
                       static_cast<ActionKind>(match.phrase->value) == kind;
    if (is_it) return true;
    at += std::max<std::size_t>(match.word_count, 1);
  }
  return false;
}

/// For each act of that kind one warning: `before`, where it is, `after`.
std::vector<Firing> for_each_sign(const Situation& situation, ActionKind sign, About about,
                                  const std::string& before, const std::string& after) {
  std::vector<Firing> firings;
  if (vet_called(situation.turn)) return firings;
  for (const FootCall& call : situation.turn.feet) {
    const auto seen = std::find_if(call.actions.begin(), call.actions.end(),
                                   [sign](const Action& action) { return action.kind == sign; });
    if (seen == call.actions.end() || vet_had_a_hand_in(call)) continue;
    Firing firing = vet_for_foot(situation, call, seen->claw, about);
    firing.warning.words = before + " (" + spoken_where(call.foot, seen->claw) + "): " + after;
    firings.push_back(std::move(firing));
  }
  return firings;
}

/// For the first finding of each foot that is meant.
std::vector<Firing> for_findings(const Situation& situation, auto&& is_meant,
                                 const std::string& before, const std::string& after) {
  std::vector<Firing> firings;
  if (vet_called(situation.turn)) return firings;
  for (const FootCall& call : situation.turn.feet) {
    const auto found = std::find_if(call.findings.begin(), call.findings.end(), is_meant);
    if (found == call.findings.end() || vet_had_a_hand_in(call)) continue;
    Firing firing = vet_for_foot(situation, call, found->claw, About::deep_infection);
    firing.warning.words = before + " (" + spoken_where(call.foot, found->claw) + "): " + after;
    firings.push_back(std::move(firing));
  }
  return firings;
}

Firing side_asked(Foot foot, Lesion lesion, const Language& language) {
  Firing firing;
  firing.warning.foot = foot;
  firing.warning.words =
      "Swollen on one side (" + std::string(spoken(foot)) + "): above which claw?";
  firing.warning.answers = {offered_finding(foot, Claw::outside, lesion, language),
                            offered_finding(foot, Claw::inside, lesion, language)};
  firing.causes = {{foot, About::finding}};
  return firing;
}

}  // namespace

std::vector<Firing> pus_above_the_horn(const Situation& situation) {
  return for_each_sign(situation, ActionKind::pus_above, About::deep_infection,
                       "Pus above the coronet", "the joint may be reached. Vet.");
}

std::vector<Firing> toe_or_bone(const Situation& situation) {
  std::vector<Firing> firings =
      for_each_sign(situation, ActionKind::bone_showing, About::deep_infection, "Bone showing",
                    "cut no further. Vet.");
  for (Firing& firing : for_findings(
           situation, [](const Finding& finding) { return finding.lesion == Lesion::tn; },
           "Toe necrosis", "often beyond trimming. Vet.")) {
    const bool bone_shows = std::any_of(firings.begin(), firings.end(), [&](const Firing& other) {
      return other.warning.foot == firing.warning.foot;
    });
    if (!bone_shows) firings.push_back(std::move(firing));
  }
  return firings;
}

std::vector<Firing> swollen_on_one_side(const Situation& situation) {
  return for_findings(
      situation, [&](const Finding& finding) { return is_one_sided(finding, situation); },
      "Swollen above one claw", "the joint may be reached. Vet.");
}

std::vector<Firing> swelling_side_not_called(const Situation& situation) {
  std::vector<Firing> firings;
  for (const FootCall& call : situation.turn.feet) {
    for (const Finding& finding : call.findings) {
      if (!is_one_sided(finding, situation) || is_called(finding.claw)) continue;
      firings.push_back(side_asked(call.foot, finding.lesion, situation.language));
    }
  }
  return firings;
}

std::vector<Firing> bleeding_goes_on(const Situation& situation) {
  return for_each_sign(situation, ActionKind::bleeding, About::bleeding, "Bleeding does not stop",
                       "stop cutting, press on it. Vet.");
}

std::vector<Firing> down_in_the_crush(const Situation& situation) {
  const Turn& turn = situation.turn;
  const bool is_down = was_called(turn, ActionKind::went_down) ||
                       is_why_let_out(turn, ActionKind::went_down, situation.language);
  if (!is_down || vet_called(turn)) return {};
  return {vet_for_her(situation, "Went down in the crush: free her and cut no more today. Vet.",
                      About::fall)};
}

std::vector<Firing> lame_on_two_legs(const Situation& situation) {
  const Turn& turn = situation.turn;
  if (!situation.finished || turn.lame.count() < 2 || vet_called(turn)) return {};
  return {vet_for_her(situation,
                      "Lame on " + spoken(turn.lame) + ": more than claws may be wrong. Vet.",
                      About::how_she_walks)};
}

}  // namespace evenclaw
