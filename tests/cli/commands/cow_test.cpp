// Registering a cow, telling more of her, and finding her by what identifies her.
#include <doctest/doctest.h>

#include "tests/cli/one_cow.hpp"

namespace evenclaw::test {

TEST_CASE("A registered cow is shown with tag, electronic number, name and facts") {
  const OneCowRecorded home;
  REQUIRE(home.workshop
              .run({"cow", "register", "414", "--tag", "UK 123450 600001", "--eid",
                    "826 000000600001", "--alias", "Bella", "--breed", "Jersey", "--born",
                    "2024-03-01", "--is", "heifer", "--weight", "380 kg"})
              .exit == 0);
  const Ran shown = home.workshop.run({"show", "cow", "Bella"});
  CHECK(shown.exit == 0);
  CHECK(has(shown.out, "Cow 414, Home Farm"));
  CHECK(has(shown.out, "  ear tag UK 123450 600001, electronic number 826000000600001\n"));
  CHECK(has(shown.out, "  goes by Bella\n"));
  CHECK(has(shown.out, "  Jersey, heifer on "));
  CHECK(has(shown.out, "born 2024-03-01, under 400 kg\n"));
}

TEST_CASE("What is told of her calving is shown, and her routine trim is due from it") {
  const OneCowRecorded home;
  REQUIRE(
      home.workshop
          .run({"cow", "facts", "412", "--calved", "2024-01-10", "--lactation", "3", "--dry-off",
                "2024-11-20", "--due-to-calve", "2025-01-20", "--from", "2024-02-01"})
          .exit == 0);
  CHECK(has(home.workshop.run({"show", "cow", "412"}).out,
            "  calved 2024-01-10, lactation 3, drying off 2024-11-20, due to calve 2025-01-20\n"));
  const Ran due = home.workshop.run({"due", "--today", "2024-05-01"});
  CHECK(has(due.out, "412    routine trim due: 60 to 150 days in milk\n"));
  CHECK(has(due.out, "When routine trims are due\n  60 to 150 days in milk: agproud.com 28241"));
}

TEST_CASE("A cow that is known gets a tag and is found by it wherever a number is taken") {
  const OneCowRecorded home;
  REQUIRE(home.workshop.run({"cow", "facts", "412", "--tag", "DE 0312312345"}).exit == 0);
  CHECK(has(home.workshop.run({"show", "cow", "DE 312312345"}).out, "Cow 412"));
  CHECK(home.workshop.run({"task", "DE0312312345"}).exit == 0);
  CHECK(home.workshop.run({"cow", "left", "DE0312312345", "--why", "sold"}).exit == 0);
  CHECK(has(home.workshop.run({"show", "cow", "412"}).out, "left"));
}

TEST_CASE("A cow without a herd number is registered by her tag") {
  const OneCowRecorded home;
  CHECK(home.workshop.run({"cow", "register", "-", "--tag", "DE 0312312345"}).out ==
        "She is registered.\n");
  CHECK(has(home.workshop.run({"show", "cow", "DE0312312345"}).out, "Cow DE0312312345"));
}

TEST_CASE("A tag with a wrong digit is refused with its place") {
  const OneCowRecorded home;
  const Ran refused = home.workshop.run({"cow", "facts", "412", "--tag", "UK 123456 600001"});
  CHECK(refused.exit != 0);
  CHECK(has(refused.err, "column 11: Its check digit is 6"));
  CHECK(has(refused.err, "(tag-unreadable)"));
}

TEST_CASE("A number that is carried already is registered only by who is sure") {
  const OneCowRecorded home;
  CHECK(home.workshop.run({"cow", "register", "412"}).exit == 1);
  CHECK(home.workshop.run({"cow", "register", "412", "--sure"}).exit == 0);
}

TEST_CASE("A weight or a kind of cow nobody knows is refused") {
  const OneCowRecorded home;
  CHECK(home.workshop.run({"cow", "facts", "412", "--weight", "heavy"}).exit == 2);
  CHECK(home.workshop.run({"cow", "facts", "412", "--is", "bull"}).exit == 2);
  CHECK(home.workshop.run({"cow", "facts", "412", "--lactation", "0"}).exit == 2);
  CHECK(home.workshop.run({"cow", "facts", "412", "--calved", "spring"}).exit == 2);
  CHECK(home.workshop.run({"cow", "facts", "412"}).exit == 2);
}

TEST_CASE("The list of a spreadsheet is taken over, and the same file again changes nothing") {
  const OneCowRecorded home;
  const std::string list = home.workshop.file("herd.csv");
  write_bytes(list,
              "\xef\xbb\xbfnumber;ear tag;eid;breed;milk\r\n"
              "0413;UK 123450 600001;826000000600001;\"Jersey; small\";9000\r\n"
              "412;;;Holstein;8000\r\n");
  const Ran taken = home.workshop.run({"cow", "list", list});
  CHECK(taken.exit == 0);
  CHECK(taken.out ==
        "2 cows on the list: 1 new, 1 known with something new, 0 known as listed\n"
        "Columns that were not read: milk\n");
  CHECK(has(home.workshop.run({"show", "cow", "413"}).out, "  Jersey; small\n"));
  CHECK(has(home.workshop.run({"show", "cow", "412"}).out, "  Holstein\n"));
  const std::string log = home.workshop.run({"log"}).out;
  CHECK(has(home.workshop.run({"cow", "list", list}).out, "0 new, 0 known with something new, 2"));
  CHECK(home.workshop.run({"log"}).out == log);
}

TEST_CASE("A list with a bad line is told line by line, and nothing of it is taken over") {
  const OneCowRecorded home;
  const std::string list = home.workshop.file("herd.csv");
  write_bytes(list, "number,calved\n413,2026-01-05\n414,yesterday\n415\n");
  const Ran refused = home.workshop.run({"cow", "list", list});
  CHECK(refused.exit == 1);
  CHECK(has(refused.err, "line 3: \"yesterday\" under \"calved\" is no day\n  Write it as"));
  CHECK(has(refused.err, "line 4, column 2: the line has 1 cells and the head has 2: 415\n"));
  CHECK(home.workshop.run({"show", "cow", "413"}).exit != 0);
}

}  // namespace evenclaw::test
