#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;
using saying::printed;
using saying::refusal_of;
using saying::turn_of;

namespace {

using Lines = std::vector<std::string>;

struct Said {
  const char* name;
  Lines lines;
  const char* printed;
};

void check_each(const std::vector<Said>& rows) {
  for (const Said& row : rows) {
    INFO(row.name);
    CHECK(printed(row.lines) == row.printed);
  }
}

struct Refused {
  Lines lines;
  const char* slug;
};

}  // namespace

TEST_CASE("what is said goes to the feet named last, until others are named") {
  check_each({
      {"one foot", {"412 LH SU", "block on inside"}, "412 // LH sole ulcer; block on inside"},
      {"several feet", {"412 hinds SH"}, "412 // LH bruise // RH bruise"},
      {"the next foot", {"412 LH SU", "RH", "DD"}, "412 // LH sole ulcer // RH DD"},
      {"back again", {"412 LH SU; RH DD; LH opened"}, "412 // LH sole ulcer; opened // RH DD"},
      {"the whole cow", {"412 LH SU; whole cow; vet"}, "412 vet // LH sole ulcer"},
      {"rest fine changes no foot",
       {"412 LH SU; rest fine; vet"},
       "412 rest fine // LH sole ulcer; vet"},
  });
}

TEST_CASE("a foot that is put right takes nothing back of who she is") {
  CHECK(printed({"410 LH DD raw", "no, 401", "no, right hind"}) == "401 // RH DD raw");
  CHECK(printed({"410 LH DD raw", "no, 401", "no, no DD", "no, 402"}) == "402 // LH");
}

TEST_CASE("acts before any foot concern the whole cow when they can") {
  CHECK(printed({"412 vet; see again 28d; told the farmer"}) ==
        "412 vet; see again 28d; told the farmer");
  CHECK(refusal_of({"412", "wrap on"}).front().slug == "call-impossible");
}

TEST_CASE("nothing found before any foot means the rest of today's feet") {
  CHECK(turn_of({"412 nothing found"}).rest_fine);
  CHECK(turn_of({"412", "nothing found"}).rest_fine);
  const Turn turn = turn_of({"412 LH nothing found"});
  CHECK_FALSE(turn.rest_fine);
  CHECK(find_foot(turn, Foot::lh)->state == FootState::nothing_found);
}

TEST_CASE("a foot named and left at that is kept as unsaid") {
  const Turn turn = turn_of({"412 LH"});
  REQUIRE(find_foot(turn, Foot::lh) != nullptr);
  CHECK(find_foot(turn, Foot::lh)->state == FootState::unsaid);
}

TEST_CASE("the same finding said again completes the first, or is kept once") {
  check_each({
      {"alike", {"412 LH SU", "SU"}, "412 // LH sole ulcer"},
      {"more detail",
       {"412 LH SU", "outside SU z4 bad"},
       "412 // LH outside sole ulcer middle of the sole, bad"},
      {"less detail", {"412 LH outside SH toe", "SH"}, "412 // LH outside bruise toe"},
      {"another place", {"412 LH SH toe", "SH heel"}, "412 // LH bruise toe; bruise heel"},
      {"the other claw",
       {"412 LH outside SH; inside SH"},
       "412 // LH outside bruise; inside bruise"},
      {"another degree", {"412 LH SH slight", "SH bad"}, "412 // LH bruise, slight; bruise, bad"},
      {"on another foot", {"412 LH SH", "RH SH"}, "412 // LH bruise // RH bruise"},
  });
}

TEST_CASE("the same act said again completes the first, or is kept once") {
  check_each({
      {"alike", {"412 LH wrap on", "wrap on"}, "412 // LH wrap on"},
      {"with a time", {"412 LH wrap on", "wrap on, off Thu"}, "412 // LH wrap on, off Thu"},
      {"with a claw", {"412 LH block on", "block on inside"}, "412 // LH block on inside"},
      {"another product",
       {"412 LH spray with aaa; spray with bbb"},
       "412 // LH spray with aaa; spray with bbb"},
      {"off and on", {"412 LH wrap taken off; wrap on"}, "412 // LH wrap taken off; wrap on"},
      {"measured alike", {"412 LH length 78mm; length 78mm"}, "412 // LH length 78 mm"},
      {"measured anew",
       {"412 LH length 78mm; length 75mm"},
       "412 // LH length 78 mm; length 75 mm"},
  });
}

TEST_CASE("when it could be either of two, nothing is guessed") {
  const Faults faults = refusal_of({"412 LH outside SH; inside SH", "SH bad"});
  REQUIRE(faults.size() == 1);
  CHECK(faults.front().slug == "call-impossible");
  CHECK(faults.front().message.find("either of two") != std::string::npos);
}

