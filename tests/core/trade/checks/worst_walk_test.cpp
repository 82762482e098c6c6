#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

TEST_CASE("the worst score with nothing found on any foot is a stop") {
  CHECK(fired_on("412 lame; mobility 3 of 3; nothing found") ==
        Names{"stop worst-walk-needs-the-vet"});
  CHECK(fired_on("412 lame; mobility 5 of 5; nothing found; see again 5d; to straw") ==
        Names{"stop worst-walk-needs-the-vet"});
}

TEST_CASE("where the lame leg was named its own stop has said it already") {
  CHECK(fired_on("412 lame LH; mobility 5 of 5; nothing found; near the parlour; see again 5d") ==
        Names{"stop worst-walk-needs-the-vet"});
  CHECK(fired_on("412 lame LH; mobility 5 of 5; nothing found; near the parlour") ==
        Names{"stop lame-nothing-found LH", "ask worst-walk-nursing"});
}

TEST_CASE("a score that is not the worst of its scale needs neither vet nor nursing") {
  CHECK(fired_on("412; mobility 2 of 3; nothing found").empty());
  CHECK(fired_on("412; mobility 4 of 5; nothing found").empty());
  CHECK(fired_on("412; mobility 3 of 5; nothing found").empty());
}

TEST_CASE("the worst score with a cause found is nursed, not sent to the vet") {
  CHECK(fired_on("412 lame LH; mobility 3 of 3\nLH outside sole ulcer") ==
        Names{"ask worst-walk-nursing"});
}

TEST_CASE("the worst score with a swelling is a stop") {
  CHECK(fired_on("412 lame LH; mobility 3 of 3\nLH swelling") ==
        Names{"stop worst-walk-needs-the-vet"});
}

TEST_CASE("as bad as at the visit before is a stop, on the same scale only") {
  const std::string now = "\n---\n412; mobility 3 of 3\nLH outside sole ulcer";
  CHECK(fired_on("412; mobility 3 of 3\nLH outside sole ulcer" + now) ==
        Names{"stop worst-walk-needs-the-vet"});
  CHECK(fired_on("412; mobility 2 of 3\nLH outside sole ulcer" + now) ==
        Names{"ask worst-walk-nursing"});
  CHECK(fired_on("412; mobility 5 of 5\nLH outside sole ulcer" + now) ==
        Names{"ask worst-walk-nursing"});
}

TEST_CASE("as bad as more than six weeks ago is another story") {
  const ToldDay bad = told_day("412; mobility 3 of 3\nLH DD raw behind");
  for (const int days : {42, 43}) {
    CAPTURE(days);
    Past past;
    past.then(bad.draft.turn, bad.today - days);
    const Names expected = {days == 42 ? "stop worst-walk-needs-the-vet"
                                       : "ask worst-walk-nursing"};
    CHECK(fired(bad.draft.turn, past.known, bad.today) == expected);
  }
}

TEST_CASE("the vet called settles the stop and leaves the nursing to be asked about") {
  CHECK(fired_on("412 lame; mobility 3 of 3; vet; nothing found") ==
        Names{"ask worst-walk-nursing"});
}

TEST_CASE("nursing is straw or a short way, and a look within a week") {
  const std::string lame = "412 lame LH; mobility 3 of 3\nLH outside sole ulcer\n";
  CHECK(fired_on(lame + "to straw; see again 7d").empty());
  CHECK(fired_on(lame + "near the parlour; watch her walk in 5d").empty());
  CHECK(told_day(lame + "to straw; see again 28d").warnings()[0].words ==
        "Walks 3 of 3: a look within a week?");
  CHECK(told_day(lame + "see again 7d").warnings()[0].words ==
        "Walks 3 of 3: straw, or near the parlour?");
  CHECK(told_day(lame).warnings()[0].words ==
        "Walks 3 of 3: straw, or near the parlour, and a look within a week?");
}

TEST_CASE("nothing of it is asked before all of her was said, nor of a cow not finished") {
  const ToldDay day = told_day("412 lame; mobility 3 of 3\nLH nothing found");
  CHECK(fired(day.draft.turn, {}, day.today, false).empty());
  CHECK(fired_on("412 lame; mobility 3 of 3; not done").empty());
}
