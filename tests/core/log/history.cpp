#include "tests/core/log/history.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <utility>

#include "core/base/random.hpp"
#include "core/log/body.hpp"
#include "core/log/merge.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

constexpr std::int64_t ms_a_day = 86'400'000;
constexpr std::int64_t ten_years = 3652 * ms_a_day;
constexpr std::int64_t first_morning = 1'790'000'000'000;
constexpr Day first_day{20'717};
constexpr std::uint32_t devices_in_play = 3;
constexpr std::uint32_t cows_in_play = 4;

struct Device {
  DeviceId id;
  std::int64_t clock = first_morning;
  std::int64_t seq = 0;
  std::int64_t order = 0;
  EntrySet known;
};

class HistoryMaker {
 public:
  explicit HistoryMaker(std::uint64_t seed) : random_(seed, 0) {
    history_.herd = HerdId{fresh_id()};
    for (Device& device : devices_) device.id = DeviceId{fresh_id()};
    for (CowId& cow : cows_) cow = CowId{fresh_id()};
    std::sort(cows_.begin(), cows_.end());
  }

  History make(int length) {
    while (static_cast<int>(history_.entries.size()) < length) {
      Device& device = devices_[random_.below(devices_in_play)];
      hear_of_others(device);
      device.clock += random_.below(600'000);
      if (random_.chance(0.03)) device.clock += random_.chance(0.5) ? ten_years : -ten_years;
      write_something(device);
    }
    return std::move(history_);
  }

 private:
  template <class T>
  const T& one_of(const std::vector<T>& values) {
    return values[random_.below(static_cast<std::uint32_t>(values.size()))];
  }

  template <class E>
  E any() {
    constexpr std::size_t count = std::size(EnumWords<E>::table);
    return EnumWords<E>::table[random_.below(static_cast<std::uint32_t>(count))].value;
  }

  // Made ids of version 7 all look alike to the log; which they are plays no part.
  Uuid fresh_id() {
    Uuid id;
    for (std::uint8_t& byte : id.bytes) byte = static_cast<std::uint8_t>(random_.below(256));
    return id;
  }

  void hear_of_others(Device& device) {
    if (!random_.chance(0.4)) return;
    const Device& other = devices_[random_.below(devices_in_play)];
    for (const Entry& entry : other.known.everything()) {
      if (!random_.chance(0.6)) continue;
      device.known.add(entry);
      device.order = std::max(device.order, entry.envelope.order);
    }
  }

  Envelope next_envelope(Device& device) {
    Envelope envelope;
    envelope.scope = history_.herd.value;
    envelope.id = EntryId{fresh_id()};
    envelope.device = device.id;
    envelope.seq = ++device.seq;
    envelope.order = ++device.order;
    envelope.at = {device.clock, 60};
    return envelope;
  }

  void keep(Device& device, Entry entry) {
    device.known.add(entry);
    history_.entries.push_back(std::move(entry));
  }

  template <class Body>
  void write(Device& device, const Body& body) {
    keep(device, entry_of(next_envelope(device), body));
  }

  // An entry that speaks of another names its subjects too.
  template <class Body>
  void write_about(Device& device, const Body& body, const Entry& other) {
    Envelope envelope = next_envelope(device);
    envelope.subjects = other.envelope.subjects;
    keep(device, entry_of(std::move(envelope), body));
  }

  std::vector<Entry> known_of(const Device& device, std::string_view kind) {
    std::vector<Entry> found;
    for (Entry& entry : device.known.shown()) {
      if (kind.empty() || entry.envelope.kind == kind) found.push_back(std::move(entry));
    }
    return found;
  }

  CowId any_cow() { return cows_[random_.below(cows_in_play)]; }

  Day any_day() { return first_day + 14 * static_cast<int>(random_.below(3)); }

  VisitId any_visit() { return visit_id(history_.herd, any_day(), 1); }

  FootSet any_feet() {
    FootSet feet;
    for (const Foot foot : all_feet) {
      if (random_.chance(0.4)) feet.add(foot);
    }
    return feet;
  }

  FootCall any_call() {
    FootCall call;
    call.foot = any<Foot>();
    call.state = any<FootState>();
    while (random_.chance(0.4)) {
      Finding finding;
      finding.claw = any<Claw>();
      finding.lesion = random_.chance(0.7) ? Lesion::wl : any<Lesion>();
      finding.place = random_.chance(0.5) ? Place::white_line_heel : any<Place>();
      finding.degree = any<Degree>();
      call.findings.push_back(finding);
    }
    while (random_.chance(0.5)) {
      Action action;
      action.kind = any<ActionKind>();
      action.claw = any<Claw>();
      call.actions.push_back(action);
    }
    return call;
  }

  std::vector<TaskMade> any_tasks(EntryId entry) {
    std::vector<TaskMade> tasks;
    while (random_.chance(0.4)) {
      TaskMade task;
      task.task = task_id(entry, std::to_string(tasks.size() + 1));
      task.kind = any<TaskKind>();
      task.foot = any<Foot>();
      task.due = any_day();
      tasks_.push_back(task.task);
      tasks.push_back(task);
    }
    return tasks;
  }

  std::vector<TaskClosed> any_closes() {
    std::vector<TaskClosed> closes;
    while (!tasks_.empty() && random_.chance(0.4)) closes.push_back({one_of(tasks_), "done"});
    return closes;
  }

  TurnRecorded any_turn(EntryId entry) {
    TurnRecorded body;
    body.visit = any_visit();
    body.cow = any_cow();
    body.words = {"as said"};
    body.turn.cow.known = any<CowKnown>();
    body.turn.cow.number = std::to_string(410 + random_.below(4));
    body.turn.lame = any_feet();
    body.turn.end = random_.chance(0.8) ? TurnEnd::done : any<TurnEnd>();
    while (random_.chance(0.7)) body.turn.feet.push_back(any_call());
    body.tasks = any_tasks(entry);
    body.closes = any_closes();
    return body;
  }

  void write_turn(Device& device) {
    Envelope envelope = next_envelope(device);
    const TurnRecorded body = any_turn(envelope.id);
    keep(device, entry_of(std::move(envelope), body));
  }

  void open_visit(Device& device) {
    const Day day = any_day();
    write(device, VisitOpened{visit_id(history_.herd, day, 1), day, 1, any_feet()});
  }

  void correct_visit(Device& device) {
    VisitCorrected body;
    body.visit = any_visit();
    if (random_.chance(0.7)) body.day = any_day() + 3;
    if (random_.chance(0.5)) body.todays_feet = any_feet();
    write(device, body);
  }

  void tell_news(Device& device) {
    Envelope envelope = next_envelope(device);
    TaskClosedBody body;
    body.cow = any_cow();
    body.day = any_day() + 1;
    body.news = any<News>();
    body.feet = any_feet();
    body.closes = any_closes();
    body.tasks = any_tasks(envelope.id);
    keep(device, entry_of(std::move(envelope), body));
  }

  void move_task(Device& device) {
    if (tasks_.empty()) return;
    write(device, TaskMoved{any_cow(), one_of(tasks_), any_day(), any_day() + 7, "asked"});
  }

  void name_cow(Device& device) {
    const std::string number = "0" + std::to_string(410 + random_.below(4));
    if (random_.chance(0.5)) {
      write(device, CowRegistered{any_cow(), number, any_day()});
    } else {
      write(device, NumberGiven{any_cow(), number, any_day()});
    }
  }

  void unite_or_part(Device& device) {
    const std::vector<Entry> unions = known_of(device, SameCow::kind);
    if (unions.empty() || random_.chance(0.5)) {
      write(device, SameCow{any_cow(), any_cow()});
    } else {
      const Entry& same = one_of(unions);
      write_about(device, SameCowTakenBack{same.envelope.id}, same);
    }
  }

  void redact(Device& device) {
    const std::vector<Entry> known = known_of(device, "");
    if (known.empty()) return;
    const Entry& target = one_of(known);
    write_about(device, Redact{target.envelope.id, "asked to"}, target);
  }

  void correct_turn(Device& device) {
    const std::vector<Entry> turns = known_of(device, TurnRecorded::kind);
    if (turns.empty()) return;
    const Entry& target = one_of(turns);
    Envelope envelope = next_envelope(device);
    envelope.supersedes = target.envelope.id;
    // A faulty device may leave out what it corrects.
    if (random_.chance(0.9)) envelope.subjects = target.envelope.subjects;
    const TurnRecorded body = any_turn(envelope.id);
    keep(device, entry_of(std::move(envelope), body));
  }

  // Two entries that each say they correct the other: no honest device writes that.
  void write_ring(Device& device) {
    Envelope first = next_envelope(device);
    const EntryId first_id = first.id;
    Envelope second = next_envelope(device);
    first.supersedes = second.id;
    second.supersedes = first_id;
    const TurnRecorded one = any_turn(first.id);
    const TurnRecorded other = any_turn(second.id);
    for (Envelope* envelope : {&first, &second}) {
      envelope->subjects = subjects_named(one);
      for (const Uuid& subject : subjects_named(other)) envelope->subjects.push_back(subject);
    }
    keep(device, entry_of(std::move(first), one));
    keep(device, entry_of(std::move(second), other));
  }

  void write_unknown(Device& device) {
    Envelope envelope = next_envelope(device);
    envelope.subjects = {any_cow().value, any_visit().value};
    envelope.kind = random_.chance(0.5) ? "scored" : std::string(TurnRecorded::kind);
    envelope.version = 7;
    keep(device, make_entry(std::move(envelope), R"({"of_a_later":"program"})"));
  }

  // One id with other bytes: a device that was copied without telling.
  void forge(Device& device) {
    const std::vector<Entry> turns = known_of(device, TurnRecorded::kind);
    if (turns.empty()) return;
    Envelope envelope = one_of(turns).envelope;
    const TurnRecorded body = any_turn(envelope.id);
    keep(device, entry_of(std::move(envelope), body));
  }

  void write_something(Device& device) {
    struct Act {
      std::uint32_t weight;
      void (HistoryMaker::*act)(Device&);
    };

    static constexpr Act acts[] = {
        {40, &HistoryMaker::write_turn},    {12, &HistoryMaker::open_visit},
        {6, &HistoryMaker::correct_visit},  {8, &HistoryMaker::tell_news},
        {4, &HistoryMaker::move_task},      {8, &HistoryMaker::name_cow},
        {12, &HistoryMaker::unite_or_part}, {5, &HistoryMaker::redact},
        {12, &HistoryMaker::correct_turn},  {1, &HistoryMaker::write_ring},
        {3, &HistoryMaker::write_unknown},  {3, &HistoryMaker::forge},
        {8, &HistoryMaker::score_cows},     {5, &HistoryMaker::walk_farm},
        {4, &HistoryMaker::change_farm},    {4, &HistoryMaker::close_visit},
        {5, &HistoryMaker::leave},          {6, &HistoryMaker::tell_life},
        {6, &HistoryMaker::tell_past}};
    std::uint32_t all = 0;
    for (const Act& act : acts) all += act.weight;
    std::uint32_t drawn = random_.below(all);
    for (const Act& act : acts) {
      if (drawn < act.weight) return (this->*act.act)(device);
      drawn -= act.weight;
    }
  }

  void close_visit(Device& device) { write(device, VisitClosed{any_visit(), {}}); }

  void score_cows(Device& device) {
    MobilityScoring body;
    body.day = any_day();
    body.scale = any<MobilityScale>();
    body.scoring = scoring_id(history_.herd, body.day, body.scale, "");
    while (random_.chance(0.7)) {
      CowScored cow;
      cow.number = std::to_string(410 + random_.below(3));
      if (random_.chance(0.5)) cow.cow = any_cow();
      if (random_.chance(0.9)) cow.score = static_cast<std::int32_t>(random_.below(6));
      cow.feet = any_feet();
      cow.mends = random_.chance(0.3);
      cow.scrapped = random_.chance(0.1);
      body.cows.push_back(cow);
    }
    while (random_.chance(0.3)) {
      const auto animals = static_cast<std::int32_t>(random_.below(40));
      body.counted.push_back(
          {animals, static_cast<std::int32_t>(random_.below(6)), random_.chance(0.3)});
    }
    if (random_.chance(0.5)) body.present = static_cast<std::int32_t>(random_.below(100));
    write(device, body);
  }

  void walk_farm(Device& device) {
    FarmWalk body;
    body.day = any_day();
    body.walk = walk_id(history_.herd, body.day, "");
    while (random_.chance(0.7)) {
      WalkMeasured measured;
      measured.measure = any<WalkMeasure>();
      measured.not_looked_at = random_.chance(0.2);
      if (!measured.not_looked_at) measured.value = static_cast<std::int32_t>(random_.below(3));
      measured.mends = random_.chance(0.3);
      measured.scrapped = random_.chance(0.1);
      body.measured.push_back(measured);
    }
    write(device, body);
  }

  void change_farm(Device& device) {
    FarmChange body;
    body.day = any_day();
    body.driver = any<ChangeDriver>();
    body.change = change_id(history_.herd, {body.driver, "", "", first_day});
    body.told.why = any<ChangeWhy>();
    body.told.state = any<ChangeState>();
    if (random_.chance(0.5)) body.told.decided = any_day();
    body.scrapped = random_.chance(0.1);
    write(device, body);
  }

  void leave(Device& device) {
    CowLeft body;
    body.cow = any_cow();
    body.day = any_day();
    body.words = "sold";
    body.closes = any_closes();
    write(device, body);
  }

  void tell_life(Device& device) {
    LifeTold body;
    body.cow = any_cow();
    while (random_.chance(0.6)) {
      LifeEventTold event{any<LifeEvent>(), any_day()};
      if (random_.chance(0.5)) event.lactation = static_cast<std::int32_t>(1 + random_.below(5));
      event.way = any<LeavingWay>();
      event.reason = any<LeavingReason>();
      body.events.push_back(event);
    }
    while (random_.chance(0.3)) body.not_so.push_back({any<LifeEvent>(), any_day()});
    body.closes = any_closes();
    write(device, body);
  }

  // Few of everything, so that the same is told again and taken back.
  PastFinding any_past() {
    PastFinding told;
    told.day = any_day();
    if (random_.chance(0.7)) told.foot = any<Foot>();
    told.lesion = random_.chance(0.7) ? Lesion::wl : any<Lesion>();
    if (random_.chance(0.2)) told.claw = any<Claw>();
    if (random_.chance(0.2)) told.place = any<Place>();
    if (random_.chance(0.1)) told.zone = static_cast<std::int32_t>(random_.below(13));
    told.words = random_.chance(0.5) ? "A" : "B";
    if (random_.chance(0.3)) told.remark = random_.chance(0.5) ? "block" : "spray / block";
    return told;
  }

  void tell_past(Device& device) {
    PastFindingsTold body;
    body.cow = any_cow();
    body.scheme = any<LesionScheme>();
    while (random_.chance(0.6)) body.findings.push_back(any_past());
    while (random_.chance(0.3)) body.not_so.push_back(any_past());
    write(device, body);
  }

  RandomStream random_;
  History history_;
  std::array<Device, devices_in_play> devices_;
  std::array<CowId, cows_in_play> cows_;
  std::vector<TaskId> tasks_;
};

}  // namespace

History make_history(std::uint64_t seed, int length) {
  return HistoryMaker(seed).make(length);
}

}  // namespace evenclaw
