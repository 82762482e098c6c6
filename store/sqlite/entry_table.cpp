#include "store/sqlite/entry_table.hpp"

#include <string>
#include <string_view>

#include "core/log/bodies.hpp"
#include "store/sqlite/failure.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view columns = "e.envelope, e.body, e.digest";
// Left alone SQLite walks the whole scope in order, to spare itself the sorting.
constexpr std::string_view by_its_key = " INDEXED BY sqlite_autoindex_entry_1";
constexpr std::string_view in_total_order = " ORDER BY e.order_, e.device, e.seq, e.id, e.digest";
// Of several versions of an id the one with the lowest digest is shown.
constexpr std::string_view is_shown =
    " AND NOT EXISTS (SELECT 1 FROM entry AS o"
    " WHERE o.scope = e.scope AND o.id = e.id AND o.digest < e.digest)";

void bind_supersedes(Statement& statement, const Envelope& envelope) {
  if (envelope.supersedes) {
    statement.id(envelope.supersedes->value);
  } else {
    statement.nothing();
  }
}

// Whether it was inserted tells the count of changes: a RETURNING clause is a trigger to SQLite,
// which for every row opens a table of its own and copies each page before it is touched.
bool insert_row(Connection& connection, const Entry& entry, const Digest& digest,
                const std::string& envelope_text) {
  const Envelope& envelope = entry.envelope;
  auto insert = connection.prepared(
      "INSERT INTO entry (scope, id, digest, device, seq, order_, kind, supersedes, at, envelope,"
      " body) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT DO NOTHING");
  insert->lasting_bytes(envelope.scope.bytes).lasting_bytes(envelope.id.value.bytes);
  insert->lasting_bytes(digest.bytes).lasting_bytes(envelope.device.value.bytes);
  insert->integer(envelope.seq).integer(envelope.order).lasting_text(envelope.kind);
  bind_supersedes(*insert, envelope);
  insert->text(to_text(envelope.at)).lasting_text(envelope_text);
  if (entry.body) {
    insert->lasting_text(entry.body->bytes());
  } else {
    insert->nothing();
  }
  insert->run();
  return connection.changed() > 0;
}

void insert_subjects(Connection& connection, const Envelope& envelope, const Digest& digest) {
  auto insert = connection.prepared(
      "INSERT INTO entry_subject (scope, subject, kind, id, digest) VALUES (?, ?, ?, ?, ?)"
      " ON CONFLICT DO NOTHING");
  for (const Uuid& subject : envelope.subjects) {
    insert->lasting_bytes(envelope.scope.bytes)
        .lasting_bytes(subject.bytes)
        .lasting_text(envelope.kind)
        .lasting_bytes(envelope.id.value.bytes)
        .lasting_bytes(digest.bytes)
        .run();
  }
}

bool is_redacted(Connection& connection, const Envelope& envelope) {
  auto select = connection.prepared("SELECT 1 FROM redacted WHERE scope = ? AND target = ?");
  return select->id(envelope.scope).id(envelope.id.value).step();
}

void take_body_away(Connection& connection, const Uuid& scope, EntryId target) {
  connection.prepared("INSERT INTO redacted (scope, target) VALUES (?, ?) ON CONFLICT DO NOTHING")
      ->id(scope)
      .id(target.value)
      .run();
  connection
      .prepared("UPDATE entry SET body = NULL WHERE scope = ? AND id = ? AND kind <> 'redact'")
      ->id(scope)
      .id(target.value)
      .run();
}

bool has_other_version(Connection& connection, const Envelope& envelope, const Digest& digest) {
  auto select =
      connection.prepared("SELECT 1 FROM entry WHERE scope = ? AND id = ? AND digest <> ?");
  return select->id(envelope.scope).id(envelope.id.value).digest(digest).step();
}

// The entry is there with the same digest; what may differ is whether the body is there. Redacted
// beats full, but a redact entry keeps its body, or what it takes away could come back.
Kept joined(Connection& connection, const Entry& entry, const Digest& digest) {
  const Envelope& envelope = entry.envelope;
  if (envelope.kind == Redact::kind) {
    if (!entry.body) return Kept::already;
    connection
        .prepared(
            "UPDATE entry SET body = ? WHERE scope = ? AND id = ? AND digest = ?"
            " AND body IS NULL")
        ->text(entry.body->bytes())
        .id(envelope.scope)
        .id(envelope.id.value)
        .digest(digest)
        .run();
    return Kept::already;
  }
  if (entry.body) return Kept::already;
  connection
      .prepared(
          "UPDATE entry SET body = NULL WHERE scope = ? AND id = ? AND digest = ?"
          " AND body IS NOT NULL")
      ->id(envelope.scope)
      .id(envelope.id.value)
      .digest(digest)
      .run();
  return connection.changed() > 0 ? Kept::redacted_now : Kept::already;
}

