// A table as lines of plain text.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "core/paper/document.hpp"

namespace evenclaw {

/// `rows` (the heads first, all as long as `columns`) in lines of at most `width` characters, two
/// spaces between columns. Columns are as wide as their widest cell; where a line would be too
/// long the widest of them become narrower and their cells take several lines. A word that is wider
/// than its column is parted.
std::vector<std::string> table_lines(const std::vector<TableColumn>& columns,
                                     const std::vector<std::vector<std::string>>& rows,
                                     std::size_t width);

}  // namespace evenclaw
