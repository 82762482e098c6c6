// Rows of the picture about feet: findings, actions, cases, what is on them.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/place.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

struct FootRow {
  static constexpr std::string_view table = "foot";
  static constexpr int key_columns = 4;
  HerdId herd;
  CowId cow;
  EntryId turn;
  Foot foot = Foot::lf;
  VisitId visit;
  Day day;
  FootState state = FootState::unsaid;
  Trimmed trimmed = Trimmed::not_called;
  bool called_lame = false;
  bool called_twice = false;  // in this visit, by more than one turn
  Claw missing = Claw::none;  // known by this turn; not called when nobody said which
  std::string note;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &FootRow::herd, "herd");
    visit("cow", &FootRow::cow, "cow");
    visit("turn", &FootRow::turn, "the entry that recorded it");
    visit("foot", &FootRow::foot, "LF RF LH RH");
    visit("visit", &FootRow::visit, "visit");
    visit("day", &FootRow::day, "day of the visit");
    visit("state", &FootRow::state, "not lifted, nothing found, finding, or unsaid");
    visit("trimmed", &FootRow::trimmed, "whether it was trimmed");
    visit("called_lame", &FootRow::called_lame, "she came lame on this leg");
    visit("called_twice", &FootRow::called_twice, "called by more than one turn of the visit");
    visit("missing", &FootRow::missing, "the claw that is known to be missing, if one is");
    visit("note", &FootRow::note, "free words");
  }
};

/// How a finding continues what was known of that place.
enum class CaseStep { first, goes_on, relapse };

template <>
struct EnumWords<CaseStep> {
  static constexpr EnumWord<CaseStep> table[] = {
      {CaseStep::first, "first"}, {CaseStep::goes_on, "goes_on"}, {CaseStep::relapse, "relapse"}};
};

struct FindingRow {
  static constexpr std::string_view table = "finding";
  static constexpr int key_columns = 4;
  HerdId herd;
  CowId cow;
  EntryId turn;
  std::int32_t position = 0;  // in the turn, from 1
  VisitId visit;
  Day day;
  Foot foot = Foot::lf;
  Claw claw = Claw::not_called;
  Lesion lesion = Lesion::other;
  Lesion family = Lesion::other;
  LesionGroup group = LesionGroup::other;
  std::string words;
  Place place = Place::not_called;
  std::optional<std::int32_t> zone;
  Degree degree = Degree::not_called;
  DdStage stage = DdStage::not_called;
  bool dd_infected = false;
  CaseId case_id;
  CaseStep step = CaseStep::first;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &FindingRow::herd, "herd");
    visit("cow", &FindingRow::cow, "cow");
    visit("turn", &FindingRow::turn, "the entry that recorded it");
    visit("position", &FindingRow::position, "which finding of the turn");
    visit("visit", &FindingRow::visit, "visit");
    visit("day", &FindingRow::day, "day of the visit");
    visit("foot", &FindingRow::foot, "LF RF LH RH");
    visit("claw", &FindingRow::claw, "outside, inside, both, not called, none");
    visit("lesion", &FindingRow::lesion, "ICAR code");
    visit("family", &FindingRow::family, "code under which cases are linked");
    visit("lesion_group", &FindingRow::group, "infectious, horn, shape or other");
    visit("words", &FindingRow::words, "words that name or describe it");
    visit("place", &FindingRow::place, "where on the foot");
    visit("zone", &FindingRow::zone, "zone number 0-12");
    visit("degree", &FindingRow::degree, "slight, plain, bad or not called");
    visit("stage", &FindingRow::stage, "stage of digital dermatitis");
    visit("dd_infected", &FindingRow::dd_infected, "digital dermatitis was called in it");
    visit("case_id", &FindingRow::case_id, "the case it belongs to");
    visit("step", &FindingRow::step, "first, goes on or relapse");
  }
};

struct ActionRow {
  static constexpr std::string_view table = "action";
  static constexpr int key_columns = 4;
  HerdId herd;
  CowId cow;
  EntryId turn;
  std::int32_t position = 0;
  VisitId visit;
  Day day;
  std::optional<Foot> foot;
  Claw claw = Claw::none;
  ActionKind action = ActionKind::opened;
  std::string product;
  Material material = Material::not_called;
  ByWhom by_whom = ByWhom::not_called;
  std::optional<Day> said_for;  // the day meant by "off Thu", "see again 28d"
  ByWhom directed_by = ByWhom::not_called;
  std::optional<ProductId> listed;  // the product of the herd's list
  WithdrawalKnown withdrawal = WithdrawalKnown::no_medicine;
  std::optional<Day> milk_till;
  std::optional<Milking> milk_milking;
  std::optional<Day> meat_till;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &ActionRow::herd, "herd");
    visit("cow", &ActionRow::cow, "cow");
    visit("turn", &ActionRow::turn, "the entry that recorded it");
    visit("position", &ActionRow::position, "which action of the turn");
    visit("visit", &ActionRow::visit, "visit");
    visit("day", &ActionRow::day, "day of the visit");
    visit("foot", &ActionRow::foot, "on which foot, if one");
    visit("claw", &ActionRow::claw, "on which claw, if one");
    visit("action", &ActionRow::action, "what was done");
    visit("product", &ActionRow::product, "spray, paste, powder, gel or medicine by name");
    visit("material", &ActionRow::material, "what a block is made of, how she was marked");
    visit("by_whom", &ActionRow::by_whom, "who gave the medicine, or was asked for it");
    visit("said_for", &ActionRow::said_for, "the day said with it");
    visit("directed_by", &ActionRow::directed_by, "on whose direction");
    visit("listed", &ActionRow::listed, "the product of the herd's list, if it is one");
    visit("withdrawal", &ActionRow::withdrawal, "what is known of its withdrawal");
    visit("milk_till", &ActionRow::milk_till, "last day her milk is held back for it");
    visit("milk_milking", &ActionRow::milk_milking, "up to and with this milking of it");
    visit("meat_till", &ActionRow::meat_till, "last day her meat is held back for it");
  }
};

