#include "core/trade/dd_stage.hpp"

namespace evenclaw {

namespace {

// Meaning and the 2 cm rule: table 1 of a Veterinary Research paper (10.1186/s13567-020-00750-8)
// and Holstein Journal 2014, after Döpfer 1997 and Berry 2012, whose papers were not read. Which
// stages are active: the trial of salicylic acid against a polyurethane dressing.
constexpr std::string_view table_and_trial =
    "meaning: Vet Res 10.1186/s13567-020-00750-8, table 1; activity: a trial of salicylic acid "
    "against a polyurethane dressing (abstract)";
constexpr std::string_view table_only =
    "meaning: Vet Res 10.1186/s13567-020-00750-8, table 1; activity from memory";
constexpr std::string_view crush_word =
    "common practice, no source: said at the crush, never turned into an M number";

constexpr DdStageFacts stage_table[] = {
    {DdStage::m0, "normal skin, no digital dermatitis", "", DdActivity::none, table_and_trial},
    {DdStage::m1, "small early spot, moist, mottled red and grey", "under 2 cm", DdActivity::active,
     table_and_trial},
    {DdStage::m2, "open sore, bright red or red and grey; hurts when touched", "over 2 cm",
     DdActivity::active, table_and_trial},
    {DdStage::m3, "healing after treatment: a dry dark scab where the sore was", "",
     DdActivity::healing, table_only},
    {DdStage::m4, "long-standing: thickened or growing skin", "", DdActivity::chronic,
     table_and_trial},
    {DdStage::m4_1, "long-standing, with a small active spot on it", "the spot under 2 cm",
     DdActivity::active, table_only},
    {DdStage::raw, "open and sore", "", DdActivity::active, crush_word},
    {DdStage::scab, "under a scab", "", DdActivity::healing, crush_word},
    {DdStage::chronic, "long-standing", "", DdActivity::chronic, crush_word},
};

}  // namespace

std::span<const DdStageFacts> all_dd_stages() {
  return stage_table;
}

const DdStageFacts* facts_of(DdStage stage) {
  for (const DdStageFacts& facts : stage_table) {
    if (facts.stage == stage) return &facts;
  }
  return nullptr;
}

}  // namespace evenclaw
