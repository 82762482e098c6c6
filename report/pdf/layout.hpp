// A document laid out on pages of A4: what lies where, not yet painted.
#pragma once

#include <string>
#include <vector>

#include "core/paper/document.hpp"
#include "report/pdf/pages.hpp"
#include "report/pdf/typesetter.hpp"

namespace evenclaw {

/// All of it below each other: first its head (block -1), then its blocks by their number.
Strips document_strips(const Document& document, Typesetter& typesetter);

/// "page 2 of 3"; in languages we have no words for "2 / 3".
std::string page_words(const std::string& language, std::size_t page, std::size_t pages);

/// The pages with their feet.
std::vector<Page> laid_out(const Document& document, Typesetter& typesetter);

}  // namespace evenclaw