struct MeasureRow {
  static constexpr std::string_view table = "measure";
  static constexpr int key_columns = 4;
  HerdId herd;
  CowId cow;
  EntryId turn;
  std::int32_t position = 0;  // in the turn, from 1
  VisitId visit;
  Day day;
  Foot foot = Foot::lf;
  Claw claw = Claw::not_called;
  MeasureKind measure = MeasureKind::toe_length;
  Length length;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &MeasureRow::herd, "herd");
    visit("cow", &MeasureRow::cow, "cow");
    visit("turn", &MeasureRow::turn, "the entry that recorded it");
    visit("position", &MeasureRow::position, "which measure of the turn");
    visit("visit", &MeasureRow::visit, "visit");
    visit("day", &MeasureRow::day, "day of the visit");
    visit("foot", &MeasureRow::foot, "LF RF LH RH");
    visit("claw", &MeasureRow::claw, "outside, inside, both or not called");
    visit("measure", &MeasureRow::measure, "what was measured");
    visit("length", &MeasureRow::length, "tenths of a millimetre");
  }
};

/// The same lesion at the same place followed through time.
struct CaseRow {
  static constexpr std::string_view table = "foot_case";
  static constexpr int key_columns = 3;
  HerdId herd;
  CowId cow;
  CaseId case_id;
  Foot foot = Foot::lf;
  Claw claw = Claw::not_called;
  Place place = Place::not_called;
  Lesion family = Lesion::other;
  Lesion lesion = Lesion::other;  // as called last
  Lesion worst = Lesion::other;   // the worst it was called
  bool grew_worse = false;        // from a milder form to a worse one
  bool dd_infected = false;
  Degree degree = Degree::not_called;
  Day first_day;
  Day last_day;
  std::int32_t times_found = 0;
  bool relapse = false;
  std::optional<Day> not_found_on;  // lifted again and not found: no longer open

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &CaseRow::herd, "herd");
    visit("cow", &CaseRow::cow, "cow");
    visit("case_id", &CaseRow::case_id, "case");
    visit("foot", &CaseRow::foot, "LF RF LH RH");
    visit("claw", &CaseRow::claw, "which claw");
    visit("place", &CaseRow::place, "where on the foot");
    visit("family", &CaseRow::family, "code under which it is linked");
    visit("lesion", &CaseRow::lesion, "code as called last");
    visit("worst", &CaseRow::worst, "the worst code it was called by");
    visit("grew_worse", &CaseRow::grew_worse, "it was called a milder form before a worse one");
    visit("dd_infected", &CaseRow::dd_infected, "digital dermatitis was called in it once");
    visit("degree", &CaseRow::degree, "degree as called last");
    visit("first_day", &CaseRow::first_day, "day first found");
    visit("last_day", &CaseRow::last_day, "day last found");
    visit("times_found", &CaseRow::times_found, "visits at which it was found");
    visit("relapse", &CaseRow::relapse, "it had been gone before");
    visit("not_found_on", &CaseRow::not_found_on, "day the foot was lifted without it");
  }
};

enum class Fixture { block, wrap };

template <>
struct EnumWords<Fixture> {
  static constexpr EnumWord<Fixture> table[] = {{Fixture::block, "block"}, {Fixture::wrap, "wrap"}};
};

enum class FixtureEnd { still_on, taken_off, came_off, unknown };

template <>
struct EnumWords<FixtureEnd> {
  static constexpr EnumWord<FixtureEnd> table[] = {{FixtureEnd::still_on, "still_on"},
                                                   {FixtureEnd::taken_off, "taken_off"},
                                                   {FixtureEnd::came_off, "came_off"},
                                                   {FixtureEnd::unknown, "unknown"}};
};

/// A block or wrap on a foot, from the day it went on until it is known to be off.
struct OnFootRow {
  static constexpr std::string_view table = "on_foot";
  static constexpr int key_columns = 4;
  HerdId herd;
  CowId cow;
  EntryId turn;               // that put it on
  std::int32_t position = 0;  // of that action in the turn
  Foot foot = Foot::lf;
  Claw claw = Claw::none;
  Fixture fixture = Fixture::wrap;
  Day since;
  VisitId visit;
  FixtureEnd ended = FixtureEnd::still_on;
  std::optional<Day> ended_on;  // the day it was told; when it came off by itself that day is later
  bool only_seen = false;       // nobody knew of it when it was told to be on: since is that day

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &OnFootRow::herd, "herd");
    visit("cow", &OnFootRow::cow, "cow");
    visit("turn", &OnFootRow::turn, "the entry that put it on");
    visit("position", &OnFootRow::position, "which action of that turn");
    visit("foot", &OnFootRow::foot, "LF RF LH RH");
    visit("claw", &OnFootRow::claw, "the claw, for a block");
    visit("fixture", &OnFootRow::fixture, "block or wrap");
    visit("since", &OnFootRow::since, "day it went on");
    visit("visit", &OnFootRow::visit, "visit at which it went on");
    visit("ended", &OnFootRow::ended, "still on, taken off, came off, unknown");
    visit("ended_on", &OnFootRow::ended_on, "day that was told");
    visit("only_seen", &OnFootRow::only_seen,
          "nobody knew of it when it was told to be on: since is that day");
  }
};

}  // namespace evenclaw
