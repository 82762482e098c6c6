#include "core/api/show.hpp"

#include <algorithm>
#include <iterator>
#include <set>
#include <tuple>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/farm/farm_shown.hpp"
#include "core/api/herd_log.hpp"
#include "core/api/herds.hpp"
#include "core/api/identities.hpp"
#include "core/base/text.hpp"
#include "core/log/selection.hpp"
#include "core/sheets/batch_words.hpp"
#include "core/sheets/words.hpp"
#include "core/trade/told_ends.hpp"

namespace evenclaw {

namespace {

std::vector<Filter> of_cow(CowId cow) {
  return {{"cow", Compare::equal, Cell(to_text(cow))}};
}

FootSeen seen(const FootRow& row) {
  FootSeen foot;
  foot.day = row.day;
  foot.foot = row.foot;
  foot.turn = row.turn;
  foot.state = row.state;
  foot.trimmed = row.trimmed;
  foot.called_lame = row.called_lame;
  foot.note = row.note;
  if (row.missing != Claw::none) {
    const Wording& wording = english_wording();
    const bool is_told_which = row.missing != Claw::not_called;
    const std::string claw =
        is_told_which ? wording.claw(row.missing) : wording.say(Saying::a_claw);
    foot.missing = wording.say(Saying::claw_gone, {{"claw", claw}});
  }
  return foot;
}

std::string how_she_walks(const TurnRow& row) {
  const Wording& wording = english_wording();
  std::string words = row.walks_sound ? wording.say(Saying::walks_sound) : std::string();
  const std::string score = wording.mobility(row);
  if (!score.empty()) words += (words.empty() ? "" : ", ") + score;
  return words;
}

TurnSeen seen(const TurnRow& row, const std::vector<ActionRow>& actions) {
  const Wording& wording = english_wording();
  TurnSeen turn;
  turn.day = row.day;
  turn.turn = row.turn;
  turn.called = row.called;
  const bool is_told_why = row.reason != Reason::not_called || row.came_lame;
  if (is_told_why) turn.came = wording.reasons(row);
  turn.walked = how_she_walks(row);
  for (const ActionRow& action : actions) {
    if (action.turn == row.turn && !action.foot) turn.acts.push_back(wording.act(action, row.day));
  }
  turn.end = row.end;
  turn.end_reason = row.end_reason;
  turn.note = row.note;
  turn.seconds_in_crush = row.seconds_in_crush;
  return turn;
}

Outcome add_turns(Store& store, HerdId herd, CowId cow, CowShown& shown) {
  const auto turns = select_as<TurnRow>(store, herd, of_cow(cow), {"day", "turn"});
  if (!turns) return turns.faults();
  auto actions = select_as<ActionRow>(store, herd, of_cow(cow), {"position"});
  if (!actions) return actions.faults();
  let_later_ends_hold(*actions);
  const auto visits = select_as<VisitRow>(store, herd);
  if (!visits) return visits.faults();
  std::set<VisitId> from_paper;
  for (const VisitRow& visit : *visits) {
    if (visit.from_paper) from_paper.insert(visit.visit);
  }
  shown.turns.assign(turns->rbegin(), turns->rend());
  shown.of_her.reserve(turns->size());
  for (const TurnRow& row : *turns) {
    shown.of_her.push_back(seen(row, *actions));
    shown.of_her.back().from_paper = from_paper.count(row.visit) > 0;
  }
  std::stable_sort(shown.of_her.begin(), shown.of_her.end(),
                   [](const TurnSeen& a, const TurnSeen& b) { return b.day < a.day; });
  return Done{};
}

Result<std::vector<CowId>> group_of(Store& store, HerdId herd, CowId cow) {
  HerdLog log(store, herd);
  const auto groups = log.groups();
  if (!groups) return groups.faults();
  return groups->group_of(cow);
}

Result<std::vector<RemovedRecord>> removed_of(Store& store, HerdId herd,
                                              const std::vector<CowId>& cows) {
  std::vector<Uuid> group;
  group.reserve(cows.size());
  for (const CowId member : cows) group.push_back(member.value);
  return removed_records(store, herd, group);
}

/// One of several is shown; the others are told of.
Outcome add_those_called_alike(Store& store, HerdId herd, CowId cow, CowShown& shown) {
  const auto rows = select_as<CowRow>(store, herd);
  if (!rows) return rows.faults();
  for (const CowRow& row : *rows) {
    const bool is_alike = row.cow != cow && row.number.empty() &&
                          fold_case(recorded_as(row)) == fold_case(shown.cow_said);
    if (is_alike) shown.called_alike.push_back({row.cow, recorded_as(row), row.last_seen});
  }
  std::stable_sort(shown.called_alike.begin(), shown.called_alike.end(),
                   [](const MayBeHer& a, const MayBeHer& b) { return b.last_seen < a.last_seen; });
  return Done{};
}

Outcome add_what_is_in_doubt(Store& store, HerdId herd, CowId cow, CowShown& shown) {
  // Of a damaged log the rows can still be looked at; `check` says what is damaged.
  const auto group = group_of(store, herd, cow);
  const auto removed = group ? removed_of(store, herd, *group) : group.faults();
  if (removed) {
    std::copy_if(removed->rbegin(), removed->rend(), std::back_inserter(shown.removed),
                 [&](const RemovedRecord& record) { return record.cow == cow; });
  }
  auto news = group ? news_of_cow(store, herd, *group) : group.faults();
  if (news) shown.news = *std::move(news);
  if (shown.cow.number.empty()) return add_those_called_alike(store, herd, cow, shown);
  const auto maybe = cows_that_may_be(store, herd, shown.cow.number);
  if (!maybe) return maybe.faults();
  for (const CowRow& row : *maybe) {
    if (row.cow != cow) shown.may_be_her.push_back({row.cow, recorded_as(row), row.last_seen});
  }
  return Done{};
}

Result<std::vector<FootSeen>> feet_through_time(Store& store, HerdId herd, CowId cow) {
  const auto rows = select_as<FootRow>(store, herd, of_cow(cow));
  if (!rows) return rows.faults();
  const auto findings = select_as<FindingRow>(store, herd, of_cow(cow), {"position"});
  if (!findings) return findings.faults();
  auto actions = select_as<ActionRow>(store, herd, of_cow(cow), {"position"});
  if (!actions) return actions.faults();
  let_later_ends_hold(*actions);
  const auto measures = select_as<MeasureRow>(store, herd, of_cow(cow), {"position"});
  if (!measures) return measures.faults();
  const Wording& wording = english_wording();
  std::vector<FootSeen> feet;
  for (const FootRow& row : *rows) {
    FootSeen foot = seen(row);
    for (const FindingRow& finding : *findings) {
      if (finding.turn != row.turn || finding.foot != row.foot) continue;
      foot.found.push_back(wording.finding_at_claw(finding));
    }
    for (const ActionRow& action : *actions) {
      const bool is_of_it = action.turn == row.turn && action.foot == row.foot;
      const bool is_told = action.action == ActionKind::claw_missing && !foot.missing.empty();
      if (!is_of_it || is_told) continue;
      foot.acts.push_back(wording.act(action, row.day));
    }
    for (const MeasureRow& measure : *measures) {
      if (measure.turn != row.turn || measure.foot != row.foot) continue;
      foot.measured.push_back(wording.measure(measure));
    }
    feet.push_back(std::move(foot));
  }
  std::stable_sort(feet.begin(), feet.end(), [](const FootSeen& a, const FootSeen& b) {
    return std::tuple(b.day, a.foot) < std::tuple(a.day, b.foot);
  });
  return feet;
}

Outcome add_what_is_open(Store& store, HerdId herd, CowId cow, Day today, CowShown& shown) {
  const auto on_feet = select_as<OnFootRow>(store, herd, of_cow(cow));
  if (!on_feet) return on_feet.faults();
  for (const OnFootRow& row : *on_feet) {
    if (row.ended == FixtureEnd::still_on) shown.on_her.push_back(row);
  }
  const auto cases = select_as<CaseRow>(store, herd, of_cow(cow));
  if (!cases) return cases.faults();
  for (const CaseRow& row : *cases) {
    if (!row.not_found_on) shown.open_cases.push_back(row);
  }
  const auto due = list_due(store, herd, today);
  if (!due) return due.faults();
  for (const DueTask& task : due->tasks) {
    if (task.cow == cow) shown.open_tasks.push_back(task);
  }
  return Done{};
}

std::string text_of_cell(const Cell& cell) {
  if (const auto* number = std::get_if<std::int64_t>(&cell)) return std::to_string(*number);
  if (const auto* text = std::get_if<std::string>(&cell)) return *text;
  return {};
}

std::int64_t number_of_cell(const Cell& cell) {
  const auto* number = std::get_if<std::int64_t>(&cell);
  return number == nullptr ? 0 : *number;
}

/// The herd itself leads each counted row and is left out here.
CountLine count_line(const CountQuery& query, const Cells& cells) {
  CountLine line;
  const std::size_t groups = query.group_by.size();
  for (std::size_t i = 0; i < groups; ++i) line.groups.push_back(text_of_cell(cells[i + 1]));
  line.count = number_of_cell(cells[groups + 1]);
  for (std::size_t i = 0; i < query.sums.size(); ++i) {
    line.sums.push_back(number_of_cell(cells[groups + 2 + i]));
  }
  return line;
}

Result<NamedCount> counted(Store& store, HerdId herd, CountQuery query) {
  query.where.insert(query.where.begin(), {"herd", Compare::equal, Cell(to_text(herd))});
  const auto rows = store.count(query);
  if (!rows) return rows.faults();
  NamedCount count;
  count.name = query.name;
  count.columns = query.group_by;
  count.columns.emplace_back("count");
  count.columns.insert(count.columns.end(), query.sums.begin(), query.sums.end());
  for (const Cells& cells : *rows) count.lines.push_back(count_line(query, cells));
  return count;
}

PastSeen past_seen(const PastFindingRow& row) {
  FindingRow told;
  told.claw = row.claw;
  told.lesion = row.lesion;
  told.words = row.words;
  told.place = row.place;
  told.zone = row.zone;
  told.degree = row.degree;
  told.stage = row.stage;
  // Else the words of the list would stand in it, beside the name.
  if (!is_named_by_words(row.lesion)) told.words.clear();
  const Wording& wording = english_wording();
  const std::string foot = row.foot ? wording.foot(*row.foot) + ", " : std::string();
  return {row.day, foot + wording.finding_at_claw(told), row.words, row.remark,
          row.source.value_or("")};
}

Outcome add_past(Store& store, HerdId herd, CowId cow, CowShown& shown) {
  const auto rows = select_as<PastFindingRow>(store, herd, of_cow(cow));
  if (!rows) return rows.faults();
  for (const PastFindingRow& row : *rows) shown.past.push_back(past_seen(row));
  std::stable_sort(shown.past.begin(), shown.past.end(),
                   [](const PastSeen& a, const PastSeen& b) { return b.day < a.day; });
  return Done{};
}

Outcome add_passport(Store& store, HerdId herd, CowId cow, CowShown& shown) {
  auto tags = select_as<CowTagRow>(store, herd, of_cow(cow), {"valid_from"});
  if (!tags) return tags.faults();
  shown.tags = *std::move(tags);
  auto aliases = select_as<CowAliasRow>(store, herd, of_cow(cow), {"alias"});
  if (!aliases) return aliases.faults();
  shown.aliases = *std::move(aliases);
  auto facts = select_as<CowFactsRow>(store, herd, of_cow(cow));
  if (!facts) return facts.faults();
  shown.facts = *std::move(facts);
  auto life = select_as<CowLifeRow>(store, herd, of_cow(cow));
  if (!life) return life.faults();
  shown.life = *std::move(life);
  auto handling = select_as<HandlingRow>(store, herd, of_cow(cow));
  if (!handling) return handling.faults();
  shown.handling = *std::move(handling);
  auto scores = scores_of(store, herd, cow);
  if (!scores) return scores.faults();
  shown.scores = *std::move(scores);
  return Done{};
}

/// Who looks for a cow by what she was called by mistake wants to see where her record went.
Result<CowId> cow_to_show(Store& store, HerdId herd, std::string_view said, Day today) {
  const auto cow = find_cow(store, herd, said, today);
  if (cow || cow.faults().front().slug != "cow-not-found") return cow;
  const auto called = find_cow_called(store, herd, said);
  if (!called) return called.faults();
  return *called ? Result<CowId>(**called) : cow;
}

}  // namespace

Result<CowShown> show_cow(Store& store, HerdId herd, std::string_view said, Day today) {
  const auto cow = cow_to_show(store, herd, said, today);
  if (!cow) return cow.faults();
  const auto rows = select_as<CowRow>(store, herd, of_cow(*cow));
  if (!rows) return rows.faults();
  const auto known = herd_of(store, herd);
  if (!known) return known.faults();
  CowShown shown;
  shown.herd_name = known->name;
  if (!rows->empty()) shown.cow = rows->front();
  shown.cow_said = recorded_as(shown.cow);
  auto numbers = select_as<CowNumberRow>(store, herd, of_cow(*cow), {"valid_from"});
  if (!numbers) return numbers.faults();
  shown.numbers = *std::move(numbers);
  auto called = select_as<CowCalledRow>(store, herd, of_cow(*cow), {"day"});
  if (!called) return called.faults();
  shown.called_first = *std::move(called);
  auto feet = feet_through_time(store, herd, *cow);
  if (!feet) return feet.faults();
  shown.feet = *std::move(feet);
  Outcome added = add_turns(store, herd, *cow, shown);
  if (added) added = add_what_is_in_doubt(store, herd, *cow, shown);
  if (added) added = add_passport(store, herd, *cow, shown);
  if (added) added = add_past(store, herd, *cow, shown);
  if (added) added = add_what_is_open(store, herd, *cow, today, shown);
  if (!added) return added.faults();
  return shown;
}

Result<HerdShown> show_herd(Store& store, HerdId herd) {
  const auto known = herd_of(store, herd);
  if (!known) return known.faults();
  HerdShown shown;
  shown.herd = herd;
  shown.name = known->name;
  auto cows = select_as<CowRow>(store, herd, {}, {"number"});
  if (!cows) return cows.faults();
  shown.cows = *std::move(cows);
  auto visits = select_as<VisitRow>(store, herd, {}, {"day", "ordinal"});
  if (!visits) return visits.faults();
  shown.visits.assign(visits->rbegin(), visits->rend());
  if (!shown.visits.empty()) {
    // Of a damaged log the rows can still be looked at; `check` says what is damaged.
    auto state = closing_state(store, visit_of(shown.visits.front()));
    if (state) shown.open = std::move(state->open);
  }
  auto scorings = scorings_of(store, herd);
  if (!scorings) return scorings.faults();
  shown.scorings = *std::move(scorings);
  auto walks = walks_of(store, herd);
  if (!walks) return walks.faults();
  shown.walks = *std::move(walks);
  auto changes = changes_of(store, herd);
  if (!changes) return changes.faults();
  shown.changes = *std::move(changes);
  for (const CountQuery& query : named_counts()) {
    auto count = counted(store, herd, query);
    if (!count) return count.faults();
    shown.counts.push_back(*std::move(count));
  }
  return shown;
}

Result<VisitShown> show_visit(const Ports& ports, const Visit& visit) {
  auto state = closing_state(ports.store, visit);
  if (!state) return state.faults();
  auto open = with_names_shown(std::move(state->open), ports.directory);
  if (!open) return open.faults();
  auto removed = removed_records(ports.store, visit.herd, {visit.visit.value});
  auto counts = removed_counts(ports.store, visit.herd, visit.visit);
  VisitShown shown{visit, state->cows, 0, {}, {}, {}, *std::move(open)};
  // Of a damaged log the rows can still be looked at; `check` says what is damaged.
  if (removed) shown.removed = *std::move(removed);
  if (counts) shown.removed_counts = *std::move(counts);
  auto rows = select_as<BatchRow>(ports.store, visit.herd,
                                  {{"visit", Compare::equal, Cell(to_text(visit.visit))}});
  if (!rows) return rows.faults();
  const Wording& wording = english_wording();
  for (BatchRow& row : *rows) {
    shown.together += row.together;
    std::string name = batch_name(row, wording);
    std::string words = batch_words(row, wording);
    shown.batches.push_back({std::move(name), std::move(words), std::move(row)});
  }
  return shown;
}

}  // namespace evenclaw
