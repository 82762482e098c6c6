// The batches of this visit that are on record, so that a file given twice counts nobody twice and
// a count can be mended.
#pragma once

#include <deque>
#include <optional>
#include <string>
#include <string_view>

#include "core/api/visits.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/batch_bodies.hpp"
#include "core/ports/store.hpp"
#include "core/trade/call_line/language.hpp"

namespace evenclaw {

struct RecordedBatch {
  EntryId entry;
  BatchRecorded body;
  bool matched = false;  // given again by this recording, or recorded by it

  /// Not when it was counted twice by mistake: then it is kept so that a file given again is known.
  [[nodiscard]] bool counts() const { return body.batch.counted > 0; }
};

/// "12 heifers".
std::string name_of(const Batch& batch, const Language& language);

/// "LH RH lifted, 11 with nothing found, 1 apart (little black one)".
std::string told_of(const Batch& batch, const Language& language);

class RecordedBatches {
 public:
  static Result<RecordedBatches> open(Store& store, const Visit& visit);

  /// One that was counted in these words and not given again yet; null when there is none.
  const RecordedBatch* again(std::string_view words);

  /// The one counted last of the same kind of animal at the same place, however many and whatever
  /// was found on them; null when there is none, or no place was said.
  [[nodiscard]] const RecordedBatch* at_the_place_of(const Batch& batch) const;

  /// The one on record that was counted in these words, whatever parts them; null when there is
  /// none.
  [[nodiscard]] const RecordedBatch* in_words(std::string_view words) const;

  /// The one on record that is called so, "12 heifers"; null when there is none.
  [[nodiscard]] const RecordedBatch* named(std::string_view name, const Language& language) const;

  /// The one that was told or given again last, else the one on record that was counted last; null
  /// when there is none.
  [[nodiscard]] const RecordedBatch* last() const;

  /// The one that "no, 9 heifers" mends: of such animals (at that place, where one is said) the one
  /// told last, else the one told last of any; null when there is none.
  [[nodiscard]] const RecordedBatch* meant_by(const Batch& right) const;

  /// The later one of two that count the same animals at the same place, as many as is said; null
  /// when there are no two, or they stand at several places and none is said.
  [[nodiscard]] const RecordedBatch* counted_twice(const Batch& said) const;

  /// The one that was said in these words to be counted twice; null when there is none.
  [[nodiscard]] const RecordedBatch* taken_back_in(std::string_view words) const;

  /// Recorded just now.
  void add(EntryId entry, BatchRecorded body);

  /// It takes the place of the one it mends.
  void mend(EntryId wrong, EntryId right, BatchRecorded body);

 private:
  std::optional<EntryId> told_last_;
  // Those that count, in the order they were told; pointers into it stay good.
  std::deque<RecordedBatch> batches_;
};

}  // namespace evenclaw
