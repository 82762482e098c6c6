#include "core/sheets/visit_lines.hpp"

#include <optional>
#include <utility>

#include "core/sheets/also_said.hpp"
#include "core/sheets/batch_words.hpp"
#include "core/sheets/callers.hpp"
#include "core/sheets/off_label_floor.hpp"
#include "core/sheets/vet_stops.hpp"
#include "core/sheets/visit_view.hpp"
#include "core/sheets/withdrawal_said.hpp"

namespace evenclaw {

namespace {

class Lines {
 public:
  explicit Lines(const VisitView& view) : view_(view), wording_(view.wording) {}

  void add_cow(const CowSeen& cow) {
    for (const TurnRow* row : cow.turns) add_turn(*row);
    for (const FootRow* row : cow.feet) add_foot(*row);
    for (const FindingRow* row : cow.findings) add_finding(*row);
    const std::vector<SaidOf> said = withdrawals_said(cow.actions);
    for (const ActionRow* row : cow.actions) {
      add_act(with_lawful_ends(view_, cow.actions, said, *row));
    }
    for (const MeasureRow* row : cow.measures) add_measure(*row);
    for (const TurnRow* row : cow.turns) add_note(row->cow, std::nullopt, row->note);
    for (const FootRow* row : cow.feet) add_note(row->cow, row->foot, row->note);
    for (const WarningShown* shown : cow.warnings) add_warning(cow.cow, *shown);
    for (const DoubtRow* row : cow.doubts) add_doubt(*row);
  }

  void add_earlier_stop(const EarlierStop& stop) {
    add_warning(stop.cow, {stop.warning, std::string(stop.was_gone_past ? went_ahead : "")});
    lines_.back().by_day = stop.on;
  }

  void add_not_seen(const NotSeenCow& cow) {
    VisitLine& line = of_cow(LineTells::not_seen, cow.cow);
    if (line.cow.empty() && line.looks.empty()) line.cow = cow.number;
    line.words = cow.why;
  }

  void add_removed(const RemovedFromSheet& removed) {
    VisitLine& line = add(LineTells::removed);
    line.cow = removed.cow;
    line.by_day = removed.on;
  }

  void add_question(const AskedOnSheet& asked) {
    VisitLine& line = add(LineTells::question);
    line.cow = asked.cow;
    line.words = asked.words;
  }

  void add_told(const std::string& words) { add(LineTells::told).words = words; }

  void add_batch(const BatchRow& row) {
    VisitLine& line = add(LineTells::together);
    line.what = word_of(row.animals);
    line.words = batch_name(row, wording_) + ": " + batch_words(row, wording_);
    line.animals = row.together;
    line.caller = name_of(row.caller);
  }

  void add_task(const TaskRow& row) {
    VisitLine& line = of_cow(LineTells::task, row.cow);
    line.what = word_of(row.kind);
    line.words = row.words;
    line.foot = row.foot;
    if (row.claw != Claw::none) line.claw = row.claw;
    line.owner = row.owner;
    line.by_day = row.due;
  }

  std::vector<VisitLine> take() { return std::move(lines_); }

 private:
  VisitLine& add(LineTells tells) {
    VisitLine line;
    line.herd = view_.input.herd_name;
    line.day = view_.input.visit.day;
    line.tells = tells;
    lines_.push_back(std::move(line));
    return lines_.back();
  }

  VisitLine& of_cow(LineTells tells, CowId cow) {
    VisitLine& line = add(tells);
    line.cow = view_.names.number(cow);
    line.looks = view_.names.looks(cow);
    return line;
  }

  /// "" when nobody was named.
  [[nodiscard]] std::string name_of(PersonId person) const {
    for (const NamedPerson& known : view_.input.people) {
      if (known.person == person) return known.name;
    }
    return person.is_nil() ? view_.input.caller : std::string();
  }

  void add_note(CowId cow, std::optional<Foot> foot, const std::string& words) {
    if (words.empty()) return;
    VisitLine& line = of_cow(LineTells::note, cow);
    line.words = words;
    line.foot = foot;
  }

