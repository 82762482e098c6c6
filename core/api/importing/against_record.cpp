#include "core/api/importing/against_record.hpp"

#include <algorithm>
#include <cstdlib>
#include <string>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/cow_register.hpp"
#include "core/exchange/csv.hpp"
#include "core/exchange/record_faults.hpp"
#include "core/trade/electronic_number.hpp"

namespace evenclaw {

namespace {

std::string happened(LifeEvent event) {
  switch (event) {
    case LifeEvent::arrived:
      return "to have arrived";
    case LifeEvent::calved:
      return "to have calved";
    case LifeEvent::dried_off:
      return "to have been dried off";
    case LifeEvent::left:
      return "to have left";
  }
  return {};
}

class Comparing {
 public:
  Comparing(const KnownHerd& herd, const KnownCow& cow, const RecordAsked& asked, bool is_sure)
      : herd_(herd), cow_(cow), asked_(asked), is_sure_(is_sure), name_(recorded_as(cow.row)) {}

  Faults faults() && {
    if (!is_sure_) ask_who_she_is();
    const bool is_heifer = asked_.record->heifer_or_cow == HeiferOrCow::heifer;
    if (const LifeEventTold* calving = last_calving_of(cow_); is_heifer && calving != nullptr) {
      refuse(name_ + " calved on " + to_text(calving->day) + " and is said to be a heifer", "");
    }
    for (const LifeEventTold& event : asked_.record->events) compare(event);
    if (asked_.record->finding) compare_finding(asked_.record->finding->day);
    return std::move(faults_);
  }

 private:
  void refuse(std::string message, std::string token) {
    faults_.push_back(list_unreadable(asked_.record->line, std::move(message), std::move(token),
                                      "Mend the line; if the records are wrong, mend them first."));
  }

  void ask(std::string message, std::string token, std::string remedy) {
    if (is_sure_) return;
    faults_.push_back({.slug = "answer-needed",
                       .message = std::move(message),
                       .token = std::move(token),
                       .line = asked_.record->line,
                       .remedy = std::move(remedy)});
  }

  void ask_who_she_is() {
    const std::string sure = "If she has a new one, or the other was wrong, say --sure.";
    if (is_number_new(herd_, cow_.row.cow, asked_) && !cow_.row.number.empty()) {
      ask("she is " + name_ + " on record, and here " + asked_.number, asked_.number,
          "If her number is another one now say --sure.");
    }
    const CowTagRow now = cow_.tags.empty() ? CowTagRow{} : cow_.tags.back();
    if (is_tag_new(cow_, asked_) && !now.tag.empty()) {
      ask(name_ + " is known with the tag " + tag_as_printed(now.tag), asked_.record->tag,
          sure + " If this is another cow, say first that " + name_ +
              " is gone: evenclaw cow left " + name_ + ".");
    }
    if (is_electronic_new(cow_, asked_) && !now.electronic.empty()) {
      ask(name_ + " is known with the electronic number " + now.electronic, asked_.electronic,
          sure);
    }
  }

  void compare(const LifeEventTold& told) {
    if (const LifeEventTold* known = event_of_key(cow_, told)) return compare_known(told, *known);
    const std::string day = to_text(told.day);
    const std::optional<Day>& born = cow_.facts.born;
    if (born && told.day < *born) {
      return refuse(name_ + " is told " + happened(told.event) + " on " + day +
                        ", before she was "
                        "born on " +
                        to_text(*born),
                    day);
    }
    if (told.event == LifeEvent::left) return compare_leaving(told);
    const std::optional<Day> left = left_on(cow_);
    if (left && told.day > *left && told.event != LifeEvent::arrived) {
      return refuse(name_ + " is told " + happened(told.event) + " on " + day +
                        ", after she left on " + to_text(*left),
                    day);
    }
    if (told.event == LifeEvent::calved) compare_calving(told);
  }

  void compare_finding(Day found) {
    const std::string day = to_text(found);
    const std::optional<Day>& born = cow_.facts.born;
    if (born && found < *born) {
      refuse(name_ + " is told to have had a lesion on " + day + ", before she was born on " +
                 to_text(*born),
             day);
    }
    const std::optional<Day> left = left_on(cow_);
    if (left && found > *left) {
      refuse(name_ + " is told to have had a lesion on " + day + ", after she left on " +
                 to_text(*left),
             day);
    }
  }

  void compare_known(const LifeEventTold& told, const LifeEventTold& known) {
    const bool differs = told.lactation && known.lactation && told.lactation != known.lactation;
    if (!differs) return;
    ask(name_ + "'s calving on " + to_text(told.day) + " is known to have begun lactation " +
            std::to_string(*known.lactation),
        std::to_string(*told.lactation), "If the list is right say --sure.");
  }

