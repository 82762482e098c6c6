#include "core/api/settle_name.hpp"

#include <algorithm>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/log/body.hpp"
#include "core/log/standing.hpp"

namespace evenclaw {

namespace {

Result<std::vector<Entry>> turns_and_questions(Store& store, const NameSettled& name) {
  EntrySelection selection;
  selection.scope = name.herd.value;
  selection.subject = name.visit.value;
  selection.kinds = {std::string(TurnRecorded::kind), std::string(NewsUnread::kind),
                     std::string(Redact::kind)};
  selection.versions = Versions::every;
  std::vector<Entry> entries;
  const Outcome read = store.read_entries(selection, [&](const Entry& entry) {
    entries.push_back(entry);
    return true;
  });
  if (!read) return read.faults();
  return entries;
}

SaidBy said_by(const Envelope& envelope) {
  return {envelope.caller.value_or(PersonId{}), envelope.writer.value_or(PersonId{})};
}

}  // namespace

Result<std::vector<std::string>> put_name_right(const Ports& ports, const NameSettled& name,
                                                Journal& journal) {
  std::vector<std::string> cows;
  if (name.was == name.read_as) return cows;
  const auto entries = turns_and_questions(ports.store, name);
  if (!entries) return entries.faults();
  // A turn that was corrected stands where it was first recorded.
  const Standing standing = standing_among(*entries);
  const auto question =
      std::find_if(standing.entries.begin(), standing.entries.end(),
                   [&](const Entry* entry) { return entry->envelope.id == name.question; });
  if (question == standing.entries.end()) return cows;
  for (auto at = question; at != standing.entries.end(); ++at) {
    const Envelope& envelope = (*at)->envelope;
    if (envelope.device != (*question)->envelope.device) continue;
    const auto turn = body_as<TurnRecorded>(**at);
    if (!turn) continue;
    SaidBy by = said_by(envelope);
    PersonId& who = name.is_writer ? by.writer : by.caller;
    if (who != name.read_as) break;
    who = name.was;
    const Outcome added =
        journal.add(*turn, {journal.fresh_id(), envelope.subjects, by, envelope.id});
    if (!added) return added.faults();
    cows.push_back(recorded_as(turn->turn.cow));
  }
  return cows;
}

}  // namespace evenclaw
