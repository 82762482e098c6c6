#include "core/sheets/who_has_her.hpp"

#include "core/trade/after_leaving.hpp"

namespace evenclaw {

std::string who_has_her(const CowRow& left, const VisitView& view) {
  const Wording& wording = view.wording;
  const std::string date = wording.date(*left.left_on, view.input.printed);
  switch (way_left(left.left_words)) {
    case LeavingWay::sold:
      return wording.say(Saying::tell_the_buyer, {{"date", date}});
    case LeavingWay::slaughtered:
      return wording.say(Saying::tell_the_slaughterhouse, {{"date", date}});
    case LeavingWay::not_told:
    case LeavingWay::died:
      return wording.say(Saying::tell_who_has_her, {{"date", date}});
  }
  return {};
}

std::string who_has_her_and_authority(const CowRow& left, const VisitView& view) {
  const Wording& wording = view.wording;
  if (way_left(left.left_words) == LeavingWay::died) {
    return wording.say(BoxSaying::tell_authority,
                       {{"date", wording.date(*left.left_on, view.input.printed)}});
  }
  return wording.say(BoxSaying::and_the_authority, {{"what", who_has_her(left, view)}});
}

}  // namespace evenclaw
