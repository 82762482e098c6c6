#include "core/api/open_news.hpp"

#include <algorithm>
#include <set>
#include <utility>

#include "core/api/herd_log.hpp"
#include "core/log/body.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

/// "Still on" was asked about, and it is told off.
bool is_the_other_way(News asked, News told) {
  const std::optional<FixtureSaid> was = fixture_said(asked);
  const std::optional<FixtureSaid> is = fixture_said(told);
  return was && is && was->fixture == is->fixture && was->step == FixtureStep::left_on &&
         is_off_after(is->step);
}

class NewsBook {
 public:
  explicit NewsBook(const CowGroups& groups) : groups_(groups) {}

  void take(const Entry& entry) {
    if (const auto cow = body_as<CowRegistered>(entry)) carry(cow->cow, cow->number);
    if (const auto given = body_as<NumberGiven>(entry)) carry(given->cow, given->number);
    if (const auto told = body_as<TaskClosedBody>(entry)) take_told(*told, entry.envelope.id);
    if (const auto left = body_as<CowLeft>(entry)) {
      const CowId cow = groups_.representative(left->cow);
      drop([&](const OpenNews& news) { return is_of(news, cow); });
    }
    if (const auto unread = body_as<NewsUnread>(entry)) {
      std::optional<CowId> cow = unread->cow;
      if (cow) cow = groups_.representative(*cow);
      open_.push_back({unread->visit, cow, unread->number, std::nullopt, unread->words,
                       unread->asked, unread->person, entry.envelope.id});
    }
    if (const auto settled = body_as<QuestionSettled>(entry)) take_settled(*settled);
  }

  std::vector<OpenNews> all() && { return std::move(open_); }

 private:
  void carry(CowId cow, const std::string& number) {
    carried_.insert({groups_.representative(cow), plain_number(number)});
  }

  [[nodiscard]] bool is_of(const OpenNews& news, CowId cow) const {
    if (news.cow) return *news.cow == cow;
    return carried_.count({cow, plain_number(news.number)}) > 0;
  }

  /// Asked about again, the same news is one question; only plain news settles what was not read.
  void take_told(const TaskClosedBody& told, EntryId entry) {
    const CowId cow = groups_.representative(told.cow);
    drop([&](const OpenNews& news) {
      if (!is_of(news, cow)) return false;
      if (!news.news) return !told.asked;
      return *news.news == told.news || (!told.asked && is_the_other_way(*news.news, told.news));
    });
    if (!told.asked || !told.visit) return;
    open_.push_back(
        {*told.visit, cow, {}, told.news, told.words, *told.asked, std::nullopt, entry});
  }

  void take_settled(const QuestionSettled& settled) {
    drop([&](const OpenNews& news) {
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
  std::vector<OpenNews> open_;
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
  NewsBook book(*groups);
  const Outcome read =
      store.read_entries({herd.value, std::nullopt, kinds}, [&](const Entry& entry) {
        book.take(entry);
        return true;
      });
  if (!read) return read.faults();
  return std::move(book).all();
}

}  // namespace evenclaw
