#include "core/api/news_seen.hpp"

#include <algorithm>
#include <set>

#include "core/log/bodies.hpp"
#include "core/log/body.hpp"

namespace evenclaw {

namespace {

std::vector<std::string> kinds_of_news() {
  return {std::string(TaskClosedBody::kind), std::string(CowLeft::kind)};
}

void add_news(std::vector<NewsSeen>& news, const Entry& entry) {
  if (const auto told = body_as<TaskClosedBody>(entry)) {
    news.push_back({told->day, told->words, told->asked.value_or("")});
  }
  if (const auto left = body_as<CowLeft>(entry)) {
    news.push_back({left->day, left->words.empty() ? "gone" : left->words, ""});
  }
}

}  // namespace

Result<std::vector<NewsSeen>> news_of_cow(Store& store, HerdId herd, std::span<const CowId> group) {
  std::vector<NewsSeen> news;
  std::set<EntryId> seen;
  for (const CowId cow : group) {
    const Outcome read =
        store.read_entries({herd.value, cow.value, kinds_of_news()}, [&](const Entry& entry) {
          if (seen.insert(entry.envelope.id).second) add_news(news, entry);
          return true;
        });
    if (!read) return read.faults();
  }
  std::stable_sort(news.begin(), news.end(),
                   [](const NewsSeen& a, const NewsSeen& b) { return b.day < a.day; });
  return news;
}

Result<std::vector<std::string>> news_of_visit(Store& store, const Visit& visit) {
  std::vector<std::string> lines;
  std::set<std::string> told;
  const auto add = [&](const std::string& words) {
    if (!words.empty() && told.insert(words).second) lines.push_back(words);
  };
  const Outcome read = store.read_entries({visit.herd.value, std::nullopt, kinds_of_news()},
                                          [&](const Entry& entry) {
                                            const auto news = body_as<TaskClosedBody>(entry);
                                            if (news && news->visit == visit.visit && !news->asked)
                                              add(news->words);
                                            const auto left = body_as<CowLeft>(entry);
                                            if (left && left->day == visit.day) add(left->words);
                                            return true;
                                          });
  if (!read) return read.faults();
  return lines;
}

}  // namespace evenclaw
