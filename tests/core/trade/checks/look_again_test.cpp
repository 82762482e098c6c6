#include <doctest/doctest.h>

#include "tests/core/trade/told_lines.hpp"

using namespace evenclaw;
using namespace evenclaw::told;

namespace {

const Names block = {"note block-past-four-weeks LH"};
const Names raw = {"note raw-again RH"};
const Names thin = {"note thin-sole LH"};

/// What is noted of `now` when `before` was called so many days ago.
Names noted_after(int days, const std::string& before, const std::string& now) {
  const ToldDay then = told_day("412\n" + before);
  const ToldDay today = told_day("412\n" + now);
  Past past;
  past.then(settled(then.draft.turn, four_feet), today.today - days);
  return noted(today.draft.turn, past.known, today.today);
}

}  // namespace

TEST_CASE("a block that stays on four weeks or longer is noted") {
  const std::string before = "LH outside sole ulcer; block on inside";
  CHECK(noted_after(28, before, "LH block still on") == block);
  CHECK(noted_after(28, before, "LH block refitted inside, off in 14d") == block);
  CHECK(noted_after(27, before, "LH block still on").empty());
}

TEST_CASE("a block taken off is not noted, however long it was on") {
  CHECK(noted_after(60, "LH outside sole ulcer; block on inside", "LH block taken off").empty());
}

TEST_CASE("DD that is raw where it was treated is noted when nobody plans another look") {
  const std::string before = "RH DD raw behind; spray";
  CHECK(noted_after(28, before, "RH DD M2 behind; spray") == raw);
  CHECK(noted_after(28, before, "RH DD raw behind; spray; see again 14d").empty());
  CHECK(noted_after(28, before, "RH DD chronic behind").empty());
  CHECK(noted_after(28, before, "LH DD raw behind").empty());
}

TEST_CASE("within a week a sore has had no time, after two months it is a new one") {
  const std::string before = "RH DD raw behind; spray";
  CHECK(noted_after(6, before, "RH DD raw behind").empty());
  CHECK(noted_after(7, before, "RH DD raw behind") == raw);
  CHECK(noted_after(60, before, "RH DD raw behind") == raw);
  CHECK(noted_after(61, before, "RH DD raw behind").empty());
}

TEST_CASE("a spray on something else than DD tells nothing of DD that is raw today") {
  CHECK(noted_after(28, "RH injury; spray", "RH DD raw behind").empty());
}

TEST_CASE("thin soles are noted once for her") {
  CHECK(noted_on("412\nboth hinds outside thin sole toe") == thin);
  CHECK(noted_on("412\nLH outside bruise").empty());
}

TEST_CASE("a thin sole is noted with every foot it is on") {
  const struct {
    const char* called;
    const char* feet;
  } rows[] = {{"LH thin sole toe", "left hind"},
              {"both hinds thin sole toe", "both hinds"},
              {"LF thin sole toe\nRH thin sole toe", "LF RH"}};

  for (const auto& row : rows) {
    const ToldDay today = told_day(std::string("412\n") + row.called);
    const std::vector<Warning> noted =
        check_turn(today.draft.turn, {}, today.today, true, english());
    const bool names_feet = std::any_of(noted.begin(), noted.end(), [&](const Warning& warning) {
      return warning.words.rfind(std::string("Thin sole (") + row.feet + "):", 0) == 0;
    });
    CHECK_MESSAGE(names_feet, row.called);
  }
}

TEST_CASE(
    "a walk watched in the week after the trim is noted, later and of the worst walk it is not") {
  const Names early = {"note walk-watched-early"};
  CHECK(noted_on("412\nLH outside bruise; watch her walk in 6d") == early);
  CHECK(noted_on("412\nLH outside bruise; watch her walk tomorrow") == early);
  CHECK(noted_on("412\nLH outside bruise; watch her walk in 7d").empty());
  CHECK(noted_on("412; mobility 3 of 3; to straw; vet\nLH outside bruise; watch her walk in 2d")
            .empty());
}
