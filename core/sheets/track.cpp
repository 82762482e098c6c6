#include "core/sheets/track.hpp"

#include <cstddef>
#include <utility>
#include <vector>

namespace evenclaw {

namespace {

// A print in its own frame: toes up, the cleft on the line x = 0, about 8 by 11 mm before it is
// scaled. `right` is the claw to the right of the cleft, the left one is its mirror image.
std::vector<PathStep> right_claw() {
  return {move_to({0.75, 3.6}),
          curve_to({0.7, 5.0}, {1.5, 5.5}, {2.35, 5.35}),
          curve_to({3.7, 5.1}, {4.35, 3.2}, {4.2, 1.0}),
          curve_to({4.0, -1.9}, {2.9, -4.4}, {1.25, -5.7}),
          curve_to({0.95, -5.9}, {0.75, -5.6}, {0.8, -5.2}),
          curve_to({1.05, -2.6}, {0.95, 0.6}, {0.75, 3.6}),
          close_path()};
}

constexpr Stroke thick{Ink::black, 0.45, Dash::solid};
constexpr Stroke thin{Ink::black, 0.18, Dash::solid};
constexpr Stroke thin_dashed{Ink::black, 0.22, Dash::dashed};
constexpr Stroke no_stroke{Ink::none, 0, Dash::solid};
constexpr double print_scale = 0.85;
// The feet point a little outwards: 5 degrees.
constexpr double outward_cosine = 0.99619;
constexpr double outward_sine = 0.08716;
// Millimetres; in the list cow by cow the drawing is about half as large.
constexpr double small_letters = 3.8;

/// Where one print stands in the drawing.
struct PrintAt {
  Point centre;
  bool is_left = true;
};

Placement placement_of(const PrintAt& at, bool mirrored) {
  return {at.centre, outward_cosine, at.is_left ? -outward_sine : outward_sine, print_scale,
          mirrored};
}

Point in_drawing(const PrintAt& at, Point point) {
  return placed(point, placement_of(at, false));
}

Stroke outline_of(const FootMark& mark) {
  switch (mark.state) {
    case FootState::nothing_found:
    case FootState::finding:
      return thick;
    case FootState::not_lifted:
      return thin;
    case FootState::unsaid:
      return mark.todays ? thin_dashed : thin;
  }
  return thin;
}

Ink fill_of(const ClawMark& mark) {
  if (mark.found) return Ink::black;
  return mark.may_be_here ? Ink::grey : Ink::white;
}

void add_claw(Drawing& drawing, const PrintAt& at, bool left_of_cleft, const FootMark& foot) {
  // Seen from above the outside claw of a left foot lies to the left.
  const ClawMark& mark = left_of_cleft == at.is_left ? foot.outside : foot.inside;
  const Placement placement = placement_of(at, left_of_cleft);
  drawing.marks.emplace_back(
      Path{placed(right_claw(), placement), fill_of(mark), outline_of(foot)});
  if (mark.block) {
    drawing.marks.emplace_back(Path{placed({move_to({0.4, 6.3}), line_to({4.2, 6.3}),
                                            line_to({4.2, 7.7}), line_to({0.4, 7.7}), close_path()},
                                           placement),
                                    Ink::black, no_stroke});
  }
  if (mark.earlier > 0) {
    const Point dot = placed({4.3, -4.9}, placement);
    const double outward = left_of_cleft ? -0.9 : 0.9;
    drawing.marks.emplace_back(ellipse(dot, 0.55, 0.55, Ink::black, no_stroke));
    drawing.marks.emplace_back(Label{{dot.x + outward, dot.y + 0.9},
                                     std::to_string(mark.earlier),
                                     small_letters,
                                     left_of_cleft ? Anchor::end : Anchor::start,
                                     false,
                                     Ink::black});
  }
}

void add_diamond(Drawing& drawing, Point at) {
  constexpr double reach = 1.25;
  drawing.marks.emplace_back(
      Path{{move_to({at.x, at.y - reach}), line_to({at.x + reach, at.y}),
            line_to({at.x, at.y + reach}), line_to({at.x - reach, at.y}), close_path()},
           Ink::black,
           Stroke{Ink::white, 0.3, Dash::solid}});
}

void add_print(Drawing& drawing, const PrintAt& at, const FootMark& mark) {
  add_claw(drawing, at, true, mark);
  add_claw(drawing, at, false, mark);
  if (mark.wrap) {
    drawing.marks.emplace_back(ellipse(in_drawing(at, {0, 2.4}), 4.1, 1.3, Ink::none,
                                       Stroke{Ink::white, 1.3, Dash::solid}));
    drawing.marks.emplace_back(ellipse(in_drawing(at, {0, 2.4}), 4.1, 1.3, Ink::none,
                                       Stroke{Ink::black, 0.6, Dash::solid}));
  }
  if (mark.skin_in_front) add_diamond(drawing, in_drawing(at, {0, -6.6}));
  if (mark.skin_between) add_diamond(drawing, in_drawing(at, {0, -1.6}));
  if (mark.skin_behind) add_diamond(drawing, in_drawing(at, {0, 6.7}));
  if (mark.skin_earlier > 0) {
    const Point dot = in_drawing(at, {-0.9, 8.9});
    drawing.marks.emplace_back(ellipse(dot, 0.55, 0.55, Ink::black, no_stroke));
    drawing.marks.emplace_back(Label{{dot.x + 1.0, dot.y + 0.9},
                                     std::to_string(mark.skin_earlier),
                                     small_letters,
                                     Anchor::start,
                                     false,
                                     Ink::black});
  }
}

void add_way(Drawing& drawing, Point front, Point hind) {
  const double swing = front.x < 15 ? -1.4 : 1.4;
  drawing.marks.emplace_back(
      Path{{move_to({front.x, 0.6}),
            curve_to({front.x + swing, 8}, {front.x - swing, 20}, {hind.x, 30.2})},
           Ink::none,
           Stroke{Ink::grey, 0.35, Dash::dotted}});
}

constexpr PrintAt print_at(Foot foot) {
  switch (foot) {
    case Foot::lf:
      return {{9.4, 6.9}, true};
    case Foot::rf:
      return {{20.6, 9.1}, false};
    case Foot::lh:
      return {{9.4, 19.9}, true};
    case Foot::rh:
      return {{20.6, 22.1}, false};
  }
  return {};
}

Label foot_letters(Foot foot) {
  const PrintAt at = print_at(foot);
  const double x = at.is_left ? 0.2 : 29.8;
  return {{x, at.centre.y + 4.2},
          std::string(word_of(foot)),
          small_letters,
          at.is_left ? Anchor::start : Anchor::end,
          false,
          Ink::black};
}

/// Says in words what a drawing shows, foot by foot.
class TrackWords {
 public:
  explicit TrackWords(const Wording& wording) : wording_(wording) {}

