#include "core/sheets/signs_for_vet.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

#include "core/sheets/signs_in_words.hpp"
#include "core/sheets/words_of_her.hpp"
#include "core/trade/lesion.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view practice = "common practice, no source";
constexpr std::string_view by_its_check = "as its check says";
constexpr std::string_view illness =
    "common practice; foot-and-mouth signs from memory, who must be rung is local law";
constexpr std::string_view bone =
    "toe necrosis and bare bone often end in amputation: a webinar of Atkinson (thewebinarvet.com)";
constexpr std::string_view joint =
    "a septic joint needs the vet: grainews.ca 2018, Van Metre (docslib 8162165)";
constexpr std::string_view foul =
    "a prompt injection by the vet's prescription: Blowey, extract of a book on lameness";

using Act = ActionKind;

// How soon is our judgement, no source: blood that does not stop and a cow that is down can be dead
// within the hour; deep infection and fever are rung for the same day. Rows without a sign hold
// what only the check knows.
constexpr SignForVet table[] = {
    {"notifiable-signs", {}, {}, false, VetUrgency::reportable, {}, illness},
    {"bleeding-goes-on",
     Act::bleeding,
     {},
     false,
     VetUrgency::at_once,
     Saying::stop_bleeding,
     practice},
    {"down-in-the-crush",
     Act::went_down,
     {},
     false,
     VetUrgency::at_once,
     Saying::let_her_be,
     practice},
    {"", Act::blisters, {}, false, VetUrgency::today, {}, illness},
    {"", Act::sore_mouth, {}, false, VetUrgency::today, {}, illness},
    {"", Act::fever, {}, false, VetUrgency::today, {}, practice},
    {"pus-above-the-horn",
     Act::pus_above,
     {},
     false,
     VetUrgency::today,
     Saying::leave_foot_alone,
     joint},
    {"toe-or-bone",
     Act::bone_showing,
     {},
     false,
     VetUrgency::today,
     Saying::leave_foot_alone,
     bone},
    {"toe-or-bone", {}, Lesion::tn, false, VetUrgency::today, Saying::leave_foot_alone, bone},
    {"swollen-on-one-side",
     {},
     Lesion::sw,
     false,
     VetUrgency::today,
     Saying::leave_foot_alone,
     joint},
    {"foul-without-the-vet",
     {},
     Lesion::sw,
     true,
     VetUrgency::today,
     Saying::no_wrap_on_foul,
     foul},
    {"foul-without-the-vet",
     {},
     Lesion::ip,
     false,
     VetUrgency::today,
     Saying::no_wrap_on_foul,
     foul},
    {"lame-nothing-found", {}, {}, false, VetUrgency::today, {}, by_its_check},
    {"worst-walk-needs-the-vet", {}, {}, false, VetUrgency::today, {}, by_its_check},
    {"lame-on-two-legs", {}, {}, false, VetUrgency::today, {}, by_its_check},
    {"it-stinks", {}, {}, false, VetUrgency::today, {}, by_its_check},
    {"toe-far-too-short", {}, {}, false, VetUrgency::today, {}, by_its_check},
    {blocked_again_rule, {}, {}, false, VetUrgency::later, {}, by_its_check},
    {"act-reserved-for-vet", {}, {}, false, VetUrgency::today, {}, by_its_check},
    {both_claws_rule, {}, {}, false, VetUrgency::today, Saying::no_block_both_hurt, by_its_check}};

constexpr ActionKind signs_of_illness[] = {Act::sore_mouth, Act::blisters, Act::fever};

const SignForVet* sign_seen(ActionKind kind) {
  const auto found = std::find_if(std::begin(table), std::end(table),
                                  [kind](const SignForVet& row) { return row.seen == kind; });
  return found == std::end(table) ? nullptr : found;
}

const SignForVet* sign_found(const FindingRow& finding) {
  const bool is_above_both = finding.lesion == Lesion::sw && finding.claw == Claw::both;
  const auto found = std::find_if(std::begin(table), std::end(table), [&](const SignForVet& row) {
    return row.found == finding.lesion && row.is_above_both == is_above_both;
  });
  return found == std::end(table) ? nullptr : found;
}

void add_new(std::vector<SignOfHer>& signs, const SignForVet* sign, std::optional<Foot> foot) {
  const bool is_known =
      sign == nullptr || std::any_of(signs.begin(), signs.end(), [&](const SignOfHer& other) {
        return other.sign == sign && other.foot == foot;
      });
  if (!is_known) signs.push_back({sign, foot});
}

