#include "core/trade/call_line/trap.hpp"

#include <doctest/doctest.h>

#include <string>

#include "core/trade/call_line/parser.hpp"
#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

struct Row {
  const char* line;
  const char* token;
  const char* remedy;
};

template <std::size_t count>
void check_refused(const Row (&rows)[count], bool cow_open = true) {
  for (const Row& row : rows) {
    CAPTURE(row.line);
    const Faults faults = saying::faults_of(row.line, cow_open);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().slug == "call-not-understood");
    CHECK(faults.front().token == row.token);
    CHECK(faults.front().remedy == row.remedy);
  }
}

}  // namespace

TEST_CASE("the leg she is lame on is asked for when it is said before lame") {
  constexpr Row rows[] = {{"207 RF lame, nothing found", "lame", "say: lame RF"},
                          {"right hind lame", "lame", "say: lame RH"},
                          {"207 hinds lame", "lame", "say: lame LH and RH"},
                          {"LH SU, RH lame", "lame", "say: lame RH"}};
  check_refused(rows);
}

TEST_CASE("words of the language and adverbs are no names of products") {
  for (const std::string word :
       {"both", "again", "twice", "well", "all", "Lightly", "claw", "the"}) {
    CAPTURE(word);
    for (const std::string act : {"spray ", "paste "}) {
      const Faults faults = saying::faults_of("LH DD; " + act + word);
      REQUIRE(faults.size() == 1);
      CHECK(faults.front().token == word);
      CHECK(faults.front().remedy ==
            "leave it out; if it is the name, put it in quotes or say: " + act + "with " + word);
    }
  }
}

TEST_CASE("a product may have any name in quotes or behind with") {
  CHECK(saying::printed({"412 LH DD; spray bluemix"}) == "412 // LH DD; spray with bluemix");
  CHECK(saying::printed({"412 LH DD; spray with twice"}) == "412 // LH DD; spray with twice");
  CHECK(saying::printed({"412 LH DD; spray \"twice\""}) == "412 // LH DD; spray with twice");
}

TEST_CASE("two lesions that share a word are unclear") {
  constexpr Row rows[] = {
      {"LH thin sole ulcer outside", "thin sole ulcer", "say: thin sole, sole ulcer"},
      {"LH double sole ulcer", "double sole ulcer", "say: double sole, sole ulcer"},
      {"LH outside middle sole ulcer", "middle sole ulcer", "say: sole ulcer, middle sole"}};
  check_refused(rows);
}

TEST_CASE("a shared word that changes no lesion is taken") {
  CHECK(saying::printed({"412 LH thin sole, sole ulcer"}) == "412 // LH thin sole; sole ulcer");
  CHECK(saying::printed({"412 LH thin sole bruise"}) == "412 // LH thin sole; bruise");
  CHECK(saying::printed({"412 LH sole ulcer, middle sole"}) ==
        "412 // LH sole ulcer middle of the sole");
}

TEST_CASE("a number with letters in it is no cow, and no part of it is one") {
  constexpr Row rows[] = {{"4l3 lame LH", "4l3", "a cow is digits only: say the number again"},
                          {"41O lame RH", "41O", "a cow is digits only: say the number again"},
                          {"413A lame", "413A", "a cow is digits only: say the number again"},
                          {"413x", "413x", "a cow is digits only: say the number again"},
                          {"413d", "413d", "a cow is digits only: say the number again"},
                          {"4l3 gone", "4l3", "a cow is digits only: say the number again"},
                          {"412 or 4l3", "4l3", "a cow is digits only: say the number again"},
                          {"no, 4l3", "4l3", "a cow is digits only: say the number again"}};
  check_refused(rows);
  for (const Row& row : rows) {
    CAPTURE(row.line);
    const Reading reading =
        read_as(LineSort::turn_or_visit, row.line, saying::in_crush(), english());
    for (const Clause& clause : reading.line.clauses) {
      const auto* named = std::get_if<CowNamed>(&clause);
      CHECK((named == nullptr || named->cow.number == "412"));
    }
  }
}

TEST_CASE("a foot written onto the number is taken") {
  CHECK(saying::printed({"412LH SU"}) == "412 // LH sole ulcer");
}

TEST_CASE("no and a number without a comma may be the next cow or a mended number") {
  constexpr Row rows[] = {
      {"No 413", "No 413", "say 413 for the next cow; or \"no, 413\" to mend her number"},
      {"no. 413", "no. 413", "say 413 for the next cow; or \"no, 413\" to mend her number"},
      {"nr 413", "nr 413", "say 413 for the next cow; or \"no, 413\" to mend her number"},
      {"Number 413 lame", "Number 413",
       "say 413 for the next cow; or \"no, 413\" to mend her number"}};
  check_refused(rows);
  check_refused(rows, false);
  CHECK(saying::printed({"412 lame", "No, 413"}) == "413 lame");
}
