// A person answers in words what was asked of a number when a visit was closed.
#pragma once

#include <string>
#include <string_view>

#include "core/api/ports.hpp"
#include "core/api/reply.hpp"
#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// Whose questions, and the answer: "it was 412", "both hold".
struct Answered {
  HerdId herd;
  std::string number;
  Day day;
  std::string words;
  bool sure = false;  // a name that nobody has yet is meant so
};

/// Settles news of that number nobody could be sure of, a foot of hers called twice, and a wrap or
/// block still on that nobody knew of; one item for each. Words that say it was wrong, "told of the
/// wrong cow", "a mistake", "not so", take back what was told: what it closed is open again, what
/// it made is no task any more. Nothing else is changed: what was really meant is told by itself. A
/// question about the name of a caller or writer is answered by the name: the turns that were
/// called or typed under the known one because of it are corrected to who it was, and the name
/// stays out of the log. Faults: "usage" without words, when nothing of the kind is open, and of
/// a wrap or block that was told off and told still on, of which news alone says what holds, unless
/// the words say that it was wrong; "answer-needed" for a name nobody has, unless `sure`.
Result<Reply> settle_questions(const Ports& ports, const Answered& answered);

}  // namespace evenclaw