Result<Entry> kept_at_row(const Statement& row) {
  std::optional<std::string_view> body;
  if (!row.is_empty(1)) body = row.text_at(1);
  return entry_from_kept_parts(row.text_at(0), body, row.digest_at(2));
}

Entry entry_at_row(const Connection& connection, const Statement& row) {
  auto entry = kept_at_row(row);
  if (!entry) {
    const Fault& why = entry.faults().front();
    connection.refuse("file-damaged", "an entry cannot be read any more (" + why.message + ")",
                      "Keep a copy of it, check it, then restore the latest backup.");
  }
  return *std::move(entry);
}

Fault unreadable(const Connection& connection, const Uuid& scope, const Statement& key,
                 const std::string& why) {
  Fault fault =
      file_fault(connection.file(), "file-damaged",
                 "entry " + to_text(key.id_at(0)) + " (count " + std::to_string(key.integer_at(3)) +
                     " of device " + to_text(key.id_at(2)) + ", herd " + to_text(scope) +
                     ") cannot be read any more: " + why,
                 "Keep a copy of it, then restore the latest backup.");
  fault.token = to_text(key.id_at(0));
  return fault;
}

/// The entry a row of the walk names: its id, digest, device and count.
Result<Entry> entry_of_key(Connection& connection, const Uuid& scope, const Statement& key) {
  std::string why = "it is missing";
  try {
    auto row = connection.prepared(
        "SELECT envelope, body, digest FROM entry WHERE scope = ? AND id = ? AND digest = ?");
    if (row->id(scope).id(key.id_at(0)).digest(key.digest_at(1)).step()) {
      auto entry = kept_at_row(*row);
      if (entry) return entry;
      why = entry.faults().front().message;
    }
  } catch (const SqlFailure& failure) {
    why = failure.fault.message;
  }
  return unreadable(connection, scope, key, why);
}

// False when `each` has had enough.
bool give_out(const Connection& connection, Statement& rows, const EachEntry& each) {
  while (rows.step()) {
    if (!each(entry_at_row(connection, rows))) return false;
  }
  return true;
}

std::string kind_condition(std::string_view column, std::size_t count) {
  if (count == 0) return {};
  std::string sql = " AND " + std::string(column) + " IN (?";
  for (std::size_t i = 1; i < count; ++i) sql += ", ?";
  return sql + ")";
}

std::string every_version_of(const EntrySelection& selection) {
  const std::string kinds = kind_condition("kind", selection.kinds.size());
  std::string sql = " FROM entry AS e" + std::string(by_its_key) + " WHERE e.scope = ?1";
  if (selection.subject) {
    sql += " AND e.id IN (SELECT id FROM entry_subject WHERE scope = ?1 AND subject = ?";
    sql += kinds + ")";
  } else if (!kinds.empty()) {
    sql += " AND e.id IN (SELECT id FROM entry INDEXED BY entry_of_kind WHERE scope = ?1";
    sql += kinds + ")";
  }
  return sql;
}

std::string shown_version_of(const EntrySelection& selection) {
  std::string sql = " FROM entry AS e";
  if (selection.subject) {
    sql =
        " FROM entry_subject AS s CROSS JOIN entry AS e"
        " ON e.scope = s.scope AND e.id = s.id AND e.digest = s.digest"
        " WHERE s.scope = ?1 AND s.subject = ?";
    sql += kind_condition("s.kind", selection.kinds.size());
  } else {
    sql += selection.kinds.empty() ? by_its_key : " INDEXED BY entry_of_kind";
    sql += " WHERE e.scope = ?1" + kind_condition("e.kind", selection.kinds.size());
  }
  return sql + std::string(is_shown);
}

void bind_selection(Statement& rows, const Uuid& scope, const EntrySelection& selection) {
  rows.id(scope);
  if (selection.subject) rows.id(*selection.subject);
  for (const std::string& kind : selection.kinds) rows.text(kind);
  if (selection.id) rows.id(selection.id->value);
}

/// False when the one who reads wants no more.
bool give_out_readable(Connection& connection, const Uuid& scope, const EachEntry& each,
                       const std::function<void(const Fault&)>& damaged) {
  // The index holds all of this, so that the walk itself touches no entry.
  auto keys = connection.prepared(
      "SELECT e.id, e.digest, e.device, e.seq FROM entry AS e INDEXED BY entry_in_order"
      " WHERE e.scope = ?" +
      std::string(in_total_order));
  keys->id(scope);
  while (keys->step()) {
    const auto entry = entry_of_key(connection, scope, *keys);
    if (!entry) {
      damaged(entry.faults().front());
    } else if (!each(*entry)) {
      return false;
    }
  }
  return true;
}

}  // namespace

