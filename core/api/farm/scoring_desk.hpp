// Takes the lines of a mobility scoring, writes what they say and asks what only a person can
// settle.
#pragma once

#include <memory>
#include <span>
#include <string>

#include "core/api/farm/at_farm.hpp"
#include "core/api/ports.hpp"
#include "core/api/reply.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/language.hpp"

namespace evenclaw {

class ScoringDesk {
 public:
  /// Reads what is known of the herd. `language` must outlive it.
  static Result<ScoringDesk> open(const Ports& ports, const AtFarm& where,
                                  const Language& language);
  ScoringDesk(ScoringDesk&&) noexcept;
  ScoringDesk& operator=(ScoringDesk&&) noexcept;
  ~ScoringDesk();

  /// What several lines say is written at once and answered "saved" after it is durable. A line
  /// that is not understood is refused whole, the others are recorded. What the records of the same
  /// scoring hold already is answered "there already" and not doubled, so the same lines may be
  /// given twice. An unknown number, one of a cow who left, and a cow scored twice are kept as said
  /// and asked about; a count at a score that was counted before is refused with what to say.
  Result<Reply> say_all(std::span<const std::string> lines);

  /// The scoring so far in one line: how many of those present, how many at each score; asks when
  /// more were scored than were present.
  Result<Reply> end();

 private:
  class State;
  explicit ScoringDesk(std::unique_ptr<State> state);
  std::unique_ptr<State> state_;
};

}  // namespace evenclaw
