#include "core/api/farm/scoring_words.hpp"

#include <cstddef>
#include <cstdint>

namespace evenclaw {

std::string scoring_words(const MobilityScoringRow& row) {
  const MobilityScaleFacts& facts = facts_of(row.scale);
  const std::int32_t at[] = {row.at_0, row.at_1, row.at_2, row.at_3, row.at_4, row.at_5};
  std::string words = row.animals.empty() ? std::string() : row.animals + ", ";
  words += "scale " + std::to_string(facts.lowest) + " to " + std::to_string(facts.highest) + ", " +
           std::to_string(row.scored);
  words += row.present ? " of " + std::to_string(*row.present) + " present scored"
                       : " scored, how many were present was not said";
  for (int score = facts.lowest; score <= facts.highest; ++score) {
    words += score == facts.lowest ? ": " : ", ";
    words += std::to_string(at[static_cast<std::size_t>(score)]) + " at " + std::to_string(score);
  }
  if (row.not_scored > 0) words += "; " + std::to_string(row.not_scored) + " there and not scored";
  if (row.in_doubt > 0) words += "; " + std::to_string(row.in_doubt) + " scored twice in two ways";
  if (row.shortly_after_trim > 0) {
    words +=
        "; " + std::to_string(row.shortly_after_trim) + " of the scored within a week after a trim";
  }
  return words;
}

}  // namespace evenclaw
