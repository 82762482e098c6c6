// The finding, act or measure being spoken of, and the details that are added to it word by word.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/base/result.hpp"
#include "core/trade/call_line/term.hpp"
#include "core/trade/call_line/turn_clause.hpp"

namespace evenclaw {

/// Why something was not taken, and what could be said instead.
struct Refusal {
  std::string slug;
  std::string message;
  std::string remedy = {};
};

Refusal not_understood(std::string message, std::string remedy = {});
Refusal impossible(std::string message, std::string remedy = {});

/// The same as a fault, not placed in its line yet.
Fault fault_of(const Refusal& refusal);

/// The words of a quoted or free text term, without the quotes.
std::string words_in(const Term& term);

/// A finding with nothing but its lesion; an act or measure with nothing but its kind. The claw is
/// "none" where the thing has no claw, else "not called".
FindingSaid new_finding(Lesion lesion);
ActionSaid new_act(ActionKind kind);
MeasureSaid new_measure(MeasureKind kind);

/// Adds a claw, place, zone, degree, stage, DD in it or quoted words. On refusal the item is
/// unchanged.
std::optional<Refusal> add_detail(TurnClause& item, const Term& detail);

/// Adds the time to an act; `days` or a weekday.
std::optional<Refusal> add_time(TurnClause& item, const TimeSaid& when);

/// Whether a claw could still be added, so that it is unclear whom a claw said now belongs to.
bool awaits_claw(const TurnClause& item);
/// Whether "off Thu" can follow.
bool awaits_off(const TurnClause& item);

}  // namespace evenclaw