bool hurts_on(const CowSeen& cow, Foot foot, Claw claw) {
  return std::any_of(cow.findings.begin(), cow.findings.end(), [&](const FindingRow* row) {
    const bool is_there = row->foot == foot && (row->claw == claw || row->claw == Claw::both);
    const Hurts hurts = facts_of(row->lesion).hurts;
    const bool is_bad = hurts == Hurts::when_bad && row->degree == Degree::bad;
    const bool is_foul =
        row->lesion == Lesion::ip || (row->lesion == Lesion::sw && row->claw == Claw::both);
    return is_there && !is_foul && (hurts == Hurts::yes || is_bad);
  });
}

const SignForVet* sign_of_check(std::string_view check) {
  const auto found = std::find_if(std::begin(table), std::end(table),
                                  [check](const SignForVet& row) { return row.check == check; });
  return found == std::end(table) ? nullptr : found;
}

/// Called of her or found on her.
std::vector<SignOfHer> signs_on_record(const CowSeen& cow) {
  std::vector<SignOfHer> signs;
  for (const ActionRow* row : cow.actions) add_new(signs, sign_seen(row->action), row->foot);
  for (const FindingRow* row : cow.findings) add_new(signs, sign_found(*row), row->foot);
  for (const Foot foot : all_feet) {
    if (do_both_claws_hurt(cow, foot)) add_new(signs, sign_of_check(both_claws_rule), foot);
  }
  return signs;
}

/// On that foot, or anywhere when the words are of all of her.
bool is_among(const std::vector<SignOfHer>& signs, const SignForVet* sign,
              std::optional<Foot> foot) {
  return std::any_of(signs.begin(), signs.end(), [&](const SignOfHer& one) {
    return one.sign == sign && (!foot || !one.foot || one.foot == foot);
  });
}

/// There pus comes from, as far as anybody knows.
bool has_white_line_abscess(const CowSeen& cow, std::optional<Foot> foot) {
  return std::any_of(cow.findings.begin(), cow.findings.end(), [&](const FindingRow* row) {
    return row->lesion == Lesion::wla && (!foot || row->foot == foot);
  });
}

/// What the words tell of, where no call of hers tells it.
std::vector<const SignForVet*> told_in_words(const CowSeen& cow, const WordsOfHer& said) {
  HeardAs as = heard_as(said);
  as.is_pus_explained = has_white_line_abscess(cow, said.foot);
  std::vector<const SignForVet*> told = signs_in_words(said.words, as);
  const std::vector<SignOfHer> known = signs_on_record(cow);
  std::erase_if(told, [&](const SignForVet* sign) { return is_among(known, sign, said.foot); });
  return told;
}

}  // namespace

std::span<const SignForVet> signs_for_vet() {
  return table;
}

bool do_both_claws_hurt(const CowSeen& cow, Foot foot) {
  return hurts_on(cow, foot, Claw::outside) && hurts_on(cow, foot, Claw::inside);
}

std::vector<SignOfHer> signs_of_her(const CowSeen& cow) {
  std::vector<SignOfHer> signs = signs_on_record(cow);
  for (const WordsOfHer& said : words_of_her(cow)) {
    for (const SignForVet* sign : told_in_words(cow, said)) {
      if (is_among(signs, sign, said.foot)) continue;
      signs.push_back({sign, said.foot, is_only_asked(said)});
    }
  }
  return signs;
}

std::vector<std::string> signs_of(const VisitView& view, const CowSeen& cow,
                                  std::optional<Foot> foot) {
  const Wording& wording = view.wording;
  std::vector<std::string> signs;
  const auto add = [&](std::string words) {
    const bool is_new = std::find(signs.begin(), signs.end(), words) == signs.end();
    if (is_new) signs.push_back(std::move(words));
  };
  for (const ActionRow* row : cow.actions) {
    const bool is_there = row->foot == foot && sign_seen(row->action) != nullptr;
    if (is_there) add(wording.act(*row, view.input.visit.day));
  }
  for (const WordsOfHer& said : words_of_her(cow)) {
    const bool is_told = said.foot == foot && !told_in_words(cow, said).empty();
    if (is_told) add(words_as_told(said, wording));
  }
  return signs;
}

bool is_sign_of_illness(ActionKind kind) {
  return std::find(std::begin(signs_of_illness), std::end(signs_of_illness), kind) !=
         std::end(signs_of_illness);
}

}  // namespace evenclaw
