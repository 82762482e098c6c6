// What has to be asked before a visit is closed.
#include <algorithm>
#include <iterator>
#include <map>
#include <set>
#include <string>
#include <tuple>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/heard_at_visit.hpp"
#include "core/api/identities.hpp"
#include "core/api/open_news.hpp"
#include "core/api/told_two_ways.hpp"
#include "core/api/visits.hpp"
#include "core/base/quotation.hpp"
#include "core/log/doubts.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/foot_rows.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/put_on_here.hpp"
#include "core/trade/spoken.hpp"
#include "core/trade/task_rows.hpp"
#include "core/trade/told_both_ways.hpp"

namespace evenclaw {

namespace {

OpenPointKind point_kind(DoubtKind kind) {
  switch (kind) {
    case DoubtKind::unnumbered:
      return OpenPointKind::unnumbered;
    case DoubtKind::doubtful_number:
      return OpenPointKind::doubtful_number;
    case DoubtKind::told_gone:
      return OpenPointKind::told_gone;
    case DoubtKind::unfinished:
      return OpenPointKind::unfinished;
    case DoubtKind::not_done:
      return OpenPointKind::not_done;
    case DoubtKind::called_twice:
      return OpenPointKind::called_twice;
    case DoubtKind::lifted_not_called:
      return OpenPointKind::lifted_not_called;
    case DoubtKind::place_not_called:
      return OpenPointKind::place_not_called;
    case DoubtKind::degree_not_called:
      return OpenPointKind::degree_not_called;
    case DoubtKind::stage_not_called:
      return OpenPointKind::stage_not_called;
    case DoubtKind::unanswered:
      return OpenPointKind::unanswered;
    case DoubtKind::number_given_twice:
      return OpenPointKind::number_given_twice;
    case DoubtKind::two_versions:
      return OpenPointKind::two_versions;
  }
  return OpenPointKind::two_versions;
}

std::string when_put_on(const OnFootRow& row) {
  std::string words(word_of(row.fixture));
  words += " on " + std::string(spoken(row.foot));
  if (row.claw == Claw::outside || row.claw == Claw::inside) {
    words += " " + std::string(spoken(row.claw));
  }
  return words + (row.only_seen ? " seen " : " since ") + spoken(row.since);
}

/// What the farmer looks at between two visits: the trimmer has looks of his own to be asked about.
bool is_farmers_look(const TaskRow& task) {
  const bool is_look = task.kind == TaskKind::look_at_foot || task.kind == TaskKind::block_check;
  return is_look && task.owner == Owner::farmer;
}

class PointCollector {
 public:
  PointCollector(const Visit& visit, HeardAtVisit heard, std::vector<CowRow> cows)
      : visit_(visit), heard_(std::move(heard)) {
    for (CowRow& cow : cows) cows_.emplace(cow.cow, std::move(cow));
  }

  /// After all turns.
  void add_doubt(const DoubtRow& doubt) {
    if (doubt.visit != visit_.visit) return;
    const bool is_number = doubt.kind == DoubtKind::doubtful_number;
    const std::string seen = is_number ? seen_of_these(doubt.turn) : std::string();
    // Of a number that stood only in a line nobody understood the line is asked about.
    if (is_number && seen.empty() && only_refused_.count(doubt.turn) > 0) return;
    add(point_kind(doubt.kind), doubt.cow, doubt.words + seen);
    if (doubt.kind == DoubtKind::unnumbered) points_.back().words += alike_before(doubt.cow);
    const auto rank = heard_.ranks.find({doubt.turn, doubt.words});
    const bool is_warning = doubt.kind == DoubtKind::unanswered && rank != heard_.ranks.end();
    if (is_warning) points_.back().rank = rank->second;
  }

