// Rows of the picture about cows, visits and turns.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

// Every row type names its table, its key columns (herd always first) and its fields once.
// A cow united with others by same_cow stands under the smallest id of the group.

struct CowRow {
  static constexpr std::string_view table = "cow";
  static constexpr int key_columns = 2;
  HerdId herd;
  CowId cow;
  std::string number;  // the newest valid herd number, without leading zeros; "" when unnumbered
  std::string number_said;
  CowKnown known = CowKnown::numbered;
  std::string looks;
  Day first_seen;
  Day last_seen;
  std::optional<Day> left_on;
  std::string left_words;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &CowRow::herd, "herd");
    visit("cow", &CowRow::cow, "cow");
    visit("number", &CowRow::number, "herd number valid now, without leading zeros");
    visit("number_said", &CowRow::number_said, "the number as it was first said");
    visit("known", &CowRow::known, "numbered, doubtful or unnumbered");
    visit("looks", &CowRow::looks, "what she looks like when she has no number");
    visit("first_seen", &CowRow::first_seen, "day of the first record");
    visit("last_seen", &CowRow::last_seen, "day of the last record");
    visit("left_on", &CowRow::left_on, "day she left the herd");
    visit("left_words", &CowRow::left_words, "why, as told");
  }
};

/// A number a cow has or had; one cow may have several.
struct CowNumberRow {
  static constexpr std::string_view table = "cow_number";
  static constexpr int key_columns = 4;
  HerdId herd;
  CowId cow;
  std::string number;  // without leading zeros
  Day valid_from;
  std::optional<Day> valid_to;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &CowNumberRow::herd, "herd");
    visit("cow", &CowNumberRow::cow, "cow");
    visit("number", &CowNumberRow::number, "herd number without leading zeros");
    visit("valid_from", &CowNumberRow::valid_from, "first day it was hers");
    visit("valid_to", &CowNumberRow::valid_to, "last day it was hers");
  }
};

/// What a cow was called by until somebody put it right: she is found by it and never carries it.
struct CowCalledRow {
  static constexpr std::string_view table = "cow_called";
  static constexpr int key_columns = 4;
  HerdId herd;
  CowId cow;
  EntryId turn;
  std::string called;  // a number without leading zeros, or what she looks like
  VisitId visit;
  Day day;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &CowCalledRow::herd, "herd");
    visit("cow", &CowCalledRow::cow, "cow");
    visit("turn", &CowCalledRow::turn, "the entry that recorded it");
    visit("called", &CowCalledRow::called, "what she was called until it was put right");
    visit("visit", &CowCalledRow::visit, "visit");
    visit("day", &CowCalledRow::day, "day of the visit");
  }
};

struct VisitRow {
  static constexpr std::string_view table = "visit";
  static constexpr int key_columns = 2;
  HerdId herd;
  VisitId visit;
  Day day;
  std::int32_t ordinal = 1;
  FootSet todays_feet;
  bool closed = false;
  bool opened_twice = false;  // by two devices
  bool from_paper = false;
  PersonId caller;                       // of the opening
  std::optional<std::string> opened_at;  // display time of the opening entry

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &VisitRow::herd, "herd");
    visit("visit", &VisitRow::visit, "visit");
    visit("day", &VisitRow::day, "day in the herd's time zone");
    visit("ordinal", &VisitRow::ordinal, "which visit of that day");
    visit("todays_feet", &VisitRow::todays_feet, "feet lifted today");
    visit("closed", &VisitRow::closed, "whether it was closed");
    visit("opened_twice", &VisitRow::opened_twice, "opened on more than one device");
    visit("from_paper", &VisitRow::from_paper, "typed from paper later: no time of it is known");
    visit("caller", &VisitRow::caller, "who calls");
    visit("opened_at", &VisitRow::opened_at,
          "time shown on the device that opened it first; absent of a visit from paper");
  }
};

struct TurnRow {
  static constexpr std::string_view table = "turn";
  static constexpr int key_columns = 3;
  HerdId herd;
  CowId cow;
  EntryId turn;
  VisitId visit;
  Day day;
  std::string number_said;
  std::string called;                  // "412", "513 or 531", "brown heifer"
  Reason reason = Reason::not_called;  // the one said first
  ReasonSet also;
  std::string reason_words;  // of another reason
  bool came_lame = false;    // said to be lame, with the leg or without
  FootSet lame;
  TurnEnd end = TurnEnd::done;
  std::string end_reason;
  FootSet lifted;
  bool walks_sound = false;
  std::optional<MobilityScale> mobility_scale;
  std::optional<std::int32_t> mobility_score;
  std::int32_t stops = 0;  // warnings of rank stop that were shown
  std::int32_t asks = 0;
  std::int32_t unanswered = 0;  // shown and not answered
  PersonId caller;
  PersonId writer;
  std::string words;  // as said, lines joined by " / "
  std::string note;
  std::optional<std::string> let_out_at;         // display time; absent where no time is known
  std::optional<std::int32_t> seconds_in_crush;  // never 0 for a time that is not known

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &TurnRow::herd, "herd");
    visit("cow", &TurnRow::cow, "cow");
    visit("turn", &TurnRow::turn, "the entry that recorded it");
    visit("visit", &TurnRow::visit, "visit");
    visit("day", &TurnRow::day, "day of the visit");
    visit("number_said", &TurnRow::number_said, "number as said");
    visit("called", &TurnRow::called, "what she was called: number, numbers or looks");
    visit("reason", &TurnRow::reason, "why she came");
    visit("also", &TurnRow::also, "why else she came");
    visit("reason_words", &TurnRow::reason_words, "words for another reason");
    visit("came_lame", &TurnRow::came_lame, "said to be lame, with the leg or without");
    visit("lame", &TurnRow::lame, "legs she came lame on");
    visit("end", &TurnRow::end, "done, not done or unfinished");
    visit("end_reason", &TurnRow::end_reason, "why not done or unfinished");
    visit("lifted", &TurnRow::lifted, "feet that were lifted");
    visit("walks_sound", &TurnRow::walks_sound, "said to walk sound");
    visit("mobility_scale", &TurnRow::mobility_scale, "the scale she was scored on");
    visit("mobility_score", &TurnRow::mobility_score, "how she walks, on that scale");
    visit("stops", &TurnRow::stops, "warnings of rank stop shown");
    visit("asks", &TurnRow::asks, "warnings of rank ask shown");
    visit("unanswered", &TurnRow::unanswered, "warnings nobody answered");
    visit("caller", &TurnRow::caller, "who judged and trimmed");
    visit("writer", &TurnRow::writer, "who typed");
    visit("words", &TurnRow::words, "as said");
    visit("note", &TurnRow::note, "free words");
    visit("let_out_at", &TurnRow::let_out_at,
          "time shown on the device when she was let out; absent where no time is known");
    visit("seconds_in_crush", &TurnRow::seconds_in_crush,
          "from her first word to her last; absent where no time is known, as from paper");
  }
};

}  // namespace evenclaw
