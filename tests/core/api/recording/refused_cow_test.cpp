#include "core/api/recording/refused_cow.hpp"

#include <doctest/doctest.h>

#include <optional>
#include <string>

#include "core/api/cow_names.hpp"
#include "core/trade/call_line/language.hpp"

using namespace evenclaw;

namespace {

RefusedCow named_in(const char* text) {
  LineContext context;
  context.cow_open = true;
  return cow_in_refused(text, context, english());
}

struct LineOfNoCow {
  const char* text;
  const char* cow;
};

}  // namespace

TEST_CASE("a refused line that goes on as a turn names its cow") {
  constexpr LineOfNoCow rows[] = {
      {"27 RH DD raw behnd spray", "27"},    {"409 lame RHH", "409"},
      {"513 or 531 lame LHH", "513 or 531"}, {"and 413 LH outsde SU", "413"},
      {"- 414 LH outsde SU", "414"},         {"no tag, black cow; LH outsde SU", "black cow"}};
  for (const LineOfNoCow& row : rows) {
    CAPTURE(row.text);
    const RefusedCow refused = named_in(row.text);
    CHECK(refused.likely == CowLikely::surely);
    CHECK(recorded_as(refused.cow) == row.cow);
  }
}

TEST_CASE("when it is not sure that a cow was named she is a doubtful one") {
  constexpr LineOfNoCow rows[] = {{"22 nothnig found", "22?"},
                                  {"405 ditto", "405?"},
                                  {"35 off", "35?"},
                                  {"513 wrap off blck", "513?"},
                                  {"218 lame LH, vet came", "218?"},
                                  {"313 still lame LH, SU outside", "313?"},
                                  {"256 culled, RH DD", "256?"},
                                  {"413 died, LH SU", "413?"},
                                  {"no tg, black cow", "no tg, black cow"},
                                  {"no eartagg", "no eartagg"},
                                  {"No 413", "413?"},
                                  {"nr. 413", "413?"},
                                  {"two hundred and LH SU", "200?"},
                                  {"and 22 nothnig found", "22?"}};
  for (const LineOfNoCow& row : rows) {
    CAPTURE(row.text);
    const RefusedCow refused = named_in(row.text);
    CHECK(refused.likely == CowLikely::perhaps);
    CHECK(recorded_as(refused.cow) == row.cow);
  }
}

TEST_CASE("a number is clear unless it is announced, in one word, broken off or in doubt itself") {
  for (const char* text :
       {"22 nothnig found", "301 LH SU gone", "827 no milk till Thu", "and 22 x"}) {
    CAPTURE(text);
    CHECK(named_in(text).is_clear_number);
  }
  for (const char* text : {"No 413", "nr. 413", "two hundred and LH SU", "seven LH", "22? x",
                           "513 or 531 x", "4l3 lame LH"}) {
    CAPTURE(text);
    CHECK_FALSE(named_in(text).is_clear_number);
  }
}

TEST_CASE("a number with letters in it names a cow without a number who looks as it was said") {
  constexpr LineOfNoCow rows[] = {
      {"4l3 lame LH", "4l3"}, {"41O lame RH", "41O"}, {"413A lame", "413A"}, {"413x", "413x"}};
  for (const LineOfNoCow& row : rows) {
    CAPTURE(row.text);
    const RefusedCow refused = named_in(row.text);
    CHECK(refused.likely != CowLikely::none);
    CHECK(refused.cow.known == CowKnown::unnumbered);
    CHECK(refused.cow.number.empty());
    CHECK(refused.cow.looks == row.cow);
  }
}

TEST_CASE("the second number is not taken from one with letters in it") {
  CHECK(recorded_as(named_in("412 or 4l3 lame LH").cow) == "412");
  CHECK(recorded_as(named_in("412LH outsde SU").cow) == "412");
}

TEST_CASE("slips of feet, corrections, lists, news and measures name no cow") {
  for (const char* text : {"RHH foul between", "no, chronicc", "no, not that one", "no insde",
                           "412, 513 wrps off", "77 gone Thu", "7.5 mm sole", "LH outsde SU", "",
                           "101 vet; 102 wraps off", "101 lame LH; 102 fine", "3 weeks"}) {
    INFO(std::string(text));
    CHECK(named_in(text).likely == CowLikely::none);
  }
}

TEST_CASE("a refused line that starts with no word of a foot may be of another cow") {
  for (const char* text :
       {"cow 413", "next one 413", "nr 413", "next cow", "brown heifer", "301, 302 lame LH",
        "413/2 lame", "77 gone Thu", "#413 lame", "the red one", "\xff\xfe", "heifer 413 lame",
        "ear tag 413", "and 413 LHH", "caller Ben 413", "101 vet; 102 wraps off"}) {
    INFO(std::string(text));
    CHECK(may_be_of_another_cow(text, english()));
  }
  CHECK(may_be_of_another_cow(std::string(5000, 'a'), english()));
}

