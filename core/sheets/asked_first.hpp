// The rows of the box "ask first": each cow once, by number, with all that has to be asked of her.
#pragma once

#include <vector>

#include "core/paper/document.hpp"
#include "core/sheets/left_to_ask.hpp"
#include "core/sheets/visit_view.hpp"

namespace evenclaw {

/// Looks of a cow without a number, and who has her where she left: what stands first in a box.
std::vector<Runs> head_lines(const VisitView& view, CowId cow);

/// What is known of a cow whose ends are over and of whom something is left to ask.
struct OverOf {
  CowId cow;
  std::vector<Runs> lines;
};

struct AskedFirst {
  std::vector<NoticeItem> items;
  bool holds_not_stated = false;  // a withdrawal that nobody stated
  bool holds_words = false;       // words that tell of a medicine
};

/// Cows of whom the same has to be asked stand in one row, by the first of their numbers; few
/// numbers stand large. `left` is left_to_ask(view); the law's floor is no question, it is an end.
AskedFirst asked_first(const VisitView& view, const std::vector<LeftToAsk>& left,
                       std::vector<OverOf> over);

}  // namespace evenclaw
