// Lines read per second, and offers made per second, over a day as it is typed: the median of five.
#include <algorithm>
#include <chrono>
#include <cstddef>
#include <cstdio>
#include <string_view>
#include <vector>

#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view day_of_lines[] = {
    "today hinds",
    "caller Anna, writer Ben",
    "412, 513 wraps off; 77 gone; 620 still lame",
    "412 lame LH",
    "LH outside white line abscess heel, bad; block on inside; see again 28d",
    "RH DD raw behind; spray; wrap on, off Thu",
    "rest fine",
    "413 nothing found",
    "414 routine",
    "both hinds outsides SH slight",
    "no, only LH",
    "415 recheck; LH block still on, off 14d; sole ulcer outside, slight",
    "RH nothing found",
    "416 LH outside sole ulcer z4 bad; opened; block on inside; see again in 4 weeks; vet",
    "RH DD chronic behind slight",
    "no number, brown heifer, white star; hinds nothing found",
    "513 or 531",
    "LH wrap came off by itself; DD scab behind; spray with bluemix; wrap on, off 3d",
    "RH outside length 78mm; heel 42 mm high",
    "done",
    "417? heifer",
    "LH foul; vet; told the farmer",
    "418 not done, ran out of time",
    "419 unfinished, went down; note kicks when the right hind is lifted",
    "420 dry off; all four trimmed; rest fine",
    "LH outsde SU; wrap off Thu",
};

LineContext context_of(int number) {
  LineContext context;
  context.visit_day = Day{20782};
  context.cow_open = number > 3;
  context.line_number = number;
  return context;
}

// Keeps the compiler from leaving the work out.
std::size_t clauses_read(int rounds) {
  std::size_t clauses = 0;
  for (int round = 0; round < rounds; ++round) {
    int number = 0;
    for (const std::string_view text : day_of_lines) {
      const Result<Line> line = read_line(text, context_of(++number), english());
      clauses += line.ok() ? line.value().clauses.size() : line.faults().size();
    }
  }
  return clauses;
}

std::size_t offers_made(int rounds) {
  std::size_t offers = 0;
  for (int round = 0; round < rounds; ++round) {
    int number = 3;
    for (const std::string_view half :
         {"412", "LH", "LH outside", "LH outside SU", "LH wrap on, off"}) {
      offers += what_may_follow(half, context_of(++number), english()).size();
    }
  }
  return offers;
}

template <class F>
void report(const char* what, double items, F work) {
  constexpr int repeats = 5;
  std::vector<double> per_second;
  std::size_t total = work();  // warms up
  for (int i = 0; i < repeats; ++i) {
    const auto start = std::chrono::steady_clock::now();
    total += work();
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
    per_second.push_back(items / took.count());
  }
  std::sort(per_second.begin(), per_second.end());
  std::printf("%s: median %.0f per second, from %.0f to %.0f, %d repeats (%zu)\n", what,
              per_second[repeats / 2], per_second.front(), per_second.back(), repeats, total);
}

void report_all() {
  constexpr int rounds = 2000;
  const auto lines = static_cast<double>(std::size(day_of_lines));
  report("lines read", rounds * lines, [] { return clauses_read(rounds); });
  constexpr int offer_rounds = 20;
  report("half lines answered", offer_rounds * 5.0, [] { return offers_made(offer_rounds); });
}

}  // namespace

}  // namespace evenclaw

int main() {
  evenclaw::report_all();
}
