// The cows of an invented farm, living on from week to week.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "demo/beginnings.hpp"
#include "demo/complication.hpp"
#include "demo/cow.hpp"
#include "demo/episode.hpp"
#include "demo/farm.hpp"

namespace evenclaw::demo {

/// A cow that is not in the herd any more.
struct Gone {
  int number = 0;
  int born = 0;
  std::vector<int> calvings;
  int week = 0;  // the first one without her
  LeftBecause because = LeftBecause::end_of_lactation;
};

/// Cow-weeks that passed, for rates, by class of lactation: first, second, third and later.
struct WeeksLived {
  std::array<std::int64_t, 3> by_lactation{};
};

class Herd {
 public:
  /// The herd as it stands at the beginning of week 0, with sound feet. `week_of_year` is that of
  /// week 0.
  Herd(std::uint64_t seed, const Farm& farm, const Complications& complications,
       double week_of_year);

  /// One week: who leaves, who calves, who is new, and what becomes of all feet.
  void pass_week(int week, const Pressure& pressure);

  [[nodiscard]] std::vector<Cow>& cows() { return cows_; }

  [[nodiscard]] const std::vector<Cow>& cows() const { return cows_; }

  /// Null when she is not in the herd.
  [[nodiscard]] Cow* find(int number);

  [[nodiscard]] Episodes& episodes() { return episodes_; }

  [[nodiscard]] const Episodes& episodes() const { return episodes_; }

  [[nodiscard]] const std::vector<Gone>& gone() const { return gone_; }

  [[nodiscard]] const WeeksLived& lived() const { return lived_; }

  [[nodiscard]] double week_of_year(int week) const;

 private:
  void settle_first_cows();
  [[nodiscard]] int entry_week_drawn(RandomStream& draws) const;
  [[nodiscard]] bool is_time_to_calve(int week) const;
  void let_leave(int week);
  void take_in_heifers(int week);
  void bring_infection(Cow& heifer, int week);
  void pass_week_of(Cow& cow, const HerdWeek& herd);
  void pass_week_of(Cow& cow, Foot foot, int week);
  [[nodiscard]] double share_infected() const;

  std::uint64_t seed_;
  Farm farm_;
  Complications complications_;
  double week_of_year_;
  int next_number_ = 11;
  RandomStream draws_;
  std::vector<Cow> cows_;
  std::vector<Gone> gone_;
  Episodes episodes_;
  WeeksLived lived_;
};

/// The number of bad lesions on her feet.
int bad_lesions(const Cow& cow);

/// Lame on that foot: an ulcer or abscess that is not slight, foul, or a big raw sore.
bool is_lame_on(const FootState& foot);

}  // namespace evenclaw::demo
