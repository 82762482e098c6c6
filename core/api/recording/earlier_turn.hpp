// A cow that is called again in the same visit: what was asked about her is answered so.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/api/recording/in_crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/check.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// That turn is her first call, whoever it is on record of.
Outcome go_on_with(const VisitBook& book, InCrush& cow, const RecordedTurn& first);

/// Her last turn of this visit in which something stayed open; nothing when there is none.
Result<std::optional<EarlierTurn>> left_open_earlier(const VisitBook& book, const CowPast& past);

/// "111 or 117" once more, where one cow was called so at this visit and something of her was left
/// open: it is she, unless she is called in a way that contradicts it. Nothing when she is another.
Result<std::optional<CowId>> left_in_doubt(const VisitBook& book, const CowSaid& cow);

/// She was recorded so before, as going on with an earlier turn.
Outcome stand_as_recorded(const VisitBook& book, InCrush& cow, const RecordedTurn& recorded);

/// News of her changed what is known of her, and with it perhaps what is still open.
Outcome look_again_at_past(const VisitBook& book, InCrush& cow);

/// Where something stayed open in several calls of hers, this one goes on with the one it fits.
Outcome go_on_with_the_call_that_fits(const VisitBook& book, InCrush& cow);

/// What both calls make together; nothing when there was no other, or when they contradict.
std::optional<Turn> whole_turn(const VisitBook& book, const InCrush& cow);

/// The lines of both, or of this one alone.
std::vector<std::string> whole_words(const VisitBook& book, const InCrush& cow);

/// What was shown and answered of the call she stands there for, or of the one it goes on with.
WarningLedger& ledger_of(const VisitBook& book, InCrush& cow);

}  // namespace evenclaw
