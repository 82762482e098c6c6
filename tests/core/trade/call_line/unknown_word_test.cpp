#include "core/trade/call_line/unknown_word.hpp"

#include <doctest/doctest.h>

#include "tests/core/trade/call_line/saying.hpp"

using namespace evenclaw;

namespace {

struct Row {
  const char* line;
  const char* token;
  const char* remedy;
};

template <std::size_t count>
void check_told(const Row (&rows)[count]) {
  for (const Row& row : rows) {
    CAPTURE(row.line);
    const Faults faults = saying::faults_of(row.line);
    REQUIRE_FALSE(faults.empty());
    CHECK(faults.front().token == row.token);
    CHECK(faults.front().remedy == row.remedy);
  }
}

}  // namespace

TEST_CASE("a word that only joins is left out and is no slip of a code") {
  constexpr Row rows[] = {{"LH but SU", "but", "leave it out"},
                          {"LH the SU", "the", "leave it out"},
                          {"LH has a SU", "has a", "leave it out"},
                          {"she has SU", "she has", "leave it out"}};
  check_told(rows);
}

TEST_CASE("who was not like the others of a count is named behind bar") {
  constexpr Row rows[] = {
      {"12 heifers all good but 413 has DD LH", "but",
       "say \"12 heifers all good bar 413\"; what was found on her is called on the next line"}};
  check_told(rows);
  CHECK(saying::faults_of("12 heifers all good bar 413").empty());
}

TEST_CASE("a word that only joins belongs to a slip behind it") {
  constexpr Row rows[] = {{"LH the outsde SU", "the outsde", "did you mean \"the outside\"?"}};
  check_told(rows);
}

TEST_CASE("a slip is taken with the word before when together they are nearer") {
  constexpr Row rows[] = {{"LH sole ulsr", "sole ulsr", "did you mean \"sole ulcer\"?"},
                          {"LH outsde SU", "outsde", "did you mean \"outside\"?"}};
  check_told(rows);
}

TEST_CASE("to a single letter everything is near, so nothing is proposed") {
  constexpr Row rows[] = {{"I think LH SU", "I", ""}};
  check_told(rows);
}

TEST_CASE("an everyday word is no slip of the call word it is near to") {
  for (const char* line : {"LH now", "LH never", "LH round", "LH came"}) {
    CAPTURE(line);
    const Faults faults = saying::faults_of(line);
    REQUIRE_FALSE(faults.empty());
    CHECK(faults.front().remedy.find("did you mean") == std::string::npos);
  }
}

TEST_CASE("beside the word before it an everyday word may still be a slip") {
  const Faults faults = saying::faults_of("412 left kind SU");
  REQUIRE_FALSE(faults.empty());
  CHECK(faults.front().remedy == "did you mean \"left hind\"?");
}
