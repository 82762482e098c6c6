// What a part of the sheet says, as plain text in lines as wide as they come.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/paper/text.hpp"

namespace evenclaw {

inline std::string text_of(std::vector<Block> blocks) {
  Document document;
  document.blocks = std::move(blocks);
  return to_plain_text(document, 1000);
}

inline bool holds(const std::string& text, const std::string& part) {
  return text.find(part) != std::string::npos;
}

}  // namespace evenclaw