  void add_turn(const TurnRow& turn) {
    turns_.emplace(turn.visit, turn.cow);
    if (turn.visit != visit_.visit) return;
    heard_.cows_with_a_turn.insert(turn.cow);
    if (turn.end != TurnEnd::not_done) looked_at_.insert(turn.cow);
    if (turn.end == TurnEnd::done)
      waits_for_feet_[turn.cow] |= heard_.said_rest_fine.count(turn.turn) > 0;
    if (turn.end != TurnEnd::done) asked_in_full_.insert(turn.cow);
    if (turn.end == TurnEnd::unfinished && turn.words.empty()) only_refused_.insert(turn.turn);
    const auto told_by = heard_.told_by.find(turn.turn);
    if (turn.walks_sound && told_by != heard_.told_by.end()) {
      const auto& [device, order] = told_by->second;
      heard_.walks.push_back({turn.cow, true, false, false, device, order});
    }
    if (!turn.number_said.empty()) said_.emplace(turn.cow, plain_number(turn.number_said));
  }

  /// After all turns.
  void add_carrier(const CowNumberRow& carried) {
    for (const auto& [cow, number] : said_) {
      const auto hers = cows_.find(cow);
      const auto other = cows_.find(carried.cow);
      const bool shared = cow != carried.cow && number == carried.number;
      if (!shared || hers == cows_.end() || other == cows_.end()) continue;
      ask_which_of_two(hers->second, other->second, carried);
    }
  }

  void add_foot(const FootRow& foot) {
    if (foot.visit == visit_.visit) spoken_of_feet_[foot.cow].add(foot.foot);
  }

  /// After all turns and feet. Whose turn was not finished or not done is asked about for that.
  void add_feet_nobody_spoke_of() {
    for (const auto& [cow, waits] : waits_for_feet_) {
      if (asked_in_full_.count(cow) > 0) continue;
      FootSet unsaid = visit_.todays_feet;
      for (const Foot foot : all_feet) {
        if (spoken_of_feet_[cow].has(foot)) unsaid.remove(foot);
      }
      if (!unsaid.empty()) {
        add(OpenPointKind::lifted_not_called, cow,
            sentence(spoken(unsaid)) + ": not lifted, or what was found?");
      } else if (visit_.todays_feet.empty() && waits) {
        add(OpenPointKind::lifted_not_called, cow,
            "The rest was said to be fine, and nobody said which feet are lifted today.");
      }
    }
  }

  /// After all turns and all that is on feet. Of one who is gone as well: it may have been another
  /// cow's, or her number in what was told first.
  void add_unclear_news() {
    for (const OpenNews& told : heard_.unclear) {
      const std::string words = quoted(told.words) + ": " + told.asked;
      if (!told.cow) {
        add(OpenPointKind::news_unclear, CowId{}, words);
        points_.back().cow_said = plain_number(told.number);
        points_.back().person = told.person;
        if (told.person) points_.back().entry = told.entry;
      } else if (!is_answered_by_seeing(told)) {
        add(OpenPointKind::news_unclear, *told.cow, words);
      }
    }
  }

  void add_fate(const ActionRow& action) {
    const std::optional<FixtureSaid> said = fixture_said(action.action);
    if (action.visit != visit_.visit || !said) return;
    spoken_of_.emplace(action.cow, said->fixture);
    if (action.foot) told_in_crush_.insert({action.cow, said->fixture, *action.foot});
    const auto told_by = heard_.told_by.find(action.turn);
    if (!tells_its_fate(said->step) || told_by == heard_.told_by.end()) return;
    const auto& [device, order] = told_by->second;
    const FootSet feet = action.foot ? FootSet{*action.foot} : FootSet{};
    heard_.fates.push_back(
        {action.cow, said->fixture, feet, is_off_after(said->step), false, false, device, order});
  }

