// Pages that were laid out, painted into a PDF file.
#pragma once

#include <string>
#include <vector>

#include "core/base/result.hpp"
#include "report/pdf/pages.hpp"

namespace evenclaw {

/// The bytes of the file, which bears `title` in its properties. Faults: "print-failed".
Result<std::string> painted(const std::vector<Page>& pages, const std::string& title);

}  // namespace evenclaw
