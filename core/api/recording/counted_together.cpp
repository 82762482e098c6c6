// Animals counted together: one entry for all of them, and a turn of her own for each who was not
// like the others. No cow is made of a count.
#include <variant>

#include "core/api/recording/open_questions.hpp"
#include "core/api/recording/state.hpp"

namespace evenclaw {

namespace {

const BatchSaid* batch_in(const Line& line) {
  return line.clauses.empty() ? nullptr : std::get_if<BatchSaid>(&line.clauses.front());
}

}  // namespace

/// True when the line counts animals, or mends such a count right behind it.
Result<bool> RecordingState::counted_together(const Line& line, std::string_view text) {
  const BatchSaid* said = batch_in(line);
  if (said == nullptr) return false;
  const Outcome settled = settle_news_said_again(book_, who_is_meant(crush_, turns_), text);
  if (!settled) return settled.faults();
  const bool is_of_one_before = said->mends || said->counted_twice;
  const Outcome recorded =
      is_of_one_before ? counted_.mend(*said, text) : record_batch(*said, text);
  if (!recorded) return recorded.faults();
  for (std::size_t at = 1; at < line.clauses.size(); ++at) {
    const Outcome applied = apply(line.clauses[at], text);
    if (!applied) return applied.faults();
  }
  if (crush_.cow && line.clauses.size() > 1) {
    const bool has_number = crush_.cow->draft.turn.cow.known == CowKnown::numbered;
    checks_.show_mark(std::string("call what was found on her") +
                      (has_number ? "" : "; her number is asked for when the visit closes"));
    after_line(line, text);
  }
  book_.last_line.counted = true;
  book_.last_line.let_out = false;
  return true;
}

Outcome RecordingState::record_batch(const BatchSaid& said, std::string_view text) {
  counted_.drop_misread_count(said.batch);
  if (crush_.cow) {
    const Outcome out = let_out(LetOutBy::next_cow);
    if (!out) return out;
  }
  return counted_.record(said, text);
}

}  // namespace evenclaw
