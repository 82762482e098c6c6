#include "core/api/farm/walk_words.hpp"

namespace evenclaw {

std::string measured_words(const WalkMeasured& measured) {
  const WalkMeasureFacts& facts = facts_of(measured.measure);
  std::string words(facts.name);
  if (measured.not_looked_at) return words + ": not looked at";
  if (measured.value) words += ' ' + said_value(facts.unit, *measured.value);
  if (!measured.words.empty()) words += ' ' + measured.words;
  if (measured.fitting && measured.looked_at) {
    return words + " on " + std::to_string(*measured.fitting) + " of " +
           std::to_string(*measured.looked_at);
  }
  if (measured.looked_at) words += ", " + std::to_string(*measured.looked_at) + " looked at";
  return words;
}

std::string measured_words(const FarmWalkRow& row) {
  WalkMeasured measured;
  measured.measure = row.measure;
  measured.value = row.value;
  measured.words = row.words;
  measured.fitting = row.fitting;
  measured.looked_at = row.looked_at;
  measured.not_looked_at = row.not_looked_at;
  return measured_words(measured);
}

std::string compared_words(WalkMeasure measure) {
  const WalkMeasureFacts& facts = facts_of(measure);
  return "compare: " + std::string(facts.compared_with) + " (" + std::string(facts.source) + ")";
}

}  // namespace evenclaw
