#include "core/log/fixtures.hpp"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <utility>

#include "core/log/fates_in_doubt.hpp"
#include "core/log/feet_of_news.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

// What was said of blocks or wraps that were on before.
struct Mark {
  FootSet feet;
  Fixture fixture;
  Claw claw;
  FixtureEnd end;
  Day day;
  EntryId told_by;
  VisitId visit{};  // what was put on at this visit on these feet is not meant
  FootSet not_meant{};
};

bool is_not_known_off(const OnFootRow& row) {
  return row.ended == FixtureEnd::still_on || row.ended == FixtureEnd::unknown;
}

bool means_claw(const OnFootRow& row, Claw claw) {
  return row.fixture == Fixture::wrap || claws_agree(row.claw, claw);
}

std::optional<FixtureEnd> end_after(FixtureStep step) {
  switch (step) {
    case FixtureStep::taken_off:
      return FixtureEnd::taken_off;
    case FixtureStep::came_off:
      return FixtureEnd::came_off;
    case FixtureStep::left_on:
      return FixtureEnd::still_on;
    case FixtureStep::not_known:
      return FixtureEnd::unknown;
    case FixtureStep::put_on:
    case FixtureStep::stacked:
    case FixtureStep::renewed:
      return std::nullopt;
  }
  return std::nullopt;
}

class FixtureBook {
 public:
  explicit FixtureBook(const CowStory& story)
      : story_(story), doubts_(fates_in_doubt(story)), feet_(story) {}

  void take(const Told<TurnRecorded>& turn) {
    before_turn_ = rows_;
    for (const FootCall& call : turn.body.turn.feet) {
      for (const Action& action : call.actions) mark_by(action, FootSet{call.foot}, turn);
    }
    for (const Action& action : turn.body.turn.actions) mark_by(action, four_feet, turn);
    std::int32_t position = 0;
    for (const FootCall& call : turn.body.turn.feet) {
      for (const Action& action : call.actions) put_by(action, call.foot, ++position, turn);
    }
    position = 0;
    for (const FootCall& call : turn.body.turn.feet) {
      for (const Action& action : call.actions) see_by(action, call.foot, ++position, turn);
    }
  }

  void take(const Told<TaskClosedBody>& told) {
    const std::optional<FixtureSaid> said = fixture_said(told.body.news);
    if (!said) return;
    const std::optional<FixtureEnd> end = end_after(said->step);
    if (end && !told.body.asked) {
      if (said->step == FixtureStep::left_on) bring_back(told.body, said->fixture);
      apply({feet_.of(told.body), said->fixture, Claw::not_called, *end, told.moment.day,
             told.entry->envelope.id, told.body.visit.value_or(VisitId{}),
             of_before(told.body, said->fixture)});
    }
    if (said->step == FixtureStep::left_on) see_by(told, said->fixture);
  }

  std::vector<OnFootRow> take_rows() && { return std::move(rows_); }

 private:
  /// "Still on" after it was told off: what is to be done once more names the foot.
  void bring_back(const TaskClosedBody& news, Fixture fixture) {
    for (const TaskMade& task : news.tasks) {
      if (!task.foot || !is_task_of(fixture, task.kind)) continue;
      const auto last = std::find_if(rows_.rbegin(), rows_.rend(), [&](const OnFootRow& row) {
        return row.fixture == fixture && row.foot == *task.foot && means_claw(row, task.claw);
      });
      if (last == rows_.rend() || is_not_known_off(*last)) continue;
      end(*last, FixtureEnd::still_on, news.day);
    }
  }

  /// Nothing new where one is on that foot, or was told off that day.
  [[nodiscard]] bool is_known(Foot foot, Fixture fixture, Day today) const {
    return std::any_of(rows_.begin(), rows_.end(), [&](const OnFootRow& row) {
      const bool is_there = is_not_known_off(row) || row.ended_on == today;
      return is_there && row.foot == foot && row.fixture == fixture;
    });
  }

  /// Told to be on a foot of which nobody knew that, which is asked about: it is there all the
  /// same.
  void see_by(const Told<TaskClosedBody>& told, Fixture fixture) {
    std::int32_t position = 0;
    for (const Foot foot : all_feet) {
      if (!told.body.feet.has(foot) || is_known(foot, fixture, told.moment.day)) continue;
      OnFootRow row = seen_row(foot, fixture, told.moment.day);
      row.turn = told.entry->envelope.id;
      row.position = ++position;
      row.visit = told.body.visit.value_or(VisitId{});
      rows_.push_back(row);
    }
  }

  void see_by(const Action& action, Foot foot, std::int32_t position,
              const Told<TurnRecorded>& turn) {
    const std::optional<FixtureSaid> said = fixture_said(action.kind);
    if (!said || said->step != FixtureStep::left_on) return;
    if (is_known(foot, said->fixture, turn.moment.day)) return;
    OnFootRow row = seen_row(foot, said->fixture, turn.moment.day);
    row.turn = turn.entry->envelope.id;
    row.position = position;
    row.visit = turn.body.visit;
    if (said->fixture == Fixture::block && is_called(action.claw)) row.claw = action.claw;
    rows_.push_back(row);
  }

  [[nodiscard]] OnFootRow seen_row(Foot foot, Fixture fixture, Day day) const {
    OnFootRow row;
    row.herd = story_.herd;
    row.cow = story_.cow;
    row.foot = foot;
    row.fixture = fixture;
    row.claw = fixture == Fixture::block ? Claw::not_called : Claw::none;
    row.since = day;
    row.only_seen = true;
    return row;
  }

