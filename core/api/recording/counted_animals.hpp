// Animals counted together: one entry for all of them, and how many there were may be mended.
#pragma once

#include <string>
#include <string_view>
#include <utility>

#include "core/api/recording/asked_once.hpp"
#include "core/api/recording/crush.hpp"
#include "core/api/recording/recorded_batches.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

/// The same animals at the same place are not counted twice unless somebody says that they are
/// others. No cow is made of a count.
class CountedAnimals {
 public:
  CountedAnimals(VisitBook& book, Crush& crush, RecordedBatches batches)
      : book_(book), crush_(crush), batches_(std::move(batches)) {}

  /// A count as it was said; whoever stood in the crush is out.
  Outcome record(const BatchSaid& said, std::string_view text);

  /// "No, 11 heifers", "12 heifers counted twice": of the count told last.
  Outcome mend(const BatchSaid& said, std::string_view text);

  /// "No, 11" right behind a count is the count, unless somebody was apart whose number it could
  /// be. True when the line was that.
  Result<bool> is_mended_by(std::string_view text, bool is_behind_batch);

  /// Nobody of a count that could not be read stands in the crush, and no cow carries its number.
  Outcome refused(std::string_view text);

  /// "12 heifer, all good" was refused with a cow 12 in it, and is said again as a count.
  void drop_misread_count(const Batch& batch);

  /// The count on record that is called so; null when there is none.
  [[nodiscard]] const RecordedBatch* named(std::string_view name) const {
    return batches_.named(name, book_.language);
  }

 private:
  [[nodiscard]] bool may_be_the_next_cow(const CowSaid& right, std::int32_t count,
                                         const Batch& counted) const;
  Outcome ask_whether_counted_before(const Batch& before, std::string_view text);
  Outcome add(BatchRecorded body, const RecordedBatch* wrong);

  VisitBook& book_;
  Crush& crush_;
  RecordedBatches batches_;
  AskedOnce asked_;  // whether a count that was on record already is one of others
};

}  // namespace evenclaw
