#include "core/api/recording/reader.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "core/api/cow_register.hpp"
#include "core/api/identities.hpp"
#include "core/api/journal.hpp"
#include "core/api/show.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

const char* const number_of_412 = "826000000600001";
const char* const number_of_nobody = "276000312312345";

/// 412 with an electronic number, and a reader beside the crush.
struct AtTheCrush {
  Workplace place;

  AtTheCrush() {
    CowDetails details;
    details.electronic = number_of_412;
    REQUIRE(register_cow(place.ports(), herd(), {"412", day("2026-01-01"), {}}, details, false));
  }

  [[nodiscard]] HerdId herd() { return place.herd().herd; }

  std::vector<std::string> said(const std::vector<std::string>& lines) {
    Recording recording = place.record(place.start("2026-10-27", hind_feet));
    std::vector<std::string> answers;
    for (const std::string& line : lines) {
      const Reply reply = recording.say(line).value();
      for (const std::string& answer : lines_of(reply.items)) {
        answers.push_back(answer);
      }
    }
    return answers;
  }

  [[nodiscard]] CowShown shown(std::string_view cow) {
    return show_cow(place.store, herd(), cow, day("2026-10-27")).value();
  }

  void left(std::string_view words) {
    const CowId cow = find_cow(place.store, herd(), "412", day("2026-10-06")).value();
    REQUIRE(cow_left(place.ports(), herd(), cow, day("2026-10-06"), words));
  }

  const FootSet hind_feet = FootSet{Foot::lh, Foot::rh};
};

using Lines = std::vector<std::string>;

const std::string line_412 = std::string(number_of_412) + " nothing found";
const std::string line_nobody = std::string(number_of_nobody) + " nothing found";

const std::string known_412 = "mark 412: known by her electronic number 826000000600001";

}  // namespace

TEST_CASE("a reader's number at the start of a line names the cow that carries it") {
  AtTheCrush crush;
  CHECK(crush.said({line_412, "done"}) == Lines{known_412, "saved 412"});
  CHECK(crush.shown("412").turns.size() == 1);
  CHECK(crush.shown("412").turns.at(0).words == line_412);
}

TEST_CASE("a blank behind the country is part of the number") {
  AtTheCrush crush;
  CHECK(crush.said({"826 000000600001 nothing found", "done"}) == Lines{known_412, "saved 412"});
}

TEST_CASE("her number said by hand and read by the reader are one turn") {
  AtTheCrush crush;
  CHECK(crush.said({"412 LH bruise", std::string(number_of_412) + " RH nothing found", "done"})
            .back() == "saved 412");
  CHECK(crush.shown("412").turns.size() == 1);
}

TEST_CASE("a number nobody carries is recorded without a herd number and asked about") {
  AtTheCrush crush;
  CHECK(crush.said({line_nobody, "done"}) ==
        Lines{"question 276000312312345: Nobody here carries that electronic number. Which number "
              "has she?",
              "saved 276000312312345"});
  const CowShown shown = crush.shown(number_of_nobody);
  CHECK(shown.cow.known == CowKnown::unnumbered);
  REQUIRE(shown.tags.size() == 1);
  CHECK(shown.tags[0].electronic == number_of_nobody);
}

TEST_CASE("the next time she is read she is the same cow, and has the number she got since") {
  AtTheCrush crush;
  (void)crush.place.visited("2026-10-06", {line_nobody, "done"});
  const CowId cow =
      find_cow(crush.place.store, crush.herd(), number_of_nobody, day("2026-10-06")).value();
  REQUIRE(give_number(crush.place.ports(), crush.herd(), {cow, "418", day("2026-10-07")}, false));
  CHECK(crush.said({line_nobody, "done"}) ==
        Lines{"mark 418: known by her electronic number 276000312312345", "saved 418"});
  CHECK(crush.shown("418").turns.size() == 2);
}

TEST_CASE("two tablets that read the same new number on one day mean the same cow") {
  AtTheCrush crush;
  const auto where = LookingAt{crush.herd(), crush.place.start("2026-10-27").visit,
                               day("2026-10-27"), DeviceId{uuid_derived("a")}};
  auto other = where;
  other.device = DeviceId{uuid_derived("b")};
  const CowSaid said{CowKnown::unnumbered, {}, {}, number_of_nobody};
  CHECK(CowFinder::open(crush.place.store, where)->find(said).cow ==
        CowFinder::open(crush.place.store, other)->find(said).cow);
}

TEST_CASE("what no ear tag can hold is kept as it was read and asked about") {
  AtTheCrush crush;
  const Lines answers = crush.said({"826284205700016 nothing found", "done"});
  REQUIRE(answers.size() == 2);
  CHECK(answers[0].find("question 826284205700016: That is no electronic number.") == 0);
  CHECK(answers[1] == "saved 826284205700016");
  CHECK(crush.shown("826284205700016").tags.empty());
}

TEST_CASE("the number of a cow that was sold is asked about, and she is the one recorded") {
  AtTheCrush crush;
  crush.left("sold");
  const Lines answers = crush.said({line_412, "go ahead", "done"});
  REQUIRE(answers.size() == 2);
  CHECK(answers[0] ==
        "ask 826000000600001: The reader gave 826000000600001, who was said to be gone on 6 Oct. "
        "Is it her? (answer: go ahead)");
  CHECK(crush.shown("412").turns.size() == 1);
}

