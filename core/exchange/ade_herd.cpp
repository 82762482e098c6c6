#include "core/exchange/ade_herd.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include "core/base/text.hpp"
#include "core/exchange/ade.hpp"
#include "core/exchange/csv.hpp"
#include "core/exchange/life_words.hpp"
#include "core/exchange/record_faults.hpp"
#include "core/trade/electronic_number.hpp"
#include "core/trade/national_tag.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t day_length = 10;
constexpr std::int64_t greatest_parity = 20;

HerdColumn read_as(AdeResource resource) {
  switch (resource) {
    case AdeResource::animal:
      return HerdColumn::number;
    case AdeResource::arrival:
      return HerdColumn::arrived;
    case AdeResource::parturition:
      return HerdColumn::calved;
    case AdeResource::dry_off:
      return HerdColumn::dry_off;
    case AdeResource::departure:
    case AdeResource::death:
      return HerdColumn::left;
    case AdeResource::diagnosis:
    case AdeResource::treatment:
      return HerdColumn::ignore;
  }
  return HerdColumn::ignore;
}

LifeEvent event_told_by(AdeResource resource) {
  if (resource == AdeResource::arrival) return LifeEvent::arrived;
  if (resource == AdeResource::parturition) return LifeEvent::calved;
  return resource == AdeResource::dry_off ? LifeEvent::dried_off : LifeEvent::left;
}

/// "2026-09-01" of a date or of an RFC 3339 date and time.
std::optional<Day> day_of_text(const std::string* text) {
  if (text == nullptr || text->size() < day_length) return std::nullopt;
  const bool is_alone = text->size() == day_length || (*text)[day_length] == 'T';
  return is_alone ? day_from_text(std::string_view(*text).substr(0, day_length)) : std::nullopt;
}

std::string key_of_identifier(const Json& identifier) {
  const std::string* scheme = text_at(identifier, {"scheme"});
  const std::string* id = text_at(identifier, {"id"});
  return id == nullptr ? std::string() : (scheme == nullptr ? "" : *scheme) + "\n" + *id;
}

void take_identifier(const Json& identifier, HerdRecord& record) {
  const std::string* id = text_at(identifier, {"id"});
  if (id == nullptr) return;
  if (is_written_as_electronic(*id) && electronic_number(*id)) {
    if (record.electronic.empty()) record.electronic = *id;
  } else if (national_tag(*id) && record.tag.empty()) {
    record.tag = *id;
  }
}

/// One object of the file, read into a record or left out.
class ObjectReading {
 public:
  ObjectReading(const Json& object, int nth, Day today)
      : object_(object), nth_(nth), today_(today) {}

  std::optional<AdeResource> resource() {
    const std::string* type = text_at(object_, {"resourceType"});
    if (type == nullptr) {
      refuse("resourceType is missing", "");
      return std::nullopt;
    }
    return resource_of(*type);
  }

  HerdRecord animal() {
    HerdRecord record;
    record.line = nth_;
    check_meta();
    for (const std::string_view name : {"specie", "gender"}) require(name);
    const Json* identifier = object_.member("identifier");
    if (identifier == nullptr) refuse("identifier is missing", "");
    if (const std::string* specie = text_at(object_, {"specie"}); specie && *specie != "Cattle") {
      refuse("the animal is no cattle", *specie);
    }
    if (const std::string* gender = text_at(object_, {"gender"}); gender && *gender == "Male") {
      refuse("the animal is male", *gender);
    }
    if (identifier != nullptr) take_identifier(*identifier, record);
    take_alternatives(record);
    take_facts(record);
    return record;
  }

  HerdRecord event(AdeResource resource) {
    HerdRecord record;
    record.line = nth_;
    record.is_one_event = true;
    check_meta();
    const Json* animal = object_.member("animal");
    if (animal == nullptr) refuse("animal is missing", "");
    if (animal != nullptr) take_identifier(*animal, record);
    const std::string* when = text_at(object_, {"eventDateTime"});
    const std::optional<Day> day = day_of_text(when);
    if (when == nullptr) refuse("eventDateTime is missing", "");
    if (when != nullptr && !day) refuse("eventDateTime is no day", *when);
    LifeEventTold told{event_told_by(resource), day.value_or(Day{})};
    if (resource == AdeResource::parturition) take_parity(told);
    if (told.event == LifeEvent::left) take_leaving(resource, told);
    record.events.push_back(std::move(told));
    return record;
  }