  void add_warning(CowId cow, const WarningShown& shown) {
    const Warning& warning = shown.warning;
    VisitLine& line = of_cow(tells_of(warning.rank), cow);
    line.what = warning.rule;
    line.words = warning.words;
    line.foot = warning.foot;
    if (warning.claw != Claw::none) line.claw = warning.claw;
    line.answer = shown.decision;
    const bool is_open = shown.decision.empty() || shown.decision == went_ahead;
    if ((calls_for_vet(warning) && is_open) || is_told_to_vet(shown)) {
      line.told_to = ToldTo::farmer_and_vet;
    } else if (is_told_to_farmer(shown)) {
      line.told_to = ToldTo::farmer;
    }
  }

  /// A warning nobody answered is a line already.
  void add_doubt(const DoubtRow& row) {
    if (row.kind == DoubtKind::unanswered) return;
    VisitLine& line = of_cow(LineTells::question, row.cow);
    line.what = word_of(row.kind);
    line.words = row.words;
    line.foot = row.foot;
  }

  static LineTells tells_of(Rank rank) {
    switch (rank) {
      case Rank::note:
        return LineTells::note;
      case Rank::ask:
        return LineTells::ask;
      case Rank::stop:
        return LineTells::stop;
    }
    return LineTells::note;
  }

  void add_turn(const TurnRow& row) {
    VisitLine& line = of_cow(LineTells::cow, row.cow);
    line.what = word_of(row.reason);
    line.words = wording_.reasons(row);
    line.lame = row.lame;
    line.end = row.end;
    line.mobility_scale = row.mobility_scale;
    line.mobility_score = row.mobility_score;
    line.caller = name_of(row.caller);
  }

  void add_foot(const FootRow& row) {
    VisitLine& line = of_cow(LineTells::foot, row.cow);
    line.what = word_of(row.state);
    line.words = wording_.state(row.state);
    line.foot = row.foot;
    line.trimmed = row.trimmed;
  }

  void add_finding(const FindingRow& row) {
    VisitLine& line = of_cow(LineTells::finding, row.cow);
    line.what = word_of(row.lesion);
    line.words = wording_.finding(row);
    line.foot = row.foot;
    line.claw = row.claw;
    line.place = row.place;
    line.zone = row.zone;
    line.degree = row.degree;
    line.stage = row.stage;
    line.step = row.step;
  }

  void add_act(const ActionRow& row) {
    VisitLine& line = of_cow(LineTells::act, row.cow);
    line.what = word_of(row.action);
    line.words = wording_.act(row, view_.input.visit.day);
    line.foot = row.foot;
    if (row.claw != Claw::none) line.claw = row.claw;
    line.product = row.product;
    line.material = row.material;
    line.by_whom = row.by_whom;
    line.directed_by = row.directed_by;
    line.withdrawal = row.withdrawal;
    line.milk_till = row.milk_till;
    line.milk_milking = row.milk_milking;
    line.meat_till = row.meat_till;
    line.by_day = row.said_for;
  }

  void add_measure(const MeasureRow& row) {
    VisitLine& line = of_cow(LineTells::measure, row.cow);
    line.what = word_of(row.measure);
    line.words = wording_.measure(row);
    line.foot = row.foot;
    line.claw = row.claw;
    line.length = row.length;
  }

  const VisitView& view_;
  const Wording& wording_;
  std::vector<VisitLine> lines_;
};

}  // namespace

std::vector<VisitLine> visit_lines(const VisitSheetInput& input, const Wording& wording) {
  const VisitView view = view_of(input, wording);
  Lines lines(view);
  for (const CowSeen& cow : view.cows) lines.add_cow(cow);
  for (const EarlierStop& stop : input.earlier_stops) {
    if (!stop.is_settled_alone || stop.may_be_notifiable) lines.add_earlier_stop(stop);
  }
  for (const NotSeenCow* cow : view.not_seen) lines.add_not_seen(*cow);
  for (const RemovedFromSheet& removed : input.removed) lines.add_removed(removed);
  for (const AskedOnSheet& asked : input.asked) lines.add_question(asked);
  for (const std::string& words : input.told) lines.add_told(words);
  for (const BatchRow& row : input.rows.batches) lines.add_batch(row);
  for (const TaskRow* row : view.tasks) lines.add_task(*row);
  return lines.take();
}

}  // namespace evenclaw
