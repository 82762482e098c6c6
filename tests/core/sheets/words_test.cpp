#include "core/sheets/words.hpp"

#include <doctest/doctest.h>

#include <set>

#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

const Wording& in_english = english_wording();

template <class E>
bool has_row(std::span<const Worded<E>> table, E value) {
  for (const Worded<E>& row : table) {
    if (row.value == value) return !row.words.empty();
  }
  return false;
}

template <class E>
void check_complete(std::span<const Worded<E>> table, const std::set<E>& left_out = {}) {
  for (const auto& row : EnumWords<E>::table) {
    if (left_out.count(row.value) == 0) CHECK_MESSAGE(has_row(table, row.value), row.word);
  }
}

Day day(const char* text) {
  return *day_from_text(text);
}

struct FindingCase {
  Claw claw;
  Lesion lesion;
  std::string said;  // words said beside it
  Place place;
  Degree degree;
  DdStage stage;
  const char* shown;
};

}  // namespace

TEST_CASE("English has words for every value it is asked for") {
  const WordingTables& tables = in_english.tables();
  check_complete(tables.feet);
  check_complete(tables.claws, {Claw::none, Claw::not_called});
  check_complete(tables.degrees, {Degree::not_called});
  check_complete(tables.stages, {DdStage::not_called});
  check_complete(tables.states, {FootState::finding});
  check_complete(tables.reasons);
  check_complete(tables.acts);
  check_complete(tables.materials, {Material::not_called});
  check_complete(tables.by_whoms, {ByWhom::not_called});
  check_complete(tables.measures);
  check_complete(tables.weekdays);
  CHECK(tables.months.size() == 12);
}

TEST_CASE("English has every saying once") {
  const WordingTables& tables = in_english.tables();
  CHECK(tables.sayings.size() == saying_count);
  for (std::size_t i = 0; i < saying_count; ++i) {
    CHECK_MESSAGE(has_row(tables.sayings, static_cast<Saying>(i)), i);
  }
}

TEST_CASE("English has every saying of the drawing of her feet once") {
  const WordingTables& tables = in_english.tables();
  CHECK(tables.track_sayings.size() == track_saying_count);
  for (std::size_t i = 0; i < track_saying_count; ++i) {
    CHECK_MESSAGE(has_row(tables.track_sayings, static_cast<TrackSaying>(i)), i);
  }
}

TEST_CASE("English has every saying of the boxes once") {
  const WordingTables& tables = in_english.tables();
  CHECK(tables.box_sayings.size() == box_saying_count);
  for (std::size_t i = 0; i < box_saying_count; ++i) {
    CHECK_MESSAGE(has_row(tables.box_sayings, static_cast<BoxSaying>(i)), i);
  }
}

TEST_CASE("feet and claws are named as the trade names them") {
  for (const Foot foot : all_feet) CHECK(in_english.foot(foot) == spoken(foot));
  CHECK(in_english.claw(Claw::outside) == "outside claw");
  CHECK(in_english.claw(Claw::both) == "both claws");
  CHECK(in_english.claw(Claw::none).empty());
}

TEST_CASE("several feet are named together where that is said") {
  CHECK(in_english.feet(hind_feet) == "both hind feet");
  CHECK(in_english.feet(four_feet) == "all four feet");
  CHECK(in_english.feet({Foot::lf, Foot::rh}) == "left front and right hind");
  CHECK(in_english.feet({Foot::rf, Foot::lh, Foot::rh}) == "right front, left hind and right hind");
}

TEST_CASE("a finding is said in words with its code beside") {
  const FindingCase rows[] = {
      {Claw::outside, Lesion::wla, "", Place::white_line_heel, Degree::bad, DdStage::not_called,
       "outside claw: white line abscess, heel, bad (WLA)"},
      {Claw::none, Lesion::dd, "", Place::behind, Degree::not_called, DdStage::raw,
       "digital dermatitis, raw, behind (DD)"},
      {Claw::none, Lesion::dd, "", Place::not_called, Degree::not_called, DdStage::m4_1,
       "digital dermatitis, M4.1 (DD)"},
      {Claw::both, Lesion::hhe, "", Place::heel, Degree::slight, DdStage::not_called,
       "both claws: heel horn erosion, slight (HHE)"},
      {Claw::not_called, Lesion::su, "", Place::sole_middle, Degree::plain, DdStage::not_called,
       "claw not called: sole ulcer, middle of the sole, plain (SU)"},
      {Claw::outside, Lesion::sh, "two spots", Place::white_line_side, Degree::not_called,
       DdStage::not_called,
       "outside claw: sole haemorrhage, white line at the side, two spots (SH)"},
      {Claw::inside, Lesion::other, "corkscrew", Place::not_called, Degree::not_called,
       DdStage::not_called, "inside claw: corkscrew"},
      {Claw::not_called, Lesion::overgrown, "", Place::not_called, Degree::not_called,
       DdStage::not_called, "overgrown"},
      {Claw::outside, Lesion::sw, "", Place::in_front, Degree::bad, DdStage::not_called,
       "swelling, in front, bad (SW) above the outside claw"},
      {Claw::not_called, Lesion::unclear, "black spot", Place::toe, Degree::not_called,
       DdStage::not_called, "unclear: black spot, toe"},
      {Claw::none, Lesion::other, "", Place::not_called, Degree::not_called, DdStage::not_called,
       "something else"}};
  for (const FindingCase& row : rows) {
    FindingRow finding;
    finding.claw = row.claw;
    finding.lesion = row.lesion;
    finding.words = row.said;
    finding.place = row.place;
    finding.degree = row.degree;
    finding.stage = row.stage;
    CHECK(in_english.finding_at_claw(finding) == row.shown);
  }
}