  /// After all fates.
  void add_told_two_ways() {
    for (const ToldTwoWays& told : told_two_ways(heard_.fates)) {
      if (has_left(told.cow)) continue;
      const std::string what = sentence(std::string(word_of(told.fixture)));
      add(OpenPointKind::told_two_ways, told.cow,
          what + (told.feet.empty() ? "" : " on " + spoken(told.feet)) +
              ": said to be off, and to be still on. Which is right?");
    }
    for (const CowId cow : walk_told_two_ways(heard_.walks)) {
      if (has_left(cow)) continue;
      add(OpenPointKind::told_two_ways, cow,
          "Said to be lame still, and to walk sound. Which is right?");
    }
  }

  /// After all turns and all that is on feet: no date is made up for it.
  void add_on_since_when(const ActionRow& action) {
    if (action.visit != visit_.visit || heard_.settled.count(action.cow) > 0) return;
    const std::optional<FixtureSaid> said = fixture_said(action.action);
    if (!said || said->step != FixtureStep::left_on || !action.foot) return;
    const auto put_on = first_put_on_.find({action.cow, said->fixture, *action.foot});
    if (put_on != first_put_on_.end() && put_on->second <= visit_.day) return;
    const std::string what(word_of(said->fixture));
    add(OpenPointKind::on_since_when, action.cow,
        sentence(what) + " still on " + std::string(spoken(*action.foot)) +
            ", and nobody knew of it: since when is it on?");
  }

  /// After all turns. What a turn made today needs no question, for she was seen; what was only
  /// told today ("still lame") does.
  void add_due(const TaskRow& task) {
    // Held back by the farmer until its day, whether she is seen or not.
    if (task.kind == TaskKind::withdrawal_end || is_farmers_look(task)) return;
    if (!task.open || task.earliest > visit_.day || task.made_on > visit_.day) return;
    if (was_seen_or_left(task.cow)) return ask_whether_the_vet_came(task);
    const bool is_of_today = task.made_on == visit_.day;
    // The news that made it, or that tells it both ways, is asked about.
    if (is_told_both_ways(task) && heard_.cows_told_of.count(task.cow) > 0) return;
    if (is_of_today && (asks_since_when(task) || turns_.count({task.visit, task.cow}) > 0)) return;
    add(OpenPointKind::due_not_seen, task.cow,
        task.words +
            (is_of_today ? ": told today, and she was not seen" : " is due and she was not seen"));
    asked_.emplace(task.cow, task.foot);
  }

  /// After all turns and tasks: a foot whose task is due is asked about once.
  void add_on_foot(const OnFootRow& row) {
    know_of(row);
    if (row.ended != FixtureEnd::still_on || row.since >= visit_.day) return;
    if (has_left(row.cow)) return;
    if (heard_.cows_with_a_turn.count(row.cow) > 0) return not_known_in_crush_.push_back(row);
    const bool is_asked = asked_.count({row.cow, row.foot}) > 0;
    if (!is_asked && heard_.cows_told_of.count(row.cow) == 0) ask_whether_still_on(row);
  }

  /// After all turns and fates. In the crush she is asked about it, unless she was not known there
  /// for who she is: called under a doubtful number and joined since, or known of on another
  /// tablet.
  void add_not_known_in_crush() {
    for (const OnFootRow& row : not_known_in_crush_) {
      const OnHerFoot it{row.cow, row.fixture, row.foot};
      const bool was_known = heard_.asked_in_crush.count(it) > 0 || told_in_crush_.count(it) > 0 ||
                             is_told_in_news(row);
      if (!was_known && was_looked_at(row.cow)) ask_whether_still_on(row);
    }
  }

  [[nodiscard]] ClosingState state() && {
    ClosingState state;
    state.cows = static_cast<std::int32_t>(heard_.cows_with_a_turn.size());
    state.changed_since_closing = heard_.changed_since_closing;
    tell_apart();
    std::stable_sort(points_.begin(), points_.end(), [](const OpenPoint& a, const OpenPoint& b) {
      return std::tie(a.kind, b.rank, a.cow_said, a.cow) <
             std::tie(b.kind, a.rank, b.cow_said, b.cow);
    });
    state.open = std::move(points_);
    return state;
  }

