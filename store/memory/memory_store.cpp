#include "store/memory/memory_store.hpp"

#include <algorithm>
#include <cstddef>

namespace evenclaw {

namespace {

std::string_view subject_column_of(std::string_view table) {
  return find_table(table)->columns.at(1).name;
}

std::string text_in(const Cells& row, std::size_t column) {
  const auto* text = std::get_if<std::string>(&row.at(column));
  return text == nullptr ? std::string() : *text;
}

// The subject a selection asks for by name, when it does; then its other rows need no look.
std::optional<std::string> subject_wanted(const RowSelection& selection) {
  const std::string_view column = subject_column_of(selection.table);
  for (const Filter& filter : selection.where) {
    if (filter.column != column || filter.compare != Compare::equal) continue;
    if (const auto* text = std::get_if<std::string>(&filter.cell)) return *text;
  }
  return std::nullopt;
}

bool has_key_of(const std::vector<Cells>& rows, const Cells& row, std::ptrdiff_t key_columns) {
  return std::any_of(rows.begin(), rows.end(), [&](const Cells& other) {
    return std::equal(row.begin(), row.begin() + key_columns, other.begin());
  });
}

}  // namespace

Result<StoreIdentity> MemoryStore::identity() {
  return identity_;
}

Outcome MemoryStore::set_identity(BusinessId business, DeviceId device) {
  identity_ = {business, device, false};
  return Done{};
}

bool MemoryStore::is_own(const Entry& entry) const {
  return !identity_.device.is_nil() && entry.envelope.device == identity_.device;
}

bool MemoryStore::has_taken_seq(const std::vector<Entry>& entries) const {
  std::map<std::pair<Uuid, std::int64_t>, EntryId> offered;
  for (const Entry& entry : entries) {
    const Envelope& envelope = entry.envelope;
    if (envelope.device != identity_.device) continue;
    const auto scope = scopes_.find(envelope.scope);
    if (scope != scopes_.end()) {
      if (scope->second.ids.count(envelope.id) > 0) continue;
      if (scope->second.by_seq.count({envelope.device, envelope.seq}) > 0) return true;
    }
    const auto [at, is_first] = offered.try_emplace({envelope.scope, envelope.seq}, envelope.id);
    if (!is_first && at->second != envelope.id) return true;
  }
  return false;
}

Kept MemoryStore::keep(const Entry& entry) {
  const Envelope& envelope = entry.envelope;
  Scope& scope = scopes_[envelope.scope];
  scope.ids.insert(envelope.id);
  scope.orders.insert(envelope.order);
  scope.by_seq[{envelope.device, envelope.seq}].insert(envelope.id);
  const Kept kept = scope.entries.add(entry);
  list_or_forget(scope, entry, kept);
  return kept;
}

/// What comes behind all others stands at the end of the list; where a body was or is taken away
/// nothing is as it was offered.
void MemoryStore::list_or_forget(Scope& scope, const Entry& entry, Kept kept) {
  if (kept == Kept::already) return;
  scope.has_redacted = scope.has_redacted || redact_target(entry).has_value();
  const bool grows = kept == Kept::stored && !scope.has_redacted && scope.shown &&
                     !scope.everything && scope.shown->may_append(entry);
  if (grows) return scope.shown->append(entry);
  scope.shown.reset();
  scope.everything.reset();
}

Result<std::vector<Kept>> MemoryStore::write(const Write& write) {
  if (!write.arrived && has_taken_seq(write.entries)) {
    return Fault{.slug = "store-busy",
                 .message = "Another program wrote meanwhile.",
                 .remedy = "Read again what is held now, then write."};
  }
  std::vector<Kept> answers;
  answers.reserve(write.entries.size());
  for (const Entry& entry : write.entries) {
    answers.push_back(keep(entry));
    if (!write.arrived || answers.back() == Kept::already) continue;
    needs_rebuild_ = true;
    const bool was_lost = answers.back() == Kept::stored && is_own(entry);
    identity_.copied = identity_.copied || was_lost;
  }
  for (const PictureOfCow& cow : write.cows) {
    for (const CowId id : cow.group) remove_rows(RowsOf::cow, to_text(cow.herd), to_text(id));
    insert_rows(RowsOf::cow, cow.rows);
  }
  for (const PictureOfVisit& visit : write.visits) {
    remove_rows(RowsOf::visit, to_text(visit.herd), to_text(visit.visit));
    insert_rows(RowsOf::visit, visit.rows);
  }
  if (write.draft) draft_ = *write.draft;
  return answers;
}

std::shared_ptr<const ListedEntries> MemoryStore::entries_of(Scope& scope, Versions versions) {
  if (!scope.shown) scope.shown = std::make_shared<ListedEntries>(scope.entries.shown());
  if (versions == Versions::shown || scope.shown->size() == scope.entries.size()) {
    return scope.shown;
  }
  if (!scope.everything) {
    scope.everything = std::make_shared<ListedEntries>(scope.entries.everything());
  }
  return scope.everything;
}

Outcome MemoryStore::read_entries(const EntrySelection& selection,
                                  const std::function<bool(const Entry&)>& each) {
  // Taken down first: `each` may write, which makes scopes and changes what is listed.
  std::vector<std::pair<std::shared_ptr<const ListedEntries>, std::vector<std::size_t>>> of_scopes;
  for (auto& [id, scope] : scopes_) {
    const bool is_wanted = !selection.scope || *selection.scope == id;
    if (!is_wanted) continue;
    const auto entries = entries_of(scope, selection.versions);
    of_scopes.emplace_back(entries, entries->places_of(selection));
  }
  for (const auto& [entries, places] : of_scopes) {
    for (const std::size_t place : places) {
      if (!each(entries->at(place))) return Done{};
    }
  }
  return Done{};
}

Outcome MemoryStore::read_what_can_be(const std::function<bool(const Entry&)>& each,
                                      const std::function<void(const Fault&)>& /*damaged*/) {
  return read_everything(each);
}

Result<std::optional<Entry>> MemoryStore::find_entry(EntryId id) {
  for (auto& [scope_id, scope] : scopes_) {
    if (scope.ids.count(id) == 0) continue;
    const auto shown = entries_of(scope, Versions::shown);
    EntrySelection of_that_id;
    of_that_id.id = id;
    return std::optional<Entry>(shown->at(shown->places_of(of_that_id).front()));
  }
  return std::optional<Entry>();
}

Result<std::int64_t> MemoryStore::last_seq(DeviceId device, const Uuid& scope) {
  const auto found = scopes_.find(scope);
  if (found == scopes_.end()) return std::int64_t{0};
  // The device's counts end where the next device's begin.
  const auto& by_seq = found->second.by_seq;
  std::int64_t last = 0;
  for (auto at = by_seq.lower_bound({device, last}); at != by_seq.end(); ++at) {
    if (at->first.first != device) break;
    last = at->first.second;
  }
  return last;
}

Result<std::int64_t> MemoryStore::last_order(const Uuid& scope) {
  std::int64_t believed = 0;
  const auto found = scopes_.find(scope);
  if (found == scopes_.end()) return believed;
  for (const std::int64_t order : found->second.orders) {
    if (order - believed > largest_order_jump) break;
    believed = std::max(believed, order);
  }
  return believed;
}

void MemoryStore::remove_rows(RowsOf of, const std::string& herd, const std::string& subject) {
  const Subject whose{herd, subject};
  for (auto& [name, table] : tables_) {
    if (table.of == of) table.rows.erase(whose);
  }
}

MemoryStore::Table& MemoryStore::table_of(std::string_view name) {
  const auto known = tables_.find(name);
  if (known != tables_.end()) return known->second;
  return tables_.emplace(name, Table{rows_of(*find_table(name)), {}}).first->second;
}

void MemoryStore::insert_rows(RowsOf of, const Rows& rows) {
  for_each_table(rows, [&]<class Row>(const std::vector<Row>& of_table) {
    if (of_table.empty()) return;
    Table& table = table_of(Row::table);
    if (table.of != of) return;
    for (const Row& row : of_table) {
      Cells cells = to_cells(row);
      std::vector<Cells>& there = table.rows[{text_in(cells, 0), text_in(cells, 1)}];
      // Two rows with one key would be a mistake of the picture: the first stays, as elsewhere.
      if (!has_key_of(there, cells, Row::key_columns)) there.push_back(std::move(cells));
    }
  });
}

/// At least all that fit, and not those of other herds or subjects.
void MemoryStore::offer_rows(const RowSelection& selection, RowPicker& picker) const {
  const auto table = tables_.find(selection.table);
  if (table == tables_.end()) return;
  const auto& rows = table->second.rows;
  const std::string herd = selection.herd ? to_text(*selection.herd) : std::string();
  const auto subject = subject_wanted(selection);
  if (selection.herd && subject) {
    const auto at = rows.find({herd, *subject});
    if (at != rows.end()) picker.offer(at->second);
    return;
  }
  for (auto at = rows.lower_bound({herd, ""}); at != rows.end(); ++at) {
    if (selection.herd && at->first.first != herd) break;
    if (!subject || at->first.second == *subject) picker.offer(at->second);
  }
}

Result<std::vector<Cells>> MemoryStore::select(const RowSelection& selection) {
  const Outcome possible = check_selection(selection);
  if (!possible) return possible.faults();
  RowPicker picker(selection);
  offer_rows(selection, picker);
  return std::move(picker).picked();
}

Result<std::vector<Cells>> MemoryStore::count(const CountQuery& query) {
  const Outcome possible = check_count(query);
  if (!possible) return possible.faults();
  const RowSelection wanted{query.table, std::nullopt, query.where, {}};
  RowPicker picker(wanted);
  offer_rows(wanted, picker);
  return count_rows(query, std::move(picker).picked());
}

Result<std::string> MemoryStore::draft() {
  return draft_;
}

Outcome MemoryStore::forget_pictures() {
  tables_.clear();
  needs_rebuild_ = !scopes_.empty();
  return Done{};
}

Result<bool> MemoryStore::needs_rebuild() {
  return needs_rebuild_;
}

Outcome MemoryStore::rebuilt() {
  needs_rebuild_ = false;
  return Done{};
}

}  // namespace evenclaw
