#include "core/sheets/cow_track.hpp"

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/place.hpp"

namespace evenclaw {

namespace {

bool is_shape_of_the_foot(Lesion lesion) {
  const LesionFacts& facts = facts_of(lesion);
  return facts.group == LesionGroup::shape && facts.kept_on == KeptOn::foot;
}

bool is_on_skin(Lesion lesion, Claw claw, Place place) {
  if (facts_of(lesion).group == LesionGroup::shape) return false;
  if (place != Place::not_called) return !facts_of(place).needs_claw;
  return claw == Claw::none ||
         (claw == Claw::not_called && facts_of(lesion).kept_on != KeptOn::claw);
}

void add_skin(FootMark& mark, Place place) {
  if (place == Place::between) {
    mark.skin_between = true;
  } else if (place == Place::in_front) {
    mark.skin_in_front = true;
  } else {
    mark.skin_behind = true;
  }
}

void add_finding(FootMark& mark, const FindingRow& row) {
  if (is_on_skin(row.lesion, row.claw, row.place)) {
    add_skin(mark, row.place);
    return;
  }
  const bool on_both = row.claw == Claw::both || is_shape_of_the_foot(row.lesion);
  if (row.claw == Claw::outside || on_both) mark.outside.found = true;
  if (row.claw == Claw::inside || on_both) mark.inside.found = true;
  if (on_both) return;
  if (row.claw == Claw::not_called || row.claw == Claw::none) {
    mark.outside.may_be_here = true;
    mark.inside.may_be_here = true;
  }
}

/// Where no claw was called it is above the horn, or between: drawn on the skin.
void add_seen(FootMark& mark, const ActionRow& row) {
  const bool on_both = row.claw == Claw::both;
  if (row.claw == Claw::outside || on_both) mark.outside.found = true;
  if (row.claw == Claw::inside || on_both) mark.inside.found = true;
  if (!is_called(row.claw)) add_skin(mark, Place::in_front);
}

void add_earlier(FootMark& mark, const CaseRow& row) {
  if (is_on_skin(row.lesion, row.claw, row.place)) {
    ++mark.skin_earlier;
    return;
  }
  if (row.claw == Claw::outside || row.claw == Claw::both) ++mark.outside.earlier;
  if (row.claw == Claw::inside || row.claw == Claw::both) ++mark.inside.earlier;
  if (row.claw == Claw::not_called || row.claw == Claw::none) ++mark.skin_earlier;
}

/// What is known to be on hides what may be.
void add_fitted(Fitted& shown, bool in_doubt) {
  if (shown != Fitted::yes) shown = in_doubt ? Fitted::in_doubt : Fitted::yes;
}

void add_fixture(FootMark& mark, const OnFootRow& row, bool in_doubt) {
  switch (row.fixture) {
    case Fixture::wrap:
      add_fitted(mark.wrap, in_doubt);
      break;
    case Fixture::block:
      if (row.claw != Claw::inside)
        add_fitted(mark.outside.block, in_doubt || !is_called(row.claw));
      if (row.claw != Claw::outside)
        add_fitted(mark.inside.block, in_doubt || !is_called(row.claw));
      break;
  }
}

}  // namespace

Track track_of(const CowSeen& cow, Day visit_day, const FootSet& todays_feet) {
  Track track;
  for (const Foot foot : all_feet) {
    FootMark& mark = mark_of(track, foot);
    mark.state = state_of(cow, foot);
    mark.todays = todays_feet.has(foot) || is_spoken_of(cow, foot);
  }
  for (const FindingRow* row : cow.findings) add_finding(mark_of(track, row->foot), *row);
  for (const ActionRow* row : cow.actions) {
    const bool is_seen = row->foot && is_found_on_foot(row->action);
    if (is_seen) add_seen(mark_of(track, *row->foot), *row);
  }
  for (const CaseRow* row : cow.cases) {
    if (row->first_day < visit_day) add_earlier(mark_of(track, row->foot), *row);
  }
  for (const OnFootRow* row : cow.on_feet) {
    add_fixture(mark_of(track, row->foot), *row, is_on_in_doubt(*row, &cow, visit_day));
  }
  return track;
}

}  // namespace evenclaw
