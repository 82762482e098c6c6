// The body of an entry about animals that were counted together.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/id.hpp"
#include "core/trade/batch.hpp"

namespace evenclaw {

/// Names no cow: who was apart has a turn of her own.
struct BatchRecorded {
  static constexpr std::string_view kind = "batch";
  static constexpr std::int32_t version = 1;
  VisitId visit;
  Batch batch;
  std::vector<std::string> words;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("visit", &BatchRecorded::visit, "visit");
    visit("batch", &BatchRecorded::batch, "what was counted");
    visit("words", &BatchRecorded::words, "the lines as said");
  }
};

}  // namespace evenclaw
