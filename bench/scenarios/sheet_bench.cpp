// The sheet of a day with sixty cows, from its rows to the page a tablet shows; built natively and
// to WebAssembly.
#include <cstdio>
#include <string>

#include "bench/day_of_sixty.hpp"
#include "bench/timing.hpp"
#include "core/paper/html.hpp"
#include "core/paper/text.hpp"

namespace {

using namespace evenclaw;  // NOLINT(google-build-using-namespace): a program, not a header

constexpr int repeats = 31;

#ifdef __EMSCRIPTEN__
constexpr const char* where = ", WebAssembly";
#else
constexpr const char* where = "";
#endif

template <class Made>
void time_it(const std::string& what, Made&& made) {
  std::size_t size = 0;
  const auto times = bench::times_of(repeats, [&] { size = made().size(); });
  bench::print_row(bench::row_in_ms(what + where, times, std::to_string(size / 1000) + " kB"));
}

}  // namespace

// From the root of the repository, where the fonts lie.
int main() {
  const VisitSheetInput input = bench::day_of_sixty();
  const std::string regular = bench::bytes_of("data/fonts/b612-regular.woff2");
  const std::string bold = bench::bytes_of("data/fonts/b612-bold.woff2");
  if (regular.empty() || bold.empty()) {
    std::fprintf(stderr, "no fonts; run it from the root of the repository\n");
    return 1;
  }
  time_it("sheet of 60 cows as HTML", [&] { return to_html(visit_sheet(input)); });
  time_it("sheet of 60 cows as HTML with its fonts inside", [&] {
    return to_html(visit_sheet(input), {{"B612", false, regular}, {"B612", true, bold}});
  });
  time_it("sheet of 60 cows as plain text", [&] { return to_plain_text(visit_sheet(input)); });
  return 0;
}
