#include "core/trade/call_line/line.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;
using saying::faults_of;

namespace {

Line line_of(std::string_view text, bool cow_open = false) {
  const Result<Line> line = read_line(text, saying::in_crush(cow_open), english());
  REQUIRE(line.ok());
  return line.value();
}

std::string news_in(std::string_view text) {
  std::string told;
  for (const Clause& clause : line_of(text).clauses) {
    const auto* said = std::get_if<NewsSaid>(&clause);
    if (said == nullptr) return "no news";
    told += said->number + " " + std::string(word_of(said->news)) +
            (said->feet.empty() ? "" : " " + to_text(said->feet)) + "; ";
  }
  return told;
}

}  // namespace

TEST_CASE("blank lines and comments say nothing") {
  for (const char* text : {"", "   ", "\t", "# 412 lame", "  # hello", "#", "\r\n"}) {
    CHECK(line_of(text).clauses.empty());
  }
}

TEST_CASE(
    "a number sign in front of a number is asked about, so that no cow is lost in a comment") {
  const Faults faults = faults_of("#412 lame");
  REQUIRE(faults.size() == 1);
  CHECK(faults.front().column == 1);
}

TEST_CASE("a carriage return from another system is no part of the line") {
  CHECK(line_of("412 lame\r\n").clauses.size() == 2);
}

TEST_CASE("clauses come in the order in which they were said") {
  const Line line = line_of("412 lame LH; LH SU; done");
  REQUIRE(line.clauses.size() == 5);
  CHECK(std::holds_alternative<CowNamed>(line.clauses[0]));
  CHECK(std::holds_alternative<ReasonSaid>(std::get<TurnClause>(line.clauses[1])));
  CHECK(std::holds_alternative<FeetNamed>(std::get<TurnClause>(line.clauses[2])));
  CHECK(std::holds_alternative<FindingSaid>(std::get<TurnClause>(line.clauses[3])));
  CHECK(std::holds_alternative<TurnEnded>(line.clauses[4]));
}

TEST_CASE("leading zeros of a number are kept") {
  CHECK(std::get<CowNamed>(line_of("0412").clauses.front()).cow.number == "0412");
}

TEST_CASE("news is told of one cow or of many") {
  CHECK(news_in("412, 513 wraps off; 77 gone; 620 still lame") ==
        "412 wrap_off; 513 wrap_off; 77 gone; 620 still_lame; ");
  CHECK(news_in("77 gone") == "77 gone; ");
  CHECK(news_in("412 wraps off") == "412 wrap_off; ");
  CHECK(news_in("412 and 513 LH block came off") ==
        "412 block_came_off LH; 513 block_came_off LH; ");
  CHECK(news_in("412 wrap off LH, block still on RH") ==
        "412 wrap_off LH; 412 block_still_on RH; ");
  CHECK(news_in("412 walks sound; 513 vet came, 77 looked at") ==
        "412 walks_sound; 513 vet_came; 77 looked_at; ");
  CHECK(news_in("news 412 walks sound") == "412 walks_sound; ");
}

TEST_CASE("news that names its own foot is of that foot alone, whatever was named in front of it") {
  struct Said {
    const char* line;
    const char* news;
  };

  const Said table[] = {
      {"news 203 RH wrap still on; wrap off LH", "203 wrap_still_on RH; 203 wrap_off LH; "},
      {"205 LH block still on, block off RH", "205 block_still_on LH; 205 block_off RH; "},
      {"204 RH wrap off today; block off LH", "204 wrap_off RH; 204 block_off LH; "},
      {"203 LH looked at, wrap off RH", "203 looked_at LH; 203 wrap_off RH; "},
      {"203 LH wrap off; still lame RH", "203 wrap_off LH; 203 still_lame RH; "},
      {"203, 204 LH wrap off, block off RH, LF",
       "203 wrap_off LH; 204 wrap_off LH; 203 block_off LF RH; 204 block_off LF RH; "},
      {"203 LH wrap off, RH block off, wrap still on LF",
       "203 wrap_off LH; 203 block_off RH; 203 wrap_still_on LF; "},
      {"news 203 LH wrap off, RH", "203 wrap_off LH RH; "},
      {"news 203 LH wrap off; block off", "203 wrap_off LH; 203 block_off LH; "},
  };
  for (const Said& said : table) {
    CAPTURE(said.line);
    CHECK(news_in(said.line) == said.news);
  }
}

TEST_CASE("news of one cow goes on behind a semicolon as behind a comma") {
  CHECK(news_in("301 wrap off; sold") == "301 wrap_off; 301 gone; ");
  CHECK(news_in("301 wrap off; walks sound") == "301 wrap_off; 301 walks_sound; ");
  CHECK(news_in("301 wrap off; 301 block off; sold") == "301 wrap_off; 301 block_off; 301 gone; ");
}

TEST_CASE("beside news of another cow it is asked whose a piece without a number is") {
  for (const char* text : {"301, 302 wraps off; sold", "301 wrap off; 302 gone; walks sound",
                           "301 wrap off; sold; 302 gone"}) {
    CAPTURE(text);
    const Faults faults = faults_of(text, false);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().message.find("it is unclear of which cow") == 0);
  }
}

TEST_CASE("one number with what can be said of a cow in the crush begins her turn") {
  const Line line = line_of("412 walks sound");
  CHECK(std::holds_alternative<CowNamed>(line.clauses.front()));
  CHECK(std::holds_alternative<CowNamed>(line_of("412 LH wrap came off").clauses.front()));
}

TEST_CASE("without a cow nothing is said of her") {
  for (const char* text : {"LH SU", "rest fine", "done", "go ahead", "no, 421", "vet"}) {
    CAPTURE(text);
    const Faults faults = faults_of(text, false);
    REQUIRE_FALSE(faults.empty());
    CHECK(faults.front().remedy == "start with her number");
    CHECK(faults_of(text, true).empty());
  }
}

