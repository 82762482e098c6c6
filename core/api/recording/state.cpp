#include "core/api/recording/state.hpp"

#include <algorithm>
#include <memory>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/long_in_crush.hpp"
#include "core/api/products.hpp"
#include "core/api/recording/draft_in_crush.hpp"
#include "core/api/recording/refused_of_her.hpp"
#include "core/base/text.hpp"

namespace evenclaw {

namespace {

std::string joined(const std::vector<std::string>& words) {
  std::string all;
  for (const std::string& word : words) all += (all.empty() ? "" : " / ") + word;
  return all;
}

/// The first line that is neither blank nor a comment.
std::string first_said(std::span<const std::string> lines) {
  const auto said = std::find_if(lines.begin(), lines.end(), [](const std::string& line) {
    return !trimmed(line).empty() && trimmed(line).front() != '#';
  });
  return said == lines.end() ? std::string() : *said;
}

}  // namespace

RecordingState::RecordingState(VisitBook book, RecordedBatches batches)
    : book_(std::move(book)), counted_(book_, crush_, std::move(batches)) {}

Result<std::unique_ptr<RecordingState>> RecordingState::open(const Ports& ports, const Visit& visit,
                                                             const Language& language) {
  auto book = VisitBook::open(ports, visit, language);
  if (!book) return book.faults();
  auto batches = RecordedBatches::open(ports.store, book->visit);
  if (!batches) return batches.faults();
  std::unique_ptr<RecordingState> state(new RecordingState(*std::move(book), *std::move(batches)));
  const Outcome taken_up = state->take_up_draft();
  if (!taken_up) return taken_up.faults();
  return state;
}

Outcome RecordingState::take_up_draft() {
  const auto text = book_.ports.store.draft();
  if (!text) return text.faults();
  if (text->empty()) return Done{};
  const auto kept = kept_draft(*text);
  if (!kept) return kept.faults();
  if (kept->visit != book_.visit.visit) {
    return kept->nobody ? Outcome(Done{}) : record_in_other_visit(*kept);
  }
  const Outcome taken_up = kept->nobody ? Outcome(Done{}) : take_up(*kept);
  if (!taken_up) return taken_up;
  const Outcome went_on = take_up_last_line(*kept);
  if (!went_on || kept->nobody) return went_on;
  const bool only_refused = crush_.cow->draft.words.empty();
  const std::string lines = joined(only_refused ? kept->refused : crush_.cow->draft.words);
  book_.answers.add(ReplyKind::mark, "still in the crush: " + lines).cow =
      cow_in_crush(book_, crush_);
  opening_.items = book_.answers.given();
  opening_.in_crush = cow_in_crush(book_, crush_);
  return Done{};
}

Outcome RecordingState::take_up(const KeptDraft& kept) {
  auto cow = taken_up(book_, kept);
  if (!cow) return cow.faults();
  crush_.cow = *std::move(cow);
  crush_.held_back_by = kept.held_back_by.value_or("");
  return Done{};
}

Outcome RecordingState::take_up_last_line(const KeptDraft& kept) {
  book_.last_line.refused = kept.just_refused.value_or("");
  book_.last_line.lacks_foot = kept.lacks_foot.value_or("");
  book_.last_line.told_of = kept.news_of;
  book_.last_line.counted = kept.counted;
  book_.last_line.let_out = kept.let_out;
  book_.last_line.whose = kept.whose.value_or("");
  book_.by = {kept.caller, kept.writer};
  draft_kept_ = true;
  const RecordedTurn* last = kept.last_turn ? book_.before.find(*kept.last_turn) : nullptr;
  if (last == nullptr) return Done{};
  auto cow = stood_there(book_, *last);
  if (!cow) return cow.faults();
  turns_.take_up(last->entry, *std::move(cow), kept.registered);
  return Done{};
}

/// A file or pipe that starts anew gives the lines of a turn that broke off once more.
bool RecordingState::is_given_again(std::string_view text) {
  if (book_.typed || !crush_.cow || crush_.cow->given_again == crush_.cow->taken_up) return false;
  if (crush_.cow->draft.words[crush_.cow->given_again] != trimmed(text)) return false;
  ++crush_.cow->given_again;
  // The slip that it mended was given once more before it.
  given_again(*crush_.cow, text, book_.language);
  return true;
}

Outcome RecordingState::record_in_other_visit(const KeptDraft& kept) {
  const auto rows = select_as<VisitRow>(book_.ports.store, kept.herd,
                                        {{"visit", Compare::equal, Cell(to_text(kept.visit))}});
  if (!rows) return rows.faults();
  // A visit the store no longer knows leaves its draft where it is: nothing is thrown away.
  if (rows->empty()) return Done{};
  auto other = open(book_.ports, visit_of(rows->front()), book_.language);
  if (!other) return other.faults();
  auto reply = (*other)->end(LetOutBy::other_visit);
  if (!reply) return reply.faults();
  opening_.items = std::move(reply->items);
  return Done{};
}

LineContext RecordingState::context() const {
  return {book_.visit.day, crush_.cow.has_value(), book_.answers.line()};
}

Result<Reply> RecordingState::written(std::optional<std::string> draft) {
  const bool keeps_draft = draft && !draft->empty();
  if (draft && !keeps_draft && !draft_kept_) draft.reset();
  if (draft || !book_.journal.unwritten().empty()) {
    const auto kept = book_.journal.write(draft);
    if (!kept) return kept.faults();
    draft_kept_ = keeps_draft;
  }
  Reply reply;
  reply.items = book_.answers.given();
  reply.in_crush = cow_in_crush(book_, crush_);
  if (crush_.cow) crush_.cow->first_answer = 0;
  return reply;
}

Result<Reply> RecordingState::say(std::string_view line) {
  book_.typed = true;
  const Outcome taken = take_line(line);
  if (!taken) return taken.faults();
  return written(draft_text(book_, crush_, turns_));
}

Result<Reply> RecordingState::say_all(std::span<const std::string> lines) {
  book_.typed = false;
  for (std::size_t at = 0; at < lines.size(); ++at) {
    next_line_ = first_said(lines.subspan(at + 1));
    const Outcome taken = take_line(lines[at]);
    if (!taken) return taken.faults();
  }
  next_line_.clear();
  return written(draft_text(book_, crush_, turns_));
}

Result<Reply> RecordingState::end(LetOutBy why) {
  if (crush_.cow) {
    const Outcome out = let_out(why);
    if (!out) return out.faults();
  }
  return written(std::string());
}

}  // namespace evenclaw