TEST_CASE("no, right hind moves all that was said since the foot was named") {
  check_each({
      {"a finding and an act",
       {"412 LH outside SU; block on inside", "no, RH"},
       "412 // RH outside sole ulcer; block on inside"},
      {"not what was said before",
       {"412 LH SU", "RH", "DD raw", "no, LH"},
       "412 // LH sole ulcer; DD raw"},
      {"what was there stays",
       {"412 RH SH", "LH SU", "no, RH", "SU bad"},
       "412 // RH bruise; sole ulcer, bad"},
      {"only one of two", {"412 hinds SH slight", "no, only LH"}, "412 // LH bruise, slight"},
      {"of two to a third", {"412 hinds SH", "no, LF"}, "412 // LF bruise"},
      {"the foot alone", {"412 LH", "no, RH", "SU"}, "412 // RH sole ulcer"},
      {"twice", {"412 LH SU", "no, RH", "no, LF"}, "412 // LF sole ulcer"},
      {"the lame leg", {"412 lame LH", "no, RH"}, "412 lame RH"},
      {"with a note", {"412 LH SU", "note deep", "no RH"}, "412 // RH sole ulcer; note: deep"},
      {"the farmer stays told",
       {"412 LH SU; told the farmer; no, RH"},
       "412 told the farmer // RH sole ulcer"},
  });
}

TEST_CASE("no, inside mends the claw said last") {
  check_each({
      {"of a finding", {"412 LH outside SU", "no, inside"}, "412 // LH inside sole ulcer"},
      {"of a block",
       {"412 LH outside SU; block on outside", "no, inside"},
       "412 // LH outside sole ulcer; block on inside"},
      {"past what has no claw",
       {"412 LH outside SU; wrap on; spray", "no, inside"},
       "412 // LH inside sole ulcer; wrap on; spray"},
      {"of a measure",
       {"412 LH outside length 78mm", "no inside"},
       "412 // LH inside length 78 mm"},
      {"not called before", {"412 LH SU", "no, outside"}, "412 // LH outside sole ulcer"},
      {"on both feet",
       {"412 hinds outside SH", "no, inside"},
       "412 // LH inside bruise // RH inside bruise"},
  });
}

TEST_CASE("no, no sole ulcer takes back what was not there") {
  check_each({
      {"a finding", {"412 LH outside SU; DD", "no, no SU"}, "412 // LH DD"},
      {"the only one", {"412 LH SU bad", "no, no sole ulcer"}, "412 // LH"},
      {"by its claw",
       {"412 LH outside SH; inside SH", "no, no inside SH"},
       "412 // LH outside bruise"},
      {"by its place", {"412 LH SH toe; SH heel", "no, no bruise heel"}, "412 // LH bruise toe"},
      {"by its family", {"412 LH WLA heel", "no no white line"}, "412 // LH"},
      {"on both feet", {"412 hinds DD; SH", "no, no DD"}, "412 // LH bruise // RH bruise"},
      {"where it was", {"412 LH DD; RH SH", "hinds; no, no DD"}, "412 // LH // RH bruise"},
      {"said before another foot", {"412 LH SU; RH DD", "LH no, no SU"}, "412 // LH // RH DD"},
      {"an act", {"412 LH SU; wrap on, off Thu", "no, no wrap"}, "412 // LH sole ulcer"},
      {"a block however it went on",
       {"412 LH SU; blocked again inside", "no, no block"},
       "412 // LH sole ulcer"},
      {"one of two sprays",
       {"412 LH DD; spray with aaa; spray with bbb", "no, no spray with aaa"},
       "412 // LH DD; spray with bbb"},
      {"of the whole cow", {"412 vet; see again 28d", "no, no vet"}, "412 see again 28d"},
      {"told the farmer",
       {"412 LH SU; told the farmer", "no, no told the farmer"},
       "412 // LH sole ulcer"},
      {"and then the other foot",
       {"412 RH SU", "LH SU; SH", "no, no SU", "no, RH"},
       "412 // RH sole ulcer; bruise"},
  });
}

TEST_CASE("no, no length takes back what was not measured") {
  check_each({
      {"by what was measured",
       {"412 LH outside length 78 mm; sole 6 mm", "no, no length"},
       "412 // LH sole thickness 6 mm"},
      {"by how long it was",
       {"412 LH outside length 78 mm; sole 6 mm", "no, no 78 mm"},
       "412 // LH sole thickness 6 mm"},
      {"by both",
       {"412 LH length 78 mm; length 75 mm", "no, no length 75 mm"},
       "412 // LH length 78 mm"},
      {"by its claw",
       {"412 LH outside length 78 mm; inside length 75 mm", "no, no inside length"},
       "412 // LH outside length 78 mm"},
      {"by its place", {"412 LH heel 42 mm high", "no, no heel 42 mm"}, "412 // LH"},
      {"with not", {"412 LH heel 42 mm high", "no, not 42 mm"}, "412 // LH"},
      {"and then the other foot",
       {"412 LH length 78 mm; sole 6 mm", "no, no length", "no, RH"},
       "412 // RH sole thickness 6 mm"},
  });
}

