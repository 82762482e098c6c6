#include "core/log/fates_in_doubt.hpp"

#include <algorithm>
#include <map>
#include <utility>

#include "core/log/feet_of_news.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

/// One word on what became of it, or that a new one was put on.
struct FateSaid {
  const Entry* entry = nullptr;
  Moment moment;
  std::optional<VisitId> visit;
  Foot foot = Foot::lf;
  Fixture fixture = Fixture::wrap;
  Claw claw = Claw::not_called;
  FixtureStep step = FixtureStep::not_known;
  bool is_news = false;
  bool is_asked = false;  // news nobody could be sure of
  bool makes_anew = false;

  [[nodiscard]] bool is_off() const { return is_off_after(step); }

  [[nodiscard]] bool is_seen_on() const { return step == FixtureStep::left_on; }

  [[nodiscard]] bool is_new() const { return is_on_after(step) && !is_seen_on(); }
};

using FatesSaid = std::vector<FateSaid>;

class FatesHeard {
 public:
  explicit FatesHeard(const CowStory& story) : feet_(story) {
    for (const Told<TurnRecorded>& turn : story.turns) hear(turn);
    for (const Told<TaskClosedBody>& news : story.news) hear(news);
  }

  [[nodiscard]] FatesSaid all() && {
    std::stable_sort(said_.begin(), said_.end(),
                     [](const FateSaid& a, const FateSaid& b) { return a.moment < b.moment; });
    return std::move(said_);
  }

 private:
  void hear(const Told<TurnRecorded>& turn) {
    for (const FootCall& call : turn.body.turn.feet) {
      for (const Action& action : call.actions) hear(action, FootSet{call.foot}, turn);
    }
    for (const Action& action : turn.body.turn.actions) hear(action, four_feet, turn);
  }

  void hear(const Action& action, const FootSet& feet, const Told<TurnRecorded>& turn) {
    const std::optional<FixtureSaid> said = fixture_said(action.kind);
    if (!said || said->step == FixtureStep::not_known) return;
    FateSaid fate;
    fate.entry = turn.entry;
    fate.moment = turn.moment;
    fate.visit = turn.body.visit;
    fate.fixture = said->fixture;
    fate.step = said->step;
    if (is_called(action.claw)) fate.claw = action.claw;
    add(fate, feet);
  }

  void hear(const Told<TaskClosedBody>& news) {
    const std::optional<FixtureSaid> said = fixture_said(news.body.news);
    const bool is_off = said && is_off_after(said->step);
    // An "off" that was asked about may be of another foot, or of another cow.
    if (!said || said->step == FixtureStep::not_known || (is_off && news.body.asked)) return;
    FateSaid fate;
    fate.entry = news.entry;
    fate.moment = news.moment;
    fate.visit = news.body.visit;
    fate.fixture = said->fixture;
    fate.step = said->step;
    fate.is_news = true;
    fate.is_asked = news.body.asked.has_value();
    fate.makes_anew = std::any_of(
        news.body.tasks.begin(), news.body.tasks.end(),
        [&](const TaskMade& task) { return task.foot && is_task_of(said->fixture, task.kind); });
    add(fate, feet_.of(news.body));
  }

  void add(FateSaid fate, const FootSet& feet) {
    for (const Foot foot : all_feet) {
      if (!feet.has(foot)) continue;
      fate.foot = foot;
      said_.push_back(fate);
    }
  }

  FeetOfNews feet_;
  FatesSaid said_;
};

bool contradict(const FateSaid& off, const FateSaid& on) {
  const bool is_pair = off.is_off() && on.is_seen_on() && claws_agree(off.claw, on.claw);
  if (!is_pair || off.entry == on.entry) return is_pair;
  const bool is_on_one_device = off.entry->envelope.device == on.entry->envelope.device;
  return !is_on_one_device || off.moment < on.moment;
}

