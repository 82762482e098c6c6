// How a cow has to be handled in the crush: what she is known to do there, or to need.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/enum_words.hpp"
#include "core/trade/action.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

enum class Handling { kicks, jumps, lies_down, needs_hoist };

template <>
struct EnumWords<Handling> {
  static constexpr EnumWord<Handling> table[] = {{Handling::kicks, "kicks"},
                                                 {Handling::jumps, "jumps"},
                                                 {Handling::lies_down, "lies_down"},
                                                 {Handling::needs_hoist, "needs_hoist"}};
};

struct HandlingSaid {
  Handling what = Handling::kicks;
  bool holds = true;  // false when it was said to be over

  friend bool operator==(const HandlingSaid&, const HandlingSaid&) = default;
};

/// What an act says of how she is handled; nothing for any other act.
std::optional<HandlingSaid> handling_said(ActionKind kind);

/// The same of news.
std::optional<HandlingSaid> handling_said(News news);

/// The news that tells what the act says; nothing for an act that says nothing of it.
std::optional<News> news_of(ActionKind kind);

/// The act by which it is said to hold.
ActionKind said_as(Handling what);

struct HandlingRow;

/// What holds still, in the order of the enum; `rows` are of one cow.
std::vector<Handling> standing_in(const std::vector<HandlingRow>& rows);

/// "kicks, needs the hoist"; "" for none.
std::string spoken(const std::vector<Handling>& what);

}  // namespace evenclaw
