// The log in SQLite: keeping entries as a union, and reading them in their total order.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "core/base/id.hpp"
#include "core/log/entry.hpp"
#include "core/log/merge.hpp"
#include "core/ports/store.hpp"
#include "store/sqlite/connection.hpp"

namespace evenclaw {

/// What read_selected() asks of each scope: the marks are scope, subject, kinds, id.
std::string selection_sql(const EntrySelection& selection);

// All of these throw SqlFailure.

/// As EntrySet::add() would answer and keep.
Kept keep_entry(Connection& connection, const Entry& entry);

/// True when another entry has the device's seq in this scope and this entry is not kept yet.
bool is_seq_taken(Connection& connection, const Envelope& envelope);

using EachEntry = std::function<bool(const Entry&)>;

/// One scope after another, each in its total order.
void read_selected(Connection& connection, const EntrySelection& selection, const EachEntry& each);

/// Every version, as read_selected(); what cannot be read is told to `damaged` and passed over.
/// Each entry is looked up by its own key, so that one that cannot be read takes no other with it.
void read_past_damage(Connection& connection, const EachEntry& each,
                      const std::function<void(const Fault&)>& damaged);

std::optional<Entry> shown_entry(Connection& connection, EntryId id);

/// The scopes that have entries, sorted.
std::vector<Uuid> scopes_of(Connection& connection);

std::int64_t last_seq_of(Connection& connection, DeviceId device, const Uuid& scope);
std::int64_t believed_order_of(Connection& connection, const Uuid& scope);

bool has_entries(Connection& connection);

}  // namespace evenclaw
