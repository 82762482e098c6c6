#include "core/api/cow_news.hpp"

#include <algorithm>

#include "core/api/cow_names.hpp"
#include "core/log/body.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/foot_rows.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/spoken.hpp"
#include "core/trade/task_rows.hpp"

namespace evenclaw {

namespace {

bool waits_for_the_vet(const CowPast& past) {
  return std::any_of(past.rows.tasks.begin(), past.rows.tasks.end(),
                     [](const TaskRow& task) { return task.open && task.kind == TaskKind::vet; });
}

/// One that is on, or whose task is open: it is meant before one that went off.
bool is_of_another_one(const NewsSaid& news, Fixture fixture, const Rows& past) {
  const auto is_meant = [&](Foot foot) { return news.feet.empty() || news.feet.has(foot); };
  const bool is_on =
      std::any_of(past.on_feet.begin(), past.on_feet.end(), [&](const OnFootRow& row) {
        return row.fixture == fixture && row.ended == FixtureEnd::still_on && is_meant(row.foot);
      });
  return is_on || std::any_of(past.tasks.begin(), past.tasks.end(), [&](const TaskRow& task) {
           return task.open && is_task_of(fixture, task.kind) && task.foot && is_meant(*task.foot);
         });
}

}  // namespace

NewsEffect effect_told(const NewsSaid& news, const CowPast& past, const ToldOn& told,
                       const ToldLately& lately) {
  const std::optional<FixtureSaid> said = fixture_said(news.news);
  const FootSet off = said_to_be_off(news, past.rows, lately.from);
  if (off.empty() || is_of_another_one(news, said->fixture, past.rows)) {
    return effect_of(news, past, told.day, told.entry, lately.sure);
  }
  NewsEffect effect;
  if (is_off_after(said->step)) return effect;
  if (said->step != FixtureStep::left_on) return effect_of(news, past, told.day, told.entry);
  if (lately.sure) return on_after_all(news, off, past.rows, lately.from, told);
  effect.unclear = "Her " + std::string(word_of(said->fixture)) + " on " + spoken(off) +
                   " was said to be off at this visit. Is it off, or still on?";
  return effect;
}

Outcome add_news(Journal& journal, const CowNews& news, const EntryFacts& facts) {
  if (news.said.news == News::gone && !news.effect.unclear) {
    return journal.add(CowLeft{news.cow, news.day, news.words, news.effect.closes}, facts);
  }
  TaskClosedBody body;
  body.cow = news.cow;
  body.visit = news.visit;
  body.day = news.day;
  body.news = news.said.news;
  body.feet = news.said.feet;
  body.words = news.words;
  body.closes = news.effect.closes;
  body.tasks = news.effect.makes;
  body.asked = news.effect.unclear;
  return journal.add(body, facts);
}

Result<std::vector<std::string>> who_waits_for_the_vet(Store& store, HerdLog& log,
                                                       const CowNews& news) {
  std::vector<std::string> waiting;
  if (news.said.news != News::vet_came) return waiting;
  const auto hers = log.past_of(news.cow, VisitId{});
  if (!hers) return hers.faults();
  if (waits_for_the_vet(*hers)) return waiting;
  const auto cows = select_as<CowRow>(store, log.herd());
  if (!cows) return cows.faults();
  const auto tasks =
      select_as<TaskRow>(store, log.herd(),
                         {{"kind", Compare::equal, Cell(std::string(word_of(TaskKind::vet)))},
                          {"open", Compare::equal, Cell(std::int64_t{1})}});
  if (!tasks) return tasks.faults();
  for (const CowRow& cow : *cows) {
    const bool waited = std::any_of(tasks->begin(), tasks->end(),
                                    [&](const TaskRow& task) { return task.cow == cow.cow; });
    if (!waited) continue;
    // The visit may have been to her, and told of, since those rows were written.
    const auto past = log.past_of(cow.cow, VisitId{});
    if (!past) return past.faults();
    if (waits_for_the_vet(*past)) waiting.push_back(recorded_as(cow));
  }
  return waiting;
}

std::string vet_for_whom(const std::vector<std::string>& waiting) {
  if (waiting.empty()) return "No vet was to come to her. Was it another cow?";
  std::string names;
  for (std::size_t i = 0; i < waiting.size(); ++i) {
    if (i > 0) names += i + 1 == waiting.size() ? " and " : ", ";
    names += waiting[i];
  }
  const std::string which = waiting.size() == 1 ? names : "one of them";
  return "No vet was to come to her, but to " + names + ". Was it " + which + "?";
}

}  // namespace evenclaw
