#include "cli/open_points.hpp"

#include <doctest/doctest.h>

#include "core/base/date.hpp"

using namespace evenclaw;
using namespace evenclaw::cli;

namespace {

OpenPoint point(OpenPointKind kind, const char* cow) {
  OpenPoint open;
  open.kind = kind;
  open.cow_said = cow;
  return open;
}

const Day visit_day = day_from_text("2026-10-27").value();

}  // namespace

TEST_CASE("what was not called is answered by calling her again") {
  const std::string told =
      how_to_answer({point(OpenPointKind::place_not_called, "299")}, visit_day);
  CHECK(told.find("evenclaw record --day 2026-10-27, then say 299") != std::string::npos);
}

TEST_CASE("a warning nobody answered is answered by calling her, and its words are said") {
  const std::string told = how_to_answer({point(OpenPointKind::unanswered, "301")}, visit_day);
  CHECK(told ==
        "To answer, for example\n"
        "  a warning: evenclaw record --day 2026-10-27, then say 301 go ahead,\n"
        "    or 301 and what was done\n");
}

TEST_CASE("a cow told gone that was in the crush is gone or here, in words to type") {
  const std::string told = how_to_answer({point(OpenPointKind::told_gone, "77")}, visit_day);
  CHECK(told ==
        "To answer, for example\n"
        "  she left: evenclaw told \"77 gone\"\n"
        "  she is here: evenclaw told \"still here\" --answers 77\n");
}

TEST_CASE("a block told off and still on is answered by plain news of either") {
  OpenPoint block = point(OpenPointKind::told_two_ways, "412");
  block.words = "Block on left hind: said to be off, and to be still on. Which is right?";
  CHECK(how_to_answer({block}, visit_day) ==
        "To answer, for example\n"
        "  off or still on: evenclaw told \"412 block off\", or with \"still on\"\n");
}

TEST_CASE("that the vet came is told plainly") {
  OpenPoint vet = point(OpenPointKind::due_not_seen, "828");
  vet.words = "vet to see right hind, farmer rings, since 29 Sep: did the vet come?";
  CHECK(how_to_answer({vet}, visit_day).find("evenclaw told \"828 vet came\"") !=
        std::string::npos);
}

TEST_CASE("a line nobody could read is dropped by her number") {
  OpenPoint unread = point(OpenPointKind::unfinished, "421");
  unread.words = "Her turn was not finished: \"no block\" was not understood";
  CHECK(how_to_answer({unread}, visit_day).find("then say 421 never mind") != std::string::npos);
  CHECK(how_to_answer({point(OpenPointKind::unfinished, "421")}, visit_day).find("never mind") ==
        std::string::npos);
}

TEST_CASE("a cow without a number gets her number first") {
  const std::string told = how_to_answer({point(OpenPointKind::unnumbered, "red heifer"),
                                          point(OpenPointKind::place_not_called, "red heifer")},
                                         visit_day);
  CHECK(told.find("evenclaw cow number") != std::string::npos);
  CHECK(told.find("evenclaw record") == std::string::npos);
}

TEST_CASE("what no command answers has no hint") {
  CHECK(how_to_answer({point(OpenPointKind::two_versions, "299")}, visit_day).empty());
}

TEST_CASE("a foot called twice is answered in words") {
  const std::string told = how_to_answer({point(OpenPointKind::called_twice, "299")}, visit_day);
  CHECK(told.find("evenclaw told \"both hold\" --answers 299") != std::string::npos);
}

TEST_CASE("unclear news is answered by plain news or in words") {
  const std::string told = how_to_answer({point(OpenPointKind::news_unclear, "66")}, visit_day);
  CHECK(told.find("evenclaw told \"412 wrap off LH\"") != std::string::npos);
  CHECK(told.find("evenclaw told \"it was 413\" --answers 66") != std::string::npos);
}

TEST_CASE("a name that may be misspelt is answered in words, not by news of a cow") {
  const std::string told = how_to_answer({point(OpenPointKind::news_unclear, "caller")}, visit_day);
  CHECK(told.find("evenclaw told \"it was the known one\" --answers caller") != std::string::npos);
  CHECK(told.find("wrap off") == std::string::npos);
  OpenPoint named = point(OpenPointKind::news_unclear, "caller");
  named.person = PersonId{};
  CHECK(how_to_answer({named}, visit_day).find("evenclaw told \"NAME\" --answers caller") !=
        std::string::npos);
}

TEST_CASE("what hurts comes first, and what was not called is one line at the end") {
  OpenPoint where = point(OpenPointKind::place_not_called, "206");
  where.words = "Left hind, sole ulcer: where?";
  OpenPoint degree = point(OpenPointKind::degree_not_called, "206");
  degree.words = "Left hind, sole ulcer: how bad?";
  OpenPoint other = point(OpenPointKind::place_not_called, "210");
  other.words = "Right hind, bruise: where?";
  OpenPoint wrap = point(OpenPointKind::still_on, "201");
  wrap.words = "wrap on left hind since 27 Oct: still on?";
  OpenPoint ask = point(OpenPointKind::unanswered, "77");
  ask.words = "Came lame left hind, and that foot was not lifted.";
  OpenPoint stop = point(OpenPointKind::unanswered, "413");
  stop.words = "Block on the bad claw.";
  stop.rank = Rank::stop;
  CHECK(open_points_text({ask, where, other, degree, wrap, stop}) ==
        "  413  Block on the bad claw.\n"
        "  77   Came lame left hind, and that foot was not lifted.\n"
        "  201  wrap on left hind since 27 Oct: still on?\n"
        "  not called where, how bad: 206 left hind, sole ulcer\n"
        "  not called where: 210 right hind, bruise\n");
}

TEST_CASE("a count nobody could read is answered by how many they were") {
  const std::string told =
      how_to_answer({point(OpenPointKind::news_unclear, "12 heifers")}, visit_day);
  CHECK(told.find("evenclaw told \"they were 11, nothing found\" --answers \"12 heifers\"") !=
        std::string::npos);
}

TEST_CASE("two bruises of one foot are asked about as two, and no question stands twice") {
  std::vector<OpenPoint> points;
  for (const OpenPointKind kind :
       {OpenPointKind::place_not_called, OpenPointKind::place_not_called,
        OpenPointKind::degree_not_called, OpenPointKind::degree_not_called}) {
    points.push_back(point(kind, "412"));
    points.back().words = kind == OpenPointKind::place_not_called ? "Left hind, bruise: where?"
                                                                  : "Left hind, bruise: how bad?";
  }
  CHECK(open_points_text(points) ==
        "  not called where, how bad: 412 left hind, bruise (2 of them)\n");
}