TEST_CASE("no, not fresh takes back why she came") {
  check_each({
      {"the only reason", {"412 fresh", "no, not fresh"}, "412"},
      {"the first of two", {"412 fresh, lame LH", "no, not fresh"}, "412 lame LH"},
      {"the second", {"412 fresh, lame LH", "no, not lame"}, "412 fresh"},
      {"one leg of two", {"412 lame LH and RH", "no, not lame LH"}, "412 lame RH"},
      {"both legs", {"412 lame LH and RH", "no, no lame LH and RH"}, "412"},
      {"said twice no", {"412 dry off", "no, no dry off"}, "412"},
      {"in words",
       {"412 came for a swollen hock; routine", "no, not came for a swollen hock"},
       "412 routine"},
      {"and what was found stays", {"412 heifer; LH SU", "no, not heifer"}, "412 // LH sole ulcer"},
      {"also behind another foot",
       {"412 lame LH", "RH SU; no, not lame", "no, LH"},
       "412 // LH sole ulcer"},
  });
}

TEST_CASE("a foot whose only finding was taken back is open, not nothing found") {
  const Turn turn = turn_of({"412 LH SU", "no, no SU", "rest fine"});
  CHECK(find_foot(turn, Foot::lh)->state == FootState::unsaid);
}

TEST_CASE("nothing after all takes back all that was found on the feet named") {
  check_each({
      {"one foot", {"412 LH SU; DD", "nothing after all"}, "412 // LH nothing found"},
      {"as a correction", {"412 LH SU", "no, nothing found"}, "412 // LH nothing found"},
      {"both", {"412 hinds DD", "fine after all"}, "412 // LH nothing found // RH nothing found"},
      {"what was done stays",
       {"412 LH SU; wrap taken off", "nothing after all"},
       "412 // LH nothing found; wrap taken off"},
      {"and then the other foot",
       {"412 LH SU; nothing after all; no, RH"},
       "412 // RH nothing found"},
  });
}

TEST_CASE("no, 421 mends the number") {
  check_each({
      {"the number", {"412 lame LH", "no, 421"}, "421 lame LH"},
      {"now doubtful", {"412", "no, 421 or 422"}, "421 or 422"},
      {"now known", {"no number, brown", "no, 421"}, "421"},
  });
}

TEST_CASE("what cannot be, or has nothing to go to, is refused and changes nothing") {
  const std::vector<Refused> rows = {
      {{"412", "SU"}, "call-impossible"},
      {{"412", "not lifted"}, "call-impossible"},
      {{"412", "trimmed"}, "call-impossible"},
      {{"412", "length 78mm"}, "call-impossible"},
      {{"412 LH SU", "nothing found"}, "call-impossible"},
      {{"412 LH SU", "not lifted"}, "call-impossible"},
      {{"412 LH block on", "not lifted"}, "call-impossible"},
      {{"412 LH not lifted", "SU"}, "call-impossible"},
      {{"412 LH not lifted", "nothing found"}, "call-impossible"},
      {{"412 LH not lifted", "trimmed"}, "call-impossible"},
      {{"412 LH not lifted", "length 78mm"}, "call-impossible"},
      {{"412 LH not lifted", "spray"}, "call-impossible"},
      {{"412 LH trimmed", "not trimmed"}, "call-impossible"},
      {{"412 LH SU", "not done, no time"}, "call-impossible"},
      {{"412 unfinished, down", "not done"}, "call-impossible"},
      {{"412 LH SU", "no, no DD"}, "call-impossible"},
      {{"412 LH length 78 mm", "no, no 48 mm"}, "call-impossible"},
      {{"412 LH length 78 mm", "no, no heel 78 mm"}, "call-impossible"},
      {{"412 LH outside length 78 mm; inside length 78 mm", "no, no 78 mm"}, "call-impossible"},
      {{"412 LH length 78 mm", "no, no 78"}, "call-not-understood"},
      {{"412 LH length 78 mm", "no, no heel"}, "call-not-understood"},
      {{"412 fresh", "no, not routine"}, "call-impossible"},
      {{"412 fresh", "no, not lame"}, "call-impossible"},
      {{"412 lame LH", "no, not lame RH"}, "call-impossible"},
      {{"412 came for a swollen hock", "no, not came for a cough"}, "call-impossible"},
      {{"412 fresh", "not fresh"}, "call-not-understood"},
      {{"412 LH SU", "no, no inside DD"}, "call-impossible"},
      {{"412 LH outside SU", "no, no inside SU"}, "call-impossible"},
      {{"412 LH outside SH; inside SH", "no, no SH"}, "call-impossible"},
      {{"412", "no, no SU"}, "call-impossible"},
      {{"412 LH SU", "no, no wrap"}, "call-impossible"},
      {{"412", "no, no vet"}, "call-impossible"},
      {{"412", "nothing after all"}, "call-impossible"},
      {{"412 LH not lifted", "nothing after all"}, "call-impossible"},
      {{"412 LH SU", "no, sole ulcer"}, "call-not-understood"},
      {{"412 LH SU", "no, not lifted"}, "call-not-understood"},
      {{"412", "no, LH"}, "call-impossible"},
      {{"412 LH SU", "no, LH"}, "call-impossible"},
      {{"412", "no, inside"}, "call-impossible"},
      {{"412 LH DD", "no, inside"}, "call-impossible"},
      {{"412 LH inside SU", "no, inside"}, "call-impossible"},
      {{"412", "no, 412"}, "call-impossible"},
      {{"412 RH not lifted", "LH SU", "no, RH"}, "call-impossible"},
  };
  for (const Refused& row : rows) {
    INFO("last line: ", row.lines.back());
    const Faults faults = refusal_of(row.lines);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().slug == row.slug);

    TurnDraft draft;
    bool cow_open = false;
    for (std::size_t i = 0; i + 1 < row.lines.size(); ++i) {
      saying::say(draft, cow_open, row.lines[i]);
    }
    const Turn before = draft.turn;
    saying::say(draft, cow_open, row.lines.back());
    CHECK(draft.turn == before);
  }
}

