// Fuzz target: any lines, in English or German, are understood or refused with a place that lies
// within them, no half line breaks what may follow, and the turn they make prints and reads back.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/text.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/line.hpp"

namespace {

using namespace evenclaw;

void demand(bool holds) {
  if (!holds) std::abort();
}

LineContext context_at(int line_number, bool cow_open) {
  LineContext context;
  context.visit_day = Day{20782};
  context.cow_open = cow_open;
  context.line_number = line_number;
  return context;
}

void check_faults(std::string_view line, const Faults& faults) {
  const int last = static_cast<int>(character_count(valid_utf8(line)));
  for (const Fault& fault : faults) {
    demand(fault.column <= last);
    demand(line.find(fault.token) != std::string_view::npos);
  }
}

void add(TurnDraft& draft, const Line& line) {
  for (const Clause& clause : line.clauses) {
    if (const auto* cow = std::get_if<CowNamed>(&clause)) {
      draft = TurnDraft{};
      draft.turn.cow = cow->cow;
    } else if (const auto* said = std::get_if<TurnClause>(&clause)) {
      static_cast<void>(add_clause(draft, *said));
    }
  }
}

void check_round_trip(const Turn& turn, const Language& language) {
  TurnDraft again;
  bool cow_open = false;
  for (const std::string& text : print_turn(turn, language)) {
    const Result<Line> line = read_line(text, context_at(1, cow_open), language);
    demand(line.ok());
    add(again, line.value());
    cow_open = true;
  }
  demand(again.turn == turn);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const bool cow_open = size % 2 == 0;
  const Language& language = size % 4 < 2 ? english() : german();
  std::string_view rest(reinterpret_cast<const char*>(data), size);
  TurnDraft draft;
  draft.turn.cow.number = "412";
  int line_number = 0;
  while (!rest.empty()) {
    const std::string_view text = rest.substr(0, rest.find('\n'));
    rest.remove_prefix(text.size() == rest.size() ? rest.size() : text.size() + 1);
    const Result<Line> line = read_line(text, context_at(++line_number, cow_open), language);
    if (line.ok()) {
      add(draft, line.value());
    } else {
      check_faults(text, line.faults());
    }
  }
  // Offering is slow beside reading, so only the first line of some inputs is asked about.
  if (size % 9 == 0) {
    const std::string_view all(reinterpret_cast<const char*>(data), size);
    const std::string_view first = all.substr(0, all.find('\n'));
    static_cast<void>(what_may_follow(first.substr(0, 30), context_at(1, cow_open), language));
  }
  check_round_trip(draft.turn, language);
  return 0;
}
