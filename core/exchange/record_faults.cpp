#include "core/exchange/record_faults.hpp"

#include <string>
#include <utility>

#include "core/exchange/csv.hpp"

namespace evenclaw {

namespace {

HerdColumn column_telling(const HerdRecord& record, LifeEvent event) {
  if (record.is_one_event) return HerdColumn::day;
  switch (event) {
    case LifeEvent::arrived:
      return HerdColumn::arrived;
    case LifeEvent::calved:
      return HerdColumn::calved;
    case LifeEvent::dried_off:
      return HerdColumn::dry_off;
    case LifeEvent::left:
      return HerdColumn::left;
  }
  return HerdColumn::day;
}

std::string told(LifeEvent event) {
  switch (event) {
    case LifeEvent::arrived:
      return "arrived";
    case LifeEvent::calved:
      return "calved";
    case LifeEvent::dried_off:
      return "was dried off";
    case LifeEvent::left:
      return "left";
  }
  return {};
}

class Checking {
 public:
  Checking(const HerdRecord& record, Day today) : record_(record), today_(today) {}

  std::vector<RecordFault> faults() && {
    if (record_.number.empty() && record_.tag.empty() && record_.electronic.empty()) {
      refuse(HerdColumn::number, "nothing tells which cow this is", "",
             "Give her herd number, ear tag or electronic number.");
    }
    if (record_.born && *record_.born > today_)
      in_future(HerdColumn::born, *record_.born, "was born");
    for (const LifeEventTold& event : record_.events) check(event);
    if (record_.finding && record_.finding->day > today_) {
      in_future(HerdColumn::day, record_.finding->day, "was found to have a lesion");
    }
    return std::move(faults_);
  }

 private:
  void refuse(HerdColumn column, std::string message, std::string token, std::string remedy) {
    faults_.push_back(
        {column, list_unreadable(0, std::move(message), std::move(token), std::move(remedy))});
  }

  void in_future(HerdColumn column, Day day, const std::string& what) {
    faults_.push_back({column,
                       {.slug = "date-in-future",
                        .message = to_text(day) + " is after the day from which the list holds, " +
                                   to_text(today_) + ", and it is told that she " + what,
                        .token = to_text(day),
                        .remedy = "Mend the day; if the list is of a later day say so: --from."}});
  }

  void check(const LifeEventTold& event) {
    const HerdColumn column = column_telling(record_, event.event);
    const std::string day = to_text(event.day);
    if (event.day > today_) in_future(column, event.day, told(event.event));
    if (record_.born && event.day < *record_.born) {
      refuse(column,
             "she " + told(event.event) + " on " + day + ", before she was born on " +
                 to_text(*record_.born),
             day, "Mend the day that is wrong.");
    } else if (event.event == LifeEvent::calved) {
      check_calving(event, column);
    }
    for (const LifeEventTold& other : record_.events) {
      const bool is_after_leaving = other.event == LifeEvent::left && other.day < event.day &&
                                    event.event != LifeEvent::arrived;
      if (!is_after_leaving) continue;
      refuse(
          column,
          "she " + told(event.event) + " on " + day + ", after she left on " + to_text(other.day),
          day, "Mend the day that is wrong.");
    }
  }

  void check_calving(const LifeEventTold& event, HerdColumn column) {
    const std::string day = to_text(event.day);
    if (record_.born && event.day - *record_.born < least_age_at_calving_days) {
      refuse(column,
             "she calved on " + day + ", less than a year after she was born on " +
                 to_text(*record_.born),
             day, "Mend the day that is wrong.");
    }
    if (record_.heifer_or_cow == HeiferOrCow::heifer) {
      refuse(column, "she calved on " + day + " and is said to be a heifer", day,
             "Leave out the calving, or say that she is a cow; a lactation of 0 is a heifer.");
    }
  }

  const HerdRecord& record_;
  Day today_;
  std::vector<RecordFault> faults_;
};

}  // namespace

std::vector<RecordFault> faults_of_record(const HerdRecord& record, Day today) {
  return Checking(record, today).faults();
}

}  // namespace evenclaw
