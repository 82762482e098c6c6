// What somebody said, marked as a quotation in a sentence told to people.
#pragma once

#include <string>
#include <string_view>

namespace evenclaw {

/// The text between double quotes; between single ones when it holds double quotes itself, so that
/// none stand doubled: 'other "cracked wall"'. Words that are one quotation already ("black spot"
/// with its quotes) stay as they are.
std::string quoted(std::string_view text);

}  // namespace evenclaw
