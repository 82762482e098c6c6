// What is shown of a cow, a herd and a visit: the picture, read for people.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/due.hpp"
#include "core/api/news_seen.hpp"
#include "core/api/ports.hpp"
#include "core/api/removed_records.hpp"
#include "core/api/visits.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/batch_rows.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/foot_rows.hpp"
#include "core/trade/identity_rows.hpp"

namespace evenclaw {

/// One time a foot was in hand, said in words.
struct FootSeen {
  Day day;
  Foot foot = Foot::lf;
  EntryId turn;
  FootState state = FootState::unsaid;
  Trimmed trimmed = Trimmed::not_called;
  bool called_lame = false;
  std::vector<std::string> found;     // "outside claw: white line abscess, heel, bad (WLA)"
  std::vector<std::string> acts;      // "block on inside claw"
  std::vector<std::string> measured;  // "outside claw, toe length 78 mm"
  std::string missing;                // "outside claw missing", known by then
  std::string note;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("day", &FootSeen::day, "day of the visit");
    visit("foot", &FootSeen::foot, "LF RF LH RH");
    visit("turn", &FootSeen::turn, "the entry that recorded it");
    visit("state", &FootSeen::state, "not lifted, nothing found, finding, or unsaid");
    visit("trimmed", &FootSeen::trimmed, "whether it was trimmed");
    visit("called_lame", &FootSeen::called_lame, "she came lame on this leg");
    visit("found", &FootSeen::found, "findings in words");
    visit("acts", &FootSeen::acts, "acts in words");
    visit("measured", &FootSeen::measured, "measures in words");
    visit("missing", &FootSeen::missing, "the claw that is known to be missing, in words");
    visit("note", &FootSeen::note, "free words of that foot");
  }
};

/// What was said of all of her in one turn, in words.
struct TurnSeen {
  Day day;
  EntryId turn;
  std::string called;             // "412", "513 or 531", "brown heifer"
  std::string came;               // "fresh, lame on left hind"; "" when not called
  std::string walked;             // "walks sound, mobility 2 of 3"; "" when not called
  std::vector<std::string> acts;  // "to straw", "see again by Thu 26 Nov"
  TurnEnd end = TurnEnd::done;
  std::string end_reason;
  std::string note;
  bool from_paper = false;
  std::optional<std::int32_t> seconds_in_crush;  // absent where no time is known, as from paper

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("day", &TurnSeen::day, "day of the visit");
    visit("turn", &TurnSeen::turn, "the entry that recorded it");
    visit("called", &TurnSeen::called, "what she was called");
    visit("came", &TurnSeen::came, "why she came, in words");
    visit("walked", &TurnSeen::walked, "how she walks, in words");
    visit("acts", &TurnSeen::acts, "what was done or said of all of her, in words");
    visit("end", &TurnSeen::end, "done, not done or unfinished");
    visit("end_reason", &TurnSeen::end_reason, "why not done or unfinished");
    visit("note", &TurnSeen::note, "free words of her");
    visit("from_paper", &TurnSeen::from_paper, "typed from paper: no time of it is known");
    visit("seconds_in_crush", &TurnSeen::seconds_in_crush,
          "how long she stood in the crush; absent where no time is known, as from paper");
  }
};

/// What a list told was found on her, said in words.
struct PastSeen {
  Day day;
  std::string found;  // "left hind, outside claw: sole ulcer, heel, bad (SU)"
  std::string words;
  std::string remark;
  std::string source;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("day", &PastSeen::day, "the day it was found");
    visit("found", &PastSeen::found, "the finding in words, with its foot when that was told");
    visit("words", &PastSeen::words, "the lesion as it stood in the list");
    visit("remark", &PastSeen::remark, "treatment and remark as they stood");
    visit("source", &PastSeen::source, "SHA-256 of the list that told it first");
  }
};

/// A cow in doubt who may be the one looked for.
struct MayBeHer {
  CowId cow;
  std::string called;  // "159 or 195"
  Day last_seen;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cow", &MayBeHer::cow, "a cow whose number is in doubt");
    visit("called", &MayBeHer::called, "what she was called");
    visit("last_seen", &MayBeHer::last_seen, "day of her last record");
  }
};

