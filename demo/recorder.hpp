// Records the story of a farm through the use cases a person at the crush goes through.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "core/api/ports.hpp"
#include "core/api/reply.hpp"
#include "core/base/fields.hpp"
#include "core/base/result.hpp"
#include "demo/story.hpp"
#include "demo/story_device.hpp"

namespace evenclaw::demo {

struct FarmRecorded {
  HerdId herd;
  std::int32_t visits = 0;
  std::int32_t turns = 0;      // that were saved
  std::int32_t asked = 0;      // Stops and Asks that were shown
  std::int32_t refused = 0;    // lines nobody understood: none, unless something is amiss
  std::int32_t left_open = 0;  // points nobody settled before the visit was closed
};

/// Registers the herd and records visit after visit: since last time, turn after turn, the end. The
/// store must be ready (ready_business()), the people of the business must be in the directory;
/// `clock` is the one of `ports`. Faults of the store; "usage" when a herd of that name is there.
Result<FarmRecorded> record_farm(const Ports& ports, StoryClock& clock, const HerdStory& story);

/// Enters callers and writers into the directory of the business.
Outcome enter_people(const Ports& ports, const BusinessWanted& wanted);

}  // namespace evenclaw::demo
