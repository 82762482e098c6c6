// What a farm alters, why, and the effect that is planted with it.
#pragma once

#include <string_view>
#include <vector>

#include "core/base/enum_words.hpp"
#include "core/base/random.hpp"
#include "demo/complication.hpp"
#include "demo/farm.hpp"

namespace evenclaw::demo {

enum class ChangeKind { rubber_at_the_turns, regular_bath, more_scraping };
enum class ChangeReason { after_bad_visit, planned };

struct Change {
  ChangeKind kind = ChangeKind::more_scraping;
  ChangeReason reason = ChangeReason::planned;
  int decided = 0;  // week of the story
  int done = 0;     // from this week on it has its effect
  double effect = 1;
};

/// Times a rate from the week on in which it was done; more scraping has no effect at all.
Pressure with_changes(Pressure pressure, const std::vector<Change>& changes, int week);

/// What a visit says of a herd: cows that came in their turn, and those of them with a lesion.
struct VisitCounts {
  int cows = 0;
  int with_horn = 0;
  int with_skin = 0;
};

/// Nothing is planned.
inline constexpr int never_planned = 1'000'000;

/// Decides for one farm, visit after visit.
class FarmDecisions {
 public:
  /// `planned_in` is the week in which something is altered whatever is found, or never_planned.
  FarmDecisions(const Complications& complications, int planned_in, RandomStream draws)
      : complications_(complications), planned_in_(planned_in), draws_(draws) {}

  /// The farmer has heard what was found in `week`.
  void hear(int week, const VisitCounts& counts);

  [[nodiscard]] const std::vector<Change>& changes() const { return changes_; }

 private:
  void decide(int week, ChangeKind kind, ChangeReason reason);
  [[nodiscard]] static double mean_share(const std::vector<double>& shares);

  Complications complications_;
  int planned_in_;
  RandomStream draws_;
  std::vector<double> horn_shares_;
  std::vector<double> skin_shares_;
  std::vector<Change> changes_;
};

}  // namespace evenclaw::demo

namespace evenclaw {

template <>
struct EnumWords<demo::ChangeKind> {
  static constexpr EnumWord<demo::ChangeKind> table[] = {
      {demo::ChangeKind::rubber_at_the_turns, "rubber_at_the_turns"},
      {demo::ChangeKind::regular_bath, "regular_bath"},
      {demo::ChangeKind::more_scraping, "more_scraping"}};
};

template <>
struct EnumWords<demo::ChangeReason> {
  static constexpr EnumWord<demo::ChangeReason> table[] = {
      {demo::ChangeReason::after_bad_visit, "after_bad_visit"},
      {demo::ChangeReason::planned, "planned"}};
};

}  // namespace evenclaw
