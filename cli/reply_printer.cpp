#include "cli/reply_printer.hpp"

#include <algorithm>
#include <iostream>

#include "core/wire/json.hpp"
#include "core/wire/value_json.hpp"

namespace evenclaw::cli {
namespace {

/// "refused line 3, column 18: words remedy"; below a prompt the place is pointed at instead.
std::string refusal(const ReplyItem& item, std::optional<std::size_t> prompt_width) {
  std::string text;
  const auto column = static_cast<std::size_t>(std::max(item.column, 1));
  if (prompt_width && item.column > 0) text = std::string(*prompt_width + column - 1, ' ') + "^\n";
  text += "refused";
  if (!prompt_width && item.line > 0) {
    text += " line " + std::to_string(item.line);
    if (item.column > 0) text += ", column " + std::to_string(item.column);
  }
  if (!item.cow.empty()) text += (item.line > 0 && !prompt_width ? ", " : " ") + item.cow;
  text += ": " + item.words;
  return item.remedy.empty() ? text : text + " " + item.remedy;
}

}  // namespace

void ReplyPrinter::print(const ReplyItem& item, std::optional<std::size_t> prompt_width) {
  if (json_) {
    std::cout << canonical_json(to_json(item)) << '\n';
  } else if (item.kind == ReplyKind::refused) {
    std::cout << refusal(item, prompt_width) << '\n';
  } else {
    std::cout << to_line(item) << '\n';
  }
  if (item.kind == ReplyKind::refused || item.kind == ReplyKind::question) {
    exit_ = std::max(exit_, Exit::asked);
  }
}

void ReplyPrinter::print(const ReplyItem& item) {
  print(item, std::nullopt);
}

void ReplyPrinter::print(const Reply& reply) {
  for (const ReplyItem& item : reply.items) print(item);
  std::cout.flush();
}

void ReplyPrinter::print_below(const Reply& reply, std::size_t prompt_width) {
  for (const ReplyItem& item : reply.items) print(item, prompt_width);
  std::cout.flush();
}

}  // namespace evenclaw::cli
