#include "core/exchange/ade_written.hpp"

#include <doctest/doctest.h>

#include "core/exchange/ade_herd.hpp"
#include "core/wire/json.hpp"
#include "tests/core/exchange/exchange_day.hpp"

using namespace evenclaw;
using evenclaw::test::day;

namespace {

const HerdId thornby = HerdId{uuid_derived("a herd")};
const CowId bella = CowId{uuid_derived("a cow")};
const EntryId a_turn = EntryId{uuid_derived("a turn")};

AdeRows rows_of_bella() {
  CowRow cow;
  cow.herd = thornby;
  cow.cow = bella;
  cow.number = "412";
  cow.number_said = "0412";
  AdeRows rows;
  rows.cows = {cow};
  rows.tags = {{thornby, bella, day("2024-01-01"), "UK123450600001", "826000000600001", {}}};
  rows.names = {{thornby, bella, "Bella"}};
  CowFactsRow facts;
  facts.herd = thornby;
  facts.cow = bella;
  facts.breed = "Jersey";
  facts.born = day("2021-05-05");
  rows.facts = {facts};
  return rows;
}

CowLifeRow life(LifeEvent event, std::string_view on) {
  CowLifeRow row;
  row.herd = thornby;
  row.cow = bella;
  row.day = day(on);
  row.event = event;
  return row;
}

FindingRow ulcer() {
  FindingRow row;
  row.herd = thornby;
  row.cow = bella;
  row.turn = a_turn;
  row.position = 1;
  row.day = day("2026-10-13");
  row.foot = Foot::lh;
  row.claw = Claw::outside;
  row.lesion = Lesion::su;
  row.place = Place::sole_middle;
  row.zone = 4;
  row.degree = Degree::bad;
  return row;
}

std::string file_of(const AdeRows& rows) {
  return ade_file(thornby, {1'795'766'400'000, 60}, rows);
}

bool has(const std::string& text, std::string_view part) {
  return text.find(part) != std::string::npos;
}

}  // namespace

TEST_CASE(
    "a cow is an animal with her numbers, name, breed and birth, and is read back as she is") {
  const auto read = ade_herd(file_of(rows_of_bella()), day("2026-11-27"));
  REQUIRE(read.ok());
  CHECK(read->left_out.empty());
  REQUIRE(read->records.size() == 1);
  const HerdRecord& cow = read->records.front();
  CHECK(cow.number == "0412");
  CHECK(cow.tag == "UK123450600001");
  CHECK(cow.electronic == "826000000600001");
  CHECK(cow.name == "Bella");
  CHECK(cow.breed == "Jersey");
  CHECK(cow.born == day("2021-05-05"));
}

TEST_CASE("what happened to her is read back with lactation, way, reason and words") {
  AdeRows rows = rows_of_bella();
  CowLifeRow calved = life(LifeEvent::calved, "2024-09-01");
  calved.lactation = 2;
  CowLifeRow sold = life(LifeEvent::left, "2026-09-20");
  sold.way = LeavingWay::sold;
  sold.reason = LeavingReason::feet_and_legs;
  sold.words = "lame again";
  rows.life = {life(LifeEvent::arrived, "2023-01-02"), calved,
               life(LifeEvent::dried_off, "2025-07-01"), sold};
  const auto read = ade_herd(file_of(rows), day("2026-11-27"));
  REQUIRE(read.ok());
  CHECK(read->left_out.empty());
  REQUIRE(read->records.size() == 5);
  for (std::size_t at = 0; at < rows.life.size(); ++at) {
    REQUIRE(read->records[at + 1].events.size() == 1);
    CHECK(read->records[at + 1].events.front() == event_of(rows.life[at]));
  }
}

TEST_CASE("every way and reason of leaving has a word that ADE knows") {
  for (const auto& row : EnumWords<LeavingReason>::table) {
    for (const LeavingWay way : {LeavingWay::sold, LeavingWay::died}) {
      AdeRows rows = rows_of_bella();
      CowLifeRow left = life(LifeEvent::left, "2026-09-20");
      left.way = way;
      left.reason = row.value;
      left.words = "as told";
      rows.life = {left};
      CAPTURE(row.word);
      const auto read = ade_herd(file_of(rows), day("2026-11-27"));
      REQUIRE(read.ok());
      const LifeEventTold told = read->records.back().events.front();
      CHECK(told.way == way);
      // Not every reason is in both enumerations; then it is another one.
      CHECK((told.reason == row.value || told.reason == LeavingReason::other));
    }
  }
}

