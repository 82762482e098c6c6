// A store in front of another one that keeps what is written, to write it once more elsewhere.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "core/ports/store.hpp"

namespace evenclaw::demo {

/// Answers as the store behind it does.
class KeptWrites final : public Store {
 public:
  explicit KeptWrites(Store& behind) : behind_(behind) {}

  /// Everything written so far as one write: all entries, and of each picture the last. Nothing is
  /// kept any more after that.
  [[nodiscard]] Write taken();

  Result<StoreIdentity> identity() override { return behind_.identity(); }

  Outcome set_identity(BusinessId business, DeviceId device) override {
    return behind_.set_identity(business, device);
  }

  Result<std::vector<Kept>> write(const Write& write) override;

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
  std::vector<Entry> entries_;
  std::map<CowId, PictureOfCow> cows_;  // by the first of the group
  std::map<VisitId, PictureOfVisit> visits_;
};

}  // namespace evenclaw::demo
