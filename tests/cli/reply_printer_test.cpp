#include "cli/reply_printer.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tests/cli/captured.hpp"

namespace evenclaw::cli {

namespace {

ReplyItem refused(std::string words, std::string token) {
  ReplyItem item;
  item.kind = ReplyKind::refused;
  item.line = 3;
  item.column = 8;
  item.words = std::move(words);
  item.token = std::move(token);
  return item;
}

ReplyItem of_kind(ReplyKind kind) {
  ReplyItem item;
  item.kind = kind;
  item.words = "words";
  return item;
}

std::string printed(const ReplyItem& item, bool json = false) {
  const Captured captured(std::cout);
  ReplyPrinter(json).print(item);
  return captured.text();
}

std::string printed_below(const ReplyItem& item, std::size_t prompt_width) {
  const Captured captured(std::cout);
  Reply reply;
  reply.items = {item};
  ReplyPrinter(false).print_below(reply, prompt_width);
  return captured.text();
}

}  // namespace

TEST_CASE("A refused word stands beside its place where the words do not name it, and only there") {
  CHECK(printed(refused("zones go from 0 to 12", "z13")) ==
        "refused line 3, column 8 (\"z13\"): zones go from 0 to 12\n");
  CHECK(printed(refused("\"z13\" is not understood", "z13")) ==
        "refused line 3, column 8: \"z13\" is not understood\n");
}

TEST_CASE("Below a prompt the place is pointed at, and no line or column is told") {
  CHECK(printed_below(refused("zones go from 0 to 12", "z13"), 5) ==
        "            ^\nrefused: zones go from 0 to 12\n");
}

TEST_CASE("A refusal that is of no place points at none") {
  ReplyItem item = refused("she was called twice", "");
  item.column = 0;
  CHECK(printed_below(item, 5) == "refused: she was called twice\n");
  CHECK(printed(item) == "refused line 3: she was called twice\n");
}

TEST_CASE("As JSON every answer is a line of its own") {
  const std::string text = printed(of_kind(ReplyKind::mark), true);
  CHECK(text.front() == '{');
  CHECK(text.find('\n') == text.size() - 1);
}

TEST_CASE("Something is left to settle after a refusal or a question, and after nothing else") {
  for (const ReplyKind kind : {ReplyKind::saved, ReplyKind::there_already, ReplyKind::told,
                               ReplyKind::stop, ReplyKind::ask, ReplyKind::note, ReplyKind::mark}) {
    CAPTURE(word_of(kind));
    CHECK(exit_after({of_kind(kind)}) == Exit::fine);
  }
  CHECK(exit_after({of_kind(ReplyKind::refused), of_kind(ReplyKind::saved)}) == Exit::asked);
  CHECK(exit_after({of_kind(ReplyKind::question)}) == Exit::asked);
  const Captured captured(std::cout);
  ReplyPrinter printer(false);
  printer.print(of_kind(ReplyKind::question));
  printer.print(of_kind(ReplyKind::saved));
  CHECK(printer.exit() == Exit::asked);
}

}  // namespace evenclaw::cli