 private:
  /// Of cows that look alike, what was found on each says which one is asked about.
  void tell_apart() {
    const std::vector<OpenPoint> before = points_;
    for (OpenPoint& point : points_) {
      if (point.kind != OpenPointKind::unnumbered) continue;
      const bool is_alone = std::none_of(before.begin(), before.end(), [&](const OpenPoint& other) {
        return other.cow != point.cow && other.words == point.words;
      });
      const auto found = heard_.found_on.find(point.cow);
      if (!is_alone && found != heard_.found_on.end()) point.words += " (" + found->second + ")";
    }
  }

  [[nodiscard]] bool has_left(CowId cow) const {
    const auto row = cows_.find(cow);
    return row != cows_.end() && row->second.left_on.has_value();
  }

  [[nodiscard]] bool was_seen_or_left(CowId cow) const {
    return has_left(cow) || heard_.cows_with_a_turn.count(cow) > 0;
  }

  /// No turn crosses the vet off, whatever was found in it: only who was there knows.
  void ask_whether_the_vet_came(const TaskRow& task) {
    const bool is_of_before = task.kind == TaskKind::vet && task.made_on < visit_.day;
    if (!is_of_before || has_left(task.cow)) return;
    add(OpenPointKind::due_not_seen, task.cow,
        task.words + ", since " + spoken(task.made_on) + ": did the vet come?");
  }

  [[nodiscard]] bool is_told_in_news(const OnFootRow& row) const {
    return std::any_of(heard_.fates.begin(), heard_.fates.end(), [&](const FateTold& told) {
      return told.cow == row.cow && told.fixture == row.fixture &&
             (told.feet.empty() || told.feet.has(row.foot));
    });
  }

  /// Who was not done is asked about for that.
  [[nodiscard]] bool was_looked_at(CowId cow) const { return looked_at_.count(cow) > 0; }

  void ask_whether_still_on(const OnFootRow& row) {
    add(OpenPointKind::still_on, row.cow, when_put_on(row) + ": still on?");
  }

  void know_of(const OnFootRow& row) {
    if (row.ended_on && *row.ended_on < visit_.day) return;
    if (row.only_seen && row.since >= visit_.day) return;
    Day& put_on =
        first_put_on_.try_emplace({row.cow, row.fixture, row.foot}, row.since).first->second;
    put_on = std::min(put_on, row.since);
  }

  /// What was on her is asked about in the crush, but not what is told of her once she is out of
  /// it. Where nothing was known on her, or the words were not understood, seeing her does not tell
  /// what was meant; nor to whom the vet came.
  [[nodiscard]] bool is_answered_by_seeing(const OpenNews& told) const {
    if (!told.news || told.news == News::vet_came) return false;
    if (asks_of_put_on_now(told.asked)) return false;
    if (heard_.cows_with_a_turn.count(*told.cow) == 0) return false;
    const std::optional<FixtureSaid> said = fixture_said(*told.news);
    const auto told_by = heard_.told_by.find(told.entry);
    const auto called = heard_.last_called.find(*told.cow);
    const bool is_told_later = told_by != heard_.told_by.end() &&
                               called != heard_.last_called.end() &&
                               told_by->second.second > called->second;
    if (is_told_later) return false;
    // Told off before, it is no longer looked for in the crush.
    const bool is_looked_for = !said || said->step != FixtureStep::left_on ||
                               spoken_of_.count({*told.cow, said->fixture}) > 0;
    if (!is_looked_for) return false;
    return !said || std::any_of(all_feet.begin(), all_feet.end(), [&](Foot foot) {
      const auto put_on = first_put_on_.find({*told.cow, said->fixture, foot});
      return put_on != first_put_on_.end() && put_on->second < visit_.day;
    });
  }

