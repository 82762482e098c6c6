// Checks made while she is still in the crush.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/medicine_rules.hpp"
#include "core/trade/rows.hpp"
#include "core/trade/turn.hpp"
#include "core/trade/visit_so_far.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

/// How long she has stood in the crush so far, and from how many minutes on that is noted.
struct TimeInCrush {
  std::int32_t seconds = 0;
  std::int32_t long_minutes = 0;
};

/// What is known before this turn, of her and of the cows before her, as the rules need it.
struct CowPast {
  Rows rows;                                 // of this cow, all visits; empty when she is new
  std::vector<TurnRow> same_visit;           // her earlier turns in this same visit
  VisitSoFar so_far = {};                    // of the other cows of this visit
  MedicineRules medicine;                    // the herd's list, the law, and what was asked today
  std::optional<TimeInCrush> in_crush = {};  // where a time is known, and long ones are noted
  bool is_finding_last = false;              // the claw said last is of a finding, of no act
};

/// One rule as a row of a table: what it is called, how urgent it is, why it exists.
struct CheckRule {
  std::string_view slug;
  Rank rank;
  std::string_view why;
  std::string_view source;
  std::string_view fires_on;   // call lines of an example that fires, "\n" between lines; "---"
                               // parts visits, another number is another cow of the same caller
  std::string_view silent_on;  // and of one that must not
};

std::span<const CheckRule> all_checks();

/// The warnings a turn gives, most urgent first: every rule that fires, but one cause gives one
/// warning, the highest, and where a disease that must be reported is suspected nothing else is
/// said. Pass the turn settled, so that "rest fine" counts as nothing found on the feet it fills.
/// The turn need not be finished; `finished` adds the rules about what was not said (a block still
/// on from last time that nobody mentioned) and the notes. Answers are offered in the words of
/// `language`.
std::vector<Warning> check_turn(const Turn& turn, const CowPast& past, Day today, bool finished,
                                const Language& language);

/// The rule that asks how long milk and meat are held back.
inline constexpr std::string_view withdrawal_missing_rule = "withdrawal-missing";

/// The wrap or block from before that the warning asks about; nothing for any other warning.
std::optional<Fixture> fixture_asked_about(const Warning& warning);

}  // namespace evenclaw
