// One lesion at one place that was called in two ways: raw and chronic, slight and bad.
#include <string>
#include <utility>

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

/// Stage or degree as it is said on the call line.
std::string way_of(const Finding& finding, bool in_stage) {
  return std::string(in_stage ? word_of(finding.stage) : word_of(finding.degree));
}

std::string taking_back(const FootCall& call, const Finding& finding, bool in_stage) {
  std::string words = std::string(word_of(call.foot)) + " no, no ";
  const std::string_view claw = spoken(finding.claw);
  if (finding.claw != Claw::both && !claw.empty()) words += std::string(claw) + ' ';
  return words + std::string(word_of(finding.lesion)) + ' ' + way_of(finding, in_stage);
}

Firing asked(const FootCall& call, const Finding& first, const Finding& second) {
  const bool in_stage = differ_in_stage(first, second);
  Firing firing;
  firing.warning.foot = call.foot;
  firing.warning.claw = second.claw;
  firing.warning.words = sentence(std::string(spoken(call.foot))) + ", " + spoken_name(second) +
                         ": " + way_of(first, in_stage) + " and " + way_of(second, in_stage) +
                         " at one place. Which holds?";
  firing.warning.answers = {taking_back(call, first, in_stage), taking_back(call, second, in_stage),
                            "go ahead"};
  firing.causes = {{call.foot, About::finding}};
  return firing;
}

bool contradict(const Finding& a, const Finding& b) {
  const bool differ = differ_in_stage(a, b) || differ_in_degree(a, b);
  return a.lesion != Lesion::other && same_spot(a, b) && differ;
}

void add_contradictions(std::vector<Firing>& firings, const FootCall& call) {
  for (auto second = call.findings.begin(); second != call.findings.end(); ++second) {
    for (auto first = call.findings.begin(); first != second; ++first) {
      if (contradict(*first, *second)) firings.push_back(asked(call, *first, *second));
    }
  }
}

}  // namespace

std::vector<Firing> called_in_two_ways(const Situation& situation) {
  std::vector<Firing> firings;
  for (const FootCall& call : situation.turn.feet) add_contradictions(firings, call);
  return firings;
}

}  // namespace evenclaw
