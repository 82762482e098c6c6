// What is checked while she is in the crush, and what was not called.
#include "core/api/recording/checking.hpp"

#include <algorithm>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/marks.hpp"
#include "core/api/recording/new_one_off.hpp"
#include "core/api/recording/reader.hpp"
#include "core/api/recording/settled_turn.hpp"
#include "core/trade/call_line/known_of_her.hpp"
#include "core/trade/call_line/offered.hpp"
#include "core/trade/call_line/recalled.hpp"
#include "core/trade/electronic_number.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/spoken.hpp"
#include "core/trade/told_ends.hpp"

namespace evenclaw {

namespace {

bool says_nothing_was_found(const Warning& warning) {
  return warning.rule == "lame-nothing-found" || warning.rule == "lame-cause-not-found";
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

/// "Rest fine" ends what was found; what is done about a cow that came lame is said behind it. So
/// that she leaves without a plan, vet or look is told with the next line, or when she is let out.
void ChecksOfHer::hold_for_a_plan(std::vector<Warning>& firing) {
  if (!std::exchange(crush_.cow->plan_awaited, false)) return;
  const WarningLedger& known = ledger_of(book_, *crush_.cow);
  firing.erase(std::remove_if(firing.begin(), firing.end(),
                              [&](const Warning& warning) {
                                return warning.rule == "lame-nothing-found" &&
                                       !known.holds(warning);
                              }),
               firing.end());
}

/// Of one who was taken up again, or stands there to be mended, no time is known.
std::optional<TimeInCrush> ChecksOfHer::time_in_crush() const {
  constexpr std::int64_t ms_in_second = 1000;
  constexpr std::int64_t longest_ms = std::int64_t{24} * 60 * 60 * ms_in_second;
  if (!crush_.cow->began || !book_.long_minutes) return std::nullopt;
  const std::int64_t ms = book_.ports.clock.now().ms - crush_.cow->began->ms;
  // A clock that was put back or forward while she stood there tells nothing.
  if (ms <= 0 || ms > longest_ms) return std::nullopt;
  return TimeInCrush{static_cast<std::int32_t>(ms / ms_in_second), *book_.long_minutes};
}

void ChecksOfHer::check_her(bool finished, std::string_view text) {
  const std::optional<Turn> whole = whole_turn(book_, *crush_.cow);
  const Turn turn = whole ? *whole : as_settled(book_, *crush_.cow);
  CowPast& past = whole ? crush_.cow->earlier->past : crush_.cow->past;
  past.so_far = book_.before.so_far(crush_.cow->cow, crush_.cow->by.caller);
  past.in_crush = finished ? time_in_crush() : std::nullopt;
  past.is_finding_last = is_claw_of_a_finding_last(crush_.cow->draft);
  const CowPast known = whole ? without_replaced(past, crush_.cow->earlier->turn.body.turn) : past;
  std::vector<Warning> firing = check_turn(turn, known, book_.visit.day, finished, book_.language);
  // Something was said of that foot, only nobody could read it; that is asked about.
  const FootSet open = left_open(book_, *crush_.cow);
  firing.erase(std::remove_if(firing.begin(), firing.end(),
                              [&](const Warning& warning) {
                                return says_nothing_was_found(warning) && warning.foot &&
                                       open.has(*warning.foot);
                              }),
               firing.end());
  std::erase_if(firing, [&](const Warning& warning) {
    const std::optional<Fixture> fixture = fixture_asked_about(warning);
    return fixture && warning.foot &&
           book_.before.was_told_on(crush_.cow->cow, *warning.foot, *fixture);
  });
  hold_for_a_plan(firing);
  if (const auto meant = known_cow_meant(turn, crush_.cow->near, book_.language))
    firing.push_back(*meant);
  if (const auto other = other_cow_read_maybe(turn)) firing.push_back(*other);
  const std::vector<Warning> asked = ledger_of(book_, *crush_.cow).update(firing, text, finished);
  book_.answers.show(asked, said_as(turn.cow, book_.language));
  book_.last_line.asked.insert(book_.last_line.asked.end(), asked.begin(), asked.end());
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

void ChecksOfHer::show_marks() {
  const std::optional<Turn> whole = whole_turn(book_, *crush_.cow);
  std::vector<Mark> fresh;
  for (const Mark& mark : marks_of(whole ? *whole : crush_.cow->draft.turn)) {
    if (crush_.cow->marks.insert(told_of({mark}).front()).second) fresh.push_back(mark);
  }
  for (const std::string& mark : told_of(fresh)) show_mark(mark);
  const Turn told = whole ? *whole : as_settled(book_, *crush_.cow);
  for (const std::string& mark : told_shorter_than_listed(told, book_.visit.day)) {
    if (crush_.cow->marks.insert(mark).second) show_mark(mark);
  }
  const FootSet rest = rest_that_is_none(crush_.cow->draft.turn, book_.visit.todays_feet);
  const std::string rest_fine(book_.language.say(TermKind::rest_fine));
  if (!rest.empty() && crush_.cow->marks.insert(rest_fine).second) {
    ReplyItem& item = book_.answers.add(ReplyKind::question,
                                        "\"" + rest_fine +
                                            "\" speaks of none of today's feet: all were not "
                                            "lifted. Were others?");
    item.cow = cow_in_crush(book_, crush_);
    item.answers = {
        offered_feet(rest, book_.language) + ' ' +
        std::string(book_.language.say(TermKind::foot_state, FootState::nothing_found))};
  }
  if (!book_.typed || !crush_.cow->draft.turn.rest_fine) return;
  const FootSet open = left_open(book_, *crush_.cow);
  for (const Foot foot : all_feet) {
    if (!open.has(foot)) continue;
    const std::string mark =
        std::string(spoken(foot)) + " stays open: what was said of it was not understood";
    if (crush_.cow->marks.insert(mark).second) show_mark(mark);
  }
}

void ChecksOfHer::show_learned(ThisLine& line) {
  for (const std::string& told : std::exchange(line.learned, {})) show_mark(told);
  for (const std::string& told : std::exchange(crush_.cow->taken_anew, {})) show_mark(told);
}

void ChecksOfHer::show_mark(const std::string& mark) {
  book_.answers.add(ReplyKind::mark, mark).cow =
      said_as(crush_.cow->draft.turn.cow, book_.language);
}

/// Of the cow in the crush, when it was a reader that named her.
std::optional<Warning> ChecksOfHer::other_cow_read_maybe(const Turn& turn) const {
  const std::vector<std::string>& lines = crush_.cow->draft.words;
  const auto named_her = [&](const std::string& line) {
    const std::optional<std::string> digits = read_at_start(line);
    return digits && book_.finder.carrier_of_tag(*digits) == crush_.cow->cow;
  };
  if (std::none_of(lines.begin(), lines.end(), named_her)) return std::nullopt;
  ReadCow her;
  her.name = cow_in_crush(book_, crush_);
  her.left = book_.finder.left(crush_.cow->cow);
  her.was_here_today = !crush_.cow->past.same_visit.empty() && !crush_.cow->earlier &&
                       !book_.before.is_perhaps_again(crush_.cow->cow, lines);
  her.dried_off = dried_off_on(crush_.cow->past, book_.visit.day);
  return other_cow_read(turn, her, book_.language);
}

void ChecksOfHer::tell_who_was_read(std::string_view text) {
  const std::optional<std::string> digits = read_at_start(text);
  if (!digits || !crush_.cow) return;
  const CowSaid& cow = crush_.cow->draft.turn.cow;
  if (cow.known == CowKnown::numbered) {
    book_.answers.add(ReplyKind::mark, "known by her electronic number " + *digits).cow =
        cow_in_crush(book_, crush_);
    return;
  }
  const auto number = electronic_number(*digits);
  if (!number) {
    ReplyItem& item = book_.answers.add(
        ReplyKind::question, "That is no electronic number. " + number.faults().front().message);
    item.cow = cow_in_crush(book_, crush_);
    item.remedy = number.faults().front().remedy;
    return;
  }
  if (book_.finder.carrier_of_tag(*digits)) return;
  book_.answers
      .add(ReplyKind::question, "Nobody here carries that electronic number. Which number has she?")
      .cow = cow_in_crush(book_, crush_);
}

}  // namespace evenclaw
