// Words in a drawing, whose letters nobody has measured: B612 is taken to be so wide.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace evenclaw {

/// The width of a text whose letters are `size` high, in millimetres; rather too wide than too
/// narrow.
double drawn_width(std::string_view text, double size);

/// The text in lines of at most that width, broken at spaces; a longer word stands alone.
std::vector<std::string> drawn_lines(std::string_view text, double size, double width);

/// Places for words beside each other from top to bottom, each as near to where it is wanted as
/// the others let it be: at least `apart`, and within `top` and `bottom` when there is room.
struct ColumnRoom {
  double top = 0;
  double bottom = 0;
  double apart = 0;
};

std::vector<double> apart(const std::vector<double>& wanted, const ColumnRoom& column);

}  // namespace evenclaw
