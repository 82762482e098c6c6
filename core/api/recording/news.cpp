// What is told besides the cow in the crush: news since last time, today's feet, who calls and who
// types.
#include <algorithm>
#include <utility>
#include <variant>

#include "core/api/news_words.hpp"
#include "core/api/people.hpp"
#include "core/api/recording/state.hpp"
#include "core/base/text.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

std::vector<TaskClosed> all_open(const CowPast& past, std::vector<TaskClosed> closes) {
  for (const TaskRow& row : past.rows.tasks) {
    const bool listed = std::any_of(closes.begin(), closes.end(), [&](const TaskClosed& closed) {
      return closed.task == row.task;
    });
    if (row.open && !listed) closes.push_back({row.task, "gone"});
  }
  return closes;
}

}  // namespace

void RecordingState::unknown_cow(const NewsSaid& news) {
  ReplyItem& item =
      answer(ReplyKind::refused, "No cow of this herd carries the number " + news.number + ".");
  item.slug = "cow-not-found";
  item.token = news.number;
  const std::vector<std::string> near = finder_.nearest(news.number);
  for (const std::string& number : near) {
    item.remedy += (item.remedy.empty() ? "Did you mean " : " or ") + number;
  }
  if (!near.empty()) item.remedy += "?";
}

Outcome RecordingState::tell(const NewsSaid& news, std::string_view text) {
  const std::optional<CowId> cow = finder_.carrier(news.number);
  if (!cow) {
    unknown_cow(news);
    if (in_crush_) held_back_by_ = trimmed(text);
    return Done{};
  }
  if (before_.was_told(*cow, news.news, news.feet)) {
    answer(ReplyKind::there_already, "told before").cow = plain_number(news.number);
    return Done{};
  }
  return tell_of(*cow, news, text);
}

Outcome RecordingState::tell_of(CowId cow, const NewsSaid& news, std::string_view text) {
  auto past = past_told(cow);
  if (!past) return past.faults();
  const EntryId entry = journal_.fresh_id();
  const NewsEffect effect = effect_of(news, *past, visit_.day, entry);
  const std::string number = plain_number(news.number);
  if (effect.unclear) return ask_about_news(cow, news, *effect.unclear, text);
  const EntryFacts facts{entry, {}, by_, {}};
  Outcome added = Done{};
  std::vector<TaskClosed> closes = effect.closes;
  if (news.news == News::gone) {
    closes = all_open(*past, std::move(closes));
    CowLeft body{cow, visit_.day, std::string(trimmed(text)), closes};
    added = journal_.add(body, facts);
    finder_.now_gone(cow, trimmed(text));
  } else {
    TaskClosedBody body;
    body.cow = cow;
    body.visit = visit_.visit;
    body.day = visit_.day;
    body.news = news.news;
    body.feet = news.feet;
    body.words = trimmed(text);
    body.closes = closes;
    body.tasks = effect.makes;
    added = journal_.add(body, facts);
  }
  if (!added) return added;
  before_.add_told(cow, news.news, news.feet);
  answer(ReplyKind::told, words_of_effect(news.news, closes, effect.makes, *past)).cow = number;
  const Outcome answered = answer_by_news(cow, news, text);
  if (!answered) return answered;
  if (!in_crush_ || in_crush_->cow != cow) return Done{};
  return look_again_at_past();
}

/// What was said is kept as it was said, does nothing, and is asked about again when the visit
/// closes unless it was told more plainly by then.
Outcome RecordingState::ask_about_news(CowId cow, const NewsSaid& news, const std::string& question,
                                       std::string_view text) {
  answer(ReplyKind::question, question).cow = plain_number(news.number);
  const std::string words(trimmed(text));
  if (!before_.asks_now(cow, words)) return Done{};
  TaskClosedBody body;
  body.cow = cow;
  body.visit = visit_.visit;
  body.day = visit_.day;
  body.news = news.news;
  body.feet = news.feet;
  body.words = words;
  body.asked = question;
  return journal_.add(body, {journal_.fresh_id(), {}, by_, {}});
}

Outcome RecordingState::todays_feet(const FootSet& feet) {
  if (feet == visit_.todays_feet) return Done{};
  VisitCorrected body;
  body.visit = visit_.visit;
  body.todays_feet = feet;
  const Outcome added = journal_.add(body, {journal_.fresh_id(), {visit_.visit.value}, by_, {}});
  if (!added) return added;
  visit_.todays_feet = feet;
  answer(ReplyKind::told, "today's feet: " + to_text(feet));
  return Done{};
}

/// A name close to a known one is asked about; said a second time it is meant.
Result<std::optional<PersonId>> RecordingState::person(std::string_view name) {
  const std::string folded = fold_case(trimmed(name));
  const bool sure = !asked_name_.empty() && asked_name_ == folded;
  auto found = person_named(ports_, name, sure);
  if (!found) return found.faults();
  if (const auto* doubt = std::get_if<NameInDoubt>(&*found)) {
    asked_name_ = folded;
    ReplyItem& item =
        answer(ReplyKind::question, "Is " + doubt->said + " the same as " + doubt->nearest +
                                        "? Say the name again if "
                                        "it is somebody else.");
    item.token = doubt->said;
    return std::optional<PersonId>();
  }
  return std::optional<PersonId>(std::get<PersonId>(*found));
}

Outcome RecordingState::caller(std::string_view name) {
  const auto found = person(name);
  if (!found) return found.faults();
  if (!*found) return Done{};
  by_.caller = **found;
  visit_.caller = trimmed(name);
  answer(ReplyKind::told, "caller " + visit_.caller);
  return Done{};
}

Outcome RecordingState::writer(std::string_view name) {
  const auto found = person(name);
  if (!found) return found.faults();
  if (!*found) return Done{};
  by_.writer = **found;
  visit_.writer = trimmed(name);
  answer(ReplyKind::told, "writer " + visit_.writer);
  return Done{};
}

}  // namespace evenclaw
