// A visit: started, found again, corrected, ended with everything that is still to be asked.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/api/ports.hpp"
#include "core/api/redate.hpp"
#include "core/api/reply.hpp"
#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

struct VisitWanted {
  HerdId herd;
  std::optional<Day> day;    // `today` when not given
  std::optional<Day> today;  // the clock's day at its own offset when not given
  FootSet todays_feet;       // empty: not said yet
  std::string caller;        // "" when not said
  std::string writer;
  bool from_paper = false;       // typed from what was written down that day
  bool second_that_day = false;  // a visit of its own although that day has one already
  bool sure = false;             // names are spelt as meant, and so is a day long ago
};

struct Visit {
  HerdId herd;
  std::string herd_name;
  VisitId visit;
  Day day;
  std::int32_t ordinal = 1;
  FootSet todays_feet;
  std::string caller;
  std::string writer;
  bool from_paper = false;  // no time of it is known
  bool goes_on = false;     // it had been started before
  bool closed = false;      // it had been ended before; lines may still be added

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &Visit::herd, "herd");
    visit("herd_name", &Visit::herd_name, "its name");
    visit("visit", &Visit::visit, "visit");
    visit("day", &Visit::day, "day of the visit");
    visit("ordinal", &Visit::ordinal, "which visit of that day");
    visit("todays_feet", &Visit::todays_feet, "feet lifted today");
    visit("caller", &Visit::caller, "who calls");
    visit("writer", &Visit::writer, "who types");
    visit("from_paper", &Visit::from_paper, "typed from paper: no time of it is known");
    visit("goes_on", &Visit::goes_on, "it had been started before");
    visit("closed", &Visit::closed, "it had been ended before");
  }
};

/// A visit as its row tells it; the names of herd, caller and writer do not stand there.
Visit visit_of(const VisitRow& row);

/// Starts a visit, or goes on with the one that herd has on that day (ended or not) unless a second
/// one is wanted. Faults: "date-in-future" (later than today), "two-visits-open" when
/// another day of that herd was never ended, "answer-needed" for a name that may be misspelt, a
/// new visit more than half a year back, whose year may be, or a visit to go on with from paper
/// that was not begun so.
Result<Visit> start_visit(const Ports& ports, const VisitWanted& wanted);

/// Whether the first visit to a herd could begin as it is wanted, with the faults start_visit()
/// would give; nothing is written, and the herd need not be known yet.
Outcome check_first_visit(const Ports& ports, const VisitWanted& wanted);

/// The visits nobody ended, of one herd or of all.
Result<std::vector<Visit>> open_visits(const Ports& ports, std::optional<HerdId> herd);

/// The one open visit. Faults: "no-visit-open"; "two-visits-open", which names them.
Result<Visit> the_open_visit(const Ports& ports, std::optional<HerdId> herd);

/// The visit of a herd on a day, ended or not (the latest of that day unless `ordinal` is given);
/// the herd's latest visit when no day is given. Fault "visit-not-found".
Result<Visit> find_visit(const Ports& ports, HerdId herd, std::optional<Day> day,
                         std::optional<int> ordinal = {});

/// What still has to be asked of a person.
enum class OpenPointKind {
  unnumbered,
  doubtful_number,
  told_gone,  // told gone that day, and in the crush after that
  unfinished,
  not_done,
  called_twice,
  unanswered,  // warnings nobody answered, Stops before Asks
  lifted_not_called,
  place_not_called,
  degree_not_called,
  stage_not_called,
  number_given_twice,  // seen under a number that another cow carries or carried
  two_versions,
  news_unclear,   // news not understood, of nobody known, or that could mean more than one thing
  told_two_ways,  // a wrap or block said to be off and still on; lame still, and sound
  due_not_seen,   // a task of hers is due and she was not seen; or seeing her did not settle it
  still_on,       // a wrap or block is on a cow that was not seen and nobody spoke of
  on_since_when   // a wrap or block called still on that nobody knew of
};

template <>
struct EnumWords<OpenPointKind> {
  static constexpr EnumWord<OpenPointKind> table[] = {
      {OpenPointKind::unnumbered, "unnumbered"},
      {OpenPointKind::doubtful_number, "doubtful_number"},
      {OpenPointKind::told_gone, "told_gone"},
      {OpenPointKind::unfinished, "unfinished"},
      {OpenPointKind::not_done, "not_done"},
      {OpenPointKind::called_twice, "called_twice"},
      {OpenPointKind::unanswered, "unanswered"},
      {OpenPointKind::lifted_not_called, "lifted_not_called"},
      {OpenPointKind::place_not_called, "place_not_called"},
      {OpenPointKind::degree_not_called, "degree_not_called"},
      {OpenPointKind::stage_not_called, "stage_not_called"},
      {OpenPointKind::number_given_twice, "number_given_twice"},
      {OpenPointKind::two_versions, "two_versions"},
      {OpenPointKind::news_unclear, "news_unclear"},
      {OpenPointKind::told_two_ways, "told_two_ways"},
      {OpenPointKind::due_not_seen, "due_not_seen"},
      {OpenPointKind::still_on, "still_on"},
      {OpenPointKind::on_since_when, "on_since_when"}};
};

