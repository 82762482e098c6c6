#include "tests/core/log/replica.hpp"

#include <algorithm>
#include <cstdint>
#include <set>
#include <utility>
#include <variant>

#include "core/log/picture.hpp"
#include "core/log/visit_facts.hpp"
#include "core/wire/cells.hpp"

namespace evenclaw {

namespace {

void add(Touched& to, const Touched& more) {
  to.cows.insert(to.cows.end(), more.cows.begin(), more.cows.end());
  to.visits.insert(to.visits.end(), more.visits.begin(), more.visits.end());
}

std::string line_of(const Cells& cells) {
  std::string line;
  for (const Cell& cell : cells) {
    if (const auto* number = std::get_if<std::int64_t>(&cell)) line += std::to_string(*number);
    if (const auto* text = std::get_if<std::string>(&cell)) line += '"' + *text + '"';
    line += ',';
  }
  return line + '\n';
}

Touched everything_touched(const std::vector<Entry>& entries) {
  Touched all;
  for (const Entry& entry : entries) add(all, touched_by(entry));
  return all;
}

bool is_wanted(const Entry& entry, const Uuid& subject, const std::vector<std::string>& kinds) {
  if (!names_subject(entry, subject)) return false;
  return kinds.empty() || std::find(kinds.begin(), kinds.end(), entry.envelope.kind) != kinds.end();
}

}  // namespace

std::vector<Entry> Replica::every_version_of(const std::set<EntryId>& ids) const {
  std::vector<Entry> found;
  for (const Entry& entry : everything_) {
    if (ids.count(entry.envelope.id) > 0) found.push_back(entry);
  }
  return found;
}

EntryLookup Replica::lookup() const {
  return {[this](const Uuid& subject, const std::vector<std::string>& kinds) {
            std::set<EntryId> ids;
            for (const Entry& entry : everything_) {
              if (is_wanted(entry, subject, kinds)) ids.insert(entry.envelope.id);
            }
            return Result<std::vector<Entry>>(every_version_of(ids));
          },
          [this](EntryId id) { return Result<std::vector<Entry>>(every_version_of({id})); }};
}

void Replica::picture_cow(std::span<const CowId> group) {
  for (const CowId cow : group) cows_.erase(cow);
  const auto entries = entries_for_cow(lookup(), group);
  Rows rows = picture_of_cow(herd_, group, *entries);
  if (!rows.cows.empty()) cows_[group.front()] = std::move(rows);
}

void Replica::picture_visit(VisitId visit) {
  visits_.erase(visit);
  const auto entries = entries_for_visit(lookup(), visit);
  Rows rows = picture_of_visit(herd_, visit, *entries);
  if (!text_of_rows(rows).empty()) visits_[visit] = std::move(rows);
}

void Replica::receive(std::span<const Entry> entries) {
  for (const Entry& entry : entries) log_.add(entry);
  everything_ = log_.everything();
  const Touched touched = *touched_by_arrival(lookup(), entries);

  const CowGroups groups(everything_);
  std::set<std::vector<CowId>> anew;
  for (const CowId cow : touched.cows) anew.insert(groups.group_of(cow));
  for (const std::vector<CowId>& group : anew) picture_cow(group);
  const std::set<VisitId> visits(touched.visits.begin(), touched.visits.end());
  for (const VisitId visit : visits) picture_visit(visit);
}

std::string Replica::pictures() const {
  std::string text;
  for (const auto& [cow, rows] : cows_) text += text_of_rows(rows);
  for (const auto& [visit, rows] : visits_) text += text_of_rows(rows);
  return text;
}

std::string Replica::rebuilt() const {
  const CowGroups groups(everything_);
  const Touched all = everything_touched(everything_);
  std::set<std::vector<CowId>> cows;
  for (const CowId cow : all.cows) cows.insert(groups.group_of(cow));
  std::string text;
  for (const std::vector<CowId>& group : cows) {
    text += text_of_rows(picture_of_cow(herd_, group, everything_));
  }
  for (const VisitId visit : std::set<VisitId>(all.visits.begin(), all.visits.end())) {
    text += text_of_rows(picture_of_visit(herd_, visit, everything_));
  }
  return text;
}

std::string text_of_rows(const Rows& rows) {
  std::string text;
  for_each_table(rows, [&](const auto& table) {
    using Row = typename std::remove_cvref_t<decltype(table)>::value_type;
    for (const Row& row : table) text += std::string(Row::table) + ' ' + line_of(to_cells(row));
  });
  return text;
}

}  // namespace evenclaw
