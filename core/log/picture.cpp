#include "core/log/picture.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "core/log/body.hpp"
#include "core/log/change_rows.hpp"
#include "core/log/cow_identity.hpp"
#include "core/log/cow_passport.hpp"
#include "core/log/cow_story.hpp"
#include "core/log/doubts.hpp"
#include "core/log/fixtures.hpp"
#include "core/log/foot_cases.hpp"
#include "core/log/handling_told.hpp"
#include "core/log/past_told.hpp"
#include "core/log/row_order.hpp"
#include "core/log/scoring_rows.hpp"
#include "core/log/standing.hpp"
#include "core/log/task_history.hpp"
#include "core/log/visit_facts.hpp"
#include "core/log/walk_rows.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/medicine_use.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/withdrawal_tasks.hpp"

namespace evenclaw {

namespace {

using TurnTold = Told<TurnRecorded>;

/// What every row of a turn begins with.
template <class Row>
Row row_of_turn(const CowStory& story, const TurnTold& turn) {
  Row row;
  row.herd = story.herd;
  row.cow = story.cow;
  row.turn = turn.entry->envelope.id;
  row.visit = turn.body.visit;
  row.day = turn.moment.day;
  return row;
}

std::string joined(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines) {
    if (!text.empty()) text += " / ";
    text += line;
  }
  return text;
}

/// A clock that was put back while she stood there tells nothing.
void add_times(const TurnTold& told, TurnRow& row) {
  constexpr std::int64_t longest_ms = std::int64_t{24} * 60 * 60 * 1000;
  const std::optional<Instant>& began = told.body.began;
  const Instant& let_out = told.entry->envelope.at;
  // A correction is written later.
  const bool is_of_then = began && !told.entry->envelope.supersedes;
  if (!is_of_then || let_out.ms <= began->ms || let_out.ms - began->ms > longest_ms) return;
  row.let_out_at = to_text(let_out);
  row.seconds_in_crush = static_cast<std::int32_t>((let_out.ms - began->ms + 999) / 1000);
}

TurnRow turn_row(const CowStory& story, const TurnTold& told) {
  const Turn& turn = told.body.turn;
  TurnRow row = row_of_turn<TurnRow>(story, told);
  row.number_said = turn.cow.number;
  row.called = called_as(turn.cow);
  row.reason = turn.reason;
  for (const Reason reason : turn.also) row.also.add(reason);
  row.reason_words = turn.reason_words;
  row.came_lame = came_for(turn, Reason::lame) || !turn.lame.empty();
  row.lame = turn.lame;
  row.end = turn.end;
  row.end_reason = turn.end_reason;
  for (const FootCall& call : turn.feet) {
    if (was_lifted(call)) row.lifted.add(call.foot);
  }
  row.walks_sound = turn.walks_sound;
  row.mobility_scale = turn.mobility.scale;
  row.mobility_score = turn.mobility.score;
  for (const WarningShown& shown : told.body.warnings) {
    if (shown.warning.rank == Rank::note) continue;
    ++(shown.warning.rank == Rank::stop ? row.stops : row.asks);
    if (shown.decision.empty()) ++row.unanswered;
  }
  row.caller = told.entry->envelope.caller.value_or(PersonId{});
  row.writer = told.entry->envelope.writer.value_or(PersonId{});
  row.words = joined(told.body.words);
  row.note = turn.note;
  add_times(told, row);
  return row;
}

void add_called(const CowStory& story, const TurnTold& told, Rows& rows) {
  const std::set<std::string> each_once(told.body.called_first.begin(),
                                        told.body.called_first.end());
  for (const std::string& called : each_once) {
    CowCalledRow row = row_of_turn<CowCalledRow>(story, told);
    row.called = called;
    rows.cow_called.push_back(std::move(row));
  }
}

void add_feet(const CowStory& story, const TurnTold& told, Rows& rows) {
  for (const FootCall& call : told.body.turn.feet) {
    FootRow row = row_of_turn<FootRow>(story, told);
    row.foot = call.foot;
    row.state = call.state;
    row.trimmed = call.trimmed;
    row.called_lame = told.body.turn.lame.has(call.foot);
    row.note = call.note;
    rows.feet.push_back(std::move(row));
  }
}

struct MissingClaws {
  ClawPair claws;
  bool is_told = false;
};

void add_missing(MissingClaws& missing, const FootCall& call) {
  for (const Action& action : call.actions) {
    if (action.kind != ActionKind::claw_missing) continue;
    missing.claws.add(action.claw);
    missing.is_told = true;
  }
}

// A claw that was said to be missing is missing from then on.
void mark_missing_claws(const CowStory& story, std::vector<FootRow>& feet) {
  std::map<Foot, MissingClaws> known;
  for (const TurnTold& turn : story.turns) {
    for (const FootCall& call : turn.body.turn.feet) add_missing(known[call.foot], call);
    for (FootRow& row : feet) {
      if (row.turn != turn.entry->envelope.id || !known[row.foot].is_told) continue;
      row.missing = known[row.foot].claws.claw();
    }
  }
}

void mark_called_twice(const CowStory& story, std::vector<FootRow>& feet) {
  for (const CalledTwice& called : called_twice(story)) {
    for (FootRow& row : feet) {
      const bool by_one_of_them =
          std::find(called.turns.begin(), called.turns.end(), row.turn) != called.turns.end();
      if (row.foot == called.foot && by_one_of_them) row.called_twice = true;
    }
  }
}

void add_findings(const CowStory& story, const TurnTold& told, Rows& rows) {
  std::int32_t position = 0;
  for (const FootCall& call : told.body.turn.feet) {
    for (const Finding& finding : call.findings) {
      const LesionFacts& facts = facts_of(finding.lesion);
      FindingRow row = row_of_turn<FindingRow>(story, told);
      row.position = ++position;
      row.foot = call.foot;
      row.claw = finding.claw;
      row.lesion = finding.lesion;
      row.family = facts.family;
      row.group = facts.group;
      row.words = finding.words;
      row.place = finding.place;
      row.zone = finding.zone;
      row.degree = finding.degree;
      row.stage = finding.stage;
      row.dd_infected = finding.dd_infected;
      rows.findings.push_back(std::move(row));
    }
  }
}

void add_actions(const CowStory& story, const TurnTold& told, Rows& rows) {
  std::int32_t position = 0;
  const auto add = [&](const Action& action, std::optional<Foot> foot) {
    ActionRow row = row_of_turn<ActionRow>(story, told);
    row.position = ++position;
    row.foot = foot;
    row.claw = action.claw;
    row.action = action.kind;
    row.product = action.product;
    row.material = action.material;
    row.by_whom = action.by_whom;
    row.said_for = day_meant(action.when, told.moment.day);
    row.directed_by = action.directed_by;
    row.withdrawal = withdrawal_known(action);
    if (action.medicine) row.listed = action.medicine->product;
    const WithdrawalEnds ends = withdrawal_ends(action, told.moment.day);
    if (ends.milk) {
      row.milk_till = ends.milk->day;
      row.milk_milking = ends.milk->milking;
    }
    row.meat_till = ends.meat;
    rows.actions.push_back(std::move(row));
  };
  for (const FootCall& call : told.body.turn.feet) {
    for (const Action& action : call.actions) add(action, call.foot);
  }
  for (const Action& action : told.body.turn.actions) add(action, std::nullopt);
}

void add_measures(const CowStory& story, const TurnTold& told, Rows& rows) {
  std::int32_t position = 0;
  for (const FootCall& call : told.body.turn.feet) {
    for (const Measure& measure : call.measures) {
      MeasureRow row = row_of_turn<MeasureRow>(story, told);
      row.position = ++position;
      row.foot = call.foot;
      row.claw = measure.claw;
      row.measure = measure.kind;
      row.length = measure.length;
      rows.measures.push_back(row);
    }
  }
}

}  // namespace