std::string selection_sql(const EntrySelection& selection) {
  std::string sql = "SELECT " + std::string(columns);
  const bool is_whole_scope = !selection.subject && selection.kinds.empty() && !selection.id;
  if (is_whole_scope) {
    sql += " FROM entry AS e INDEXED BY entry_in_order WHERE e.scope = ?1";
    if (selection.versions == Versions::shown) sql += is_shown;
  } else {
    sql += selection.versions == Versions::every ? every_version_of(selection)
                                                 : shown_version_of(selection);
    if (selection.id) sql += " AND e.id = ?";
  }
  return sql + std::string(in_total_order);
}

Kept keep_entry(Connection& connection, const Entry& entry) {
  const std::string envelope_text = envelope_bytes(entry);
  const Digest digest = sha256(envelope_text);
  const Envelope& envelope = entry.envelope;
  const auto target = redact_target(entry);
  const bool is_redact = envelope.kind == Redact::kind;
  Entry kept = entry;
  if (kept.body && !is_redact && is_redacted(connection, envelope)) kept.body.reset();
  const bool is_new = insert_row(connection, kept, digest, envelope_text);
  if (is_new) insert_subjects(connection, envelope, digest);
  if (target) take_body_away(connection, envelope.scope, *target);
  if (!is_new) return joined(connection, kept, digest);
  return has_other_version(connection, envelope, digest) ? Kept::two_versions : Kept::stored;
}

bool is_seq_taken(Connection& connection, const Envelope& envelope) {
  auto select = connection.prepared(
      "SELECT 1 FROM entry INDEXED BY entry_of_device WHERE scope = ?1 AND device = ?2"
      " AND seq = ?3 AND id <> ?4"
      " AND NOT EXISTS (SELECT 1 FROM entry WHERE scope = ?1 AND id = ?4)");
  select->id(envelope.scope).id(envelope.device.value).integer(envelope.seq);
  return select->id(envelope.id.value).step();
}

void read_selected(Connection& connection, const EntrySelection& selection, const EachEntry& each) {
  const std::vector<Uuid> scopes =
      selection.scope ? std::vector<Uuid>{*selection.scope} : scopes_of(connection);
  const std::string sql = selection_sql(selection);
  for (const Uuid& scope : scopes) {
    auto rows = connection.prepared(sql);
    bind_selection(*rows, scope, selection);
    if (!give_out(connection, *rows, each)) return;
  }
}

void read_past_damage(Connection& connection, const EachEntry& each,
                      const std::function<void(const Fault&)>& damaged) {
  for (const Uuid& scope : scopes_of(connection)) {
    try {
      if (!give_out_readable(connection, scope, each, damaged)) return;
    } catch (SqlFailure& failure) {
      failure.fault.message += " What follows in the herd " + to_text(scope) + " is not given out.";
      damaged(failure.fault);
    }
  }
}

std::optional<Entry> shown_entry(Connection& connection, EntryId id) {
  for (const Uuid& scope : scopes_of(connection)) {
    auto row = connection.prepared(
        "SELECT envelope, body, digest FROM entry WHERE scope = ? AND id = ? ORDER BY digest LIMIT "
        "1");
    if (row->id(scope).id(id.value).step()) return entry_at_row(connection, *row);
  }
  return std::nullopt;
}

std::vector<Uuid> scopes_of(Connection& connection) {
  std::vector<Uuid> scopes;
  // From one scope straight to the next: a scan of the index would visit every entry.
  auto next = connection.prepared("SELECT min(scope) FROM entry WHERE scope > ?");
  // The empty bytes sort before every id.
  next->bytes({});
  while (next->step() && !next->is_empty(0)) {
    scopes.push_back(next->id_at(0));
    next->reset();
    next->id(scopes.back());
  }
  return scopes;
}

std::int64_t last_seq_of(Connection& connection, DeviceId device, const Uuid& scope) {
  auto select = connection.prepared("SELECT max(seq) FROM entry WHERE scope = ? AND device = ?");
  return select->id(scope).id(device.value).step() ? select->integer_at(0) : 0;
}

std::int64_t believed_order_of(Connection& connection, const Uuid& scope) {
  std::int64_t believed = 0;
  // Whatever lies within one believed step of what is believed is believed too.
  while (true) {
    auto select = connection.prepared(
        "SELECT max(order_) FROM entry WHERE scope = ? AND order_ > ? AND order_ <= ?");
    select->id(scope).integer(believed).integer(believed + largest_order_jump);
    if (!select->step() || select->is_empty(0)) return believed;
    believed = select->integer_at(0);
  }
}

bool has_entries(Connection& connection) {
  return connection.prepared("SELECT 1 FROM entry LIMIT 1")->step();
}

}  // namespace evenclaw
