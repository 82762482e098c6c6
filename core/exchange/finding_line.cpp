#include "core/exchange/finding_line.hpp"

#include <utility>

namespace evenclaw {

namespace {

constexpr std::size_t longest_text = 200;

std::string how_to_say(std::string_view column, std::string_view word, std::string_view example) {
  return "say what it means: --words \"" + std::string(column) + ":" + std::string(word) + "=" +
         std::string(example) + "\".";
}

class CellsReading {
 public:
  CellsReading(const std::vector<FindingCell>& cells, const FindingWords& words)
      : cells_(cells), words_(words) {}

  FindingRead read() && {
    for (at_ = 0; at_ < cells_.size(); ++at_) read_cell(cells_[at_]);
    put_together();
    if (read_.is_passed_over) read_.faults.clear();
    return std::move(read_);
  }

 private:
  void refuse(std::string what, std::string remedy) {
    read_.faults.push_back({at_, std::move(what), std::move(remedy)});
  }

  /// The value of a cell; nothing when it was refused or passes its line over.
  template <class T>
  std::optional<T> take(CellSaid<T> said, std::string_view what, std::string remedy) {
    if (said.is_passed_over) read_.is_passed_over = true;
    const bool is_known = said.value || said.is_passed_over;
    if (!is_known) refuse("is no " + std::string(what) + " that is known", std::move(remedy));
    return said.value;
  }

  void read_cell(const FindingCell& cell) {
    const std::string& text = cell.text;
    if (text.size() > longest_text) return refuse("is too long", "Shorten it.");
    switch (cell.holds) {
      case HerdColumn::lesion:
        return lesion(text);
      case HerdColumn::foot:
      case HerdColumn::claw:
        return foot(cell);
      case HerdColumn::place:
        says_more_ = true;
        return place(take(words_.place(text), "place",
                          "Write heel, middle of the sole ... or zone 4, or " +
                              how_to_say("place", text, "heel")));
      case HerdColumn::zone:
        says_more_ = true;
        return place(take(words_.zone(text), "zone", "Write its number, 0 to 12."));
      case HerdColumn::degree:
        return degree(text);
      case HerdColumn::stage:
        return stage(text);
      case HerdColumn::treatment:
        treatment_ = text;
        return;
      case HerdColumn::remark:
        remark_ = text;
        return;
      case HerdColumn::ignore:
      case HerdColumn::number:
      case HerdColumn::tag:
      case HerdColumn::electronic:
      case HerdColumn::name:
      case HerdColumn::breed:
      case HerdColumn::born:
      case HerdColumn::heifer_or_cow:
      case HerdColumn::weight:
      case HerdColumn::calved:
      case HerdColumn::lactation:
      case HerdColumn::dry_off:
      case HerdColumn::due_to_calve:
      case HerdColumn::arrived:
      case HerdColumn::left:
      case HerdColumn::reason:
      case HerdColumn::event:
      case HerdColumn::day:
        return;
    }
  }

  void lesion(const std::string& text) {
    lesion_ = take(words_.lesion(text), "lesion",
                   "Say what it means: --lesions \"" + text +
                       "=CODE\"; ignore as the code passes "
                       "its lines over. The codes: docs/format/vocabulary.md.");
    read_.finding.words = text;
    has_lesion_ = true;
  }

  void foot(const FindingCell& cell) {
    const bool is_claw = cell.holds == HerdColumn::claw;
    const std::string remedy =
        is_claw ? "Write outside or inside, or " + how_to_say("claw", cell.text, "outside")
                : "Write LF, RF, LH or RH, or " + how_to_say("foot", cell.text, "LH");
    const auto said = take(words_.foot(cell.holds, cell.text), is_claw ? "claw" : "foot", remedy);
    if (!said) return;
    PastFinding& finding = read_.finding;
    const bool is_otherwise = (said->foot && finding.foot && said->foot != finding.foot) ||
                              (said->claw && claw_ && said->claw != claw_);
    if (is_otherwise) {
      return refuse("is another foot or claw than the cell before it says", "Mend one of them.");
    }
    if (said->foot) finding.foot = said->foot;
    if (said->claw) claw_ = said->claw;
  }

  void place(const std::optional<PlaceSaid>& said) {
    if (!said || said->place == Place::not_called) return;
    PastFinding& finding = read_.finding;
    const bool is_known = finding.place != Place::not_called;
    const bool is_other_zone = said->zone && finding.zone && said->zone != finding.zone;
    if ((is_known && finding.place != said->place) || is_other_zone) {
      return refuse("is another place than the cell before it says", "Mend one of them.");
    }
    finding.place = said->place;
    if (said->zone) finding.zone = said->zone;
  }

  void degree(const std::string& text) {
    says_more_ = true;
    const auto said = take(words_.degree(text), "degree",
                           "Write slight, plain or bad, or " + how_to_say("degree", text, "plain"));
    if (said) read_.finding.degree = *said;
  }

  void stage(const std::string& text) {
    says_more_ = true;
    stage_at_ = at_;
    const auto said =
        take(words_.stage(text), "stage",
             "Write M0 to M4.1, raw, scab or chronic, or " + how_to_say("stage", text, "M2"));
    if (said) read_.finding.stage = *said;
  }

  void put_together() {
    PastFinding& finding = read_.finding;
    if (!has_lesion_) {
      if (!says_more_) {
        read_.is_passed_over = true;
      } else {
        read_.faults.push_back({std::nullopt, "no lesion stands in the line, and it tells of one",
                                "Write the lesion, or leave the line out."});
      }
      return;
    }
    finding.remark = treatment_;
    if (!remark_.empty()) finding.remark += (treatment_.empty() ? "" : "; ") + remark_;
    if (!lesion_) return;
    finding.lesion = *lesion_;
    const bool needs_claw = facts_of(*lesion_).kept_on == KeptOn::claw;
    finding.claw = claw_.value_or(needs_claw ? Claw::not_called : Claw::none);
    const bool has_stage = finding.stage != DdStage::not_called;
    if (!has_stage || *lesion_ == Lesion::dd) return;
    at_ = stage_at_;
    refuse("is a stage of digital dermatitis, and the line tells of another lesion",
           "Write the digital dermatitis in a line of its own, or say --words \"stage:" +
               cells_[at_].text + "=not called\".");
  }

  const std::vector<FindingCell>& cells_;
  const FindingWords& words_;
  FindingRead read_;
  std::size_t at_ = 0;
  std::size_t stage_at_ = 0;
  bool has_lesion_ = false;
  bool says_more_ = false;
  std::optional<Lesion> lesion_;
  std::optional<Claw> claw_;
  std::string treatment_;
  std::string remark_;
};

}  // namespace

FindingRead finding_in(const std::vector<FindingCell>& cells, const FindingWords& words) {
  return CellsReading(cells, words).read();
}

}  // namespace evenclaw
