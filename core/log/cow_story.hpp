// What the entries that count tell of one cow, read once and put in the order of her days.
#pragma once

#include <compare>
#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/id.hpp"
#include "core/log/bodies.hpp"
#include "core/log/entry.hpp"
#include "core/log/life_bodies.hpp"
#include "core/log/news_bodies.hpp"
#include "core/log/past_bodies.hpp"

namespace evenclaw {

/// When something was, as far as it matters for what came after what: the day it counts for, and
/// its place in the total order. The clock of the device plays no part.
struct Moment {
  Day day;
  std::size_t nth = 0;
  // NOLINTNEXTLINE(modernize-use-nullptr): the 0 of a rewritten a < b is no null pointer.
  friend auto operator<=>(const Moment&, const Moment&) = default;
};

template <class Body>
struct Told {
  const Entry* entry = nullptr;
  Body body;
  Moment moment;
};

struct NumberTold {
  CowId cow;           // of her group the one it was told of
  std::string number;  // as given
  Day valid_from;
  std::size_t nth = 0;
  bool recognised = false;  // given to a cow that was known already
  std::optional<Day> valid_to = {};
};

/// What was told of cows as which a turn of hers counted before its number was corrected. It may
/// be of a task of hers: "wrap off" was the wrap of that turn.
struct ToldOfOthers {
  std::vector<Told<TurnRecorded>> turns;
  std::vector<Told<TaskClosedBody>> news;
  std::vector<Told<TaskMoved>> moved;
};

/// Something that happened to her, as it stands after all that was told of it.
struct LifeStanding {
  const Entry* entry = nullptr;  // that told it first
  LifeEventTold told;
  std::optional<Digest> source;
  std::vector<TaskClosed> closes;
  std::size_t nth = 0;
  CowId cow;  // of her group the one it was told of
};

/// Something lists told was found on her, as it stands after all that was told of it.
struct PastStanding {
  PastFinding told;
  LesionScheme scheme = LesionScheme::icar;  // this and the source of the list that told it first
  std::optional<Digest> source;
};

struct CowStory {
  HerdId herd;
  CowId cow;                               // the smallest id of her group
  std::vector<Told<TurnRecorded>> turns;   // by moment; each foot at most once in a turn
  std::vector<Told<TaskClosedBody>> news;  // by moment
  std::vector<Told<CowLeft>> left;         // by moment
  std::vector<Told<TaskMoved>> moved;      // in the total order
  std::vector<NumberTold> numbers;         // in the total order
  std::vector<CowRegistered> registered;   // in the total order
  std::vector<LifeStanding> life;          // by day
  std::vector<PastStanding> past;          // by day
  std::vector<Told<QuestionSettled>> settled;
  ToldOfOthers of_others;
  std::vector<EntryId> in_two_versions;

  /// Nothing that counts was told of her.
  [[nodiscard]] bool empty() const {
    return turns.empty() && news.empty() && left.empty() && moved.empty() && numbers.empty() &&
           registered.empty() && life.empty() && past.empty();
  }
};

/// `group` holds at least one cow.
CowStory story_of(HerdId herd, std::span<const CowId> group, std::span<const Entry> entries);

/// The cows as which a turn counted before its number was corrected: its correction names them (its
/// visit may be among them).
std::vector<Uuid> named_besides(const Entry& turn, std::span<const CowId> group);

/// She was led into the crush: any turn but one that was not done.
bool was_there(const Told<TurnRecorded>& turn);

/// The turn stands against the word that she is gone: she was in the crush after it. On two devices
/// of one day nobody knows which came first; who was in the crush is here, unless she was told gone
/// a second time after that.
bool is_here_after(const CowStory& story, const Told<TurnRecorded>& turn,
                   const Told<CowLeft>& left);

/// The turns of each visit together, visits by the moment of their first turn.
std::vector<std::vector<const Told<TurnRecorded>*>> by_visit(const CowStory& story);

}  // namespace evenclaw