/// Settled by calling her again with what is missing, once she has a number.
bool is_answered_by_calling(OpenPointKind kind);

/// Settled in words of one's own (settle_questions()).
bool is_settled_in_words(OpenPointKind kind);

struct OpenPoint {
  OpenPointKind kind = OpenPointKind::unnumbered;
  CowId cow;
  std::string cow_said;
  std::string words;               // what to ask
  std::optional<Rank> rank;        // of a warning nobody answered
  std::optional<PersonId> person;  // whom a doubtful name of a caller or writer was read as
  std::optional<EntryId> entry;    // that asked about the name

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("kind", &OpenPoint::kind, "what is open");
    visit("cow", &OpenPoint::cow, "cow");
    visit("cow_said", &OpenPoint::cow_said, "her number, or what she looks like");
    visit("words", &OpenPoint::words, "what to ask");
    visit("rank", &OpenPoint::rank, "of a warning nobody answered: stop or ask");
    visit("person", &OpenPoint::person, "whom a doubtful name was read as");
    visit("entry", &OpenPoint::entry, "the entry that asked about the name");
  }
};

/// How a visit stands when it is to be closed.
struct ClosingState {
  std::vector<OpenPoint> open;         // in the order of OpenPointKind, Stops first, then by cow
  std::int32_t cows = 0;               // different cows seen
  bool changed_since_closing = false;  // something was recorded after it was closed
};

/// Writes nothing. No point holds the name of a person, for its words go into the log.
Result<ClosingState> closing_state(Store& store, const Visit& visit);

/// The same with the person named whom a doubtful name was read as: to be shown, never recorded.
Result<std::vector<OpenPoint>> with_names_shown(std::vector<OpenPoint> open, Directory& directory);

struct VisitEnded {
  Visit visit;
  std::vector<ReplyItem> last_turn;  // what letting out the cow that was still in the crush gave
  std::vector<OpenPoint> open;
  std::int32_t cows = 0;      // different cows seen
  bool ended_before = false;  // it had been ended; written again only if something changed
  std::vector<std::string> before_leaving;  // the yard: told once, of a visit that is over just now

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("visit", &VisitEnded::visit, "the visit");
    visit("last_turn", &VisitEnded::last_turn, "what became of the cow still in the crush");
    visit("open", &VisitEnded::open, "what is still to be asked");
    visit("cows", &VisitEnded::cows, "different cows seen");
    visit("ended_before", &VisitEnded::ended_before, "it had been ended before");
    visit("before_leaving", &VisitEnded::before_leaving,
          "what is done before leaving the yard; told once, and not of a visit from paper");
  }
};

/// Lets out the cow that is still in the crush, lists what is open and closes the visit with that
/// list. `language` is the one her lines were called in. Ending a visit twice says so and writes
/// nothing unless something was recorded in between.
Result<VisitEnded> end_visit(const Ports& ports, const Visit& visit, const Language& language);

struct DayCorrected {
  Visit visit;
  bool tasks_moved = false;        // the visit was never ended, so nobody had been told their days
  std::vector<TaskRedated> tasks;  // open ones whose day is another one under the right day

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("visit", &DayCorrected::visit, "the visit");
    visit("tasks_moved", &DayCorrected::tasks_moved, "its tasks moved with it");
    visit("tasks", &DayCorrected::tasks, "open tasks whose day differs under the right day");
  }
};

struct DayMeant {
  Day day;
  bool sure = false;              // a day long ago is meant so
  std::optional<Day> today = {};  // the clock's day at its own offset when not given
};

/// Moves a visit to its right day. Its id stays; the pictures of its cows follow. The tasks it made
/// follow as long as it was never ended; after that they keep the days the farmer was told, and
/// those that differ are named. Faults: "date-in-future", "visit-day-taken" when that herd has a
/// visit on that day, "nothing-to-do" when it stands under that day, "answer-needed" for a day more
/// than half a year back, unless it is sure.
Result<DayCorrected> correct_visit_day(const Ports& ports, const Visit& visit,
                                       const DayMeant& right);

}  // namespace evenclaw
