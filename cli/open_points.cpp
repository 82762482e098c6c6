#include "cli/open_points.hpp"

#include <algorithm>

#include "cli/columns.hpp"
#include "core/base/text.hpp"

namespace evenclaw::cli {

namespace {

/// Only a number can be called.
bool has_number(const OpenPoint& point) {
  return !point.cow_said.empty() && std::all_of(point.cow_said.begin(), point.cow_said.end(),
                                                [](char c) { return c >= '0' && c <= '9'; });
}

bool is_about_a_name(const OpenPoint& point) {
  return point.kind == OpenPointKind::news_unclear &&
         (point.cow_said == "caller" || point.cow_said == "writer");
}

bool is_news(const OpenPoint& point) {
  return point.kind == OpenPointKind::news_unclear && !is_about_a_name(point);
}

/// A name is answered by the name.
std::string answer_to(const OpenPoint& point) {
  if (point.kind == OpenPointKind::called_twice) return "both hold";
  if (is_about_a_name(point)) return point.person ? "NAME" : "it was the known one";
  return point.kind == OpenPointKind::on_since_when ? "the vet put it on Monday" : "it was 413";
}

}  // namespace

std::string open_points_text(const std::vector<OpenPoint>& points) {
  constexpr std::size_t widest_cow = 12;  // a description may be longer and goes its own way
  std::size_t width = 0;
  for (const OpenPoint& point : points) {
    width = std::max(width, std::min(character_count(point.cow_said), widest_cow));
  }
  std::string out;
  for (const OpenPoint& point : points) {
    out += wrapped_behind("  " + padded(point.cow_said, width) + "  ", point.words) + "\n";
  }
  return out;
}

std::string how_to_answer(const std::vector<OpenPoint>& points, Day visit_day) {
  const auto any = [&](OpenPointKind kind, OpenPointKind or_kind) {
    return std::any_of(points.begin(), points.end(), [&](const OpenPoint& point) {
      return point.kind == kind || point.kind == or_kind;
    });
  };
  std::string out;
  if (any(OpenPointKind::unnumbered, OpenPointKind::doubtful_number)) {
    out += "  her number: evenclaw cow number \"red heifer\" 418\n";
  }
  if (any(OpenPointKind::number_given_twice, OpenPointKind::number_given_twice)) {
    out += "  one cow: evenclaw cow same 77 77\n";
  }
  if (any(OpenPointKind::told_gone, OpenPointKind::told_gone)) {
    out += "  she left: evenclaw told \"77 gone\"\n";
  }
  if (std::any_of(points.begin(), points.end(), is_news)) {
    out += "  news, told plainly: evenclaw told \"412 wrap off LH\"\n";
  }
  const auto in_words = std::find_if(points.begin(), points.end(), [](const OpenPoint& point) {
    return is_settled_in_words(point.kind);
  });
  if (in_words != points.end()) {
    out += "  in your own words: evenclaw told \"" + answer_to(*in_words) + "\" --answers " +
           in_words->cow_said + "\n";
  }
  if (any(OpenPointKind::due_not_seen, OpenPointKind::still_on)) {
    out += "  what the farm says later: evenclaw told \"118 wrap off\"\n";
  }
  const auto not_called = std::find_if(points.begin(), points.end(), [](const OpenPoint& point) {
    return has_number(point) && is_answered_by_calling(point.kind);
  });
  if (not_called != points.end()) {
    out += "  what is missing: evenclaw record --day " + to_text(visit_day) + ", then say " +
           not_called->cow_said + " and that\n";
  }
  const auto unread = std::find_if(points.begin(), points.end(), [](const OpenPoint& point) {
    return has_number(point) && point.kind == OpenPointKind::unfinished &&
           point.words.find(" not understood") != std::string::npos;
  });
  if (unread != points.end()) {
    out += "  a line that was nothing: evenclaw record --day " + to_text(visit_day) +
           ", then say " + unread->cow_said + " never mind\n";
  }
  return out.empty() ? out : "To answer, for example\n" + out;
}

}  // namespace evenclaw::cli