TEST_CASE(
    "a cow that was in the crush today already is asked about, and not while she stands there") {
  AtTheCrush crush;
  const Lines answers =
      crush.said({line_412, std::string(number_of_412) + " LH nothing found", "done",
                  "413 nothing found", "done", line_412, "no, 414", "done"});
  const std::string twice =
      "ask 412: The reader gave 412, who was in the crush today already. Is it her? "
      "(answer: go ahead)";
  const std::string right = "mark 414: put right: all that was called of 412 is hers";
  CHECK(answers ==
        Lines{known_412, "saved 412", "saved 413", known_412, twice, right, "saved 414"});
  CHECK(crush.shown("412").turns.size() == 1);
}

TEST_CASE("a cow that was in the crush today and is called by her number is not asked about") {
  AtTheCrush crush;
  CHECK(crush.said({"412 nothing found", "done", "413 nothing found", "done",
                    "412 LH DD raw behind", "done"}) ==
        Lines{"saved 412", "saved 413", "saved 412"});
}

TEST_CASE("a cow that came to be dried off is asked about while nobody says why she came") {
  AtTheCrush crush;
  (void)crush.place.visited("2026-10-06", {"412 dry off, nothing found", "done"});
  CHECK(crush.said({line_412, "done", "done"}).at(1) ==
        "ask 412: The reader gave 412, who came to be dried off on 6 Oct. Is it her? (answer: go "
        "ahead)");
}

TEST_CASE("a cow that was dried off and comes fresh is not asked about") {
  AtTheCrush crush;
  (void)crush.place.visited("2026-10-06", {"412 dry off, nothing found", "done"});
  CHECK(crush.said({std::string(number_of_412) + " fresh, nothing found", "done"}) ==
        Lines{known_412, "saved 412"});
}

TEST_CASE("a cow that was dried off longer ago than cows are dry is not asked about") {
  AtTheCrush crush;
  (void)crush.place.visited("2026-08-27", {"412 dry off, nothing found", "done"});
  CHECK(crush.said({line_412, "done"}) == Lines{known_412, "saved 412"});
}

TEST_CASE("a cow that was recorded under fifteen digits as her herd number stays that cow") {
  AtTheCrush crush;
  const CowId cow{uuid_derived("of before")};
  REQUIRE(write_one(crush.place.ports(), crush.herd().value,
                    CowRegistered{cow, number_of_nobody, day("2026-01-01")}, {}));
  CHECK(crush.said({line_nobody, "done"}).back() == "saved 276000312312345");
  CHECK(crush.shown(number_of_nobody).cow.cow == cow);
  CHECK(crush.shown(number_of_nobody).turns.size() == 1);
}

TEST_CASE("no, with a reader's number puts her right to the cow that carries it") {
  AtTheCrush crush;
  CHECK(crush.said({"413 nothing found", std::string("no, ") + number_of_412, "done"}).back() ==
        "saved 412");
}

TEST_CASE("news may be told of a reader's number") {
  AtTheCrush crush;
  (void)crush.place.visited("2026-10-06", {"412 LH DD raw; wrap on", "done"});
  CHECK(crush.said({std::string(number_of_412) + " wrap off"}).at(0).find("told 412: closed") == 0);
}

TEST_CASE("news may be told of a cow that is known by her electronic number only") {
  AtTheCrush crush;
  (void)crush.place.visited("2026-10-06",
                            {std::string(number_of_nobody) + " LH DD raw; wrap on", "done"});
  CHECK(crush.said({std::string(number_of_nobody) + " wrap off"})
            .at(0)
            .find("told 276000312312345: closed") == 0);
}

TEST_CASE("a file given twice is recorded once, also when she has got a number since") {
  AtTheCrush crush;
  const Lines lines = {line_nobody, "done"};
  const Visit visit = crush.place.start("2026-10-27", crush.hind_feet);
  {
    Recording recording = crush.place.record(visit);
    (void)recording.say_all(lines).value();
  }
  const CowId cow =
      find_cow(crush.place.store, crush.herd(), number_of_nobody, day("2026-10-27")).value();
  REQUIRE(give_number(crush.place.ports(), crush.herd(), {cow, "418", day("2026-10-27")}, false));
  Recording again = crush.place.record(visit);
  CHECK(lines_of(again.say_all(lines).value().items) == Lines{"there already 276000312312345"});
}

TEST_CASE("a cow read twice in one file is asked about, also when she is called alike") {
  AtTheCrush crush;
  Recording recording = crush.place.record(crush.place.start("2026-10-27", crush.hind_feet));
  const Lines lines = {line_412, "413 nothing found", line_412, "414 nothing found"};
  const Lines answers = lines_of(recording.say_all(lines).value().items);
  CHECK(std::count_if(answers.begin(), answers.end(), [](const std::string& answer) {
          return answer.find("ask 412: The reader gave 412") == 0;
        }) == 1);
}

TEST_CASE("a reader's number in a line nobody could read names the same cow") {
  AtTheCrush crush;
  const Lines answers = crush.said({std::string(number_of_412) + " LH sole ulcre",
                                    std::string("LH sole ulcer"), "rest fine", "done"});
  CHECK(answers.back() == "saved 412");
  CHECK(crush.shown("412").turns.size() == 1);
}

TEST_CASE("only fifteen digits are what a reader gives") {
  CHECK(is_read_off("826000000600001"));
  CHECK_FALSE(is_read_off("412"));
  CHECK_FALSE(is_read_off("82600000060000a"));
  CHECK(read_at_start(" 826000000600001 lame LH") == "826000000600001");
  CHECK(read_at_start("826 000000600001 lame LH") == "826000000600001");
  CHECK_FALSE(read_at_start("8260000006000012 lame LH"));
  CHECK_FALSE(read_at_start("826 lame LH"));
}

}  // namespace evenclaw::test