  /// " 513 was in the crush today." of the numbers a cow may have.
  [[nodiscard]] std::string seen_of_these(EntryId turn) const {
    const auto doubtful = heard_.in_doubt.find(turn);
    if (doubtful == heard_.in_doubt.end()) return {};
    std::vector<std::string> numbers = doubtful->second.alternatives;
    numbers.insert(numbers.begin(), doubtful->second.number);
    std::string words;
    for (const std::string& number : numbers) {
      if (is_seen_under(plain_number(number))) words += " " + number + " was in the crush today.";
    }
    return words;
  }

  /// One in the same words was here before: she is asked about, and never joined by the program.
  [[nodiscard]] std::string alike_before(CowId cow) const {
    const auto hers = cows_.find(cow);
    if (hers == cows_.end() || hers->second.looks.empty()) return {};
    const CowRow* last = nullptr;
    for (const auto& [other, row] : cows_) {
      const bool is_alike = other != cow && row.known == CowKnown::unnumbered &&
                            recorded_as(row) == recorded_as(hers->second);
      if (!is_alike || row.last_seen >= visit_.day) continue;
      if (last == nullptr || row.last_seen > last->last_seen) last = &row;
    }
    if (last == nullptr) return {};
    const std::string called = recorded_as(*last);
    return " Or is she the one of " + spoken(last->last_seen) + "? Then: evenclaw cow same \"" +
           called + "\" \"" + dated(called, last->last_seen) + "\"";
  }

  [[nodiscard]] bool is_seen_under(const std::string& number) const {
    return std::any_of(said_.begin(), said_.end(), [&](const auto& said) {
      const auto cow = cows_.find(said.first);
      return said.second == number && cow != cows_.end() && cow->second.known == CowKnown::numbered;
    });
  }

  /// Numbers come back: the new cow may be the one that was said to be gone, or that got another.
  void ask_which_of_two(const CowRow& hers, const CowRow& other, const CowNumberRow& carried) {
    if (hers.known != CowKnown::numbered || carried.valid_from > visit_.day) return;
    const bool other_left = other.left_on && *other.left_on <= visit_.day;
    const bool no_longer = carried.valid_to && *carried.valid_to < visit_.day;
    if (!other_left && !no_longer) {
      add(OpenPointKind::number_given_twice, hers.cow,
          "Two cows carry " + carried.number + "; taken for the one seen last. Which is it?");
    } else if (hers.first_seen >= visit_.day) {
      const std::string before =
          other_left ? " was said to be gone on " + spoken(*other.left_on)
                     : " was " + recorded_as(other) + "'s until " + spoken(*carried.valid_to);
      add(OpenPointKind::number_given_twice, hers.cow,
          carried.number + before + "; taken for a new cow. Is she the same?");
    }
  }

  void add(OpenPointKind kind, CowId cow, const std::string& what) {
    OpenPoint point;
    point.kind = kind;
    point.cow = cow;
    const auto row = cows_.find(cow);
    if (row != cows_.end()) point.cow_said = recorded_as(row->second);
    point.words = what;
    points_.push_back(std::move(point));
  }

  const Visit& visit_;
  HeardAtVisit heard_;
  std::map<CowId, CowRow> cows_;
  std::set<std::pair<VisitId, CowId>> turns_;
  std::set<std::pair<CowId, std::string>> said_;  // numbers said in this visit
  std::set<std::pair<CowId, std::optional<Foot>>> asked_;
  std::set<CowId> looked_at_;             // in the crush, at this visit
  std::map<CowId, bool> waits_for_feet_;  // of a turn that was done: "rest fine" was said
  std::set<CowId> asked_in_full_;         // her turn was not
  std::set<EntryId> only_refused_;        // no line of the turn was understood
  std::map<CowId, FootSet> spoken_of_feet_;
  std::set<std::pair<CowId, Fixture>> spoken_of_;                 // alike
  std::set<OnHerFoot> told_in_crush_;                             // alike, of which foot
  std::vector<OnFootRow> not_known_in_crush_;                     // perhaps: asked about nowhere
  std::map<std::tuple<CowId, Fixture, Foot>, Day> first_put_on_;  // and not off before
  std::vector<OpenPoint> points_;
};

/// The rows of a herd, one table after another; after a fault no more are read.
class RowsOfHerd {
 public:
  RowsOfHerd(Store& store, HerdId herd) : store_(store), herd_(herd) {}

