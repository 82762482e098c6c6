// The crush: who stands in it, and what keeps the next words from being hers.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/api/recording/in_crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/result.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// What is held back means nothing while nobody stands there.
struct Crush {
  std::optional<InCrush> cow;
  // A refused line that may have named another cow, as said; "" once anybody is named.
  std::string held_back_by = {};

  /// Nobody stands there any more.
  void clear() {
    cow.reset();
    held_back_by.clear();
  }
};

/// As she was said; "" when nobody stands there.
std::string cow_in_crush(const VisitBook& book, const Crush& crush);

/// She is named once more. Without a number the same words said again after everything was called
/// of her are the next cow, unless they are the number in her ear.
bool stands_there(const VisitBook& book, const Crush& crush, const CowSaid& cow);

/// What was shown and asked of her since the last answer is not said. Somebody stands there.
void forget_answers_about_her(VisitBook& book, const Crush& crush);

/// She was only spoken of and never stood there.
void take_out(VisitBook& book, Crush& crush);

/// Answers why the line was not taken; "never mind" may drop it now.
void refuse(VisitBook& book, Crush& crush, std::string_view text, const Faults& faults);

}  // namespace evenclaw
