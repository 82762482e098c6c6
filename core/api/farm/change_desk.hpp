// Takes the lines about changes of the farm, writes what they say and asks why one was made.
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

class ChangeDesk {
 public:
  /// `language` must outlive it.
  static Result<ChangeDesk> open(const Ports& ports, const AtFarm& where, const Language& language);
  ChangeDesk(ChangeDesk&&) noexcept;
  ChangeDesk& operator=(ChangeDesk&&) noexcept;
  ~ChangeDesk();

  /// What several lines say is written at once and answered "saved" after it is durable. A line
  /// without how it was altered is about the change of that kind that is not finished, or about the
  /// last one told; where several fit or none does, it is refused with what to say. The same line
  /// again is answered "there already".
  Result<Reply> say_all(std::span<const std::string> lines);

  /// Asks of every change told here what was not told: why, when it was decided, whether it is
  /// finished, whom it concerns.
  Result<Reply> end();

 private:
  class State;
  explicit ChangeDesk(std::unique_ptr<State> state);
  std::unique_ptr<State> state_;
};

}  // namespace evenclaw