TEST_CASE("a wrap seen on a foot that stays on the ground is told") {
  CHECK(printed({"412 LH not lifted; wrap still on"}) == "412 // LH not lifted; wrap still on");
}

TEST_CASE("a cow may come for more than one reason") {
  check_each({
      {"fresh and lame", {"412 fresh lame LH"}, "412 fresh; lame LH"},
      {"on another line", {"412 dry off", "lame LH and RF"}, "412 dry off; lame RF and LH"},
      {"lame first", {"412 lame LH; recheck"}, "412 lame LH; recheck"},
      {"lame, no leg named", {"412 fresh, lame"}, "412 fresh; lame"},
      {"words besides",
       {"412 fresh", "came for a swollen hock"},
       "412 fresh; came for a swollen hock"},
      {"the same said again", {"412 fresh lame", "fresh", "lame LH"}, "412 fresh; lame LH"},
      {"the leg mended", {"412 fresh lame LH", "no, RH"}, "412 fresh; lame RH"},
  });
}

TEST_CASE("legs she is lame on add up, notes are joined") {
  CHECK(printed({"412 lame LH", "lame RF"}) == "412 lame RF and LH");
  CHECK(printed({"412 note one", "note two"}) == "412 note: one; two");
}

TEST_CASE("a tapped finding that cannot be is refused like a spoken one") {
  TurnDraft draft;
  CHECK(add_clause(draft, FeetNamed{FootSet{Foot::lh}}).ok());
  FindingSaid said{};
  said.finding.lesion = Lesion::su;
  said.finding.place = Place::between;
  CHECK_FALSE(add_clause(draft, said).ok());
}

TEST_CASE("behind rest fine a note is of her, before it of the foot named last") {
  CHECK(printed({"412 LH SU, rest fine", "note kicks"}) ==
        "412 rest fine; note: kicks // LH sole ulcer");
  CHECK(printed({"412 LH SU", "note deep", "rest fine"}) ==
        "412 rest fine // LH sole ulcer; note: deep");
  CHECK(printed({"412 LH SU, rest fine", "RH DD", "note wet"}) ==
        "412 rest fine // LH sole ulcer // RH DD; note: wet");
}

TEST_CASE("no, inside behind a foot that is named again mends what was said last of that foot") {
  CHECK(saying::printed(
            {"412 LH outside SU; block on outside", "RH nothing found", "LH no, inside"}) ==
        "412 // RH nothing found // LH outside sole ulcer; block on inside");
  CHECK(saying::printed({"412 LH outside SU; RH nothing found; LH no, inside"}) ==
        "412 // RH nothing found // LH inside sole ulcer");
}

TEST_CASE("a claw mended on a foot named again leaves the rest of that foot to it") {
  CHECK(saying::printed({"412 LH outside SU", "RH DD", "LH no, inside", "spray",
                         "no, right hind"}) == "412 // RH DD; spray // LH inside sole ulcer");
}
