// What is checked while she is in the crush, and what was not called.
#include <algorithm>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/recording/marks.hpp"
#include "core/api/recording/state.hpp"
#include "core/trade/call_line/known_of_her.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/call_line/recalled.hpp"
#include "core/trade/medicine_use.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/spoken.hpp"
#include "core/trade/told_ends.hpp"

namespace evenclaw {

namespace {

bool was_spoken_of_before(const CowPast& past, Foot foot) {
  return std::any_of(past.rows.feet.begin(), past.rows.feet.end(), [&](const FootRow& row) {
    const bool same_visit = std::any_of(past.same_visit.begin(), past.same_visit.end(),
                                        [&](const TurnRow& turn) { return turn.turn == row.turn; });
    return same_visit && row.foot == foot && row.state != FootState::not_lifted;
  });
}

bool says_nothing_was_found(const Warning& warning) {
  return warning.rule == "lame-nothing-found" || warning.rule == "lame-cause-not-found";
}

/// Only what became of a wrap or block was said of this foot.
bool tells_of_fixtures_only(const FootCall& call) {
  return std::all_of(call.actions.begin(), call.actions.end(), [](const Action& action) {
    const std::optional<FixtureSaid> said = fixture_said(action.kind);
    return said && (is_off_after(said->step) || said->step == FixtureStep::left_on ||
                    said->step == FixtureStep::not_known);
  });
}

/// A stump that is healed is no finding: "rest fine" speaks of that foot as well.
bool tells_of_its_stump_only(const FootCall& call, const Language& language) {
  return call.measures.empty() && tells_of_a_stump_only(call.note, language) &&
         std::all_of(call.actions.begin(), call.actions.end(),
                     [](const Action& action) { return action.kind == ActionKind::claw_missing; });
}

/// "Hinds not lifted, rest fine" on a day of hinds: of which feet is the rest?
FootSet rest_that_is_none(const Turn& turn, FootSet todays_feet) {
  FootSet others;
  for (const Foot foot : all_feet) {
    const FootCall* call = find_foot(turn, foot);
    if (call == nullptr) others.add(foot);
    const bool is_down = call != nullptr && call->state == FootState::not_lifted;
    if (todays_feet.has(foot) && !is_down) return {};
  }
  return turn.rest_fine && !todays_feet.empty() ? others : FootSet{};
}

}  // namespace

/// The feet of which something was said that nobody could read, and nothing else since.
FootSet RecordingState::left_open(const InCrush& cow) const {
  FootSet open;
  for (const RefusedLine& line : cow.refused) {
    open.add(line.left_open(cow.draft.turn, book_.visit.todays_feet));
  }
  return open;
}

/// "Rest fine" never speaks of feet an earlier turn of this visit has spoken of, nor of a foot that
/// was named in a line nobody could read: that one stays open. A foot it was said of stays fine
/// when it is named later only to tell of its wrap or block.
Turn RecordingState::as_settled(const InCrush& cow) const {
  const FootSet open = left_open(cow);
  FootSet feet = cow.filled_then.value_or(book_.visit.todays_feet);
  for (const Foot foot : all_feet) {
    if (open.has(foot) || was_spoken_of_before(cow.past, foot)) feet.remove(foot);
  }
  Turn turn = settled(cow.draft.turn, feet);
  for (FootCall& call : turn.feet) {
    const bool is_meant = cow.draft.turn.rest_fine && feet.has(call.foot);
    if (!is_meant || call.state != FootState::unsaid) continue;
    const bool was_fine = cow.fine_before_named.has(call.foot) && tells_of_fixtures_only(call);
    const bool is_fine = was_fine || tells_of_its_stump_only(call, book_.language);
    if (is_fine) call.state = FootState::nothing_found;
  }
  for (const Foot foot : all_feet) {
    const bool is_there = find_foot(turn, foot) != nullptr;
    if (!open.has(foot) || is_there || was_spoken_of_before(cow.past, foot)) continue;
    FootCall call;
    call.foot = foot;
    turn.feet.push_back(std::move(call));
  }
  return with_medicines(std::move(turn), book_.medicine, book_.visit.day);
}

/// Everything today's feet can give was said, so what is missing now was forgotten.
bool RecordingState::looks_finished() const {
  const Turn& turn = in_crush_->draft.turn;
  if (turn.rest_fine || turn.end != TurnEnd::done) return true;
  if (book_.visit.todays_feet.empty()) return false;
  const Turn so_far = as_settled(*in_crush_);
  return std::all_of(all_feet.begin(), all_feet.end(), [&](Foot foot) {
    const FootCall* call = find_foot(so_far, foot);
    return !book_.visit.todays_feet.has(foot) ||
           (call != nullptr && call->state != FootState::unsaid);
  });
}

/// "Rest fine" ends what was found; what is done about a cow that came lame is said behind it. So
/// that she leaves without a plan, vet or look is told with the next line, or when she is let out.
void RecordingState::hold_for_a_plan(std::vector<Warning>& firing) {
  if (!std::exchange(in_crush_->plan_awaited, false)) return;
  const WarningLedger& known = warnings();
  firing.erase(std::remove_if(firing.begin(), firing.end(),
                              [&](const Warning& warning) {
                                return warning.rule == "lame-nothing-found" &&
                                       !known.holds(warning);
                              }),
               firing.end());
}

/// Of one who was taken up again, or stands there to be mended, no time is known.
std::optional<TimeInCrush> RecordingState::time_in_crush() const {
  constexpr std::int64_t ms_in_second = 1000;
  constexpr std::int64_t longest_ms = std::int64_t{24} * 60 * 60 * ms_in_second;
  if (!in_crush_->began || !book_.long_minutes) return std::nullopt;
  const std::int64_t ms = book_.ports.clock.now().ms - in_crush_->began->ms;
  // A clock that was put back or forward while she stood there tells nothing.
  if (ms <= 0 || ms > longest_ms) return std::nullopt;
  return TimeInCrush{static_cast<std::int32_t>(ms / ms_in_second), *book_.long_minutes};
}

void RecordingState::check_her(bool finished, std::string_view text) {
  const std::optional<Turn> whole = whole_turn(*in_crush_);
  const Turn turn = whole ? *whole : as_settled(*in_crush_);
  CowPast& past = whole ? in_crush_->earlier->past : in_crush_->past;
  past.so_far = book_.before.so_far(in_crush_->cow, in_crush_->by.caller);
  past.in_crush = finished ? time_in_crush() : std::nullopt;
  past.is_finding_last = is_claw_of_a_finding_last(in_crush_->draft);
  std::vector<Warning> firing = check_turn(turn, past, book_.visit.day, finished, book_.language);
  // Something was said of that foot, only nobody could read it; that is asked about.
  const FootSet open = left_open(*in_crush_);
  firing.erase(std::remove_if(firing.begin(), firing.end(),
                              [&](const Warning& warning) {
                                return says_nothing_was_found(warning) && warning.foot &&
                                       open.has(*warning.foot);
                              }),
               firing.end());
  hold_for_a_plan(firing);
  if (const auto meant = known_cow_meant(turn, in_crush_->near, book_.language))
    firing.push_back(*meant);
  if (const auto other = other_cow_read_maybe(turn)) firing.push_back(*other);
  book_.answers.show(warnings().update(firing, text, finished), said_as(turn.cow, book_.language));
  if (turn.rest_fine && book_.visit.todays_feet.empty() && !asked_for_feet_) {
    asked_for_feet_ = true;
    ReplyItem& item = book_.answers.add(ReplyKind::question,
                                        "Which feet are lifted today? Until that is said \"" +
                                            std::string(book_.language.say(TermKind::rest_fine)) +
                                            "\" fills none.");
    item.answers = {offered_todays_feet(FeetGroup::four, book_.language),
                    offered_todays_feet(FeetGroup::hinds, book_.language)};
  }
}

void RecordingState::show_marks() {
  const std::optional<Turn> whole = whole_turn(*in_crush_);
  std::vector<Mark> fresh;
  for (const Mark& mark : marks_of(whole ? *whole : in_crush_->draft.turn)) {
    if (in_crush_->marks.insert(told_of({mark}).front()).second) fresh.push_back(mark);
  }
  for (const std::string& mark : told_of(fresh)) show_mark(mark);
  const Turn told = whole ? *whole : as_settled(*in_crush_);
  for (const std::string& mark : told_shorter_than_listed(told, book_.visit.day)) {
    if (in_crush_->marks.insert(mark).second) show_mark(mark);
  }
  const FootSet rest = rest_that_is_none(in_crush_->draft.turn, book_.visit.todays_feet);
  const std::string rest_fine(book_.language.say(TermKind::rest_fine));
  if (!rest.empty() && in_crush_->marks.insert(rest_fine).second) {
    ReplyItem& item = book_.answers.add(ReplyKind::question,
                                        "\"" + rest_fine +
                                            "\" speaks of none of today's feet: all were not "
                                            "lifted. Were others?");
    item.cow = cow_in_crush();
    item.answers = {
        offered_feet(rest, book_.language) + ' ' +
        std::string(book_.language.say(TermKind::foot_state, FootState::nothing_found))};
  }
  if (!book_.typed || !in_crush_->draft.turn.rest_fine) return;
  const FootSet open = left_open(*in_crush_);
  for (const Foot foot : all_feet) {
    if (!open.has(foot)) continue;
    const std::string mark =
        std::string(spoken(foot)) + " stays open: what was said of it was not understood";
    if (in_crush_->marks.insert(mark).second) show_mark(mark);
  }
}

/// What of her past was taken stands before what it gives to ask.
void RecordingState::show_learned() {
  for (const std::string& told : std::exchange(this_line_.learned, {})) show_mark(told);
  for (const std::string& told : std::exchange(in_crush_->taken_anew, {})) show_mark(told);
}

void RecordingState::show_mark(const std::string& mark) {
  book_.answers.add(ReplyKind::mark, mark).cow = said_as(in_crush_->draft.turn.cow, book_.language);
}

}  // namespace evenclaw
