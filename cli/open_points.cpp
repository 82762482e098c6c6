#include "cli/open_points.hpp"

#include <algorithm>

#include "cli/columns.hpp"
#include "core/base/ascii.hpp"
#include "core/base/text.hpp"

namespace evenclaw::cli {

namespace {

/// Only a number can be called.
bool has_number(const OpenPoint& point) {
  return !point.cow_said.empty() &&
         std::all_of(point.cow_said.begin(), point.cow_said.end(), is_digit);
}

bool is_about_a_name(const OpenPoint& point) {
  return point.kind == OpenPointKind::news_unclear &&
         (point.cow_said == "caller" || point.cow_said == "writer");
}

bool is_news(const OpenPoint& point) {
  return point.kind == OpenPointKind::news_unclear && !is_about_a_name(point);
}

/// Which of the two holds is told as news alone.
bool is_off_or_still_on(const OpenPoint& point) {
  return point.kind == OpenPointKind::news_unclear &&
         point.words.find("Is it off, or still on?") != std::string::npos;
}

/// "12 heifers": how many there were, never whose number it was.
bool is_about_a_count(const OpenPoint& point) {
  const std::size_t digits = point.cow_said.find_first_not_of("0123456789");
  return point.kind == OpenPointKind::news_unclear && digits != 0 && digits != std::string::npos &&
         point.cow_said[digits] == ' ' &&
         point.cow_said.find_first_not_of("abcdefghijklmnopqrstuvwxyz ", digits) ==
             std::string::npos;
}

/// A name is answered by the name.
std::string answer_to(const OpenPoint& point) {
  if (point.kind == OpenPointKind::called_twice) return "both hold";
  if (point.kind == OpenPointKind::told_gone) return "still here";
  if (is_about_a_name(point)) return point.person ? "NAME" : "it was the known one";
  if (is_about_a_count(point)) return "they were 11, nothing found";
  return point.kind == OpenPointKind::on_since_when ? "the vet put it on Monday" : "it was 413";
}

}  // namespace

namespace {

/// What hurts or is the law comes first, then who she is, then what was left open of her, what is
/// on her feet, and news. What was not called of a finding is told together, at the end.
int place_of(const OpenPoint& point) {
  if (point.rank == Rank::stop) return 0;
  switch (point.kind) {
    case OpenPointKind::unnumbered:
    case OpenPointKind::doubtful_number:
    case OpenPointKind::told_gone:
    case OpenPointKind::number_given_twice:
    case OpenPointKind::two_versions:
      return 1;
    case OpenPointKind::unfinished:
    case OpenPointKind::not_done:
    case OpenPointKind::called_twice:
    case OpenPointKind::unanswered:
    case OpenPointKind::lifted_not_called:
      return 2;
    case OpenPointKind::told_two_ways:
    case OpenPointKind::due_not_seen:
    case OpenPointKind::still_on:
    case OpenPointKind::on_since_when:
      return 3;
    case OpenPointKind::news_unclear:
      return 4;
    case OpenPointKind::place_not_called:
    case OpenPointKind::degree_not_called:
    case OpenPointKind::stage_not_called:
      return 5;
  }
  return 5;
}

bool is_a_detail(const OpenPoint& point) {
  return point.kind == OpenPointKind::place_not_called ||
         point.kind == OpenPointKind::degree_not_called ||
         point.kind == OpenPointKind::stage_not_called;
}

/// "Left hind, sole ulcer: where?" and "Left hind, sole ulcer: how bad?" of one cow are one.
struct NotCalled {
  std::string cow;
  std::string what;
  std::vector<std::string> asked;
  int findings = 1;  // of that name: each of two bruises of a foot lacks its place
};

/// Asked of this cow and lesion before: of another finding, then.
void ask_as_well(NotCalled& of, std::string asked) {
  const auto times = std::count(of.asked.begin(), of.asked.end(), asked);
  of.findings = std::max(of.findings, static_cast<int>(times) + 1);
  of.asked.push_back(std::move(asked));
}

/// "where, how bad", each once.
std::string all_asked(const NotCalled& of) {
  std::string words;
  for (auto asked = of.asked.begin(); asked != of.asked.end(); ++asked) {
    if (std::find(of.asked.begin(), asked, *asked) != asked) continue;
    words += (words.empty() ? "" : ", ") + *asked;
  }
  return words;
}

std::vector<NotCalled> not_called_in(const std::vector<OpenPoint>& points) {
  std::vector<NotCalled> all;
  for (const OpenPoint& point : points) {
    if (!is_a_detail(point)) continue;
    const std::size_t colon = std::min(point.words.find(": "), point.words.size());
    std::string what = point.words.substr(0, colon);
    std::string asked = point.words.substr(std::min(colon + 2, point.words.size()));
    if (asked.ends_with('?')) asked.pop_back();
    const auto same = std::find_if(all.begin(), all.end(), [&](const NotCalled& each) {
      return each.cow == point.cow_said && each.what == what;
    });
    if (same == all.end()) {
      all.push_back({point.cow_said, std::move(what), {std::move(asked)}});
    } else {
      ask_as_well(*same, std::move(asked));
    }
  }
  return all;
}

/// One line of all of them, grouped by what is asked.
std::string not_called_text(const std::vector<OpenPoint>& points) {
  std::vector<std::pair<std::string, std::string>> by_question;
  for (const NotCalled& each : not_called_in(points)) {
    std::string what = each.what;
    if (!what.empty() && what.front() >= 'A' && what.front() <= 'Z') what.front() += 'a' - 'A';
    if (each.findings > 1) what += " (" + std::to_string(each.findings) + " of them)";
    const std::string finding = each.cow + ' ' + what;
    const std::string asked = all_asked(each);
    const auto same = std::find_if(by_question.begin(), by_question.end(),
                                   [&](const auto& row) { return row.first == asked; });
    if (same == by_question.end()) {
      by_question.emplace_back(asked, finding);
    } else {
      same->second += "; " + finding;
    }
  }
  std::string out;
  for (const auto& [asked, findings] : by_question) {
    out += wrapped_behind("  ", "not called " + asked + ": " + findings) + "\n";
  }
  return out;
}

}  // namespace

std::string open_points_text(const std::vector<OpenPoint>& all) {
  std::vector<OpenPoint> points = all;
  std::erase_if(points, is_a_detail);
  std::stable_sort(points.begin(), points.end(), [](const OpenPoint& a, const OpenPoint& b) {
    return place_of(a) < place_of(b);
  });
  constexpr std::size_t widest_cow = 12;  // a description may be longer and goes its own way
  std::size_t width = 0;
  for (const OpenPoint& point : points) {
    width = std::max(width, std::min(character_count(point.cow_said), widest_cow));
  }
  std::string out;
  for (const OpenPoint& point : points) {
    out += wrapped_behind("  " + padded(point.cow_said, width) + "  ", point.words) + "\n";
  }
  return out + not_called_text(all);
}

namespace {

using Points = std::vector<OpenPoint>;

template <class F>
const OpenPoint* first_that(const Points& points, F&& fits) {
  const auto found = std::find_if(points.begin(), points.end(), fits);
  return found == points.end() ? nullptr : &*found;
}

const OpenPoint* first_of(const Points& points, OpenPointKind kind) {
  return first_that(points, [&](const OpenPoint& point) { return point.kind == kind; });
}

/// A description is one word for the shell.
std::string as_operand(const std::string& cow) {
  return cow.find(' ') == std::string::npos ? cow : '"' + cow + '"';
}

std::string settled_in_words(const OpenPoint& point) {
  return "evenclaw told \"" + answer_to(point) + "\" --answers " + as_operand(point.cow_said) +
         "\n";
}

/// Who she is, and whether she is here.
std::string answers_about_her(const Points& points) {
  std::string out;
  if (first_of(points, OpenPointKind::unnumbered) != nullptr ||
      first_of(points, OpenPointKind::doubtful_number) != nullptr) {
    out += "  her number: evenclaw cow number \"red heifer\" 418\n";
  }
  if (first_of(points, OpenPointKind::number_given_twice) != nullptr) {
    out += "  one cow: evenclaw cow same 77 77\n";
  }
  if (const OpenPoint* gone = first_of(points, OpenPointKind::told_gone)) {
    out += "  she left: evenclaw told \"" + gone->cow_said + " gone\"\n";
    out += "  she is here: " + settled_in_words(*gone);
  }
  return out;
}

/// What is told of wraps, blocks and cows that were not seen.
std::string answers_by_news(const Points& points) {
  std::string out;
  if (first_that(points, is_news) != nullptr) {
    out += "  news, told plainly: evenclaw told \"412 wrap off LH\"\n";
  }
  const auto is_of_her_walk = [](const OpenPoint& point) {
    return point.words.find("walk sound") != std::string::npos;
  };
  const OpenPoint* fate = first_that(points, [&](const OpenPoint& point) {
    const bool is_of_both = point.kind == OpenPointKind::told_two_ways && !is_of_her_walk(point);
    return is_of_both || is_off_or_still_on(point);
  });
  if (fate != nullptr) {
    const bool is_block = fate->words.find("lock on ") != std::string::npos;
    const std::string what = is_block ? " block" : " wrap";
    out += "  off or still on: evenclaw told \"" + fate->cow_said + what +
           " off\", or with \"still on\"\n";
  }
  const OpenPoint* walk = first_that(points, [&](const OpenPoint& point) {
    return point.kind == OpenPointKind::told_two_ways && is_of_her_walk(point);
  });
  if (walk != nullptr) {
    out += "  how she walks: evenclaw told \"" + walk->cow_said +
           " still lame\", or with \"walks sound\"\n";
  }
  const OpenPoint* in_words = first_that(points, [](const OpenPoint& point) {
    return is_settled_in_words(point.kind) && point.kind != OpenPointKind::told_gone &&
           !is_off_or_still_on(point);
  });
  if (in_words != nullptr) out += "  in your own words: " + settled_in_words(*in_words);
  const OpenPoint* vet = first_that(points, [](const OpenPoint& point) {
    return has_number(point) && point.kind == OpenPointKind::due_not_seen &&
           point.words.find("did the vet come?") != std::string::npos;
  });
  if (vet != nullptr) out += "  the vet: evenclaw told \"" + vet->cow_said + " vet came\"\n";
  if (first_of(points, OpenPointKind::due_not_seen) != nullptr ||
      first_of(points, OpenPointKind::still_on) != nullptr) {
    out += "  what the farm says later: evenclaw told \"118 wrap off\"\n";
  }
  return out;
}

/// She is called by her number again, and that is said.
std::string answers_by_calling(const Points& points, Day visit_day) {
  const std::string record = "evenclaw record --day " + to_text(visit_day) + ", then say ";
  std::string out;
  const OpenPoint* warning = first_that(points, [](const OpenPoint& point) {
    return has_number(point) && point.kind == OpenPointKind::unanswered;
  });
  if (warning != nullptr) {
    out += "  a warning: " + record + warning->cow_said + " go ahead,\n    or " +
           warning->cow_said + " and what was done\n";
  }
  const OpenPoint* not_called = first_that(points, [](const OpenPoint& point) {
    return has_number(point) && point.kind != OpenPointKind::unanswered &&
           is_answered_by_calling(point.kind);
  });
  if (not_called != nullptr) {
    out += "  what is missing: " + record + not_called->cow_said + " and that,\n    such as " +
           not_called->cow_said + " LH outside heel bad\n";
  }
  const OpenPoint* unread = first_that(points, [](const OpenPoint& point) {
    return has_number(point) && point.kind == OpenPointKind::unfinished &&
           point.words.find(" not understood") != std::string::npos;
  });
  if (unread != nullptr) {
    out += "  a line that was nothing: " + record + unread->cow_said + " never mind\n";
  }
  return out;
}

}  // namespace

std::string how_to_answer(const std::vector<OpenPoint>& points, Day visit_day) {
  const std::string out =
      answers_about_her(points) + answers_by_news(points) + answers_by_calling(points, visit_day);
  return out.empty() ? out : "To answer, for example\n" + out;
}

}  // namespace evenclaw::cli
