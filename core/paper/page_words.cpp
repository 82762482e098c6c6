#include "core/paper/page_words.hpp"

namespace evenclaw {

PageWords page_words(std::string_view language) {
  if (language == "en") return {"page ", " of "};
  if (language == "de") return {"Seite ", " von "};
  return {"", " / "};
}

std::string page_number(std::string_view language, std::size_t page, std::size_t pages) {
  const PageWords words = page_words(language);
  return std::string(words.before) + std::to_string(page) + std::string(words.between) +
         std::to_string(pages);
}

}  // namespace evenclaw
