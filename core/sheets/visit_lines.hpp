// A visit as flat lines for a spreadsheet: the rows the sheet is told from, one line for each
// thing.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/sheets/visit_sheet.hpp"

namespace evenclaw {

/// What a line tells.
enum class LineTells {
  cow,
  foot,
  finding,
  act,
  measure,
  note,
  ask,
  stop,
  question,
  told,
  not_seen,
  removed,
  together,
  task
};

template <>
struct EnumWords<LineTells> {
  static constexpr EnumWord<LineTells> table[] = {
      {LineTells::cow, "cow"},           {LineTells::foot, "foot"},
      {LineTells::finding, "finding"},   {LineTells::act, "act"},
      {LineTells::measure, "measure"},   {LineTells::note, "note"},
      {LineTells::ask, "ask"},           {LineTells::stop, "stop"},
      {LineTells::question, "question"}, {LineTells::told, "told"},
      {LineTells::not_seen, "not_seen"}, {LineTells::removed, "removed"},
      {LineTells::together, "together"}, {LineTells::task, "task"}};
};

/// On whose page of the sheet a note, an Ask or a Stop is told beside her card.
enum class ToldTo { farmer, farmer_and_vet };

template <>
struct EnumWords<ToldTo> {
  static constexpr EnumWord<ToldTo> table[] = {{ToldTo::farmer, "farmer"},
                                               {ToldTo::farmer_and_vet, "farmer_and_vet"}};
};

/// Every line names herd, day and cow, so that lines can be sorted and filtered in any order. What
/// a line does not tell is empty; what nobody called is the word not_called.
struct VisitLine {
  std::string herd;
  Day day;
  LineTells tells = LineTells::cow;
  std::string cow;
  std::string looks;
  std::string what;
  std::string words;
  std::optional<Foot> foot;
  std::optional<Claw> claw;
  std::optional<Place> place;
  std::optional<std::int32_t> zone;
  std::optional<Degree> degree;
  std::optional<DdStage> stage;
  std::optional<CaseStep> step;
  std::string product;
  std::optional<Material> material;
  std::optional<ByWhom> by_whom;
  std::optional<ByWhom> directed_by;
  std::optional<WithdrawalKnown> withdrawal;
  std::optional<Day> milk_till;
  std::optional<Milking> milk_milking;
  std::optional<Day> meat_till;
  std::optional<Length> length;
  std::optional<Trimmed> trimmed;
  std::optional<FootSet> lame;
  std::optional<TurnEnd> end;
  std::optional<MobilityScale> mobility_scale;
  std::optional<std::int32_t> mobility_score;
  std::optional<std::int32_t> animals;
  std::optional<Owner> owner;
  std::optional<Day> by_day;
  std::string answer;
  std::optional<ToldTo> told_to;
  std::string caller;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &VisitLine::herd, "name of the herd");
    visit("day", &VisitLine::day, "day of the visit");
    visit("tells", &VisitLine::tells, "what this line tells");
    visit("cow", &VisitLine::cow, "her number, with ? when in doubt; empty when she has none");
    visit("looks", &VisitLine::looks, "what she looks like, when she has no number");
    visit("what", &VisitLine::what,
          "of a cow why she came first of all, of a foot its state, of a finding its ICAR code or "
          "our word, of a note, an Ask and a Stop the check, of the others which act, measure, "
          "question, task or kind of animal; empty of what was said in free words");
    visit("words", &VisitLine::words, "the same as it stands on the sheet");
    visit("foot", &VisitLine::foot, "on which foot");
    visit("claw", &VisitLine::claw, "on which claw");
    visit("place", &VisitLine::place, "where on the foot");
    visit("zone", &VisitLine::zone, "zone number 0-12");
    visit("degree", &VisitLine::degree, "slight, plain, bad or not called");
    visit("stage", &VisitLine::stage, "stage of digital dermatitis");
    visit("step", &VisitLine::step, "first found, goes on, or came back");
    visit("product", &VisitLine::product, "name of what was put on or given");
    visit("material", &VisitLine::material, "what a block is made of, how she was marked");
    visit("by_whom", &VisitLine::by_whom, "who gave it, or was asked for it");
    visit("directed_by", &VisitLine::directed_by, "on whose direction");
    visit("withdrawal", &VisitLine::withdrawal, "what is known of its withdrawal");
    visit("milk_till", &VisitLine::milk_till,
          "last day her milk is held back for it, off label not before the law's floor");
    visit("milk_milking", &VisitLine::milk_milking, "up to and with this milking of it");
    visit("meat_till", &VisitLine::meat_till,
          "last day her meat is held back for it, off label not before the law's floor");
    visit("length", &VisitLine::length, "tenths of a millimetre");
    visit("trimmed", &VisitLine::trimmed, "whether the foot was trimmed");
    visit("lame", &VisitLine::lame, "legs she came lame on");
    visit("end", &VisitLine::end, "done, not done or unfinished");
    visit("mobility_scale", &VisitLine::mobility_scale, "the scale she was scored on");
    visit("mobility_score", &VisitLine::mobility_score, "how she walks, on that scale");
    visit("animals", &VisitLine::animals, "how many were counted together and stand in no line");
    visit("owner", &VisitLine::owner, "who does the task");
    visit("by_day", &VisitLine::by_day,
          "by when it is due, the day said with an act, of an earlier Stop its day, of a record "
          "the day it was removed");
    visit("answer", &VisitLine::answer,
          "what was decided on an Ask or a Stop; empty when nobody answered");
    visit("told_to", &VisitLine::told_to, "on whose page of the sheet it is told beside her card");
    visit("caller", &VisitLine::caller, "who judged and trimmed");
  }
};

/// By cow in the order of the sheet, and of a cow what she came for, her feet, findings, acts,
/// measures in the order they were called, notes, Asks and Stops, what is still asked of her; then
/// Stops of earlier visits, cows not seen, records removed, what else is asked and was told; then
/// animals counted together; then the open tasks of the herd by day.
std::vector<VisitLine> visit_lines(const VisitSheetInput& input,
                                   const Wording& wording = english_wording());

}  // namespace evenclaw
