#include "core/exchange/cow_list.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <map>
#include <string_view>
#include <utility>

#include "core/base/edit_distance.hpp"
#include "core/base/text.hpp"
#include "core/exchange/csv.hpp"
#include "core/trade/electronic_number.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/national_tag.hpp"

namespace evenclaw {

namespace {

enum class ListColumn {
  number,
  tag,
  electronic,
  name,
  breed,
  born,
  heifer_or_cow,
  calved,
  lactation,
  dry_off,
  due_to_calve
};

struct ListHead {
  std::string_view words;
  ListColumn column;
};

// The first of a column is the one it is told by. German from memory.
constexpr ListHead list_heads[] = {{"number", ListColumn::number},
                                   {"herd number", ListColumn::number},
                                   {"cow", ListColumn::number},
                                   {"cow number", ListColumn::number},
                                   {"nummer", ListColumn::number},
                                   {"stallnummer", ListColumn::number},
                                   {"kuh", ListColumn::number},
                                   {"tag", ListColumn::tag},
                                   {"ear tag", ListColumn::tag},
                                   {"national tag", ListColumn::tag},
                                   {"official tag", ListColumn::tag},
                                   {"ohrmarke", ListColumn::tag},
                                   {"lebensnummer", ListColumn::tag},
                                   {"electronic number", ListColumn::electronic},
                                   {"electronic", ListColumn::electronic},
                                   {"eid", ListColumn::electronic},
                                   {"transponder", ListColumn::electronic},
                                   {"elektronische nummer", ListColumn::electronic},
                                   {"name", ListColumn::name},
                                   {"breed", ListColumn::breed},
                                   {"rasse", ListColumn::breed},
                                   {"born", ListColumn::born},
                                   {"birth", ListColumn::born},
                                   {"date of birth", ListColumn::born},
                                   {"birth date", ListColumn::born},
                                   {"geboren", ListColumn::born},
                                   {"geburtsdatum", ListColumn::born},
                                   {"heifer or cow", ListColumn::heifer_or_cow},
                                   {"färse oder kuh", ListColumn::heifer_or_cow},
                                   {"calved", ListColumn::calved},
                                   {"last calved", ListColumn::calved},
                                   {"calving date", ListColumn::calved},
                                   {"gekalbt", ListColumn::calved},
                                   {"letzte kalbung", ListColumn::calved},
                                   {"lactation", ListColumn::lactation},
                                   {"lactation number", ListColumn::lactation},
                                   {"laktation", ListColumn::lactation},
                                   {"dry off", ListColumn::dry_off},
                                   {"drying off", ListColumn::dry_off},
                                   {"trockenstellen", ListColumn::dry_off},
                                   {"due to calve", ListColumn::due_to_calve},
                                   {"due", ListColumn::due_to_calve},
                                   {"kalbetermin", ListColumn::due_to_calve}};

struct Kind {
  std::string_view words;
  HeiferOrCow kind;
};

constexpr Kind list_kinds[] = {{"heifer", HeiferOrCow::heifer},
                               {"cow", HeiferOrCow::cow},
                               {"färse", HeiferOrCow::heifer},
                               {"kuh", HeiferOrCow::cow}};

constexpr std::size_t most_digits_of_lactation = 2;

/// "Dry-off_date" and "dry off date" are one head.
std::string plain_list_head(std::string_view head) {
  std::string plain = fold_case(trimmed(head));
  for (char& c : plain) {
    if (c == '_' || c == '-') c = ' ';
  }
  return plain;
}

const ListHead* known_list_head(std::string_view plain) {
  const auto at =
      std::find_if(std::begin(list_heads), std::end(list_heads),
                   [&](const ListHead& head) { return fold_case(head.words) == plain; });
  return at == std::end(list_heads) ? nullptr : at;
}

/// A short word is near everything.
const ListHead* head_meant(std::string_view plain) {
  constexpr std::size_t shortest = 5;
  constexpr std::size_t furthest = 1;
  if (plain.size() < shortest) return nullptr;
  const auto at =
      std::find_if(std::begin(list_heads), std::end(list_heads), [&](const ListHead& head) {
        return head.words.size() >= shortest &&
               edit_distance(fold_case(head.words), plain) <= furthest;
      });
  return at == std::end(list_heads) ? nullptr : at;
}

std::string_view told_by(ListColumn column) {
  return std::find_if(std::begin(list_heads), std::end(list_heads),
                      [column](const ListHead& head) { return head.column == column; })
      ->words;
}

bool tells_which(ListColumn column) {
  return column == ListColumn::number || column == ListColumn::tag ||
         column == ListColumn::electronic;
}

/// 2026-09-01, or 01.09.2026 as it is written in German.
std::optional<Day> day_in(std::string_view cell) {
  if (const auto day = day_from_text(cell)) return day;
  constexpr std::size_t length = 10;
  const bool is_dotted = cell.size() == length && cell[2] == '.' && cell[5] == '.';
  if (!is_dotted) return std::nullopt;
  return day_from_text(std::string(cell.substr(6)) + '-' + std::string(cell.substr(3, 2)) + '-' +
                       std::string(cell.substr(0, 2)));
}

/// What stands in a cell, put where it belongs.
class CellReading {
 public:
  CellReading(CowListed& cow, Faults& faults) : cow_(cow), faults_(faults) {}

