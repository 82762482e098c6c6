#include "core/sheets/track.hpp"

#include <doctest/doctest.h>

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

}  // namespace

TEST_CASE("left feet lie left and hind feet behind, as she walks away") {
  const Foot feet[] = {Foot::lf, Foot::rf, Foot::lh, Foot::rh};
  Point at[4];
  for (int i = 0; i < 4; ++i) {
    Track track = all_lifted();
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
  left.inside.block = true;
  left.inside.earlier = 2;
  FootMark& right = mark_of(track, Foot::rh);
  right.skin_behind = true;
  right.wrap = true;
  mark_of(track, Foot::lf).state = FootState::not_lifted;
  mark_of(track, Foot::rf).state = FootState::unsaid;
  CHECK(
      track_figure(track, "412", words).label ==
      "Feet of 412, seen from above, she walks away: left hind outside claw filled, found today; "
      "left hind bar under the inside claw, block on; left hind 2 dots, found there before; "
      "right hind diamond on the skin, found today; right hind ring, wrap on; left front thin, not "
      "lifted; right front dashed, nobody said whether lifted.");
}

TEST_CASE("every mark keeps within its drawing") {
  Track track = all_lifted();
  for (FootMark& mark : track) {
    mark.outside = {true, false, true, 12};
    mark.inside = {true, false, true, 3};
    mark.skin_between = mark.skin_behind = mark.skin_in_front = mark.wrap = true;
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

}  // namespace evenclaw
