// The log of one herd as the use cases read it: the entries of a cow with the openings of her
// visits, and her rows, with entries counted that are not in the store yet.
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/entry.hpp"
#include "core/log/picture.hpp"
#include "core/ports/store.hpp"
#include "core/trade/check.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

class HerdLog {
 public:
  HerdLog(Store& store, HerdId herd) : store_(&store), herd_(herd) {}

  /// These entries count as if the store had them; those of other scopes are passed over.
  void also(std::span<const Entry> unwritten);

  [[nodiscard]] Result<CowGroups> groups();

  /// Every entry that touches one of the group, and the openings and corrections of the visits
  /// they name.
  [[nodiscard]] Result<std::vector<Entry>> entries_of_cows(std::span<const CowId> group);
  /// The entries that make a visit's row.
  [[nodiscard]] Result<std::vector<Entry>> entries_of_visit(VisitId visit);

  [[nodiscard]] Result<Rows> rows_of_cows(std::span<const CowId> group);
  [[nodiscard]] Result<Rows> rows_of_visit(VisitId visit);

  /// What is known of a cow before a turn in `visit`.
  [[nodiscard]] Result<CowPast> past_of(CowId cow, VisitId visit);

 private:
  [[nodiscard]] Result<std::vector<Entry>> touching(const Uuid& subject,
                                                    const std::vector<std::string>& kinds);

  Store* store_;
  HerdId herd_;
  std::vector<Entry> unwritten_;
  std::optional<CowGroups> groups_;
  std::map<Uuid, std::vector<Entry>> visit_entries_;  // stored ones, by visit
};

}  // namespace evenclaw
