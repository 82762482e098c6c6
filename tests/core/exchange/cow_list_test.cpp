#include "core/exchange/cow_list.hpp"

#include <doctest/doctest.h>

#include <fstream>
#include <iterator>

#include "core/base/random.hpp"
#include "tests/core/exchange/exchange_day.hpp"

using namespace evenclaw;
using evenclaw::test::day;

namespace {

using Lines = std::vector<std::string>;

CowListed only(const Lines& lines) {
  const auto list = cow_list(lines);
  REQUIRE(list.ok());
  REQUIRE(list->cows.size() == 1);
  return list->cows.front();
}

/// "2 "32.09.2026": ..." of each fault.
Lines faults_of(const Lines& lines) {
  Lines told;
  const auto list = cow_list(lines);
  REQUIRE_FALSE(list.ok());
  for (const Fault& fault : list.faults()) {
    CHECK_FALSE(fault.remedy.empty());
    told.push_back(std::to_string(fault.line) + " \"" + fault.token + "\": " + fault.message);
  }
  return told;
}

}  // namespace

TEST_CASE("columns stand in any order and are known by their heads") {
  const CowListed cow =
      only({"Breed;Ear tag;CALVED;Number;Lactation;EID;Due_to_calve;dry-off;Born;name",
            "Jersey;UK 123450 600001;2026-09-01;0412;3;826000000600001;"
            "2027-08-20;2027-06-20;2022-01-05;Bella"});
  CHECK(cow.line == 2);
  CHECK(cow.number == "0412");
  CHECK(cow.tag == "UK 123450 600001");
  CHECK(cow.electronic == "826000000600001");
  CHECK(cow.name == "Bella");
  CHECK(cow.breed == "Jersey");
  CHECK(cow.born == day("2022-01-05"));
  CHECK(cow.calved == day("2026-09-01"));
  CHECK(cow.lactation == 3);
  CHECK(cow.dry_off == day("2027-06-20"));
  CHECK(cow.due_to_calve == day("2027-08-20"));
  CHECK_FALSE(cow.heifer_or_cow);
}

TEST_CASE("a German list is read with its heads and its days") {
  const CowListed cow = only({"Stallnummer;Lebensnummer;Rasse;Gekalbt;Laktation",
                              "412;DE 03 12312345;Holstein;01.09.2026;3"});
  CHECK(cow.number == "412");
  CHECK(cow.calved == day("2026-09-01"));
  CHECK(cow.lactation == 3);
}

TEST_CASE("heifer or cow is said in words, and a lactation of 0 is a heifer") {
  CHECK(only({"cow,heifer or cow", "412,Heifer"}).heifer_or_cow == HeiferOrCow::heifer);
  CHECK(only({"cow,lactation", "412,0"}).heifer_or_cow == HeiferOrCow::heifer);
  CHECK_FALSE(only({"cow,lactation", "412,0"}).lactation);
  CHECK(faults_of({"cow,lactation,calved", "412,0,2026-09-01"}) ==
        Lines{"2 \"0\": she has calved, and her lactation is 0"});
}

TEST_CASE("a column that holds something else is told, and one a slip away is asked about") {
  CHECK(cow_list(Lines{"number;milk yield", "412;9000"}).value().not_read == Lines{"milk yield"});
  CHECK(faults_of({"number;breeed", "412;Jersey"}) ==
        Lines{"1 \"breeed\": \"breeed\" is no known head"});
}

TEST_CASE("every bad cell is told with its line, its words and its column") {
  CHECK(faults_of({"number;tag;eid;calved;lactation;heifer or cow", "412;;;32.09.2026;;",
                   "413;UK 123456 600001;;;;", "414;;12;;;", "415;;;;x;", "416;;;;;bull",
                   "826000000600001;;;;;", ";;;2026-09-01;;"}) ==
        Lines{"2 \"32.09.2026\": \"32.09.2026\" under \"calved\" is no day",
              "3 \"UK 123456 600001\": \"UK 123456 600001\" under \"tag\" is no official ear tag",
              "4 \"12\": \"12\" under \"electronic number\" is no electronic number",
              "5 \"x\": \"x\" under \"lactation\" is no number of a lactation",
              "6 \"bull\": \"bull\" under \"heifer or cow\" is no heifer and no cow",
              "7 \"826000000600001\": \"826000000600001\" under \"number\" is no herd number",
              "8 \"\": nothing tells which cow this is"});
}

TEST_CASE("lines of the wrong form and lines with a wrong cell are told together, by line") {
  CHECK(faults_of({"number;calved", "412;soon", "413", "414;2026-09-31"}) ==
        Lines{"2 \"soon\": \"soon\" under \"calved\" is no day",
              "3 \"413\": the line has 1 cells and the head has 2: 413",
              "4 \"2026-09-31\": \"2026-09-31\" under \"calved\" is no day"});
}

TEST_CASE("no two lines are of one cow, however many zeros stand before her number") {
  CHECK(faults_of({"number;tag", "412;UK 123450 600001", "0412;", "413;uk123450600001"}) ==
        Lines{"3 \"412\": \"412\" stands in line 2 too",
              "4 \"UK123450600001\": \"UK123450600001\" stands in line 2 too"});
}

TEST_CASE("a list in which no column tells the cow is refused, and so are two for one thing") {
  CHECK(faults_of({"breed;born", "Jersey;2022-01-05"}) ==
        Lines{"1 \"\": no column tells which cow a line is of"});
  CHECK(faults_of({"number;cow", "412;412"}) ==
        Lines{"1 \"cow\": two columns hold the number: cow"});
}

TEST_CASE("lists of any words are read or refused, and every cow that is read is named") {
  const Lines cells = {"412",
                       "0412",
                       "413",
                       "UK 123450 600001",
                       "826000000600001",
                       "Jersey",
                       "2026-09-01",
                       "01.09.2026",
                       "0",
                       "3",
                       "heifer",
                       "",
                       "\"x\"",
                       "\xff"};
  const Lines heads = {"number", "tag",       "eid",           "breed",
                       "calved", "lactation", "heifer or cow", "?"};
  for (std::uint64_t stream = 0; stream < 2000; ++stream) {
    RandomStream random(20260902, stream);
    const auto line_of = [&](const Lines& words, std::uint32_t count) {
      std::string line;
      for (std::uint32_t i = 0; i < count; ++i) {
        line += (i == 0 ? "" : ";") + words[random.below(static_cast<std::uint32_t>(words.size()))];
      }
      return line;
    };
    const std::uint32_t columns = 1 + random.below(4);
    Lines lines = {line_of(heads, columns)};
    const std::uint32_t rows = random.below(4);
    for (std::uint32_t i = 0; i < rows; ++i) lines.push_back(line_of(cells, columns));
    CAPTURE(stream);
    const auto list = cow_list(lines);
    if (!list) {
      CHECK_FALSE(list.faults().empty());
      continue;
    }
    for (const CowListed& cow : list->cows) {
      CHECK_FALSE((cow.number.empty() && cow.tag.empty() && cow.electronic.empty()));
    }
  }
}

TEST_CASE("the page of the list names every head that is understood") {
  std::ifstream file("docs/user/cow-list.md", std::ios::binary);
  const std::string page = {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
  for (const std::string& heads : heads_of_list()) {
    CAPTURE(heads);
    CHECK(page.find("| " + heads + " |") != std::string::npos);
  }
}
