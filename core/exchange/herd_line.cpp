#include "core/exchange/herd_line.hpp"

#include <algorithm>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/base/ascii.hpp"
#include "core/base/text.hpp"
#include "core/exchange/finding_line.hpp"
#include "core/exchange/life_words.hpp"
#include "core/exchange/record_faults.hpp"
#include "core/trade/after_leaving.hpp"
#include "core/trade/electronic_number.hpp"
#include "core/trade/national_tag.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t longest_herd_number = 12;
constexpr std::size_t longest_words = 200;
constexpr std::size_t most_digits = 4;
constexpr int greatest_lactation = 20;

struct KindWord {
  std::string_view words;  // folded; German, Dutch and French from memory
  HeiferOrCow kind;
};

constexpr KindWord kind_words[] = {{"heifer", HeiferOrCow::heifer},  {"cow", HeiferOrCow::cow},
                                   {"färse", HeiferOrCow::heifer},   {"kuh", HeiferOrCow::cow},
                                   {"vaars", HeiferOrCow::heifer},   {"koe", HeiferOrCow::cow},
                                   {"génisse", HeiferOrCow::heifer}, {"vache", HeiferOrCow::cow}};

/// "3", "3,0" and "3.0"; nothing for a real fraction and whatever is no number.
std::optional<int> whole_of(std::string_view cell) {
  const std::size_t point = cell.find_first_of(",.");
  if (point == std::string_view::npos) return whole_number(cell, most_digits);
  const std::string_view behind = cell.substr(point + 1);
  const bool is_whole = !behind.empty() && std::all_of(behind.begin(), behind.end(),
                                                       [](char digit) { return digit == '0'; });
  return is_whole ? whole_number(cell.substr(0, point), most_digits) : std::nullopt;
}

/// "612,5 kg" is 612: the class of a weight is all that is kept.
std::optional<int> kilograms_in(std::string_view cell) {
  const bool has_unit = cell.size() > 2 && fold_case(cell.substr(cell.size() - 2)) == "kg";
  if (has_unit) cell = trimmed(cell.substr(0, cell.size() - 2));
  const std::size_t point = std::min(cell.find_first_of(",."), cell.size());
  const std::string_view behind = cell.substr(std::min(point + 1, cell.size()));
  if (!std::all_of(behind.begin(), behind.end(), is_digit)) return std::nullopt;
  return whole_number(cell.substr(0, point), most_digits);
}

bool begins_as_formula(std::string_view cell) {
  return !cell.empty() && std::string_view("=+-@").find(cell.front()) != std::string_view::npos;
}

/// A tab or a line end within a cell is a blank.
std::string with_plain_blanks(std::string_view cell) {
  std::string plain(cell);
  for (char& c : plain) {
    if (c == '\t' || c == '\n' || c == '\r') c = ' ';
  }
  return plain;
}

class LineReading {
 public:
  LineReading(const CsvRow& row, const LineForm& form) : row_(row), form_(form) {
    line.record.line = row.line;
  }

  void read() {
    for (at_ = 0; at_ < form_.columns.size(); ++at_) {
      cell_ = row_.cells[at_];
      if (cell_.empty()) continue;
      if (!is_one_plain_line(cell_)) {
        plain_ = with_plain_blanks(cell_);
        cell_ = plain_;
      }
      if (is_one_plain_line(cell_)) {
        read_cell(form_.columns[at_].holds);
      } else {
        refuse("holds a character that cannot be shown", "Take it out.");
      }
    }
    put_together();
  }

  ListLine line;

 private:
  void refuse(const std::string& what, std::string remedy) {
    const std::string shown = shortened(cell_, 40);
    add({.slug = "list-unreadable",
         .message = "\"" + shown + "\" under \"" + form_.columns[at_].head + "\" " + what,
         .token = shown,
         .line = row_.line,
         .column = static_cast<int>(at_) + 1,
         .remedy = std::move(remedy)});
  }

  void add(Fault fault) { line.faults.push_back(std::move(fault)); }

