#include "core/sheets/vets_page.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <utility>

#include "core/sheets/also_said.hpp"
#include "core/sheets/appended.hpp"
#include "core/sheets/foot_lines.hpp"
#include "core/sheets/found_by_kind.hpp"
#include "core/sheets/off_label_floor.hpp"
#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/vet_box.hpp"
#include "core/sheets/vet_urgency.hpp"
#include "core/sheets/withdrawal_known.hpp"
#include "core/sheets/withdrawal_said.hpp"
#include "core/trade/lame_score.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/medicine_use.hpp"
#include "core/trade/mobility.hpp"

namespace evenclaw {

namespace {

using FootOfCow = std::pair<CowId, Foot>;

// Of so few the list cow by cow is short enough to be read by the vet: our judgement.
constexpr std::size_t most_of_few_cows = 5;

std::string n_of(Saying saying, std::size_t n, std::size_t of, const Wording& wording) {
  return wording.say(saying, {{"n", std::to_string(n)}, {"of", std::to_string(of)}});
}

const CaseRow* case_of(const CowSeen& cow, const FindingRow& finding) {
  for (const CaseRow* row : cow.cases) {
    if (row->case_id == finding.case_id) return row;
  }
  return nullptr;
}

bool was_blocked_again(const CowSeen& cow, Foot foot) {
  return std::any_of(cow.actions.begin(), cow.actions.end(), [&](const ActionRow* row) {
    return row->foot == foot && row->action == ActionKind::block_again;
  });
}

/// "since Tue 29 Sep, found at 3 visits; blocked again, not healed"; "" of what is new.
std::string history_words(const CowSeen& cow, const FindingRow& finding, const VisitView& view) {
  const Wording& wording = view.wording;
  const Day today = view.input.visit.day;
  std::vector<std::string> parts;
  const CaseRow* row = case_of(cow, finding);
  const bool is_relapse = finding.step == CaseStep::relapse || (row != nullptr && row->relapse);
  if (is_relapse) parts.push_back(wording.say(Saying::came_back));
  if (row != nullptr && row->first_day < today) {
    parts.push_back(
        wording.say(Saying::found_since, {{"date", wording.date(row->first_day, today)}}));
    parts.push_back(wording.count(Saying::found_at_visits,
                                  static_cast<std::size_t>(std::max(row->times_found, 1))));
  }
  if (row != nullptr && row->grew_worse) parts.push_back(wording.say(Saying::grew_worse));
  // Nothing that was found for the first time today did not heal under the old block.
  if (!parts.empty() && was_blocked_again(cow, finding.foot)) {
    ActionRow act;
    act.action = ActionKind::block_again;
    parts.push_back(wording.act(act, today));
  }
  return clauses(parts);
}

std::vector<Runs> finding_row(const CowSeen& cow, const FindingRow& row, const VisitView& view) {
  std::string found = view.wording.finding_at_claw(row);
  for (const std::string& sign : signs_of(view, cow, row.foot)) found += "; " + sign;
  const std::string looks = view.names.beside_label(cow.cow);
  Runs what = {plain(found)};
  if (!looks.empty()) what.insert(what.begin(), strong(looks + ": "));
  return {{plain(view.names.label(cow.cow))},
          {plain(unbroken(view.wording.foot(row.foot)))},
          std::move(what)};
}

/// What came back or does not heal, each finding with its history.
std::vector<Block> found_again(const VisitView& view) {
  const Wording& wording = view.wording;
  Table table{"",
              {{wording.say(Saying::column_cow)},
               {wording.say(Saying::column_foot)},
               {wording.say(Saying::column_found)},
               {wording.say(Saying::column_before)}},
              {}};
  std::size_t all = 0;
  for (const CowSeen& cow : view.cows) {
    for (const FindingRow* row : cow.findings) {
      ++all;
      const std::string history = history_words(cow, *row, view);
      if (history.empty()) continue;
      table.rows.push_back(finding_row(cow, *row, view));
      table.rows.back().push_back({plain(history)});
    }
  }
  if (table.rows.empty()) return {};
  const std::string aside = n_of(Saying::of_findings, table.rows.size(), all, wording);
  return {Heading{3, wording.say(Saying::vet_again_title), aside}, std::move(table)};
}

bool is_found_on(const CowSeen& cow, Foot foot) {
  return std::any_of(cow.findings.begin(), cow.findings.end(),
                     [foot](const FindingRow* row) { return row->foot == foot; });
}

std::vector<std::string> signs_apart(const CowSeen& cow, const VisitView& view) {
  std::vector<std::string> parts = signs_of(view, cow, std::nullopt);
  for (const Foot foot : all_feet) {
    if (is_found_on(cow, foot)) continue;
    for (const std::string& sign : signs_of(view, cow, foot)) {
      parts.push_back(view.wording.foot(foot) + ", " + sign);
    }
  }
  return parts;
}

/// Signs that do not stand beside a finding, of cows who are not for the vet: he knows of them.
std::vector<Block> signs(const VisitView& view) {
  std::set<CowId> told;
  for (const CowForVet& called : cows_for_vet(view)) told.insert(called.cow);
  Bullets bullets;
  for (const CowSeen& cow : view.cows) {
    const std::vector<std::string> parts = signs_apart(cow, view);
    if (parts.empty() || told.count(cow.cow) > 0) continue;
    bullets.items.push_back(
        {strong(view.names.in_text(cow.cow)), plain(as_sentence(' ' + clauses(parts)))});
  }
  if (bullets.items.empty()) return {};
  return {Heading{3, view.wording.say(Saying::vet_signs_title)}, std::move(bullets)};
}

/// She came lame, and nothing was found on the legs she is lame on; on none, when no leg was
/// called.
bool is_unexplained(const CowSeen& cow) {
  const auto is_meant = [&](Foot foot) { return cow.lame.empty() || cow.lame.has(foot); };
  const bool is_found = std::any_of(cow.findings.begin(), cow.findings.end(),
                                    [&](const FindingRow* row) { return is_meant(row->foot); });
  const bool is_seen =
      std::any_of(cow.actions.begin(), cow.actions.end(), [&](const ActionRow* row) {
        return row->foot && counts_as_found(row->action) && is_meant(*row->foot);
      });
  return cow.came_lame && cow.in_crush && !is_found && !is_seen;
}

/// On which legs she is lame, which of them stayed down, and how she walks.
std::vector<std::string> lameness_words(const CowSeen& cow, const Wording& wording) {
  std::vector<std::string> parts = {
      cow.lame.empty() ? wording.say(Saying::lame_leg_not_called)
                       : wording.say(Saying::lame_on, {{"feet", wording.feet(cow.lame)}})};
  FootSet not_lifted;
  for (const Foot foot : all_feet) {
    if (cow.lame.has(foot) && !cow.lifted.has(foot)) not_lifted.add(foot);
  }
  if (!not_lifted.empty()) {
    parts.push_back(wording.say(Saying::foot_not_lifted, {{"feet", wording.feet(not_lifted)}}));
  }
  for (const Foot foot : all_feet) {
    if (!cow.lame.has(foot) || !cow.lifted.has(foot)) continue;
    parts.push_back(wording.foot(foot) + ' ' + state_words(cow, foot, wording));
  }
  for (const TurnRow* turn : cow.turns) {
    const std::string score = wording.mobility(*turn);
    if (!score.empty()) parts.push_back(score);
  }
  return parts;
}

std::vector<Block> unexplained(const VisitView& view) {
  const Wording& wording = view.wording;
  Bullets bullets;
  std::size_t lame = 0;
  for (const CowSeen& cow : view.cows) {
    if (!cow.came_lame || !cow.in_crush) continue;
    ++lame;
    if (!is_unexplained(cow)) continue;
    std::string words;
    for (const std::string& part : lameness_words(cow, wording)) {
      words += (words.empty() ? " " : ", ") + part;
    }
    bullets.items.push_back({strong(view.names.in_text(cow.cow)), plain(words + '.')});
  }
  if (bullets.items.empty()) return {};
  const std::string aside = n_of(Saying::of_lame, bullets.items.size(), lame, wording);
  return {Heading{3, wording.say(Saying::vet_unexplained_title), aside}, std::move(bullets)};
}

/// "blood drawn on 2 of 82 feet lifted: 412 left hind and 513 right hind"; "" when on none.
std::string feet_with(Lesion lesion, const VisitView& view) {
  const Wording& wording = view.wording;
  std::set<FootOfCow> told;
  std::vector<std::string> where;
  for (const CowSeen& cow : view.cows) {
    for (const FindingRow* row : cow.findings) {
      if (row->lesion != lesion || !told.emplace(cow.cow, row->foot).second) continue;
      where.push_back(view.names.in_text(cow.cow) + ' ' + wording.foot(row->foot));
    }
  }
  if (where.empty()) return {};
  return wording.say(Saying::on_feet_where, {{"what", capitalised(wording.lesion(lesion))},
                                             {"n", std::to_string(where.size())},
                                             {"of", std::to_string(feet_lifted(view))},
                                             {"where", wording.list(where)}});
}

/// The cow that bleeds still is told before those of whom blood was drawn.
std::string bleeding_words(const VisitView& view) {
  const Wording& wording = view.wording;
  ActionRow bleeding;
  bleeding.action = ActionKind::bleeding;
  std::vector<std::string> where;
  for (const CowSeen& cow : view.cows) {
    for (const ActionRow* row : cow.actions) {
      if (row->action != ActionKind::bleeding) continue;
      const std::string foot = row->foot ? ' ' + wording.foot(*row->foot) : std::string();
      where.push_back(view.names.in_text(cow.cow) + foot);
    }
  }
  if (where.empty()) return {};
  return wording.say(Saying::on_feet_where,
                     {{"what", capitalised(wording.act(bleeding, view.input.visit.day))},
                      {"n", std::to_string(where.size())},
                      {"of", std::to_string(feet_lifted(view))},
                      {"where", wording.list(where)}});
}

std::vector<Block> cut_too_far(const VisitView& view) {
  Bullets bullets;
  const std::string bleeding = bleeding_words(view);
  if (!bleeding.empty()) bullets.items.push_back({plain(bleeding)});
  for (const Lesion lesion : {Lesion::blood_drawn, Lesion::ts}) {
    const std::string words = feet_with(lesion, view);
    if (!words.empty()) bullets.items.push_back({plain(words)});
  }
  if (bullets.items.empty()) return {};
  return {Heading{3, view.wording.say(Saying::vet_cut_title)}, std::move(bullets)};
}

/// As it was told: where the list holds it longer, its row was moved on.
std::string telling_words(const ActionRow& row, const VisitView& view) {
  ActionRow told = row;
  const auto till = row.milk_till ? row.milk_till : row.meat_till;
  if (row.said_for && till && *row.said_for != *till) {
    (row.milk_till ? told.milk_till : told.meat_till) = row.said_for;
    told.milk_milking = std::nullopt;
  }
  return view.wording.act(told, view.input.visit.day);
}

/// What was said of her milk and meat because of this, which no list tells of it; "not recorded"
/// where nothing was said.
std::string told_by_mouth(const CowSeen& cow, const ActionRow& product, const VisitView& view) {
  std::vector<std::string> told;
  bool is_certain = true;
  for (const SaidOf& one : withdrawals_said(cow.actions)) {
    const auto& of = one.may_be_of;
    if (std::find(of.begin(), of.end(), &product) == of.end()) continue;
    is_certain = is_certain && one.is_of_one;
    std::string words = telling_words(*one.telling, view);
    const bool is_new = std::find(told.begin(), told.end(), words) == told.end();
    if (is_new) told.push_back(std::move(words));
  }
  if (told.empty()) return view.wording.say(Saying::withdrawal_not_said);
  const Saying saying = is_certain ? Saying::withdrawal_by_mouth : Saying::withdrawal_of_which;
  return view.wording.say(saying, {{"what", view.wording.list(told)}});
}

std::string ends_held(const ActionRow& row, const VisitView& view) {
  const Wording& wording = view.wording;
  std::vector<std::string> ends;
  const auto add = [&](Saying saying, const std::optional<Day>& till) {
    if (!till) return;
    ends.push_back(wording.say(saying, {{"date", wording.date(*till, view.input.visit.day)}}));
  };
  if (row.milk_till && row.milk_milking) {
    ActionRow milk;
    milk.action = ActionKind::milk_withheld;
    milk.milk_till = row.milk_till;
    milk.milk_milking = row.milk_milking;
    ends.push_back(wording.act(milk, view.input.visit.day));
  } else {
    add(Saying::milk_till, row.milk_till);
  }
  add(Saying::meat_till, row.meat_till);
  return wording.list(ends);
}

std::string withdrawal_stated(const CowSeen& cow, const ActionRow& row, const VisitView& view) {
  const bool is_listed =
      row.withdrawal == WithdrawalKnown::none || row.withdrawal == WithdrawalKnown::held_back;
  if (!is_listed) return told_by_mouth(cow, row, view);
  const ActionRow held = with_ends_that_hold(cow.actions, withdrawals_said(cow.actions), row);
  return held.withdrawal == WithdrawalKnown::none ? view.wording.say(Saying::withdrawal_none)
                                                  : ends_held(held, view);
}

/// With the half of it that is missing, and the law's floor where it lies below.
std::string withdrawal_words(const CowSeen& cow, const ActionRow& row, const VisitView& view) {
  const std::string stated =
      with_floor_told(view, cow.actions, row, withdrawal_stated(cow, row, view));
  const auto half = half_not_known(view, withdrawals_said(cow.actions), row);
  if (!half) return stated;
  const std::string missing = half_words(*half, view.wording);
  const bool is_none_told = stated == view.wording.say(Saying::withdrawal_not_said);
  return is_none_told ? missing : clauses({stated, missing});
}

/// What was put on or given in the same way, with the same withdrawal.
struct GivenAlike {
  std::string what;
  std::string withdrawal;
  std::vector<std::pair<CowId, std::vector<std::string>>> where;  // no feet: all of her
};

/// "Spray (slowmix), by direction of Dr Moor": the list names who directs it.
std::string what_given(const ActionRow& row, const VisitView& view) {
  std::string what = view.wording.act(row, view.input.visit.day);
  const ProductStated* stated = stated_of(view, row);
  if (stated != nullptr && !stated->vet.empty()) {
    what += ", " + view.wording.say(Saying::directed_by_name, {{"name", stated->vet}});
  }
  return what;
}

void add_given(std::vector<GivenAlike>& all, const CowSeen& cow, const ActionRow& row,
               const VisitView& view) {
  const std::string what = what_given(row, view);
  const std::string withdrawal = withdrawal_words(cow, row, view);
  auto alike = std::find_if(all.begin(), all.end(), [&](const GivenAlike& one) {
    return one.what == what && one.withdrawal == withdrawal;
  });
  if (alike == all.end()) alike = all.insert(all.end(), {what, withdrawal, {}});
  const bool is_new = alike->where.empty() || alike->where.back().first != cow.cow;
  if (is_new) alike->where.push_back({cow.cow, {}});
  if (row.foot) alike->where.back().second.push_back(view.wording.foot(*row.foot));
}

Runs where_given(const GivenAlike& given, const VisitView& view) {
  Runs words;
  for (const auto& [cow, feet] : given.where) {
    if (!words.empty()) words.push_back(plain("; "));
    words.push_back(strong(view.names.in_text(cow)));
    if (!feet.empty()) words.push_back(plain(' ' + view.wording.list(feet)));
  }
  return words;
}

std::vector<Block> medicines(const VisitView& view) {
  const Wording& wording = view.wording;
  std::vector<GivenAlike> all;
  for (const CowSeen& cow : view.cows) {
    for (const ActionRow* row : cow.actions) {
      const bool is_given = is_medicine_act(row->action) || is_given_unnamed(row->action);
      if (is_given) add_given(all, cow, *row, view);
    }
  }
  if (all.empty()) return {};
  Table table{"",
              {{wording.say(Saying::column_medicine)},
               {wording.say(Saying::column_withdrawal)},
               {wording.say(Saying::column_where)}},
              {},
              RowHead::words};
  for (const GivenAlike& given : all) {
    table.rows.push_back(
        {{plain(capitalised(given.what))}, {plain(given.withdrawal)}, where_given(given, view)});
  }
  return {Heading{3, wording.say(Saying::vet_medicines_title)}, std::move(table)};
}

std::string stage_words(DdStage stage, const Wording& wording) {
  return stage == DdStage::not_called ? wording.say(Saying::stage_not_called)
                                      : wording.stage(stage);
}

/// "Digital dermatitis on 9 of 82 feet lifted: raw on 4, chronic on 3." A foot with
/// two stages counts for both of them.
std::vector<Block> dd_stages(const VisitView& view) {
  const Wording& wording = view.wording;
  std::set<FootOfCow> feet;
  std::map<DdStage, std::set<FootOfCow>> by_stage;
  for (const CowSeen& cow : view.cows) {
    for (const FindingRow* row : cow.findings) {
      if (row->lesion != Lesion::dd) continue;
      feet.emplace(cow.cow, row->foot);
      by_stage[row->stage].emplace(cow.cow, row->foot);
    }
  }
  if (feet.empty()) return {};
  std::vector<std::string> stages;
  for (const EnumWord<DdStage>& stage : EnumWords<DdStage>::table) {
    const auto at = by_stage.find(stage.value);
    if (at == by_stage.end()) continue;
    stages.push_back(wording.say(Saying::stage_on, {{"stage", stage_words(stage.value, wording)},
                                                    {"n", std::to_string(at->second.size())}}));
  }
  return {Heading{3, wording.say(Saying::vet_dd_title)},
          Paragraph{{plain(
              wording.say(Saying::on_feet_where, {{"what", capitalised(wording.lesion(Lesion::dd))},
                                                  {"n", std::to_string(feet.size())},
                                                  {"of", std::to_string(feet_lifted(view))},
                                                  {"where", wording.list(stages)}}))}}};
}

/// Those that walk badly are named.
std::string scored_words(MobilityScale scale, std::int32_t score,
                         const std::vector<std::string>& cows, const Wording& wording) {
  const std::string words =
      wording.say(Saying::score_on_cows,
                  {{"score", std::to_string(score)}, {"n", std::to_string(cows.size())}});
  return is_lame_score({scale, score}) ? words + " (" + wording.list(cows) + ')' : words;
}

/// The last score of a cow counts when she was scored twice.
std::vector<Block> mobility(const VisitView& view) {
  const Wording& wording = view.wording;
  std::map<MobilityScale, std::map<std::int32_t, std::vector<std::string>>> counts;
  std::map<MobilityScale, std::size_t> scored;
  std::size_t in_crush = 0;
  for (const CowSeen& cow : view.cows) {
    in_crush += cow.in_crush ? 1 : 0;
    const auto last = std::find_if(cow.turns.rbegin(), cow.turns.rend(), [](const TurnRow* turn) {
      return turn->mobility_scale && turn->mobility_score;
    });
    if (last == cow.turns.rend()) continue;
    counts[*(*last)->mobility_scale][*(*last)->mobility_score].push_back(
        view.names.in_text(cow.cow));
    ++scored[*(*last)->mobility_scale];
  }
  if (counts.empty()) return {};
  Bullets bullets;
  for (const auto& [scale, of_scale] : counts) {
    std::vector<std::string> parts;
    for (const auto& [score, cows] : of_scale) {
      parts.push_back(scored_words(scale, score, cows, wording));
    }
    bullets.items.push_back(
        {plain(wording.say(Saying::scored_on_scale, {{"scale", std::string(word_of(scale))},
                                                     {"n", std::to_string(scored[scale])},
                                                     {"of", std::to_string(in_crush)},
                                                     {"list", wording.list(parts)}}))});
  }
  return {Heading{3, wording.say(Saying::vet_mobility_title)}, std::move(bullets)};
}

/// What the list cow by cow does not tell: what was before, and what is counted over all.
std::vector<Block> beyond_the_cards(const VisitView& view) {
  std::vector<Block> parts = signs(view);
  append(parts, found_again(view));
  append(parts, unexplained(view));
  append(parts, cut_too_far(view));
  append(parts, medicines(view));
  append(parts, mobility(view));
  return parts;
}

Heading heading_of(const VisitView& view) {
  return {2, capitalised(view.wording.say(Saying::for_vet))};
}

}  // namespace

std::vector<Block> vets_page(const VisitView& view) {
  std::vector<Block> parts = called_to(view);  // it may be handed on alone
  append(parts, signs(view));
  append(parts, also_said_for_vet(view));
  append(parts, found_again(view));
  append(parts, found_by_kind(view));
  append(parts, unexplained(view));
  append(parts, cut_too_far(view));
  append(parts, medicines(view));
  append(parts, dd_stages(view));
  append(parts, mobility(view));
  if (parts.empty()) return {};
  std::vector<Block> blocks = {PageBreak{}, heading_of(view),
                               Note{{plain(view.wording.say(Saying::how_to_read))}}};
  append(blocks, std::move(parts));
  return blocks;
}

bool has_few_cows(const VisitView& view) {
  return view.cows.size() <= most_of_few_cows;
}

std::vector<Block> vets_part_of_few(const VisitView& view) {
  std::vector<Block> parts = beyond_the_cards(view);
  if (parts.empty()) return {};
  std::vector<Block> blocks = {heading_of(view)};
  append(blocks, std::move(parts));
  return blocks;
}

}  // namespace evenclaw
