#include "core/trade/foot.hpp"

#include <doctest/doctest.h>

using namespace evenclaw;

TEST_CASE("a set of feet is written in the order LF RF LH RH") {
  CHECK(to_text(FootSet{Foot::rh, Foot::lf}) == "LF RH");
  CHECK(to_text(four_feet) == "LF RF LH RH");
  CHECK(to_text(FootSet{}).empty());
}

TEST_CASE("every set of feet reads back as written") {
  for (unsigned bits = 0; bits < 16; ++bits) {
    FootSet feet;
    for (const Foot foot : all_feet) {
      if ((bits >> static_cast<unsigned>(foot) & 1U) != 0) feet.add(foot);
    }
    const auto back = value_from_text(to_text(feet), std::type_identity<FootSet>{});
    REQUIRE(back.has_value());
    CHECK(*back == feet);
  }
}

TEST_CASE("a text that names no foot, one twice, or has stray spaces is no set of feet") {
  for (const std::string_view text : {"XX", "LH LH", "LH  RH", " LH", "LH ", "lh"}) {
    CAPTURE(text);
    CHECK_FALSE(value_from_text(text, std::type_identity<FootSet>{}).has_value());
  }
}

TEST_CASE("feet are added one by one and many at once, and taken away") {
  FootSet feet = hind_feet;
  feet.add(front_feet);
  CHECK(feet == four_feet);
  feet.remove(Foot::lf);
  CHECK(feet.count() == 3);
  CHECK_FALSE(feet.has(Foot::lf));
}

TEST_CASE("the other side of a foot is on the same end of the cow") {
  CHECK(other_side(Foot::lh) == Foot::rh);
  CHECK(other_side(Foot::rf) == Foot::lf);
  for (const Foot foot : all_feet) {
    CHECK(other_side(other_side(foot)) == foot);
    CHECK(hind_feet.has(other_side(foot)) == hind_feet.has(foot));
  }
}

TEST_CASE("the partner of a claw is the other claw of the foot") {
  CHECK(partner(Claw::outside) == Claw::inside);
  CHECK(partner(Claw::inside) == Claw::outside);
  CHECK(partner(Claw::both) == Claw::both);
  CHECK(partner(Claw::not_called) == Claw::not_called);
}
