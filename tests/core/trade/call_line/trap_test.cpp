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
  for (const std::string word : {"again", "twice", "well", "all", "Lightly", "claw", "the"}) {
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
  constexpr Row rows[] = {
      {"4l3 lame LH", "4l3", "a cow is digits only: say the number again, 413 if that is meant"},
      {"41O lame RH", "41O", "a cow is digits only: say the number again, 410 if that is meant"},
      {"413A lame", "413A", "a cow is digits only: say the number again"},
      {"413x", "413x", "a cow is digits only: say the number again"},
      {"413d", "413d", "a cow is digits only: say the number again"},
      {"4l3 gone", "4l3", "a cow is digits only: say the number again, 413 if that is meant"},
      {"412 or 4l3", "4l3", "a cow is digits only: say the number again, 413 if that is meant"},
      {"no, 4l3", "4l3", "a cow is digits only: say the number again, 413 if that is meant"}};
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

TEST_CASE("a number is no part of a name, it may be the next cow") {
  constexpr Row rows[] = {
      {"caller Ben 413", "413",
       "say \"caller Ben\" alone, and 413 on the next line; if it is part of the name, put the "
       "name "
       "in quotes"},
      {"writer Ben four thirteen LH", "four thirteen",
       "say \"writer Ben\" alone, and four thirteen on the next line; if it is part of the name, "
       "put "
       "the name in quotes"},
      {"caller Ben, 413 lame", "413", "each cow on a line of her own: say 413 on the next one"}};
  check_refused(rows);
  CHECK(saying::faults_of("caller \"Ben 2\"").empty());
}

TEST_CASE("a number in words is not ended by a hundred and") {
  constexpr Row rows[] = {{"two hundred and LH SU", "two hundred and",
                           "say 200 in digits, or the number in full: \"two hundred and ...\""},
                          {"two thousand and lame LH", "two thousand and",
                           "say 2000 in digits, or the number in full: \"two thousand and ...\""}};
  check_refused(rows);
  CHECK(saying::printed({"two hundred and five LH SU"}) == "205 // LH sole ulcer");
  CHECK(saying::printed({"four hundred lame LH and RH"}) == "400 lame both hinds");
  CHECK(saying::printed({"200 and LH SU"}) == "200 // LH sole ulcer");
}

TEST_CASE("a number behind no number is asked about") {
  constexpr Row rows[] = {{"no number 418", "418",
                           "say 418 for the number; without one, what she looks like: \"no number, "
                           "...\""},
                          {"no tag, 18", "18",
                           "say 18 for the number; without one, what she looks like: \"no number, "
                           "...\""}};
  check_refused(rows);
  CHECK(saying::printed({"no number? 2 white stars"}) == "no number, 2 white stars");
}

TEST_CASE("an end of her is no leg she is lame on") {
  constexpr Row rows[] = {{"412 lame behind", "behind",
                           "say the leg: \"lame LH\"; or \"lame\" alone when nobody knows which"},
                          {"412 lame in front", "in front",
                           "say the leg: \"lame LH\"; or \"lame\" alone when nobody knows which"}};
  check_refused(rows);
}

TEST_CASE("what is said of all of her does not stand right behind a foot") {
  constexpr Row rows[] = {
      {"fronts not done", "not done",
       "of those feet say \"not lifted\"; of all of her put ; before \"not done\""},
      {"LH all good", "all good",
       "of those feet say \"nothing found\"; of all of her put ; before \"all good\""}};
  check_refused(rows);
  CHECK(saying::printed({"412 LH SU; rest fine"}) == "412 rest fine // LH sole ulcer");
  CHECK(saying::printed({"412 LH SU rest fine"}) == "412 rest fine // LH sole ulcer");
}

TEST_CASE("recheck behind a finding may mean that she is to be seen again") {
  constexpr Row rows[] = {
      {"412 LH SU; recheck", "recheck",
       "to be seen again: \"see again 28d\"; why she came stands before what was "
       "found"},
      {"412 LH spray, recheck", "recheck",
       "to be seen again: \"see again 28d\"; why she came stands before what was "
       "found"}};
  check_refused(rows);
  CHECK(saying::printed({"412 recheck LH SU"}) == "412 recheck // LH sole ulcer");
}

TEST_CASE("each cow begins a line of her own") {
  constexpr Row rows[] = {
      {"101 vet; 102 wraps off", "102", "each cow on a line of her own: say 102 on the next one"},
      {"412 LH SU; 413 RH DD", "413", "each cow on a line of her own: say 413 on the next one"},
      {"412 rest fine and 413 lame", "413",
       "each cow on a line of her own: say 413 on the next one"},
      {"412 done 413 lame", "413", "each cow on a line of her own: say 413 on the next one"}};
  check_refused(rows);
}

TEST_CASE("no and a foot or claw behind a finding may mean that there was nothing") {
  constexpr Row rows[] = {
      {"LH SU, no RH SU", "no RH", "what is not so is not said; to mend what was said: \"no, RH\""},
      {"LH SU; block on inside no outside", "no outside",
       "what is not so is not said; to mend what was said: \"no, outside\""}};
  check_refused(rows);
  CHECK(saying::printed({"412 LH SU", "no right hind"}) == "412 // RH sole ulcer");
  CHECK(saying::printed({"412 LH SU; no, right hind"}) == "412 // RH sole ulcer");
}

TEST_CASE("a foot of a group named right before it is spoken of alone") {
  CHECK(saying::printed({"412 backs, RH DD raw; wrap"}) == "412 // LH // RH DD raw; wrap on");
  CHECK(saying::printed({"301 both hinds: LH SU outside; RH DD raw"}) ==
        "301 // LH outside sole ulcer // RH DD raw");
  CHECK(saying::printed({"412 fronts, LF SU; hinds, RH DD"}) ==
        "412 // LF sole ulcer // RF // LH // RH DD");
  CHECK(saying::printed({"412 all four, hinds DD, RH raw"}) ==
        "412 // LF // RF // LH DD // RH DD raw");
  CHECK(saying::printed({"412 LH, RH DD"}) == "412 // LH DD // RH DD");
  CHECK(saying::printed({"412 LH and RH, LF DD"}) == "412 // LF DD // LH DD // RH DD");
}

TEST_CASE("a foot joined to a group it belongs to is asked about") {
  constexpr Row rows[] = {
      {"backs and RH DD", "RH", "say the feet again; of that one alone put ; before RH"},
      {"all four & LH SU", "LH", "say the feet again; of that one alone put ; before LH"}};
  check_refused(rows);
}
