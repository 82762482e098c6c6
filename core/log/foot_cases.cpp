#include "core/log/foot_cases.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <string>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

// Where a case is kept, and what it is called when it has no code.
struct Spot {
  Foot foot;
  Claw claw;
  Place place;
  Lesion family;
  TiedTo tied_to;     // the part of the claw its names tie it to, if any does
  std::string words;  // of lesions named by words only
};

// Where the place was called it counts, whatever the names; else names may exclude each other: a
// sole ulcer does not become a toe ulcer.
bool names_fit(const Spot& a, const Spot& b) {
  const bool place_called = a.place == b.place && a.place != Place::not_called;
  return place_called || a.tied_to == b.tied_to || a.tied_to == TiedTo::nothing ||
         b.tied_to == TiedTo::nothing;
}

bool is_same(const Spot& a, const Spot& b) {
  return a.foot == b.foot && a.claw == b.claw && a.place == b.place && a.family == b.family &&
         a.words == b.words && names_fit(a, b);
}

Spot spot_of(const FindingRow& finding) {
  return {finding.foot,
          may_have_claw(finding.lesion) ? finding.claw : Claw::none,
          finding.place,
          finding.family,
          facts_of(finding.lesion).tied_to,
          is_named_by_words(finding.lesion) ? fold_case(finding.words) : std::string{}};
}

bool claws_fit(Claw a, Claw b) {
  if (a == b || a == Claw::not_called || b == Claw::not_called) return true;
  const bool is_claw = a != Claw::none && b != Claw::none;
  return is_claw && (a == Claw::both || b == Claw::both);
}

bool fit(const Spot& a, const Spot& b) {
  const bool places_fit =
      a.place == b.place || a.place == Place::not_called || b.place == Place::not_called;
  return a.foot == b.foot && a.family == b.family && a.words == b.words && places_fit &&
         claws_fit(a.claw, b.claw) && names_fit(a, b);
}

struct Case {
  CaseRow row;
  Spot spot;
  VisitId last_visit;
  EntryId last_turn;
};

bool is_open(const Case& known) {
  return !known.row.not_found_on.has_value();
}

CaseId case_id_of(const FindingRow& first) {
  return {uuid_derived("case\n" + to_text(first.herd) + '\n' + to_text(first.turn) + '\n' +
                       std::to_string(first.position))};
}

class CaseBook {
 public:
  void found_in_turn(const std::vector<FindingRow*>& findings) {
    // What is called exactly must not be taken by what was called in passing.
    std::vector<FindingRow*> inexact;
    for (FindingRow* finding : findings) {
      Case* exact = find_exact(spot_of(*finding));
      if (exact == nullptr) {
        inexact.push_back(finding);
      } else {
        goes_on(*exact, *finding);
      }
    }
    for (FindingRow* finding : inexact) {
      const Spot spot = spot_of(*finding);
      // Two findings alike in one turn: the first of them has opened the case.
      Case* known = find_exact(spot);
      if (known == nullptr) known = single_that_fits(spot, finding->turn);
      if (known != nullptr) {
        goes_on(*known, *finding);
      } else {
        open(*finding);
      }
    }
  }

  void looked_at(Foot foot, VisitId visit, Day day) {
    for (Case& known : cases_) {
      if (known.spot.foot == foot && is_open(known) && known.last_visit != visit) {
        known.row.not_found_on = day;
      }
    }
  }

  [[nodiscard]] std::vector<CaseRow> rows() const {
    std::vector<CaseRow> rows;
    for (const Case& known : cases_) rows.push_back(known.row);
    return rows;
  }

 private:
  Case* find_exact(const Spot& spot) {
    const auto at = std::find_if(cases_.begin(), cases_.end(), [&](const Case& known) {
      return is_open(known) && is_same(known.spot, spot);
    });
    return at == cases_.end() ? nullptr : &*at;
  }

