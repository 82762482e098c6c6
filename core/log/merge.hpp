// Union of logs: what is kept when the same entry arrives twice, differs, or was redacted.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <tuple>
#include <utility>
#include <vector>

#include "core/base/digest.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"
#include "core/log/entry.hpp"

namespace evenclaw {

/// What became of an entry that was offered.
enum class Kept {
  stored,
  already,       // the same bytes were there, or the redacted form of them
  redacted_now,  // it was there in full; what was offered is its redacted form, which wins
  two_versions   // the same id with other bytes: both are kept, the lowest digest is shown
};

/// The entry whose body a redact entry takes away; nothing for any other kind. What it names is
/// gone for good, before and after: a redact entry is never redacted itself (of its two forms the
/// full one is kept), and correcting it brings nothing back.
std::optional<EntryId> redact_target(const Entry& entry);

/// A set of entries under union. Adding is commutative, associative and idempotent in its outcome
/// (shown(), everything()); the order of arrival changes nothing. Bodies named by a redact entry of
/// the set are dropped, whichever comes first.
class EntrySet {
 public:
  Kept add(Entry entry);
  void add_all(const EntrySet& other);

  /// One entry per (scope, id), the version with the lowest digest, in the total order.
  [[nodiscard]] std::vector<Entry> shown() const;
  /// Every version kept, in the total order.
  [[nodiscard]] std::vector<Entry> everything() const;
  /// Ids of which more than one version is kept, sorted.
  [[nodiscard]] std::vector<EntryId> in_two_versions() const;

  [[nodiscard]] std::size_t size() const { return entries_.size(); }

  friend bool operator==(const EntrySet&, const EntrySet&) = default;

 private:
  struct Key {
    Uuid scope;
    EntryId id;
    Digest digest;

    friend bool operator<(const Key& a, const Key& b) {
      return std::tie(a.scope, a.id, a.digest) < std::tie(b.scope, b.id, b.digest);
    }

    friend bool operator==(const Key&, const Key&) = default;
  };

  void drop_bodies(const Uuid& scope, EntryId target);

  std::map<Key, Entry> entries_;
  std::set<std::pair<Uuid, EntryId>> redacted_;
};

/// A hole in a device's count, a counter that jumped further than is believed, or a correction that
/// cannot count: one in a ring, of another kind, or of an entry about a cow or visit it does not
/// name itself (both `supersedes_other_kind`).
struct LogFlaw {
  enum class Kind { gap, seq_used_twice, order_jump, supersedes_cycle, supersedes_other_kind };
  Kind kind;
  Uuid scope;
  DeviceId device;
  std::int64_t seq = 0;  // where
  EntryId entry;         // nil for a gap

  friend bool operator==(const LogFlaw&, const LogFlaw&) = default;
};

template <>
struct EnumWords<LogFlaw::Kind> {
  static constexpr EnumWord<LogFlaw::Kind> table[] = {
      {LogFlaw::Kind::gap, "gap"},
      {LogFlaw::Kind::seq_used_twice, "seq_used_twice"},
      {LogFlaw::Kind::order_jump, "order_jump"},
      {LogFlaw::Kind::supersedes_cycle, "supersedes_cycle"},
      {LogFlaw::Kind::supersedes_other_kind, "supersedes_other_kind"}};
};

/// All flaws, sorted by scope, device and seq. A hole of any width is one gap, named by its first
/// missing seq; `entries` may hold every version.
std::vector<LogFlaw> flaws_of(std::span<const Entry> entries);

}  // namespace evenclaw
