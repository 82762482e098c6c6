// "412 no, chronic": a cow that was let out earlier in the visit is mended by her number and the
// correction.
#pragma once

#include <optional>
#include <vector>

#include "core/trade/call_line/line.hpp"

namespace evenclaw {

struct LateMending {
  CowSaid cow;
  FootSet feet;                         // named behind her number; empty when none was
  std::vector<TurnClause> corrections;  // and what takes the place of what is taken back
  std::vector<TurnClause> more = {};    // called behind them: "412 no, right hind; spray"
};

/// A correction by word of mouth, or something taken back.
bool mends_or_takes_back(const TurnClause& clause);

/// Her number, perhaps one foot, then corrections, and perhaps what else is called of her; nothing
/// for any other line. Her number itself is not mended so: "412 no, 421" is one call.
std::optional<LateMending> late_mending(const Line& line);

/// The same of her, with her number or without; nothing when the line does not begin with
/// corrections.
std::optional<LateMending> mending_of(const CowSaid& cow, const Line& line);

/// Nothing but findings, acts and measures that are taken back.
bool takes_back_only(const LateMending& mending);

/// "412 LH raw" and nothing else: of a finding that was called before, or the lesion is missing.
bool completes_only(const LateMending& mending);

/// True when the line says something of a cow of whom nothing has been said: "412 LH nothing after
/// all".
bool is_a_call_of_its_own(const LateMending& mending);

/// One reading of a correction of a recorded turn: which foot it is held against, and what comes of
/// it.
struct WayToMend {
  std::optional<Foot> foot;  // none: the whole cow
  TurnDraft draft;
  std::optional<Action> act = {};  // "no, 5d": whose time is put right
};

/// Every way that gives another turn; empty when the correction fits nothing that was called.
/// Nobody remembers which foot was named last, nor what was said last with a time, so every foot of
/// which something was called is tried, and every time.
std::vector<WayToMend> ways_to_mend(const Turn& turn, const LateMending& mending);

/// Why what is called behind the corrections cannot be added, where they fit by themselves; nothing
/// where they fit nothing.
std::optional<Fault> why_no_more(const Turn& turn, const LateMending& mending);

}  // namespace evenclaw
