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

}  // namespace evenclaw::test
