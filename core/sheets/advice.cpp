#include "core/sheets/advice.hpp"

#include <algorithm>

namespace evenclaw {

namespace {

/// What is on the cows of this day, or still to come off others.
struct Reasons {
  bool wraps = false;
  bool blocks = false;
  bool found = false;
  bool lame = false;
};

Reasons reasons_of(const VisitView& view) {
  Reasons reasons;
  for (const CowSeen& cow : view.cows) {
    for (const OnFootRow* row : cow.on_feet) {
      (row->fixture == Fixture::wrap ? reasons.wraps : reasons.blocks) = true;
    }
    if (!cow.findings.empty()) reasons.found = true;
    if (cow.came_lame) reasons.lame = true;
  }
  for (const TaskRow* task : view.tasks) {
    if (task->kind == TaskKind::wrap_off) reasons.wraps = true;
    if (task->kind == TaskKind::block_off || task->kind == TaskKind::block_check) {
      reasons.blocks = true;
    }
  }
  return reasons;
}

}  // namespace

std::vector<Block> when_to_ring(const VisitView& view) {
  const Wording& wording = view.wording;
  const Reasons reasons = reasons_of(view);
  Bullets when;
  const auto add = [&](Saying saying) { when.items.push_back({plain(wording.say(saying))}); };
  if (reasons.blocks) add(Saying::ring_block);
  if (reasons.wraps) add(Saying::ring_wrap);
  if (reasons.found) add(Saying::ring_found);
  if (when.items.empty()) add(Saying::ring_anything);
  const std::string& whom = view.input.whom_to_ring;
  Block by_name = Blank{wording.say(Saying::ring_whom)};
  if (!whom.empty()) by_name = Paragraph{{strong(whom)}};
  return {Heading{2, wording.say(Saying::ring_title)}, std::move(by_name), std::move(when),
          Paragraph{{strong(wording.say(Saying::ring_vet)),
                     quiet(' ' + wording.say(Saying::status_practice))}}};
}

std::vector<Block> cautions(const VisitView& view) {
  const Wording& wording = view.wording;
  const Reasons reasons = reasons_of(view);
  Bullets care;
  const auto add = [&](Saying saying, Saying status) {
    care.items.push_back({plain(wording.say(saying) + ' '), quiet(wording.say(status))});
  };
  if (reasons.wraps) add(Saying::caution_wrap, Saying::status_practice);
  if (reasons.blocks) add(Saying::caution_block, Saying::status_block);
  if (reasons.lame) add(Saying::caution_lame, Saying::status_lame);
  add(Saying::caution_medicine, Saying::status_law);
  return {Heading{2, wording.say(Saying::cautions_title)}, std::move(care)};
}

}  // namespace evenclaw
