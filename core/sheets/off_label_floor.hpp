// What was given off label and held back for less than the law asks: until when, and what is said.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/sheets/visit_view.hpp"
#include "core/sheets/withdrawal_said.hpp"

namespace evenclaw {

/// Of a product as it was listed, by the floors of core/trade/medicine_rules.hpp. Nothing when it
/// is labelled for this use, or it is not known whether it is.
LeastNotReached least_not_reached(const Product& product, std::string_view country);

/// The ends the law's floor sets (core/trade/medicine_rules.hpp names its source), each only where
/// what is stated and told ends sooner and the floor has not passed on the day of printing.
struct FloorEnds {
  std::optional<MilkEnd> milk;
  std::optional<Day> meat;

  [[nodiscard]] bool is_open() const { return milk || meat; }
};

/// Counted from the day it was given. `acts` are all of hers and `said` what they tell: who told a
/// later end by mouth moved it on.
FloorEnds floor_ends(const VisitView& view, const std::vector<const ActionRow*>& acts,
                     const std::vector<SaidOf>& said, const ActionRow& row);

/// The later ends of all that is hers.
FloorEnds floor_ends_of(const VisitView& view, const std::vector<const ActionRow*>& acts);

/// The act with the later of its ends and the law's floor, whether that has passed or not.
ActionRow with_lawful_ends(const VisitView& view, const std::vector<const ActionRow*>& acts,
                           const std::vector<SaidOf>& said, const ActionRow& row);

/// "milk held back up to and with Tue 1 Dec": where the law's floor ends later than what is told
/// for that half, by the rule of its task; "" where it does not.
std::string later_floor(const VisitView& view, const TaskRow& told, const FloorEnds& floor);

/// "meat held back up to and with Tue 22 Dec": the floor's end of milk_withheld or meat_withheld;
/// that half must have one.
std::string floor_end(const VisitView& view, ActionKind of, const FloorEnds& floor);

/// "off label the law's floor is at least 28 days meat (meat held back up to
/// and with Tue 22 Dec)"; "" when none is open.
std::string floor_words(const VisitView& view, const ActionRow& row, const FloorEnds& ends);

/// What is stated of it, and the floor behind it where one is open.
std::string with_floor_told(const VisitView& view, const std::vector<const ActionRow*>& acts,
                            const ActionRow& row, const std::string& stated);

}  // namespace evenclaw