TEST_CASE("a calving of a list of cows and a leaving in words are events too") {
  AdeRows rows = rows_of_bella();
  rows.facts.front().calved = day("2026-01-04");
  rows.facts.front().lactation = 3;
  rows.cows.front().left_on = day("2026-10-20");
  rows.cows.front().left_words = "gone";
  const std::string file = file_of(rows);
  CHECK(has(file, R"("damParity":3,"eventDateTime":"2026-01-04T00:00:00Z")"));
  CHECK(has(file, R"("departureReason":"Unknown","eventDateTime":"2026-10-20T00:00:00Z")"));
}

TEST_CASE("a finding is a diagnosis with our code, the leg as position and the rest in its site") {
  AdeRows rows = rows_of_bella();
  rows.findings = {ulcer()};
  const std::string file = file_of(rows);
  CHECK(has(file, R"("resourceType":"icarDiagnosisEventResource")"));
  CHECK(has(file, R"("diagnosisCode":{"id":"SU","scheme":"evenclaw.lesion"})"));
  CHECK(has(file, R"("positions":[{"position":"LegsRearLeft"}])"));
  CHECK(has(file, R"("severity":"Severe")"));
  CHECK(has(file, R"("site":"claw=lateral;zone=4;place=sole_middle")"));
}

TEST_CASE("the exact stage of dermatitis stands in the site, beside ADE's word for it") {
  struct Row {
    DdStage stage;
    std::string_view word;
  };

  for (const Row& row : {Row{DdStage::m1, "Early"}, Row{DdStage::m2, "Acute"},
                         Row{DdStage::m3, "Other"}, Row{DdStage::m4, "Chronic"},
                         Row{DdStage::m4_1, "AcuteOnChronic"}, Row{DdStage::raw, "Acute"}}) {
    AdeRows rows = rows_of_bella();
    FindingRow found = ulcer();
    found.lesion = Lesion::dd;
    found.claw = Claw::none;
    found.place = Place::behind;
    found.zone = 10;
    found.stage = row.stage;
    rows.findings = {found};
    const std::string file = file_of(rows);
    CHECK(has(file, R"("stage":")" + std::string(row.word) + '"'));
    CHECK(ade_site(found) == "zone=10;place=behind;stage=" + std::string(word_of(row.stage)));
  }
}

TEST_CASE("what nobody called is left out and never filled in") {
  FindingRow found = ulcer();
  found.claw = Claw::not_called;
  found.zone.reset();
  found.place = Place::not_called;
  found.degree = Degree::not_called;
  AdeRows rows = rows_of_bella();
  rows.findings = {found};
  CHECK(ade_site(found).empty());
  const std::string file = file_of(rows);
  CHECK_FALSE(has(file, "\"site\""));
  CHECK_FALSE(has(file, "\"severity\""));
}

TEST_CASE("an act is a treatment with its procedure, product and withdrawals") {
  ActionRow act;
  act.herd = thornby;
  act.cow = bella;
  act.turn = a_turn;
  act.position = 2;
  act.day = day("2026-10-13");
  act.foot = Foot::lh;
  act.action = ActionKind::spray;
  act.product = "blue";
  act.milk_till = day("2026-10-15");
  AdeRows rows = rows_of_bella();
  rows.actions = {act};
  const std::string file = file_of(rows);
  CHECK(has(file, R"("procedure":"spray")"));
  CHECK(has(file, R"("medicine":{"name":"blue"})"));
  CHECK(has(file, R"("withdrawals":[{"endDate":"2026-10-15T00:00:00Z","productType":"Milk"}])"));
}

TEST_CASE("a herd without cows is an empty array, and each file is one JSON text") {
  CHECK(file_of({}) == "[]\n");
  AdeRows rows = rows_of_bella();
  rows.findings = {ulcer(), ulcer()};
  CHECK(json_from_text(file_of(rows)).ok());
}
