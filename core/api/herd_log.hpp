// The log of one herd as the use cases read it: the rows of a cow or visit and what an entry
// changes, with entries counted that are not in the store yet.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/entry.hpp"
#include "core/log/gather.hpp"
#include "core/log/picture.hpp"
#include "core/ports/store.hpp"
#include "core/trade/check.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

class HerdLog {
 public:
  HerdLog(Store& store, HerdId herd) : store_(&store), herd_(herd) {}

  [[nodiscard]] HerdId herd() const { return herd_; }

  /// These new entries count as if the store had them; those of other scopes are passed over. They
  /// must outlive this.
  void also(std::span<const Entry> unwritten);
  /// This entry counts as if nobody had written it.
  void without(EntryId entry);

  [[nodiscard]] Result<CowGroups> groups();

  /// Whose pictures may have changed by entries that the store or also() has.
  [[nodiscard]] Result<Touched> touched_by(std::span<const Entry> arrived);

  [[nodiscard]] Result<Rows> rows_of_cows(std::span<const CowId> group);
  [[nodiscard]] Result<Rows> rows_of_visit(VisitId visit);

  /// What is known of a cow on a visit.
  [[nodiscard]] Result<CowPast> past_of(CowId cow, VisitId visit);

  /// The same of a cow that stands in the crush: whoever told that she is gone was mistaken, and
  /// what was closed for it is open again.
  [[nodiscard]] Result<CowPast> past_of_one_here(CowId cow, VisitId visit);

 private:
  [[nodiscard]] EntryLookup lookup();
  [[nodiscard]] Result<CowPast> past_made_of(CowId cow, VisitId visit, bool is_here);
  [[nodiscard]] Result<std::vector<Entry>> touching(const Uuid& subject,
                                                    const std::vector<std::string>& kinds);
  [[nodiscard]] Result<std::vector<Entry>> versions_of(EntryId id);
  [[nodiscard]] Result<std::vector<Entry>> read(EntrySelection selection);
  [[nodiscard]] Outcome prepare_for_many();
  [[nodiscard]] Outcome read_when_short();
  [[nodiscard]] std::span<const Entry* const> at_hand_about(const Uuid& subject) const;

  Store* store_;
  HerdId herd_;
  std::vector<const Entry*> unwritten_;
  std::vector<Entry> written_;  // all that the store has of the herd, once it pays
  bool is_all_at_hand_ = false;
  std::unordered_map<Uuid, std::vector<const Entry*>> by_subject_;  // of all these, once it pays
  bool is_prepared_ = false;
  int questions_ = 0;
  std::set<EntryId> left_out_;
  std::optional<CowGroups> groups_;
  std::map<Uuid, std::vector<Entry>> of_visits_;  // openings and what changes them
};

}  // namespace evenclaw
