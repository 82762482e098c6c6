#include "core/log/handling_told.hpp"

#include <map>

namespace evenclaw {

namespace {

class HandlingBook {
 public:
  explicit HandlingBook(const CowStory& story) : story_(story) {}

  void take(const std::optional<HandlingSaid>& said, Day day) {
    if (!said) return;
    const auto known = rows_.find(said->what);
    if (!said->holds) {
      if (known != rows_.end() && !known->second.over_on) known->second.over_on = day;
      return;
    }
    if (known == rows_.end() || known->second.over_on) {
      rows_[said->what] = {story_.herd, story_.cow, said->what, day, day, std::nullopt};
    } else {
      known->second.last_said = day;
    }
  }

  void take(const std::vector<Action>& actions, Day day) {
    for (const Action& action : actions) take(handling_said(action.kind), day);
  }

  std::vector<HandlingRow> take_rows() && {
    std::vector<HandlingRow> rows;
    rows.reserve(rows_.size());
    for (const auto& [what, row] : rows_) rows.push_back(row);
    return rows;
  }

 private:
  const CowStory& story_;
  std::map<Handling, HandlingRow> rows_;
};

}  // namespace

std::vector<HandlingRow> handling_of(const CowStory& story) {
  HandlingBook book(story);
  auto news = story.news.begin();
  const auto take_news_before = [&](const Moment* moment) {
    for (; news != story.news.end() && (moment == nullptr || news->moment < *moment); ++news) {
      if (!news->body.asked) book.take(handling_said(news->body.news), news->moment.day);
    }
  };
  for (const Told<TurnRecorded>& turn : story.turns) {
    take_news_before(&turn.moment);
    for (const FootCall& call : turn.body.turn.feet) book.take(call.actions, turn.moment.day);
    book.take(turn.body.turn.actions, turn.moment.day);
  }
  take_news_before(nullptr);
  return std::move(book).take_rows();
}

}  // namespace evenclaw
