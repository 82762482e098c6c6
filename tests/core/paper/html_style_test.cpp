#include "core/paper/html_style.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

namespace evenclaw {

TEST_CASE("the style sheet closes every brace and refers to nothing") {
  const std::string style(html_style());
  CHECK(std::count(style.begin(), style.end(), '{') == std::count(style.begin(), style.end(), '}'));
  CHECK(style.find("url(") == std::string::npos);
  CHECK(style.find("@import") == std::string::npos);
  CHECK(style.find('<') == std::string::npos);
}

TEST_CASE("tick boxes are 6 mm and tasks 16 points") {
  const std::string style(html_style());
  CHECK(style.find(".tasks .box{width:6mm;height:6mm") != std::string::npos);
  CHECK(style.find("font-size:16pt") != std::string::npos);
}

}  // namespace evenclaw
