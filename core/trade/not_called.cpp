#include "core/trade/not_called.hpp"

namespace evenclaw {

namespace {

bool name_says_where(Lesion lesion) {
  switch (lesion) {
    case Lesion::id:
    case Lesion::hhe:
    case Lesion::bu:
    case Lesion::tu:
    case Lesion::tn:
    case Lesion::ip:
    case Lesion::ih:
    case Lesion::ds:
    case Lesion::ts:
    case Lesion::hfa:
    case Lesion::hfh:
    case Lesion::hfv:
    case Lesion::ac:
    case Lesion::cd:
    case Lesion::cc:
    case Lesion::sc:
    case Lesion::overgrown:
    case Lesion::foreign_body:
    case Lesion::injury:
    case Lesion::dewclaw:
    case Lesion::blood_drawn:
    case Lesion::unclear:
    case Lesion::other:
      return true;
    case Lesion::dd:
    case Lesion::sh:
    case Lesion::shd:
    case Lesion::shc:
    case Lesion::u:
    case Lesion::su:
    case Lesion::wl:
    case Lesion::wlf:
    case Lesion::wla:
    case Lesion::hf:
    case Lesion::sw:
      return false;
  }
  return false;
}

bool degree_is_news(Lesion lesion) {
  const LesionFacts& facts = facts_of(lesion);
  return facts.group != LesionGroup::shape && facts.code_known != CodeKnown::none;
}

}  // namespace

bool place_is_missing(const Finding& finding) {
  return finding.place == Place::not_called && !name_says_where(finding.lesion);
}

bool claw_is_missing(const Finding& finding) {
  return finding.claw == Claw::not_called && finding.lesion != Lesion::hhe &&
         facts_of(finding.lesion).kept_on == KeptOn::claw;
}

bool degree_is_missing(const Finding& finding) {
  return finding.degree == Degree::not_called && finding.lesion != Lesion::dd &&
         degree_is_news(finding.lesion);
}

bool is_only_named(const FootCall& call) {
  return call.state == FootState::unsaid && call.findings.empty() && call.actions.empty() &&
         call.measures.empty() && call.note.empty();
}

bool stage_is_missing(const Finding& finding) {
  return finding.stage == DdStage::not_called && finding.lesion == Lesion::dd;
}

}  // namespace evenclaw
