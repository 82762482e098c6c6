#include "core/api/news_words.hpp"

#include <algorithm>
#include <optional>
#include <string_view>

#include "core/trade/follow_up_rules.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/told_both_ways.hpp"

namespace evenclaw {

namespace {

std::string words_of_task(const CowPast& past, TaskId task) {
  for (const TaskRow& row : past.rows.tasks) {
    if (row.task == task) return words_without_doubt(row.words);
  }
  return "a task";
}

void append(std::string& words, std::string_view lead, const std::string& what) {
  words += words.empty() ? std::string(lead) : std::string("; ");
  words += what;
}

/// It was told both ways, and is on after all: what was waiting for that is plainly to be done.
std::string to_do_after_all(News news, const CowPast& past) {
  std::string words;
  const std::optional<FixtureSaid> said = fixture_said(news);
  if (!said || said->step != FixtureStep::left_on) return words;
  for (const TaskRow& row : past.rows.tasks) {
    const bool is_it = row.open && is_told_both_ways(row) && is_task_of(said->fixture, row.kind);
    if (is_it) append(words, "to do: ", words_without_doubt(row.words));
  }
  return words;
}

/// News that neither closes nor makes a task.
std::string noted(News news) {
  switch (news) {
    case News::wrap_still_on:
    case News::block_still_on:
    case News::walks_sound:
    case News::kicks:
    case News::jumps:
    case News::lies_down:
    case News::needs_hoist:
    case News::kicks_no_more:
    case News::jumps_no_more:
    case News::lies_down_no_more:
    case News::hoist_no_more:
      return "noted";
    case News::gone:
      return "kept as gone";
    case News::still_lame:
      return "noted; she is to be looked at already";
    case News::wrap_off:
    case News::wrap_came_off:
    case News::block_off:
    case News::block_came_off:
    case News::looked_at:
    case News::vet_came:
      return "noted; nothing of hers was waiting for it";
  }
  return "noted";
}

}  // namespace

std::string words_of_effect(News news, const std::vector<TaskClosed>& closes,
                            const std::vector<TaskMade>& makes, const CowPast& past) {
  std::vector<std::string> names;
  names.reserve(closes.size());
  for (const TaskClosed& task : closes) names.push_back(words_of_task(past, task.task));
  std::sort(names.begin(), names.end());
  std::string closed;
  for (const std::string& name : names) append(closed, "closed: ", name);
  std::string made;
  for (const TaskMade& task : makes) append(made, "to do: ", task.words);
  if (closed.empty() && made.empty()) made = to_do_after_all(news, past);
  if (closed.empty() && made.empty()) return noted(news);
  return closed.empty() || made.empty() ? closed + made : closed + "; " + made;
}

}  // namespace evenclaw
