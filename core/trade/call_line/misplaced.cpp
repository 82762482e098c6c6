#include "core/trade/call_line/misplaced.hpp"

#include <string_view>

namespace evenclaw {

namespace {

// What to do with words that are known but stand where they cannot.
struct Misplaced {
  TermKind kind;
  std::string_view remedy;
};

constexpr Misplaced misplaced_table[] = {
    {TermKind::weekday,
     "a day follows \"{see again}\" or, with \"{off}\", a wrap or block put on today"},
    {TermKind::days_word, "a time follows \"{see again}\", or \"{off}\" behind a wrap or block"},
    {TermKind::time_in, "a time follows \"{see again}\", or \"{off}\" behind a wrap or block"},
    {TermKind::zone_word, "say the zone with its number, as {z4}"},
    {TermKind::doubt, "a question mark stands behind the number of a cow"},
    {TermKind::measure_tail, "a length comes first, such as {78 mm}"},
    {TermKind::ditto, "say what was found; nothing is taken over from the cow before"},
    {TermKind::not_that,
     "say what is right: \"{no, inside}\", \"{no, right hind}\", \"{no, 421}\""},
    {TermKind::news, "news comes behind the number of a cow: {77 gone}"},
};

std::string_view meant_by(UnclearWord word) {
  switch (word) {
    case UnclearWord::rot:
      return "which is it: {foul}, {toe necrosis}, or {heel horn erosion}?";
    case UnclearWord::abscess:
      return "where is it: {white line abscess}, or {other} \"...\" in words?";
  }
  return {};
}

}  // namespace

std::string remedy_for(const Term& term) {
  if (term.kind == TermKind::unclear_word) {
    return std::string(meant_by(term.as<UnclearWord>()));
  }
  for (const Misplaced& row : misplaced_table) {
    if (row.kind == term.kind) return std::string(row.remedy);
  }
  return {};
}

}  // namespace evenclaw
