// What is told of a cow before anybody stands behind her.
#include <doctest/doctest.h>

#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

namespace {

using Lines = std::vector<std::string>;

struct WithAKicker {
  Workplace place;

  WithAKicker() { (void)place.visited("2026-10-13", {"412 kicks; nothing found", "done"}); }
};

Lines answers(Recording& recording, std::string_view line) {
  return lines_of(recording.say(line).value().items);
}

}  // namespace

TEST_CASE("her number alone is enough to be warned, and a second time today needs no warning") {
  WithAKicker herd;
  Recording recording = herd.place.record(herd.place.start());
  CHECK(answers(recording, "412") == Lines{"mark 412: careful: kicks"});
  CHECK(answers(recording, "nothing found").empty());
  CHECK(answers(recording, "done") == Lines{"saved 412"});
  CHECK(answers(recording, "412").empty());
}

TEST_CASE("a number put right warns of the cow that stands there") {
  WithAKicker herd;
  Recording recording = herd.place.record(herd.place.start());
  CHECK(answers(recording, "413 lame LH").empty());
  CHECK(
      answers(recording, "no, 412") ==
      Lines{"mark 412: careful: kicks", "mark 412: put right: all that was called of 413 is hers"});
}

TEST_CASE("of lines that came in together she is gone already") {
  WithAKicker herd;
  Recording recording = herd.place.record(herd.place.start());
  const Lines lines = {"412 nothing found", "done"};
  CHECK(lines_of(recording.say_all(lines).value().items) == Lines{"saved 412"});
}

}  // namespace evenclaw::test
