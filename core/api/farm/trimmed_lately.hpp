// Which cows were in the crush shortly before a day, for their walk is worse then than their feet.
#pragma once

#include <cstdint>
#include <map>
#include <optional>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/ports/store.hpp"

namespace evenclaw {

class TrimmedLately {
 public:
  /// Of the turns of that herd from days_a_trim_shows before `day` up to it in which a foot was
  /// lifted.
  static Result<TrimmedLately> open(Store& store, HerdId herd, Day day);

  /// Days from her last such turn to that day, 0 on the same day; nothing when there is none.
  [[nodiscard]] std::optional<std::int32_t> days_before(CowId cow) const;

 private:
  explicit TrimmedLately(Day day) : day_(day) {}

  Day day_;
  std::map<CowId, Day> last_;
};

}  // namespace evenclaw