Rows picture_of_cow(HerdId herd, std::span<const CowId> group, std::span<const Entry> entries) {
  Rows rows;
  if (group.empty()) return rows;
  const CowStory story = story_of(herd, group, entries);
  if (story.empty()) return rows;

  rows.cow_numbers = numbers_of(story);
  rows.cows.push_back(cow_row_of(story, rows.cow_numbers));
  add_passport(story, rows);
  rows.past_findings = past_rows_of(story);
  rows.handling = handling_of(story);
  for (const TurnTold& turn : story.turns) {
    rows.turns.push_back(turn_row(story, turn));
    add_called(story, turn, rows);
    add_feet(story, turn, rows);
    add_findings(story, turn, rows);
    add_actions(story, turn, rows);
    add_measures(story, turn, rows);
  }
  mark_called_twice(story, rows.feet);
  mark_missing_claws(story, rows.feet);
  rows.cases = link_cases(story, rows.findings);
  rows.on_feet = fixtures_of(story);
  rows.tasks = tasks_of(story);
  rows.doubts = doubts_of(story, rows.cows.front());
  sort_by_key(rows);
  return rows;
}

namespace {

std::string apart_words(const Batch& batch) {
  std::string words;
  for (const std::string& apart : batch.apart) words += (words.empty() ? "" : "; ") + apart;
  return words;
}

/// Feet said later that day hold for what was counted before.
BatchRow batch_row(const VisitRow& visit, const Entry& entry, const BatchRecorded& body) {
  const Batch& batch = body.batch;
  BatchRow row;
  row.herd = visit.herd;
  row.visit = visit.visit;
  row.batch = entry.envelope.id;
  row.day = visit.day;
  row.animals = batch.animals;
  row.place = batch.place;
  row.counted = batch.counted;
  row.apart = static_cast<std::int32_t>(batch.apart.size());
  row.together = batch.together();
  row.nothing_found = batch.nothing_found ? row.together : 0;
  row.trimmed = batch.trimmed;
  row.lifted = batch.lifted.empty() ? visit.todays_feet : batch.lifted;
  row.feet = row.together * row.lifted.count();
  row.apart_words = apart_words(batch);
  row.caller = entry.envelope.caller.value_or(PersonId{});
  row.writer = entry.envelope.writer.value_or(PersonId{});
  row.words = joined(body.words);
  return row;
}

void add_batches(const VisitRow& visit, const std::vector<const Entry*>& counting, Rows& rows) {
  for (const Entry* entry : counting) {
    if (!names_subject(*entry, visit.visit.value)) continue;
    const auto body = body_as<BatchRecorded>(*entry);
    // Counted twice by mistake they stand in the other count.
    if (body && body->visit == visit.visit && body->batch.counted > 0) {
      rows.batches.push_back(batch_row(visit, *entry, *body));
    }
  }
}

/// None when it was never opened.
void add_visit_rows(HerdId herd, VisitId visit, const std::vector<const Entry*>& counting,
                    Rows& rows) {
  const std::map<VisitId, VisitFacts> all = facts_of_visits(counting, {visit});
  const auto found = all.find(visit);
  if (found == all.end() || found->second.opening == nullptr) return;
  const VisitFacts& facts = found->second;

  VisitRow row;
  row.herd = herd;
  row.visit = visit;
  row.day = facts.day().value_or(facts.opened.day);
  row.ordinal = facts.opened.ordinal;
  row.todays_feet = facts.corrected_feet.value_or(facts.opened.todays_feet);
  row.closed = facts.closed;
  row.opened_twice = facts.opened_twice;
  row.caller = facts.opening->envelope.caller.value_or(PersonId{});
  row.from_paper = facts.opened.from_paper;
  // Of a visit from paper that is the time at which somebody began to type.
  if (!row.from_paper) row.opened_at = to_text(facts.opening->envelope.at);
  add_batches(row, counting, rows);
  rows.visits.push_back(std::move(row));
}

}  // namespace

Rows picture_of_visit(HerdId herd, VisitId visit, std::span<const Entry> entries) {
  Rows rows;
  const Standing standing = standing_among(entries);
  std::vector<const Entry*> counting;
  for (const Entry* entry : standing.entries) {
    if (entry->envelope.scope == herd.value) counting.push_back(entry);
  }
  add_visit_rows(herd, visit, counting, rows);
  add_scoring_rows(herd, visit, counting, rows);
  add_walk_rows(herd, visit, counting, rows);
  add_change_rows(herd, visit, counting, rows);
  sort_by_key(rows);
  return rows;
}

}  // namespace evenclaw
