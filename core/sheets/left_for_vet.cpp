#include "core/sheets/left_for_vet.hpp"

#include <algorithm>

#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/vet_stops.hpp"

namespace evenclaw {

namespace {

void add_new(std::vector<Saying>& all, Saying saying) {
  if (std::find(all.begin(), all.end(), saying) == all.end()) all.push_back(saying);
}

std::vector<std::string> words_of(const std::vector<Saying>& sayings, const Wording& wording) {
  std::vector<std::string> words;
  words.reserve(sayings.size());
  for (const Saying saying : sayings) words.push_back(wording.say(saying));
  return words;
}

/// Nothing of what is over by the next visit.
std::optional<Saying> left_of(const EarlierStop& stop) {
  for (const SignForVet& sign : signs_for_vet()) {
    const bool lasts = sign.urgency != VetUrgency::at_once && !sign.check.empty();
    if (lasts && sign.check == stop.warning.rule) return sign.until_then;
  }
  return std::nullopt;
}

bool is_open_of(const VisitView& view, TaskId asked, CowId cow) {
  return std::any_of(view.tasks.begin(), view.tasks.end(),
                     [&](const TaskRow* task) { return task->task == asked && task->cow == cow; });
}

}  // namespace

std::vector<std::string> left_from_before(const VisitView& view, CowId cow,
                                          std::optional<Foot> foot) {
  std::vector<Saying> sayings;
  if (who_left(view, cow) != nullptr) return {};
  const auto is_there = [&](std::optional<Foot> one) { return !foot || !one || one == foot; };
  for (const EarlierStop* stop : open_earlier_stops(view, cow)) {
    const std::optional<Saying> left = left_of(*stop);
    if (left && is_there(stop->warning.foot)) add_new(sayings, *left);
  }
  for (const VetAskedBefore& asked : view.input.vet_asked_before) {
    if (!is_open_of(view, asked.task, cow)) continue;
    for (const LeftAlone& left : asked.left) {
      if (is_there(left.foot)) add_new(sayings, left.saying);
    }
  }
  return words_of(sayings, view.wording);
}

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
  return words_of(sayings, view.wording);
}

}  // namespace evenclaw
