#include "core/api/answered_by_news.hpp"

#include <optional>
#include <utility>

#include "core/base/text.hpp"
#include "core/log/bodies.hpp"
#include "core/log/body.hpp"
#include "core/trade/check.hpp"
#include "core/trade/cow_rows.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

bool is_answered_by(const Warning& warning, const NewsSaid& news) {
  const std::optional<FixtureSaid> told = fixture_said(news.news);
  if (!told || !warning.foot || fixture_asked_about(warning) != told->fixture) return false;
  return news.feet.empty() || news.feet.has(*warning.foot);
}

/// As it stands once what was added before is written.
Result<std::optional<Entry>> turn_entry(Store& store, const Journal& journal, EntryId turn) {
  auto found = store.find_entry(turn);
  if (!found) return found.faults();
  for (const Entry& entry : journal.unwritten()) {
    const bool has_been_mended = *found && entry.envelope.kind == TurnRecorded::kind &&
                                 entry.envelope.supersedes == (*found)->envelope.id;
    if (has_been_mended) *found = entry;
  }
  return found;
}

}  // namespace

bool answer_warnings(std::vector<WarningShown>& warnings, const NewsSaid& news,
                     std::string_view words) {
  bool answered = false;
  for (WarningShown& shown : warnings) {
    if (!shown.decision.empty() || !is_answered_by(shown.warning, news)) continue;
    shown.decision = trimmed(words);
    answered = true;
  }
  return answered;
}

Outcome answer_by_news(Store& store, Journal& journal, const AnsweringNews& news) {
  const auto turns = select_as<TurnRow>(
      store, news.herd, {{"cow", Compare::equal, Cell(to_text(news.cow))}}, {"day"});
  if (!turns) return turns.faults();
  for (const TurnRow& row : *turns) {
    if (row.day != turns->back().day) continue;
    const auto entry = turn_entry(store, journal, row.turn);
    if (!entry) return entry.faults();
    auto body = *entry ? body_as<TurnRecorded>(**entry) : std::nullopt;
    if (!body || !answer_warnings(body->warnings, news.said, news.words)) continue;
    const Envelope& envelope = (*entry)->envelope;
    const SaidBy by{envelope.caller.value_or(PersonId{}), envelope.writer.value_or(PersonId{})};
    const Outcome added =
        journal.add(*body, {journal.fresh_id(), envelope.subjects, by, envelope.id});
    if (!added) return added;
  }
  return Done{};
}

}  // namespace evenclaw
