#include "cli/reply_printer.hpp"

#include <algorithm>
#include <iostream>

#include "core/wire/json.hpp"
#include "core/wire/value_json.hpp"

namespace evenclaw::cli {

void ReplyPrinter::note_exit(Exit exit) {
  exit_ = std::max(exit_, exit);
}

void ReplyPrinter::print(const ReplyItem& item) {
  if (json_) {
    std::cout << canonical_json(to_json(item)) << '\n';
  } else if (item.kind == ReplyKind::refused && item.line > 0) {
    std::cout << "line " << item.line << (item.column > 0 ? ", column " : "")
              << (item.column > 0 ? std::to_string(item.column) : "") << ": " << to_line(item)
              << '\n';
  } else {
    std::cout << to_line(item) << '\n';
  }
  if (item.kind == ReplyKind::refused || item.kind == ReplyKind::question) note_exit(Exit::asked);
}

void ReplyPrinter::print(const Reply& reply) {
  for (const ReplyItem& item : reply.items) print(item);
  std::cout.flush();
}

}  // namespace evenclaw::cli
