#include "demo/claw_table.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/base/date.hpp"
#include "demo/streams.hpp"

namespace evenclaw::demo {

namespace {

constexpr ClawTableTruth truth;
constexpr double days_a_year = 365.25;
constexpr int last_parity = 9;

/// Shares of the seven lesions, as limits of a draw from 0 to 1.
constexpr std::array<double, 6> lesion_limits = {0.34, 0.52, 0.68, 0.80, 0.90, 0.96};
constexpr std::array<double, 2> severity_limits = {0.6, 0.9};

std::int32_t first_day() {
  return day_of(CivilDate{2020, 1, 1})->since_epoch;
}

template <std::size_t n>
std::uint8_t step_of(const std::array<double, n>& limits, double u) {
  std::uint8_t step = 1;
  for (const double limit : limits) step = static_cast<std::uint8_t>(step + (u >= limit ? 1 : 0));
  return step;
}

struct CowVisit {
  std::uint32_t farm = 0;
  std::uint32_t cow = 0;
  int parity = 1;
  int dim = 1;
  int day = 0;         // since 2020-01-01
  double effects = 0;  // of farm and cow
};

/// The odds of a lesion on an inside claw in front.
double odds_of(const CowVisit& visit) {
  constexpr double two_pi = 6.283185307179586;
  const double turn = two_pi / days_a_year * visit.day;
  const double parity = visit.parity == 1   ? 0.0
                        : visit.parity == 2 ? truth.parity_2
                                            : truth.parity_3;
  return std::exp(truth.intercept + parity + truth.dim_per_day * (visit.dim - 150) +
                  truth.season_sine * std::sin(turn) + truth.season_cosine * std::cos(turn) +
                  visit.effects);
}

void add_finding(ClawColumns& columns, RandomStream& draws, bool is_there) {
  if (!is_there) {
    columns.zone.push_back(0);
    columns.lesion.push_back(0);
    columns.severity.push_back(0);
    return;
  }
  columns.lesion.push_back(step_of(lesion_limits, draws.uniform()));
  columns.zone.push_back(static_cast<std::uint8_t>(1 + draws.below(12)));
  columns.severity.push_back(step_of(severity_limits, draws.uniform()));
}

void add_visit(ClawColumns& columns, const CowVisit& visit, RandomStream& draws) {
  static const double hind = std::exp(truth.hind);
  static const double outside = std::exp(truth.outside);
  static const std::int32_t day_0 = first_day();
  constexpr double two_to_32 = 4294967296.0;
  const double odds = odds_of(visit);
  for (int place = 0; place < 8; ++place) {
    const int foot = place / 2;
    const int claw = place % 2;
    const double of_claw = odds * (foot >= 2 ? hind : 1.0) * (claw == 0 ? outside : 1.0);
    const double chance = of_claw / (1.0 + of_claw);
    columns.farm.push_back(visit.farm);
    columns.cow.push_back(visit.cow);
    columns.parity.push_back(static_cast<std::uint8_t>(visit.parity));
    columns.dim.push_back(static_cast<std::uint16_t>(visit.dim));
    columns.date.push_back(day_0 + visit.day);
    columns.foot.push_back(static_cast<std::uint8_t>(foot));
    columns.claw.push_back(static_cast<std::uint8_t>(claw));
    add_finding(columns, draws, draws.next_u32() < chance * two_to_32);
  }
}

/// One to three visits, three to seven months apart; past day 420 she has calved again.
void add_cow(ClawColumns& columns, CowVisit visit, RandomStream& draws) {
  visit.effects += truth.cow_spread * draws.normal();
  visit.parity = std::min(1 + static_cast<int>(1.6 * draws.exponential()), last_parity);
  const int visits = 1 + static_cast<int>(draws.below(3));
  visit.day = static_cast<int>(draws.below(1100));
  visit.dim = 1 + static_cast<int>(draws.below(300));
  for (int at = 0; at < visits; ++at) {
    add_visit(columns, visit, draws);
    visit.day += 90 + static_cast<int>(draws.below(120));
    visit.dim += 120;
    if (visit.dim <= 420) continue;
    visit.dim -= 400;
    visit.parity = std::min(visit.parity + 1, last_parity);
  }
}

}  // namespace

void ClawColumns::clear() {
  cut_to(0);
}

void ClawColumns::cut_to(std::size_t rows) {
  farm.resize(rows);
  cow.resize(rows);
  parity.resize(rows);
  dim.resize(rows);
  date.resize(rows);
  foot.resize(rows);
  claw.resize(rows);
  zone.resize(rows);
  lesion.resize(rows);
  severity.resize(rows);
}

bool ClawTable::next(ClawColumns& columns, std::size_t most) {
  columns.clear();
  const std::uint64_t left = wanted_.rows - given_;
  while (columns.size() < std::min<std::uint64_t>(left, most)) {
    ++farm_;
    RandomStream draws = stream_for(wanted_.seed, DrawnFor::claw_table, 0, farm_);
    CowVisit visit;
    visit.farm = farm_;
    visit.effects = truth.farm_spread * draws.normal();
    const int cows = 20 + static_cast<int>(draws.below(60));
    for (int at = 0; at < cows; ++at) {
      visit.cow = ++cow_;
      add_cow(columns, visit, draws);
    }
  }
  if (columns.size() > left) columns.cut_to(left);
  given_ += columns.size();
  return columns.size() > 0;
}

}  // namespace evenclaw::demo
