// Which column of a list from another program holds what: told by its head, by what stands in it,
// or by a person.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/enum_words.hpp"
#include "core/base/result.hpp"
#include "core/exchange/csv.hpp"

namespace evenclaw {

enum class HerdColumn {
  ignore,
  number,
  tag,
  electronic,
  name,
  breed,
  born,
  heifer_or_cow,
  weight,
  calved,
  lactation,
  dry_off,
  due_to_calve,
  arrived,
  left,
  reason,
  event,
  day,
  foot,
  claw,
  place,
  zone,
  lesion,
  degree,
  stage,
  treatment,
  remark
};

template <>
struct EnumWords<HerdColumn> {
  static constexpr EnumWord<HerdColumn> table[] = {{HerdColumn::ignore, "ignore"},
                                                   {HerdColumn::number, "number"},
                                                   {HerdColumn::tag, "tag"},
                                                   {HerdColumn::electronic, "electronic"},
                                                   {HerdColumn::name, "name"},
                                                   {HerdColumn::breed, "breed"},
                                                   {HerdColumn::born, "born"},
                                                   {HerdColumn::heifer_or_cow, "heifer_or_cow"},
                                                   {HerdColumn::weight, "weight"},
                                                   {HerdColumn::calved, "calved"},
                                                   {HerdColumn::lactation, "lactation"},
                                                   {HerdColumn::dry_off, "dry_off"},
                                                   {HerdColumn::due_to_calve, "due_to_calve"},
                                                   {HerdColumn::arrived, "arrived"},
                                                   {HerdColumn::left, "left"},
                                                   {HerdColumn::reason, "reason"},
                                                   {HerdColumn::event, "event"},
                                                   {HerdColumn::day, "day"},
                                                   {HerdColumn::foot, "foot"},
                                                   {HerdColumn::claw, "claw"},
                                                   {HerdColumn::place, "place"},
                                                   {HerdColumn::zone, "zone"},
                                                   {HerdColumn::lesion, "lesion"},
                                                   {HerdColumn::degree, "degree"},
                                                   {HerdColumn::stage, "stage"},
                                                   {HerdColumn::treatment, "treatment"},
                                                   {HerdColumn::remark, "remark"}};
};

/// Whether a column tells of a finding: one of those from `foot` on. They are read together with
/// one of lesions, and never without.
bool tells_of_a_finding(HerdColumn column);

/// From what it is known what a column holds.
enum class ColumnKnownBy { nothing, said, remembered, head, content };

template <>
struct EnumWords<ColumnKnownBy> {
  static constexpr EnumWord<ColumnKnownBy> table[] = {{ColumnKnownBy::nothing, "nothing"},
                                                      {ColumnKnownBy::said, "said"},
                                                      {ColumnKnownBy::remembered, "remembered"},
                                                      {ColumnKnownBy::head, "head"},
                                                      {ColumnKnownBy::content, "content"}};
};

/// What a person says a column holds, by the head of it.
struct ColumnSaid {
  std::string head;
  HerdColumn holds = HerdColumn::ignore;

  friend bool operator==(const ColumnSaid&, const ColumnSaid&) = default;
};

struct ColumnRead {
  std::string head;
  HerdColumn holds = HerdColumn::ignore;
  ColumnKnownBy known_by = ColumnKnownBy::nothing;
  std::string sample;  // the first cell that holds something

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("head", &ColumnRead::head, "its head in the file");
    visit("holds", &ColumnRead::holds, "what it is read as; ignore: not read");
    visit("known_by", &ColumnRead::known_by, "from what that is known");
    visit("sample", &ColumnRead::sample, "the first cell that holds something");
  }
};

/// One for each column of the table. What was said goes first, then what is remembered, then the
/// head, then the content of a column whose head is unknown: ear tags, electronic numbers, and,
/// when nothing else tells the cow, the only column of short numbers that are all different.
/// Content also overrules a head of "number" above nothing but electronic numbers or ear tags. Days
/// under an unknown head are never guessed at. Faults: "usage" for a head that was said and is not
/// there, "list-unreadable" for two columns that hold one thing, for none that tells the cow, and
/// for an event or a lesion without its day. A column under "date" without one of events or lesions
/// is not read. A column of lesions makes the list one of findings, whose other columns are not
/// read but for those that tell the cow; where nobody said that it holds lesions it does so only
/// with a day beside it and no events.
Result<std::vector<ColumnRead>> columns_read(const CsvTable& table,
                                             const std::vector<ColumnSaid>& said,
                                             const std::vector<ColumnSaid>& remembered);

/// "number=Tiernr, ignore=Milk" as a person types it. Fault "usage".
Result<std::vector<ColumnSaid>> columns_said(std::string_view typed);

}  // namespace evenclaw
