// How a document looks on screen and on A4: black, white, one grey, thick rules.
#pragma once

#include <string_view>

namespace evenclaw {

/// The style sheet of every page; holds no reference to anywhere.
std::string_view html_style();

}  // namespace evenclaw
