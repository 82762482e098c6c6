#include "cli/reply_printer.hpp"

#include <algorithm>
#include <iostream>

#include "core/base/quotation.hpp"
#include "core/wire/json.hpp"
#include "core/wire/value_json.hpp"

namespace evenclaw::cli {
namespace {

/// "refused line 3, column 18 ("z13"): words; remedy", with the token where the words do not name
/// it; below a prompt the place is pointed at instead.
std::string refusal(const ReplyItem& item, std::optional<std::size_t> prompt_width) {
  std::string text;
  const auto column = static_cast<std::size_t>(std::max(item.column, 1));
  if (prompt_width && item.column > 0) text = std::string(*prompt_width + column - 1, ' ') + "^\n";
  text += "refused";
  if (!prompt_width && item.line > 0) {
    text += " line " + std::to_string(item.line);
    if (item.column > 0) text += ", column " + std::to_string(item.column);
  }
  const bool names_token = item.token.empty() || item.words.find(item.token) != std::string::npos;
  if (!prompt_width && !names_token) text += " (" + quoted(item.token) + ")";
  if (!item.cow.empty()) text += (item.line > 0 && !prompt_width ? ", " : " ") + item.cow;
  return with_remedy(text + ": " + item.words, item.remedy);
}

}  // namespace

Exit exit_after(const std::vector<ReplyItem>& items) {
  const bool is_open = std::any_of(items.begin(), items.end(), [](const ReplyItem& item) {
    return item.kind == ReplyKind::refused || item.kind == ReplyKind::question;
  });
  return is_open ? Exit::asked : Exit::fine;
}

void ReplyPrinter::print(const ReplyItem& item, std::optional<std::size_t> prompt_width) {
  if (json_) {
    std::cout << canonical_json(to_json(item)) << '\n';
  } else if (item.kind == ReplyKind::refused) {
    std::cout << refusal(item, prompt_width) << '\n';
  } else {
    std::cout << to_line(item) << '\n';
  }
  exit_ = std::max(exit_, exit_after({item}));
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
