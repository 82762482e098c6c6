#include "tests/stories/player.hpp"

#include <algorithm>
#include <set>
#include <sstream>
#include <utility>

#include "core/api/due.hpp"
#include "core/api/products.hpp"
#include "core/api/sheet.hpp"
#include "core/api/show.hpp"
#include "core/api/transfer.hpp"
#include "core/base/text.hpp"
#include "core/trade/spoken.hpp"
#include "tests/stories/recorded_day.hpp"

namespace evenclaw::test {

struct StoryPlayer::Tablet {
  explicit Tablet(std::uint64_t seed) : place(seed) {}

  Workplace place;
  std::optional<Visit> visit;
  std::optional<Recording> recording;
};

namespace {

bool is_visit_line(const std::string& line) {
  return line.rfind("visit ", 0) == 0;
}

void add(std::vector<std::string>& answers, const std::vector<ReplyItem>& items) {
  for (std::string& line : lines_of(items)) answers.push_back(std::move(line));
}

std::string with_cow(const std::string& cow, const std::string& words) {
  return cow.empty() ? words : cow + ": " + words;
}

/// "bluemix, labelled yes, milk 2d, meat 5d, label".
Product product_in(const std::string& line) {
  Product product;
  std::istringstream parts(line);
  for (std::string part; std::getline(parts, part, ',');) {
    const std::string said(trimmed(part));
    const std::size_t space = std::min(said.find(' '), said.size());
    const std::string first = said.substr(0, space);
    const std::string rest(trimmed(said.substr(space)));
    if (product.name.empty()) {
      product.name = said;
    } else if (first == "labelled") {
      product.labelled = enum_of<Labelled>(rest).value();
    } else if (first == "milk") {
      product.milk = withdrawal_from_text(rest).value();
    } else if (first == "meat") {
      product.meat_days = withdrawal_from_text(rest).value().amount;
    } else {
      product.stated_by = enum_of<StatedBy>(first).value();
    }
  }
  return product;
}

/// The lines of the box whose title begins so, without its edge and what is said at its foot.
std::vector<std::string> box_in(const std::string& sheet, const std::string& title) {
  std::vector<std::string> lines;
  std::istringstream all(sheet);
  bool inside = false;
  for (std::string line; std::getline(all, line);) {
    const bool is_edge = line.rfind("##", 0) == 0;
    if (inside && !is_edge) lines.emplace_back(trimmed(std::string_view(line).substr(1)));
    const bool begins = !inside && line.rfind("# " + title, 0) == 0;
    if (begins && !lines.empty()) lines.emplace_back(trimmed(std::string_view(line).substr(1)));
    inside = inside ? !is_edge : begins;
  }
  return lines;
}

std::string foot_line(const FootSeen& seen) {
  std::string line = to_text(seen.day) + " " + std::string(word_of(seen.foot));
  if (seen.called_lame) line += " (lame)";
  line += ": ";
  std::vector<std::string> parts = seen.found;
  if (seen.state == FootState::nothing_found) parts.emplace_back("nothing found");
  if (seen.state == FootState::not_lifted) parts.emplace_back("not lifted");
  if (!seen.missing.empty()) parts.push_back(seen.missing);
  parts.insert(parts.end(), seen.acts.begin(), seen.acts.end());
  parts.insert(parts.end(), seen.measured.begin(), seen.measured.end());
  if (parts.empty()) parts.emplace_back("finding not called");
  for (std::size_t i = 0; i < parts.size(); ++i) line += (i == 0 ? "" : "; ") + parts[i];
  return line;
}

std::string fixture_line(const OnFootRow& row) {
  std::string line =
      "on her: " + std::string(word_of(row.fixture)) + " " + std::string(word_of(row.foot));
  const std::string_view claw = spoken(row.claw);
  if (!claw.empty()) line += " " + std::string(claw);
  return line + " since " + to_text(row.since);
}

std::string case_line(const CaseRow& row) {
  std::string line =
      "case: " + std::string(word_of(row.lesion)) + " " + std::string(word_of(row.foot));
  const std::string_view claw = spoken(row.claw);
  if (!claw.empty()) line += " " + std::string(claw);
  line += ", found " + std::to_string(row.times_found) + "x";
  return row.relapse ? line + ", had been gone" : line;
}

}  // namespace

StoryPlayer::StoryPlayer() {
  tablets_["A"] = std::make_unique<Tablet>(1);
}

StoryPlayer::~StoryPlayer() = default;

std::vector<StoryFault> StoryPlayer::play(const Story& story) {
  for (const StorySection& section : story.sections) play(section);
  return faults_;
}

void StoryPlayer::play(const StorySection& section) {
  const std::string& name = section.name;
  if (name == "given") return given(section);
  if (name == "products") return products(section);
  if (name == "said") return said(section);
  if (name == "said together") return said_together(section);
  if (name == "from a file") return from_file(section.lines);
  if (name == "the same file again") return from_file(last_file_);
  if (name == "the battery dies") return take_up_again();
  if (name == "the tablets meet") return tablets_meet();
  if (name.rfind("on tablet ", 0) == 0) return switch_to(name.substr(10));
  if (name == "answered") {
    expect(section, answers_);
    return answers_.clear();
  }
  if (name == "ended") return expect(section, ended());
  if (name == "turns") return expect(section, turns());
  if (name == "callers") return expect(section, callers());
  if (name == "counted") return expect(section, counted());
  if (name == "milk and meat") return expect(section, milk_and_meat());
  if (name == "recorded") return expect(section, recorded());
  if (name.rfind("due ", 0) == 0) return expect(section, due(name.substr(4)));
  if (name.rfind("cow ", 0) == 0) return expect(section, cow(name.substr(4)));
  expect({name, section.line, {"a section the player knows"}}, {name});
}

void StoryPlayer::expect(const StorySection& section, const std::vector<std::string>& found) {
  if (section.lines == found) return;
  faults_.push_back({section.line, section.name, section.lines, found});
}

void StoryPlayer::visit_line(const std::string& line) {
  if (tablet().visit) end_visit_quietly();
  tablet().visit = tablet().place.start(line.substr(6), {});
  tablet().recording.emplace(tablet().place.record(*tablet().visit));
}

void StoryPlayer::end_visit_quietly() {
  (void)tablet().recording->end_of_visit().value();
  (void)end_visit(tablet().place.ports(), *tablet().visit, english()).value();
  tablet().recording.reset();
  tablet().visit.reset();
}

void StoryPlayer::given(const StorySection& section) {
  for (const std::string& line : section.lines) {
    if (is_visit_line(line)) {
      visit_line(line);
      continue;
    }
    const Reply reply = tablet().recording->say_all(std::vector{line}).value();
    for (const ReplyItem& item : reply.items) {
      if (item.kind == ReplyKind::refused) expect({"given", section.line, {line}}, {item.words});
    }
  }
  end_visit_quietly();
}

void StoryPlayer::products(const StorySection& section) {
  for (const std::string& line : section.lines) {
    const Product product = product_in(line);
    const auto listed = list_product(tablet().place.ports(), tablet().place.herd().herd, product,
                                     day("2026-10-01"), false);
    if (!listed) expect({"products", section.line, {line}}, {listed.faults().front().message});
  }
  // Another program put them there: the recording begins anew.
  tablet().recording.reset();
}

void StoryPlayer::said(const StorySection& section) {
  for (const std::string& line : section.lines) {
    if (is_visit_line(line)) {
      visit_line(line);
    } else {
      if (!tablet().recording) tablet().recording.emplace(tablet().place.record(*tablet().visit));
      add(answers_, tablet().recording->say(line).value().items);
    }
  }
}

void StoryPlayer::said_together(const StorySection& section) {
  std::vector<std::string> called;
  for (const std::string& line : section.lines) {
    if (is_visit_line(line)) {
      visit_line(line);
    } else {
      called.push_back(line);
    }
  }
  if (!tablet().recording) tablet().recording.emplace(tablet().place.record(*tablet().visit));
  add(answers_, tablet().recording->say_all(called).value().items);
}

void StoryPlayer::from_file(const std::vector<std::string>& lines) {
  last_file_ = lines;
  std::vector<std::string> called;
  for (const std::string& line : lines) {
    if (is_visit_line(line)) {
      if (!tablet().visit) visit_line(line);
    } else {
      called.push_back(line);
    }
  }
  tablet().recording.emplace(tablet().place.record(*tablet().visit));
  add(answers_, tablet().recording->say_all(called).value().items);
  add(answers_, tablet().recording->end_of_input().value().items);
}

void StoryPlayer::take_up_again() {
  tablet().recording.reset();
  tablet().recording.emplace(tablet().place.record(*tablet().visit));
  add(answers_, tablet().recording->opening().items);
}

void StoryPlayer::switch_to(const std::string& name) {
  const bool is_new = tablets_.count(name) == 0;
  if (is_new) {
    (void)tablets_.at("A")->place.herd();
    const StoreIdentity first = tablets_.at("A")->place.store.identity().value();
    auto other = std::make_unique<Tablet>(100 + tablets_.size());
    (void)other->place.store.set_identity(first.business, other->place.business.device);
    tablets_[name] = std::move(other);
    tablets_meet();
  }
  at_ = name;
}

void StoryPlayer::tablets_meet() {
  for (auto& [from, giver] : tablets_) {
    std::vector<std::string> log;
    (void)give_out(giver->place.store, [&](std::string_view line) {
      log.emplace_back(line);
      return Outcome(Done{});
    });
    for (auto& [to, taker] : tablets_) {
      if (from == to) continue;
      std::size_t next = 0;
      (void)take_in(taker->place.ports(), [&]() -> Result<std::optional<std::string>> {
        if (next == log.size()) return std::optional<std::string>();
        return std::optional(log[next++]);
      }).value();
    }
  }
}

std::vector<std::string> StoryPlayer::ended() {
  const VisitEnded ended = end_visit(tablet().place.ports(), *tablet().visit, english()).value();
  add(answers_, ended.last_turn);
  std::vector<std::string> lines;
  for (const OpenPoint& point : ended.open) {
    lines.push_back(std::string(word_of(point.kind)) + " " + with_cow(point.cow_said, point.words));
  }
  tablet().recording.reset();
  return lines;
}

std::vector<std::string> StoryPlayer::due(const std::string& day_text) {
  const DueList list =
      list_due(tablet().place.store, tablet().place.herd().herd, day(day_text)).value();
  std::vector<std::string> lines;
  for (const DueTask& task : list.tasks) {
    lines.push_back(std::string(word_of(task.state)) + " " + task.cow_said + ": " + task.words +
                    " (" + std::string(word_of(task.owner)) + ", by " + to_text(task.due) + ")");
  }
  return lines;
}

std::vector<std::string> StoryPlayer::cow(const std::string& said) {
  const auto shown =
      show_cow(tablet().place.store, tablet().place.herd().herd, said, day("2026-10-27"));
  if (!shown) return {shown.faults().front().message};
  std::vector<std::string> lines;
  for (const CowCalledRow& row : shown->called_first) {
    lines.push_back("cow " + shown->cow_said + ", called " + row.called + " on " +
                    to_text(row.day) + ", then put right");
  }
  for (const OnFootRow& row : shown->on_her) lines.push_back(fixture_line(row));
  for (const CaseRow& row : shown->open_cases) lines.push_back(case_line(row));
  for (const FootSeen& seen : shown->feet) lines.push_back(foot_line(seen));
  return lines;
}

std::vector<std::string> StoryPlayer::recorded() {
  return recorded_day(tablet().place.store, tablet().place.herd().herd, tablet().visit->visit);
}

std::vector<std::string> StoryPlayer::milk_and_meat() {
  const SheetMade sheet =
      make_sheet(tablet().place.ports(), *tablet().visit, tablet().visit->day, {"of a story", {}})
          .value();
  return box_in(sheet.text, "MILK AND MEAT");
}

std::vector<std::string> StoryPlayer::callers() {
  const auto rows = select_as<TurnRow>(tablet().place.store, tablet().place.herd().herd).value();
  const auto everybody = tablet().place.directory.everybody().value();
  std::map<std::string, std::set<std::string>> cows_of;
  for (const TurnRow& row : rows) {
    if (row.visit != tablet().visit->visit) continue;
    cows_of[shown_name(everybody, row.caller)].insert(row.number_said);
  }
  std::vector<std::string> lines;
  for (const auto& [caller, cows] : cows_of) {
    std::string line = caller + ":";
    for (const std::string& cow : cows) line += (line.back() == ':' ? " " : ", ") + cow;
    lines.push_back(line);
  }
  return lines;
}

std::vector<std::string> StoryPlayer::counted() {
  const VisitShown shown = show_visit(tablet().place.ports(), *tablet().visit).value();
  std::vector<std::string> lines;
  lines.reserve(shown.batches.size());
  for (const BatchShown& batch : shown.batches) lines.push_back(batch.name + ": " + batch.words);
  return lines;
}

std::vector<std::string> StoryPlayer::turns() {
  const auto rows = select_as<TurnRow>(tablet().place.store, tablet().place.herd().herd).value();
  std::map<std::string, std::pair<int, std::string>> by_cow;
  for (const TurnRow& row : rows) {
    if (tablet().visit && row.visit != tablet().visit->visit) continue;
    auto& [count, end] = by_cow[row.number_said.empty() ? "no number" : row.number_said];
    ++count;
    if (row.end != TurnEnd::done) end = ", " + std::string(word_of(row.end));
  }
  std::vector<std::string> lines;
  lines.reserve(by_cow.size());
  for (const auto& [cow, turn] : by_cow) {
    lines.push_back(cow + ": " + std::to_string(turn.first) + turn.second);
  }
  return lines;
}

}  // namespace evenclaw::test
