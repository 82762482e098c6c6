#include "core/paper/svg.hpp"

#include <variant>

#include "core/paper/markup.hpp"

namespace evenclaw {

namespace {

std::string_view colour(Ink ink) {
  switch (ink) {
    case Ink::none:
      return "none";
    case Ink::black:
      return "currentColor";
    case Ink::grey:
      return "#8a8a8a";
    case Ink::white:
      return "#fff";
  }
  return {};
}

std::string attribute(std::string_view name, std::string_view value) {
  return ' ' + std::string(name) + "=\"" + std::string(value) + '"';
}

std::string pair(Point point) {
  return decimal(point.x) + ' ' + decimal(point.y);
}

std::string step_text(const PathStep& step) {
  switch (step.kind) {
    case StepKind::move:
      return 'M' + pair(step.to);
    case StepKind::line:
      return 'L' + pair(step.to);
    case StepKind::curve:
      return 'C' + pair(step.bend_1) + ' ' + pair(step.bend_2) + ' ' + pair(step.to);
    case StepKind::close:
      return "Z";
  }
  return {};
}

std::string stroke_text(const Stroke& stroke) {
  if (stroke.ink == Ink::none || stroke.width <= 0) return {};
  std::string text =
      attribute("stroke", colour(stroke.ink)) + attribute("stroke-width", decimal(stroke.width));
  switch (stroke.dash) {
    case Dash::solid:
      break;
    case Dash::dashed:
      text += attribute("stroke-dasharray",
                        decimal(3 * stroke.width) + ' ' + decimal(2 * stroke.width));
      break;
    case Dash::dotted:
      // A dash without length and a round end is a dot.
      text += attribute("stroke-dasharray", "0 " + decimal(3 * stroke.width)) +
              attribute("stroke-linecap", "round");
      break;
  }
  return text;
}

std::string mark_text(const Path& path) {
  std::string steps;
  for (const PathStep& step : path.steps) steps += step_text(step);
  return "<path" + attribute("d", steps) + attribute("fill", colour(path.fill)) +
         stroke_text(path.stroke) + "/>";
}

std::string_view anchor_word(Anchor anchor) {
  switch (anchor) {
    case Anchor::start:
      return "start";
    case Anchor::middle:
      return "middle";
    case Anchor::end:
      return "end";
  }
  return {};
}

std::string mark_text(const Label& label) {
  std::string text =
      "<text" + attribute("x", decimal(label.at.x)) + attribute("y", decimal(label.at.y)) +
      attribute("font-size", decimal(label.size)) + attribute("fill", colour(label.ink));
  if (label.anchor != Anchor::start) text += attribute("text-anchor", anchor_word(label.anchor));
  if (label.strong) text += attribute("font-weight", "bold");
  if (label.turned) {
    text += attribute("transform",
                      "rotate(-90 " + decimal(label.at.x) + ' ' + decimal(label.at.y) + ')');
  }
  return text + '>' + escaped(label.text) + "</text>";
}

}  // namespace

std::string to_svg(const Drawing& drawing, std::string_view label) {
  const std::string width = decimal(drawing.width);
  const std::string height = decimal(drawing.height);
  std::string svg = "<svg" + attribute("role", "img") + attribute("aria-label", escaped(label)) +
                    attribute("width", width + "mm") + attribute("height", height + "mm") +
                    attribute("viewBox", "0 0 " + width + ' ' + height) + '>';
  for (const DrawingMark& mark : drawing.marks) {
    svg += std::visit([](const auto& one) { return mark_text(one); }, mark);
  }
  return svg + "</svg>";
}

}  // namespace evenclaw
