// A day on paper: blank call lines are printed, and what was written is typed in later without a
// time.
#include <doctest/doctest.h>

#include <fstream>
#include <string>

#include "tests/cli/program.hpp"

namespace evenclaw::test {
TEST_CASE("A visit from paper has its day, and its times are told to be not known") {
  const Workshop workshop;
  const Ran begun = workshop.run({"start", "Home Farm", "--new-herd", "--day", "2026-11-20",
                                  "--today", "2026-11-25", "--feet", "hinds", "--from-paper"});
  CHECK(begun.exit == 0);
  CHECK(has(begun.out, "From paper: its day is known, no time of it is."));
  CHECK(workshop
            .run({"record", "-", "--day", "2026-11-20", "--today", "2026-11-25"},
                 "412 LH sole ulcer outside, middle, bad; block on inside\nrest fine\ndone\n")
            .exit == 0);
  CHECK(workshop.run({"end", "--today", "2026-11-25"}).signal == 0);

  const Ran cow = workshop.run({"show", "cow", "412", "--today", "2026-11-25"});
  CHECK(has(cow.out, "from paper: time in the crush not known"));
  CHECK_FALSE(has(cow.out, "min in the crush"));
  const Ran json = workshop.run({"show", "cow", "412", "--today", "2026-11-25", "--json"});
  CHECK(has(json.out, "\"from_paper\": true"));
  CHECK_FALSE(has(json.out, "seconds_in_crush"));
  CHECK_FALSE(has(json.out, "let_out_at"));
  const Ran herd = workshop.run({"show", "herd", "home", "--today", "2026-11-25", "--json"});
  CHECK_FALSE(has(herd.out, "opened_at"));
  CHECK(has(workshop.run({"show", "herd", "home", "--today", "2026-11-25"}).out,
            "from paper, no times known"));
  CHECK(has(workshop.run({"sheet", "--text", "--today", "2026-11-25"}).out,
            "Times: from paper, not known"));
}

TEST_CASE("A visit begun beside the crush is not gone on with as one from paper") {
  const Workshop workshop;
  CHECK(
      workshop
          .run({"start", "Home Farm", "--new-herd", "--day", "2026-11-20", "--today", "2026-11-25"})
          .exit == 0);
  const Ran again = workshop.run(
      {"start", "Home Farm", "--day", "2026-11-20", "--today", "2026-11-25", "--from-paper"});
  CHECK(again.exit == 1);
  CHECK(has(again.err, "was not begun from paper"));
}

TEST_CASE("A visit called through a pipe has no time in the crush either, and none is made up") {
  const Workshop workshop;
  CHECK(
      workshop
          .run({"start", "Home Farm", "--new-herd", "--day", "2026-11-20", "--today", "2026-11-25"})
          .exit == 0);
  CHECK(workshop.run({"record", "-", "--today", "2026-11-25"}, "412 nothing found\ndone\n").exit !=
        3);
  const Ran cow = workshop.run({"show", "cow", "412", "--today", "2026-11-25", "--json"});
  CHECK_FALSE(has(cow.out, "seconds_in_crush"));
  CHECK(has(workshop.run({"show", "herd", "home", "--today", "2026-11-25", "--json"}).out,
            "opened_at"));
}

TEST_CASE("Behind the list of what is due lie blank call lines, one box for each cow that is due") {
  const Workshop workshop;
  CHECK(workshop
            .run({"start", "Home Farm", "--new-herd", "--day", "2026-11-20", "--today",
                  "2026-11-20", "--feet", "hinds"})
            .exit == 0);
  CHECK(workshop
            .run({"record", "-", "--today", "2026-11-20"},
                 "412 LH DD raw behind; wrap on, off 3d\nrest fine\ndone\n")
            .exit == 0);
  CHECK(workshop.run({"end", "--today", "2026-11-20"}).signal == 0);
  const std::string page = workshop.file("due.html");
  CHECK(workshop.run({"due", "--paper", page, "--today", "2026-11-23"}).exit == 0);
  std::ifstream file(page);
  const std::string html{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
  const std::size_t boxes = html.find("<section class=\"writing\">");
  REQUIRE(boxes != std::string::npos);
  CHECK(html.find("412</h3>", boxes) != std::string::npos);
  CHECK(html.find("label blank", boxes) != std::string::npos);
}

}  // namespace evenclaw::test
