#include <algorithm>
#include <optional>
#include <string_view>

#include "core/log/body.hpp"
#include "core/log/picture.hpp"

namespace evenclaw {

namespace {

enum class Pictures { none, of_cows, of_visits, of_both };

Pictures pictures_of_kind(std::string_view kind) {
  constexpr std::string_view cow_kinds[] = {
      TurnRecorded::kind,    TaskClosedBody::kind, TaskMoved::kind,       CowRegistered::kind,
      NumberGiven::kind,     CowLeft::kind,        SameCow::kind,         SameCowTakenBack::kind,
      QuestionSettled::kind, LifeTold::kind,       PastFindingsTold::kind};
  constexpr std::string_view visit_kinds[] = {
      VisitOpened::kind,     VisitClosed::kind, VisitCorrected::kind, BatchRecorded::kind,
      MobilityScoring::kind, FarmWalk::kind,    FarmChange::kind};
  if (kind == Redact::kind) return Pictures::of_both;
  if (std::count(std::begin(cow_kinds), std::end(cow_kinds), kind) > 0) return Pictures::of_cows;
  if (std::count(std::begin(visit_kinds), std::end(visit_kinds), kind) > 0) {
    return Pictures::of_visits;
  }
  return Pictures::none;
}

// The visit a cow was seen in is among the subjects, but its row does not depend on her.
std::optional<Uuid> visit_of_cow_entry(const Entry& entry) {
  const std::string& kind = entry.envelope.kind;
  const bool may_name_one =
      kind == TurnRecorded::kind || kind == TaskClosedBody::kind || kind == QuestionSettled::kind;
  return may_name_one ? id_in_body(entry, "visit") : std::nullopt;
}

}  // namespace

Touched touched_by(const Entry& entry) {
  Touched touched;
  const Pictures pictures = pictures_of_kind(entry.envelope.kind);
  if (pictures == Pictures::none) return touched;
  const std::optional<Uuid> visit = visit_of_cow_entry(entry);
  for (const Uuid& subject : entry.envelope.subjects) {
    if (subject == entry.envelope.scope) continue;
    if (visit && *visit == subject) continue;
    if (pictures != Pictures::of_visits) touched.cows.push_back(CowId{subject});
    if (pictures != Pictures::of_cows) touched.visits.push_back(VisitId{subject});
  }
  return touched;
}

}  // namespace evenclaw
