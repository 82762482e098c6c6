#include "core/exchange/finding_words.hpp"

#include <algorithm>
#include <cstddef>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

/// A value that means nothing was told, that the line is none, or what `read` makes of it.
template <class T, class Read>
CellSaid<T> cell_said(const std::string* meaning, std::string_view cell, const T& nothing,
                      Read&& read) {
  if (meaning == nullptr) return {read(cell)};
  const std::string folded = fold_case(*meaning);
  if (folded == word_passed_over) return {std::nullopt, true};
  if (folded == word_telling_nothing) return {nothing};
  return {read(*meaning)};
}

std::optional<int> zone_in_cell(std::string_view cell) {
  const std::size_t point = std::min(cell.find_first_of(",."), cell.size());
  const std::string_view behind = cell.substr(std::min(point + 1, cell.size()));
  const bool is_whole = std::all_of(behind.begin(), behind.end(), [](char c) { return c == '0'; });
  return is_whole ? whole_number(cell.substr(0, point), 2) : std::nullopt;
}

}  // namespace

FindingWords::FindingWords(const FindingScheme& scheme) : is_icar_(scheme.icar.value_or(false)) {
  for (const WordSaid& said : scheme.words) {
    exactly_[{said.column, said.word}] = said.means;
    folded_[{said.column, fold_case(said.word)}] = said.means;
  }
}

const std::string* FindingWords::meaning(HerdColumn column, std::string_view cell) const {
  const auto exact = exactly_.find({column, std::string(cell)});
  if (exact != exactly_.end()) return &exact->second;
  const auto folded = folded_.find({column, fold_case(cell)});
  return folded == folded_.end() ? nullptr : &folded->second;
}

CellSaid<Lesion> FindingWords::lesion(std::string_view cell) const {
  if (const std::string* said = meaning(HerdColumn::lesion, cell)) {
    if (fold_case(*said) == word_passed_over) return {std::nullopt, true};
    return {lesion_said(*said)};
  }
  if (is_icar_) return {atlas_lesion(cell)};
  return {};
}

CellSaid<FootSaid> FindingWords::foot(HerdColumn column, std::string_view cell) const {
  return cell_said(meaning(column, cell), cell, FootSaid{}, foot_said);
}

CellSaid<PlaceSaid> FindingWords::place(std::string_view cell) const {
  return cell_said(meaning(HerdColumn::place, cell), cell, PlaceSaid{}, place_said);
}

CellSaid<PlaceSaid> FindingWords::zone(std::string_view cell) const {
  const auto number = zone_in_cell(cell);
  if (number) return {zone_said(*number)};
  const auto said = place_said(cell);
  return said && said->zone ? CellSaid<PlaceSaid>{said} : CellSaid<PlaceSaid>{};
}

CellSaid<Degree> FindingWords::degree(std::string_view cell) const {
  return cell_said(meaning(HerdColumn::degree, cell), cell, Degree::not_called, degree_said);
}

CellSaid<DdStage> FindingWords::stage(std::string_view cell) const {
  return cell_said(meaning(HerdColumn::stage, cell), cell, DdStage::not_called, stage_said);
}

}  // namespace evenclaw
