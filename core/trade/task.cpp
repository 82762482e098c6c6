#include "core/trade/task.hpp"

#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

std::string at_claw(std::string words, std::optional<Foot> foot, Claw claw) {
  if (foot) words += ' ' + std::string(spoken(*foot));
  switch (claw) {
    case Claw::outside:
    case Claw::inside:
      return words + ", " + std::string(spoken(claw)) + " claw";
    case Claw::both:
      return words + ", both claws";
    case Claw::none:
    case Claw::not_called:
      return words;
  }
  return words;
}

std::string her_or(std::optional<Foot> foot) {
  return foot ? std::string(spoken(*foot)) : std::string("her");
}

}  // namespace

std::string task_words(TaskKind kind, std::optional<Foot> foot, Claw claw) {
  switch (kind) {
    case TaskKind::wrap_off:
      return at_claw("wrap off", foot, Claw::none);
    case TaskKind::block_check:
      return at_claw("block check", foot, claw);
    case TaskKind::block_off:
      return at_claw("block off", foot, claw);
    case TaskKind::look_at_foot:
      return foot ? "see again " + her_or(foot) : std::string("see her again");
    case TaskKind::watch_her_walk:
      return "watch her walk";
    case TaskKind::vet:
      return "vet to see " + her_or(foot) + ", farmer rings";
    case TaskKind::withdrawal_end:
      return "milk or meat held back";
    case TaskKind::routine_trim:
      return "routine trim due";
  }
  return {};
}

}  // namespace evenclaw
