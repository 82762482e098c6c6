#include "core/api/reply.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace evenclaw;

namespace {

ReplyItem item(ReplyKind kind, std::string cow, std::string words) {
  ReplyItem made;
  made.kind = kind;
  made.cow = std::move(cow);
  made.words = std::move(words);
  return made;
}

}  // namespace

TEST_CASE("what to say instead is parted from what was wrong") {
  CHECK(with_remedy("\"outsde\" is not understood", "did you mean \"outside\"?") ==
        "\"outsde\" is not understood; did you mean \"outside\"?");
  CHECK(with_remedy("No cow carries 412.", "Did you mean 421?") ==
        "No cow carries 412. Did you mean 421?");
  CHECK(with_remedy("Whose foot is this?", "Say her number first.") ==
        "Whose foot is this? Say her number first.");
  CHECK(with_remedy("that is not a length", "") == "that is not a length");
}

TEST_CASE("a reply is one line: what kind, whom it concerns, the words") {
  CHECK(to_line(item(ReplyKind::told, "412", "noted")) == "told 412: noted");
  CHECK(to_line(item(ReplyKind::mark, "", "no cow is in the crush")) ==
        "mark: no cow is in the crush");
  ReplyItem asked = item(ReplyKind::ask, "412", "Still on?");
  asked.answers = {"LH wrap still on", "go ahead"};
  CHECK(to_line(asked) == "ask 412: Still on? (answer: LH wrap still on / go ahead)");
  ReplyItem refused = item(ReplyKind::refused, "", "\"blck\" is not understood");
  refused.line = 7;
  refused.remedy = "did you mean \"block\"?";
  CHECK(to_line(refused) == "refused line 7: \"blck\" is not understood; did you mean \"block\"?");
}

TEST_CASE("a saved turn is acknowledged by cow and entry and nothing else") {
  ReplyItem saved = item(ReplyKind::saved, "412", "");
  saved.entry = EntryId{uuid_derived("a turn")};
  CHECK(to_line(saved) == "saved 412 " + to_text(*saved.entry));
  saved.kind = ReplyKind::there_already;
  CHECK(to_line(saved) == "there already 412 " + to_text(*saved.entry));
}
