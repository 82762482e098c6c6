#include "store/memory/listed_entries.hpp"

#include <algorithm>
#include <iterator>
#include <numeric>
#include <utility>

namespace evenclaw {

namespace {

template <class Key>
std::vector<std::size_t> places_under(
    const std::unordered_map<Key, std::vector<std::size_t>>& index, const Key& key) {
  const auto found = index.find(key);
  return found == index.end() ? std::vector<std::size_t>() : found->second;
}

bool names_it(const Entry& entry, const Uuid& subject) {
  // Sorted by their bytes, each once.
  const std::vector<Uuid>& subjects = entry.envelope.subjects;
  return std::find(subjects.begin(), subjects.end(), subject) != subjects.end();
}

bool is_selected(const Entry& entry, const EntrySelection& selection) {
  if (selection.id && *selection.id != entry.envelope.id) return false;
  const auto& kinds = selection.kinds;
  if (!kinds.empty() && std::find(kinds.begin(), kinds.end(), entry.envelope.kind) == kinds.end()) {
    return false;
  }
  return !selection.subject || names_it(entry, *selection.subject);
}

std::vector<std::size_t> sorted_each_once(std::vector<std::size_t> places) {
  std::sort(places.begin(), places.end());
  places.erase(std::unique(places.begin(), places.end()), places.end());
  return places;
}

}  // namespace

ListedEntries::ListedEntries(std::vector<Entry> in_order)
    : entries_(std::make_move_iterator(in_order.begin()), std::make_move_iterator(in_order.end())) {
  for (std::size_t place = 0; place < entries_.size(); ++place) note(place);
}

void ListedEntries::note(std::size_t place) {
  const Envelope& envelope = entries_[place].envelope;
  by_id_[envelope.id].push_back(place);
  by_kind_[envelope.kind].push_back(place);
  for (const Uuid& subject : envelope.subjects) by_subject_[subject].push_back(place);
}

bool ListedEntries::may_append(const Entry& entry) const {
  if (by_id_.count(entry.envelope.id) > 0) return false;
  return entries_.empty() || comes_before(entries_.back(), entry);
}

void ListedEntries::append(const Entry& entry) {
  entries_.push_back(entry);
  note(entries_.size() - 1);
}

ListedEntries::Places ListedEntries::perhaps_fitting(const EntrySelection& selection) const {
  if (selection.id) return places_under(by_id_, *selection.id);
  if (selection.subject) return places_under(by_subject_, *selection.subject);
  Places places;
  if (selection.kinds.empty()) {
    places.resize(entries_.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    return places;
  }
  for (const std::string& kind : selection.kinds) {
    const Places of_kind = places_under(by_kind_, kind);
    places.insert(places.end(), of_kind.begin(), of_kind.end());
  }
  return sorted_each_once(std::move(places));
}

ListedEntries::Places ListedEntries::with_other_versions(const Places& places) const {
  Places all;
  for (const std::size_t place : places) {
    const Places versions = places_under(by_id_, entries_[place].envelope.id);
    all.insert(all.end(), versions.begin(), versions.end());
  }
  return sorted_each_once(std::move(all));
}

std::vector<std::size_t> ListedEntries::places_of(const EntrySelection& selection) const {
  Places places = perhaps_fitting(selection);
  std::erase_if(places,
                [&](std::size_t place) { return !is_selected(entries_[place], selection); });
  const bool has_versions = by_id_.size() != entries_.size();
  if (selection.versions == Versions::every && has_versions) return with_other_versions(places);
  return places;
}

}  // namespace evenclaw
