#include "core/sheets/left_for_vet.hpp"

#include <algorithm>

#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/vet_stops.hpp"

namespace evenclaw {

namespace {

void add_new(std::vector<Saying>& all, Saying saying) {
  if (std::find(all.begin(), all.end(), saying) == all.end()) all.push_back(saying);
}

}  // namespace

std::vector<std::string> left_for_vet(const VisitView& view, const CowSeen& cow,
                                      std::optional<Foot> foot) {
  std::vector<Saying> sayings;
  for (const SignOfHer& sign : signs_of_her(cow)) {
    const bool is_elsewhere = foot && sign.foot && sign.foot != foot;
    if (sign.sign->until_then && !is_elsewhere) add_new(sayings, *sign.sign->until_then);
  }
  for (const Foot one : all_feet) {
    if (foot && one != *foot) continue;
    if (!short_toes_on(view, cow, one).empty()) add_new(sayings, Saying::nothing_off_toe);
  }
  std::vector<std::string> words;
  words.reserve(sayings.size());
  for (const Saying saying : sayings) words.push_back(view.wording.say(saying));
  return words;
}

}  // namespace evenclaw
