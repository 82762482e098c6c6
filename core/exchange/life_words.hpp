// The words in which herd programs tell what happened to a cow and why she left.
#pragma once

#include <optional>
#include <string_view>

#include "core/trade/life.hpp"

namespace evenclaw {

struct EventNamed {
  LifeEvent event = LifeEvent::calved;
  LeavingWay way = LeavingWay::not_told;
};

/// "Calving", "Trockenstellen", "verkauft"; nothing for a word that is not known. Letter case does
/// not matter. How she left is told by core/trade/leaving_words.hpp. English, German, Dutch and
/// French words of the trade, from memory.
std::optional<EventNamed> event_named(std::string_view words);

/// The reason a text names, by the words it holds: "lame, old" is of feet and legs. `other` for a
/// text that names none of them, `not_told` for none.
LeavingReason reason_named(std::string_view words);

}  // namespace evenclaw
