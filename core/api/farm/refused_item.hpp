// A line about the farm that was not recorded, as an answer.
#pragma once

#include "core/api/reply.hpp"
#include "core/base/result.hpp"

namespace evenclaw {

/// The fault with its place, at that line of the session.
inline ReplyItem refused_item(const Fault& fault, int line) {
  ReplyItem item;
  item.kind = ReplyKind::refused;
  item.line = line;
  item.words = fault.message;
  item.slug = fault.slug;
  item.column = fault.column;
  item.token = fault.token;
  item.remedy = fault.remedy;
  return item;
}

}  // namespace evenclaw
