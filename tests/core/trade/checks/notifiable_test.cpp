#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

const Names stop_notifiable = {"stop notifiable-signs"};

}  // namespace

TEST_CASE("two signs of a notifiable disease on one cow are a stop") {
  CHECK(fired_on("412\nsore mouth; fever") == stop_notifiable);
  CHECK(fired_on("412\nLH blisters; drooling") == stop_notifiable);
  CHECK(fired_on("412\nLH blisters\nfever") == stop_notifiable);
}

TEST_CASE("one sign alone is none, also when it is said in two ways") {
  CHECK(fired_on("412\nfever").empty());
  CHECK(fired_on("412\nsore mouth; drooling").empty());
  CHECK(fired_on("412\nLH blisters").empty());
}

TEST_CASE("one sign is a stop when another cow of the visit had a sore mouth or blisters") {
  CHECK(fired_on("409\nsore mouth\n412\nfever") == stop_notifiable);
  CHECK(fired_on("409\nRF blisters\n412\nLH blisters") == stop_notifiable);
  CHECK(fired_on("409\nfever\n412\nfever").empty());
  CHECK(fired_on("409\nsore mouth\n412\nLH outside bruise").empty());
}

TEST_CASE("the vet called does not silence it: nobody may leave") {
  CHECK(fired_on("412\nsore mouth; fever; vet") == stop_notifiable);
}

TEST_CASE("nothing else is asked beside it") {
  CHECK(fired_on("412 lame LH\nLH nothing found; sore mouth; fever") == stop_notifiable);
  CHECK(fired_on("412 lame LH\nLH nothing found; sore mouth") ==
        Names{"stop lame-nothing-found LH"});
}