bool was_put_on_anew(const FatesSaid& at_visit, Claw claw) {
  return std::any_of(at_visit.begin(), at_visit.end(), [&](const FateSaid& said) {
    return said.is_new() && claws_agree(said.claw, claw);
  });
}

/// News that comes last at the visit, where all was told on one device.
bool is_last_word(const FateSaid& last, const FatesSaid& at_visit) {
  return last.is_news && !last.is_asked &&
         std::all_of(at_visit.begin(), at_visit.end(), [&](const FateSaid& said) {
           return said.entry->envelope.device == last.entry->envelope.device;
         });
}

FateSettled settled_by(const FateSaid& said) {
  return {said.moment, !said.is_seen_on(), said.is_seen_on() && said.makes_anew};
}

/// Of one foot, by moment: what was told at that visit, and what was told of it besides.
std::optional<FateSettled> settled(const FatesSaid& at_visit, const FatesSaid& of_foot, Claw claw) {
  const FateSaid& last = at_visit.back();
  if (is_last_word(last, at_visit)) return settled_by(last);
  for (const FateSaid& said : of_foot) {
    const bool is_since = said.visit != last.visit && last.moment < said.moment && !said.is_asked;
    if (is_since && claws_agree(said.claw, claw)) return settled_by(said);
  }
  return std::nullopt;
}

/// A word that it is still on, which another contradicts, and which is of none that is new.
const FateSaid* seen_on_in_doubt(const FatesSaid& at_visit, Claw claw) {
  for (const FateSaid& on : at_visit) {
    const bool is_contradicted =
        claws_agree(on.claw, claw) && !was_put_on_anew(at_visit, on.claw) &&
        std::any_of(at_visit.begin(), at_visit.end(), [&](const FateSaid& off) {
          return claws_agree(off.claw, claw) && contradict(off, on);
        });
    if (is_contradicted) return &on;
  }
  return nullptr;
}

/// Once it is in doubt, no other word of that visit that it is off ends it but the one that settles
/// it.
void add_doubts(std::vector<FateInDoubt>& doubts, const FatesSaid& at_visit,
                const FatesSaid& of_foot) {
  for (const FateSaid& off : at_visit) {
    const FateSaid* on = off.is_off() ? seen_on_in_doubt(at_visit, off.claw) : nullptr;
    if (on == nullptr) continue;
    const Claw claw = is_called(off.claw) ? off.claw : on->claw;
    const auto said_since = settled(at_visit, of_foot, claw);
    if (said_since && said_since->moment == off.moment) continue;
    doubts.push_back({off.entry->envelope.id, off.fixture, off.foot, claw, said_since});
  }
}

}  // namespace

std::vector<FateInDoubt> fates_in_doubt(const CowStory& story) {
  std::map<std::pair<Fixture, Foot>, FatesSaid> by_foot;
  for (const FateSaid& said : FatesHeard(story).all()) {
    by_foot[{said.fixture, said.foot}].push_back(said);
  }
  std::vector<FateInDoubt> doubts;
  for (const auto& [of, fates] : by_foot) {
    std::map<VisitId, FatesSaid> by_visit;
    for (const FateSaid& said : fates) {
      if (said.visit) by_visit[*said.visit].push_back(said);
    }
    for (const auto& [visit, at_visit] : by_visit) add_doubts(doubts, at_visit, fates);
  }
  return doubts;
}

const FateInDoubt* doubt_about(std::span<const FateInDoubt> doubts, EntryId told_by,
                               Fixture fixture, Foot foot, Claw claw) {
  const auto found = std::find_if(doubts.begin(), doubts.end(), [&](const FateInDoubt& doubt) {
    const bool is_it = doubt.told_by == told_by && doubt.fixture == fixture && doubt.foot == foot;
    return is_it && (fixture == Fixture::wrap || claws_agree(doubt.claw, claw));
  });
  return found == doubts.end() ? nullptr : &*found;
}

}  // namespace evenclaw
