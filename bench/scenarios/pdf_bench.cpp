// The sheet of a day with sixty cows as a PDF, in a process that made one before, and as HTML.
#include <cstdio>
#include <functional>
#include <string>

#include "bench/day_of_sixty.hpp"
#include "bench/timing.hpp"
#include "core/paper/html.hpp"
#include "report/pdf/pdf.hpp"

namespace {

using namespace evenclaw;  // NOLINT(google-build-using-namespace): a program, not a header

constexpr int repeats = 31;

bench::Times time_it(const std::string& what, const std::function<std::string()>& made) {
  std::size_t size = 0;
  const bench::Times times = bench::times_of(repeats, [&] { size = made().size(); });
  bench::print_row(bench::row_in_ms(what, times, std::to_string(size / 1000) + " kB"));
  return times;
}

}  // namespace

// From the root of the repository, where the fonts lie.
int main() {
  const std::string regular = bench::bytes_of("data/fonts/b612-regular.otf");
  const std::string bold = bench::bytes_of("data/fonts/b612-bold.otf");
  const Document document = visit_sheet(bench::day_of_sixty());
  const auto sheet = [&] { return to_pdf(document, {{regular}, {bold}}); };
  if (!sheet()) {
    std::fprintf(stderr, "no PDF was made; run it from the root of the repository\n");
    return 1;
  }
  const bench::Times pdf =
      time_it("sheet of 60 cows, document to PDF", [&] { return sheet().value(); });
  const bench::Times html =
      time_it("sheet of 60 cows, document to HTML", [&] { return to_html(document); });
  bench::print_row(
      {"document to PDF / to HTML, CPU time", bench::median(pdf.cpu) / bench::median(html.cpu),
       "times", pdf.cpu.front() / html.cpu.back(), pdf.cpu.back() / html.cpu.front(), "one run"});
  return 0;
}