  void add(Foot foot, const FootMark& mark) {
    const std::string name = wording_.foot(foot);
    add_claw(name, mark.outside, Claw::outside);
    add_claw(name, mark.inside, Claw::inside);
    if (mark.outside.may_be_here) append(Saying::track_claw_open, name);
    if (mark.skin_between || mark.skin_behind || mark.skin_in_front) {
      append(Saying::track_skin, name);
    }
    if (mark.wrap) append(Saying::track_wrap, name);
    const int earlier = mark.outside.earlier + mark.inside.earlier + mark.skin_earlier;
    if (earlier > 0) {
      put(wording_.say(Saying::track_earlier, {{"foot", name}, {"n", std::to_string(earlier)}}));
    }
    if (mark.state == FootState::not_lifted) not_lifted_.add(foot);
    if (mark.state == FootState::unsaid) (mark.todays ? unsaid_ : not_lifted_).add(foot);
  }

  std::string text() {
    if (text_.empty()) put(wording_.say(Saying::track_nothing));
    if (!not_lifted_.empty()) {
      put(wording_.say(Saying::track_not_lifted, {{"feet", wording_.feet(not_lifted_)}}));
    }
    if (!unsaid_.empty()) {
      put(wording_.say(Saying::track_unsaid, {{"feet", wording_.feet(unsaid_)}}));
    }
    text_.back() = '.';
    return text_;
  }

