#include "core/sheets/batch_words.hpp"

#include <utility>

namespace evenclaw {

namespace {

std::string state_words(const BatchRow& row, const Wording& wording) {
  std::vector<std::string> parts;
  if (row.nothing_found > 0) {
    parts.push_back(
        wording.say(Saying::batch_nothing_found, {{"n", std::to_string(row.nothing_found)}}));
  }
  if (row.trimmed != Trimmed::not_called) {
    const Saying saying =
        row.trimmed == Trimmed::yes ? Saying::batch_trimmed : Saying::batch_not_trimmed;
    parts.push_back(wording.say(saying, {{"n", std::to_string(row.together)}}));
  }
  return wording.list(parts);
}

}  // namespace

std::string batch_name(const BatchRow& row, const Wording& wording) {
  const std::string animals = std::to_string(row.counted) + ' ' + wording.animals(row.animals);
  return row.place.empty() ? animals : animals + ", " + row.place;
}

std::string batch_words(const BatchRow& row, const Wording& wording) {
  std::string words = row.lifted.empty()
                          ? wording.say(Saying::batch_feet_unsaid)
                          : wording.say(Saying::batch_lifted, {{"feet", wording.feet(row.lifted)}});
  const std::string state = state_words(row, wording);
  if (!state.empty()) words += ", " + state;
  if (!row.apart_words.empty()) {
    words += "; " + wording.say(Saying::batch_apart, {{"who", row.apart_words}});
  }
  return words;
}

std::vector<Block> counted_together(const std::vector<BatchRow>& rows, const Wording& wording) {
  if (rows.empty()) return {};
  Bullets bullets;
  bullets.items.reserve(rows.size());
  for (const BatchRow& row : rows) {
    bullets.items.push_back(
        {strong(batch_name(row, wording)), plain(": " + batch_words(row, wording) + ".")});
  }
  return {Heading{2, wording.say(Saying::batches_title)}, std::move(bullets)};
}

}  // namespace evenclaw
