#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

const std::string visit = "\n---\n";
const Names third = {"ask third-visit-same-lesion LH"};
const Names twice = {"ask blocked-again-twice LH"};

std::string thrice(const std::string& words) {
  return "412\nLH " + words + visit + "412\nLH " + words + visit + "412\nLH " + words;
}

}  // namespace

TEST_CASE("the same lesion of the horn at the same place is asked about at the third visit") {
  CHECK(fired_on(thrice("outside sole ulcer")) == third);
  CHECK(fired_on(thrice("outside white line fissure heel, plain")) == third);
  CHECK(fired_on("412\nLH outside sole ulcer" + visit + "412\nLH outside sole ulcer").empty());
}

TEST_CASE("what many cows always have is not asked about at the third visit") {
  for (const char* ordinary : {"DD chronic behind", "outside bruise plain", "outside thin sole",
                               "outside heel erosion", "growth", "outside corkscrew"}) {
    CAPTURE(ordinary);
    CHECK(fired_on(thrice(ordinary)).empty());
  }
}

TEST_CASE("a lesion called slight today is on its way out") {
  CHECK(fired_on("412\nLH outside sole ulcer bad" + visit + "412\nLH outside sole ulcer plain" +
                 visit + "412\nLH outside sole ulcer slight")
            .empty());
}

TEST_CASE("a lesion that was gone in between is no third visit") {
  CHECK(fired_on("412\nLH outside sole ulcer" + visit + "412\nLH nothing found" + visit +
                 "412\nLH outside sole ulcer")
            .empty());
}

TEST_CASE("the same lesion at another place is another lesion") {
  CHECK(fired_on("412\nLH outside WLA heel" + visit + "412\nLH outside WLA heel" + visit +
                 "412\nLH outside WLA toe")
            .empty());
}

TEST_CASE("blocked again a second time is asked about, and only that") {
  CHECK(fired_on(thrice("outside sole ulcer; block again inside")) == twice);
  CHECK(fired_on("412\nLH outside sole ulcer; block on inside" + visit +
                 "412\nLH outside sole ulcer; block again inside")
            .empty());
}

TEST_CASE("a block again of more than four months ago is another story") {
  const ToldDay again = told_day("412\nLH outside sole ulcer; block again inside");
  for (const int days : {120, 121}) {
    CAPTURE(days);
    Past past;
    past.then(again.draft.turn, again.today - days);
    CHECK(fired(again.draft.turn, past.known, again.today) == (days == 120 ? twice : Names{}));
  }
}

TEST_CASE("the vet called settles what does not heal") {
  CHECK(fired_on(thrice("outside sole ulcer") + "; vet").empty());
  CHECK(fired_on(thrice("outside sole ulcer; block again inside") + "; vet").empty());
}

TEST_CASE("blocked again once is noted, with the vet or without") {
  const std::string again = "412\nLH outside sole ulcer; block again inside; pain relief given";
  CHECK(noted_on(again) == Names{"note blocked-again LH"});
  CHECK(noted_on(again + "; vet") == Names{"note blocked-again LH"});
  CHECK(noted_on("412\nLH outside sole ulcer; block on inside; pain relief given").empty());
}
