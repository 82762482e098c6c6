#include "core/sheets/cow_cards.hpp"

#include <algorithm>
#include <utility>

#include "core/sheets/also_said.hpp"
#include "core/sheets/appended.hpp"
#include "core/sheets/callers.hpp"
#include "core/sheets/cow_track.hpp"
#include "core/sheets/day_sentences.hpp"
#include "core/sheets/foot_lines.hpp"

namespace evenclaw {

namespace {

/// Nothing but "nothing found" on every one of today's feet, and nothing else to tell.
bool is_all_well(const CowSeen& cow, const VisitView& view) {
  const bool something = !cow.findings.empty() || !cow.actions.empty() || !cow.measures.empty() ||
                         !cow.doubts.empty() || !cow.on_feet.empty() || !cow.warnings.empty() ||
                         cow.came_lame || cow.turns.size() != 1;
  if (something || cow.turns[0]->end != TurnEnd::done || !cow.turns[0]->note.empty()) return false;
  if (cow.feet.empty() || !unsaid_feet(cow, view.input.visit.todays_feet).empty()) return false;
  if (!feet_not_judged(cow).empty()) return false;
  const bool feet_well = std::all_of(cow.feet.begin(), cow.feet.end(), [&](const FootRow* row) {
    return row->state == FootState::nothing_found && row->note.empty() &&
           row->trimmed == cow.feet[0]->trimmed;
  });
  const bool gone_today = std::any_of(cow.cases.begin(), cow.cases.end(), [&](const CaseRow* row) {
    return row->not_found_on == view.input.visit.day;
  });
  return feet_well && !gone_today;
}

std::string turn_end_words(const TurnRow& turn, const Wording& wording) {
  if (turn.end == TurnEnd::done) return {};
  return wording.say(turn.end == TurnEnd::not_done ? Saying::was_not_done : Saying::was_unfinished);
}

/// "called by Ben", where most were called by somebody else.
std::string called_by(const TurnRow& turn, const VisitView& view) {
  const std::string name = other_caller(view.input, turn, view.wording);
  return name.empty() ? name : view.wording.say(Saying::cow_called_by, {{"name", name}});
}

bool tells_why(const TurnRow* turn) {
  return turn->reason != Reason::not_called || turn->came_lame;
}

/// Why a turn ended as it did may be whole lines that nobody understood: these need the width.
void add_why_ended(std::vector<TermLine>& lines, const CowSeen& cow, const Wording& wording) {
  for (const TurnRow* turn : cow.turns) {
    const std::string end = turn_end_words(*turn, wording);
    if (end.empty() || turn->end_reason.empty()) continue;
    lines.push_back({capitalised(end), {strong(as_sentence(turn->end_reason))}});
  }
}

/// "Lame on left hind. Not finished."
Runs head_of(const CowSeen& cow, const VisitView& view) {
  const Wording& wording = view.wording;
  Runs head;
  const auto add = [&](const std::string& words, Emphasis emphasis) {
    if (words.empty()) return;
    head.push_back({(head.empty() ? "" : " ") + as_sentence(words), emphasis});
  };
  add(view.names.beside_label(cow.cow), Emphasis::strong);
  std::string caller;
  // That no reason was called is said above all cards.
  for (const TurnRow* turn : cow.turns) {
    if (tells_why(turn)) add(wording.reasons(*turn), Emphasis::plain);
    if (turn->walks_sound) add(wording.say(Saying::walks_sound), Emphasis::plain);
    add(wording.mobility(*turn), Emphasis::plain);
    if (turn->end_reason.empty()) add(turn_end_words(*turn, wording), Emphasis::strong);
    const std::string called = called_by(*turn, view);
    if (called != caller) add(called, Emphasis::plain);
    caller = called;
  }
  return head;
}

Saying rank_saying(Rank rank) {
  switch (rank) {
    case Rank::note:
      return Saying::noted;
    case Rank::ask:
      return Saying::asked;
    case Rank::stop:
      return Saying::stopped;
  }
  return Saying::noted;
}

/// Doubts that nothing else on the card shows.
bool is_still_asked(const DoubtRow& doubt, const CowSeen& cow) {
  switch (doubt.kind) {
    case DoubtKind::doubtful_number:
    case DoubtKind::unnumbered:
    case DoubtKind::told_gone:
    case DoubtKind::number_given_twice:
    case DoubtKind::two_versions:
      return true;
    case DoubtKind::unanswered:
      return cow.warnings.empty();
    case DoubtKind::unfinished:
    case DoubtKind::not_done:
    case DoubtKind::called_twice:
    case DoubtKind::lifted_not_called:
    case DoubtKind::place_not_called:
    case DoubtKind::degree_not_called:
    case DoubtKind::stage_not_called:
      return false;
  }
  return false;
}

void add_whole_cow(std::vector<TermLine>& lines, const CowSeen& cow, const VisitView& view) {
  const Wording& wording = view.wording;
  std::vector<std::string> acts;
  for (const ActionRow* row : cow.actions) {
    if (!row->foot) acts.push_back(wording.act(*row, view.input.visit.day));
  }
  if (!acts.empty()) {
    lines.push_back({wording.say(Saying::the_cow), {plain(as_sentence(wording.list(acts)))}});
  }
  for (const TurnRow* turn : cow.turns) {
    if (!turn->note.empty()) lines.push_back({wording.say(Saying::note), {plain(turn->note)}});
  }
  for (const WarningShown* shown : cow.warnings) {
    lines.push_back(
        {wording.say(rank_saying(shown->warning.rank)), {plain(warning_words(*shown, wording))}});
  }
  for (const DoubtRow* doubt : cow.doubts) {
    if (!is_still_asked(*doubt, cow)) continue;
    lines.push_back({wording.say(Saying::still_asked), {plain(doubt->words)}});
  }
}

Card card_of(const CowSeen& cow, const VisitView& view) {
  const FootSet& todays_feet = view.input.visit.todays_feet;
  Card card{view.names.label(cow.cow), head_of(cow, view), {}, std::nullopt};
  add_why_ended(card.lines, cow, view.wording);
  if (cow.in_crush || !cow.feet.empty()) {
    const std::vector<TermLine> of_feet = foot_lines(cow, view);
    card.lines.insert(card.lines.end(), of_feet.begin(), of_feet.end());
    const Track track = track_of(cow, view.input.visit.day, todays_feet);
    // The words tell of feet that show nothing, and a list of many cows is to stay short.
    if (shows_something(track)) {
      card.figure = track_figure(track, view.names.in_text(cow.cow), view.wording);
    }
  }
  add_whole_cow(card.lines, cow, view);
  return card;
}

std::string why_well(const CowSeen& cow, const VisitView& view) {
  const Wording& wording = view.wording;
  const TurnRow& turn = *cow.turns[0];
  std::string reason = wording.reasons(turn);
  if (turn.walks_sound) reason += ", " + wording.say(Saying::walks_sound);
  if (const std::string score = wording.mobility(turn); !score.empty()) reason += ", " + score;
  const std::string caller = called_by(turn, view);
  if (!caller.empty()) reason += ", " + caller;
  return reason;
}

std::string where_well(const CowSeen& cow, const Wording& wording) {
  FootSet feet;
  for (const FootRow* row : cow.feet) feet.add(row->foot);
  std::string where = wording.feet(feet);
  if (cow.feet[0]->trimmed == Trimmed::yes) where += ", " + wording.say(Saying::trimmed);
  if (cow.feet[0]->trimmed == Trimmed::no) where += ", " + wording.say(Saying::not_trimmed);
  return where;
}

/// Cows of whom the same is to be told share a row.
struct WellAlike {
  std::string why;
  std::string where;
  std::vector<std::string> cows;
};

std::vector<WellAlike> well_alike(const VisitView& view) {
  std::vector<WellAlike> rows;
  for (const CowSeen& cow : view.cows) {
    if (!is_all_well(cow, view)) continue;
    const std::string why = why_well(cow, view);
    const std::string where = where_well(cow, view.wording);
    auto row = std::find_if(rows.begin(), rows.end(), [&](const WellAlike& one) {
      return one.why == why && one.where == where;
    });
    if (row == rows.end()) row = rows.insert(rows.end(), {why, where, {}});
    row->cows.push_back(view.names.in_text(cow.cow));
  }
  std::stable_sort(rows.begin(), rows.end(), [](const WellAlike& a, const WellAlike& b) {
    return a.cows.size() > b.cows.size();
  });
  return rows;
}

std::string n_of_all(std::size_t n, const VisitView& view) {
  return view.wording.say(Saying::of_cows,
                          {{"n", std::to_string(n)}, {"of", std::to_string(view.cows.size())}});
}

std::vector<Block> nothing_found(const VisitView& view) {
  const Wording& wording = view.wording;
  Table table{"",
              {{wording.say(Saying::column_reason)},
               {wording.say(Saying::column_feet)},
               {wording.say(Saying::column_count), Align::end},
               {wording.say(Saying::column_cows)}},
              {},
              RowHead::words};
  std::size_t all = 0;
  for (const WellAlike& row : well_alike(view)) {
    all += row.cows.size();
    table.rows.push_back({{plain(capitalised(row.why))},
                          {plain(row.where)},
                          {plain(std::to_string(row.cows.size()))},
                          {strong(wording.list(row.cows))}});
  }
  if (table.rows.empty()) return {};
  return {Heading{3, capitalised(wording.state(FootState::nothing_found)), n_of_all(all, view)},
          std::move(table)};
}

}  // namespace

std::vector<Block> cow_by_cow(const VisitView& view) {
  const Wording& wording = view.wording;
  std::vector<Block> cards;
  for (const CowSeen& cow : view.cows) {
    if (!is_all_well(cow, view)) cards.emplace_back(card_of(cow, view));
  }
  std::vector<Block> blocks = {Heading{2, wording.say(Saying::cow_by_cow)}};
  if (!cards.empty()) {
    blocks.emplace_back(track_key(wording));
    blocks.emplace_back(
        Note{{plain(wording.say(Saying::how_to_read) + reason_not_called_sentence(view))}});
    blocks.emplace_back(
        Heading{3, wording.say(Saying::found_or_done), n_of_all(cards.size(), view)});
    append(blocks, std::move(cards));
  }
  append(blocks, nothing_found(view));
  return blocks;
}

}  // namespace evenclaw
