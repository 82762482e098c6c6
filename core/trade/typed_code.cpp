#include "core/trade/typed_code.hpp"

#include "core/base/ascii.hpp"

namespace evenclaw {

int TypedCode::column(std::size_t at) const {
  return at < places.size() ? static_cast<int>(places[at]) + 1 : 1;
}

TypedCode typed_code(std::string_view text, std::string_view separators) {
  TypedCode code;
  code.characters.reserve(text.size());
  code.places.reserve(text.size());
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (c == ' ' || c == '\t' || separators.find(c) != std::string_view::npos) continue;
    code.characters += capital(c);
    code.places.push_back(i);
  }
  return code;
}

}  // namespace evenclaw
