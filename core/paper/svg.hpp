// A drawing as SVG that can stand inside an HTML page.
#pragma once

#include <string>
#include <string_view>

#include "core/paper/drawing.hpp"

namespace evenclaw {

/// One <svg> element, sized in millimetres, that says `label` to those who cannot see it. Inks
/// that are black become the colour of the text around, so that it stays visible on a dark page;
/// lengths are rounded to hundredths of a millimetre.
std::string to_svg(const Drawing& drawing, std::string_view label);

}  // namespace evenclaw
