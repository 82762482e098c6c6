#include "core/exchange/ade_written.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <string_view>
#include <utility>

#include "core/exchange/ade.hpp"
#include "core/trade/lesion.hpp"
#include "core/wire/json.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view our_source = "evenclaw";

std::string at_midnight(Day day) {
  return to_text(day) + "T00:00:00Z";
}

std::string in_utc(Instant instant) {
  constexpr std::string_view zero_offset = "+00:00";
  std::string told = to_text(Instant{instant.ms, 0});
  const std::size_t at = told.rfind(zero_offset);
  return at == std::string::npos ? told : told.replace(at, zero_offset.size(), "Z");
}

Json text(std::string_view words) {
  return Json(std::string(words));
}

Json identifier(std::string_view scheme, std::string id) {
  return Json(JsonObject{{"scheme", text(scheme)}, {"id", Json(std::move(id))}});
}

Json in_list(Json json) {
  return Json(JsonArray{std::move(json)});
}

/// Verbatim words of icarPositionOnAnimalType.
std::string_view position_word(Foot foot) {
  switch (foot) {
    case Foot::lf:
      return "LegsFrontLeft";
    case Foot::rf:
      return "LegsFrontRight";
    case Foot::lh:
      return "LegsRearLeft";
    case Foot::rh:
      return "LegsRearRight";
  }
  return {};
}

Json positions_of(Foot foot) {
  return in_list(Json(JsonObject{{"position", text(position_word(foot))}}));
}

std::string_view claw_word(Claw claw) {
  switch (claw) {
    case Claw::outside:
      return "lateral";
    case Claw::inside:
      return "medial";
    case Claw::both:
      return "both";
    case Claw::none:
    case Claw::not_called:
      break;
  }
  return {};
}

/// Words of icarDiagnosisSeverityType; "" when no degree was called.
std::string_view severity_word(Degree degree) {
  switch (degree) {
    case Degree::slight:
      return "Light";
    case Degree::plain:
      return "Moderate";
    case Degree::bad:
      return "Severe";
    case Degree::not_called:
      break;
  }
  return {};
}

/// Words of icarDiagnosisStageType. Our proposal, and some is lost: the exact stage stands in the
/// site.
std::string_view stage_word(DdStage stage) {
  switch (stage) {
    case DdStage::m1:
      return "Early";
    case DdStage::m2:
    case DdStage::raw:
      return "Acute";
    case DdStage::m3:
    case DdStage::scab:
      return "Other";
    case DdStage::m4:
    case DdStage::chronic:
      return "Chronic";
    case DdStage::m4_1:
      return "AcuteOnChronic";
    case DdStage::m0:
    case DdStage::not_called:
      break;
  }
  return {};
}

void add_part(std::string& site, std::string_view name, std::string_view value) {
  if (value.empty()) return;
  if (!site.empty()) site += ';';
  site += std::string(name) + '=' + std::string(value);
}

class AdeFile {
 public:
  AdeFile(HerdId herd, Instant made_at) : herd_(herd), made_at_(made_at) {}

  [[nodiscard]] JsonObject resource(AdeResource type) const {
    const Json meta(JsonObject{{"source", text(our_source)}, {"modified", Json(in_utc(made_at_))}});
    return {{"resourceType", text(type_of(type))}, {"meta", meta}};
  }

  [[nodiscard]] JsonObject event(AdeResource type, CowId cow, Day day, std::string id) const {
    JsonObject object = resource(type);
    object.emplace("id", Json(std::move(id)));
    object.emplace("animal", identifier("evenclaw.cow", to_text(cow)));
    object.emplace("eventDateTime", Json(at_midnight(day)));
    object.emplace("location", identifier("evenclaw.herd", to_text(herd_)));
    return object;
  }

  void add(JsonObject object) {
    file_ += (file_.empty() ? "[\n" : ",\n") + canonical_json(Json(std::move(object)));
  }

  std::string take() && { return file_.empty() ? "[]\n" : std::move(file_) + "\n]\n"; }

 private:
  HerdId herd_;
  Instant made_at_;
  std::string file_;
};

/// What stands beside her row.
struct BesideHer {
  CowTagRow tag;  // the newest
  std::string name;
  CowFactsRow facts;
};

