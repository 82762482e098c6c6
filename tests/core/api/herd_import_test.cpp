#include "core/api/herd_import.hpp"

#include <doctest/doctest.h>

#include "tests/core/api/importing/list_taken.hpp"

namespace evenclaw::test {

namespace {

constexpr std::string_view two_cows =
    "number;tag;breed;calved;lactation\n"
    "0412;UK 123450 600001;Jersey;2026-09-01;3\n"
    "413;;Jersey;;0\n";

}  // namespace

TEST_CASE("cows nobody has recorded are entered with all that the list tells of them") {
  ListTaken herd;
  CHECK(herd.told(two_cows) == "2 entered, 0 told more, 0 unchanged, 1 events");
  const CowShown cow = herd.shown("412");
  REQUIRE(cow.facts.size() == 1);
  CHECK(cow.cow.number_said == "0412");
  CHECK(cow.tags.at(0).tag == "UK123450600001");
  CHECK(cow.facts[0].breed == "Jersey");
  CHECK(cow.facts[0].calved == day("2026-09-01"));
  CHECK(cow.facts[0].lactation == 3);
  CHECK(herd.shown("413").facts.at(0).heifer_or_cow == HeiferOrCow::heifer);
}

TEST_CASE("the same list again changes nothing and writes nothing") {
  ListTaken herd;
  REQUIRE(herd.take(two_cows).ok());
  const std::size_t before = herd.entries();
  CHECK(herd.told(two_cows) == "0 entered, 0 told more, 2 unchanged, 0 events");
  CHECK(herd.entries() == before);
}

TEST_CASE("a bad line is left out with its place, and the rest is taken over") {
  ListTaken herd;
  const auto taken = herd.take("number;calved\n412;2026-09-01\n413;soon\n414;2026-10-28\n415\n");
  REQUIRE(taken.ok());
  CHECK(taken->entered == 1);
  CHECK(taken->left_out_lines == 3);
  REQUIRE(taken->left_out.size() == 3);
  CHECK(taken->left_out[0].line == 3);
  CHECK(taken->left_out[0].column == 2);
  CHECK(taken->left_out[0].slug == "list-unreadable");
  CHECK(taken->left_out[1].slug == "date-in-future");
  CHECK(herd.lives() == std::vector<std::string>{"2026-09-01 calved"});
}

TEST_CASE("on request nothing is taken over when one line is bad, and a try writes nothing") {
  ListTaken herd;
  const std::size_t before = herd.entries();
  ImportWish whole = ListTaken::wish();
  whole.all_or_nothing = true;
  const auto refused = herd.take("number;calved\n412;2026-09-01\n413;soon\n", whole);
  REQUIRE_FALSE(refused.ok());
  CHECK(refused.faults().front().line == 3);
  ImportWish tries = ListTaken::wish();
  tries.only_tries = true;
  const auto tried = herd.take(two_cows, tries);
  REQUIRE(tried.ok());
  CHECK(tried->entered == 2);
  CHECK_FALSE(tried->written);
  CHECK(herd.entries() == before + 1);  // the herd itself
}

TEST_CASE("what a person says of columns and days is kept for the next list of the herd") {
  ListTaken herd;
  constexpr std::string_view list = "Tier;Tag1\n412;01/09/2026\n413;02/09/2026\n";
  CHECK(herd.told(list) == "2 entered, 0 told more, 0 unchanged, 0 events");
  ImportWish said = ListTaken::wish();
  said.columns = {{"Tier", HerdColumn::number}, {"Tag1", HerdColumn::calved}};
  said.dates = DayOrder::day_month_year;
  CHECK(herd.told(list, said) == "0 entered, 2 told more, 0 unchanged, 2 events");
  const std::size_t before = herd.entries();
  const auto again = herd.take(list);
  REQUIRE(again.ok());
  CHECK(again->columns.at(1).known_by == ColumnKnownBy::remembered);
  CHECK(again->days.at(0) == "Tag1: day first, as 31/12/2026");
  CHECK(herd.entries() == before);
}

TEST_CASE("of a cow that was in the crush more is told, and what the list leaves empty stays") {
  ListTaken herd;
  (void)herd.place.visited("2026-10-13", {"412 LH outside sole ulcer", "rest fine", "done"});
  REQUIRE(herd.take(two_cows).ok());
  CHECK(herd.told("number;breed;lactation\n412;;4\n") ==
        "0 entered, 1 told more, 0 unchanged, 0 events");
  const CowShown cow = herd.shown("412");
  CHECK(cow.facts.at(0).breed == "Jersey");
  CHECK(cow.facts.at(0).lactation == 4);
  CHECK(cow.turns.size() == 1);
}

TEST_CASE("events of years ago become the life of the cow who carries the number now") {
  ListTaken herd;
  (void)herd.place.visited("2026-10-13", {"412 nothing found", "done"});
  CHECK(herd.told("cow;event;date;lactation\n412;calved;2024-09-01;1\n412;dry;2025-07-01;\n"
                  "412;Kalbung;2025-09-03;2\n") == "0 entered, 1 told more, 0 unchanged, 3 events");
  CHECK(herd.shown("412").facts.at(0).calved == day("2025-09-03"));
  CHECK(herd.shown("412").facts.at(0).lactation == 2);
}

TEST_CASE("a cow that leaves is gone with the reason, and her open tasks are closed") {
  ListTaken herd;
  (void)herd.place.visited("2026-10-13",
                           {"412 LH outside sole ulcer; block on inside", "rest fine", "done"});
  REQUIRE_FALSE(herd.shown("412").open_tasks.empty());
  CHECK(herd.told("number;left;reason\n412;2026-10-20;sold, lame\n") ==
        "0 entered, 1 told more, 0 unchanged, 1 events");
  const CowShown cow = herd.shown("412");
  CHECK(cow.cow.left_on == day("2026-10-20"));
  CHECK(cow.cow.left_words == "sold, lame");
  CHECK(cow.open_tasks.empty());
}

TEST_CASE("a list in which she was sold leaves the end of her withdrawal open") {
  ListTaken herd;
  (void)herd.place.visited("2026-10-13", {"412 nothing found; injected; meat 30d", "done"});
  REQUIRE(herd.shown("412").open_tasks.size() == 1);
  (void)herd.told("number;left;reason\n412;2026-10-20;sold\n");
  CHECK(herd.shown("412").open_tasks.size() == 1);
}

TEST_CASE("a number given to another cow after its carrier left never brings her history along") {
  ListTaken herd;
  constexpr std::string_view list =
      "number;born;calved;left\n"
      "412;2019-01-01;2024-09-01;2025-03-01\n"
      "412;2022-01-01;2024-11-01;\n";
  CHECK(herd.told(list) == "2 entered, 0 told more, 0 unchanged, 3 events");
  const std::vector<CowNumberRow> carriers = herd.carriers_of("412");
  REQUIRE(carriers.size() == 2);
  CHECK(carriers[0].cow != carriers[1].cow);
  CHECK(herd.shown("412").facts.at(0).born == day("2022-01-01"));
  CHECK(herd.told(list) == "0 entered, 0 told more, 2 unchanged, 0 events");
}

TEST_CASE("every question is told with its line, and sure answers all") {
  ListTaken herd;
  REQUIRE(herd.take(two_cows).ok());
  (void)herd.place.visited("2026-10-20", {"77 nothing found", "done"});
  (void)herd.place.visited("2026-10-21", {"77 gone"});
  constexpr std::string_view other =
      "number;tag;eid;calved\n418;UK 123450 600001;;\n413;;999000000000001;\n77;;;\n";
  const auto taken = herd.take(other);
  REQUIRE(taken.ok());
  CHECK(taken->left_out.size() == 3);
  for (const LeftOut& left_out : taken->left_out) CHECK(left_out.slug == "answer-needed");
  CHECK(herd.told_surely(other) == "1 entered, 2 told more, 0 unchanged, 0 events");
  CHECK(herd.shown("418").tags.at(0).tag == "UK123450600001");
}

TEST_CASE("a second calving within 200 days is asked about, and sure it takes the other's place") {
  ListTaken herd;
  REQUIRE(herd.take(two_cows).ok());
  CHECK(herd.told("number;calved\n412;2026-09-03\n") ==
        "0 entered, 0 told more, 0 unchanged, 0 events; 2: 412 is known to have calved on "
        "2026-09-01, 2 days apart");
  CHECK(herd.told_surely("number;calved\n412;2026-09-03\n") ==
        "0 entered, 1 told more, 0 unchanged, 1 events");
  CHECK(herd.lives() == std::vector<std::string>{"2026-09-03 calved"});
}

TEST_CASE("a cow that is told to have left before she was in the crush is no such cow") {
  ListTaken herd;
  (void)herd.place.visited("2026-10-13", {"412 nothing found", "done"});
  CHECK(herd.told("number;tag;calved;left\n412;;2026-10-13;2026-10-13\n") ==
        "0 entered, 0 told more, 0 unchanged, 0 events; 2: 412 is told to have left on 2026-10-13, "
        "and was in the crush on 2026-10-13");
}

TEST_CASE("a line that names two known cows is left out, however sure") {
  ListTaken herd;
  REQUIRE(herd.take("number;tag\n412;UK 123450 600001\n413;\n").ok());
  CHECK(herd.told_surely("number;tag\n413;UK 123450 600001\n") ==
        "0 entered, 0 told more, 0 unchanged, 0 events; 2: the line is of one cow, and its numbers "
        "are those of 412 and 413 on record");
}

TEST_CASE("a file that is no list is refused whole") {
  ListTaken herd;
  const std::size_t before = herd.entries();
  CHECK(herd.told("") == "the list is empty");
  CHECK(herd.told(std::string("cow\n\x01", 5)) ==
        "a character that cannot be shown stands in it, so the file is no text");
  CHECK(herd.told("cow;calved\n412;2026-09-01\n413;01.09.2026\n414;9/13/2026\n").substr(0, 40) ==
        "under \"calved\" the days are written in 3");
  CHECK(herd.told(std::string(static_cast<std::size_t>(largest_import_bytes) + 1, 'x')) ==
        "the file is over 64 MB, which is no list of a herd");
  CHECK(herd.entries() == before + 1);
}

TEST_CASE("the list of western spreadsheets is read in its encoding") {
  ListTaken herd;
  const auto taken = herd.take("Nummer;Rasse\n412;Fl\xe4mische\n");
  REQUIRE(taken.ok());
  CHECK(taken->encoding == "Windows-1252");
  CHECK(herd.shown("412").facts.at(0).breed == "Flämische");
}

TEST_CASE("what an earlier record says was found is kept beside what was called, in codes") {
  ListTaken herd;
  (void)herd.place.visited("2026-10-13", {"412 LH outside sole ulcer", "rest fine", "done"});
  CHECK(herd.told("cow;date;leg;claw;place;lesion;degree;stage;treatment\n"
                  "412;2024-05-01;LH;outside;zone 4;SU;bad;;block\n"
                  "412;2024-05-01;RH;;behind;DD;;M2;spray\n"
                  "412;2023-11-02;;;;HHE;;;\n",
                  ListTaken::wish_with("icar")) ==
        "0 entered, 1 told more, 0 unchanged, 0 events, 3 findings");
  CHECK(herd.past() ==
        std::vector<std::string>{"2023-11-02 HHE", "2024-05-01 SU LH", "2024-05-01 DD RH"});
  const CowShown cow = herd.shown("412");
  REQUIRE(cow.past.size() == 3);
  CHECK(cow.past[0].found == "left hind, outside claw: sole ulcer, middle of the sole, bad (SU)");
  CHECK(cow.past[0].words == "SU");
  CHECK(cow.past[0].remark == "block");
  CHECK(cow.past[1].found == "right hind, digital dermatitis, M2, behind (DD)");
  CHECK(cow.past[2].found == "claw not called: heel horn erosion (HHE)");
  CHECK(cow.turns.size() == 1);
  CHECK(cow.open_cases.size() == 1);
  CHECK(select_as<FindingRow>(herd.place.store, herd.herd()).value().size() == 1);
}

TEST_CASE("a list of findings that nobody explained is refused whole") {
  ListTaken herd;
  const std::size_t before = herd.entries();
  const auto refused = herd.take("cow;date;lesion\n412;2024-05-01;A\n413;2024-05-01;DD\n");
  REQUIRE_FALSE(refused.ok());
  CHECK(refused.faults().front().slug == "list-refused");
  CHECK(refused.faults().front().message ==
        "\"lesion\" holds lesions, and nobody said what its words mean: A (1), DD (1)");
  CHECK(herd.entries() == before + 1);  // the herd itself
}

TEST_CASE("a word for a lesion that is not known leaves its line out, and is never guessed at") {
  ListTaken herd;
  CHECK(herd.told("cow;date;lesion\n412;2024-05-01;A\n413;2024-05-01;DD\n414;2024-05-01;X\n"
                  "415;2024-05-01;\n",
                  ListTaken::wish_with("A=SU, X=ignore")) ==
        "1 entered, 0 told more, 0 unchanged, 0 events, 1 findings, 2 passed over; 3: \"DD\" under "
        "\"lesion\" is no lesion that is known");
  CHECK(herd.past() == std::vector<std::string>{"2024-05-01 SU"});
}

TEST_CASE("what was said of words is kept, and the same list again changes nothing") {
  ListTaken herd;
  constexpr std::string_view list =
      "Kuh;Datum;Bein;Befund;Grad\n412;2024-05-01;1;A;2\n413;2024-05-02;2;B;0\n";
  CHECK(herd.told(list, ListTaken::wish_with("A=SU, B=DD",
                                             "foot:1=LH outside; foot:2=RH; degree:2=plain; "
                                             "degree:0=ignore")) ==
        "1 entered, 0 told more, 0 unchanged, 0 events, 1 findings, 1 passed over");
  const std::size_t before = herd.entries();
  CHECK(herd.told(list) ==
        "0 entered, 0 told more, 1 unchanged, 0 events, 0 findings, 1 passed over");
  CHECK(herd.entries() == before);
  CHECK(herd.told("cow;date;leg;lesion\n412;2024-06-01;1;B\n") ==
        "0 entered, 1 told more, 0 unchanged, 0 events, 1 findings");
  CHECK(herd.past() == std::vector<std::string>{"2024-05-01 SU LH", "2024-06-01 DD LH"});
}

TEST_CASE("the same list read with other words mends what it told before") {
  ListTaken herd;
  constexpr std::string_view list = "cow;date;lesion\n412;2024-05-01;A\n412;2024-06-01;B\n";
  (void)herd.told(list, ListTaken::wish_with("A=SU, B=DD"));
  CHECK(herd.told(list, ListTaken::wish_with("A=TU")) ==
        "0 entered, 1 told more, 0 unchanged, 0 events, 1 findings, 1 taken back");
  CHECK(herd.past() == std::vector<std::string>{"2024-05-01 TU", "2024-06-01 DD"});
  CHECK(herd.told(list, ListTaken::wish_with("B=ignore")) ==
        "0 entered, 1 told more, 0 unchanged, 0 events, 0 findings, 1 taken back, 1 passed over");
  CHECK(herd.past() == std::vector<std::string>{"2024-05-01 TU"});
}

TEST_CASE("what another list tells of the same finding adds its words and no finding") {
  ListTaken herd;
  (void)herd.told("cow;date;leg;lesion\n412;2024-05-01;LH;A\n", ListTaken::wish_with("A=SU"));
  CHECK(herd.told("cow;date;leg;lesion;note\n412;01.05.2024;HL;SU;block\n",
                  ListTaken::wish_with("icar")) ==
        "0 entered, 1 told more, 0 unchanged, 0 events, 0 findings");
  const CowShown cow = herd.shown("412");
  REQUIRE(cow.past.size() == 1);
  CHECK(cow.past[0].words == "A / SU");
  CHECK(cow.past[0].remark == "block");
}

TEST_CASE("a German list of a spreadsheet is read with its commas and letters") {
  ListTaken herd;
  CHECK(herd.told("Stallnr.;Schnittdatum;Bein;Klaue;Klauenzone;Befund;Grad;Stadium;Gewicht\n"
                  "412;01.05.2024;hinten links;au\xdf"
                  "en;4,0;Sohlengeschw\xfcr;mittel;;612,5\n"
                  "413;02.05.2024;HR;;10,0;Mortellaro;;M4,1;598,0\n",
                  ListTaken::wish_with("Sohlengeschwür=SU, Mortellaro=DD")) ==
        "2 entered, 0 told more, 0 unchanged, 0 events, 2 findings");
  CHECK(herd.past().size() == 2);
  CHECK(herd.shown("412").past.at(0).found ==
        "left hind, outside claw: sole ulcer, middle of the sole, plain (SU)");
  CHECK(herd.shown("413").past.at(0).words == "Mortellaro");
}

TEST_CASE("findings of days to come, before her birth or after she left are left out") {
  ListTaken herd;
  (void)herd.told("number;tag;born;left\n412;UK 123450 600001;2020-03-01;2025-06-01\n");
  CHECK(herd.told("tag;date;lesion\nUK 123450 600001;2020-02-01;SU\n"
                  "UK 123450 600001;2025-06-02;SU\nUK 123450 600001;2027-01-01;SU\n"
                  "UK 123450 600001;2025-06-01;SU\n",
                  ListTaken::wish_with("icar")) ==
        "0 entered, 1 told more, 0 unchanged, 0 events, 1 findings; "
        "2: 412 is told to have had a lesion on 2020-02-01, before she was born on 2020-03-01; "
        "3: 412 is told to have had a lesion on 2025-06-02, after she left on 2025-06-01; "
        "4: 2027-01-01 is after the day from which the list holds, 2026-10-27, and it is told that "
        "she was found to have a lesion");
}

TEST_CASE("a number given on never brings findings to the cow who got it later") {
  ListTaken herd;
  (void)herd.told("number;calved;left\n412;2023-09-01;2025-03-01\n412;2025-11-01;\n");
  REQUIRE(herd.carriers_of("412").size() == 2);
  constexpr std::string_view list = "cow;date;lesion\n412;2024-05-01;SU\n412;2025-12-01;DD\n";
  CHECK(herd.told(list, ListTaken::wish_with("icar")) ==
        "0 entered, 2 told more, 0 unchanged, 0 events, 2 findings");
  const CowShown now = herd.shown("412");
  REQUIRE(now.past.size() == 1);
  CHECK(now.past[0].day == day("2025-12-01"));
}

TEST_CASE("words are explained of a list that holds lesions, and of no other") {
  ListTaken herd;
  CHECK(herd.told(two_cows, ListTaken::wish_with("icar")) ==
        "nothing in the file is read as a lesion, so its words need no meaning");
  CHECK(herd.told("{}", ListTaken::wish_with("icar")) ==
        "nothing in the file is read as a lesion, so its words need no meaning");
}

TEST_CASE("columns that are known wrongly are said, with lesions under a head nobody knows") {
  ListTaken herd;
  ImportWish said = ListTaken::wish_with("icar");
  said.columns = {{"B", HerdColumn::number},
                  {"X", HerdColumn::lesion},
                  {"A", HerdColumn::day},
                  {"left", HerdColumn::foot}};
  CHECK(herd.told("X;left;B;A\nDD;LH;412;2024-05-01\n", said) ==
        "1 entered, 0 told more, 0 unchanged, 0 events, 1 findings");
  CHECK(herd.past() == std::vector<std::string>{"2024-05-01 DD LH"});
}

}  // namespace evenclaw::test
