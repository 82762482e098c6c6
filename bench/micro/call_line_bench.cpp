// Called lines read per second, and the words offered for a half line.
#include <algorithm>
#include <cstdio>
#include <string>
#include <vector>

#include "bench/called_lines.hpp"
#include "bench/timing.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"

namespace {

using namespace evenclaw;  // NOLINT(google-build-using-namespace): a program, not a header

LineContext in_the_crush() {
  LineContext context;
  context.visit_day = {20'000};
  context.cow_open = true;
  return context;
}

struct Read {
  std::size_t clauses = 0;
  std::size_t refused = 0;
};

Read all_read(const std::vector<std::string>& lines, const LineContext& context) {
  Read all;
  for (const std::string& line : lines) {
    const auto read = read_line(line, context, english());
    all.clauses += read ? read->clauses.size() : 0;
    all.refused += read ? 0 : 1;
  }
  return all;
}

int measure(const std::vector<std::string>& lines) {
  constexpr int rounds = 200;
  const LineContext context = in_the_crush();
  Read last;
  const auto reading = bench::seconds_of(5, [&] {
    for (int round = 0; round < rounds; ++round) last = all_read(lines, context);
  });
  if (last.clauses == 0 || last.refused > 0) {
    std::fprintf(stderr, "%zu lines of the example were refused\n", last.refused);
    return 1;
  }
  const double lines_read = rounds * static_cast<double>(lines.size());
  bench::Row read = bench::rate_of("call lines read", "lines/s", lines_read, reading);
  read.note += ", lines of the example visits";
  bench::print_row(read);
  const auto offering = bench::seconds_of(5, [&] {
    for (const std::string& line : lines) {
      (void)what_may_follow(line.substr(0, line.size() / 2), context, english());
    }
  });
  const double offered = static_cast<double>(lines.size()) / 1000;
  bench::print_row({"words offered for a half line", bench::median(offering) / offered, "ms",
                    offering.front() / offered, offering.back() / offered,
                    std::to_string(offering.size()) + " repeats, per half line"});
  return 0;
}

}  // namespace

int main() {
  const auto lines = evenclaw::bench::called_lines();
  if (lines.empty()) {
    std::fprintf(stderr, "run it from the root of the repository\n");
    return 1;
  }
  return measure(lines);
}