std::map<CowId, BesideHer> beside_cows(const AdeRows& rows) {
  std::map<CowId, BesideHer> all;
  for (const CowTagRow& row : rows.tags) {
    CowTagRow& newest = all[row.cow].tag;
    if (newest.valid_from <= row.valid_from) newest = row;
  }
  for (const CowAliasRow& row : rows.names) {
    std::string& name = all[row.cow].name;
    if (name.empty()) name = row.alias;
  }
  for (const CowFactsRow& row : rows.facts) all[row.cow].facts = row;
  return all;
}

/// Of the schemes of ADE only these two are known to mean what we have.
Json alternatives_of(const CowTagRow& tag) {
  JsonArray identifiers;
  if (!tag.electronic.empty()) {
    identifiers.push_back(identifier("std.iso.11785", tag.electronic));
  }
  if (!tag.tag.empty()) {
    const bool is_british = tag.tag.rfind("UK", 0) == 0;
    identifiers.push_back(identifier(is_british ? "uk.cts.eartag" : "evenclaw.eartag", tag.tag));
  }
  return Json(std::move(identifiers));
}

void add_animal(AdeFile& file, const CowRow& cow, const BesideHer& beside) {
  JsonObject object = file.resource(AdeResource::animal);
  object.emplace("identifier", identifier("evenclaw.cow", to_text(cow.cow)));
  object.emplace("specie", text("Cattle"));
  object.emplace("gender", text("Female"));
  const bool is_tagged = !beside.tag.tag.empty() || !beside.tag.electronic.empty();
  if (is_tagged) object.emplace("alternativeIdentifiers", alternatives_of(beside.tag));
  const std::string& number = cow.number_said.empty() ? cow.number : cow.number_said;
  if (!number.empty()) object.emplace("managementTag", Json(number));
  if (!beside.name.empty()) object.emplace("name", Json(beside.name));
  if (beside.facts.born) object.emplace("birthDate", Json(at_midnight(*beside.facts.born)));
  if (beside.facts.breed) {
    object.emplace("primaryBreed", identifier("evenclaw.breed", *beside.facts.breed));
  }
  file.add(std::move(object));
}

AdeResource resource_of_event(const LifeEventTold& told) {
  switch (told.event) {
    case LifeEvent::arrived:
      return AdeResource::arrival;
    case LifeEvent::calved:
      return AdeResource::parturition;
    case LifeEvent::dried_off:
      return AdeResource::dry_off;
    case LifeEvent::left:
      break;
  }
  return told.way == LeavingWay::died ? AdeResource::death : AdeResource::departure;
}

void add_life_event(AdeFile& file, CowId cow, const LifeEventTold& told) {
  const AdeResource type = resource_of_event(told);
  const std::string id =
      to_text(cow) + ':' + std::string(word_of(told.event)) + ':' + to_text(told.day);
  JsonObject object = file.event(type, cow, told.day, id);
  if (told.event == LifeEvent::calved && told.lactation) {
    object.emplace("damParity", Json(*told.lactation));
  }
  if (type == AdeResource::death) {
    object.emplace("deathReason", text(ade_death_reason(told.reason)));
    if (!told.words.empty()) object.emplace("explanation", Json(told.words));
  }
  if (type == AdeResource::departure) {
    object.emplace("departureReason", text(ade_departure_reason(told.reason)));
    if (told.way == LeavingWay::sold) object.emplace("departureKind", text("Sale"));
    if (told.way == LeavingWay::slaughtered) object.emplace("departureKind", text("Slaughter"));
    if (!told.words.empty()) object.emplace("remark", Json(told.words));
  }
  file.add(std::move(object));
}