TEST_CASE("today's feet, caller, writer and go ahead are understood") {
  CHECK(std::get<TodaysFeetSaid>(line_of("today all four").clauses.front()).feet == four_feet);
  CHECK(std::get<TodaysFeetSaid>(line_of("today fronts").clauses.front()).feet == front_feet);
  CHECK(std::get<TodaysFeetSaid>(line_of("Today: LH and RH").clauses.front()).feet == hind_feet);
  CHECK(std::get<CallerSaid>(line_of("caller Anna B").clauses.front()).name == "Anna B");
  CHECK(std::get<WriterSaid>(line_of("writer: \"Ben, jr\"").clauses.front()).name == "Ben, jr");
  CHECK(std::holds_alternative<GoAheadSaid>(line_of("go ahead anyway", true).clauses.front()));
}

TEST_CASE("every fault of a line is told, each with its place") {
  const Faults faults = faults_of("LF outsde SU; block on insde; wrap off Thu; RH SU raw");
  REQUIRE(faults.size() == 4);
  CHECK(faults[0].column == 4);
  CHECK(faults[1].column == 24);
  CHECK(faults[2].column == 40);
  CHECK(faults[3].column == 51);
  CHECK(faults[3].slug == "call-impossible");
}

TEST_CASE("a correction with nobody to correct is one slip and refused once") {
  for (const char* text : {"no, 77", "no, right hind", "no, no block; spray"}) {
    CAPTURE(text);
    CHECK(faults_of(text, false).size() == 1);
  }
}

TEST_CASE("what a hurried assistant types instead is refused with what to say") {
  struct Row {
    const char* text;
    const char* remedy;
  };

  constexpr Row rows[] = {{"LH SU; block on good claw", "say inside or outside"},
                          {"LH block on the good claw, off Thu", "say inside or outside"},
                          {"no, not that one", "no, right hind"},
                          {"not that one", "no, right hind"},
                          {"LH ditto", "say what was found"},
                          {"405 same again", "say what was found"}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    const Faults faults = faults_of(row.text);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().remedy.find(row.remedy) != std::string::npos);
  }
}

TEST_CASE("a fault carries line, token, what was expected and the nearest word") {
  LineContext context = saying::in_crush();
  context.line_number = 7;
  const Result<Line> result = read_line("LH inside sole ulsr", context, english());
  REQUIRE_FALSE(result.ok());
  const Fault& fault = result.faults().front();
  CHECK(fault.line == 7);
  CHECK(fault.column == 11);
  CHECK(fault.token == "sole ulsr");
  CHECK(fault.message.find("expected a lesion") != std::string::npos);
  CHECK(fault.remedy.find("sole ulcer") != std::string::npos);
}

TEST_CASE("columns count characters, not bytes") {
  const Faults faults = faults_of("RF other \"gr\xC3\xBCn\" xyzzy");
  REQUIRE(faults.size() == 1);
  CHECK(faults.front().column == 17);
}

TEST_CASE("a bare number is never a time, a place, a length or a second cow") {
  for (const char* text :
       {"LH SU; see again 28", "LH SU 4", "LH length 78", "LH 412", "wrap on, 3"}) {
    CAPTURE(text);
    CHECK_FALSE(faults_of(text).empty());
  }
}

TEST_CASE("what is not text is refused with the place where it stops being text") {
  CHECK(faults_of("412 \xFF").front().column == 5);
  CHECK(faults_of("gr\xC3\xBCn \xC3").front().column == 6);
  CHECK(faults_of(std::string("412\0lame", 8)).front().column == 4);
  CHECK(faults_of("412\x07").front().column == 4);
}

TEST_CASE("a line longer than any call is refused") {
  CHECK(faults_of(std::string(4097, ' ')).front().slug == "line-too-long");
  CHECK(faults_of(std::string(4096, ' ')).empty());
}

TEST_CASE("numbers too long for a cow or mixed with letters are refused whole") {
  CHECK_FALSE(faults_of("1234567890123456").empty());
  CHECK(faults_of("123456789012345").empty());
  CHECK(faults_of("4l2 lame").front().token == "4l2");
  CHECK_FALSE(faults_of("4.12 lame").empty());
}

TEST_CASE("descriptions are not mixed up with calls") {
  CHECK_FALSE(faults_of("no number, brown, lame LH", false).empty());
  CHECK_FALSE(faults_of("412 not done, see again 7d").empty());
  CHECK_FALSE(faults_of("412 not done, blisters LH").empty());
  CHECK_FALSE(faults_of("caller Anna LH").empty());
  CHECK_FALSE(faults_of("412 LH spray with blue wrap on").empty());
  CHECK(faults_of("no number, \"brown, lame LH\"", false).empty());
}

TEST_CASE("what is called of a cow may be why she was not done") {
  for (const char* text :
       {"412 not done, went down in the crush", "412 unfinished: went down in the crush",
        "412 not done, near calving", "412 not done, fever and sore mouth"}) {
    CHECK_MESSAGE(faults_of(text).empty(), text);
  }
}

TEST_CASE("a spray named by one word is taken unless the word looks like a slip") {
  CHECK(faults_of("412 LH spray bluemix; wrap on").empty());
  CHECK(faults_of("412 LH spray wrpa on").front().remedy.find("wrap on") != std::string::npos);
}

TEST_CASE("what stops too early tells what is still needed") {
  for (const char* text : {"wrap on, off", "LH see again in", "LH length", "no", "today", "note",
                           "LH other", "412 or", "LH z4", "caller"}) {
    CAPTURE(text);
    CHECK_FALSE(faults_of(text).empty());
  }
}
