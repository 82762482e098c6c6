// What is true of the invented business, in tables that stand beside its records.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/trade/dd_stage.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/lesion.hpp"
#include "demo/change.hpp"
#include "demo/cow.hpp"
#include "demo/episode.hpp"
#include "demo/farm.hpp"
#include "demo/story.hpp"

namespace evenclaw::demo {

// Effects and chances stand in thousandths, for the file holds whole numbers only.

struct FarmTruth {
  std::int32_t farm = 0;
  std::string name;
  std::int32_t cows = 0;
  Floor floor = Floor::concrete;
  Bath bath = Bath::none;
  std::int32_t dirt = 0;
  std::int32_t horn_effect = 0;
  std::int32_t skin_effect = 0;
  Season calves = Season::all_year;
  Rhythm rhythm = Rhythm::part_of_herd;
  FootSet feet;
  bool tells_what_was_done = true;
  std::int64_t weeks_first = 0;
  std::int64_t weeks_second = 0;
  std::int64_t weeks_later = 0;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("farm", &FarmTruth::farm, "number of the farm in these tables, from 1");
    visit("name", &FarmTruth::name, "its name in the records");
    visit("cows", &FarmTruth::cows, "milking and dry cows it keeps");
    visit("floor", &FarmTruth::floor, "what they stand on, before any change");
    visit("bath", &FarmTruth::bath, "footbath, before any change");
    visit("dirt", &FarmTruth::dirt, "thousandths of an SD from the mean farm");
    visit("horn_effect", &FarmTruth::horn_effect,
          "of the farm itself, thousandths of a log rate of lesions of the horn");
    visit("skin_effect", &FarmTruth::skin_effect, "likewise, of catching digital dermatitis");
    visit("calves", &FarmTruth::calves, "when its cows calve");
    visit("rhythm", &FarmTruth::rhythm, "how the trimmer comes");
    visit("feet", &FarmTruth::feet, "feet that are lifted there");
    visit("tells_what_was_done", &FarmTruth::tells_what_was_done,
          "wraps, blocks and cows that left are told of at the gate");
    visit("weeks_first", &FarmTruth::weeks_first, "cow-weeks lived in the first lactation");
    visit("weeks_second", &FarmTruth::weeks_second, "in the second");
    visit("weeks_later", &FarmTruth::weeks_later, "in later ones");
  }
};

struct CallerTruth {
  std::string name;
  std::int32_t crew = 0;
  Day from;
  Day until;
  std::int32_t keenness = 0;
  std::int32_t drift_a_year = 0;
  bool writes_sound_feet = true;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("name", &CallerTruth::name, "who calls");
    visit("crew", &CallerTruth::crew, "goes to the farms whose number leaves that over 3");
    visit("from", &CallerTruth::from, "first day");
    visit("until", &CallerTruth::until, "the day before which it ends");
    visit("keenness", &CallerTruth::keenness, "thousandths of the log odds of seeing a lesion");
    visit("drift_a_year", &CallerTruth::drift_a_year,
          "added to that for slight lesions and M4, each year");
    visit("writes_sound_feet", &CallerTruth::writes_sound_feet, "says rest fine");
  }
};

struct ChangeTruth {
  std::int32_t farm = 0;
  ChangeKind kind = ChangeKind::more_scraping;
  ChangeReason reason = ChangeReason::planned;
  Day decided;
  Day done;
  std::int32_t effect = 1000;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("farm", &ChangeTruth::farm, "number of the farm");
    visit("kind", &ChangeTruth::kind, "what was altered");
    visit("reason", &ChangeTruth::reason, "why");
    visit("decided", &ChangeTruth::decided, "the day it was decided");
    visit("done", &ChangeTruth::done, "the day from which it has its effect");
    visit("effect", &ChangeTruth::effect, "thousandths: rates are this many times what they were");
  }
};

struct CowTruth {
  std::int32_t farm = 0;
  std::int32_t cow = 0;
  Day born;
  std::int32_t lactation = 1;
  Day first_calved;
  Day last_calved;
  std::optional<Day> gone;
  LeftBecause because = LeftBecause::not_left;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("farm", &CowTruth::farm, "number of the farm");
    visit("cow", &CowTruth::cow, "her herd number");
    visit("born", &CowTruth::born, "to the week");
    visit("lactation", &CowTruth::lactation, "the last one of the story");
    visit("first_calved", &CowTruth::first_calved, "when she came into the herd");
    visit("last_calved", &CowTruth::last_calved, "when that lactation began");
    visit("gone", &CowTruth::gone, "the week from which she is not there");
    visit("because", &CowTruth::because, "why she left");
  }
};

struct EpisodeTruth {
  std::int32_t farm = 0;
  std::int32_t cow = 0;
  Foot foot = Foot::lf;
  Claw claw = Claw::none;
  Lesion lesion = Lesion::sh;
  Day began;
  std::optional<Day> worse_since;
  std::optional<Day> ended;
  EpisodeEnd end = EpisodeEnd::still_there;
  bool is_relapse = false;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("farm", &EpisodeTruth::farm, "number of the farm");
    visit("cow", &EpisodeTruth::cow, "her herd number");
    visit("foot", &EpisodeTruth::foot, "foot");
    visit("claw", &EpisodeTruth::claw, "claw; none for skin");
    visit("lesion", &EpisodeTruth::lesion, "its worst form");
    visit("began", &EpisodeTruth::began, "the week in which it began");
    visit("worse_since", &EpisodeTruth::worse_since, "when it turned into that form");
    visit("ended", &EpisodeTruth::ended, "the week in which it was over");
    visit("end", &EpisodeTruth::end, "how it ended");
    visit("is_relapse", &EpisodeTruth::is_relapse, "that spot had it before");
  }
};

struct LookTruth {
  std::int32_t farm = 0;
  Day day;
  std::int32_t cow = 0;
  Foot foot = Foot::lf;
  Claw claw = Claw::none;
  Lesion lesion = Lesion::sh;
  Degree degree = Degree::not_called;
  DdStage stage = DdStage::not_called;
  bool was_there = true;
  bool was_called = false;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("farm", &LookTruth::farm, "number of the farm");
    visit("day", &LookTruth::day, "the visit");
    visit("cow", &LookTruth::cow, "her herd number");
    visit("foot", &LookTruth::foot, "foot that was lifted");
    visit("claw", &LookTruth::claw, "claw; none for skin");
    visit("lesion", &LookTruth::lesion, "what was there, or was called where nothing was");
    visit("degree", &LookTruth::degree, "as it was; not_called where it has none");
    visit("stage", &LookTruth::stage, "of digital dermatitis, as it was");
    visit("was_there", &LookTruth::was_there, "it was there");
    visit("was_called", &LookTruth::was_called, "the caller called it");
  }
};

struct BusinessTruth {
  std::vector<FarmTruth> farms;
  std::vector<CallerTruth> callers;
  std::vector<ChangeTruth> changes;
  std::vector<CowTruth> cows;
  std::vector<EpisodeTruth> episodes;
  std::vector<LookTruth> looks;
};

/// The callers; farms are added one after the other.
BusinessTruth truth_without_farms(const BusinessWanted& wanted);

/// Episodes that were over before the records begin, and cows that were gone by then, are left out.
void add_farm(BusinessTruth& truth, const BusinessWanted& wanted, const HerdStory& story);

/// One JSON object (docs/format/demo-truth.md): what was wanted, every parameter, and each table as
/// its columns and its rows. Equal stories give equal bytes.
std::string truth_text(const BusinessTruth& truth, const BusinessWanted& wanted);

}  // namespace evenclaw::demo
