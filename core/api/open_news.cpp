#include "core/api/open_news.hpp"

#include <algorithm>
#include <optional>
#include <set>
#include <utility>

#include "core/api/call_language.hpp"
#include "core/api/herd_log.hpp"
#include "core/api/recording/recorded_before.hpp"
#include "core/api/still_untold.hpp"
#include "core/log/body.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

/// "Still on" was asked about, and it is told off; or how she walks, and it is told the other way.
bool is_the_other_way(News asked, News told) {
  if (opposite_of(asked) == told) return true;
  const std::optional<FixtureSaid> was = fixture_said(asked);
  const std::optional<FixtureSaid> is = fixture_said(told);
  return was && is && was->fixture == is->fixture && was->step == FixtureStep::left_on &&
         is_off_after(is->step);
}

class NewsBook {
 public:
  NewsBook(const CowGroups& groups, const Language& language)
      : groups_(groups), language_(language) {}

  void take(const Entry& entry) {
    if (const auto cow = body_as<CowRegistered>(entry)) carry(cow->cow, cow->number);
    if (const auto given = body_as<NumberGiven>(entry)) carry(given->cow, given->number);
    if (const auto told = body_as<TaskClosedBody>(entry)) take_told(*told, entry.envelope.id);
    if (const auto left = body_as<CowLeft>(entry)) take_left(*left);
    if (const auto unread = body_as<NewsUnread>(entry)) take_unread(*unread, entry.envelope.id);
    if (const auto settled = body_as<QuestionSettled>(entry)) take_settled(*settled);
  }

  std::vector<OpenNews> all() && {
    std::vector<OpenNews> all;
    all.reserve(open_.size());
    for (Open& open : open_) all.push_back(std::move(open.news));
    return all;
  }

 private:
  struct Open {
    OpenNews news;
    std::optional<StillUntold> untold;  // of what was not understood
  };

  struct ToldAt {
    CowId cow;
    VisitId visit;
    NewsSaid news;
  };

  void carry(CowId cow, const std::string& number) {
    carried_.insert({groups_.representative(cow), plain_number(number)});
  }

  [[nodiscard]] bool is_of(const OpenNews& news, CowId cow) const {
    if (news.cow) return *news.cow == cow;
    return carried_.count({cow, plain_number(news.number)}) > 0;
  }

  void take_unread(const NewsUnread& unread, EntryId entry) {
    std::optional<CowId> cow = unread.cow;
    if (cow) cow = groups_.representative(*cow);
    StillUntold untold(unread.words, unread.number, unread.day, language_);
    for (const ToldAt& told : told_) {
      if (told.visit == unread.visit && told.cow == cow) untold.was_told(told.news);
    }
    if (untold.is_all_told()) return;
    open_.push_back({{unread.visit, cow, unread.number, std::nullopt, unread.words, unread.asked,
                      unread.person, entry},
                     std::move(untold)});
  }

  /// Of what was not understood only as much is settled as is told now.
  void tell_unread(CowId cow, const NewsSaid& news, const std::string& words) {
    for (Open& open : open_) {
      if (open.untold && is_of(open.news, cow)) open.untold->tell(news, words);
    }
    drop([](const Open& open) { return open.untold && open.untold->is_all_told(); });
  }

  void take_left(const CowLeft& left) {
    const CowId cow = groups_.representative(left.cow);
    tell_unread(cow, {{}, News::gone, {}, false}, left.words);
    drop([&](const Open& open) { return open.news.news == News::gone && is_of(open.news, cow); });
  }

  /// Asked about again, the same news is one question.
  void take_told(const TaskClosedBody& told, EntryId entry) {
    const CowId cow = groups_.representative(told.cow);
    const NewsSaid news{{}, told.news, told.feet, false};
    tell_unread(cow, news, told.words);
    drop([&](const Open& open) {
      if (!open.news.news || !is_of(open.news, cow)) return false;
      return tells_the_same(*open.news.news, told.news) ||
             (!told.asked && is_the_other_way(*open.news.news, told.news));
    });
    if (!told.visit) return;
    if (!told.asked) {
      told_.push_back({cow, *told.visit, news});
    } else {
      open_.push_back(
          {{*told.visit, cow, {}, told.news, told.words, *told.asked, std::nullopt, entry},
           std::nullopt});
    }
  }

  void take_settled(const QuestionSettled& settled) {
    drop([&](const Open& open) {
      const OpenNews& news = open.news;
      if (news.visit != settled.visit) return false;
      if (settled.about && news.words != *settled.about) return false;
      if (settled.cow && is_of(news, groups_.representative(*settled.cow))) return true;
      return !news.number.empty() && plain_number(news.number) == plain_number(settled.number);
    });
  }

  template <class F>
  void drop(F&& is_settled) {
    open_.erase(std::remove_if(open_.begin(), open_.end(), is_settled), open_.end());
  }

  const CowGroups& groups_;
  const Language& language_;
  std::vector<Open> open_;
  std::vector<ToldAt> told_;  // and clear
  std::set<std::pair<CowId, std::string>> carried_;
};

}  // namespace

Result<std::vector<OpenNews>> open_news(Store& store, HerdId herd) {
  const std::vector<std::string> kinds = {
      std::string(CowRegistered::kind),  std::string(NumberGiven::kind),
      std::string(TaskClosedBody::kind), std::string(CowLeft::kind),
      std::string(NewsUnread::kind),     std::string(QuestionSettled::kind)};
  const auto groups = HerdLog(store, herd).groups();
  if (!groups) return groups.faults();
  const auto language = call_language_of(store);
  if (!language) return language.faults();
  NewsBook book(*groups, (*language)->words());
  const Outcome read =
      store.read_entries({herd.value, std::nullopt, kinds}, [&](const Entry& entry) {
        book.take(entry);
        return true;
      });
  if (!read) return read.faults();
  return std::move(book).all();
}

}  // namespace evenclaw
