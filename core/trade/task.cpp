#include "core/trade/task.hpp"

#include <cstddef>
#include <utility>

#include "core/trade/spoken.hpp"

namespace evenclaw {

namespace {

std::string with_claw(std::string words, Claw claw) {
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

std::string at_claw(std::string words, std::optional<Foot> foot, Claw claw) {
  if (foot) words += ' ' + std::string(spoken(*foot));
  return with_claw(std::move(words), claw);
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

std::string task_words(std::string_view pattern, std::optional<Foot> foot, Claw claw) {
  constexpr std::string_view where = "{where}";
  const std::size_t at = pattern.find(where);
  if (at == std::string_view::npos) return std::string(pattern);
  const std::string named = foot ? with_claw(std::string(spoken(*foot)), claw) : her_or(foot);
  return std::string(pattern.substr(0, at)) + named +
         std::string(pattern.substr(at + where.size()));
}

}  // namespace evenclaw
