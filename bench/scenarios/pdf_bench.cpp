// The sheet of a day with sixty cows as a PDF, in a process that made one before.
#include <cstdio>
#include <fstream>
#include <iterator>
#include <string>

#include "bench/timing.hpp"
#include "report/pdf/pdf.hpp"
#include "tests/core/sheets/invented_day.hpp"

namespace {

using namespace evenclaw;  // NOLINT(google-build-using-namespace): a program, not a header

constexpr int cows = 60;
constexpr int repeats = 31;

/// Of five cows one has a case with block and vet, one a wrap, one something slight, two nothing.
void add_cow(InventedDay& day, int cow) {
  const Foot foot = cow % 2 == 0 ? Foot::lh : Foot::rh;
  const bool lame = cow % 5 == 0;
  day.turn(std::to_string(101 + cow), lame ? Reason::lame : Reason::routine);
  day.rest_fine();
  if (cow % 5 == 0) {
    day.found({foot, Claw::outside, Lesion::wla, Place::white_line_heel, Degree::bad});
    day.did({ActionKind::block_on, foot, Claw::inside});
    day.task_on(foot, Claw::none, TaskKind::vet, Owner::vet, 0);
    day.task_on(foot, Claw::inside, TaskKind::block_check, Owner::trimmer, 28);
  } else if (cow % 5 == 1) {
    day.found({foot, Claw::none, Lesion::dd, Place::behind, Degree::not_called, DdStage::raw});
    day.did({ActionKind::wrap_on, foot});
    day.task_on(foot, Claw::none, TaskKind::wrap_off, Owner::farmer, 3);
  } else if (cow % 5 == 2) {
    day.found({foot, Claw::outside, Lesion::su, Place::sole_middle, Degree::slight});
  }
}

Document day_of_sixty() {
  InventedDay day("Bench Farm", four_feet);
  for (int cow = 0; cow < cows; ++cow) add_cow(day, cow);
  return visit_sheet(day.input());
}

std::string bytes_of(const char* file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

}  // namespace

// From the root of the repository, where the fonts lie.
int main() {
  const std::string regular = bytes_of("data/fonts/b612-regular.otf");
  const std::string bold = bytes_of("data/fonts/b612-bold.otf");
  const Document document = day_of_sixty();
  std::size_t size = 0;
  const auto seconds = bench::seconds_of(repeats, [&] {
    const auto made = to_pdf(document, {{regular}, {bold}});
    size = made ? made->size() : 0;
  });
  if (size == 0) {
    std::fprintf(stderr, "no PDF was made; run it from the root of the repository\n");
    return 1;
  }
  bench::print_row({"sheet of " + std::to_string(cows) + " cows as PDF",
                    bench::median(seconds) * 1e3, "ms", seconds.front() * 1e3, seconds.back() * 1e3,
                    std::to_string(repeats) + " repeats, " + std::to_string(size / 1000) + " kB"});
  return 0;
}