  void check(const HerdRecord& record) {
    if (!faults.empty()) return;
    for (RecordFault& found : faults_of_record(record, today_)) {
      found.fault.line = nth_;
      faults.push_back(std::move(found.fault));
    }
  }

  Faults faults;

 private:
  void refuse(std::string message, std::string token) {
    faults.push_back(list_unreadable(nth_, std::move(message), std::move(token),
                                     "Mend the object, or take it out."));
  }

  void require(std::string_view name) {
    if (text_at(object_, {name}) == nullptr) refuse(std::string(name) + " is missing", "");
  }

  void check_meta() {
    for (const std::string_view name : {"source", "modified"}) {
      if (text_at(object_, {"meta", name}) == nullptr) {
        refuse("meta." + std::string(name) + " is missing", "");
      }
    }
    const Json* meta = object_.member("meta");
    const Json* deleted = meta == nullptr ? nullptr : meta->member("isDeleted");
    const bool* is_deleted = deleted == nullptr ? nullptr : deleted->as_bool();
    if (is_deleted != nullptr && *is_deleted) refuse("it is marked as deleted at its source", "");
  }

  void take_alternatives(HerdRecord& record) const {
    const Json* alternatives = object_.member("alternativeIdentifiers");
    const JsonArray* list = alternatives == nullptr ? nullptr : alternatives->as_array();
    if (list == nullptr) return;
    for (const Json& identifier : *list) take_identifier(identifier, record);
  }

  void take_facts(HerdRecord& record) {
    const auto words = [&](std::string_view name, std::string& into) {
      const std::string* text = text_at(object_, {name});
      if (text == nullptr || trimmed(*text).empty()) return;
      if (!is_one_plain_line(*text)) return refuse(std::string(name) + " cannot be shown", "");
      into = trimmed(*text);
    };
    words("managementTag", record.number);
    words("name", record.name);
    const std::string* breed = text_at(object_, {"primaryBreed", "id"});
    if (breed != nullptr && is_one_plain_line(*breed)) record.breed = *breed;
    const std::string* born = text_at(object_, {"birthDate"});
    record.born = day_of_text(born);
    if (born != nullptr && !record.born) refuse("birthDate is no day", *born);
  }

  void take_parity(LifeEventTold& told) {
    const Json* parity = object_.member("damParity");
    const std::int64_t* number = parity == nullptr ? nullptr : parity->as_integer();
    if (number == nullptr) return;
    if (*number < 1 || *number > greatest_parity) {
      return refuse("damParity is no number of a lactation", std::to_string(*number));
    }
    told.lactation = static_cast<std::int32_t>(*number);
  }

  void take_leaving(AdeResource resource, LifeEventTold& told) const {
    const bool is_death = resource == AdeResource::death;
    const std::string* reason = text_at(object_, {is_death ? "deathReason" : "departureReason"});
    if (is_death) told.way = LeavingWay::died;
    if (reason != nullptr) {
      told.reason = leaving_reason_of(*reason);
      if (*reason != "Unknown") told.words = *reason;
      take_way(*reason, told);
    }
    if (const std::string* kind = text_at(object_, {"departureKind"})) take_way(*kind, told);
    const std::string* words = text_at(object_, {is_death ? "explanation" : "remark"});
    if (words != nullptr && is_one_plain_line(*words) && !trimmed(*words).empty()) {
      told.words = trimmed(*words);
    }
  }

  static void take_way(const std::string& word, LifeEventTold& told) {
    if (word == "Sale") told.way = LeavingWay::sold;
    if (word == "Slaughter" || word == "Culled") told.way = LeavingWay::slaughtered;
  }

  const Json& object_;
  int nth_;
  Day today_;
};

