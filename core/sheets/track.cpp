#include "core/sheets/track.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>
#include <vector>

#include "core/paper/drawn_words.hpp"

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
constexpr Stroke doubtful{Ink::black, 0.35, Dash::dashed};
// The feet point a little outwards: 5 degrees.
constexpr double outward_cosine = 0.99619;
constexpr double outward_sine = 0.08716;
// Millimetres. The list cow by cow shows the drawing at 0.7 of its size: there a figure, three
// quarters of the letters' size in B612, is 2.5 mm high, to be read at arm's length.
constexpr double letters = 4.8;
constexpr double half_a_letter = letters * 0.375;
constexpr double half_a_dot = 0.6;

// Of the track of all four feet.
constexpr double track_width = 38;
constexpr double track_height = 31;
constexpr double track_scale = 0.8;
// Of one pair of feet; the hinds begin where the fronts end.
constexpr double pair_height = 17.5;
constexpr double hinds_top = track_height - pair_height;

/// Where one print stands in the drawing.
struct PrintAt {
  Point centre;
  bool is_left = true;
  double scale = 0.85;
};

Placement placement_of(const PrintAt& at, bool mirrored) {
  return {at.centre, outward_cosine, at.is_left ? -outward_sine : outward_sine, at.scale, mirrored};
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

/// A dot that stands for what was there before, and beside it how often, on the side away from the
/// print.
void add_count(Drawing& drawing, Point dot, int count, bool to_left) {
  const double beside = half_a_dot + 0.3;
  drawing.marks.emplace_back(ellipse(dot, half_a_dot, half_a_dot, Ink::black, no_stroke));
  drawing.marks.emplace_back(
      Label{{to_left ? dot.x - beside : dot.x + beside, dot.y + half_a_letter},
            std::to_string(count),
            letters,
            to_left ? Anchor::end : Anchor::start,
            false,
            Ink::black});
}

/// Nobody knows: on a white ground, for what lies below may be black.
void add_question(Drawing& drawing, Point at) {
  drawing.marks.emplace_back(ellipse(at, 1.9, 2.1, Ink::white, no_stroke));
  drawing.marks.emplace_back(
      Label{{at.x, at.y + half_a_letter}, "?", letters, Anchor::middle, true, Ink::black});
}

void add_block(Drawing& drawing, const Placement& placement, Fitted block) {
  if (block == Fitted::no) return;
  const bool is_known = block == Fitted::yes;
  drawing.marks.emplace_back(Path{placed({move_to({0.4, 6.3}), line_to({4.2, 6.3}),
                                          line_to({4.2, 7.7}), line_to({0.4, 7.7}), close_path()},
                                         placement),
                                  is_known ? Ink::black : Ink::white,
                                  is_known ? no_stroke : doubtful});
  if (!is_known) add_question(drawing, placed({2.6, 7.0}, placement));
}

void add_claw(Drawing& drawing, const PrintAt& at, bool left_of_cleft, const FootMark& foot) {
  // Seen from above the outside claw of a left foot lies to the left.
  const ClawMark& mark = left_of_cleft == at.is_left ? foot.outside : foot.inside;
  const Placement placement = placement_of(at, left_of_cleft);
  drawing.marks.emplace_back(
      Path{placed(right_claw(), placement), fill_of(mark), outline_of(foot)});
  add_block(drawing, placement, mark.block);
  if (mark.earlier > 0) {
    add_count(drawing, placed({4.3, -4.9}, placement), mark.earlier, left_of_cleft);
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

void add_wrap(Drawing& drawing, const PrintAt& at, Fitted wrap) {
  if (wrap == Fitted::no) return;
  const Point middle = in_drawing(at, {0, 2.4});
  const bool is_known = wrap == Fitted::yes;
  const Stroke ring = is_known ? Stroke{Ink::black, 0.6, Dash::solid} : doubtful;
  for (const Stroke& stroke : {Stroke{Ink::white, 1.3, Dash::solid}, ring}) {
    drawing.marks.emplace_back(ellipse(middle, 4.8 * at.scale, 1.5 * at.scale, Ink::none, stroke));
  }
  if (!is_known) add_question(drawing, middle);
}

void add_print(Drawing& drawing, const PrintAt& at, const FootMark& mark) {
  add_claw(drawing, at, true, mark);
  add_claw(drawing, at, false, mark);
  add_wrap(drawing, at, mark.wrap);
  if (mark.skin_in_front) add_diamond(drawing, in_drawing(at, {0, -6.6}));
  if (mark.skin_between) add_diamond(drawing, in_drawing(at, {0, -1.6}));
  if (mark.skin_behind) add_diamond(drawing, in_drawing(at, {0, 6.7}));
  if (mark.skin_earlier > 0) {
    // Outside and below the letters of the foot, where no other sign comes.
    const double outward = at.is_left ? -4.6 : 4.6;
    add_count(drawing, {at.centre.x + outward, at.centre.y + 6}, mark.skin_earlier, at.is_left);
  }
}

void add_way(Drawing& drawing, Point front, Point hind) {
  const double swing = front.x < track_width / 2 ? -1.4 : 1.4;
  drawing.marks.emplace_back(
      Path{{move_to({front.x, 0.6}),
            curve_to({front.x + swing, 8}, {front.x - swing, 20}, {hind.x, track_height - 0.8})},
           Ink::none,
           Stroke{Ink::grey, 0.35, Dash::dotted}});
}

constexpr PrintAt print_at(Foot foot) {
  switch (foot) {
    case Foot::lf:
      return {{11, 6.8}, true, track_scale};
    case Foot::rf:
      return {{track_width - 11, 9}, false, track_scale};
    case Foot::lh:
      return {{11, 20.6}, true, track_scale};
    case Foot::rh:
      return {{track_width - 11, 22.8}, false, track_scale};
  }
  return {};
}

Label foot_letters(Foot foot, const PrintAt& at) {
  const double x = at.is_left ? 0.2 : track_width - 0.2;
  return {{x, at.centre.y + 3.2},
          std::string(word_of(foot)),
          letters,
          at.is_left ? Anchor::start : Anchor::end,
          false,
          Ink::black};
}

bool shows_something(const ClawMark& mark) {
  return mark.found || mark.may_be_here || mark.block != Fitted::no || mark.earlier > 0;
}

bool shows_something(const FootMark& mark) {
  const bool on_skin = mark.skin_between || mark.skin_behind || mark.skin_in_front;
  const bool on_claws = shows_something(mark.outside) || shows_something(mark.inside);
  return on_claws || on_skin || mark.wrap != Fitted::no || mark.skin_earlier > 0;
}

/// Those drawn: the pair of which something is to be shown, both pairs where it is of both or none.
FootSet feet_drawn(const Track& track) {
  FootSet feet;
  for (const FootSet& pair : {front_feet, hind_feet}) {
    const bool shows = std::any_of(all_feet.begin(), all_feet.end(), [&](Foot foot) {
      return pair.has(foot) && shows_something(mark_of(track, foot));
    });
    for (const Foot foot : all_feet) {
      if (shows && pair.has(foot)) feet.add(foot);
    }
  }
  return feet.empty() ? four_feet : feet;
}

/// Says in words what a drawing shows, foot by foot.
class TrackWords {
 public:
  explicit TrackWords(const Wording& wording) : wording_(wording) {}

  void add(Foot foot, const FootMark& mark) {
    const std::string name = wording_.foot(foot);
    add_claw(name, mark.outside, Claw::outside);
    add_claw(name, mark.inside, Claw::inside);
    if (mark.outside.may_be_here) append(TrackSaying::claw_open, name);
    if (mark.skin_between || mark.skin_behind || mark.skin_in_front) {
      append(TrackSaying::on_skin, name);
    }
    add_wrap(name, mark.wrap);
    const int earlier = mark.outside.earlier + mark.inside.earlier + mark.skin_earlier;
    if (earlier > 0) {
      put(wording_.say(TrackSaying::earlier, {{"foot", name}, {"n", std::to_string(earlier)}}));
    }
    if (mark.state == FootState::not_lifted) not_lifted_.add(foot);
    if (mark.state == FootState::unsaid) (mark.todays ? unsaid_ : not_lifted_).add(foot);
  }

  std::string text() {
    if (text_.empty()) put(wording_.say(TrackSaying::nothing));
    if (!not_lifted_.empty()) {
      put(wording_.say(TrackSaying::not_lifted, {{"feet", wording_.feet(not_lifted_)}}));
    }
    if (!unsaid_.empty()) {
      put(wording_.say(TrackSaying::unsaid, {{"feet", wording_.feet(unsaid_)}}));
    }
    text_.back() = '.';
    return text_;
  }

 private:
  void put(const std::string& words) { text_ += (text_.empty() ? "" : " ") + words; }

  void append(TrackSaying saying, const std::string& foot) {
    put(wording_.say(saying, {{"foot", foot}}));
  }

  void add_claw(const std::string& foot, const ClawMark& mark, Claw claw) {
    const std::string name = wording_.claw(claw);
    if (mark.found) put(wording_.say(TrackSaying::found, {{"where", foot + ' ' + name}}));
    if (mark.block == Fitted::no) return;
    const bool is_known = mark.block == Fitted::yes;
    put(wording_.say(is_known ? TrackSaying::block : TrackSaying::block_open,
                     {{"foot", foot}, {"claw", name}}));
  }

  void add_wrap(const std::string& foot, Fitted wrap) {
    if (wrap == Fitted::no) return;
    append(wrap == Fitted::yes ? TrackSaying::wrap : TrackSaying::wrap_open, foot);
  }

  const Wording& wording_;
  std::string text_;
  FootSet not_lifted_;
  FootSet unsaid_;
};

struct KeyItem {
  TrackSaying words;
  FootMark mark;
};

std::vector<KeyItem> key_items() {
  FootMark lifted;
  lifted.state = FootState::finding;
  std::vector<KeyItem> items;
  const auto item = [&](TrackSaying words) -> FootMark& {
    items.push_back({words, lifted});
    return items.back().mark;
  };
  item(TrackSaying::key_nothing).state = FootState::nothing_found;
  item(TrackSaying::key_found).outside.found = true;
  FootMark& open = item(TrackSaying::key_claw_open);
  open.outside.may_be_here = true;
  open.inside.may_be_here = true;
  item(TrackSaying::key_skin).skin_behind = true;
  item(TrackSaying::key_wrap).wrap = Fitted::yes;
  item(TrackSaying::key_block).inside.block = Fitted::yes;
  item(TrackSaying::key_in_doubt).wrap = Fitted::in_doubt;
  item(TrackSaying::key_earlier).outside.earlier = 2;
  item(TrackSaying::key_not_lifted).state = FootState::not_lifted;
  item(TrackSaying::key_unsaid).state = FootState::unsaid;
  return items;
}

}  // namespace

bool shows_something(const Track& track) {
  return std::any_of(track.begin(), track.end(),
                     [](const FootMark& mark) { return shows_something(mark); });
}

Figure track_figure(const Track& track, const std::string& cow, const Wording& wording) {
  const FootSet drawn = feet_drawn(track);
  const bool is_whole = drawn == four_feet;
  const double top = drawn.has(Foot::lf) ? 0 : hinds_top;
  Drawing drawing{track_width, is_whole ? track_height : pair_height, {}};
  if (is_whole) {
    add_way(drawing, print_at(Foot::lf).centre, print_at(Foot::lh).centre);
    add_way(drawing, print_at(Foot::rf).centre, print_at(Foot::rh).centre);
  }
  TrackWords words(wording);
  for (const Foot foot : all_feet) {
    words.add(foot, mark_of(track, foot));
    if (!drawn.has(foot)) continue;
    PrintAt at = print_at(foot);
    at.centre.y -= top;
    add_print(drawing, at, mark_of(track, foot));
    drawing.marks.emplace_back(foot_letters(foot, at));
  }
  return {std::move(drawing),
          wording.say(TrackSaying::feet_of, {{"cow", cow}}) + ' ' + words.text(), ""};
}

// Five beside each other and no more: on a phone as wide as a hand the words are to be read.
Figure track_key(const Wording& wording) {
  constexpr std::size_t columns = 5;
  constexpr double step = 22;  // mm
  constexpr double size = 3.6;
  const std::vector<KeyItem> items = key_items();
  Drawing drawing{step * static_cast<double>(columns), 0, {}};
  double top = 0;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const std::size_t column = i % columns;
    if (column == 0) top = drawing.height;
    const double middle = step * (static_cast<double>(column) + 0.5);
    add_print(drawing, {{middle, top + 6.5}, true}, items[i].mark);
    double below = top + 16.8;
    for (const std::string& line : drawn_lines(wording.say(items[i].words), size, step - 1)) {
      drawing.marks.emplace_back(
          Label{{middle, below}, line, size, Anchor::middle, false, Ink::black});
      drawing.height = std::max(drawing.height, below + 1.2);
      below += size * 1.2;
    }
  }
  return {std::move(drawing), wording.say(TrackSaying::key_label), ""};
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
  return {std::move(drawing), wording.say(TrackSaying::mark_label), ""};
}

}  // namespace evenclaw