 private:
  void put(const std::string& words) { text_ += (text_.empty() ? "" : " ") + words; }

  void append(Saying saying, const std::string& foot) {
    put(wording_.say(saying, {{"foot", foot}}));
  }

  void add_claw(const std::string& foot, const ClawMark& mark, Claw claw) {
    const std::string name = wording_.claw(claw);
    if (mark.found) put(wording_.say(Saying::track_found, {{"where", foot + ' ' + name}}));
    if (mark.block) put(wording_.say(Saying::track_block, {{"foot", foot}, {"claw", name}}));
  }

  const Wording& wording_;
  std::string text_;
  FootSet not_lifted_;
  FootSet unsaid_;
};

struct KeyItem {
  Saying words;
  FootMark mark;
};

std::vector<KeyItem> key_items() {
  FootMark lifted;
  lifted.state = FootState::finding;
  std::vector<KeyItem> items;
  const auto item = [&](Saying words) -> FootMark& {
    items.push_back({words, lifted});
    return items.back().mark;
  };
  item(Saying::key_found).outside.found = true;
  FootMark& open = item(Saying::claw_not_called);
  open.outside.may_be_here = true;
  open.inside.may_be_here = true;
  item(Saying::key_skin).skin_behind = true;
  item(Saying::key_wrap).wrap = true;
  item(Saying::key_block).inside.block = true;
  item(Saying::key_earlier).outside.earlier = 2;
  item(Saying::key_not_lifted).state = FootState::not_lifted;
  item(Saying::key_unsaid).state = FootState::unsaid;
  return items;
}

}  // namespace

Figure track_figure(const Track& track, const std::string& cow, const Wording& wording) {
  Drawing drawing{30, 31, {}};
  add_way(drawing, print_at(Foot::lf).centre, print_at(Foot::lh).centre);
  add_way(drawing, print_at(Foot::rf).centre, print_at(Foot::rh).centre);
  TrackWords words(wording);
  for (const Foot foot : all_feet) {
    add_print(drawing, print_at(foot), mark_of(track, foot));
    drawing.marks.emplace_back(foot_letters(foot));
    words.add(foot, mark_of(track, foot));
  }
  return {std::move(drawing), wording.say(Saying::track_of, {{"cow", cow}}) + ' ' + words.text(),
          ""};
}

Figure track_key(const Wording& wording) {
  constexpr double step = 22;  // mm
  const std::vector<KeyItem> items = key_items();
  Drawing drawing{step * static_cast<double>(items.size()), 18, {}};
  double middle = step / 2;
  for (const KeyItem& item : items) {
    add_print(drawing, {{middle, 6.5}, true}, item.mark);
    drawing.marks.emplace_back(
        Label{{middle, 16.8}, wording.say(item.words), 2.9, Anchor::middle, false, Ink::black});
    middle += step;
  }
  return {std::move(drawing), wording.say(Saying::key_label), ""};
}

Figure product_mark(const Wording& wording) {
  FootMark mark;
  mark.state = FootState::nothing_found;
  mark.outside.found = true;
  mark.inside.found = true;
  Drawing drawing{17, 24, {}};
  add_print(drawing, {{4.5, 19}, true}, mark);
  add_print(drawing, {{12.5, 12}, false}, mark);
  add_print(drawing, {{4.5, 5}, true}, mark);
  return {std::move(drawing), wording.say(Saying::mark_label), ""};
}

}  // namespace evenclaw
