// What the core needs of a place that keeps the log and its picture.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/entry.hpp"
#include "core/log/merge.hpp"
#include "core/log/selection.hpp"
#include "core/trade/rows.hpp"

namespace evenclaw {

/// Rows that replace whatever stood for these subjects.
struct PictureOfCow {
  HerdId herd;
  std::vector<CowId> group;  // rows of every one of them are replaced
  Rows rows;
};

struct PictureOfVisit {
  HerdId herd;
  VisitId visit;
  Rows rows;
};

/// What is written together or not at all.
struct Write {
  std::vector<Entry> entries;
  std::vector<PictureOfCow> cows;
  std::vector<PictureOfVisit> visits;
  /// The half-entered turn kept with this write: nothing leaves it, "" clears it.
  std::optional<std::string> draft;
  /// The entries were made elsewhere and their rows come in later writes. When one of them is new,
  /// needs_rebuild() until rebuilt().
  bool arrived = false;
};

/// Which versions of an entry are wanted that is kept in more than one.
enum class Versions { shown, every };

/// Versions::every gives out all versions of each entry of which one fits: whoever reads them sees
/// by himself that there are several, and which of them is shown.
struct EntrySelection {
  std::optional<Uuid> scope;
  std::optional<Uuid> subject;     // touches this cow, visit or herd
  std::vector<std::string> kinds;  // empty: all
  std::optional<EntryId> id = {};
  Versions versions = Versions::shown;
};

/// Who this store belongs to and which device it is.
struct StoreIdentity {
  BusinessId business;  // nil in a new store
  DeviceId device;
  /// The file was copied, restored or put back since: it needs a device id of its own.
  bool copied = false;
};

class Store {
 public:
  Store() = default;
  Store(const Store&) = delete;
  Store& operator=(const Store&) = delete;
  virtual ~Store() = default;

  virtual Result<StoreIdentity> identity() = 0;
  /// Sets business and device, and clears `copied`.
  virtual Outcome set_identity(BusinessId business, DeviceId device) = 0;

  /// Durable when it returns without fault: only then may anyone say "saved". One answer per
  /// entry, as EntrySet::add would give; a redact entry takes the body of its target away in the
  /// same act. On a fault nothing of the write is kept.
  /// A new entry of this store's own device whose seq another entry of its scope already has means
  /// that another program wrote since last_seq() was asked: fault "store-busy"; read again and
  /// write anew. Entries of other devices that clash, or that arrived, are kept, for they are facts
  /// (LogFlaw). A new entry of the own device that arrived was lost here: an older state was put
  /// back, and identity() says `copied` from then on.
  virtual Result<std::vector<Kept>> write(const Write& write) = 0;

  /// Entries in the total order of each scope, one scope after another; stops when `each` returns
  /// false. Never holds the whole log in memory.
  virtual Outcome read_entries(const EntrySelection& selection,
                               const std::function<bool(const Entry&)>& each) = 0;

  /// Every version kept, also the ones not shown.
  Outcome read_everything(const std::function<bool(const Entry&)>& each) {
    EntrySelection everything;
    everything.versions = Versions::every;
    return read_entries(everything, each);
  }

  /// As read_everything(), past what is damaged: each entry that cannot be read any more is told to
  /// `damaged`, with where it lies, and passed over.
  virtual Outcome read_what_can_be(const std::function<bool(const Entry&)>& each,
                                   const std::function<void(const Fault&)>& damaged) = 0;

  virtual Result<std::optional<Entry>> find_entry(EntryId id) = 0;

  /// The highest seq this device has used in the scope, 0 when none.
  virtual Result<std::int64_t> last_seq(DeviceId device, const Uuid& scope) = 0;
  /// The highest believed Lamport counter of the scope (jumps beyond largest_order_jump left out).
  virtual Result<std::int64_t> last_order(const Uuid& scope) = 0;

  virtual Result<std::vector<Cells>> select(const RowSelection& selection) = 0;
  virtual Result<std::vector<Cells>> count(const CountQuery& query) = 0;

  virtual Result<std::string> draft() = 0;

  /// Empties every picture table, so that a rebuild starts from nothing. A store with entries
  /// needs_rebuild() from then on, also after a crash, until rebuilt() says that all is there.
  virtual Outcome forget_pictures() = 0;
  /// True when rows are missing: a rebuild did not come to its end, or a program with other row
  /// types threw them away.
  virtual Result<bool> needs_rebuild() = 0;
  virtual Outcome rebuilt() = 0;
};

/// Rows of a type from a store, through its fields(). Written out for each row type in store.cpp
/// and nowhere else: what it costs to compile is paid once. A new row type gets its line there.
template <HasFields RowType>
struct RowsSelected {
  static Result<std::vector<RowType>> from(Store& store, const RowSelection& selection);
};

/// Rows of a type from a store, through its fields().
template <HasFields RowType>
Result<std::vector<RowType>> select_as(Store& store, std::optional<HerdId> herd,
                                       std::vector<Filter> where = {},
                                       std::vector<std::string> sorted_by = {}) {
  return RowsSelected<RowType>::from(
      store, {std::string(RowType::table), herd, std::move(where), std::move(sorted_by)});
}

}  // namespace evenclaw
