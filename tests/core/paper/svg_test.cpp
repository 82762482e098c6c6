#include "core/paper/svg.hpp"

#include <doctest/doctest.h>

namespace evenclaw {

TEST_CASE("a drawing says its size in millimetres and what it shows") {
  const Drawing drawing{30, 12.5, {}};
  CHECK(to_svg(drawing, "her <feet>") ==
        "<svg role=\"img\" aria-label=\"her &lt;feet&gt;\" width=\"30mm\" height=\"12.5mm\" "
        "viewBox=\"0 0 30 12.5\"></svg>");
}

TEST_CASE("lines and curves become one path in the order drawn") {
  Drawing drawing{10, 10, {}};
  drawing.marks.emplace_back(
      Path{{move_to({1, 2}), line_to({3, 4.25}), curve_to({5, 5}, {6, 6}, {7, 8}), close_path()},
           Ink::black,
           Stroke{Ink::none, 0, Dash::solid}});
  CHECK(to_svg(drawing, "").find("<path d=\"M1 2L3 4.25C5 5 6 6 7 8Z\" fill=\"currentColor\"/>") !=
        std::string::npos);
}

TEST_CASE("strokes tell their width and dashes") {
  const struct {
    Stroke stroke;
    const char* text;
  } rows[] = {
      {{Ink::black, 0.4, Dash::solid}, "stroke=\"currentColor\" stroke-width=\"0.4\"/>"},
      {{Ink::grey, 0.5, Dash::dashed}, "stroke-dasharray=\"1.5 1\"/>"},
      {{Ink::white, 0.5, Dash::dotted}, "stroke-dasharray=\"0 1.5\" stroke-linecap=\"round\"/>"}};

  for (const auto& row : rows) {
    Drawing drawing{10, 10, {}};
    drawing.marks.emplace_back(line({0, 0}, {1, 1}, row.stroke));
    CHECK(to_svg(drawing, "").find(row.text) != std::string::npos);
  }
}

TEST_CASE("texts in a drawing are escaped and anchored") {
  Drawing drawing{10, 10, {}};
  drawing.marks.emplace_back(Label{{1, 2}, "a<b", 3, Anchor::end, true, Ink::grey});
  CHECK(to_svg(drawing, "")
            .find("<text x=\"1\" y=\"2\" font-size=\"3\" fill=\"#8a8a8a\" "
                  "text-anchor=\"end\" font-weight=\"bold\">a&lt;b</text>") != std::string::npos);
}

TEST_CASE("A label that is turned reads upwards about its place") {
  Drawing drawing{10, 10, {}};
  Label label{{3, 8}, "Mill Farm", 3, Anchor::end};
  label.turned = true;
  drawing.marks.emplace_back(label);
  CHECK(to_svg(drawing, "").find("transform=\"rotate(-90 3 8)\"") != std::string::npos);
}

}  // namespace evenclaw