struct CowShown {
  std::string herd_name;
  std::string cow_said;
  CowRow cow;
  std::vector<CowNumberRow> numbers;
  std::vector<CowCalledRow> called_first;  // what she was called until it was put right
  std::vector<OnFootRow> on_her;           // wraps and blocks still on
  std::vector<CaseRow> open_cases;         // not found gone yet
  std::vector<DueTask> open_tasks;
  std::vector<TurnSeen> of_her;        // newest first, a day's turns in their order
  std::vector<FootSeen> feet;          // newest first, LF RF LH RH within a day
  std::vector<TurnRow> turns;          // newest first, with the words as said
  std::vector<NewsSeen> news;          // told of her, newest first
  std::vector<RemovedRecord> removed;  // turns of hers that lost their contents, newest first
  std::vector<MayBeHer> may_be_her;    // in doubt, and one of the numbers they may have is hers
  std::vector<MayBeHer> called_alike;  // others without a number who were called by the same words
  std::vector<CowTagRow> tags;
  std::vector<CowAliasRow> aliases;
  std::vector<CowFactsRow> facts;  // one, or none when nothing was registered
  std::vector<CowLifeRow> life;    // by day
  std::vector<PastSeen> past;      // newest first
  std::vector<HandlingRow> handling;
  std::vector<MobilityScoreRow> scores;  // newest first

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd_name", &CowShown::herd_name, "name of the herd");
    visit("cow_said", &CowShown::cow_said, "her number, or what she looks like");
    visit("cow", &CowShown::cow, "the cow");
    visit("numbers", &CowShown::numbers, "numbers she has or had");
    visit("called_first", &CowShown::called_first, "what she was called until it was put right");
    visit("on_her", &CowShown::on_her, "wraps and blocks still on");
    visit("open_cases", &CowShown::open_cases, "lesions not found gone yet");
    visit("open_tasks", &CowShown::open_tasks, "open tasks");
    visit("of_her", &CowShown::of_her, "what was said of all of her, newest first");
    visit("feet", &CowShown::feet, "her feet through time, newest first");
    visit("turns", &CowShown::turns, "her turns, newest first");
    visit("news", &CowShown::news, "what was told of her, newest first");
    visit("removed", &CowShown::removed, "turns of hers that lost their contents");
    visit("may_be_her", &CowShown::may_be_her, "cows in doubt that may be her");
    visit("called_alike", &CowShown::called_alike,
          "other cows without a number who were called by the same words");
    visit("tags", &CowShown::tags, "ear tags and electronic numbers she has or had");
    visit("aliases", &CowShown::aliases, "other names she goes by");
    visit("facts", &CowShown::facts, "what was registered of her, if anything was");
    visit("life", &CowShown::life, "her arrivals, calvings, dryings off and leavings, by day");
    visit("past", &CowShown::past, "what lists told was found on her, newest first");
    visit("handling", &CowShown::handling, "what she does in the crush, or needs there");
    visit("scores", &CowShown::scores, "her scores of mobility scorings, newest first");
  }
};

/// A cow by any number she has or had (the newest holder of a number first), by the words an
/// unnumbered one was called by, by what she was called until it was put right, or by her id. Fault
/// "cow-not-found" with the nearest numbers as remedy, or with the cows in doubt that may be her.
Result<CowShown> show_cow(Store& store, HerdId herd, std::string_view said, Day today);

/// One row of a named count.
struct CountLine {
  std::vector<std::string> groups;
  std::int64_t count = 0;
  std::vector<std::int64_t> sums;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("groups", &CountLine::groups, "the group's values");
    visit("count", &CountLine::count, "how many rows");
    visit("sums", &CountLine::sums, "the sums asked for");
  }
};

struct NamedCount {
  std::string name;
  std::vector<std::string> columns;  // of the groups, then "count", then of the sums
  std::vector<CountLine> lines;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("name", &NamedCount::name, "name of the count");
    visit("columns", &NamedCount::columns, "what the columns hold");
    visit("lines", &NamedCount::lines, "one per group");
  }
};

struct HerdShown {
  HerdId herd;
  std::string name;
  std::vector<CowRow> cows;
  std::vector<VisitRow> visits;  // newest first
  std::vector<OpenPoint> open;   // what is still to be asked of the latest visit
  std::vector<NamedCount> counts;
  std::vector<MobilityScoringRow> scorings;  // newest first
  std::vector<FarmWalkRow> walks;            // newest first
  std::vector<FarmChangeRow> changes;        // newest first

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &HerdShown::herd, "herd");
    visit("name", &HerdShown::name, "its name");
    visit("cows", &HerdShown::cows, "cows on record");
    visit("visits", &HerdShown::visits, "visits, newest first");
    visit("open", &HerdShown::open, "what is still to be asked of the latest visit");
    visit("counts", &HerdShown::counts, "the named counts");
    visit("scorings", &HerdShown::scorings, "mobility scorings, newest first");
    visit("walks", &HerdShown::walks, "what walks measured, the newest walk first");
    visit("changes", &HerdShown::changes, "changes of the farm, newest first");
  }
};

/// A herd with its cows, visits and the named counts.
Result<HerdShown> show_herd(Store& store, HerdId herd);

/// Animals counted together, never among the cows.
struct BatchShown {
  std::string name;   // "12 heifers, far yard"
  std::string words;  // "all four feet lifted, nothing found on 11"
  BatchRow row;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("name", &BatchShown::name, "how many, of what, and where");
    visit("words", &BatchShown::words, "feet lifted, what was found, who is apart, in words");
    visit("row", &BatchShown::row, "the count");
  }
};

struct VisitShown {
  Visit visit;
  std::int32_t cows = 0;
  std::int32_t together = 0;  // animals in batches that have no turn of their own
  std::vector<BatchShown> batches;
  std::vector<RemovedRecord> removed;         // of a cow each
  std::vector<RemovedRecord> removed_counts;  // of animals counted together
  std::vector<OpenPoint> open;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("visit", &VisitShown::visit, "the visit");
    visit("cows", &VisitShown::cows, "different cows seen");
    visit("together", &VisitShown::together,
          "animals counted together, without those called as cows of their own");
    visit("batches", &VisitShown::batches, "what was counted together");
    visit("removed", &VisitShown::removed, "records of cows whose contents were taken away");
    visit("removed_counts", &VisitShown::removed_counts,
          "counts of animals whose contents were taken away");
    visit("open", &VisitShown::open, "what is still to be asked");
  }
};

/// A visit, ended or not, with what is still to be asked of it now: what was answered since it
/// ended is left out.
Result<VisitShown> show_visit(const Ports& ports, const Visit& visit);

}  // namespace evenclaw
