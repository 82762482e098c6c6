// Rows of the picture about how a cow has to be handled.
#pragma once

#include <optional>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/trade/handling.hpp"

namespace evenclaw {

/// Known of her from the first time it was said, until it is said to be over. Said again after that
/// it holds anew.
struct HandlingRow {
  static constexpr std::string_view table = "handling";
  static constexpr int key_columns = 3;
  HerdId herd;
  CowId cow;
  Handling what = Handling::kicks;
  Day since;
  Day last_said;
  std::optional<Day> over_on;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &HandlingRow::herd, "herd");
    visit("cow", &HandlingRow::cow, "cow");
    visit("what", &HandlingRow::what, "what she does in the crush, or needs there");
    visit("since", &HandlingRow::since, "day it was first said, since it was over last");
    visit("last_said", &HandlingRow::last_said, "day it was said last");
    visit("over_on", &HandlingRow::over_on, "day it was said to be over; absent while it holds");
  }
};

}  // namespace evenclaw
