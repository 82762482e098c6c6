#include "core/api/recording/said_again.hpp"

#include <doctest/doctest.h>

#include "core/api/recording/said_otherwise.hpp"

using namespace evenclaw;

namespace {

struct TwoLines {
  const char* refused;
  const char* now;
};

}  // namespace

TEST_CASE("a line with its slip mended is said again, with her number or without") {
  constexpr TwoLines rows[] = {{"22 nothnig found", "22 nothing found"},
                               {"27 RH DD raw behnd spray", "RH DD raw behind; spray"},
                               {"RH DD raw behnd; spray", "27 RH DD raw behind; spray"},
                               {"3 4 recheck", "34 recheck"},
                               {"4l3 lame LH", "413 lame LH"},
                               {"413x", "413"},
                               {"No 413", "413"},
                               {"nr. 413 lame RH", "413 lame RH"},
                               {"RH blck on inside", "RH block inside, off 35d"},
                               {"inside", "block on inside"},
                               {"no tg, black cow", "no tag, black cow"},
                               {"seven LH SU", "7 LH SU"},
                               {"and 413 LH outsde SU", "413 LH outside SU"},
                               {"412 LH has a SU", "LH SU"},
                               {"LH sole 60 mm", "LH sole 6 mm"},
                               {"four-twelve LH outsde SU", "412 LH outside SU"}};
  for (const TwoLines& row : rows) {
    CAPTURE(row.refused);
    CHECK(is_said_again(row.refused, row.now, english()));
  }
}

TEST_CASE("another cow, another foot or another thing leaves the line open") {
  constexpr TwoLines rows[] = {{"22 nothnig found", "23 nothing found"},
                               {"4l3 lame LH", "425 lame LH"},
                               {"No 413", "415"},
                               {"LH outsde SU", "RH outside SU"},
                               {"409 lame RHH", "RH foul between"},
                               {"RH growht", "RH foul"},
                               {"block on outsde", "block on inside"},
                               {"no, sole ulcer", "no, inside"},
                               {"lame RHH", "rest fine"},
                               {"405 ditto", "406 both hinds HHE slight"}};
  for (const TwoLines& row : rows) {
    CAPTURE(row.refused);
    CHECK_FALSE(is_said_again(row.refused, row.now, english()));
  }
}

TEST_CASE("what was known of the line and is left out is not said again") {
  constexpr TwoLines rows[] = {
      {"410 LH outside SU heell, bad; block on inside; vet",
       "LH outside SU heel, bad; block on inside"},
      {"410 LH outside SU heell, bad; block on inside; fever",
       "LH outside SU heel, bad; block on inside"},
      {"LH outside SU heell, bad; block on inside; spray",
       "LH outside SU heel, bad; block on inside"},
      {"LH outside SU heell, bad; block on inside; opened",
       "LH outside SU heel, bad; block on inside"},
      {"LH outside SU heell, bad; opened; to straw; kicks",
       "LH outside SU heel, bad; opened; kicks"},
      {"RH foull; injected with painfree by the vet; milk 4d; meat 10d",
       "RH foul; injected with painfree by the vet; meat 10d"},
      {"410 lame LH; RH DD raw behnd; spray", "410; RH DD raw behind; spray"},
      {"RH DD raw behnd; spray", "RH DD behind; spray"},
      {"RH SU outside, bad, behnd; spray", "RH SU outside, heel; spray"},
      {"300 wrap off, still lame; 301 blok gone", "300 wrap off; 301 block gone"},
      {"12 heifers, far shedd yard, all goood bar 606", "12 heifers, far shed yard, all good"}};
  for (const TwoLines& row : rows) {
    CAPTURE(row.refused);
    CHECK_FALSE(is_said_again(row.refused, row.now, english()));
    CHECK_FALSE(is_said_in_other_words(row.refused, row.now, english()));
  }
}

TEST_CASE("what tells nothing by itself is said again by what does") {
  constexpr TwoLines rows[] = {{"no, not that one", "no, inside"},
                               {"405 ditto", "405 both hinds HHE slight"},
                               {"405 ditto", "both hinds HHE slight"},
                               {"no, sole ulcer", "nothing after all"}};
  for (const TwoLines& row : rows) {
    CAPTURE(row.refused);
    CHECK(is_said_again(row.refused, row.now, english()));
  }
}

TEST_CASE("a number behind unknown words is said again by a line that starts with it") {
  CHECK(is_named_again("next one 413", "413", english()));
  CHECK(is_named_again("next one 413", "413 lame LH", english()));
  CHECK(is_named_again("nr 413 lame", "413 lame LH", english()));
  CHECK(is_named_again("#413", "413", english()));
}

TEST_CASE("neither another number nor a line that leaves something out says it again") {
  CHECK_FALSE(is_named_again("next one 413", "done", english()));
  CHECK_FALSE(is_named_again("next one 413", "414 nothing found", english()));
  CHECK_FALSE(is_named_again("nr 413 lame", "413 nothing found", english()));
  CHECK_FALSE(is_named_again("heifer 413", "413 nothing found", english()));
  CHECK_FALSE(is_named_again("next cow", "413 nothing found", english()));
}

TEST_CASE("a correction is said again of the foot that was meant") {
  CHECK(is_said_again("412 RH no, no DD", "412 LH no, no DD", english()));
  CHECK(is_said_again("412 no, LH", "412 no, RH", english()));
  CHECK(is_said_again("RH no, chronc", "LH no, chronic", english()));
  CHECK_FALSE(is_said_again("412 RH no, no DD", "413 LH no, no DD", english()));
  CHECK_FALSE(is_said_again("412 RH no, no DD", "412 LH no, no SU", english()));
  CHECK_FALSE(is_said_again("RH DD raw", "LH DD raw", english()));
}

TEST_CASE("the same as elsewhere is said again by what is found on that foot") {
  CHECK(is_said_again("RH same", "RH sole ulcer", english()));
  CHECK_FALSE(is_said_again("RH same", "LH sole ulcer", english()));
}

TEST_CASE("a number in one word, or in quotes, is not said again by a line that leaves it out") {
  CHECK_FALSE(is_said_again("thirteen", "LH bruise toe outside slight", english()));
  CHECK_FALSE(is_said_again("\"413\"", "LH bruise toe outside slight", english()));
  CHECK_FALSE(is_said_again("\"kicks\"", "rest fine", english()));
  CHECK(is_said_again("thirteen", "413 LH bruise", english()));
  CHECK_FALSE(is_said_again("thirteen", "414 LH bruise", english()));
}
