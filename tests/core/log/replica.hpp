// A copy of a herd's log with its pictures kept up to date by what arrives, and the same pictures
// made anew from the whole log: the two must always be equal.
#pragma once

#include <map>
#include <set>
#include <span>
#include <string>
#include <vector>

#include "core/base/id.hpp"
#include "core/log/gather.hpp"
#include "core/log/merge.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

class Replica {
 public:
  explicit Replica(HerdId herd) : herd_(herd) {}

  /// Takes entries in and makes anew only the pictures they change.
  void receive(std::span<const Entry> entries);

  [[nodiscard]] const EntrySet& log() const { return log_; }

  /// Every row, one a line, sorted: what a store would hold.
  [[nodiscard]] std::string pictures() const;

  /// The same, made from nothing.
  [[nodiscard]] std::string rebuilt() const;

 private:
  [[nodiscard]] std::vector<Entry> every_version_of(const std::set<EntryId>& ids) const;
  [[nodiscard]] EntryLookup lookup() const;
  void picture_cow(std::span<const CowId> group);
  void picture_visit(VisitId visit);

  HerdId herd_;
  EntrySet log_;
  std::vector<Entry> everything_;
  std::map<CowId, Rows> cows_;
  std::map<VisitId, Rows> visits_;
};

/// Rows as text, one a line: table and cells.
std::string text_of_rows(const Rows& rows);

}  // namespace evenclaw
