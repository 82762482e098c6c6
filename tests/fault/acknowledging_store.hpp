// A store that remembers every write it acknowledged, and tells the watched disk of it.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/ports/store.hpp"
#include "tests/fault/watched_disk.hpp"

namespace evenclaw::test {

/// Entries and draft of each write that was acknowledged, in order; rows are left out.
using Acknowledged = std::vector<Write>;

class AcknowledgingStore final : public Store {
 public:
  AcknowledgingStore(Store& behind, Acknowledged& acknowledged)
      : behind_(behind), acknowledged_(acknowledged) {}

  Result<std::vector<Kept>> write(const Write& write) override {
    auto kept = behind_.write(write);
    if (!kept) return kept;
    Write told;
    told.entries = write.entries;
    told.draft = write.draft;
    acknowledged_.push_back(std::move(told));
    if (WatchedDisk* disk = WatchedDisk::now()) disk->acknowledge();
    return kept;
  }

  Result<StoreIdentity> identity() override { return behind_.identity(); }

  Outcome set_identity(BusinessId business, DeviceId device) override {
    return behind_.set_identity(business, device);
  }

  Outcome read_entries(const EntrySelection& selection,
                       const std::function<bool(const Entry&)>& each) override {
    return behind_.read_entries(selection, each);
  }

  Outcome read_what_can_be(const std::function<bool(const Entry&)>& each,
                           const std::function<void(const Fault&)>& damaged) override {
    return behind_.read_what_can_be(each, damaged);
  }

  Result<std::optional<Entry>> find_entry(EntryId id) override { return behind_.find_entry(id); }

  Result<std::int64_t> last_seq(DeviceId device, const Uuid& scope) override {
    return behind_.last_seq(device, scope);
  }

  Result<std::int64_t> last_order(const Uuid& scope) override { return behind_.last_order(scope); }

  Result<std::vector<Cells>> select(const RowSelection& selection) override {
    return behind_.select(selection);
  }

  Result<std::vector<Cells>> count(const CountQuery& query) override {
    return behind_.count(query);
  }

  Result<std::string> draft() override { return behind_.draft(); }

  Outcome forget_pictures() override { return behind_.forget_pictures(); }

  Result<bool> needs_rebuild() override { return behind_.needs_rebuild(); }

  Outcome rebuilt() override { return behind_.rebuilt(); }

 private:
  Store& behind_;
  Acknowledged& acknowledged_;
};

}  // namespace evenclaw::test