  void compare_calving(const LifeEventTold& told) {
    const std::string day = to_text(told.day);
    const std::optional<Day>& born = cow_.facts.born;
    if (born && told.day - *born < least_age_at_calving_days) {
      refuse(name_ + " is told to have calved on " + day +
                 ", less than a year after she was born "
                 "on " +
                 to_text(*born),
             day);
    }
    if (const LifeEventTold* near = calving_near(cow_, told)) {
      ask(name_ + " is known to have calved on " + to_text(near->day) + ", " +
              std::to_string(std::abs(told.day - near->day)) + " days apart",
          day, "If the list is right say --sure: it takes the place of the other.");
    }
  }

  void compare_leaving(const LifeEventTold& told) {
    const std::string day = to_text(told.day);
    if (cow_.last_in_crush && *cow_.last_in_crush >= told.day) {
      return refuse(name_ + " is told to have left on " + day + ", and was in the crush on " +
                        to_text(*cow_.last_in_crush),
                    day);
    }
    if (const LifeEventTold* other = other_leaving(cow_, told)) {
      ask(name_ + " is known to have left on " + to_text(other->day), day,
          "If the list is right say --sure: it takes the place of the other.");
    }
  }

  const KnownHerd& herd_;
  const KnownCow& cow_;
  const RecordAsked& asked_;
  bool is_sure_;
  std::string name_;
  Faults faults_;
};

std::optional<Fault> asked_of_test_number(const RecordAsked& asked) {
  const auto number = electronic_number(asked.electronic);
  if (!number || kind_of(*number) != ElectronicKind::test) return std::nullopt;
  return Fault{.slug = "answer-needed",
               .message = "numbers that begin with 999 are for trying a reader out",
               .token = asked.electronic,
               .line = asked.record->line,
               .remedy = "Read her again, or say --sure."};
}

/// Whoever told that she is gone was a person at the crush, and may have meant another cow.
bool left_by_word_alone(const KnownCow& cow) {
  const bool is_told_by_list =
      std::any_of(cow.life.begin(), cow.life.end(),
                  [](const LifeEventTold& event) { return event.event == LifeEvent::left; });
  return left_on(cow).has_value() && !is_told_by_list;
}

}  // namespace

const LifeEventTold* calving_near(const KnownCow& cow, const LifeEventTold& told) {
  for (const LifeEventTold& event : cow.life) {
    const bool is_other = event.event == LifeEvent::calved && event.day != told.day;
    if (is_other && std::abs(event.day - told.day) < shortest_between_calvings_days) return &event;
  }
  return nullptr;
}

const LifeEventTold* other_leaving(const KnownCow& cow, const LifeEventTold& told) {
  const std::optional<Day> left = left_on(cow);
  for (const LifeEventTold& event : cow.life) {
    const bool is_other = event.event == LifeEvent::left && event.day != told.day;
    if (is_other && left && event.day == *left) return &event;
  }
  return nullptr;
}

bool is_number_new(const KnownHerd& herd, CowId cow, const RecordAsked& asked) {
  if (asked.number.empty()) return false;
  const KnownCow& known = *herd.find(cow);
  if (asked.record->is_one_event && !known.numbers.empty()) return false;
  const std::vector<Carrying> carrying = herd.carrying(asked.number);
  return std::none_of(carrying.begin(), carrying.end(), [&](const Carrying& one) {
    const bool is_past = one.to && *one.to < asked.on && !left_on(known);
    return one.cow == cow && !is_past;
  });
}

bool is_tag_new(const KnownCow& cow, const RecordAsked& asked) {
  if (asked.tag.empty()) return false;
  return std::none_of(cow.tags.begin(), cow.tags.end(),
                      [&](const CowTagRow& row) { return tag_key(row.tag) == asked.tag; });
}

bool is_electronic_new(const KnownCow& cow, const RecordAsked& asked) {
  if (asked.electronic.empty()) return false;
  return std::none_of(cow.tags.begin(), cow.tags.end(),
                      [&](const CowTagRow& row) { return row.electronic == asked.electronic; });
}

Faults against_record(const KnownHerd& herd, CowId cow, const RecordAsked& asked, bool is_sure) {
  const KnownCow& known = *herd.find(cow);
  Faults faults = Comparing(herd, known, asked, is_sure).faults();
  const auto test_number = asked_of_test_number(asked);
  if (test_number && !is_sure && is_electronic_new(known, asked)) faults.push_back(*test_number);
  return faults;
}

Faults against_entering(const KnownHerd& herd, const RecordAsked& asked, bool is_sure) {
  Faults faults;
  if (is_sure) return faults;
  if (const auto fault = asked_of_test_number(asked)) faults.push_back(*fault);
  for (const Carrying& one : herd.carrying(asked.number)) {
    if (!left_by_word_alone(*herd.find(one.cow))) continue;
    faults.push_back(
        {.slug = "answer-needed",
         .message = asked.number + " was said to be gone. Is this another cow with her number?",
         .token = asked.number,
         .line = asked.record->line,
         .remedy = "If she is back say so: evenclaw cow same " + asked.number + " " + asked.number +
                   "; if it is another one say --sure."});
    break;
  }
  return faults;
}

}  // namespace evenclaw
