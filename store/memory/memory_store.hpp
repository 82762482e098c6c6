// The store in memory: for the tablet's working copy, for what is not kept, and for tests.
#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/ports/store.hpp"
#include "store/memory/listed_entries.hpp"

namespace evenclaw {

/// Answers as every other store does (tests/conformance). Durable as long as it lives.
class MemoryStore final : public Store {
 public:
  Result<StoreIdentity> identity() override;
  Outcome set_identity(BusinessId business, DeviceId device) override;
  Result<std::vector<Kept>> write(const Write& write) override;
  Outcome read_entries(const EntrySelection& selection,
                       const std::function<bool(const Entry&)>& each) override;
  /// Nothing here can be damaged.
  Outcome read_what_can_be(const std::function<bool(const Entry&)>& each,
                           const std::function<void(const Fault&)>& damaged) override;
  Result<std::optional<Entry>> find_entry(EntryId id) override;
  Result<std::int64_t> last_seq(DeviceId device, const Uuid& scope) override;
  Result<std::int64_t> last_order(const Uuid& scope) override;
  Result<std::vector<Cells>> select(const RowSelection& selection) override;
  Result<std::vector<Cells>> count(const CountQuery& query) override;
  Result<std::string> draft() override;
  Outcome forget_pictures() override;
  Result<bool> needs_rebuild() override;
  Outcome rebuilt() override;

 private:
  /// The entries of one scope. What is shown is listed when it is asked for, and grows with what is
  /// written behind it; anything else that is written makes it listed anew.
  struct Scope {
    EntrySet entries;
    std::set<EntryId> ids;
    std::set<std::int64_t> orders;
    std::map<std::pair<DeviceId, std::int64_t>, std::set<EntryId>> by_seq;
    std::shared_ptr<ListedEntries> shown;
    std::shared_ptr<ListedEntries> everything;
    bool has_redacted = false;
  };

  /// Rows by herd and by the cow or visit they belong to, in the order of their keys.
  using Subject = std::pair<std::string, std::string>;

  struct Table {
    RowsOf of;
    std::map<Subject, std::vector<Cells>> rows;
  };

  [[nodiscard]] bool is_own(const Entry& entry) const;
  [[nodiscard]] bool has_taken_seq(const std::vector<Entry>& entries) const;
  Kept keep(const Entry& entry);
  static void list_or_forget(Scope& scope, const Entry& entry, Kept kept);
  static std::shared_ptr<const ListedEntries> entries_of(Scope& scope, Versions versions);
  void remove_rows(RowsOf of, const std::string& herd, const std::string& subject);
  Table& table_of(std::string_view name);
  void insert_rows(RowsOf of, const Rows& rows);
  void offer_rows(const RowSelection& selection, RowPicker& picker) const;

  StoreIdentity identity_;
  std::map<Uuid, Scope> scopes_;
  std::map<std::string, Table, std::less<>> tables_;
  std::string draft_;
  bool needs_rebuild_ = false;
};

}  // namespace evenclaw
