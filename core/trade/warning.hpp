// What a check says, how urgently, and what can be answered.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/enum_words.hpp"
#include "core/trade/foot.hpp"

namespace evenclaw {

/// Stop: welfare or law, sound and flash. Ask: one line, one tap. Note: on the sheet.
enum class Rank { note, ask, stop };

template <>
struct EnumWords<Rank> {
  static constexpr EnumWord<Rank> table[] = {
      {Rank::note, "note"}, {Rank::ask, "ask"}, {Rank::stop, "stop"}};
};

struct Warning {
  std::string rule;  // slug, stable
  Rank rank = Rank::note;
  std::optional<Foot> foot;
  Claw claw = Claw::none;
  std::string words;                 // at most 90 characters
  std::vector<std::string> answers;  // as call line words: "wrap still on", "go ahead"

  friend bool operator==(const Warning&, const Warning&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("rule", &Warning::rule, "the check that fired");
    visit("rank", &Warning::rank, "stop, ask or note");
    visit("foot", &Warning::foot, "on which foot, if one");
    visit("claw", &Warning::claw, "on which claw, if one");
    visit("words", &Warning::words, "as shown");
    visit("answers", &Warning::answers, "what could be answered");
  }
};

/// The decision of who goes ahead, however that is said: a key of the record, the same in every
/// language.
inline constexpr std::string_view went_ahead = "go ahead";

/// A warning with what was decided: `went_ahead`, the words that settled it, or "" when nobody
/// answered.
struct WarningShown {
  Warning warning;
  std::string decision;

  friend bool operator==(const WarningShown&, const WarningShown&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("warning", &WarningShown::warning, "as it was shown");
    visit("decision", &WarningShown::decision, "what was decided, empty when unanswered");
  }
};

}  // namespace evenclaw
