// The feet that news of a wrap or block is of.
#pragma once

#include <map>
#include <vector>

#include "core/base/id.hpp"
#include "core/log/cow_story.hpp"
#include "core/trade/foot.hpp"

namespace evenclaw {

class FeetOfNews {
 public:
  /// Knows the foot of every task that a turn or news of the story made.
  explicit FeetOfNews(const CowStory& story);

  /// Where no foot was named, those whose tasks it closed: what stood on other feet by a turn that
  /// was corrected since was not known to who told it. All four where neither says it.
  [[nodiscard]] FootSet of(const TaskClosedBody& news) const;

 private:
  void know(const std::vector<TaskMade>& tasks);

  std::map<TaskId, Foot> foot_of_task_;
};

}  // namespace evenclaw
