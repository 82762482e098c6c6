// Writing entries into one scope of the log: numbered without gaps, stamped, and stored together
// with the pictures they change.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <utility>
#include <vector>

#include "core/api/ports.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/body.hpp"
#include "core/log/entry.hpp"

namespace evenclaw {

/// Who judged and who typed; nil when not known.
struct SaidBy {
  PersonId caller;
  PersonId writer;
  friend bool operator==(const SaidBy&, const SaidBy&) = default;
};

/// What an envelope needs beside its numbers and what the body names itself.
struct EntryFacts {
  EntryId id;
  std::vector<Uuid> subjects = {};  // of an entry it refers to
  SaidBy by = {};
  std::optional<EntryId> supersedes = {};
};

class Journal {
 public:
  /// Fault "usage" when ready_business() was not called for this store.
  static Result<Journal> open(const Ports& ports, const Uuid& scope);

  [[nodiscard]] EntryId fresh_id();

  /// Adds an entry to the next write.
  template <class Body>
  Outcome add(const Body& body, const EntryFacts& facts) {
    const Outcome counted = count_one();
    if (!counted) return counted;
    unwritten_.push_back(entry_of(envelope_of(facts), body));
    return Done{};
  }

  [[nodiscard]] std::span<const Entry> unwritten() const { return unwritten_; }

  [[nodiscard]] DeviceId device() const { return device_; }

  [[nodiscard]] const Uuid& scope() const { return scope_; }

  /// Stores what was added with the pictures it changes, together or not at all. When another
  /// program wrote into the same file meanwhile, the entries are counted anew behind its own. After
  /// a fault the same call may be tried again.
  Result<std::vector<Kept>> write(const std::optional<std::string>& draft = std::nullopt);

 private:
  Journal(const Ports& ports, const Uuid& scope, const StoreIdentity& identity)
      : ports_(ports), scope_(scope), business_(identity.business), device_(identity.device) {}

  Outcome count_one();
  Outcome read_counters();
  Outcome count_anew();
  Result<std::vector<Kept>> write_counted(const std::optional<std::string>& draft);
  [[nodiscard]] Envelope envelope_of(const EntryFacts& facts);

  Ports ports_;
  Uuid scope_;
  BusinessId business_;
  DeviceId device_;
  std::vector<Entry> unwritten_;
  std::int64_t seq_ = 0;
  std::int64_t order_ = 0;
};

/// Adds one entry and writes it; for use cases that write a single one.
template <class Body>
Result<EntryId> write_one(const Ports& ports, const Uuid& scope, const Body& body,
                          EntryFacts facts) {
  auto journal = Journal::open(ports, scope);
  if (!journal) return journal.faults();
  if (facts.id.is_nil()) facts.id = journal->fresh_id();
  const EntryId id = facts.id;
  const Outcome added = journal->add(body, facts);
  if (!added) return added.faults();
  const auto kept = journal->write();
  if (!kept) return kept.faults();
  return id;
}

}  // namespace evenclaw
