// A log of invented herds for the benchmarks: many visits to the same cows, most with nothing
// found.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <variant>
#include <vector>

#include "core/log/body.hpp"
#include "core/ports/store.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw::bench {

inline constexpr int cows_per_herd = 250;
inline constexpr int visits_per_herd = 40;
inline constexpr int days_between_visits = 21;
inline constexpr int entries_per_herd = 1 + visits_per_herd * (1 + cows_per_herd);

// What is found of ten cows: most have nothing, some a case with a block or a wrap.
inline constexpr std::array<const char*, 10> said_of_a_cow = {
    "routine; nothing found",
    "routine; nothing found",
    "routine; nothing found",
    "routine; rest fine",
    "routine; LH outside bruise middle, slight; rest fine",
    "routine; both hinds heel horn erosion, slight; rest fine",
    "lame RH; RH DD M2 behind; spray; wrap on; rest fine",
    "lame LH; LH outside white line abscess heel, bad; opened; block on inside; rest fine",
    "lame RH; RH outside sole ulcer middle, plain; block on inside; see again 28d; rest fine",
    "fresh; LF outside white line fissure toe, slight; rest fine"};

/// Straight into the store, without rows.
class LogWriter {
 public:
  explicit LogWriter(Store& store) : store_(store) {
    business_ = {uuid_derived("bench business")};
    device_ = {uuid_derived("bench device")};
  }

  // False when a line of ours is refused or the store fails.
  bool write_herds(int herds) {
    if (!read_turns() || !store_.set_identity(business_, device_)) return false;
    for (int herd = 0; herd < herds; ++herd) {
      if (!write_herd("bench herd " + std::to_string(herd))) return false;
    }
    return flush();
  }

  /// Herds `first` to before `end` with their names and nothing else.
  bool write_names(int first, int end) {
    for (int herd = first; herd < end; ++herd) {
      const std::string name = "bench herd " + std::to_string(herd);
      herd_ = {uuid_derived(name)};
      seq_ = 0;
      if (!add(HerdRegistered{name})) return false;
    }
    return flush();
  }

 private:
  bool read_turns() {
    LineContext context;
    context.visit_day = {20'000};
    context.cow_open = true;
    for (const char* said : said_of_a_cow) {
      const auto line = read_line(said, context, english());
      if (!line) return false;
      TurnDraft draft;
      for (const Clause& clause : line->clauses) {
        if (!add_clause(draft, std::get<TurnClause>(clause))) return false;
      }
      turns_.push_back(settled(draft.turn, four_feet));
    }
    return true;
  }

  bool write_herd(const std::string& name) {
    herd_ = {uuid_derived(name)};
    seq_ = 0;
    if (!add(HerdRegistered{name})) return false;
    const VisitId first = visit_id(herd_, {18'000}, 1);
    for (int number = 0; number < visits_per_herd; ++number) {
      const Day day{18'000 + number * days_between_visits};
      VisitOpened opened;
      opened.visit = visit_id(herd_, day, 1);
      opened.day = day;
      opened.todays_feet = four_feet;
      if (!add(opened)) return false;
      for (int cow = 0; cow < cows_per_herd; ++cow) {
        if (!write_turn(opened.visit, day, first, cow + 1)) return false;
      }
    }
    return true;
  }

  bool write_turn(VisitId visit, Day day, VisitId first, int number) {
    TurnRecorded body;
    const auto said = static_cast<std::size_t>(number + day.since_epoch) % turns_.size();
    body.visit = visit;
    body.turn = turns_[said];
    body.turn.cow.number = std::to_string(number);
    body.cow = numbered_cow_id(herd_, body.turn.cow.number, first);
    body.words = {body.turn.cow.number + " " + said_of_a_cow[said]};
    body.tasks = tasks_made(body.turn, {}, day, next_id());
    return add(body);
  }

  [[nodiscard]] EntryId next_id() const {
    return {uuid_derived(to_text(herd_) + std::to_string(seq_ + 1))};
  }

  template <class Body>
  bool add(const Body& body) {
    Envelope envelope;
    envelope.business = business_;
    envelope.scope = herd_.value;
    envelope.id = next_id();
    envelope.device = device_;
    envelope.seq = ++seq_;
    envelope.order = seq_;
    envelope.at = {1'700'000'000'000 + seq_, 60};
    batch_.entries.push_back(entry_of(std::move(envelope), body));
    return batch_.entries.size() < 2'000 || flush();
  }

  bool flush() {
    const bool written = static_cast<bool>(store_.write(batch_));
    batch_ = {};
    return written;
  }

  Store& store_;
  BusinessId business_;
  DeviceId device_;
  HerdId herd_;
  std::int64_t seq_ = 0;
  std::vector<Turn> turns_;
  Write batch_;
};

}  // namespace evenclaw::bench
