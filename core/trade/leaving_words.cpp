#include "core/trade/leaving_words.hpp"

namespace evenclaw {

namespace {

constexpr LeavingWord words_of_leaving[] = {{"sold", LeavingWay::sold},
                                            {"sale", LeavingWay::sold},
                                            {"verkauft", LeavingWay::sold},
                                            {"verkauf", LeavingWay::sold},
                                            {"verkocht", LeavingWay::sold},
                                            {"vendue", LeavingWay::sold},
                                            {"vente", LeavingWay::sold},
                                            {"culled", LeavingWay::slaughtered},
                                            {"cull", LeavingWay::slaughtered},
                                            {"slaughter", LeavingWay::slaughtered},
                                            {"slaughtered", LeavingWay::slaughtered},
                                            {"abattoir", LeavingWay::slaughtered},
                                            {"geschlachtet", LeavingWay::slaughtered},
                                            {"schlachtung", LeavingWay::slaughtered},
                                            {"schlachthof", LeavingWay::slaughtered},
                                            {"geslacht", LeavingWay::slaughtered},
                                            {"abattage", LeavingWay::slaughtered},
                                            {"died", LeavingWay::died},
                                            {"dead", LeavingWay::died},
                                            {"death", LeavingWay::died},
                                            {"put down", LeavingWay::died},
                                            {"verendet", LeavingWay::died},
                                            {"eingeschläfert", LeavingWay::died},
                                            {"tot", LeavingWay::died},
                                            {"dood", LeavingWay::died},
                                            {"morte", LeavingWay::died},
                                            {"mort", LeavingWay::died}};

}  // namespace

std::span<const LeavingWord> leaving_words() {
  return words_of_leaving;
}

std::optional<LeavingWay> leaving_way(std::string_view folded) {
  for (const LeavingWord& word : words_of_leaving) {
    if (word.words == folded) return word.way;
  }
  return std::nullopt;
}

}  // namespace evenclaw
