// How the number of a page is said: "page 2 of 3".
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace evenclaw {

/// What stands before the number, and between it and how many pages there are.
struct PageWords {
  std::string_view before;
  std::string_view between;
};

/// Of a language we have no words for only " / " between.
PageWords page_words(std::string_view language);

std::string page_number(std::string_view language, std::size_t page, std::size_t pages);

}  // namespace evenclaw
