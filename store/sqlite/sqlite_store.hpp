// The store on one SQLite file: write-ahead log, every acknowledged write on the disk.
#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/ports/store.hpp"
#include "store/sqlite/open_mode.hpp"

namespace evenclaw {

class Connection;

/// One thread at a time. Several programs may hold the same file open; a writer waits five seconds
/// for another before it gives up with "store-busy".
class SqliteStore final : public Store {
 public:
  /// Faults: "file-not-found", "file-unreadable", "file-read-only", "file-damaged", "file-newer",
  /// "not-our-file", "disk-full", "disk-failed", "store-busy". A refused file was not changed.
  /// Opened for reading only, every act that writes gives "file-read-only". Opened to salvage what
  /// it holds, a damaged file is not refused: only read_what_can_be() is of use then.
  static Result<std::unique_ptr<SqliteStore>> open(const std::string& file, OpenMode mode);
  ~SqliteStore() override;

  Result<StoreIdentity> identity() override;
  Outcome set_identity(BusinessId business, DeviceId device) override;
  Result<std::vector<Kept>> write(const Write& write) override;
  Outcome read_entries(const EntrySelection& selection,
                       const std::function<bool(const Entry&)>& each) override;
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
  friend class SqliteDirectory;
  explicit SqliteStore(std::shared_ptr<Connection> connection);

  std::shared_ptr<Connection> connection_;
};

}  // namespace evenclaw
