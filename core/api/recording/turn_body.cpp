#include "core/api/recording/turn_body.hpp"

#include <optional>
#include <utility>
#include <vector>

#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/settled_turn.hpp"
#include "core/trade/follow_up.hpp"

namespace evenclaw {

TurnRecorded body_of(const VisitBook& book, const InCrush& cow, EntryId entry,
                     const RecordedTurn* superseded) {
  std::vector<const RecordedTurn*> corrected;
  if (superseded != nullptr) corrected = book.before.line_of(superseded->entry);
  const EntryId first =
      corrected.empty() ? entry : corrected.back()->supersedes.value_or(corrected.back()->entry);
  const std::optional<Turn> whole = whole_turn(book, cow);
  const CowPast& past = whole ? cow.earlier->past : cow.past;
  TurnRecorded body;
  body.visit = book.visit.visit;
  body.cow = cow.cow;
  body.words = whole_words(book, cow);
  if (whole) body.called_first = cow.earlier->turn.body.called_first;
  body.called_first.insert(body.called_first.end(), cow.called_first.begin(),
                           cow.called_first.end());
  body.turn = whole ? *whole : as_settled(book, cow);
  // Of one who was called twice, and of one mended later, no one time tells how long she stood.
  if (superseded == nullptr) body.began = cow.began;
  body.warnings = (whole ? cow.earlier->warnings : cow.warnings).shown();
  body.tasks = tasks_made(body.turn, past, book.visit.day, first);
  for (auto turn = corrected.rbegin(); turn != corrected.rend(); ++turn) {
    body.tasks = with_ids_kept(std::move(body.tasks), (*turn)->body.tasks);
  }
  body.closes = tasks_closed(body.turn, past, book.visit.day);
  return body;
}

}  // namespace evenclaw