  void read(ListColumn column, const std::string& cell) {
    if (cell.empty()) return;
    names_her_ |= tells_which(column);
    switch (column) {
      case ListColumn::number:
        return number(cell);
      case ListColumn::tag:
        return tag(cell);
      case ListColumn::electronic:
        return electronic(cell);
      case ListColumn::name:
        cow_.name = cell;
        return;
      case ListColumn::breed:
        cow_.breed = cell;
        return;
      case ListColumn::born:
        return day(cow_.born, column, cell);
      case ListColumn::heifer_or_cow:
        return kind(cell);
      case ListColumn::calved:
        return day(cow_.calved, column, cell);
      case ListColumn::lactation:
        return lactation(cell);
      case ListColumn::dry_off:
        return day(cow_.dry_off, column, cell);
      case ListColumn::due_to_calve:
        return day(cow_.due_to_calve, column, cell);
    }
  }

  /// What the cells say together.
  void finish() {
    if (!names_her_) {
      refuse("nothing tells which cow this is", "",
             "Give her number, ear tag or electronic number.");
    }
    if (!has_lactation_0_) return;
    if (cow_.heifer_or_cow == HeiferOrCow::cow || cow_.calved) {
      refuse("she has calved, and her lactation is 0", "0",
             "Lactation 0 is a heifer: mend the one or the other.");
    }
    cow_.heifer_or_cow = HeiferOrCow::heifer;
  }

 private:
  void refuse(std::string message, std::string token, std::string remedy) {
    faults_.push_back(
        list_unreadable(cow_.line, std::move(message), std::move(token), std::move(remedy)));
  }

  void refuse_cell(ListColumn column, const std::string& cell, std::string_view what,
                   std::string remedy) {
    refuse("\"" + cell + "\" under \"" + std::string(told_by(column)) + "\" is no " +
               std::string(what),
           cell, std::move(remedy));
  }

  void number(const std::string& cell) {
    if (is_written_as_electronic(cell)) {
      return refuse_cell(ListColumn::number, cell, "herd number",
                         "It is an electronic number: that has a column of its own.");
    }
    cow_.number = cell;
  }

  void tag(const std::string& cell) {
    const auto tag = national_tag(cell);
    if (tag) {
      cow_.tag = cell;
    } else {
      refuse_cell(ListColumn::tag, cell, "official ear tag", tag.faults().front().remedy);
    }
  }

  void electronic(const std::string& cell) {
    const auto number = electronic_number(cell);
    if (number) {
      cow_.electronic = cell;
    } else {
      refuse_cell(ListColumn::electronic, cell, "electronic number",
                  "It has 15 digits; a spreadsheet must keep them as text.");
    }
  }

  void day(std::optional<Day>& into, ListColumn column, const std::string& cell) {
    into = day_in(cell);
    if (!into) refuse_cell(column, cell, "day", "Write it as 2026-09-01 or 01.09.2026.");
  }

  void kind(const std::string& cell) {
    const std::string folded = fold_case(cell);
    for (const Kind& each : list_kinds) {
      if (fold_case(each.words) == folded) cow_.heifer_or_cow = each.kind;
    }
    if (!cow_.heifer_or_cow) {
      refuse_cell(ListColumn::heifer_or_cow, cell, "heifer and no cow", "Write heifer or cow.");
    }
  }

