#include "report/pdf/column_widths.hpp"

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <utility>

namespace evenclaw {

namespace {

// Columns that ask for nothing still get an equal share of nothing else to give.
constexpr double hair = 1e-3;

double sum_of(const std::vector<double>& widths) {
  return std::accumulate(widths.begin(), widths.end(), 0.0);
}

std::vector<double> in_proportion(std::vector<double> widths, double whole) {
  const double sum = sum_of(widths);
  for (double& width : widths) width *= whole / sum;
  return widths;
}

/// Who wants little more gets it; the others share what is left. `wants` is what each wants beyond
/// `widths`.
std::vector<double> with_spare(std::vector<double> widths, const std::vector<double>& wants,
                               double whole) {
  std::vector<std::size_t> order(widths.size());
  std::iota(order.begin(), order.end(), 0);
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return wants[a] < wants[b]; });
  double spare = whole - sum_of(widths);
  std::size_t left = order.size();
  for (const std::size_t column : order) {
    const double given = std::min(wants[column], spare / static_cast<double>(left));
    widths[column] += given;
    spare -= given;
    --left;
  }
  return widths;
}

}  // namespace

std::vector<double> column_widths(const std::vector<ColumnNeed>& needs, double whole) {
  std::vector<double> least;
  std::vector<double> most;
  std::vector<double> wants;
  for (const ColumnNeed& need : needs) {
    least.push_back(need.least + hair);
    most.push_back(need.most + hair);
    wants.push_back(need.most - need.least);
  }
  if (sum_of(most) <= whole) return in_proportion(std::move(most), whole);
  if (sum_of(least) <= whole) return with_spare(std::move(least), wants, whole);
  return in_proportion(std::move(least), whole);
}

}  // namespace evenclaw
