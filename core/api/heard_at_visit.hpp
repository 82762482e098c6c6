// What was said of a visit, entry by entry: what has to be asked before it closes depends on it.
#pragma once

#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

#include "core/api/open_news.hpp"
#include "core/api/told_two_ways.hpp"
#include "core/api/visits.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/ports/store.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/foot_rows.hpp"
#include "core/trade/turn.hpp"
#include "core/trade/warning.hpp"

namespace evenclaw {

/// A wrap or block on one foot of hers.
using OnHerFoot = std::tuple<CowId, Fixture, Foot>;

/// Cows that were joined since are one here, under the id their rows stand under.
struct HeardAtVisit {
  std::set<CowId> cows_told_of;  // news was told of them, at the visit or since
  std::vector<OpenNews> unclear;
  std::set<CowId> settled;  // asked about, and answered in words
  std::set<CowId> cows_with_a_turn;
  std::map<EntryId, CowSaid> in_doubt;    // by turn: cows whose number nobody read for sure
  std::map<CowId, std::string> found_on;  // of cows without a number, in words
  std::map<EntryId, std::pair<DeviceId, std::int64_t>> told_by;  // turns: device, place in the log
  std::map<CowId, std::int64_t> last_called;  // place in the log of her last call, as first made
  std::vector<FateTold> fates;                // of wraps and blocks, as news
  std::vector<WalkTold> walks;                // how she walks, as news
  std::map<std::pair<EntryId, std::string>, Rank> ranks;  // of warnings, by turn and words
  std::set<OnHerFoot> asked_in_crush;                     // whether it is still on
  std::set<EntryId> said_rest_fine;                       // turns
  bool changed_since_closing = false;
};

/// In the order of the log. Rows are not read: `cows_with_a_turn` is empty.
Result<HeardAtVisit> heard_at(Store& store, const Visit& visit);

}  // namespace evenclaw
