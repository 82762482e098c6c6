// The lines of a mobility scoring: "scale 0 to 3", "412 2", "413 3 LH", "40 at 0", "no, 412 3".
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/mobility_scoring.hpp"

namespace evenclaw {

struct ScaleSaid {
  MobilityScale scale = MobilityScale::zero_to_three;
  friend bool operator==(const ScaleSaid&, const ScaleSaid&) = default;
};

struct PresentSaid {
  std::int32_t animals = 0;
  friend bool operator==(const PresentSaid&, const PresentSaid&) = default;
};

struct WatchedSaid {
  std::string place;
  friend bool operator==(const WatchedSaid&, const WatchedSaid&) = default;
};

/// What follows is of these animals: a scoring of its own.
struct AnimalsSaid {
  std::string animals;
  friend bool operator==(const AnimalsSaid&, const AnimalsSaid&) = default;
};

using ScoringClause =
    std::variant<ScaleSaid, PresentSaid, WatchedSaid, AnimalsSaid, CowScored, CountScored>;

struct ScoringLine {
  std::vector<ScoringClause> clauses;  // empty for a blank line or a comment (#)
};

/// Reads one line. It is understood whole or refused whole: nothing is guessed, no word dropped.
/// `scale` is the one said before; without one a score is refused with what to say. Faults
/// "call-not-understood", "call-impossible" for a score outside its scale, "line-too-long"; each
/// with its column and what to say.
Result<ScoringLine> read_scoring_line(std::string_view text, std::optional<MobilityScale> scale,
                                      const Language& language, int line_number);

/// "0 to 3" of a scale, as it is said.
std::string said_scale(MobilityScale scale, const Language& language);

}  // namespace evenclaw
