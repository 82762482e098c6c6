// News of one cow: the entry that keeps it, and whether another cow is more likely meant.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/api/herd_log.hpp"
#include "core/api/journal.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/trade/follow_up.hpp"
#include "core/trade/on_after_all.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

/// What was told of a cow, and what comes of it.
struct CowNews {
  CowId cow;
  NewsSaid said;
  NewsEffect effect;
  Day day;
  std::optional<VisitId> visit = {};  // at which it was told, if at one
  std::string words;                  // as said
};

/// What was told of her lately, against which the news is held.
struct ToldLately {
  Day from;           // since the visit of that day
  bool sure = false;  // it was asked about, or is told after the visit: it holds
};

/// What the news does. "Still on" of a wrap or block that was told off lately is asked about; when
/// it is sure, it is on after all. "Off" of one that was told off lately tells that once more.
NewsEffect effect_told(const NewsSaid& news, const CowPast& past, const ToldOn& told,
                       const ToldLately& lately);

/// Adds the entry that keeps it to the next write; that she is gone is an entry of a kind of its
/// own, unless it is asked about.
Outcome add_news(Journal& journal, const CowNews& news, const EntryFacts& facts);

/// The numbers of cows who wait for the vet; none unless it was told that the vet came to this one,
/// who waits for none.
Result<std::vector<std::string>> who_waits_for_the_vet(Store& store, HerdLog& log,
                                                       const CowNews& news);

/// "No vet was to come to her, but to 77. Was it 77?"; another cow is asked for where none waits.
std::string vet_for_whom(const std::vector<std::string>& waiting);

}  // namespace evenclaw
