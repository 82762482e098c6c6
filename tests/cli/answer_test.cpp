#include "cli/answer.hpp"

#include <doctest/doctest.h>

#include <set>
#include <string>

#include "core/base/errors.hpp"
#include "tests/cli/captured.hpp"

namespace evenclaw::cli {

namespace {

Fault fault_of(std::string slug, std::string message = "what happened") {
  Fault fault;
  fault.slug = std::move(slug);
  fault.message = std::move(message);
  return fault;
}

struct Told {
  Exit exit;
  std::string text;
};

Told told(const Faults& faults, bool json = false) {
  Invocation invocation;
  invocation.json = json;
  const Captured captured(json ? std::cout : std::cerr);
  const Exit exit = tell_faults(faults, invocation);
  return {exit, captured.text()};
}

}  // namespace

TEST_CASE(
    "What damages records, what the world did and what was typed wrong differ for the shell") {
  const std::set<std::string_view> damaged = {"file-damaged",        "file-newer",
                                              "not-our-file",        "entry-digest-wrong",
                                              "entry-not-canonical", "row-unreadable"};
  const std::set<std::string_view> world = {
      "file-not-found", "file-unreadable", "file-too-large", "file-read-only",  "output-exists",
      "disk-full",      "disk-failed",     "store-busy",     "rows-out-of-date"};
  const std::set<std::string_view> usage = {"usage", "date-unreadable"};
  for (const ErrorKind& kind : all_errors()) {
    CAPTURE(kind.slug);
    const Exit expected = damaged.count(kind.slug) > 0 ? Exit::damaged
                          : world.count(kind.slug) > 0 ? Exit::world
                          : usage.count(kind.slug) > 0 ? Exit::usage
                                                       : Exit::asked;
    CHECK(exit_of(kind.slug) == expected);
  }
}

TEST_CASE("Of several faults the worst is what the shell is answered, and all are told") {
  const Told all = told({fault_of("disk-full", "no room"), fault_of("usage", "no such word")});
  CHECK(all.exit == Exit::world);
  CHECK(all.text.find("no room") != std::string::npos);
  CHECK(all.text.find("no such word") != std::string::npos);
}

TEST_CASE("A fault is told with its place, what is safe, its name and how to do it here") {
  Fault fault = fault_of("herd-not-found", "no herd is called Hil");
  fault.line = 3;
  fault.column = 7;
  fault.remedy = "Hill Farm?";
  const std::string text = told({fault}).text;
  CHECK(text.find("evenclaw: line 3, column 7: no herd is called Hil\n") == 0);
  CHECK(text.find("\n  Hill Farm?\n") != std::string::npos);
  CHECK(text.find("evenclaw start NAME --new-herd") != std::string::npos);
  CHECK(text.find("(herd-not-found)") != std::string::npos);
}

TEST_CASE(
    "As JSON all faults stand on one line, with the remedy of the list where they have none") {
  const Told all = told({fault_of("disk-full"), fault_of("usage")}, true);
  CHECK(all.text.find('\n') == all.text.size() - 1);
  CHECK(all.text.find("\"slug\":\"disk-full\"") != std::string::npos);
  CHECK(as_answer(fault_of("disk-full")).remedy == find_error("disk-full")->what_to_do);
}

}  // namespace evenclaw::cli