TEST_CASE("what a finding is called and what was called of it stand apart in a list of kinds") {
  FindingRow row;
  row.lesion = Lesion::wla;
  row.claw = Claw::outside;
  row.place = Place::white_line_heel;
  row.degree = Degree::bad;
  row.zone = 2;
  CHECK(english_wording().finding_name(row) == "white line abscess (WLA)");
  CHECK(english_wording().finding_details(row) == "outside claw, heel, bad, zone 2");
  FindingRow other;
  other.words = "wire cut";
  CHECK(english_wording().finding_name(other) == "wire cut");
  CHECK(english_wording().finding_details(other).empty());
}

TEST_CASE("what was called in doubt of a finding is told once, with its question mark") {
  FindingRow finding;
  finding.lesion = Lesion::su;
  finding.place = Place::heel;
  finding.degree = Degree::bad;
  finding.words = "bad?, smells";
  CHECK(in_english.finding_details(finding) == "claw not called, heel, bad?, smells");
}

TEST_CASE("digital dermatitis in an ulcer is told with the ulcer") {
  FindingRow finding;
  finding.lesion = Lesion::su;
  finding.degree = Degree::bad;
  finding.dd_infected = true;
  CHECK(in_english.finding(finding) == "sole ulcer, bad, digital dermatitis in it (SU)");
}

TEST_CASE("a zone number stands beside only where the words do not tell it") {
  FindingRow finding;
  finding.lesion = Lesion::su;
  finding.place = Place::sole_middle;
  finding.zone = 4;
  CHECK(in_english.finding(finding) == "sole ulcer, middle of the sole (SU)");
  finding.lesion = Lesion::sh;
  finding.place = Place::outer_wall;
  finding.zone = 7;
  CHECK(in_english.finding(finding) == "sole haemorrhage, outer wall (SH, zone 7)");
}

TEST_CASE("an act says its claw, its product and the day it is for") {
  const Day visit = day("2026-11-24");
  ActionRow act;
  act.action = ActionKind::block_on;
  act.claw = Claw::inside;
  act.said_for = visit + 28;
  CHECK(in_english.act(act, visit) == "block on, inside claw, off by Tue 22 Dec");
  act = {};
  act.action = ActionKind::paste;
  act.product = "salve";
  CHECK(in_english.act(act, visit) == "paste (salve)");
  act = {};
  act.action = ActionKind::see_again;
  act.said_for = visit + 42;
  CHECK(in_english.act(act, visit) == "see again by Tue 5 Jan 2027");
}

TEST_CASE("a block says what it is made of, pain relief who gave it") {
  ActionRow act;
  act.action = ActionKind::block_on;
  act.claw = Claw::inside;
  act.material = Material::wood;
  CHECK(in_english.act(act, {}) == "block on (wood), inside claw");
  act = {};
  act.action = ActionKind::pain_relief_given;
  act.by_whom = ByWhom::vet;
  CHECK(in_english.act(act, {}) == "pain relief given (vet)");
}

TEST_CASE("a mobility score is said with the highest of its scale") {
  TurnRow turn;
  CHECK(in_english.mobility(turn).empty());
  turn.mobility_scale = MobilityScale::one_to_five;
  turn.mobility_score = 1;
  CHECK(in_english.mobility(turn) == "mobility 1 of 5");
}

TEST_CASE("taken off, came off and still on are three different things") {
  std::set<std::string> said;
  for (const ActionKind kind : {ActionKind::wrap_off, ActionKind::wrap_came_off,
                                ActionKind::wrap_still_on, ActionKind::wrap_unknown}) {
    ActionRow act;
    act.action = kind;
    said.insert(in_english.act(act, {}));
  }
  CHECK(said.size() == 4);
}

