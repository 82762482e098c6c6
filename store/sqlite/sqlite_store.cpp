#include "store/sqlite/sqlite_store.hpp"

#include <utility>

#include "core/log/bodies.hpp"
#include "store/sqlite/count_sql.hpp"
#include "store/sqlite/entry_table.hpp"
#include "store/sqlite/meta.hpp"
#include "store/sqlite/open_file.hpp"
#include "store/sqlite/picture_tables.hpp"
#include "store/sqlite/scrub.hpp"

namespace evenclaw {

namespace {

template <class Tag>
Id<Tag> id_in_meta(Connection& connection, std::string_view name) {
  const auto text = meta_value(connection, name);
  if (!text) return {};
  return Id<Tag>{uuid_from_text(*text).value_or(Uuid{})};
}

void refuse_taken_seq(Connection& connection, const Entry& entry, DeviceId own) {
  if (entry.envelope.device != own || !is_seq_taken(connection, entry.envelope)) return;
  connection.refuse("store-busy", "another program wrote to it meanwhile",
                    "Read again what it holds now, then write.");
}

std::vector<Kept> keep_arrived(Connection& connection, const std::vector<Entry>& entries,
                               DeviceId own) {
  std::vector<Kept> answers;
  answers.reserve(entries.size());
  bool any_new = false;
  bool any_lost = false;
  for (const Entry& entry : entries) {
    answers.push_back(keep_entry(connection, entry));
    any_new = any_new || answers.back() != Kept::already;
    const bool is_own = !own.is_nil() && entry.envelope.device == own;
    any_lost = any_lost || (is_own && answers.back() == Kept::stored);
  }
  if (any_new) set_picture_stale(connection, true);
  if (any_lost) set_meta(connection, meta_name::made_by_copying, "yes");
  return answers;
}

std::vector<Kept> keep_made_here(Connection& connection, const std::vector<Entry>& entries,
                                 DeviceId own) {
  std::vector<Kept> answers;
  answers.reserve(entries.size());
  for (const Entry& entry : entries) {
    refuse_taken_seq(connection, entry, own);
    answers.push_back(keep_entry(connection, entry));
  }
  return answers;
}

std::vector<Kept> keep_all(Connection& connection, const Write& write) {
  const auto own = id_in_meta<DeviceTag>(connection, meta_name::device);
  std::vector<Kept> answers = write.arrived ? keep_arrived(connection, write.entries, own)
                                            : keep_made_here(connection, write.entries, own);
  PictureWriting writing(connection);
  for (const PictureOfCow& cow : write.cows) writing.replace_cow(cow);
  for (const PictureOfVisit& visit : write.visits) writing.replace_visit(visit);
  if (write.draft && write.draft->empty()) forget_meta(connection, meta_name::draft);
  if (write.draft && !write.draft->empty()) set_meta(connection, meta_name::draft, *write.draft);
  return answers;
}

bool took_bodies_away(const Write& write, const std::vector<Kept>& answers) {
  for (std::size_t i = 0; i < answers.size(); ++i) {
    if (answers[i] == Kept::redacted_now) return true;
    if (write.entries[i].envelope.kind == Redact::kind) return true;
  }
  return false;
}

std::vector<Cells> rows_of(Connection& connection, const SqlText& sql) {
  auto statement = connection.prepared(sql.text);
  for (const Cell& parameter : sql.parameters) statement->cell(parameter);
  std::vector<Cells> rows;
  while (statement->step()) {
    Cells& row = rows.emplace_back();
    row.reserve(static_cast<std::size_t>(statement->column_count()));
    for (int i = 0; i < statement->column_count(); ++i) row.push_back(statement->cell_at(i));
  }
  return rows;
}

}  // namespace

SqliteStore::SqliteStore(std::shared_ptr<Connection> connection)
    : connection_(std::move(connection)) {}

SqliteStore::~SqliteStore() = default;

Result<std::unique_ptr<SqliteStore>> SqliteStore::open(const std::string& file, OpenMode mode) {
  return caught([&] {
    auto connection = std::make_shared<Connection>(opened(file, mode));
    return std::unique_ptr<SqliteStore>(new SqliteStore(std::move(connection)));
  });
}

Result<StoreIdentity> SqliteStore::identity() {
  return caught([&] {
    StoreIdentity identity;
    identity.business = id_in_meta<BusinessTag>(*connection_, meta_name::business);
    identity.device = id_in_meta<DeviceTag>(*connection_, meta_name::device);
    identity.copied = is_copy(*connection_);
    return identity;
  });
}

Outcome SqliteStore::set_identity(BusinessId business, DeviceId device) {
  return caught([&] {
    Transaction transaction(*connection_);
    set_meta(*connection_, meta_name::business, to_text(business));
    set_meta(*connection_, meta_name::device, to_text(device));
    remember_file(*connection_);
    transaction.commit();
  });
}

Result<std::vector<Kept>> SqliteStore::write(const Write& write) {
  return caught([&] {
    Transaction transaction(*connection_);
    std::vector<Kept> answers = keep_all(*connection_, write);
    transaction.commit();
    if (took_bodies_away(write, answers)) scrub(*connection_);
    return answers;
  });
}

Outcome SqliteStore::read_entries(const EntrySelection& selection,
                                  const std::function<bool(const Entry&)>& each) {
  return caught([&] { read_selected(*connection_, selection, each); });
}

Outcome SqliteStore::read_what_can_be(const std::function<bool(const Entry&)>& each,
                                      const std::function<void(const Fault&)>& damaged) {
  return caught([&] { read_past_damage(*connection_, each, damaged); });
}

Result<std::optional<Entry>> SqliteStore::find_entry(EntryId id) {
  return caught([&] { return shown_entry(*connection_, id); });
}

Result<std::int64_t> SqliteStore::last_seq(DeviceId device, const Uuid& scope) {
  return caught([&] { return last_seq_of(*connection_, device, scope); });
}

Result<std::int64_t> SqliteStore::last_order(const Uuid& scope) {
  return caught([&] { return believed_order_of(*connection_, scope); });
}

Result<std::vector<Cells>> SqliteStore::select(const RowSelection& selection) {
  const Outcome possible = check_selection(selection);
  if (!possible) return possible.faults();
  return caught([&] { return rows_of(*connection_, select_sql(selection)); });
}

Result<std::vector<Cells>> SqliteStore::count(const CountQuery& query) {
  const Outcome possible = check_count(query);
  if (!possible) return possible.faults();
  return caught([&] { return rows_of(*connection_, count_sql(query)); });
}

Result<std::string> SqliteStore::draft() {
  return caught([&] { return meta_value(*connection_, meta_name::draft).value_or(""); });
}

Outcome SqliteStore::forget_pictures() {
  return caught([&] {
    Transaction transaction(*connection_);
    empty_pictures(*connection_);
    transaction.commit();
  });
}

Result<bool> SqliteStore::needs_rebuild() {
  return caught([&] { return is_picture_stale(*connection_); });
}

Outcome SqliteStore::rebuilt() {
  return caught([&] { set_picture_stale(*connection_, false); });
}

}  // namespace evenclaw
