// News that was told of the wrong cow, or of one that is not gone at all: what was said stays on
// record, and is taken back.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/journal.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/entry.hpp"
#include "core/ports/store.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

/// "306 no, 307": the news was of 307. "306 not gone", "no, 306 still here": it was of nobody.
struct NewsMended {
  std::string number;
  std::optional<std::string> right;
};

/// Nothing for any other line.
std::optional<NewsMended> news_mended_in(std::string_view text, const Language& language);

/// "300 no, no block gone": that much of what was told of her is not so.
struct NewsDenied {
  std::string number;
  News news;
};

/// Nothing for any other line.
std::optional<NewsDenied> news_denied_in(std::string_view text, const Language& language);

/// "308 no, walks sound": what is told of her instead of what was told, "308 walks sound".
struct NewsInstead {
  std::string number;
  std::string words;  // as said, without the "no"
};

/// Nothing for any other line, nor for one that says "no" twice.
std::optional<NewsInstead> news_instead_in(std::string_view text, const Language& language);

/// The same news, or of the same wrap or block that it is off.
bool is_denied(const NewsDenied& denied, News told);

/// "No, 307" and nothing else.
std::optional<std::string> number_put_right_in(std::string_view text, const Language& language);

/// What was told of a cow and nobody took back.
struct NewsStanding {
  CowId cow;
  Day day;
  std::optional<VisitId> visit;  // at which it was told; none for who is gone, or between visits
  std::string words;
  bool is_gone = false;
  bool is_asked = false;  // nobody could be sure of it
  NewsSaid news = {};     // this piece of it; who is gone as such

  friend bool operator==(const NewsStanding&, const NewsStanding&) = default;
};

/// The one stands for the other behind a "no": both tell how she walks, that she left, or of the
/// same kind of wrap or block, on whatever foot, but not both the same.
bool is_instead_of(const NewsSaid& told, const NewsSaid& now);

/// One of them tells that a wrap or block is off, and the other that it is still on, on whatever
/// foot.
bool tells_the_other_way(const NewsSaid& told, const NewsSaid& now);

/// In the order of the log, `unwritten` behind it.
Result<std::vector<NewsStanding>> news_standing(Store& store, HerdId herd, CowId cow,
                                                std::span<const Entry> unwritten);

/// What a line told of that number, in the words in which it was said.
std::vector<NewsSaid> news_told_in(std::string_view words, const std::string& number, Day day,
                                   const Language& language);

/// The fault where nothing was told that could be meant.
Fault nothing_to_take_back(const NewsMended& mended);

/// "taken back: 306 gone".
std::string taken_back_told(const NewsStanding& told);

struct TakingBack {
  VisitId visit;  // to which the answer belongs
  Day day;
  std::string number;
  std::string words;  // as said
};

/// Adds to the next write that this is not so. What it closed is open again.
Outcome take_back(Journal& journal, const NewsStanding& told, const TakingBack& taking,
                  const SaidBy& by);

}  // namespace evenclaw
