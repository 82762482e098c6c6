// A neutral table of examined claws with known truth, as long as wanted, to try analyses on.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace evenclaw::demo {

struct ClawTableWanted {
  std::uint64_t seed = 1;
  std::uint64_t rows = 0;
};

/// One row for each claw of each visit of a cow, column by column. What the columns hold stands in
/// docs/format/claw-table.md.
struct ClawColumns {
  std::vector<std::uint32_t> farm;  // from 1
  std::vector<std::uint32_t> cow;   // from 1, over all farms
  std::vector<std::uint8_t> parity;
  std::vector<std::uint16_t> dim;      // days in milk
  std::vector<std::int32_t> date;      // days since 1970-01-01
  std::vector<std::uint8_t> foot;      // 0 LF, 1 RF, 2 LH, 3 RH
  std::vector<std::uint8_t> claw;      // 0 outside, 1 inside
  std::vector<std::uint8_t> zone;      // 1 to 12, 0 without a lesion
  std::vector<std::uint8_t> lesion;    // 1 to 7, 0 for none
  std::vector<std::uint8_t> severity;  // 1 to 3, 0 without a lesion

  [[nodiscard]] std::size_t size() const { return farm.size(); }

  void clear();
  void cut_to(std::size_t rows);
};

/// The truth (docs/format/claw-table.md): the log odds of a lesion are a sum of these.
struct ClawTableTruth {
  double intercept = -2.6;
  double parity_2 = 0.25;
  double parity_3 = 0.55;  // the third and later
  double hind = 0.9;
  double outside = 0.35;
  double dim_per_day = 0.0015;  // from day 150 on
  double season_sine = 0.20;    // of the days since 2020-01-01, a year of 365.25 days
  double season_cosine = -0.10;
  double farm_spread = 0.6;  // SD of a normal
  double cow_spread = 0.9;
};

/// Gives the rows of the table from the first one on. A row follows from the seed and what came
/// before it on its farm alone, so a longer table begins with the shorter one.
class ClawTable {
 public:
  explicit ClawTable(const ClawTableWanted& wanted) : wanted_(wanted) {}

  /// The next rows, about `most` of them and never more than a farm above it, in the place of what
  /// `columns` held. False when there are no more.
  bool next(ClawColumns& columns, std::size_t most);

 private:
  ClawTableWanted wanted_;
  std::uint64_t given_ = 0;
  std::uint32_t farm_ = 0;
  std::uint32_t cow_ = 0;
};

}  // namespace evenclaw::demo
