#include "core/api/settle.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/api/call_language.hpp"
#include "core/api/cow_register.hpp"
#include "core/api/journal.hpp"
#include "core/api/news_taken_back.hpp"
#include "core/api/open_news.hpp"
#include "core/api/people.hpp"
#include "core/api/settle_name.hpp"
#include "core/api/visits.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/quoted_words.hpp"
#include "core/trade/follow_up_rules.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"
#include "core/trade/task_rows.hpp"
#include "core/trade/told_both_ways.hpp"

namespace evenclaw {

namespace {

bool is_of(const OpenPoint& point, const std::string& number, std::optional<CowId> cow) {
  return (cow && point.cow == *cow) || point.cow_said == number ||
         plain_number(point.cow_said) == plain_number(number);
}

/// The questions of the latest visit that has any of that number.
struct Questions {
  VisitId visit;
  std::vector<OpenPoint> points;
};

Result<Questions> questions_of(Store& store, const Answered& answered) {
  auto rows = select_as<VisitRow>(store, answered.herd, {}, {"day", "ordinal"});
  if (!rows) return rows.faults();
  std::reverse(rows->begin(), rows->end());
  const auto otherwise = known_otherwise(store, answered.herd, answered.number);
  if (!otherwise) return otherwise.faults();
  for (const VisitRow& row : *rows) {
    auto state = closing_state(store, visit_of(row));
    if (!state) return state.faults();
    Questions questions{row.visit, {}};
    for (OpenPoint& point : state->open) {
      const bool hers =
          is_settled_in_words(point.kind) && is_of(point, answered.number, *otherwise);
      if (hers) questions.points.push_back(std::move(point));
    }
    if (!questions.points.empty()) return questions;
  }
  return Fault{.slug = "usage",
               .message = "Nothing is asked of " + answered.number + " that words could settle.",
               .token = answered.number};
}

/// Somebody is meant; a name that is new is no slip of the pen when it is said to be so.
Result<PersonId> person_answered(const Ports& ports, const Answered& answered) {
  const std::string name(trimmed(answered.words));
  const auto known = ports.directory.find(name);
  if (!known) return known.faults();
  if (*known) return (*known)->id;
  if (answered.sure) return certain_person(ports, name, true);
  return Fault{.slug = "answer-needed",
               .message = "Nobody is called " + name + " yet.",
               .token = name,
               .remedy = "Give the name alone; or say that it is somebody new."};
}

std::string listed(const std::vector<std::string>& cows) {
  std::string words;
  for (const std::string& cow : cows) words += (words.empty() ? "" : ", ") + cow;
  return words;
}

/// The words that go into the log hold no name.
Result<Reply> settle_name(const Ports& ports, const Answered& answered, VisitId visit,
                          const OpenPoint& point) {
  const auto person = person_answered(ports, answered);
  if (!person) return person.faults();
  auto journal = Journal::open(ports, answered.herd.value);
  if (!journal) return journal.faults();
  const bool is_known_one = *person == *point.person;
  const bool is_writer = point.cow_said == "writer";
  QuestionSettled body;
  body.visit = visit;
  body.day = answered.day;
  body.number = point.cow_said;
  body.words = is_known_one ? "it was the known one" : "it was somebody else";
  const EntryId entry = journal->fresh_id();
  const Outcome added = journal->add(body, {entry});
  if (!added) return added.faults();
  const auto cows = put_name_right(
      ports, {answered.herd, visit, *point.entry, is_writer, *point.person, *person}, *journal);
  if (!cows) return cows.faults();
  const auto written = journal->write();
  if (!written) return written.faults();
  const auto everybody = ports.directory.everybody();
  if (!everybody) return everybody.faults();
  const std::string name = shown_name(*everybody, *person);
  ReplyItem item;
  item.kind = ReplyKind::told;
  item.cow = point.cow_said;
  item.entry = entry;
  item.words = "settled: it was " + name;
  if (!cows->empty()) {
    item.words += is_writer ? ", who typed " : ", who called ";
    item.words += listed(*cows);
  } else {
    item.words += is_known_one ? ", as it was read" : "; no turn was recorded under that name";
  }
  Reply reply;
  reply.items.push_back(std::move(item));
  return reply;
}

/// The news of her that was asked about and is said to be wrong now: what it closed is open again,
/// and what it made is no task any more. Its words.
Result<std::vector<std::string>> take_back_news(const Ports& ports, Journal& journal, HerdId herd,
                                                QuestionSettled body) {
  std::vector<std::string> taken;
  if (!body.cow) return taken;
  const auto language = call_language_of(ports.store);
  if (!language) return language.faults();
  if (!(*language)->words().says_it_was_wrong(body.words)) return taken;
  const auto standing = news_standing(ports.store, herd, *body.cow, {});
  if (!standing) return standing.faults();
  for (const NewsStanding& told : *standing) {
    const bool is_it = told.is_asked && told.visit == body.visit &&
                       std::find(taken.begin(), taken.end(), told.words) == taken.end();
    if (!is_it) continue;
    body.cow = told.cow;
    body.about = told.words;
    const Outcome added = journal.add(body, {journal.fresh_id()});
    if (!added) return added.faults();
    taken.push_back(told.words);
  }
  return taken;
}

/// Told off and told still on, and asked about.
Result<std::vector<Fixture>> off_or_still_on(Store& store, const QuestionSettled& body,
                                             HerdId herd) {
  std::vector<Fixture> fixtures;
  if (!body.cow) return fixtures;
  const auto tasks = select_as<TaskRow>(store, herd,
                                        {{"cow", Compare::equal, Cell(to_text(*body.cow))},
                                         {"open", Compare::equal, Cell(std::int64_t{1})}});
  if (!tasks) return tasks.faults();
  const auto news = open_news(store, herd);
  if (!news) return news.faults();
  for (const Fixture fixture : {Fixture::wrap, Fixture::block}) {
    const bool is_in_doubt = std::any_of(tasks->begin(), tasks->end(), [&](const TaskRow& task) {
      return is_told_both_ways(task) && is_task_of(fixture, task.kind);
    });
    const bool is_asked = std::any_of(news->begin(), news->end(), [&](const OpenNews& open) {
      const auto said = open.news ? fixture_said(*open.news) : std::nullopt;
      const bool is_hers = open.visit == body.visit && open.cow == body.cow;
      return is_hers && said && said->fixture == fixture && said->step == FixtureStep::left_on;
    });
    if (is_in_doubt && is_asked) fixtures.push_back(fixture);
  }
  return fixtures;
}

/// Words that say neither that it was wrong nor which of the two holds settle nothing.
Outcome words_may_settle(Store& store, const QuestionSettled& body, HerdId herd) {
  const auto language = call_language_of(store);
  if (!language) return language.faults();
  const Language& words = (*language)->words();
  if (words.says_it_was_wrong(body.words)) return Done{};
  const auto fixtures = off_or_still_on(store, body, herd);
  if (!fixtures) return fixtures.faults();
  if (fixtures->empty()) return Done{};
  const std::string what(word_of(fixtures->front()));
  const std::string said = body.number + ' ' + what;
  return Fault{.slug = "usage",
               .message = "Whether the " + what + " of " + body.number +
                          " is off or still on is told as news: other words would leave it in "
                          "doubt.",
               .token = body.words,
               .remedy = with_quoted_words(
                   "Say \"{" + said + " off}\", or \"{" + said + " still on}\".", words)};
}

}  // namespace

Result<Reply> settle_questions(const Ports& ports, const Answered& answered) {
  if (trimmed(answered.words).empty()) {
    return Fault{.slug = "usage", .message = "Say how it was settled."};
  }
  const auto questions = questions_of(ports.store, answered);
  if (!questions) return questions.faults();
  const OpenPoint& first = questions->points.front();
  if (first.person && first.entry) return settle_name(ports, answered, questions->visit, first);
  QuestionSettled body;
  body.visit = questions->visit;
  body.day = answered.day;
  // Named by her tag or another name, she is recorded as she is asked about.
  const bool is_number = plain_number(first.cow_said) == plain_number(answered.number);
  body.number = is_number ? answered.number : first.cow_said;
  const CowId cow = first.cow;
  if (cow != CowId{}) body.cow = cow;
  body.words = trimmed(answered.words);
  const Outcome may_settle = words_may_settle(ports.store, body, answered.herd);
  if (!may_settle) return may_settle.faults();
  auto journal = Journal::open(ports, answered.herd.value);
  if (!journal) return journal.faults();
  const EntryId entry = journal->fresh_id();
  const Outcome added = journal->add(body, {entry});
  if (!added) return added.faults();
  const auto wrong = take_back_news(ports, *journal, answered.herd, body);
  if (!wrong) return wrong.faults();
  const auto written = journal->write();
  if (!written) return written.faults();
  Reply reply;
  for (const OpenPoint& point : questions->points) {
    ReplyItem item;
    item.kind = ReplyKind::told;
    item.cow = point.cow_said;
    item.words = "settled: " + point.words;
    item.entry = entry;
    reply.items.push_back(std::move(item));
  }
  for (const std::string& words : *wrong) {
    ReplyItem item;
    item.kind = ReplyKind::told;
    item.cow = first.cow_said;
    item.words = "taken back: " + words;
    reply.items.push_back(std::move(item));
  }
  return reply;
}

}  // namespace evenclaw
