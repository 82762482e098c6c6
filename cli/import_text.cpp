#include "cli/import_text.hpp"

#include <algorithm>
#include <vector>

#include "cli/columns.hpp"

namespace evenclaw::cli {
namespace {

constexpr std::size_t most_lines_told = 100;
constexpr std::size_t most_words_told = 40;

std::string known_by(ColumnKnownBy by) {
  switch (by) {
    case ColumnKnownBy::nothing:
      return "";
    case ColumnKnownBy::said:
      return "you said so";
    case ColumnKnownBy::remembered:
      return "as said before";
    case ColumnKnownBy::head:
      return "by its head";
    case ColumnKnownBy::content:
      return "by what it holds";
  }
  return "";
}

std::string how_it_is_read(const std::string& file, const HerdImported& imported) {
  std::string text = file + ": " + imported.form + ", " + imported.encoding;
  if (!imported.separator.empty()) text += ", parted by " + imported.separator;
  text += ", " + counted(imported.lines, "line", "lines") + "\n";
  std::vector<std::vector<std::string>> rows;
  for (const ColumnRead& column : imported.columns) {
    const bool is_read = column.holds != HerdColumn::ignore;
    rows.push_back({column.head, is_read ? std::string(word_of(column.holds)) : "(not read)",
                    known_by(column.known_by), column.sample});
  }
  text += table(rows);
  for (const std::string& days : imported.days) text += "  days of " + days + "\n";
  return text;
}

bool is_of_findings(const HerdImported& imported) {
  return std::any_of(imported.columns.begin(), imported.columns.end(),
                     [](const ColumnRead& column) { return column.holds == HerdColumn::lesion; });
}

std::string meaning_of(const LesionWord& word) {
  if (word.means.empty()) return "(nobody said)";
  return word.means == word_passed_over ? "(passed over)" : word.means;
}

std::string how_lesions_are_read(const HerdImported& imported) {
  std::vector<std::vector<std::string>> rows;
  const std::size_t told = std::min(imported.lesions.size(), most_words_told);
  for (std::size_t at = 0; at < told; ++at) {
    const LesionWord& word = imported.lesions[at];
    rows.push_back({word.word, meaning_of(word), counted(word.lines, "line", "lines")});
  }
  std::string text = rows.empty() ? "" : "Lesions are read as\n" + table(rows);
  if (told < imported.lesions.size()) {
    const std::size_t more = imported.lesions.size() - told;
    text += "  and " + std::to_string(more) + " more: --json tells all\n";
  }
  return text;
}

std::string what_came_of_findings(const HerdImported& imported) {
  if (!is_of_findings(imported)) return {};
  std::string text = counted(imported.findings, "new finding", "new findings") +
                     " told by this list, kept apart from what was called at the crush\n";
  if (imported.taken_back > 0) {
    text += counted(imported.taken_back, "finding", "findings") +
            " this list told before, read otherwise now and taken back\n";
  }
  if (imported.passed_over > 0) {
    const bool is_one = imported.passed_over == 1;
    text += counted(imported.passed_over, "line", "lines") +
            (is_one ? " tells of no finding\n" : " tell of no finding\n");
  }
  return text;
}

std::string what_came_of_it(const HerdImported& imported) {
  std::string text = counted(imported.entered, "new cow", "new cows") + ", " +
                     std::to_string(imported.told_more) + " known with something new, " +
                     std::to_string(imported.unchanged) + " known as listed; " +
                     counted(imported.events, "new event", "new events") + "\n";
  text += what_came_of_findings(imported);
  if (!imported.written) text += "Nothing is written: this was a try.\n";
  return text;
}

std::string place_of(const LeftOut& left_out) {
  std::string place = "line " + std::to_string(left_out.line);
  if (left_out.column > 0) place += ", column " + std::to_string(left_out.column);
  return "  " + place + ": ";
}

std::string what_was_left_out(const HerdImported& imported) {
  if (imported.left_out.empty()) return {};
  std::string text = "Left out: " + counted(imported.left_out_lines, "line", "lines") + "\n";
  const std::size_t told = std::min(imported.left_out.size(), most_lines_told);
  for (std::size_t at = 0; at < told; ++at) {
    const LeftOut& left_out = imported.left_out[at];
    text += wrapped_behind(place_of(left_out), left_out.message + ". " + left_out.remedy) + "\n";
  }
  if (told < imported.left_out.size()) {
    const std::size_t more = imported.left_out.size() - told;
    text += "  and " + std::to_string(more) + " more: --json tells all\n";
  }
  return text;
}

}  // namespace

std::string import_text(const std::string& file, const HerdImported& imported) {
  return how_it_is_read(file, imported) + how_lesions_are_read(imported) +
         what_came_of_it(imported) + what_was_left_out(imported);
}

}  // namespace evenclaw::cli
