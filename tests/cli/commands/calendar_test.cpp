// A calendar file as another program reads it: with libical, the reader of many calendars.
#include <doctest/doctest.h>
#include <libical/ical.h>

#include <map>
#include <memory>
#include <string>
#include <vector>

#include "tests/cli/one_cow.hpp"

namespace evenclaw::test {

namespace {

struct ReadEvent {
  std::string uid;
  int sequence = 0;
  std::string day;  // "20261127"
  bool is_whole_day = false;
  std::string ends;
  std::string summary;
  icalproperty_status status = ICAL_STATUS_NONE;
};

struct FreeComponent {
  void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};

constexpr const char* moved_to = "2099-05-06";
constexpr const char* moved_to_compact = "20990506";

using Component = std::unique_ptr<icalcomponent, FreeComponent>;

std::string text_or_nothing(const char* text) {
  return text == nullptr ? std::string() : std::string(text);
}

ReadEvent event_in(icalcomponent* component) {
  ReadEvent event;
  const icaltimetype begins = icalcomponent_get_dtstart(component);
  event.uid = text_or_nothing(icalcomponent_get_uid(component));
  event.sequence = icalcomponent_get_sequence(component);
  event.day = text_or_nothing(icaltime_as_ical_string(begins));
  event.is_whole_day = begins.is_date != 0;
  event.ends = text_or_nothing(icaltime_as_ical_string(icalcomponent_get_dtend(component)));
  event.summary = text_or_nothing(icalcomponent_get_summary(component));
  event.status = icalcomponent_get_status(component);
  return event;
}

/// By UID. What libical would complain about is a failure: it marks it in the component it gives.
std::map<std::string, ReadEvent> read_by_libical(const std::string& file) {
  const Component calendar(icalparser_parse_string(file.c_str()));
  REQUIRE(calendar != nullptr);
  CHECK(icalcomponent_isa(calendar.get()) == ICAL_VCALENDAR_COMPONENT);
  CHECK(icalcomponent_count_errors(calendar.get()) == 0);
  CHECK(icalrestriction_check(calendar.get()) != 0);
  CHECK(icalcomponent_count_errors(calendar.get()) == 0);
  std::map<std::string, ReadEvent> events;
  for (icalcomponent* one =
           icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT);
       one != nullptr;
       one = icalcomponent_get_next_component(calendar.get(), ICAL_VEVENT_COMPONENT)) {
    const ReadEvent event = event_in(one);
    CHECK(events.emplace(event.uid, event).second);
  }
  return events;
}

std::map<std::string, ReadEvent> calendar_of(const Workshop& workshop,
                                             const std::vector<std::string>& more = {}) {
  std::vector<std::string> words = {"calendar"};
  words.insert(words.end(), more.begin(), more.end());
  const Ran ran = workshop.run(words);
  REQUIRE(ran.exit == 0);
  return read_by_libical(ran.out);
}

const ReadEvent& the_wrap(const std::map<std::string, ReadEvent>& events) {
  for (const auto& [uid, event] : events) {
    if (has(event.summary, "wrap off")) return event;
  }
  FAIL("no wrap is due");
  return events.begin()->second;
}

}  // namespace

TEST_CASE("libical reads every task as an event of a whole day and finds nothing to complain of") {
  const OneCowRecorded home;
  const auto events = calendar_of(home.workshop);
  REQUIRE_FALSE(events.empty());
  for (const auto& [uid, event] : events) {
    CHECK(event.is_whole_day);
    CHECK(event.day.size() == 8);
    CHECK(event.ends > event.day);
    CHECK(event.status == ICAL_STATUS_CONFIRMED);
    CHECK(has(event.summary, "412: "));
  }
}

TEST_CASE("a task that was moved is the same event on another day, newer than before") {
  const OneCowRecorded home;
  const ReadEvent before = the_wrap(calendar_of(home.workshop));
  REQUIRE(
      home.workshop.run({"task", "412", "wrap off", "--move", moved_to, "--why", "holiday"}).exit ==
      0);
  const ReadEvent after = the_wrap(calendar_of(home.workshop));
  CHECK(after.uid == before.uid);
  CHECK(after.day == moved_to_compact);
  CHECK(after.sequence > before.sequence);
}

TEST_CASE("a task that is done is the same event, cancelled") {
  const OneCowRecorded home;
  const ReadEvent before = the_wrap(calendar_of(home.workshop));
  REQUIRE(home.workshop.run({"told", "412 wrap off", "--today", "2099-01-01"}).exit == 0);
  const ReadEvent after = the_wrap(calendar_of(home.workshop));
  CHECK(after.uid == before.uid);
  CHECK(after.status == ICAL_STATUS_CANCELLED);
  CHECK(after.sequence > before.sequence);
}

TEST_CASE("names with signs that calendars use themselves come through whole") {
  const Workshop workshop;
  const std::string name = "Müller; Söhne, Hof \"Zur langen Wiese am äußersten Rand der Gemeinde\"";
  REQUIRE(workshop.run({"start", name, "--new-herd", "--feet", "all"}).exit == 0);
  REQUIRE(workshop.run({"record"}, "412 LH DD raw behind; wrap on\ndone\n").exit == 0);
  const Ran ran = workshop.run({"calendar"});
  for (std::size_t at = 0; at < ran.out.size();) {
    const std::size_t end = ran.out.find("\r\n", at);
    REQUIRE(end != std::string::npos);
    CHECK(end - at <= 75);
    at = end + 2;
  }
  const Component calendar(icalparser_parse_string(ran.out.c_str()));
  icalproperty* herd = icalcomponent_get_first_property(
      icalcomponent_get_first_component(calendar.get(), ICAL_VEVENT_COMPONENT),
      ICAL_CATEGORIES_PROPERTY);
  REQUIRE(herd != nullptr);
  CHECK(text_or_nothing(icalproperty_get_categories(herd)) == name);
}

TEST_CASE("the calendar of one owner holds his tasks alone, in a file of its own") {
  const OneCowRecorded home;
  const std::string file = home.workshop.file("farmer.ics");
  const Ran written = home.workshop.run({"calendar", "--for", "farmer", "--out", file});
  CHECK(written.exit == 0);
  CHECK(has(written.out, "The calendar lies at "));
  CHECK(home.workshop.run({"calendar", "--out", file}).exit != 0);
  CHECK(calendar_of(home.workshop, {"--for", "vet"}).empty());
  CHECK(home.workshop.run({"calendar", "--for", "everybody"}).exit == 2);
}

}  // namespace evenclaw::test
