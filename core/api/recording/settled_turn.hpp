// The turn of a cow in the crush as it would be recorded if she were let out now.
#pragma once

#include "core/api/recording/in_crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// The feet of which something was said that nobody could read, and nothing else since.
FootSet left_open(const VisitBook& book, const InCrush& cow);

/// "Rest fine" never speaks of feet an earlier turn of this visit has spoken of, nor of a foot that
/// was named in a line nobody could read: that one stays open. A foot it was said of stays fine
/// when it is named later only to tell of its wrap or block.
Turn as_settled(const VisitBook& book, const InCrush& cow);

/// Everything today's feet can give was said, so what is missing now was forgotten.
bool looks_finished(const VisitBook& book, const InCrush& cow);

}  // namespace evenclaw
