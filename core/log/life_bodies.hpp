// The body of an entry that tells what happened to a cow apart from her feet.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/digest.hpp"
#include "core/base/id.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/life.hpp"

namespace evenclaw {

/// An event that was told and did not happen, or not on that day.
struct LifeEventNot {
  LifeEvent event = LifeEvent::calved;
  Day day;

  friend bool operator==(const LifeEventNot&, const LifeEventNot&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("event", &LifeEventNot::event, "what was told to have happened");
    visit("day", &LifeEventNot::day, "the day it was told of");
  }
};

/// All that one list tells of the life of one cow. Events told before stay; the same one told again
/// adds to it, and what is told otherwise holds.
struct LifeTold {
  static constexpr std::string_view kind = "life_told";
  static constexpr std::int32_t version = 1;
  CowId cow;
  std::vector<LifeEventTold> events;
  std::vector<LifeEventNot> not_so = {};
  std::optional<Digest> source = {};
  std::vector<TaskClosed> closes = {};  // by her leaving

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("cow", &LifeTold::cow, "cow");
    visit("events", &LifeTold::events, "what happened to her");
    visit("not_so", &LifeTold::not_so, "what was told before and did not happen");
    visit("source", &LifeTold::source, "SHA-256 of the file it was read from");
    visit("closes", &LifeTold::closes, "tasks her leaving closed");
  }
};

}  // namespace evenclaw