  /// Feet of which news at a visit means what was there when she came: where there is an older one
  /// (a block on the other claw), and everywhere when neither foot nor task says where.
  [[nodiscard]] FootSet of_before(const TaskClosedBody& news, Fixture fixture) const {
    FootSet feet;
    const auto end = end_after(fixture_said(news.news)->step);
    if (!news.visit || end == FixtureEnd::still_on) return feet;
    if (news.feet.empty() && feet_.of(news) == four_feet) return four_feet;
    for (const OnFootRow& row : rows_) {
      const bool is_older = row.visit != *news.visit || row.only_seen;
      if (is_older && row.fixture == fixture && is_not_known_off(row)) feet.add(row.foot);
    }
    return feet;
  }

  void mark_by(const Action& action, FootSet feet, const Told<TurnRecorded>& turn) {
    const std::optional<FixtureSaid> said = fixture_said(action.kind);
    if (!said) return;
    const std::optional<FixtureEnd> end = end_after(said->step);
    if (end)
      apply({feet, said->fixture, action.claw, *end, turn.moment.day, turn.entry->envelope.id});
  }

  void apply(const Mark& mark) {
    for (OnFootRow& row : rows_) {
      if (!is_not_known_off(row) || row.fixture != mark.fixture || !mark.feet.has(row.foot)) {
        continue;
      }
      if (!means_claw(row, mark.claw) || is_in_doubt(mark, row)) continue;
      const bool is_spared = row.visit == mark.visit && !row.only_seen;
      if (is_spared && mark.not_meant.has(row.foot)) continue;
      const bool leaves_partner = row.claw == Claw::both && is_called(mark.claw) &&
                                  mark.claw != Claw::both && mark.end != FixtureEnd::still_on;
      if (leaves_partner) {
        row.claw = partner(mark.claw);
      } else {
        end(row, mark.end, mark.day);
      }
    }
  }

  /// Told to be still on as well: as long as nobody said which holds, it is looked for on the foot.
  [[nodiscard]] bool is_in_doubt(const Mark& mark, const OnFootRow& row) const {
    const bool ends_it = mark.end == FixtureEnd::taken_off || mark.end == FixtureEnd::came_off;
    return ends_it &&
           doubt_about(doubts_, mark.told_by, row.fixture, row.foot, row.claw) != nullptr;
  }

  static void end(OnFootRow& row, FixtureEnd how, Day day) {
    row.ended = how;
    row.ended_on.reset();
    if (how != FixtureEnd::still_on) row.ended_on = day;
  }

  void put_by(const Action& action, Foot foot, std::int32_t position,
              const Told<TurnRecorded>& turn) {
    const std::optional<FixtureSaid> said = fixture_said(action.kind);
    if (!said || end_after(said->step)) return;
    OnFootRow row;
    row.herd = story_.herd;
    row.cow = story_.cow;
    row.turn = turn.entry->envelope.id;
    row.position = position;
    row.foot = foot;
    row.fixture = said->fixture;
    row.since = turn.moment.day;
    row.visit = turn.body.visit;
    if (row.fixture == Fixture::block) row.claw = claw_for(action, row);
    if (replaces_or_joins(row, action.kind, said->step)) rows_.push_back(row);
  }

  // A block act on one that was there before, and whose claw nobody called, means the only one.
  [[nodiscard]] Claw claw_for(const Action& action, const OnFootRow& fresh) const {
    if (is_called(action.claw)) return action.claw;
    if (action.kind == ActionKind::block_on) return Claw::not_called;
    ClawPair known;
    const auto add = [&](const OnFootRow& row) {
      const bool is_there = is_not_known_off(row) && row.foot == fresh.foot;
      if (is_there && row.fixture == Fixture::block) known.add(row.claw);
    };
    for (const OnFootRow& row : before_turn_) add(row);
    for (const OnFootRow& row : rows_) {
      if (row.turn == fresh.turn) add(row);
    }
    return known.both() ? Claw::not_called : known.claw();
  }

  /// Ends what the new one stands in for; false when it only adds to what is there.
  bool replaces_or_joins(const OnFootRow& fresh, ActionKind kind, FixtureStep step) {
    for (OnFootRow& row : rows_) {
      const bool same_spot = is_not_known_off(row) && row.foot == fresh.foot &&
                             row.fixture == fresh.fixture && row.claw == fresh.claw;
      if (!same_spot) continue;
      if (step == FixtureStep::stacked || row.turn == fresh.turn) {
        end(row, FixtureEnd::still_on, fresh.since);
        return false;
      }
      const bool was_lost = kind == ActionKind::block_refitted;
      end(row, was_lost ? FixtureEnd::came_off : FixtureEnd::taken_off, fresh.since);
    }
    return true;
  }

  const CowStory& story_;
  std::vector<FateInDoubt> doubts_;
  FeetOfNews feet_;
  std::vector<OnFootRow> rows_;
  std::vector<OnFootRow> before_turn_;
};

}  // namespace

std::vector<OnFootRow> fixtures_of(const CowStory& story) {
  FixtureBook book(story);
  std::size_t next_news = 0;
  for (const Told<TurnRecorded>& turn : story.turns) {
    while (next_news < story.news.size() && story.news[next_news].moment < turn.moment) {
      book.take(story.news[next_news++]);
    }
    book.take(turn);
  }
  while (next_news < story.news.size()) book.take(story.news[next_news++]);
  return std::move(book).take_rows();
}

}  // namespace evenclaw
