// A correction of news that says more than what is put right, or is sure of too little: it is
// refused whole, and what was told stays as it was.
#pragma once

#include <string_view>

#include "core/api/recording/crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// True when the line was one and is refused, with the lines to say each by itself: "202 no, 203 LH
/// wrap off" and "213 no, still on, 214 block off" tell of a second cow, "202 no, 217?" and "104?
/// no, 202" are sure of no number, "220 LH no, RH" may leave the left foot as it was, "203 no, RH"
/// may be of either piece that was told of one foot, and of "202 no, 217" the news was told before
/// this visit. It is kept to ask, and nobody comes into the crush. Only of a cow of whom news was
/// told and who was not called at this visit.
Result<bool> refuse_mended_and_more(VisitBook& book, Crush& crush, std::string_view text);

}  // namespace evenclaw