  template <class RowType, class F>
  void each(std::vector<Filter> where, F&& take, std::vector<std::string> sorted_by = {}) {
    if (!read_) return;
    const auto rows = select_as<RowType>(store_, herd_, std::move(where), std::move(sorted_by));
    if (!rows) {
      read_ = rows.faults();
      return;
    }
    for (const RowType& row : *rows) take(row);
  }

  [[nodiscard]] const Outcome& read() const { return read_; }

 private:
  Store& store_;
  HerdId herd_;
  Outcome read_ = Done{};
};

}  // namespace

bool is_answered_by_calling(OpenPointKind kind) {
  return std::any_of(std::begin(EnumWords<DoubtKind>::table), std::end(EnumWords<DoubtKind>::table),
                     [&](const EnumWord<DoubtKind>& doubt) {
                       return point_kind(doubt.value) == kind &&
                              is_answered_by_calling(doubt.value);
                     });
}

bool is_settled_in_words(OpenPointKind kind) {
  return kind == OpenPointKind::news_unclear || kind == OpenPointKind::called_twice ||
         kind == OpenPointKind::on_since_when || kind == OpenPointKind::told_gone;
}

Result<std::vector<OpenPoint>> with_names_shown(std::vector<OpenPoint> open, Directory& directory) {
  const auto everybody = directory.everybody();
  if (!everybody) return everybody.faults();
  for (OpenPoint& point : open) {
    if (!point.person) continue;
    const std::string name = shown_name(*everybody, *point.person);
    point.words = "A name a letter or two off was read as ";
    point.words.append(name).append(". Was it ").append(name).append(", or who?");
  }
  return open;
}

Result<ClosingState> closing_state(Store& store, const Visit& visit) {
  auto heard = heard_at(store, visit);
  if (!heard) return heard.faults();
  auto cows = select_as<CowRow>(store, visit.herd);
  if (!cows) return cows.faults();
  PointCollector points(visit, *std::move(heard), *std::move(cows));
  const Filter of_this_visit{"visit", Compare::equal, Cell(to_text(visit.visit))};
  // Another visit of that day may have seen her, too.
  const Filter of_that_day{"day", Compare::equal, Cell(to_text(visit.day))};
  const Filter is_open{"open", Compare::equal, Cell(std::int64_t{1})};
  RowsOfHerd rows(store, visit.herd);
  rows.each<TurnRow>({of_that_day}, [&](const TurnRow& row) { points.add_turn(row); });
  rows.each<CowNumberRow>({}, [&](const CowNumberRow& row) { points.add_carrier(row); });
  rows.each<FootRow>({of_this_visit}, [&](const FootRow& row) { points.add_foot(row); });
  rows.each<DoubtRow>({of_this_visit}, [&](const DoubtRow& row) { points.add_doubt(row); });
  rows.each<TaskRow>({is_open}, [&](const TaskRow& row) { points.add_due(row); },
                     {"due", "kind", "foot"});
  rows.each<OnFootRow>({}, [&](const OnFootRow& row) { points.add_on_foot(row); });
  rows.each<ActionRow>({of_this_visit}, [&](const ActionRow& row) {
    points.add_on_since_when(row);
    points.add_fate(row);
  });
  if (!rows.read()) return rows.read().faults();
  points.add_feet_nobody_spoke_of();
  points.add_not_known_in_crush();
  points.add_unclear_news();
  points.add_told_two_ways();
  return std::move(points).state();
}

}  // namespace evenclaw
