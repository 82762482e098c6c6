// The book of a visit: what is on record of it and of its herd, and what the lines add to it.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "core/api/journal.hpp"
#include "core/api/ports.hpp"
#include "core/api/recording/answers_due.hpp"
#include "core/api/recording/cow_finder.hpp"
#include "core/api/recording/last_line.hpp"
#include "core/api/recording/recorded_before.hpp"
#include "core/api/visits.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/check.hpp"

namespace evenclaw {

/// Every part of a recording reads and writes in the same book. It knows nothing of who stands in
/// the crush.
struct VisitBook {
  /// What the store holds already is read once, here.
  static Result<VisitBook> open(const Ports& ports, const Visit& visit, const Language& language);

  Ports ports;
  Visit visit;
  const Language& language;
  Journal journal;
  CowFinder finder;
  RecordedBefore before;
  MedicineRules medicine;
  std::optional<std::int32_t> long_minutes;  // in the crush; absent where none are noted
  SaidBy by;                                 // who calls and who types now
  AnswersDue answers = {};
  LastLine last_line = {};
  bool typed = true;  // line by line, with a person watching
};

/// What is known of a cow that stands in the crush before this turn: where it corrects another, as
/// if that one had never been.
Result<CowPast> past_of(const VisitBook& book, CowId cow, const RecordedTurn* corrected = nullptr);

/// Of a cow of whom news is told: she need not be here.
Result<CowPast> past_told(const VisitBook& book, CowId cow);

/// A number a reader gave stands for the cow who carries it. A turn of this visit that was recorded
/// under the bare number stays found by it, also when she has a herd number by now.
CowSaid who_was_read(const VisitBook& book, const CowSaid& said);

/// The line with every cow in it as the herd knows her. Faults of read_line().
Result<Line> read_in_herd(const VisitBook& book, std::string_view text, const LineContext& context);

/// As if she that was let out last were still in the crush.
LineContext after_let_out(const VisitBook& book);

}  // namespace evenclaw
