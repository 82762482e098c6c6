#include "core/trade/lame_score.hpp"

namespace evenclaw {

namespace {

constexpr int lame_from = 2;

int above_the_best(const MobilitySaid& said) {
  return *said.score - facts_of(*said.scale).lowest;
}

}  // namespace

bool is_lame_score(const MobilitySaid& said) {
  return said.said() && above_the_best(said) >= lame_from;
}

bool is_best_score(const MobilitySaid& said) {
  return said.said() && above_the_best(said) == 0;
}

MobilitySaid best_score_beside(const MobilitySaid& said) {
  if (!said.scale) return {};
  return {said.scale, facts_of(*said.scale).lowest};
}

}  // namespace evenclaw