TEST_CASE("why she came tells every reason, and the leg when it was called") {
  struct Row {
    Reason reason;
    ReasonSet also;
    FootSet lame;
    bool came_lame;
    const char* told;
  };

  const std::vector<Row> rows = {
      {Reason::lame, {}, {Foot::lh}, true, "lame on left hind"},
      {Reason::lame, {}, {}, true, "lame, leg not called"},
      {Reason::recheck, {}, {Foot::rf}, true, "recheck, lame on right front"},
      {Reason::not_called, {}, {}, false, "reason not called"},
      {Reason::not_called, {}, {Foot::lh}, true, "lame on left hind"},
      {Reason::fresh, {Reason::lame}, {Foot::lh}, true, "fresh, lame on left hind"},
      {Reason::dry_off, {Reason::lame}, hind_feet, true, "dry-off, lame on both hind feet"},
      {Reason::lame, {Reason::fresh}, {Foot::lh}, true, "lame on left hind, fresh"},
      {Reason::other, {Reason::fresh}, {}, false, "swollen hock, fresh"},
  };
  for (const Row& row : rows) {
    CAPTURE(row.told);
    TurnRow turn;
    turn.reason = row.reason;
    turn.also = row.also;
    turn.lame = row.lame;
    turn.came_lame = row.came_lame;
    if (row.reason == Reason::other) turn.reason_words = "swollen hock";
    CHECK(in_english.reasons(turn) == row.told);
  }
}

TEST_CASE("a measure tells the claw when it was called") {
  MeasureRow row;
  row.length.tenths_mm = 785;
  row.claw = Claw::not_called;
  CHECK(in_english.measure(row) == "toe length 78.5 mm");
  row.claw = Claw::outside;
  CHECK(in_english.measure(row) == "outside claw, toe length 78.5 mm");
}

TEST_CASE("silence is never nothing found") {
  CHECK(in_english.state(FootState::unsaid) == "nobody said whether lifted");
  CHECK(in_english.state(FootState::nothing_found) == "nothing found");
  CHECK(in_english.state(FootState::not_lifted) == "not lifted");
}

TEST_CASE("dates carry their weekday, and the year only when it is another") {
  CHECK(in_english.date(day("2026-11-26"), day("2026-11-24")) == "Thu 26 Nov");
  CHECK(in_english.date(day("2027-01-05"), day("2026-11-24")) == "Tue 5 Jan 2027");
  CHECK(in_english.full_date(day("2026-02-01")) == "Sun 1 Feb 2026");
}

TEST_CASE("one is said otherwise than many") {
  CHECK(in_english.count(Saying::task_count, 1) == "1 task");
  CHECK(in_english.count(Saying::task_count, 0) == "0 tasks");
  CHECK(in_english.count(Saying::task_count, 11) == "11 tasks");
}

TEST_CASE("lists end with and") {
  CHECK(in_english.list({}).empty());
  CHECK(in_english.list({"412"}) == "412");
  CHECK(in_english.list({"412", "513", "620"}) == "412, 513 and 620");
}

TEST_CASE("braces in what people said stay what they are") {
  CHECK(in_english.say(Saying::title, {{"herd", "{date}"}, {"date", "{x}"}}) == "{date}, {x}");
}

TEST_CASE("what stands in a narrow cell is held together") {
  CHECK(unbroken("9 of 164") == "9\u00a0of\u00a0164");
  CHECK(unbroken("heel").size() == 4);
}

TEST_CASE("parts of a sentence have semicolons between and no full stop before one") {
  CHECK(clauses({"went down", "Stop: ring the vet.", "still on?", "late."}) ==
        "went down; Stop: ring the vet; still on?; late.");
  CHECK(clauses({"went down"}) == "went down");
  CHECK(clauses({}).empty());
}

TEST_CASE("sentences start with a capital and end once") {
  CHECK(as_sentence("wrap on") == "Wrap on.");
  CHECK(as_sentence("still on?") == "Still on?");
  CHECK(as_sentence("öffnen") == "Öffnen.");
  CHECK(as_sentence("").empty());
  CHECK(capitalised("÷ sign") == "÷ sign");
}

TEST_CASE("another language needs a table and nothing else") {
  WordingTables dutch = in_english.tables();
  static constexpr Worded<Foot> feet[] = {{Foot::lf, "linksvoor"},
                                          {Foot::rf, "rechtsvoor"},
                                          {Foot::lh, "linksachter"},
                                          {Foot::rh, "rechtsachter"}};
  static constexpr Worded<Lesion> lesions[] = {{Lesion::su, "zoolzweer"}};
  dutch.feet = feet;
  dutch.lesions = lesions;
  const Wording wording(dutch);
  CHECK(wording.foot(Foot::lh) == "linksachter");
  CHECK(wording.lesion(Lesion::su) == "zoolzweer");
}

}  // namespace evenclaw