/// Her life, and what was told of it in other ways: a calving in a list of cows, a leaving in
/// words.
void add_life(AdeFile& file, const AdeRows& rows, const std::map<CowId, BesideHer>& beside) {
  std::set<std::pair<CowId, LifeEvent>> with_leaving;
  std::set<std::pair<CowId, Day>> calvings;
  for (const CowLifeRow& row : rows.life) {
    add_life_event(file, row.cow, event_of(row));
    if (row.event == LifeEvent::left) with_leaving.insert({row.cow, row.event});
    if (row.event == LifeEvent::calved) calvings.insert({row.cow, row.day});
  }
  for (const CowRow& cow : rows.cows) {
    const auto at = beside.find(cow.cow);
    const std::optional<Day> calved = at == beside.end() ? std::nullopt : at->second.facts.calved;
    if (calved && calvings.count({cow.cow, *calved}) == 0) {
      add_life_event(file, cow.cow, {LifeEvent::calved, *calved, at->second.facts.lactation});
    }
    if (cow.left_on && with_leaving.count({cow.cow, LifeEvent::left}) == 0) {
      LifeEventTold told{LifeEvent::left, *cow.left_on};
      told.words = cow.left_words;
      add_life_event(file, cow.cow, told);
    }
  }
}

void add_finding(AdeFile& file, const FindingRow& row) {
  const std::string id = to_text(row.turn) + ":finding:" + std::to_string(row.position);
  JsonObject diagnosis{
      {"id", Json(id)},
      {"name", text(facts_of(row.lesion).name)},
      {"diagnosisCode", identifier("evenclaw.lesion", std::string(word_of(row.lesion)))},
      {"positions", positions_of(row.foot)}};
  if (const std::string site = ade_site(row); !site.empty()) diagnosis.emplace("site", Json(site));
  if (!row.words.empty()) diagnosis.emplace("description", Json(row.words));
  if (const auto severity = severity_word(row.degree); !severity.empty()) {
    diagnosis.emplace("severity", text(severity));
  }
  if (const auto stage = stage_word(row.stage); !stage.empty()) {
    diagnosis.emplace("stage", text(stage));
  }
  JsonObject object = file.event(AdeResource::diagnosis, row.cow, row.day, id);
  object.emplace("diagnoses", in_list(Json(std::move(diagnosis))));
  file.add(std::move(object));
}

Json withdrawal(std::string_view product, Day till) {
  return Json(JsonObject{{"productType", text(product)}, {"endDate", Json(at_midnight(till))}});
}

void add_action(AdeFile& file, const ActionRow& row) {
  const std::string id = to_text(row.turn) + ":action:" + std::to_string(row.position);
  JsonObject object = file.event(AdeResource::treatment, row.cow, row.day, id);
  object.emplace("procedure", text(word_of(row.action)));
  if (row.foot) object.emplace("positions", positions_of(*row.foot));
  std::string site;
  add_part(site, "claw", claw_word(row.claw));
  if (!site.empty()) object.emplace("site", Json(site));
  if (!row.product.empty()) {
    object.emplace("medicine", Json(JsonObject{{"name", Json(row.product)}}));
  }
  JsonArray withdrawals;
  if (row.milk_till) withdrawals.push_back(withdrawal("Milk", *row.milk_till));
  if (row.meat_till) withdrawals.push_back(withdrawal("Meat", *row.meat_till));
  if (!withdrawals.empty()) object.emplace("withdrawals", Json(std::move(withdrawals)));
  if (row.material != Material::not_called) {
    object.emplace("comment", Json("material=" + std::string(word_of(row.material))));
  }
  file.add(std::move(object));
}

}  // namespace

std::string ade_site(const FindingRow& finding) {
  std::string site;
  add_part(site, "claw", claw_word(finding.claw));
  if (finding.zone) add_part(site, "zone", std::to_string(*finding.zone));
  if (finding.place != Place::not_called) add_part(site, "place", word_of(finding.place));
  if (finding.stage != DdStage::not_called) add_part(site, "stage", word_of(finding.stage));
  return site;
}

std::string ade_file(HerdId herd, Instant made_at, const AdeRows& rows) {
  AdeFile file(herd, made_at);
  const std::map<CowId, BesideHer> beside = beside_cows(rows);
  for (const CowRow& cow : rows.cows) {
    const auto at = beside.find(cow.cow);
    add_animal(file, cow, at == beside.end() ? BesideHer{} : at->second);
  }
  add_life(file, rows, beside);
  for (const FindingRow& row : rows.findings) add_finding(file, row);
  for (const ActionRow& row : rows.actions) add_action(file, row);
  return std::move(file).take();
}

}  // namespace evenclaw