TEST_CASE("what is said to somebody names no cow, and what goes on behind it may") {
  for (const char* text : {"yes", "Oops, sorry", "hang on", "thank you", "ok"}) {
    INFO(std::string(text));
    CHECK_FALSE(may_be_of_another_cow(text, english()));
    CHECK(is_an_aside(text, english()));
  }
  for (const char* text : {"ja", "warte", "hoppla, sorry", "Moment"}) {
    INFO(std::string(text));
    CHECK_FALSE(may_be_of_another_cow(text, german()));
    CHECK(is_an_aside(text, german()));
  }
  for (const char* text : {"yes 413", "ok, brown heifer", "hang on, next one"}) {
    INFO(std::string(text));
    CHECK(may_be_of_another_cow(text, english()));
    CHECK_FALSE(is_an_aside(text, english()));
  }
  CHECK_FALSE(is_an_aside("yes, LH SUU", english()));
  CHECK_FALSE(is_an_aside("", english()));
}

TEST_CASE("a refused line that starts with a word of a foot or a slip of one is hers") {
  for (const char* text : {"LH outsde SU",     "LG SU",          "RHH foul between",
                           "outsde SU",        "sole ulcr bad",  "blokc on inside",
                           "wrpa on, off Sat", "rest fien",      "rst fine",
                           "7.5 mm sole",      "no, chronicc",   "ditto LG",
                           "see agian 28d",    "; block onn",    "noth fnd",
                           "nothnig found",    "lame LHH",       "",

                           "left hnd fine",    "lft hind fine",  "tody hinds",
                           "and RHH foul",     "caller Ben, LH", "3 weeks"}) {
    INFO(std::string(text));
    CHECK_FALSE(may_be_of_another_cow(text, english()));
  }
}

TEST_CASE("a number and news nobody could read, or a slip of news, tells of one who is out") {
  constexpr LineOfNoCow rows[] = {
      {"101 warp off", "101"},          {"102 wrap off?", "102"},
      {"102 still lme", "102"},         {"105 wrap on still", "105"},
      {"101 wrap off LHH", "101"},      {"102 still lame, wrap's gone; 105 wrap on still", "102"},
      {"and 103 blok came off", "103"}, {"104 kiks", "104"}};
  for (const LineOfNoCow& row : rows) {
    CAPTURE(row.text);
    CHECK(told_in_unread_news(row.text, english()) == row.cow);
  }
}

TEST_CASE(
    "what may be found or done in the crush, or an unknown word, is no news that was not read") {
  for (const char* text :
       {"112 nothnig found", "112 lme LH", "412 LH outsde SU", "412 wrap off, sole ulcr",
        "412 wrap on", "412 wrap off 3d", "412 wrap off big hole", "412 claw gone", "412 recheck?",
        "warp off", "4l3 warp off", "412", "102 wrap off; 104 RH DD raww"}) {
    CAPTURE(text);
    CHECK(told_in_unread_news(text, english()).empty());
  }
}

TEST_CASE("what became of all wraps or blocks names no cow") {
  for (const char* text : {"all wraps off", "everything wrap off", "all blocks still on"}) {
    INFO(std::string(text));
    CHECK_FALSE(may_be_of_another_cow(text, english()));
  }
  for (const char* text : {"white face wraps off", "all 413 wrap off", "all heifers wraps off"}) {
    INFO(std::string(text));
    CHECK(may_be_of_another_cow(text, english()));
  }
}

TEST_CASE("a correction that was not understood names the cow it was to mend") {
  const auto mended_in = [](const char* text) {
    return cow_mended_in_refused(text, LineContext{}, english());
  };
  for (const char* text : {"412 no, slihgt", "412 LH no, not bad", "412, both hinds, no rigt"}) {
    CAPTURE(text);
    const std::optional<CowSaid> cow = mended_in(text);
    REQUIRE(cow);
    CHECK(cow->number == "412");
  }
  for (const char* text : {"412 lame LHH", "412 LH SU no", "LH no, slihgt", "412", ""}) {
    CAPTURE(text);
    CHECK_FALSE(mended_in(text));
  }
}

TEST_CASE("a number in words names her as one in digits does") {
  const RefusedCow refused = named_in("four-twelve LH outsde SU");
  CHECK(refused.likely == CowLikely::surely);
  CHECK(recorded_as(refused.cow) == "412");
}

TEST_CASE("a single number word in front of a foot is a doubtful cow, elsewhere it is none") {
  const RefusedCow refused = named_in("seven LH SU");
  CHECK(refused.likely == CowLikely::perhaps);
  CHECK(recorded_as(refused.cow) == "7?");
  CHECK(named_in("two blocks off").likely == CowLikely::none);
}
