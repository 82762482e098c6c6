#include "core/trade/call_line/open_item.hpp"

#include <utility>

#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/lexer.hpp"
#include "core/trade/call_line/possible.hpp"

namespace evenclaw {

namespace {

using Taken = std::optional<Refusal>;

constexpr int longest_wait_days = 730;

// The longest withdrawals that are stated are of months: from memory; how far beyond is our
// judgement.
constexpr int longest_withheld_days = 180;

Refusal said_already(std::string_view what) {
  return not_understood("the " + std::string(what) + " was said already",
                        "say the lesion again for a second finding");
}

Refusal too_long(int days) {
  constexpr int slip = 10;
  const std::string meant = days % slip == 0 ? "was {" + std::to_string(days / slip) + "d} meant?"
                                             : std::string("say it again");
  return impossible("nothing is withheld for " + std::to_string(days) + " days; it lies within " +
                        std::to_string(longest_withheld_days),
                    meant);
}

Refusal has_none(std::string_view what) {
  return not_understood("what was said last has no " + std::string(what), "name the lesion first");
}

// The place a word means once the lesion is known: the heel of a white line lesion is the white
// line at the heel.
Place place_meant(Lesion lesion, Place said) {
  if (!is_of_the_white_line(lesion)) return said;
  if (said == Place::heel) return Place::white_line_heel;
  return said == Place::toe ? Place::white_line_toe : said;
}

Taken checked(Finding& finding, Finding candidate) {
  if (const auto why = why_impossible(candidate)) return impossible(*why);
  finding = std::move(candidate);
  return std::nullopt;
}

Taken add_claw(Finding& finding, Claw claw) {
  if (finding.claw != Claw::not_called && finding.claw != Claw::none) return said_already("claw");
  Finding candidate = finding;
  candidate.claw = claw;
  return checked(finding, std::move(candidate));
}

Taken add_place(Finding& finding, Place said) {
  const Place place = place_meant(finding.lesion, said);
  if (finding.place == place) return std::nullopt;
  if (finding.place != Place::not_called) return said_already("place");
  Finding candidate = finding;
  candidate.place = place;
  if (!candidate.zone) candidate.zone = facts_of(place).zone;
  const bool is_skin = !facts_of(place).needs_claw;
  if (is_skin && candidate.claw == Claw::not_called) candidate.claw = Claw::none;
  return checked(finding, std::move(candidate));
}

Taken add_side(Finding& finding) {
  if (is_of_the_white_line(finding.lesion)) return add_place(finding, Place::white_line_side);
  return not_understood("\"{side}\" means the white line, and this is another lesion",
                        "say \"{white line at the side}\" or \"{outer wall}\"");
}

Taken add_zone(Finding& finding, int zone) {
  const std::optional<Place> place = place_of_zone(zone);
  if (!place) return impossible("zones run from 0 to 12");
  Finding candidate = finding;
  candidate.zone = zone;
  if (candidate.place == Place::not_called) {
    candidate.zone.reset();
    if (Taken refusal = add_place(candidate, *place)) return refusal;
    candidate.zone = zone;
  }
  return checked(finding, std::move(candidate));
}

Taken add_degree(Finding& finding, Degree degree) {
  if (finding.degree != Degree::not_called) return said_already("degree");
  finding.degree = degree;
  return std::nullopt;
}

Taken add_stage(Finding& finding, DdStage stage) {
  if (finding.stage != DdStage::not_called) return said_already("stage");
  Finding candidate = finding;
  candidate.stage = stage;
  return checked(finding, std::move(candidate));
}

Taken add_dd(Finding& finding) {
  Finding candidate = finding;
  candidate.dd_infected = true;
  return checked(finding, std::move(candidate));
}

Taken add_words(Finding& finding, std::string words) {
  if (!finding.words.empty()) return said_already("wording");
  if (words.empty()) return not_understood("the quotes hold no words");
  finding.words = std::move(words);
  return std::nullopt;
}

Taken add_one_side(Finding& finding, const Term& detail) {
  if (finding.lesion != Lesion::sw) return has_none("side of its own");
  return add_words(finding, std::string(detail.said));
}

struct FindingDetail {
  TermKind kind;
  Taken (*add)(Finding& finding, const Term& detail);
};

constexpr FindingDetail finding_details[] = {
    {TermKind::claw, [](Finding& f, const Term& t) { return add_claw(f, t.as<Claw>()); }},
    {TermKind::place, [](Finding& f, const Term& t) { return add_place(f, t.as<Place>()); }},
    {TermKind::white_line_place,
     [](Finding& f, const Term& t) { return add_place(f, t.as<Place>()); }},
    {TermKind::white_line_side, [](Finding& f, const Term&) { return add_side(f); }},
    {TermKind::zone, [](Finding& f, const Term& t) { return add_zone(f, t.value); }},
    {TermKind::degree, [](Finding& f, const Term& t) { return add_degree(f, t.as<Degree>()); }},
    {TermKind::stage, [](Finding& f, const Term& t) { return add_stage(f, t.as<DdStage>()); }},
    {TermKind::dd_in_it, [](Finding& f, const Term&) { return add_dd(f); }},
    {TermKind::one_side, [](Finding& f, const Term& t) { return add_one_side(f, t); }},
    {TermKind::compared,
     [](Finding& f, const Term& t) { return add_words(f, std::string(t.said)); }},
    {TermKind::quoted, [](Finding& f, const Term& t) { return add_words(f, words_in(t)); }},
    {TermKind::text, [](Finding& f, const Term& t) { return add_words(f, words_in(t)); }},
};

Taken add_to_finding(Finding& finding, const Term& detail) {
  for (const FindingDetail& row : finding_details) {
    if (row.kind == detail.kind) return row.add(finding, detail);
  }
  return has_none("detail of this kind");
}

Taken add_product(Action& action, std::string name) {
  if (!takes_product(action.kind)) return has_none("name");
  if (!action.product.empty()) return said_already("name of it");
  if (name.empty()) return not_understood("the quotes hold no words");
  action.product = std::move(name);
  return std::nullopt;
}

Taken add_claw_of(Claw& claw, bool takes_claw, Claw said) {
  if (!takes_claw) return has_none("claw");
  if (claw != Claw::not_called) return said_already("claw");
  claw = said;
  return std::nullopt;
}

Taken add_material(Action& action, Material material) {
  if (!takes_material(action.kind, material)) return has_none(word_of(material));
  if (action.material != Material::not_called) return said_already("kind of it");
  action.material = material;
  return std::nullopt;
}

Taken add_by_whom(Action& action, ByWhom by_whom) {
  if (!takes_by_whom(action.kind)) return has_none("one who gave it or was asked for it");
  if (action.by_whom != ByWhom::not_called) return said_already("one who gives it");
  action.by_whom = by_whom;
  return std::nullopt;
}

Taken add_directed_by(Action& action, ByWhom directed_by) {
  if (!takes_product(action.kind)) return has_none("one who directed it");
  if (action.directed_by != ByWhom::not_called) return said_already("one who directed it");
  action.directed_by = directed_by;
  return std::nullopt;
}

Taken add_milking(Action& action, Milking milking) {
  const bool holds_milk_back = facts_of(action.kind).said_as == TermKind::withheld_act;
  if (!holds_milk_back || !action.when.said()) return has_none("milking");
  if (action.when.milking) return said_already("milking");
  action.when.milking = milking;
  return std::nullopt;
}

Taken add_to_act(Action& action, const Term& detail) {
  if (detail.kind == TermKind::claw) {
    return add_claw_of(action.claw, facts_of(action.kind).takes_claw, detail.as<Claw>());
  }
  if (detail.kind == TermKind::material || detail.kind == TermKind::block_of) {
    return add_material(action, detail.as<Material>());
  }
  if (detail.kind == TermKind::by_whom) return add_by_whom(action, detail.as<ByWhom>());
  if (detail.kind == TermKind::directed_by) return add_directed_by(action, detail.as<ByWhom>());
  if (detail.kind == TermKind::milking) return add_milking(action, detail.as<Milking>());
  const bool is_name = detail.kind == TermKind::text || detail.kind == TermKind::quoted ||
                       detail.kind == TermKind::unknown_word;
  if (is_name) return add_product(action, words_in(detail));
  if (detail.kind == TermKind::dd_in_it) return has_none("DD in it");
  return has_none(detail.kind == TermKind::degree ? "degree" : "place");
}

Taken add_to_time(TimeCorrected& said, const Term& detail) {
  if (detail.kind == TermKind::claw) return add_claw_of(said.claw, true, detail.as<Claw>());
  if (detail.kind != TermKind::milking || !said.when.said()) return has_none("detail");
  said.when.milking = detail.as<Milking>();
  return std::nullopt;
}

Taken add_to_measure(Claw& claw, const Term& detail) {
  if (detail.kind != TermKind::claw) return has_none("place or degree");
  return add_claw_of(claw, true, detail.as<Claw>());
}

}  // namespace

Refusal not_understood(std::string message, std::string remedy) {
  return {"call-not-understood", std::move(message), std::move(remedy)};
}

Refusal impossible(std::string message, std::string remedy) {
  return {"call-impossible", std::move(message), std::move(remedy)};
}

Fault fault_of(const Refusal& refusal) {
  Fault fault;
  fault.slug = refusal.slug;
  fault.message = refusal.message;
  fault.remedy = refusal.remedy;
  return fault;
}

std::string words_in(const Term& term) {
  const bool is_quoted =
      term.token_count == 1 && tokens_of(term.said).front().kind == TokenKind::quoted;
  return is_quoted ? unquoted(term.said) : std::string(term.said);
}

FindingSaid new_finding(Lesion lesion) {
  FindingSaid said{};
  said.finding.lesion = lesion;
  said.finding.claw = may_have_claw(lesion) ? Claw::not_called : Claw::none;
  return said;
}

ActionSaid new_act(ActionKind kind) {
  ActionSaid said{};
  said.action.kind = kind;
  said.action.claw = facts_of(kind).takes_claw ? Claw::not_called : Claw::none;
  said.whole_cow = is_always_of_the_cow(kind);
  return said;
}

MeasureSaid new_measure(MeasureKind kind) {
  MeasureSaid said{};
  said.measure.kind = kind;
  return said;
}

Taken add_detail(TurnClause& item, const Term& detail) {
  if (auto* said = std::get_if<FindingSaid>(&item)) return add_to_finding(said->finding, detail);
  if (auto* said = std::get_if<ActionSaid>(&item)) return add_to_act(said->action, detail);
  if (auto* said = std::get_if<MeasureSaid>(&item)) {
    return add_to_measure(said->measure.claw, detail);
  }
  if (auto* said = std::get_if<FindingTakenBack>(&item)) {
    return add_to_finding(said->finding, detail);
  }
  if (auto* said = std::get_if<ActTakenBack>(&item)) return add_to_act(said->action, detail);
  if (auto* said = std::get_if<MeasureTakenBack>(&item)) return add_to_measure(said->claw, detail);
  if (auto* said = std::get_if<TimeCorrected>(&item)) return add_to_time(*said, detail);
  return has_none("detail");
}

Taken add_time(TurnClause& item, const TimeSaid& when) {
  auto* said = std::get_if<ActionSaid>(&item);
  auto* right = std::get_if<TimeCorrected>(&item);
  if (said == nullptr && right == nullptr) return has_none("time");
  TimeSaid& kept = said != nullptr ? said->action.when : right->when;
  if (kept.said()) return said_already("time");
  if (when.days && (*when.days < 1 || *when.days > longest_wait_days)) {
    return impossible("a time lies between 1 and " + std::to_string(longest_wait_days) +
                      " days ahead");
  }
  const std::optional<ActionKind> act =
      said != nullptr ? std::optional(said->action.kind) : right->act;
  const bool withholds = act && facts_of(*act).said_as == TermKind::withheld_act;
  if (withholds && when.days && *when.days > longest_withheld_days) return too_long(*when.days);
  kept = when;
  return std::nullopt;
}

bool awaits_claw(const TurnClause& item) {
  if (const auto* said = std::get_if<FindingSaid>(&item)) {
    return said->finding.claw == Claw::not_called;
  }
  if (const auto* said = std::get_if<FindingTakenBack>(&item)) {
    return said->finding.claw == Claw::not_called;
  }
  if (const auto* said = std::get_if<ActTakenBack>(&item)) {
    return said->action.claw == Claw::not_called;
  }
  if (const auto* said = std::get_if<ActionSaid>(&item)) {
    return said->action.claw == Claw::not_called;
  }
  if (const auto* said = std::get_if<MeasureTakenBack>(&item)) {
    return said->claw == Claw::not_called;
  }
  const auto* said = std::get_if<MeasureSaid>(&item);
  return said != nullptr && said->measure.claw == Claw::not_called;
}

bool awaits_off(const TurnClause& item) {
  const auto* right = std::get_if<TimeCorrected>(&item);
  if (right != nullptr) return !right->when.said();
  const auto* said = std::get_if<ActionSaid>(&item);
  return said != nullptr && facts_of(said->action.kind).time == ActTime::comes_off &&
         !said->action.when.said();
}

}  // namespace evenclaw
