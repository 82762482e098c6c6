// Taking over a list on the command line.
#include <doctest/doctest.h>

#include "tests/cli/one_cow.hpp"

namespace evenclaw::test {

namespace {

constexpr const char* list_of_two =
    "\xef\xbb\xbfnumber;ear tag;eid;breed;milk\r\n"
    "0413;UK 123450 600001;826000000600001;\"Jersey; small\";9000\r\n"
    "412;;;Holstein;8000\r\n";

}  // namespace

TEST_CASE("The list of a spreadsheet is taken over, and the same file again changes nothing") {
  const OneCowRecorded home;
  const std::string list = home.workshop.file("herd.csv");
  write_bytes(list, list_of_two);
  const Ran taken = home.workshop.run({"import", list});
  CHECK(taken.exit == 0);
  CHECK(has(taken.out, ": table, UTF-8, parted by ;, 2 lines\n"));
  CHECK(has(taken.out, "  ear tag  tag         by its head  UK 123450 600001\n"));
  CHECK(has(taken.out, "  milk     (not read)"));
  CHECK(has(taken.out, "1 new cow, 1 known with something new, 0 known as listed; 0 new events\n"));
  CHECK(has(home.workshop.run({"show", "cow", "413"}).out, "  Jersey; small\n"));
  const std::string log = home.workshop.run({"log"}).out;
  CHECK(has(home.workshop.run({"import", list}).out, "0 new cows, 0 known with something new, 2"));
  CHECK(home.workshop.run({"log"}).out == log);
}

TEST_CASE("A bad line is told with its place and remedy, and the rest goes in, or nothing") {
  const OneCowRecorded home;
  const std::string list = home.workshop.file("herd.csv");
  write_bytes(list, "number,calved\n413,2024-01-05\n414,yesterday\n");
  CHECK(home.workshop.run({"import", list, "--all-or-nothing"}).exit == 1);
  CHECK(home.workshop.run({"show", "cow", "413"}).exit != 0);
  const Ran taken = home.workshop.run({"import", list});
  CHECK(taken.exit == 1);
  CHECK(has(taken.out, "Left out: 1 line\n"));
  CHECK(
      has(taken.out, "  line 3, column 2: \"yesterday\" under \"calved\" is no day. Write it as"));
  CHECK(home.workshop.run({"show", "cow", "413"}).exit == 0);
}

TEST_CASE("A try says what would come of it and writes nothing") {
  const OneCowRecorded home;
  const std::string list = home.workshop.file("herd.csv");
  write_bytes(list, list_of_two);
  const std::string log = home.workshop.run({"log"}).out;
  CHECK(has(home.workshop.run({"import", list, "--try"}).out,
            "Nothing is written: this was a try.\n"));
  CHECK(home.workshop.run({"log"}).out == log);
}

TEST_CASE("A herd begins with its list, its columns named by whoever knows them") {
  const Workshop workshop;
  const std::string list = workshop.file("herd.csv");
  write_bytes(list, "A|B\n412|01/09/2024\n413|02/09/2024\n");
  const Ran taken = workshop.run({"import", list, "--herd", "Home Farm", "--new-herd", "--columns",
                                  "number=A, calved=B", "--dates", "dmy"});
  CHECK(taken.exit == 0);
  CHECK(has(taken.out, "2 new cows"));
  CHECK(has(workshop.run({"show", "cow", "412"}).out, "calved 2024-09-01"));
  CHECK(has(workshop.run({"import", list}).out, "as said before"));
}

TEST_CASE("A new herd is not entered when its list is refused") {
  const Workshop workshop;
  const std::string list = workshop.file("herd.csv");
  write_bytes(list, "cow;calved\n412;01/09/2026\n");
  const Ran refused =
      workshop.run({"import", list, "--herd", "Hill Farm", "--new-herd", "--today", "2026-11-01"});
  CHECK(has(refused.err, "(date-unreadable)"));
  CHECK_FALSE(has(workshop.run({"herds"}).out, "Hill Farm"));
  write_bytes(list, "");
  CHECK(has(workshop.run({"import", list, "--herd", "Hill Farm", "--new-herd"}).err,
            "(list-refused)"));
  CHECK_FALSE(has(workshop.run({"herds"}).out, "Hill Farm"));
}

TEST_CASE("What is wrongly asked for is told before anything is read") {
  const OneCowRecorded home;
  const std::string list = home.workshop.file("herd.csv");
  write_bytes(list, list_of_two);
  CHECK(home.workshop.run({"import", list, "--new-herd"}).exit == 2);
  CHECK(home.workshop.run({"import", list, "--new-herd", "--herd", "x", "--try"}).exit == 2);
  CHECK(home.workshop.run({"import", list, "--dates", "german"}).exit == 2);
  CHECK(home.workshop.run({"import", list, "--columns", "number"}).exit == 2);
  CHECK(has(home.workshop.run({"import", home.workshop.file("no.csv")}).err, "(file-not-found)"));
}

TEST_CASE("With --json an import tells columns, counts and every line that was left out") {
  const OneCowRecorded home;
  const std::string list = home.workshop.file("herd.csv");
  write_bytes(list, "number,calved\n413,2024-01-05\n414,yesterday\n");
  const Ran ran = home.workshop.run({"import", list, "--json"});
  CHECK(ran.exit == 1);
  CHECK(has(ran.out, "\"entered\": 1"));
  CHECK(has(ran.out, "\"slug\": \"list-unreadable\""));
}

TEST_CASE("A list of findings is refused until its words are explained, and shown in her story") {
  const OneCowRecorded home;
  const std::string list = home.workshop.file("past.csv");
  write_bytes(list,
              "cow;date;leg;claw;lesion;degree;note\n412;2024-05-01;LH;outside;A;bad;block\n"
              "412;2024-05-01;RH;;M;;\n412;2024-05-02;RH;;X;;\n412;2024-05-03;RH;;;;\n");
  const Ran refused = home.workshop.run({"import", list});
  CHECK(refused.exit == 1);
  CHECK(has(refused.err, "nobody said what its words mean: A (1), M (1), X (1)"));
  CHECK(has(refused.err, "--lesions icar"));
  const Ran taken = home.workshop.run({"import", list, "--lesions", "A=SU, X=ignore"});
  CHECK(taken.exit == 1);
  CHECK(has(taken.out, "Lesions are read as\n  A  SU             1 line\n"));
  CHECK(has(taken.out, "  M  (nobody said)  1 line\n"));
  CHECK(has(taken.out, "1 new finding told by this list"));
  CHECK(has(taken.out, "2 lines tell of no finding\n"));
  CHECK(has(taken.out, "line 3, column 5: \"M\" under \"lesion\" is no lesion that is known"));
  const std::string her = home.workshop.run({"show", "cow", "412"}).out;
  CHECK(has(her, "told by a list: left hind, outside claw: sole ulcer, bad (SU); there \"A\";"));
  const Ran mended = home.workshop.run({"import", list, "--lesions", "M=DD"});
  CHECK(mended.exit == 0);
  const std::string log = home.workshop.run({"log"}).out;
  CHECK(home.workshop.run({"import", list}).exit == 0);
  CHECK(home.workshop.run({"log"}).out == log);
}

TEST_CASE("What lists told is a table of its own when everything is taken out, and comes back") {
  const OneCowRecorded home;
  const std::string list = home.workshop.file("past.csv");
  write_bytes(list, "cow;date;leg;lesion\n412;2024-05-01;1;DD\n");
  CHECK(home.workshop.run({"import", list, "--lesions", "icar", "--words", "foot:1=LH"}).exit == 0);
  const std::string all = home.workshop.file("all");
  REQUIRE(home.workshop.run({"export", "--to", all}).exit == 0);
  const std::string table = bytes_of(all + "/tables/past_finding.csv");
  CHECK(has(table, ",2024-05-01,1,LH,none,DD,not_called,,not_called,not_called,DD,,icar,"));
  const std::string there = home.workshop.file("there.db");
  REQUIRE(home.workshop.run({"take-in", all + "/log.jsonl", "--file", there}).exit == 0);
  CHECK(has(home.workshop.run({"show", "cow", "412", "--file", there}).out,
            "told by a list: left hind, digital dermatitis (DD); there \"DD\""));
}

TEST_CASE("What is wrongly said of words is told before anything is read") {
  const OneCowRecorded home;
  const std::string list = home.workshop.file("past.csv");
  write_bytes(list, "cow;date;lesion\n412;2024-05-01;DD\n");
  CHECK(home.workshop.run({"import", list, "--lesions", "A"}).exit == 2);
  CHECK(home.workshop.run({"import", list, "--lesions", "A=abscess"}).exit == 2);
  CHECK(home.workshop.run({"import", list, "--words", "1=LH"}).exit == 2);
  write_bytes(list, list_of_two);
  CHECK(home.workshop.run({"import", list, "--lesions", "icar"}).exit == 2);
}

}  // namespace evenclaw::test
