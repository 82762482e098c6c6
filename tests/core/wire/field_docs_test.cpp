#include "core/wire/field_docs.hpp"

#include <doctest/doctest.h>

#include <ostream>

#include "tests/core/wire/sample_types.hpp"

namespace evenclaw {

TEST_CASE("the dictionary lists every leaf with its path, type and doc in order") {
  std::string listed;
  for (const FieldDoc& field : field_docs<Sample>()) {
    listed += field.path + " | " + std::string(field.type_word) + " | " + std::string(field.doc) +
              (field.may_be_absent ? " | may be absent\n" : "\n");
  }
  CHECK(listed ==
        "is_open | bool | open\n"
        "count | whole number | how many\n"
        "large | whole number | a large number\n"
        "name | text | called\n"
        "halves | text | both halves\n"
        "day | ISO day | the day\n"
        "at | RFC 3339 instant | the instant\n"
        "herd | id | the herd\n"
        "remark | text | if any | may be absent\n"
        "last.weekday | word | when\n"
        "last.height | tenths of mm | how high | may be absent\n"
        "last.words[] | text | as said | may be absent\n"
        "weekdays[] | word | on which days | may be absent\n"
        "notes[].weekday | word | when\n"
        "notes[].height | tenths of mm | how high | may be absent\n"
        "notes[].words[] | text | as said | may be absent\n"
        "first.weekday | word | when\n"
        "first.height | tenths of mm | how high | may be absent\n"
        "first.words[] | text | as said | may be absent\n");
}

TEST_CASE("the allowed words of an enum are listed with it") {
  for (const FieldDoc& field : field_docs<Note>()) {
    CAPTURE(field.path);
    CHECK(field.words.size() == (field.type_word == "word" ? 7 : 0));
  }
  CHECK(field_docs<Note>()[0].words.front() == "monday");
}

TEST_CASE("what a field holds is told with the words it may be") {
  CHECK(type_told(field_docs<Note>()[0]).rfind("word: `monday`, `tuesday`", 0) == 0);
  CHECK(type_told(field_docs<Note>()[1]) == "tenths of mm");
}

}  // namespace evenclaw
