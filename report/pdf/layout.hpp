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

/// The pages with their feet.
std::vector<Page> laid_out(const Document& document, Typesetter& typesetter);

}  // namespace evenclaw
