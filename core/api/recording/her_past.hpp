// A line that leans on what is known of her, in clauses that do not.
#pragma once

#include <string>
#include <vector>

#include "core/api/recording/visit_book.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/known_of_her.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

struct PlainLine {
  Line line;
  std::vector<std::string> learned;  // what of her past was taken, to be shown at once
  FootSet unnamed;  // spoken of only because of it: "rest fine" speaks of them all the same
};

/// Whether the line means something only beside her past, or is compared with it.
bool leans_on_her_past(const Line& line);

/// The line as it is added to `so_far`. A wrap or block from before of which no foot was said is on
/// the foot that carries one, when that is one and nothing more is said of a foot; what follows is
/// of no foot again. Faults of put_plainly().
Result<PlainLine> plain_line(const Line& line, TurnDraft so_far, const KnownPast& past,
                             const Language& language);

/// The same of a cow in this recording, `own` being her past. Of one without a number who is known
/// by her words alone, it is the past of the one cow who was called so at an earlier visit, and
/// that is told; whether they are one is asked when the visit closes. Wraps and blocks are those of
/// her own.
Result<PlainLine> plain_line_of(const VisitBook& book, const Line& line, TurnDraft so_far,
                                const CowPast& own);

}  // namespace evenclaw
