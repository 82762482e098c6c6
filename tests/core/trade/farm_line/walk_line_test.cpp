#include "core/trade/farm_line/walk_line.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

namespace {

using W = WalkMeasure;

std::vector<WalkMeasured> read(std::string_view text, const Language& language = english()) {
  const auto line = read_walk_line(text, language, 1);
  REQUIRE_MESSAGE(line, text << ": " << line.faults().front().message);
  return line->measured;
}

Fault refused(std::string_view text) {
  const auto line = read_walk_line(text, english(), 2);
  REQUIRE_FALSE_MESSAGE(line, text);
  return line.faults().front();
}

WalkMeasured value(W measure, std::int32_t amount, std::optional<std::int32_t> looked_at = {}) {
  WalkMeasured measured;
  measured.measure = measure;
  measured.value = amount;
  measured.looked_at = looked_at;
  return measured;
}

WalkMeasured words(W measure, std::string said) {
  WalkMeasured measured;
  measured.measure = measure;
  measured.words = std::move(said);
  return measured;
}

using Measured = std::vector<WalkMeasured>;

}  // namespace

TEST_CASE("cubicles: width, length and how many were looked at") {
  CHECK(read("cubicles 115 wide 180 long, 10 looked at") ==
        Measured{value(W::cubicle_width, 1150, 10), value(W::cubicle_length, 1800, 10)});
  CHECK(read("cubicles: width 1.15 m, length 1800 mm") ==
        Measured{value(W::cubicle_width, 1150), value(W::cubicle_length, 1800)});
}

TEST_CASE("stocking is cows and cubicles, two counts") {
  CHECK(read("132 cows 120 cubicles") == Measured{value(W::cows, 132), value(W::cubicles, 120)});
}

TEST_CASE("a footbath in one breath: size, fill, product, strength, cows through") {
  CHECK(read("footbath 3 m by 50, 10 deep, copper 5 percent, 180 through") ==
        Measured{value(W::footbath_length, 3000), value(W::footbath_width, 500),
                 value(W::footbath_depth, 100), words(W::footbath_product, "copper"),
                 value(W::footbath_strength, 50), value(W::footbath_passes, 180)});
  CHECK(read("footbath 3 times a week") == Measured{value(W::footbath_times, 3)});
  CHECK(read("footbath twice a day") == Measured{value(W::footbath_times, 14)});
  CHECK(read("footbath 2.5%") == Measured{value(W::footbath_strength, 25)});
}

TEST_CASE("passages, turns, scraping, standing and the size of the cows") {
  CHECK(read("passage 3.2 m wide") == Measured{value(W::passage_width, 3200)});
  CHECK(read("turn 2.4 m") == Measured{value(W::turn_width, 2400)});
  CHECK(read("scraped every 2 h") == Measured{value(W::scraping_interval, 120)});
  CHECK(read("scraped 6 times a day") == Measured{value(W::scraping_interval, 240)});
  CHECK(read("standing 3 h a day") == Measured{value(W::standing_time, 180)});
  CHECK(read("cows 650 kg, 145 cm high") ==
        Measured{value(W::cow_weight, 650), value(W::cow_height, 1450)});
}

TEST_CASE("floor and grip are said in words, grip also as so many of so many") {
  CHECK(read("floor: grooved concrete") == Measured{words(W::floor, "grooved concrete")});
  CHECK(read("grip good") == Measured{words(W::grip, "good")});
  WalkMeasured slippery = words(W::grip, "slippery");
  slippery.fitting = 3;
  slippery.looked_at = 10;
  CHECK(read("slippery 3 of 10") == Measured{slippery});
  CHECK(read("grip 3 of 10 slippery") == Measured{slippery});
}

TEST_CASE("nobody looked is a value of its own and no number") {
  const Measured cubicles = read("cubicles not looked at");
  REQUIRE(cubicles.size() == 2);
  for (const WalkMeasured& measured : cubicles) {
    CHECK(measured.not_looked_at);
    CHECK_FALSE(measured.value.has_value());
  }
  CHECK(read("footbath depth not looked at").size() == 1);
  CHECK(read("grip not looked at").at(0).measure == W::grip);
}

TEST_CASE("what holds instead, and what was none") {
  const Measured mended = read("no, cubicles 116 wide");
  REQUIRE(mended.size() == 1);
  CHECK(mended[0].mends);
  const Measured scrapped = read("scrap cubicle width");
  REQUIRE(scrapped.size() == 1);
  CHECK(scrapped[0].scrapped);
  CHECK(scrapped[0].measure == W::cubicle_width);
  CHECK_FALSE(scrapped[0].mends);
}

TEST_CASE("a place is said on a line of its own") {
  const auto line = read_walk_line("place old shed", english(), 1);
  REQUIRE(line);
  CHECK(line->place == "old shed");
  CHECK(refused("cubicles 115 wide, place old shed").message == "a place stands at the beginning");
}

TEST_CASE("a bare number is centimetres where it can be, else its unit is asked for") {
  CHECK(refused("footbath 3 long").message == "\"3\" needs its unit");
  CHECK(refused("footbath 3 long").remedy == "say \"3 m\"");
  CHECK(refused("cubicles 1150 wide").remedy == "say it with m, cm or mm");
}

TEST_CASE("what nobody measures cannot be, and a number alone is of nothing") {
  CHECK(refused("cubicles 9 m wide").slug == "call-impossible");
  CHECK(refused("footbath copper 80 percent").slug == "call-impossible");
  CHECK(refused("115").message == "what was measured so?");
  CHECK(refused("115 wide").message == "of what is that the measure?");
  CHECK(refused("cubicles 180 by 115").message == "which of the two is the width?");
  CHECK(refused("slippery 12 of 10").slug == "call-impossible");
  CHECK(refused("10 looked at").message == "so many of what were looked at?");
}

TEST_CASE("no word of a line is dropped") {
  CHECK(refused("cubicles, 132 cows").message == "what of it?");
  CHECK(refused("cubicles").token == "cubicles");
  CHECK(refused("cubicles 115 wide and nice").token == "and");
  CHECK(refused("scraped every 2").message == "hours or minutes?");
  CHECK(refused("3 times a week").column == 1);
}

TEST_CASE("the same lines are called in German, with a comma as the point") {
  CHECK(read("Liegeboxen 1,15 m breit", german()) == Measured{value(W::cubicle_width, 1150)});
  CHECK(read("132 K\xC3\xBC"
             "he 120 Liegeboxen",
             german()) == Measured{value(W::cows, 132), value(W::cubicles, 120)});
  CHECK(read("Klauenbad Kupfer 5 Prozent", german()) ==
        Measured{words(W::footbath_product, "Kupfer"), value(W::footbath_strength, 50)});
}

}  // namespace evenclaw
