#include "core/trade/call_line/where_it_is_known.hpp"

#include <doctest/doctest.h>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"

using namespace evenclaw;

namespace {

bool is_read(std::string_view line) {
  return read_line(line, {}, english()).ok();
}

bool is_her_turn(std::string_view line) {
  const auto read = read_line(line, {}, english());
  return read && std::holds_alternative<CowNamed>(read->clauses.front());
}

}  // namespace

TEST_CASE("a block told to be off without its foot is left to her past when the line says more") {
  CHECK(is_her_turn("301 recheck; block gone; rest fine"));
  CHECK(is_her_turn("301 recheck, wrap still on"));
  CHECK(is_her_turn("301 wrap off; rest fine"));
}

TEST_CASE("a block refitted, or of which nobody knows, is left to her past as well") {
  CHECK(is_her_turn("301 block refitted; rest fine"));
  CHECK(is_her_turn("301 routine; block don't know; rest fine"));
  CHECK(is_her_turn("301 recheck; both blocks off"));
  CHECK_FALSE(is_read("301 block again inside; rest fine"));
}

TEST_CASE("alone, or with what only news tells, it is news of her") {
  CHECK_FALSE(is_her_turn("301 block gone"));
  CHECK_FALSE(is_her_turn("301 block gone, walks all right"));
}

TEST_CASE("nothing found right behind it is of that foot, whatever parts them") {
  CHECK(is_her_turn("301 block off; nothing found"));
  CHECK(is_her_turn("301 block off, nothing found"));
  CHECK(is_her_turn("301 recheck; block gone, nothing found"));
}

TEST_CASE("what is said of a foot that is not named keeps the line from being understood") {
  CHECK_FALSE(is_read("301 recheck; block gone; sole ulcer"));
  CHECK_FALSE(is_read("301 block gone, nothing found; trimmed"));
}

TEST_CASE("a block that is put on needs its foot") {
  CHECK_FALSE(is_read("301 recheck; block on inside; rest fine"));
}
