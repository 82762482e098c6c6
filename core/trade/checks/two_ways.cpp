// One lesion at one place that was called in two ways: raw and chronic, slight and bad.
#include <string>
#include <utility>

#include "core/trade/call_line/offered.hpp"
#include "core/trade/checks/situation.hpp"
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

}  // namespace

std::vector<Firing> called_in_two_ways(const Situation& situation) {
  std::vector<Firing> firings;
  for (const FootCall& call : situation.turn.feet) {
    add_contradictions(firings, call, situation.language);
  }
  return firings;
}

}  // namespace evenclaw
