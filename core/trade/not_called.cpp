#include "core/trade/not_called.hpp"

namespace evenclaw {

namespace {

bool name_says_where(Lesion lesion) {
  switch (lesion) {
    case Lesion::id:
    case Lesion::hhe:
    case Lesion::bu:
    case Lesion::tu:
    case Lesion::ip:
    case Lesion::ih:
    case Lesion::ds:
    case Lesion::other:
      return true;
    case Lesion::dd:
    case Lesion::sh:
    case Lesion::u:
    case Lesion::su:
    case Lesion::wl:
    case Lesion::wlf:
    case Lesion::wla:
    case Lesion::ts:
      return false;
  }
  return false;
}

}  // namespace

bool place_is_missing(const Finding& finding) {
  return finding.place == Place::not_called && !name_says_where(finding.lesion);
}

bool claw_is_missing(const Finding& finding) {
  return finding.claw == Claw::not_called && finding.lesion != Lesion::hhe &&
         facts_of(finding.lesion).kept_on == KeptOn::claw;
}

}  // namespace evenclaw