std::vector<const Json*> objects_in(const Json& json) {
  std::vector<const Json*> objects;
  const Json* list = &json;
  if (const Json* member = json.member("member"); member && member->as_array()) list = member;
  if (const JsonArray* array = list->as_array()) {
    for (const Json& element : *array) objects.push_back(&element);
  } else if (json.as_object() != nullptr) {
    objects.push_back(&json);
  }
  return objects;
}

class FileReading {
 public:
  explicit FileReading(Day today) : today_(today) {}

  void read(const std::vector<const Json*>& objects) {
    // An event may stand before its animal.
    for (const bool reads_animals : {true, false}) {
      int nth = 0;
      for (const Json* object : objects) read_one(*object, ++nth, reads_animals);
    }
    herd.objects = static_cast<int>(objects.size());
    for (const auto& [type, count] : counts_) {
      const auto resource = resource_of(type);
      const HerdColumn holds = resource ? read_as(*resource) : HerdColumn::ignore;
      herd.types.push_back(
          {type, holds, holds == HerdColumn::ignore ? ColumnKnownBy::nothing : ColumnKnownBy::head,
           std::to_string(count)});
    }
    const auto by_line = [](const auto& a, const auto& b) { return a.line < b.line; };
    std::stable_sort(herd.records.begin(), herd.records.end(), by_line);
    std::stable_sort(herd.left_out.begin(), herd.left_out.end(), by_line);
  }

  AdeHerd herd;

 private:
  void read_one(const Json& object, int nth, bool reads_animals) {
    ObjectReading reading(object, nth, today_);
    const auto resource = reading.resource();
    const bool is_animal = resource == AdeResource::animal;
    if (reads_animals) {
      if (const std::string* type = text_at(object, {"resourceType"})) ++counts_[*type];
    }
    // What has no type at all is told once.
    if (!resource && (!reads_animals || reading.faults.empty())) return;
    if (resource && is_animal != reads_animals) return;
    if (resource && read_as(*resource) == HerdColumn::ignore) return;
    HerdRecord record;
    if (resource)
      record = is_animal ? reading.animal() : event_of_animal(reading, object, *resource);
    if (resource) reading.check(record);
    if (!reading.faults.empty()) {
      herd.left_out.insert(herd.left_out.end(), reading.faults.begin(), reading.faults.end());
      return;
    }
    if (is_animal) {
      record.animal = key_of_identifier(*object.member("identifier"));
      animals_.emplace(record.animal, record);
    }
    herd.records.push_back(std::move(record));
  }

  HerdRecord event_of_animal(ObjectReading& reading, const Json& object, AdeResource resource) {
    HerdRecord record = reading.event(resource);
    const Json* animal = object.member("animal");
    const auto known =
        animal == nullptr ? animals_.end() : animals_.find(key_of_identifier(*animal));
    if (known == animals_.end()) return record;
    record.tag = known->second.tag;
    record.electronic = known->second.electronic;
    record.number = known->second.number;
    record.animal = known->first;
    return record;
  }

  Day today_;
  std::map<std::string, int> counts_;
  std::map<std::string, HerdRecord> animals_;
};

}  // namespace

bool looks_like_json(std::string_view text) {
  const std::string_view begins = trimmed(text.substr(0, 200));
  return !begins.empty() && (begins.front() == '{' || begins.front() == '[');
}

Result<AdeHerd> ade_herd(std::string_view text, Day today) {
  const auto json = json_from_text(fractions_as_text(text));
  if (!json) {
    Faults faults = json.faults();
    for (Fault& fault : faults) {
      fault.remedy = "Fetch the file again: it may be cut off, or be of another kind.";
    }
    return faults;
  }
  FileReading reading(today);
  reading.read(objects_in(*json));
  if (reading.herd.objects == 0) {
    return list_unreadable(0, "the file holds no resource of ICAR ADE", "",
                           "Read are animals, parturitions, dry offs, departures, deaths and "
                           "arrivals, one, an array, or the member of a collection.");
  }
  return std::move(reading.herd);
}

}  // namespace evenclaw