  void read_cell(HerdColumn holds) {
    switch (holds) {
      case HerdColumn::number:
        return number();
      case HerdColumn::tag:
        return tag();
      case HerdColumn::electronic:
        return electronic();
      case HerdColumn::name:
        return words(line.record.name);
      case HerdColumn::breed:
        return breed();
      case HerdColumn::heifer_or_cow:
        return kind();
      case HerdColumn::weight:
        return weight();
      case HerdColumn::lactation:
        return lactation();
      case HerdColumn::reason:
        return words(reason_);
      case HerdColumn::event:
        return event();
      case HerdColumn::born:
      case HerdColumn::calved:
      case HerdColumn::dry_off:
      case HerdColumn::due_to_calve:
      case HerdColumn::arrived:
      case HerdColumn::left:
      case HerdColumn::day:
        return day(holds);
      case HerdColumn::foot:
      case HerdColumn::claw:
      case HerdColumn::place:
      case HerdColumn::zone:
      case HerdColumn::lesion:
      case HerdColumn::degree:
      case HerdColumn::stage:
      case HerdColumn::treatment:
      case HerdColumn::remark:
        found_.push_back({holds, at_, std::string(cell_)});
        return;
      case HerdColumn::ignore:
        return;
    }
  }

  void number() {
    if (is_written_as_electronic(cell_)) {
      return refuse("is an electronic number and no herd number", "That has a column of its own.");
    }
    if (begins_as_formula(cell_)) return refuse("is no herd number", "Write the number alone.");
    if (cell_.size() > longest_herd_number) {
      return refuse("is too long for a herd number", "Give it as her ear tag or her name.");
    }
    line.record.number = cell_;
  }

  void tag() {
    const auto read = national_tag(cell_);
    if (!read) {
      const Fault& why = read.faults().front();
      std::string message = why.message;
      while (!message.empty() && message.back() == '.') message.pop_back();
      return refuse("is no official ear tag: " + message, why.remedy);
    }
    line.record.tag = cell_;
  }

  void electronic() {
    if (!electronic_number(cell_)) {
      return refuse("is no electronic number",
                    "It has 15 digits; a spreadsheet must keep them as text.");
    }
    line.record.electronic = cell_;
  }

  void words(std::string& into) {
    if (cell_.size() > longest_words) return refuse("is too long", "Shorten it.");
    into = cell_;
  }

  void breed() {
    if (begins_as_formula(cell_)) return refuse("is no breed", "Write the name of the breed.");
    words(line.record.breed);
  }

  void kind() {
    const std::string folded = fold_case(cell_);
    for (const KindWord& each : kind_words) {
      if (each.words == folded) line.record.heifer_or_cow = each.kind;
    }
    if (!line.record.heifer_or_cow) refuse("is no heifer and no cow", "Write heifer or cow.");
  }

  void weight() {
    const auto kilograms = kilograms_in(cell_);
    if (!kilograms) return refuse("is no weight", "Write kilograms, such as 612 or 612,5.");
    line.record.weight = weight_class_of(*kilograms);
  }

  void lactation() {
    const auto number = whole_of(cell_);
    if (!number || *number > greatest_lactation) {
      return refuse("is no number of a lactation", "Write 0 for a heifer, 1, 2 ...");
    }
    lactation_ = *number;
    lactation_at_ = at_;
  }

  void event() {
    event_ = event_named(cell_);
    if (event_) return;
    refuse("is no event that is read",
           "Read are arrived, calved, dried off, left, sold, slaughtered, died and their names in "
           "German, Dutch and French; take other lines out.");
  }

  void day(HerdColumn holds) {
    const std::optional<DayStyle>& style = form_.styles[at_];
    const auto read = style ? day_written(cell_, *style, form_.today) : std::nullopt;
    if (!read) return refuse("is no day", "Write it as 2026-09-01.");
    take_day(holds, *read);
  }

  void take_day(HerdColumn holds, Day day) {
    HerdRecord& record = line.record;
    if (holds == HerdColumn::born) record.born = day;
    if (holds == HerdColumn::due_to_calve) record.due_to_calve = day;
    if (holds == HerdColumn::arrived) record.events.push_back({LifeEvent::arrived, day});
    if (holds == HerdColumn::calved) record.events.push_back({LifeEvent::calved, day});
    if (holds == HerdColumn::left) record.events.push_back({LifeEvent::left, day});
    if (holds == HerdColumn::day) day_ = day;
    if (holds != HerdColumn::dry_off) return;
    if (day > form_.today) {
      record.dry_off = day;
    } else {
      record.events.push_back({LifeEvent::dried_off, day});
    }
  }

