#include "demo/recorder.hpp"

#include <string>

#include "core/api/herds.hpp"
#include "core/api/people.hpp"
#include "core/api/recording.hpp"
#include "core/api/visits.hpp"
#include "demo/call_lines.hpp"

namespace evenclaw::demo {

namespace {

void count(const Reply& reply, FarmRecorded& recorded) {
  for (const ReplyItem& item : reply.items) {
    recorded.turns += item.kind == ReplyKind::saved ? 1 : 0;
    recorded.asked += item.kind == ReplyKind::stop || item.kind == ReplyKind::ask ? 1 : 0;
    recorded.refused += item.kind == ReplyKind::refused ? 1 : 0;
  }
}

Outcome record_visit(const Ports& ports, const CalledVisit& called, FarmRecorded& recorded) {
  VisitWanted wanted;
  wanted.herd = recorded.herd;
  wanted.day = called.day;
  wanted.todays_feet = called.todays_feet;
  wanted.caller = called.caller;
  wanted.writer = called.writer;
  wanted.sure = true;
  const auto visit = start_visit(ports, wanted);
  if (!visit) return visit.faults();
  auto recording = Recording::open(ports, *visit, english());
  if (!recording) return recording.faults();
  const auto reply = recording->say_all(call_lines(called));
  if (!reply) return reply.faults();
  count(*reply, recorded);
  const auto let_out = recording->end_of_visit();
  if (!let_out) return let_out.faults();
  count(*let_out, recorded);
  const auto ended = end_visit(ports, *visit, english());
  if (!ended) return ended.faults();
  ++recorded.visits;
  recorded.left_open += static_cast<std::int32_t>(ended->open.size());
  return Done{};
}

}  // namespace

Result<FarmRecorded> record_farm(const Ports& ports, StoryClock& clock, const HerdStory& story) {
  FarmRecorded recorded;
  if (!story.visits.empty()) clock.begin(story.visits.front().day);
  const auto herd = register_herd(ports, story.farm.name, true);
  if (!herd) return herd.faults();
  recorded.herd = herd->herd;
  for (const CalledVisit& visit : story.visits) {
    clock.begin(visit.day);
    const Outcome done = record_visit(ports, visit, recorded);
    if (!done) return done.faults();
  }
  return recorded;
}

Outcome enter_people(const Ports& ports, const BusinessWanted& wanted) {
  for (const Caller& caller : callers_of(wanted)) {
    for (const std::string_view name : {caller.name, caller.writer}) {
      const auto person = certain_person(ports, name, true);
      if (!person) return person.faults();
    }
  }
  return Done{};
}

}  // namespace evenclaw::demo
