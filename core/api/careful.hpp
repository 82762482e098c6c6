// Cows to be careful with in the crush, told before they come in.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/handling_rows.hpp"

namespace evenclaw {

struct CarefulWith {
  HerdId herd;
  std::string herd_name;
  CowId cow;
  std::string cow_said;
  std::string words;  // "kicks, needs the hoist"
  Day last_said;      // of all of it

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &CarefulWith::herd, "herd");
    visit("herd_name", &CarefulWith::herd_name, "its name");
    visit("cow", &CarefulWith::cow, "cow");
    visit("cow_said", &CarefulWith::cow_said, "her number, or what she looks like");
    visit("words", &CarefulWith::words, "what she does in the crush, or needs there");
    visit("last_said", &CarefulWith::last_said, "day anything of it was said last");
  }
};

/// Of one herd or of all: every cow that is still here and of whom something holds, by the name of
/// her herd and her number. Whether anything is due of her plays no part.
Result<std::vector<CarefulWith>> careful_with(Store& store, std::optional<HerdId> herd);

/// "kicks, needs the hoist (13 Oct)"; "" when nothing holds. `rows` are of one cow.
std::string told_of_handling(const std::vector<HandlingRow>& rows, Day today);

}  // namespace evenclaw
