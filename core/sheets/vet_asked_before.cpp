#include "core/sheets/vet_asked_before.hpp"

#include <algorithm>

#include "core/sheets/signs_for_vet.hpp"
#include "core/sheets/task_blocks.hpp"

namespace evenclaw {

namespace {

bool is_gone(const FindingRow& row, const std::vector<CaseRow>& cases) {
  return std::any_of(cases.begin(), cases.end(), [&](const CaseRow& one) {
    return one.case_id == row.case_id && one.not_found_on;
  });
}

/// What was said of her that day, as far as it is of the place the task is of.
class SaidThen {
 public:
  SaidThen(const TaskRow& task, const Wording& wording) : task_(task), wording_(wording) {}

  void add_act(const ActionRow& row) {
    if (!is_of_that_turn(row) || !is_there(row.foot) || !is_sign(row.action)) return;
    add(row.foot, wording_.act(row, row.day));
  }

  void add_finding(const FindingRow& row, const std::vector<CaseRow>& cases) {
    if (!is_of_that_turn(row) || !is_there(row.foot)) return;
    was_found_ = true;
    if (!is_gone(row, cases)) add(row.foot, wording_.finding_at_claw(row));
  }

  /// Only where nothing was found.
  void add_turn(const TurnRow& row) {
    if (!is_of_that_turn(row) || was_found_) return;
    if (row.came_lame) add(std::nullopt, wording_.reasons(row));
    const bool has_reason = row.end != TurnEnd::done && !row.end_reason.empty();
    if (!has_reason) return;
    const bool is_quoted = row.end_reason.find('"') != std::string::npos;
    add(std::nullopt, is_quoted ? row.end_reason : '"' + row.end_reason + '"');
  }

  [[nodiscard]] std::string words() const { return wording_.list(parts_); }

 private:
  template <class Row>
  [[nodiscard]] bool is_of_that_turn(const Row& row) const {
    return row.cow == task_.cow && row.visit == task_.visit;
  }

  [[nodiscard]] bool is_there(const std::optional<Foot>& foot) const {
    return !task_.foot || !foot || foot == task_.foot;
  }

  static bool is_sign(ActionKind kind) {
    const auto signs = signs_for_vet();
    return std::any_of(signs.begin(), signs.end(),
                       [kind](const SignForVet& sign) { return sign.seen == kind; });
  }

  void add(const std::optional<Foot>& foot, std::string words) {
    if (foot && !task_.foot) words = wording_.foot(*foot) + ", " + words;
    const bool is_new = std::find(parts_.begin(), parts_.end(), words) == parts_.end();
    if (is_new) parts_.push_back(std::move(words));
  }

  const TaskRow& task_;
  const Wording& wording_;
  std::vector<std::string> parts_;
  bool was_found_ = false;
};

}  // namespace

std::string vet_asked_for_what(const TaskRow& task, const Rows& then,
                               const std::vector<CaseRow>& cases, const Wording& wording) {
  SaidThen said(task, wording);
  for (const ActionRow& row : then.actions) said.add_act(row);
  for (const FindingRow& row : then.findings) said.add_finding(row, cases);
  for (const TurnRow& row : then.turns) said.add_turn(row);
  return said.words();
}

std::vector<LeftAlone> left_until_vet(const TaskRow& task, const Rows& then,
                                      const std::vector<CaseRow>& cases) {
  std::vector<LeftAlone> left;
  if (is_for_pain_relief(task)) return left;
  CowSeen cow;
  cow.cow = task.cow;
  const auto is_then = [&](const auto& row) {
    return row.cow == task.cow && row.visit == task.visit;
  };
  for (const TurnRow& row : then.turns) {
    if (is_then(row)) cow.turns.push_back(&row);
  }
  for (const ActionRow& row : then.actions) {
    if (is_then(row)) cow.actions.push_back(&row);
  }
  for (const FindingRow& row : then.findings) {
    if (is_then(row) && !is_gone(row, cases)) cow.findings.push_back(&row);
  }
  for (const SignOfHer& sign : signs_of_her(cow)) {
    const bool is_elsewhere = task.foot && sign.foot && sign.foot != task.foot;
    const bool is_over = sign.sign->urgency == VetUrgency::at_once;
    if (is_elsewhere || is_over || !sign.sign->until_then) continue;
    left.push_back({sign.foot, *sign.sign->until_then});
  }
  return left;
}

std::string asked_before_words(const VisitView& view, const TaskRow& task) {
  const auto& known = view.input.vet_asked_before;
  const auto found = std::find_if(known.begin(), known.end(),
                                  [&](const VetAskedBefore& one) { return one.task == task.task; });
  const std::string what = found == known.end() ? std::string() : found->what;
  const std::string date = view.wording.date(task.made_on, view.input.printed);
  if (is_for_pain_relief(task)) {
    return what.empty() ? view.wording.say(BoxSaying::relief_asked_then, {{"date", date}})
                        : view.wording.say(BoxSaying::relief_asked_then_for,
                                           {{"date", date}, {"what", what}});
  }
  return what.empty()
             ? view.wording.say(BoxSaying::vet_asked_then, {{"date", date}})
             : view.wording.say(BoxSaying::vet_asked_then_for, {{"date", date}, {"what", what}});
}

}  // namespace evenclaw
