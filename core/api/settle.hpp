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
};

/// Settles news of that number nobody could be sure of, a foot of hers called twice, and a wrap or
/// block still on that nobody knew of; one item for each. Nothing else is changed: what was really
/// meant is told by itself. Faults: "usage" without words, or when nothing of the kind is open.
Result<Reply> settle_questions(const Ports& ports, const Answered& answered);

}  // namespace evenclaw
