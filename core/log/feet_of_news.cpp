#include "core/log/feet_of_news.hpp"

namespace evenclaw {

FeetOfNews::FeetOfNews(const CowStory& story) {
  for (const Told<TurnRecorded>& turn : story.turns) know(turn.body.tasks);
  for (const Told<TaskClosedBody>& news : story.news) know(news.body.tasks);
}

void FeetOfNews::know(const std::vector<TaskMade>& tasks) {
  for (const TaskMade& task : tasks) {
    if (task.foot) foot_of_task_[task.task] = *task.foot;
  }
}

FootSet FeetOfNews::of(const TaskClosedBody& news) const {
  FootSet feet = news.feet;
  if (!feet.empty()) return feet;
  for (const TaskClosed& closed : news.closes) {
    const auto foot = foot_of_task_.find(closed.task);
    if (foot != foot_of_task_.end()) feet.add(foot->second);
  }
  return feet.empty() ? four_feet : feet;
}

}  // namespace evenclaw
