#include "core/api/recording/kept_draft.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("a half-entered turn comes back from the store as it was kept") {
  KeptDraft draft;
  draft.said.number = "0412";
  draft.words = {"0412 lame LH", "LH outside \"odd\" spot; note \xc3\xa4"};
  draft.refused = {"RH slihgt"};
  draft.said_before = {2};
  draft.called_first = {"421"};
  draft.warnings.emplace_back();
  draft.warnings.back().warning.words = "Blocked: which claw?";
  draft.done_said = true;
  draft.held_back_by = "next one 413";
  const auto back = kept_draft(kept_text(draft));
  REQUIRE(back.ok());
  CHECK(back->said == draft.said);
  CHECK(back->words == draft.words);
  CHECK(back->refused == draft.refused);
  CHECK(back->said_before == draft.said_before);
  CHECK(back->called_first == draft.called_first);
  CHECK(back->warnings.at(0).warning.words == "Blocked: which claw?");
  CHECK(back->done_said);
  CHECK(back->held_back_by == "next one 413");
  CHECK_FALSE(back->called_by);
}

TEST_CASE("a text that is no half-entered turn is told as unreadable") {
  for (const char* text : {"", "[1]", "{\"words\":3}", "{\"words\":"}) {
    CAPTURE(text);
    CHECK_FALSE(kept_draft(text).ok());
  }
}
