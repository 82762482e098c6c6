// What an earlier record says was found on a foot: told by a list, never called at our crush.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"
#include "core/trade/dd_stage.hpp"
#include "core/trade/foot.hpp"
#include "core/trade/lesion.hpp"
#include "core/trade/place.hpp"

namespace evenclaw {

/// How it was known which word of a list means which lesion: they are the codes of the ICAR Claw
/// Health Atlas, a person said it word by word, or both.
enum class LesionScheme { icar, word_by_word, icar_and_word_by_word };

template <>
struct EnumWords<LesionScheme> {
  static constexpr EnumWord<LesionScheme> table[] = {
      {LesionScheme::icar, "icar"},
      {LesionScheme::word_by_word, "word_by_word"},
      {LesionScheme::icar_and_word_by_word, "icar_and_word_by_word"}};
};

struct PastFinding {
  Day day;
  std::optional<Foot> foot = {};
  Claw claw = Claw::not_called;
  Lesion lesion = Lesion::other;
  Place place = Place::not_called;
  std::optional<std::int32_t> zone = {};
  Degree degree = Degree::not_called;
  DdStage stage = DdStage::not_called;
  std::string words = {};   // the lesion as it stood in the list; several with " / " between them
  std::string remark = {};  // treatment and remark as they stood, likewise

  friend bool operator==(const PastFinding&, const PastFinding&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("day", &PastFinding::day, "the day it was found");
    visit("foot", &PastFinding::foot, "LF RF LH RH, when the list tells");
    visit("claw", &PastFinding::claw, "outside, inside, both, not called, none");
    visit("lesion", &PastFinding::lesion, "ICAR code, or our word where there is none");
    visit("place", &PastFinding::place, "where on the foot");
    visit("zone", &PastFinding::zone, "zone number 0-12, when the list tells it");
    visit("degree", &PastFinding::degree, "slight, plain, bad or not called");
    visit("stage", &PastFinding::stage, "stage of digital dermatitis");
    visit("words", &PastFinding::words, "the lesion as it stood in the list");
    visit("remark", &PastFinding::remark, "treatment and remark as they stood");
  }
};

/// All but the words and the remark are the same: one finding, told twice.
bool is_same_finding(const PastFinding& a, const PastFinding& b);

/// An order in which two that are not the same are never equal: by day, foot, claw, lesion ...
bool is_told_before(const PastFinding& a, const PastFinding& b);

/// What is told of one finding, each text once, by their bytes, with " / " between them. Told again
/// in parts or in whole it stays the same.
std::string told_together(std::string_view known, std::string_view more);

/// A finding told by lists. It is no finding of ours: nothing tells which feet were looked at then.
struct PastFindingRow {
  static constexpr std::string_view table = "past_finding";
  static constexpr int key_columns = 4;
  HerdId herd;
  CowId cow;
  Day day;
  std::int32_t position = 0;  // among those of her day, from 1
  std::optional<Foot> foot;
  Claw claw = Claw::not_called;
  Lesion lesion = Lesion::other;
  Place place = Place::not_called;
  std::optional<std::int32_t> zone;
  Degree degree = Degree::not_called;
  DdStage stage = DdStage::not_called;
  std::string words;
  std::string remark;
  LesionScheme scheme = LesionScheme::icar;
  std::optional<std::string> source;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("herd", &PastFindingRow::herd, "herd");
    visit("cow", &PastFindingRow::cow, "cow");
    visit("day", &PastFindingRow::day, "the day it was found");
    visit("position", &PastFindingRow::position, "which finding of her day, from 1");
    visit("foot", &PastFindingRow::foot, "LF RF LH RH, when a list told it");
    visit("claw", &PastFindingRow::claw, "outside, inside, both, not called, none");
    visit("lesion", &PastFindingRow::lesion, "ICAR code, or our word where there is none");
    visit("place", &PastFindingRow::place, "where on the foot");
    visit("zone", &PastFindingRow::zone, "zone number 0-12, when a list told it");
    visit("degree", &PastFindingRow::degree, "slight, plain, bad or not called");
    visit("stage", &PastFindingRow::stage, "stage of digital dermatitis");
    visit("words", &PastFindingRow::words, "the lesion as it stood in the list");
    visit("remark", &PastFindingRow::remark, "treatment and remark as they stood");
    visit("scheme", &PastFindingRow::scheme, "how it was known which word means which lesion");
    visit("source", &PastFindingRow::source, "SHA-256 of the file that told it first");
  }
};

/// What the row tells, without whose it is and where it stood.
PastFinding finding_of(const PastFindingRow& row);

}  // namespace evenclaw