  [[nodiscard]] bool has(HerdColumn holds) const {
    return std::any_of(form_.columns.begin(), form_.columns.end(),
                       [&](const ColumnRead& column) { return column.holds == holds; });
  }

  /// What the cells say together.
  void put_together() {
    HerdRecord& record = line.record;
    if (form_.findings != nullptr) put_finding();
    if (line.is_passed_over) return;
    if (has(HerdColumn::event)) put_event();
    if (lactation_) put_lactation();
    for (LifeEventTold& event : record.events) {
      if (event.event != LifeEvent::left) continue;
      event.words = reason_;
      event.reason = reason_named(reason_);
      if (event.way == LeavingWay::not_told) event.way = way_left(reason_);
    }
    std::sort(record.events.begin(), record.events.end(),
              [](const LifeEventTold& a, const LifeEventTold& b) {
                return std::pair(a.day, a.event) < std::pair(b.day, b.event);
              });
    if (!line.faults.empty()) return;
    for (RecordFault& found : faults_of_record(record, form_.today)) {
      found.fault.line = row_.line;
      found.fault.column = column_of(found.column);
      add(std::move(found.fault));
    }
  }

  void put_event() {
    line.record.is_one_event = true;
    if (!line.faults.empty()) return;
    if (!event_ || !day_) {
      add(list_unreadable(row_.line, event_ ? "the event has no day" : "no event stands in it", "",
                          "Say what happened and on which day."));
      return;
    }
    LifeEventTold told{event_->event, *day_};
    told.way = event_->way;
    line.record.events.push_back(std::move(told));
  }

  void put_finding() {
    HerdRecord& record = line.record;
    record.is_one_event = true;
    FindingRead read = finding_in(found_, *form_.findings);
    if (read.is_passed_over) return pass_over();
    for (FindingFault& fault : read.faults) {
      if (!fault.cell) {
        add(list_unreadable(row_.line, std::move(fault.what), "", std::move(fault.remedy)));
        continue;
      }
      at_ = found_[*fault.cell].column;
      cell_ = found_[*fault.cell].text;
      refuse(fault.what, std::move(fault.remedy));
    }
    if (!line.faults.empty()) return;
    if (!day_) {
      add(list_unreadable(row_.line, "the finding has no day", "", "Say on which day it was."));
      return;
    }
    read.finding.day = *day_;
    record.finding = std::move(read.finding);
  }

  /// What it says of who and when holds only when nothing of it is wrong.
  void pass_over() {
    HerdRecord& record = line.record;
    const bool is_named =
        !record.number.empty() || !record.tag.empty() || !record.electronic.empty();
    if (line.faults.empty() && is_named) record.passed_over_on = day_;
    line.faults.clear();
    line.is_passed_over = true;
  }

  void put_lactation() {
    HerdRecord& record = line.record;
    LifeEventTold* last = nullptr;
    for (LifeEventTold& event : record.events) {
      if (event.event == LifeEvent::calved) last = &event;
    }
    if (*lactation_ == 0) {
      at_ = lactation_at_;
      cell_ = row_.cells[at_];
      const bool has_calved = last != nullptr || record.heifer_or_cow == HeiferOrCow::cow;
      if (has_calved) {
        return refuse("is a heifer's, and she has calved", "Mend the one or the other.");
      }
      record.heifer_or_cow = HeiferOrCow::heifer;
    } else if (last != nullptr) {
      last->lactation = *lactation_;
    } else if (!record.is_one_event) {
      record.lactation = *lactation_;
    }
  }

  [[nodiscard]] int column_of(HerdColumn holds) const {
    const auto at = std::find_if(form_.columns.begin(), form_.columns.end(),
                                 [&](const ColumnRead& column) { return column.holds == holds; });
    return at == form_.columns.end() ? 0 : static_cast<int>(at - form_.columns.begin()) + 1;
  }

  const CsvRow& row_;
  const LineForm& form_;
  std::size_t at_ = 0;
  std::string_view cell_;
  std::string plain_;
  std::string reason_;
  std::optional<EventNamed> event_;
  std::optional<Day> day_;
  std::optional<int> lactation_;
  std::size_t lactation_at_ = 0;
  std::vector<FindingCell> found_;
};

}  // namespace

ListLine herd_line(const CsvRow& row, const LineForm& form) {
  LineReading reading(row, form);
  reading.read();
  return std::move(reading.line);
}

}  // namespace evenclaw
