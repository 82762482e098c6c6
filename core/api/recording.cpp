#include "core/api/recording.hpp"

#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/recording/state.hpp"

namespace evenclaw {

Recording::Recording(std::unique_ptr<RecordingState> state) : state_(std::move(state)) {}

Recording::Recording(Recording&&) noexcept = default;
Recording& Recording::operator=(Recording&&) noexcept = default;
Recording::~Recording() = default;

Result<Recording> Recording::open(const Ports& ports, const Visit& visit,
                                  const Language& language) {
  auto state = RecordingState::open(ports, visit, language);
  if (!state) return state.faults();
  return Recording(*std::move(state));
}

const Reply& Recording::opening() const {
  return state_->opening();
}

Result<Reply> Recording::say(std::string_view line) {
  return state_->say(line);
}

Result<Reply> Recording::say_all(std::span<const std::string> lines) {
  return state_->say_all(lines);
}

Result<Reply> Recording::end_of_input() {
  return state_->end(LetOutBy::end_of_input);
}

Result<Reply> Recording::end_of_visit() {
  return state_->end(LetOutBy::end_of_visit);
}

const Visit& Recording::visit() const {
  return state_->visit();
}

bool Recording::would_be_unfinished() const {
  const std::optional<InCrush>& cow = state_->in_crush();
  if (!cow) return false;
  const bool only_answers = cow->earlier && cow->earlier->turn.body.turn.end == TurnEnd::done;
  return !cow->refused.empty() || (!cow->done_said && !only_answers);
}

std::string Recording::in_crush() const {
  if (!state_->in_crush()) return {};
  return said_as(state_->in_crush()->draft.turn.cow, state_->language());
}

std::vector<Suggestion> Recording::may_follow(std::string_view half_line) const {
  return what_may_follow(half_line, state_->context(), state_->language());
}

}  // namespace evenclaw
