// The entries of one scope in their order, found by id, subject or kind without looking at the
// others.
#pragma once

#include <cstddef>
#include <deque>
#include <functional>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/base/id.hpp"
#include "core/log/entry.hpp"
#include "core/ports/store.hpp"

namespace evenclaw {

/// Grows at its end only: who reads while it grows sees what was there when he began.
class ListedEntries {
 public:
  /// In the total order; with every version where several are listed.
  explicit ListedEntries(std::vector<Entry> in_order);

  /// Whether it may stand at the end: no entry of that id is here, and it comes behind all others.
  [[nodiscard]] bool may_append(const Entry& entry) const;
  void append(const Entry& entry);

  [[nodiscard]] std::size_t size() const { return entries_.size(); }

  [[nodiscard]] const Entry& at(std::size_t place) const { return entries_[place]; }

  /// Where those lie that fit, in order. Of an entry that is here in several versions all of them
  /// are given as soon as one fits, when the selection wants every version.
  [[nodiscard]] std::vector<std::size_t> places_of(const EntrySelection& selection) const;

 private:
  using Places = std::vector<std::size_t>;

  void note(std::size_t place);
  [[nodiscard]] Places perhaps_fitting(const EntrySelection& selection) const;
  [[nodiscard]] Places with_other_versions(const Places& places) const;

  std::deque<Entry> entries_;
  std::unordered_map<EntryId, Places> by_id_;
  std::unordered_map<Uuid, Places> by_subject_;
  std::unordered_map<std::string, Places> by_kind_;
};

}  // namespace evenclaw