  Case* single_that_fits(const Spot& spot, EntryId turn) {
    Case* single = nullptr;
    for (Case& known : cases_) {
      if (!is_open(known) || known.last_turn == turn || !fit(known.spot, spot)) continue;
      if (single != nullptr) return nullptr;
      single = &known;
    }
    return single;
  }

  void open(FindingRow& finding) {
    const Spot spot = spot_of(finding);
    const bool relapse = std::any_of(cases_.begin(), cases_.end(), [&](const Case& known) {
      return !is_open(known) && fit(known.spot, spot);
    });
    CaseRow row;
    row.herd = finding.herd;
    row.cow = finding.cow;
    row.case_id = case_id_of(finding);
    row.foot = spot.foot;
    row.family = spot.family;
    row.worst = finding.lesion;
    row.first_day = finding.day;
    row.relapse = relapse;
    cases_.push_back({row, spot, VisitId{}, EntryId{}});
    cases_.back().row.claw = spot.claw;
    cases_.back().row.place = spot.place;
    finding.step = relapse ? CaseStep::relapse : CaseStep::first;
    note(cases_.back(), finding, true);
  }

  void goes_on(Case& known, FindingRow& finding) {
    const Spot spot = spot_of(finding);
    if (known.spot.claw == Claw::not_called) known.spot.claw = spot.claw;
    if (known.spot.place == Place::not_called) known.spot.place = spot.place;
    if (known.spot.tied_to == TiedTo::nothing) known.spot.tied_to = spot.tied_to;
    known.row.claw = known.spot.claw;
    known.row.place = known.spot.place;
    finding.step = CaseStep::goes_on;
    note(known, finding, known.last_visit != finding.visit);
  }

  static void note(Case& known, FindingRow& finding, bool new_visit) {
    finding.case_id = known.row.case_id;
    known.last_visit = finding.visit;
    known.last_turn = finding.turn;
    known.row.last_day = finding.day;
    known.row.lesion = finding.lesion;
    note_worst(known.row, finding.lesion);
    known.row.dd_infected = known.row.dd_infected || finding.dd_infected;
    if (finding.degree != Degree::not_called) known.row.degree = finding.degree;
    if (new_visit) ++known.row.times_found;
  }

  // A subtype told later only tells more: a white line lesion called an abscess next time need not
  // have got worse.
  static void note_worst(CaseRow& row, Lesion lesion) {
    const bool is_worse = is_worse_form(lesion, row.worst);
    row.grew_worse = row.grew_worse || is_worse;
    if (is_worse || is_kind_of(lesion, row.worst)) row.worst = lesion;
  }

  std::vector<Case> cases_;
};

// Whether what was called of this foot in this turn says that anything not called is not there.
bool was_looked_at(const Turn& turn, const FootCall& call) {
  if (call.state == FootState::nothing_found) return true;
  // Of blisters or pus alone nobody has looked for what was there before.
  return !call.findings.empty() && turn.end == TurnEnd::done;
}

void look_at_feet(CaseBook& book, const Told<TurnRecorded>& told) {
  for (const FootCall& call : told.body.turn.feet) {
    if (!was_looked_at(told.body.turn, call)) continue;
    book.looked_at(call.foot, told.body.visit, told.moment.day);
  }
}

}  // namespace

std::vector<CaseRow> link_cases(const CowStory& story, std::vector<FindingRow>& findings) {
  std::map<EntryId, std::vector<FindingRow*>> by_turn;
  for (FindingRow& finding : findings) by_turn[finding.turn].push_back(&finding);
  CaseBook book;
  for (const auto& visit : by_visit(story)) {
    for (const Told<TurnRecorded>* turn : visit) {
      book.found_in_turn(by_turn[turn->entry->envelope.id]);
    }
    for (const Told<TurnRecorded>* turn : visit) look_at_feet(book, *turn);
  }
  return book.rows();
}

}  // namespace evenclaw
