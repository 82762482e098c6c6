// "412 just the fronts" of a cow who comes into the crush a second time: her hinds, lifted when she
// was called first, stay as they were called.
#pragma once

#include <string_view>

#include "core/api/recording/crush.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/turn.hpp"

namespace evenclaw {

/// The feet something was found or done on, or that nothing was found on.
FootSet lifted_feet(const Turn& turn);

/// The line without what "just the fronts" says of feet in `lifted`. "Not lifted" said in as many
/// words stays: that contradicts, and is asked about.
Line with_lifted_kept(Line line, std::string_view text, const FootSet& lifted,
                      const Language& language);

/// The feet of the cow the line names, or of her in the crush, that were lifted at this visit.
FootSet lifted_at_this_visit(const VisitBook& book, const Crush& crush, const Line& line);

}  // namespace evenclaw
