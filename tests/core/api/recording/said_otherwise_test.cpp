#include "core/api/recording/said_otherwise.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

namespace {

struct SaidTwice {
  const char* refused;
  const char* now;
};

}  // namespace

TEST_CASE("what the refusal asked for settles the line, in whatever order the rest is said") {
  constexpr SaidTwice rows[] = {{"414 nothing found LH", "414 LH nothing found"},
                                {"wrap LH", "LH wrap"},
                                {"powder both hinds", "both hinds powder"},
                                {"not done, ran out of time", "unfinished, ran out of time"},
                                {"RH pus", "RH WLA heel outside bad"},
                                {"LH dish wall", "LH modelled"},
                                {"LH DD heel", "LH DD behind"},
                                {"LH inside and outside bruise", "LH both claws bruise"},
                                {"207 RF lame, nothing found", "207 lame RF; nothing found"},
                                {"spray both", "spray"},
                                {"and 413 LH rot", "413 LH foul"},
                                {"fronts not done", "fronts not lifted"},
                                {"LH all good", "LH nothing found"},
                                {"412 LH SU; recheck", "412 LH SU; see again 28d"},
                                {"412 LH has a SU", "412 LH SU"}};
  for (const SaidTwice& row : rows) {
    CAPTURE(row.refused);
    CHECK(is_said_in_other_words(row.refused, row.now, english()));
  }
}

TEST_CASE("another act, another foot, another cow or a correction does not settle it") {
  constexpr SaidTwice rows[] = {
      {"wrp on, off Thu", "LH spray"},     {"LH rot", "RH foul"},
      {"412 wrap on", "LH DD raw behind"}, {"414 nothing found LH", "415 LH nothing found"},
      {"next cow", "RH DD raw behind"},    {"RH growht", "RH foul"},
      {"LH outsde SU", "LH SU"},           {"no, sole ulcer", "no, inside"}};
  for (const SaidTwice& row : rows) {
    CAPTURE(row.refused);
    CHECK_FALSE(is_said_in_other_words(row.refused, row.now, english()));
  }
}

TEST_CASE("what lacked only its foot is said again with it, and by nothing else") {
  constexpr SaidTwice rows[] = {{"410 DD", "LH DD"},
                                {"410 SU outside", "LH outside SU"},
                                {"410 pain relief; LH SU bad", "pain relief asked for; LH SU bad"}};
  for (const SaidTwice& row : rows) {
    CAPTURE(row.refused);
    CHECK(is_said_in_other_words(row.refused, row.now, english()));
  }
  constexpr SaidTwice open[] = {{"410 DD", "LH SU"},
                                {"410 SU", "LH WL"},
                                {"410 TN", "LH TU"},
                                {"410 spray", "LH DD"},
                                {"410 pain relief; LH SU bad", "LH SU bad"},
                                {"410 pain relief; LH SU bad", "LH SU bad; block in"}};
  for (const SaidTwice& row : open) {
    CAPTURE(row.refused);
    CHECK_FALSE(is_said_in_other_words(row.refused, row.now, english()));
  }
}

TEST_CASE("words nobody knows, and what is not so, may be left out when the rest is said again") {
  constexpr SaidTwice rows[] = {{"110 RH growth worse, vet perhaps", "RH growth worse, vet"},
                                {"RH DD in front, no wrap, spray", "RH DD in front, spray"},
                                {"LH SU, no block", "LH SU"},
                                {"LH no DD", "LH nothing found"},
                                {"LH SU outsid block inside", "LH SU outside; block inside"}};
  for (const SaidTwice& row : rows) {
    CAPTURE(row.refused);
    CHECK(is_said_in_other_words(row.refused, row.now, english()));
  }
  constexpr SaidTwice open[] = {{"LH no DD", "RH nothing found"},
                                {"LH no DD", "LH"},
                                {"no, no DD", "LH nothing found"},
                                {"RH DD in front, no wrap, spray", "RH DD in front"}};
  for (const SaidTwice& row : open) {
    CAPTURE(row.refused);
    CHECK_FALSE(is_said_in_other_words(row.refused, row.now, english()));
  }
}

TEST_CASE("an act refused while one foot was spoken of is not said of another foot") {
  const FootSet left{Foot::lh};
  const FootSet right{Foot::rh};
  CHECK_FALSE(
      may_be_of_the_same_feet("wrp on, off Thu", left, "RH wrap on, off Thu", right, english()));
  CHECK(may_be_of_the_same_feet("wrp on, off Thu", left, "wrap on, off Thu", left, english()));
  CHECK_FALSE(
      may_be_of_the_same_feet("wrp on, off Thu", left, "wrap on, off Thu", right, english()));
  CHECK(may_be_of_the_same_feet("watch her walk 14", left, "RH DD; watch her walk 14d", right,
                                english()));
}
