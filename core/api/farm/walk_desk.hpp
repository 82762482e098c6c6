// Takes the lines of a farm walk, writes what they say and asks what only a person can settle.
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

class WalkDesk {
 public:
  /// `language` must outlive it.
  static Result<WalkDesk> open(const Ports& ports, const AtFarm& where, const Language& language);
  WalkDesk(WalkDesk&&) noexcept;
  WalkDesk& operator=(WalkDesk&&) noexcept;
  ~WalkDesk();

  /// What several lines say is written at once and answered "saved" after it is durable, each
  /// measure with what it is compared with and the source of that; never with a verdict. A line
  /// that is not understood is refused whole, the others are recorded. What the records of the same
  /// walk hold already is answered "there already"; a measure said twice in different ways is kept
  /// twice and asked about.
  Result<Reply> say_all(std::span<const std::string> lines);

  /// What was not said of the walk through the place named last, in one line.
  Result<Reply> end();

 private:
  class State;
  explicit WalkDesk(std::unique_ptr<State> state);
  std::unique_ptr<State> state_;
};

}  // namespace evenclaw
