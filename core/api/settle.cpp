#include "core/api/settle.hpp"

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

#include "core/api/journal.hpp"
#include "core/api/visits.hpp"
#include "core/base/text.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

bool is_of(const OpenPoint& point, const std::string& number) {
  return point.cow_said == number || plain_number(point.cow_said) == plain_number(number);
}

/// The questions of the latest visit that has any of that number.
struct Questions {
  VisitId visit;
  std::vector<OpenPoint> points;
};

Result<Questions> questions_of(Store& store, const Answered& answered) {
  auto rows = select_as<VisitRow>(store, answered.herd, {}, {"day", "ordinal"});
  if (!rows) return rows.faults();
  std::reverse(rows->begin(), rows->end());
  for (const VisitRow& row : *rows) {
    auto state = closing_state(store, visit_of(row));
    if (!state) return state.faults();
    Questions questions{row.visit, {}};
    for (OpenPoint& point : state->open) {
      const bool hers = is_settled_in_words(point.kind) && is_of(point, answered.number);
      if (hers) questions.points.push_back(std::move(point));
    }
    if (!questions.points.empty()) return questions;
  }
  return Fault{.slug = "usage",
               .message = "Nothing is asked of " + answered.number + " that words could settle.",
               .token = answered.number};
}

}  // namespace

Result<Reply> settle_questions(const Ports& ports, const Answered& answered) {
  if (trimmed(answered.words).empty()) {
    return Fault{.slug = "usage", .message = "Say how it was settled."};
  }
  const auto questions = questions_of(ports.store, answered);
  if (!questions) return questions.faults();
  QuestionSettled body;
  body.visit = questions->visit;
  body.day = answered.day;
  body.number = answered.number;
  const CowId cow = questions->points.front().cow;
  if (cow != CowId{}) body.cow = cow;
  body.words = trimmed(answered.words);
  const auto written = write_one(ports, answered.herd.value, body, {});
  if (!written) return written.faults();
  Reply reply;
  for (const OpenPoint& point : questions->points) {
    ReplyItem item;
    item.kind = ReplyKind::told;
    item.cow = point.cow_said;
    item.words = "settled: " + point.words;
    item.entry = *written;
    reply.items.push_back(std::move(item));
  }
  return reply;
}

}  // namespace evenclaw
