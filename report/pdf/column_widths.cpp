#include "report/pdf/column_widths.hpp"

namespace evenclaw {

std::vector<double> column_widths(const std::vector<ColumnNeed>& needs, double whole) {
  // Columns that ask for nothing still get an equal share of nothing else to give.
  constexpr double hair = 1e-3;
  double least = 0;
  double most = 0;
  for (const ColumnNeed& need : needs) {
    least += need.least + hair;
    most += need.most + hair;
  }
  std::vector<double> widths;
  widths.reserve(needs.size());
  for (const ColumnNeed& need : needs) {
    if (most <= whole) {
      widths.push_back((need.most + hair) * whole / most);
    } else if (least <= whole) {
      const double spare = (need.most - need.least) / (most - least);
      widths.push_back(need.least + hair + (whole - least) * spare);
    } else {
      widths.push_back((need.least + hair) * whole / least);
    }
  }
  return widths;
}

}  // namespace evenclaw
