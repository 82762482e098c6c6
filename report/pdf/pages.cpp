#include "report/pdf/pages.hpp"

#include <algorithm>
#include <utility>

namespace evenclaw {

namespace {

constexpr double rounding = 1e-6;

/// How far down a page is filled.
struct Cursor {
  double y = 0;
  double gap = 0;  // below the last strip
  const Frame* frame = nullptr;
  bool empty = true;
};

double edge_of(const Frame* frame) {
  return frame == nullptr ? 0 : frame->stroke + frame->padding;
}

double top_of(const Cursor& at, const Strip& strip) {
  const Frame* frame = strip.frame.get();
  const double gap = at.empty ? 0 : std::max(at.gap, strip.gap_before);
  if (frame == at.frame) return at.y + gap;
  return at.y + edge_of(at.frame) + gap + edge_of(frame);
}

Cursor after(const Cursor& at, const Strip& strip) {
  return {top_of(at, strip) + strip.height, strip.gap_after, strip.frame.get(), false};
}

bool has_room(const Cursor& at) {
  return at.y + edge_of(at.frame) <= column_height + rounding;
}

double top_among(const std::vector<Piece>& pieces) {
  double top = pieces.empty() ? 0 : extent_of(pieces.front()).top;
  for (const Piece& piece : pieces) top = std::min(top, extent_of(piece).top);
  return top;
}

/// Of what is higher than a page the part where it begins.
bool lies_within(const Extent& extent, double from, double room) {
  const bool is_too_high = extent.bottom - extent.top > room;
  return (is_too_high ? extent.top : extent.bottom) - from <= room + rounding;
}

class Dealer {
 public:
  explicit Dealer(const Strips& strips) : strips_(strips) { pages_.emplace_back(); }

  std::vector<Page> dealt() {
    for (std::size_t from = 0; from < strips_.size();) {
      const std::size_t to = end_of_chain(from);
      deal(from, to);
      from = to;
    }
    close_frame();
    return std::move(pages_);
  }

 private:
  [[nodiscard]] std::size_t end_of_chain(std::size_t from) const {
    std::size_t at = from;
    while (at + 1 < strips_.size() && strips_[at].with_next) ++at;
    return at + 1;
  }

  [[nodiscard]] bool fits(Cursor at, std::size_t from, std::size_t to) const {
    for (std::size_t i = from; i < to; ++i) at = after(at, strips_[i]);
    return has_room(at);
  }

  /// The head that stands above strip `index` when it comes first on a page; may be null.
  [[nodiscard]] const Strips* head_above(std::size_t index) const {
    const auto& head = strips_[index].head;
    const bool goes_on = index > 0 && strips_[index - 1].head == head;
    return goes_on && head && height_of(*head) < column_height / 3 ? head.get() : nullptr;
  }

  void deal(std::size_t from, std::size_t to) {
    const bool must = strips_[from].starts_page;
    if (!at_.empty && (must || !fits(at_, from, to))) turn_page(from);
    const bool whole = fits(at_, from, to);
    for (std::size_t i = from; i < to; ++i) {
      if (!whole && !at_.empty && !fits(at_, i, i + 1) && !fresh_) turn_page(i);
      if (fits(at_, i, i + 1)) {
        put(strips_[i], {i, 0, 0, false});
      } else {
        put_in_parts(i);
      }
    }
  }

  /// No page could hold it: its pieces go to as many pages as they need.
  void put_in_parts(std::size_t index) {
    Strip part = strips_[index];
    std::vector<Piece> rest = std::exchange(part.pieces, {});
    for (double from = 0; !rest.empty(); from = top_among(rest)) {
      if (from > 0) turn_page(index);
      const double room = column_height - top_of(at_, part) - edge_of(part.frame.get());
      const auto beyond = std::stable_partition(rest.begin(), rest.end(), [&](const Piece& piece) {
        return lies_within(extent_of(piece), from, room);
      });
      part.pieces.assign(rest.begin(), beyond);
      part.height = 0;
      for (Piece& piece : part.pieces) {
        piece = moved(std::move(piece), 0, -from);
        part.height = std::max(part.height, std::min(extent_of(piece).bottom, room));
      }
      rest.erase(rest.begin(), beyond);
      put(part, {index, 0, 0, false});
    }
  }

  void turn_page(std::size_t next) {
    close_frame(strips_[next].frame.get() == frame_);
    pages_.emplace_back();
    at_ = {};
    if (const Strips* head = head_above(next)) {
      for (const Strip& strip : *head) put(strip, {next, 0, 0, true});
    }
    fresh_ = true;
  }

  void put(const Strip& strip, StripPlace place) {
    if (strip.frame.get() != at_.frame) close_frame();
    place.top = margin_top + top_of(at_, strip);
    place.bottom = place.top + strip.height;
    if (strip.frame && frame_ == nullptr) {
      frame_ = strip.frame.get();
      frame_top_ = place.top - edge_of(frame_);
    }
    for (const Piece& piece : strip.pieces) {
      pages_.back().pieces.push_back(moved(piece, margin_side, place.top));
    }
    pages_.back().places.push_back(place);
    at_ = after(at_, strip);
    fresh_ = false;
  }

  void close_frame(bool goes_on = false) {
    if (frame_ == nullptr) return;
    const double bottom = margin_top + at_.y + edge_of(frame_);
    const Extent extent{margin_side, frame_top_, paper_width - margin_side, bottom};
    pages_.back().pieces.emplace_back(goes_on ? box_that_goes_on(extent, frame_->stroke)
                                              : box(extent, frame_->stroke));
    frame_ = nullptr;
  }

  const Strips& strips_;
  std::vector<Page> pages_;
  Cursor at_;
  bool fresh_ = true;  // nothing on the page but a repeated head
  const Frame* frame_ = nullptr;
  double frame_top_ = 0;
};

}  // namespace

std::vector<Page> dealt_to_pages(const Strips& strips) {
  return Dealer(strips).dealt();
}

}  // namespace evenclaw
