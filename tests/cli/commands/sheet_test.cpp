// Pages and what they say, on paper and on the screen.
#include <doctest/doctest.h>

#include <filesystem>
#include <string>

#include "tests/cli/one_cow.hpp"

using namespace evenclaw;
using namespace evenclaw::test;

TEST_CASE("the sheet is read on the screen without making a file") {
  const OneCowRecorded recorded;
  const Ran shown = recorded.workshop.run({"sheet", "--text"});
  CHECK(shown.exit == 0);
  CHECK(has(shown.out, "Home Farm"));
  CHECK(has(shown.out, "412"));
  CHECK(has(shown.out, "wrap off"));
  CHECK_FALSE(has(shown.out, "<html"));
  CHECK_FALSE(std::filesystem::exists(recorded.workshop.file("evenclaw/sheets")));
}

TEST_CASE("the rows of the sheet are shown as a list with a head and a line for each thing") {
  const OneCowRecorded recorded;
  const Ran shown = recorded.workshop.run({"sheet", "--csv"});
  CHECK(shown.exit == 0);
  CHECK(shown.out.rfind("herd,day,tells,cow,", 0) == 0);
  CHECK(has(shown.out, ",finding,412,,DD,"));
  CHECK(has(shown.out, ",act,412,,wrap_on,"));
  CHECK(has(shown.out, ",task,412,,wrap_off,"));
}

TEST_CASE("the list goes into a new file and never over another one") {
  const OneCowRecorded recorded;
  const std::string list = recorded.workshop.file("visit.csv");
  REQUIRE(recorded.workshop.run({"sheet", "--csv", "--out", list}).exit == 0);
  const std::string first = bytes_of(list);
  CHECK(has(first, ",finding,412,,DD,"));
  CHECK(recorded.workshop.run({"sheet", "--csv", "--out", list}).exit != 0);
  CHECK(bytes_of(list) == first);
}

TEST_CASE("a name that a spreadsheet would run is made harmless in the list") {
  const Workshop workshop;
  REQUIRE(workshop.run({"start", "=HYPERLINK(1)", "--new-herd", "--feet", "all"}).exit == 0);
  REQUIRE(workshop.run({"record"}, "412 rest fine\ndone\n").exit == 0);
  const Ran shown = workshop.run({"sheet", "--csv"});
  CHECK(has(shown.out, "\n'=HYPERLINK(1),"));
  CHECK_FALSE(has(shown.out, "\n=HYPERLINK"));
}

TEST_CASE("a list and a text at once is refused") {
  const OneCowRecorded recorded;
  CHECK(recorded.workshop.run({"sheet", "--csv", "--text"}).exit == 2);
}

TEST_CASE("what is due goes onto a page to hang up, without cows that left") {
  const OneCowRecorded recorded;
  const std::string page = recorded.workshop.file("due.html");
  REQUIRE(recorded.workshop.run({"due", "--paper", page}).exit == 0);
  CHECK(has(bytes_of(page), "<html"));
  CHECK(has(bytes_of(page), "wrap off"));
  REQUIRE(recorded.workshop.run({"told", "412 gone"}).exit == 0);
  const Ran again = recorded.workshop.run({"due", "--paper", page});
  CHECK(again.exit == 0);
  CHECK(has(again.out, page));
  CHECK(has(bytes_of(page), "Nothing is due."));
}

TEST_CASE("a sheet whose name ends in .pdf is one, and is made again in its place") {
  const OneCowRecorded recorded;
  const std::string page = recorded.workshop.file("prints/home.pdf");
  for (int time = 0; time < 2; ++time) {
    const Ran made = recorded.workshop.run({"sheet", "--out", page});
    CHECK(made.exit == 0);
    CHECK(made.err.empty());
    CHECK(has(made.out, page));
    CHECK(bytes_of(page).rfind("%PDF-", 0) == 0);
    CHECK(has(bytes_of(page), "%%EOF\n% Made by Evenclaw, which may replace it.\n"));
    CHECK_FALSE(std::filesystem::exists(page + ".part"));
  }
}

TEST_CASE("a sheet to print lies beside the others under the same name") {
  const OneCowRecorded recorded;
  const Ran page = recorded.workshop.run({"sheet"});
  const Ran print = recorded.workshop.run({"sheet", "--pdf"});
  CHECK(print.exit == 0);
  std::string name = print.out;
  REQUIRE(has(name, ".pdf"));
  name.replace(name.find(".pdf"), 4, ".html");
  CHECK(name == page.out);
}

TEST_CASE("what is due is printed to hang up as a PDF too") {
  const OneCowRecorded recorded;
  const std::string page = recorded.workshop.file("due.pdf");
  REQUIRE(recorded.workshop.run({"due", "--paper", page}).exit == 0);
  CHECK(bytes_of(page).rfind("%PDF-", 0) == 0);
}

TEST_CASE("a PDF for a place that cannot be written is refused and nothing is left there") {
  const OneCowRecorded recorded;
  write_bytes(recorded.workshop.file("taken"), "mine");
  const std::string page = recorded.workshop.file("taken/home.pdf");
  for (const Ran& refused : {recorded.workshop.run({"sheet", "--out", page}),
                             recorded.workshop.run({"due", "--paper", page})}) {
    CHECK(refused.exit == 3);
    CHECK(has(refused.err, page + " cannot be written"));
  }
  CHECK(bytes_of(recorded.workshop.file("taken")) == "mine");
}