  void lactation(const std::string& cell) {
    const auto number = whole_number(cell, most_digits_of_lactation);
    if (!number) {
      refuse_cell(ListColumn::lactation, cell, "number of a lactation",
                  "Write 0 for a heifer, 1, 2 ...");
    } else if (*number == 0) {
      has_lactation_0_ = true;
    } else {
      cow_.lactation = *number;
    }
  }

  CowListed& cow_;
  Faults& faults_;
  bool names_her_ = false;
  bool has_lactation_0_ = false;
};

using Columns = std::vector<std::optional<ListColumn>>;

Columns columns_of(const CsvTable& table, CowList& list, Faults& faults) {
  Columns columns;
  for (const std::string& head : table.head) {
    const std::string plain = plain_list_head(head);
    const ListHead* known = known_list_head(plain);
    const ListHead* meant = known == nullptr ? head_meant(plain) : nullptr;
    columns.push_back(known == nullptr ? std::nullopt : std::optional(known->column));
    const auto same = std::count(columns.begin(), columns.end(), columns.back());
    if (known != nullptr && same > 1) {
      faults.push_back(list_unreadable(
          table.head_line, "two columns hold the " + std::string(told_by(known->column)), head,
          "Take one of them out."));
    } else if (meant != nullptr) {
      faults.push_back(list_unreadable(table.head_line, "\"" + head + "\" is no known head", head,
                                       "Did you mean " + std::string(meant->words) +
                                           "? If it holds something else, give it another head."));
    } else if (known == nullptr) {
      list.not_read.push_back(head);
    }
  }
  const bool names_cows = std::any_of(
      columns.begin(), columns.end(),
      [](const std::optional<ListColumn>& column) { return column && tells_which(*column); });
  if (!names_cows && faults.empty()) {
    faults.push_back(list_unreadable(table.head_line, "no column tells which cow a line is of", "",
                                     "One has the head number, tag or electronic number."));
  }
  return columns;
}

/// Alike however it is written; "" for nothing.
std::string plain_tag(const std::string& written) {
  const auto tag = national_tag(written);
  return tag ? tag->country + plain_number(tag->digits) : std::string();
}

std::string plain_electronic(const std::string& written) {
  const auto number = electronic_number(written);
  return number ? to_text(*number) : std::string();
}

/// No two lines are of one cow.
void refuse_twice(const CowList& list, Faults& faults) {
  std::array<std::map<std::string, int>, 3> lines;
  for (const CowListed& cow : list.cows) {
    const std::array<std::string, 3> names = {plain_number(cow.number), plain_tag(cow.tag),
                                              plain_electronic(cow.electronic)};
    for (std::size_t at = 0; at < names.size(); ++at) {
      if (names[at].empty()) continue;
      const auto [first, is_new] = lines[at].emplace(names[at], cow.line);
      if (is_new) continue;
      faults.push_back(list_unreadable(
          cow.line,
          "\"" + names[at] + "\" stands in line " + std::to_string(first->second) + " too",
          names[at], "Leave one of the two in, with what holds."));
    }
  }
}

}  // namespace

Result<CowList> cow_list(std::span<const std::string> lines) {
  std::string text;
  for (const std::string& line : lines) text += line + '\n';
  const CsvTable table = csv_table(text);
  if (!table.faults.empty()) return table.faults;
  CowList list;
  Faults faults;
  const Columns columns = columns_of(table, list, faults);
  const bool is_head_clear = faults.empty();
  faults.insert(faults.begin(), table.row_faults.begin(), table.row_faults.end());
  if (!is_head_clear) return faults;
  for (const CsvRow& row : table.rows) {
    CowListed cow;
    cow.line = row.line;
    CellReading reading(cow, faults);
    for (std::size_t at = 0; at < columns.size(); ++at) {
      if (columns[at]) reading.read(*columns[at], std::string(row.cells[at]));
    }
    reading.finish();
    list.cows.push_back(std::move(cow));
  }
  refuse_twice(list, faults);
  std::stable_sort(faults.begin(), faults.end(),
                   [](const Fault& a, const Fault& b) { return a.line < b.line; });
  if (!faults.empty()) return faults;
  return list;
}

std::vector<std::string> heads_of_list() {
  std::vector<std::string> all;
  for (const ListHead& head : list_heads) {
    const bool is_first = told_by(head.column) == head.words;
    if (is_first) {
      all.emplace_back(head.words);
    } else {
      all.back() += ", " + std::string(head.words);
    }
  }
  return all;
}

}  // namespace evenclaw
