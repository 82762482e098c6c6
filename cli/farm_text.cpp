#include "cli/farm_text.hpp"

#include "cli/columns.hpp"
#include "core/api/farm/change_words.hpp"
#include "core/api/farm/scoring_words.hpp"
#include "core/api/farm/walk_words.hpp"
#include "core/api/said_day.hpp"

namespace evenclaw::cli {
namespace {

std::string farm_line(Day day, Day today, const std::string& words) {
  return wrapped_behind("  " + said_day(day, today) + "  ", words) + "\n";
}

}  // namespace

std::string score_text(const MobilityScoreRow& row) {
  const MobilityScaleFacts& facts = facts_of(row.scale);
  std::string words = row.score ? "scored " + std::to_string(*row.score) : "not scored";
  words += " on the scale " + std::to_string(facts.lowest) + " to " + std::to_string(facts.highest);
  if (!row.feet.empty()) words += ", lame " + to_text(row.feet);
  if (row.twice) words += "; scored twice that day, in two ways";
  if (row.days_after_trim) {
    const std::int32_t days = *row.days_after_trim;
    words += days == 0 ? " (in the crush the same day)"
                       : " (" + counted(days, "day", "days") + " after a trim)";
  }
  return words;
}

namespace {

std::string walks_text(const HerdShown& shown, Day today) {
  std::string out = shown.walks.empty() ? "" : "\nFarm walks\n";
  const FarmWalkRow* before = nullptr;
  for (const FarmWalkRow& row : shown.walks) {
    if (before == nullptr || before->walk != row.walk) {
      out += "  " + said_day(row.day, today) + (row.place.empty() ? "" : "  " + row.place) + "\n";
    }
    before = &row;
    std::string words = measured_words(row);
    if (row.twice) words += "; said twice, in two ways";
    if (!row.not_looked_at) words += "; " + compared_words(row.measure);
    out += wrapped_behind("    ", words) + "\n";
  }
  return out;
}

}  // namespace

std::string farm_text(const HerdShown& shown, Day today) {
  std::string out = shown.scorings.empty() ? "" : "\nMobility scorings\n";
  for (const MobilityScoringRow& row : shown.scorings) {
    out += farm_line(row.day, today, scoring_words(row));
  }
  out += walks_text(shown, today);
  if (!shown.changes.empty()) out += "\nChanges\n";
  for (const FarmChangeRow& row : shown.changes) {
    out += farm_line(row.day, today, change_words(row));
  }
  return out;
}

}  // namespace evenclaw::cli
