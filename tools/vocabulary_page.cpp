#include "tools/vocabulary_page.hpp"

#include <string_view>

#include "core/trade/farm_walk.hpp"
#include "core/trade/lesion_definition.hpp"
#include "core/trade/mobility.hpp"

namespace evenclaw {

namespace {

std::string row(std::initializer_list<std::string> cells) {
  std::string text = "|";
  for (const std::string& cell : cells) text += " " + cell + " |";
  return text + "\n";
}

std::string head(std::initializer_list<std::string> titles) {
  std::string text = row(titles) + "|";
  for (std::size_t i = 0; i < titles.size(); ++i) text += "---|";
  return text + "\n";
}

std::string in_ticks(std::string_view word) {
  return "`" + std::string(word) + "`";
}

std::string_view told(KeptOn kept_on) {
  switch (kept_on) {
    case KeptOn::claw:
      return "claw";
    case KeptOn::foot:
      return "foot";
    case KeptOn::between:
      return "between the claws";
    case KeptOn::claw_or_foot:
      return "claw or foot";
  }
  return {};
}

std::string_view told(Hurts hurts) {
  switch (hurts) {
    case Hurts::no:
      return "no";
    case Hurts::when_bad:
      return "when bad";
    case Hurts::yes:
      return "yes";
  }
  return {};
}

std::string places_of(const LesionFacts& facts) {
  std::string text;
  for (const Place place : facts.usual_places) {
    if (!text.empty()) text += ", ";
    text += facts_of(place).said;
  }
  return text + (facts.nowhere_else ? "; nowhere else" : "");
}

bool has_relatives(const LesionFacts& facts) {
  int count = 0;
  for (const LesionFacts& other : all_lesions()) count += other.family == facts.family ? 1 : 0;
  return count > 1;
}

std::string family_of(const LesionFacts& facts) {
  if (!has_relatives(facts)) return {};
  const std::string family = "family " + in_ticks(word_of(facts.family));
  return facts.rung > 0 ? family + ", rung " + std::to_string(facts.rung) : family;
}

std::string lesion_table() {
  std::string table = head({"word kept", "name", "kind of", "one case with", "group", "kept on",
                            "usual places", "hurts under a block", "source"});
  for (const LesionFacts& facts : all_lesions()) {
    const bool has_parent = facts.parent != facts.lesion;
    table +=
        row({in_ticks(word_of(facts.lesion)), std::string(facts.name),
             has_parent ? in_ticks(word_of(facts.parent)) : "", family_of(facts),
             std::string(word_of(facts.group)), std::string(told(facts.kept_on)), places_of(facts),
             std::string(told(facts.hurts)) + ": " + std::string(facts.hurts_source),
             std::string(facts.source)});
  }
  return table;
}

std::string definition_table() {
  std::string table = head({"word kept", "what it is", "source"});
  for (const LesionDefinition& each : all_lesion_definitions()) {
    table +=
        row({in_ticks(word_of(each.lesion)), std::string(each.words), std::string(each.source)});
  }
  return table;
}

std::string place_table() {
  std::string table = head({"word kept", "said", "where", "zone", "kept on", "source"});
  for (const PlaceFacts& facts : all_places()) {
    if (facts.place == Place::not_called) continue;
    table += row({in_ticks(word_of(facts.place)), std::string(facts.said),
                  std::string(facts.anatomy), facts.zone ? std::to_string(*facts.zone) : "",
                  facts.needs_claw ? "claw" : "foot", std::string(facts.source)});
  }
  return table;
}

std::string stage_table() {
  std::string table = head({"word kept", "what it means", "size", "activity", "source"});
  for (const DdStageFacts& facts : all_dd_stages()) {
    table +=
        row({in_ticks(word_of(facts.stage)), std::string(facts.meaning), std::string(facts.size),
             std::string(word_of(facts.activity)), std::string(facts.source)});
  }
  return table;
}

std::string mobility_tables() {
  std::string tables;
  for (const MobilityScaleFacts& scale : all_mobility_scales()) {
    tables += "\n### Scale " + std::string(word_of(scale.scale)) + ", said \"of " +
              std::to_string(scale.highest) + "\"\n\nSource: " + std::string(scale.source) +
              ".\n\n" + head({"score", "name", "what is seen", "what to do"});
    for (const MobilityFacts& facts : all_mobility_scores()) {
      if (facts.scale != scale.scale) continue;
      tables += row({std::to_string(facts.score), std::string(facts.name), std::string(facts.seen),
                     std::string(facts.to_do)});
    }
  }
  return tables;
}

std::string walk_table() {
  std::string table =
      head({"measure kept", "name", "kept in", "from", "to", "shown beside it", "source of that"});
  for (const WalkMeasureFacts& facts : all_walk_measures()) {
    table += row({in_ticks(word_of(facts.measure)), std::string(facts.name),
                  std::string(word_of(facts.unit)), said_value(facts.unit, facts.least),
                  said_value(facts.unit, facts.most), std::string(facts.compared_with),
                  std::string(facts.source)});
  }
  return table;
}

}  // namespace

std::string vocabulary_page() {
  return "# Vocabulary\n\n"
         "Made from the tables of core/trade by tools/generated_docs.sh; do not edit. How each is "
         "said\nstands in [call-line.md](call-line.md). The atlas itself was not read: a code is "
         "*seen* when the\nsame letters stand in work of the group that made it, *weak* when only "
         "in other lists, else *from\nmemory*. Definitions are our own words.\n\n"
         "## Lesions\n\n"
         "What is called by its general name is kept so; the kind is never guessed. Lesions of one "
         "family\nat one place are one case, and a higher rung is a worse form of it; without a "
         "rung the name does\nnot tell. A block never goes on a claw with what hurts.\n\n" +
         lesion_table() + "\n## What each lesion is\n\n" + definition_table() +
         "\n## Places\n\nThe zone map is that of the International Lameness Committee (2008). The "
         "walls carry no number:\nwhich of 7 and 8, and of 11 and 12, is which is not "
         "confirmed.\n\n" +
         place_table() +
         "\n## Stages of digital dermatitis\n\nKept as called: a word is never turned into an M "
         "number.\n\n" +
         stage_table() +
         "\n## Mobility scores\n\nKept with their scale and never converted: no official "
         "conversion is known.\n" +
         mobility_tables() +
         "\n## What a farm walk measures\n\nA value outside *from* and *to* is refused: a slip, or "
         "another unit (our judgement). What stands\nbeside a value is no verdict.\n\n" +
         walk_table();
}

}  // namespace evenclaw
