#include "core/trade/visit_work.hpp"

#include <map>
#include <optional>
#include <set>
#include <tuple>
#include <utility>

#include "core/trade/call_line/act_facts.hpp"

namespace evenclaw {

namespace {

using FootOfCow = std::pair<CowId, Foot>;

struct CountedAct {
  ActionKind act;
  Work work;
};

constexpr CountedAct counted_acts[] = {{ActionKind::block_on, Work::block_on},
                                       {ActionKind::block_again, Work::block_again},
                                       {ActionKind::block_stacked, Work::block_stacked},
                                       {ActionKind::block_refitted, Work::block_refitted},
                                       {ActionKind::block_off, Work::block_off},
                                       {ActionKind::wrap_on, Work::wrap_on},
                                       {ActionKind::wrap_off, Work::wrap_off}};

/// Nothing for acts that are not counted by kind; `product` for what is put on or given.
std::optional<Work> work_of(ActionKind action) {
  for (const CountedAct& counted : counted_acts) {
    if (counted.act == action) return counted.work;
  }
  return takes_product(action) ? std::optional(Work::product) : std::nullopt;
}

struct Line {
  Work work;
  ActionKind act;
  std::string product;
  ByWhom by_whom;

  friend bool operator<(const Line& a, const Line& b) {
    return std::tie(a.work, a.act, a.product, a.by_whom) <
           std::tie(b.work, b.act, b.product, b.by_whom);
  }
};

/// What one line counts: the cow, where on her, and which claw.
using Place = std::tuple<CowId, std::optional<Foot>, Claw>;

void add_cows(std::vector<WorkDone>& done, const Rows& rows, VisitId visit) {
  std::set<CowId> in_crush;
  std::set<CowId> finished;
  for (const TurnRow& turn : rows.turns) {
    if (turn.visit != visit || turn.end == TurnEnd::not_done) continue;
    in_crush.insert(turn.cow);
    if (turn.end == TurnEnd::done) finished.insert(turn.cow);
  }
  const auto add = [&](Work work, std::size_t cows) {
    const auto count = static_cast<std::int64_t>(cows);
    if (count > 0) done.push_back({.work = work, .product = {}, .count = count, .cows = count});
  };
  add(Work::cows, in_crush.size());
  add(Work::not_finished, in_crush.size() - finished.size());
}

void add_feet(std::vector<WorkDone>& done, Work work, const std::set<FootOfCow>& feet) {
  if (feet.empty()) return;
  std::set<CowId> cows;
  for (const FootOfCow& foot : feet) cows.insert(foot.first);
  done.push_back({.work = work,
                  .product = {},
                  .count = static_cast<std::int64_t>(feet.size()),
                  .cows = static_cast<std::int64_t>(cows.size())});
}

void add_lifted(std::vector<WorkDone>& done, const Rows& rows, VisitId visit) {
  std::set<FootOfCow> lifted_feet;
  std::set<FootOfCow> not_trimmed;
  for (const TurnRow& turn : rows.turns) {
    if (turn.visit != visit) continue;
    for (const Foot foot : all_feet) {
      if (turn.lifted.has(foot)) lifted_feet.emplace(turn.cow, foot);
    }
  }
  for (const FootRow& row : rows.feet) {
    if (row.visit != visit) continue;
    const bool was_judged =
        row.state == FootState::finding || row.state == FootState::nothing_found;
    if (was_judged) lifted_feet.emplace(row.cow, row.foot);
    if (row.trimmed == Trimmed::no) not_trimmed.emplace(row.cow, row.foot);
  }
  add_feet(done, Work::feet_lifted, lifted_feet);
  add_feet(done, Work::feet_not_trimmed, not_trimmed);
}

/// The claws of an act: two of both, none of their own where a product is of the foot.
std::vector<Claw> claws_of(const ActionRow& row, Work work) {
  if (work == Work::product) return {Claw::none};
  if (row.claw == Claw::both) return {Claw::outside, Claw::inside};
  return {row.claw};
}

/// Of a foot whose claw was called in one turn and not in another it is one and the same.
void leave_out_not_called(std::set<Place>& places) {
  const std::set<Place> all = places;
  for (const auto& [cow, foot, claw] : all) {
    const bool has_called =
        all.count({cow, foot, Claw::outside}) > 0 || all.count({cow, foot, Claw::inside}) > 0;
    if (claw == Claw::not_called && has_called) places.erase({cow, foot, claw});
  }
}

void add_acts(std::vector<WorkDone>& done, const Rows& rows, VisitId visit) {
  std::map<Line, std::set<Place>> places;
  for (const ActionRow& row : rows.actions) {
    const std::optional<Work> work = work_of(row.action);
    if (row.visit != visit || !work) continue;
    const Line line = *work == Work::product
                          ? Line{*work, row.action, row.product, row.by_whom}
                          : Line{*work, ActionKind::opened, {}, ByWhom::not_called};
    for (const Claw claw : claws_of(row, *work)) places[line].emplace(row.cow, row.foot, claw);
  }
  for (auto& [line, where] : places) {
    leave_out_not_called(where);
    std::set<CowId> cows;
    for (const Place& place : where) cows.insert(std::get<CowId>(place));
    done.push_back({line.work, line.act, line.product, static_cast<std::int64_t>(where.size()),
                    static_cast<std::int64_t>(cows.size()), line.by_whom});
  }
}

void add_batches(std::vector<WorkDone>& done, const Rows& rows, VisitId visit) {
  std::int64_t animals = 0;
  std::int64_t feet = 0;
  for (const BatchRow& row : rows.batches) {
    if (row.visit != visit) continue;
    animals += row.together;
    feet += row.feet;
  }
  if (animals > 0) {
    done.push_back({.work = Work::animals_together, .product = {}, .count = animals});
  }
  if (feet > 0) done.push_back({.work = Work::feet_together, .product = {}, .count = feet});
}

}  // namespace

std::vector<WorkDone> work_done(const Rows& rows, VisitId visit) {
  std::vector<WorkDone> done;
  add_cows(done, rows, visit);
  add_lifted(done, rows, visit);
  add_acts(done, rows, visit);
  add_batches(done, rows, visit);
  return done;
}

}  // namespace evenclaw
