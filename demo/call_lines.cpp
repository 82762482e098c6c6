#include "demo/call_lines.hpp"

#include <algorithm>
#include <cassert>
#include <string_view>

namespace evenclaw::demo {

namespace {

std::string_view said(Lesion lesion) {
  switch (lesion) {
    case Lesion::sh:
      return "bruise";
    case Lesion::su:
      return "sole ulcer";
    case Lesion::wl:
      return "white line";
    case Lesion::wla:
      return "white line abscess";
    case Lesion::hhe:
      return "heel horn erosion";
    case Lesion::id:
      return "interdigital dermatitis";
    case Lesion::ih:
      return "growth";
    case Lesion::ip:
      return "foul";
    case Lesion::ds:
      return "double sole";
    case Lesion::tu:
      return "toe ulcer";
    default:
      return "DD";
  }
}

/// Behind a white line lesion "heel", "side" and "toe" mean the white line there.
std::string_view said(Place place) {
  switch (place) {
    case Place::white_line_toe:
    case Place::toe:
      return "toe";
    case Place::white_line_side:
      return "side";
    case Place::white_line_heel:
    case Place::heel:
      return "heel";
    case Place::sole_middle:
      return "middle";
    case Place::between:
      return "between";
    case Place::behind:
      return "behind";
    case Place::in_front:
      return "in front";
    case Place::outer_wall:
      return "outer wall";
    case Place::wall_between:
      return "wall between";
    case Place::not_called:
      return "";
  }
  return "";
}

std::string_view said(Claw claw) {
  if (claw == Claw::outside) return "outside";
  return claw == Claw::inside ? "inside" : "";
}

std::string_view said(BlockCalled block) {
  switch (block) {
    case BlockCalled::nothing:
      return "";
    case BlockCalled::put_on:
      return "block on";
    case BlockCalled::again:
      return "blocked again";
    case BlockCalled::refitted:
      return "block refitted";
    case BlockCalled::still_on:
      return "block still on";
    case BlockCalled::taken_off:
      return "block taken off";
    case BlockCalled::came_off:
      return "block came off";
  }
  return "";
}

void add_word(std::string& line, std::string_view word) {
  if (word.empty()) return;
  if (!line.empty() && line.back() != ' ') line += ' ';
  line += word;
}

void add_part(std::string& line, std::string_view part) {
  if (part.empty()) return;
  // Behind the foot alone, "LH", the first part needs no separator.
  line += line.size() == 2 ? " " : "; ";
  line += part;
}

std::string said(const CalledFinding& finding) {
  std::string words;
  add_word(words, said(finding.claw));
  add_word(words, said(finding.lesion));
  if (finding.stage != DdStage::not_called) add_word(words, word_of(finding.stage));
  add_word(words, said(finding.place));
  if (finding.degree != Degree::not_called) {
    words += ", ";
    words += word_of(finding.degree);
  }
  return words;
}

std::string said_of_block(const CalledFoot& foot) {
  std::string words(said(foot.block));
  add_word(words, said(foot.block_claw));
  return words;
}

bool is_over(BlockCalled block) {
  return block == BlockCalled::taken_off || block == BlockCalled::came_off;
}

std::string line_of(const CalledFoot& foot) {
  std::string line(word_of(foot.foot));
  // What is on her comes off before anybody sees what is under it.
  if (foot.wrap == WrapCalled::taken_off) add_part(line, "wrap taken off");
  if (is_over(foot.block)) add_part(line, said_of_block(foot));
  for (const CalledFinding& finding : foot.findings) add_part(line, said(finding));
  if (foot.findings.empty()) add_part(line, "nothing found");
  if (foot.was_opened) add_part(line, "opened");
  if (foot.was_sprayed) add_part(line, "spray");
  if (foot.block != BlockCalled::nothing && !is_over(foot.block)) {
    add_part(line, said_of_block(foot));
  }
  if (foot.wrap == WrapCalled::put_on) add_part(line, "wrap on");
  if (foot.see_again) add_part(line, "see again 28d");
  if (foot.needs_vet) {
    // Where nothing was found the foot is said with it, for it could be of another one.
    if (foot.findings.empty()) add_part(line, word_of(foot.foot));
    line += foot.findings.empty() ? " vet; told the farmer" : "; vet; told the farmer";
  }
  return line;
}

std::string_view said(Reason reason) {
  switch (reason) {
    case Reason::lame:
      return "lame";
    case Reason::recheck:
      return "recheck";
    case Reason::dry_off:
      return "dry off";
    case Reason::heifer:
      return "heifer";
    case Reason::fresh:
      return "fresh";
    case Reason::routine:
    case Reason::other:
    case Reason::not_called:
      return "routine";
  }
  return "routine";
}

void add_news(std::vector<std::string>& lines, const std::vector<int>& cows,
              std::string_view what) {
  if (cows.empty()) return;
  std::string line;
  for (const int cow : cows) line += (line.empty() ? "" : ", ") + std::to_string(cow);
  lines.push_back(line + " " + std::string(what));
}

}  // namespace

std::vector<std::string> call_lines(const CalledTurn& turn, const FootSet& todays_feet) {
  std::string first = std::to_string(turn.number);
  add_word(first, said(turn.reason));
  if (turn.lame_on) add_word(first, word_of(*turn.lame_on));
  if (turn.feet.empty()) return {first + "; nothing found"};
  std::vector<std::string> lines = {first};
  FootSet called;
  for (const CalledFoot& foot : turn.feet) {
    lines.push_back(line_of(foot));
    called.add(foot.foot);
  }
  const bool is_some_left = std::any_of(all_feet.begin(), all_feet.end(), [&](Foot foot) {
    return todays_feet.has(foot) && !called.has(foot);
  });
  if (turn.rest_is_fine && is_some_left) lines.emplace_back("rest fine");
  if (turn.goes_ahead) lines.back() += "; go ahead";
  return lines;
}

std::vector<std::string> call_lines(const CalledVisit& visit) {
  std::vector<std::string> lines;
  add_news(lines, visit.talk.wraps_off, "wraps off");
  add_news(lines, visit.talk.blocks_came_off, "block came off");
  add_news(lines, visit.talk.gone, "gone");
  for (const CalledTurn& turn : visit.turns) {
    const std::vector<std::string> of_cow = call_lines(turn, visit.todays_feet);
    lines.insert(lines.end(), of_cow.begin(), of_cow.end());
  }
  lines.emplace_back("done");
  return lines;
}

}  // namespace evenclaw::demo
