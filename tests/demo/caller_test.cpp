#include "demo/caller.hpp"

#include <doctest/doctest.h>

#include "demo/parameters.hpp"

namespace evenclaw::demo {

TEST_CASE("a usual caller sees bad lesions more often than slight ones, as the table says") {
  const Caller usual{.name = "Nobody"};
  CHECK(chance_to_see(usual, Degree::slight, 0) ==
        doctest::Approx(value_of(Parameter::sees_slight)));
  CHECK(chance_to_see(usual, Degree::bad, 0) == doctest::Approx(value_of(Parameter::sees_bad)));
  CHECK(chance_to_see(usual, DdStage::m4, 0) < chance_to_see(usual, DdStage::m2, 0));
  CHECK(chance_to_see(usual, DdStage::m0, 0) == 0.0);
}

TEST_CASE("one caller drifts: she sees more of the slight ones year by year, not of the bad") {
  const auto callers = invent_callers(1, {}, 104, 156);
  const Caller& drifting = callers.at(0);
  CHECK(chance_to_see(drifting, Degree::slight, 3) > chance_to_see(drifting, Degree::slight, 0));
  CHECK(chance_to_see(drifting, Degree::bad, 3) == chance_to_see(drifting, Degree::bad, 0));
  Complications steady;
  steady.leave_out(Complication::caller_drifts);
  const auto others = invent_callers(1, steady, 104, 156);
  CHECK(chance_to_see(others[0], Degree::slight, 3) == chance_to_see(others[0], Degree::slight, 0));
}

TEST_CASE("one caller is replaced in the middle by one who sees otherwise") {
  const auto callers = invent_callers(1, {}, 104, 156);
  const Caller& before = caller_of(callers, 1, 104 + 77);
  const Caller& after = caller_of(callers, 1, 104 + 78);
  CHECK(before.name != after.name);
  CHECK(before.keenness != after.keenness);
  Complications same;
  same.leave_out(Complication::caller_replaced);
  const auto kept = invent_callers(1, same, 104, 156);
  CHECK(caller_of(kept, 1, 104).name == caller_of(kept, 1, 104 + 155).name);
}

TEST_CASE("one crew leaves sound feet unsaid, unless that is left out") {
  CHECK(!caller_of(invent_callers(1, {}, 0, 10), 2, 5).writes_sound_feet);
  Complications written;
  written.leave_out(Complication::sound_feet_not_written);
  CHECK(caller_of(invent_callers(1, written, 0, 10), 2, 5).writes_sound_feet);
}

TEST_CASE("before the records begin the first of a crew calls") {
  CHECK(caller_of(invent_callers(1, {}, 104, 156), 1, 3).name == "Tewes");
}

TEST_CASE("a stage is called by its number or in words, never one for the other") {
  const Caller by_number{.name = "Nobody", .says_stage_by_number = true};
  const Caller in_words{.name = "Nobody"};
  CHECK(as_called(by_number, DdStage::m4_1) == DdStage::m4_1);
  CHECK(as_called(in_words, DdStage::m2) == DdStage::raw);
  CHECK(as_called(in_words, DdStage::m3) == DdStage::scab);
  CHECK(as_called(in_words, DdStage::m4) == DdStage::chronic);
}

}  // namespace evenclaw::demo
