#include "core/sheets/track.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <variant>

namespace evenclaw {

namespace {

const Wording& words = english_wording();

Track all_lifted() {
  Track track;
  for (FootMark& mark : track) mark.state = FootState::nothing_found;
  return track;
}

std::vector<Path> paths_of(const Figure& figure) {
  std::vector<Path> paths;
  for (const DrawingMark& mark : figure.drawing.marks) {
    if (const Path* path = std::get_if<Path>(&mark)) paths.push_back(*path);
  }
  return paths;
}

/// The middle of the filled claws: where the eye goes.
std::vector<Point> filled(const Figure& figure) {
  std::vector<Point> points;
  for (const Path& path : paths_of(figure)) {
    if (path.fill == Ink::black) points.push_back(path.steps.front().to);
  }
  return points;
}

std::size_t labels_of(const Figure& figure, const std::string& text) {
  std::size_t count = 0;
  for (const DrawingMark& mark : figure.drawing.marks) {
    const auto* label = std::get_if<Label>(&mark);
    count += label != nullptr && label->text == text ? 1 : 0;
  }
  return count;
}

/// As B612 is: figures 0.65 of the size wide, of the letters of feet R and H 0.7 at the most.
double width_of(const Label& label) {
  return label.size * 0.675 * static_cast<double>(label.text.size());
}

double left_of(const Label& label) {
  return label.anchor == Anchor::end ? label.at.x - width_of(label) : label.at.x;
}

}  // namespace

TEST_CASE("left feet lie left and hind feet behind, as she walks away") {
  const Foot feet[] = {Foot::lf, Foot::rf, Foot::lh, Foot::rh};
  Point at[4];
  for (int i = 0; i < 4; ++i) {
    Track track = all_lifted();
    for (FootMark& mark : track) mark.wrap = Fitted::yes;
    mark_of(track, feet[i]).outside.found = true;
    const auto points = filled(track_figure(track, "412", words));
    REQUIRE(points.size() == 1);
    at[i] = points[0];
  }
  CHECK(at[0].x < at[1].x);
  CHECK(at[2].x < at[3].x);
  CHECK(at[0].y < at[2].y);
  CHECK(at[1].y < at[3].y);
}

TEST_CASE("the outside claw lies away from the other lane") {
  for (const Foot foot : all_feet) {
    Track outside = all_lifted();
    mark_of(outside, foot).outside.found = true;
    Track inside = all_lifted();
    mark_of(inside, foot).inside.found = true;
    const double outer = filled(track_figure(outside, "", words)).at(0).x;
    const double inner = filled(track_figure(inside, "", words)).at(0).x;
    const bool is_left = foot == Foot::lf || foot == Foot::lh;
    CHECK((is_left ? outer < inner : outer > inner));
  }
}

TEST_CASE("a foot that was not lifted is thin, one of which nothing was said is dashed") {
  Track track = all_lifted();
  mark_of(track, Foot::lf).state = FootState::not_lifted;
  mark_of(track, Foot::rf).state = FootState::unsaid;
  int thin = 0;
  int dashed = 0;
  int thick = 0;
  for (const Path& path : paths_of(track_figure(track, "", words))) {
    if (path.fill != Ink::white) continue;
    if (path.stroke.dash == Dash::dashed) {
      ++dashed;
    } else {
      ++(path.stroke.width < 0.3 ? thin : thick);
    }
  }
  CHECK(thin == 2);
  CHECK(dashed == 2);
  CHECK(thick == 4);
}

TEST_CASE("a claw nobody named is grey, never black") {
  Track track = all_lifted();
  mark_of(track, Foot::rh).outside.may_be_here = true;
  mark_of(track, Foot::rh).inside.may_be_here = true;
  const Figure figure = track_figure(track, "", words);
  CHECK(filled(figure).empty());
  int grey = 0;
  for (const Path& path : paths_of(figure)) grey += path.fill == Ink::grey ? 1 : 0;
  CHECK(grey == 2);
}

TEST_CASE("the label says everything the drawing shows") {
  Track track = all_lifted();
  FootMark& left = mark_of(track, Foot::lh);
  left.state = FootState::finding;
  left.outside.found = true;
  left.inside.block = Fitted::yes;
  left.inside.earlier = 2;
  FootMark& right = mark_of(track, Foot::rh);
  right.skin_behind = true;
  right.wrap = Fitted::yes;
  mark_of(track, Foot::lf).state = FootState::not_lifted;
  mark_of(track, Foot::rf).state = FootState::unsaid;
  CHECK(
      track_figure(track, "412", words).label ==
      "Feet of 412, seen from above, she walks away: left hind outside claw filled, found today; "
      "left hind bar under the inside claw, block on; left hind 2 dots, found there before; "
      "right hind diamond on the skin, found today; right hind ring, wrap on; left front thin, not "
      "lifted; right front dashed, nobody said whether lifted.");
}

TEST_CASE("what nobody answered for is drawn with a question mark and said not to be known") {
  Track track = all_lifted();
  mark_of(track, Foot::lh).wrap = Fitted::in_doubt;
  mark_of(track, Foot::rh).inside.block = Fitted::in_doubt;
  const Figure figure = track_figure(track, "412", words);
  CHECK(labels_of(figure, "?") == 2);
  CHECK(figure.label ==
        "Feet of 412, seen from above, she walks away: left hind dashed ring, not known whether "
        "the wrap still is on; right hind hollow bar under the inside claw, not known whether a "
        "block is on it.");
  CHECK(filled(figure).empty());
  mark_of(track, Foot::lh).wrap = Fitted::yes;
  mark_of(track, Foot::rh).inside.block = Fitted::yes;
  CHECK(labels_of(track_figure(track, "412", words), "?") == 0);
}

TEST_CASE("figures and letters of the track are 2.5 mm high on a card, and none lie on another") {
  Track track = all_lifted();
  for (FootMark& mark : track) {
    mark.outside.earlier = mark.inside.earlier = mark.skin_earlier = 8;
  }
  const Drawing drawing = track_figure(track, "412", words).drawing;
  constexpr double width_on_card = 27;        // mm
  constexpr double figure_of_letters = 0.75;  // B612: capitals and figures, of the size
  std::vector<Label> labels;
  for (const DrawingMark& mark : drawing.marks) {
    if (const auto* label = std::get_if<Label>(&mark)) labels.push_back(*label);
  }
  REQUIRE(labels.size() == 16);
  for (const Label& label : labels) {
    CHECK(label.size * figure_of_letters * width_on_card / drawing.width >= 2.5);
    CHECK(left_of(label) >= 0);
    CHECK(left_of(label) + width_of(label) <= drawing.width);
    for (const Label& other : labels) {
      const bool is_apart = &label == &other || left_of(label) + width_of(label) < left_of(other) ||
                            left_of(other) + width_of(other) < left_of(label) ||
                            std::abs(label.at.y - other.at.y) > label.size * figure_of_letters;
      CHECK_MESSAGE(is_apart, label.text, " and ", other.text);
    }
  }
}

TEST_CASE("every mark keeps within its drawing") {
  Track track = all_lifted();
  for (FootMark& mark : track) {
    mark.outside = {true, false, Fitted::yes, 12};
    mark.inside = {true, false, Fitted::in_doubt, 3};
    mark.skin_between = mark.skin_behind = mark.skin_in_front = true;
    mark.wrap = Fitted::in_doubt;
    mark.skin_earlier = 2;
  }
  for (const Figure& figure :
       {track_figure(track, "412", words), track_key(words), product_mark(words)}) {
    for (const Path& path : paths_of(figure)) {
      for (const PathStep& step : path.steps) {
        if (step.kind == StepKind::close) continue;
        CHECK(step.to.x >= 0);
        CHECK(step.to.y >= 0);
        CHECK(step.to.x <= figure.drawing.width);
        CHECK(step.to.y <= figure.drawing.height);
      }
    }
  }
}

TEST_CASE("only the pair of feet that shows something is drawn, and told of are all four") {
  const struct {
    Foot foot;
    const char* drawn;
    const char* not_drawn;
  } rows[] = {{Foot::lh, "RH", "LF"}, {Foot::rf, "LF", "RH"}};

  for (const auto& row : rows) {
    Track track = all_lifted();
    mark_of(track, row.foot).outside = {true, false, Fitted::yes, 12};
    mark_of(track, row.foot).skin_earlier = 2;
    mark_of(track, Foot::rh).state = FootState::not_lifted;
    const Figure figure = track_figure(track, "412", words);
    CHECK(figure.drawing.height < 18);
    CHECK(labels_of(figure, row.drawn) == 1);
    CHECK(labels_of(figure, row.not_drawn) == 0);
    CHECK(figure.label.find("right hind thin, not lifted") != std::string::npos);
    for (const DrawingMark& mark : figure.drawing.marks) {
      if (const auto* label = std::get_if<Label>(&mark)) {
        CHECK(label->at.y <= figure.drawing.height);
      }
    }
    for (const Path& path : paths_of(figure)) {
      for (const PathStep& step : path.steps) {
        const bool is_within = step.to.y >= 0 && step.to.y <= figure.drawing.height;
        CHECK((step.kind == StepKind::close || is_within));
      }
    }
  }
}

TEST_CASE("feet on which nothing was found and nothing is on show nothing") {
  Track track = all_lifted();
  mark_of(track, Foot::lf).state = FootState::not_lifted;
  CHECK_FALSE(shows_something(track));
  mark_of(track, Foot::lf).inside.earlier = 1;
  CHECK(shows_something(track));
}

}  // namespace evenclaw
