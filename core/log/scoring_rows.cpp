#include "core/log/scoring_rows.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "core/log/body.hpp"
#include "core/log/visit_facts.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

/// More stand on no farm; a log from elsewhere may hold anything.
constexpr std::int32_t most_animals = 100'000;

/// Folds what was told of one scoring.
class ScoringFold {
 public:
  ScoringFold(HerdId herd, VisitId scoring) {
    scoring_.herd = herd;
    scoring_.scoring = scoring;
  }

  void add(const Entry& entry, const MobilityScoring& body) {
    const PersonId scorer = entry.envelope.caller.value_or(PersonId{});
    if (!is_told_) {
      scoring_.day = body.day;
      scoring_.scale = body.scale;
      scoring_.animals = body.animals;
      scoring_.scorer = scorer;
      scoring_.writer = entry.envelope.writer.value_or(PersonId{});
    }
    is_told_ = true;
    if (body.present) scoring_.present = body.present;
    if (!body.watched_at.empty()) scoring_.watched_at = body.watched_at;
    for (const CowScored& cow : body.cows) {
      MobilityScoreRow row = row_of(cow, entry.envelope.id, scorer);
      if (cow.scrapped) row.animals = 0;
      add(std::move(row), cow.mends || cow.scrapped);
    }
    for (const CountScored& count : body.counted) {
      add(row_of(count, entry.envelope.id, scorer), count.mends);
    }
  }

  void give(Rows& rows) && {
    if (!is_told_) return;
    number_rows();
    for (const MobilityScoreRow& row : scores_) count(row);
    count_in_doubt();
    rows.mobility_scorings.push_back(scoring_);
    rows.mobility_scores.insert(rows.mobility_scores.end(), scores_.begin(), scores_.end());
  }

 private:
  [[nodiscard]] MobilityScoreRow row_of(const CowScored& cow, EntryId entry,
                                        PersonId scorer) const {
    MobilityScoreRow row;
    row.number = cow.number;
    row.cow = cow.cow;
    row.score = cow.score;
    row.feet = cow.feet;
    row.doubt = cow.doubt;
    row.days_after_trim = cow.days_after_trim;
    row.entry = entry;
    row.scorer = scorer;
    return row;
  }

  [[nodiscard]] MobilityScoreRow row_of(const CountScored& count, EntryId entry,
                                        PersonId scorer) const {
    MobilityScoreRow row;
    row.animals = count.animals;
    row.score = count.score;
    row.entry = entry;
    row.scorer = scorer;
    return row;
  }

  static bool is_of_the_same(const MobilityScoreRow& a, const MobilityScoreRow& b) {
    if (a.number.empty() || b.number.empty()) {
      return a.number.empty() && b.number.empty() && a.score == b.score;
    }
    return plain_number(a.number) == plain_number(b.number);
  }

  static bool says_the_same(const MobilityScoreRow& a, const MobilityScoreRow& b) {
    return a.score == b.score && a.feet == b.feet && a.animals == b.animals;
  }

  void add(MobilityScoreRow row, bool mends) {
    const auto is_same = [&](const MobilityScoreRow& other) { return is_of_the_same(row, other); };
    if (mends) {
      scores_.erase(std::remove_if(scores_.begin(), scores_.end(), is_same), scores_.end());
    }
    const bool is_there = std::any_of(
        scores_.begin(), scores_.end(),
        [&](const MobilityScoreRow& other) { return is_same(other) && says_the_same(row, other); });
    const bool is_count = row.animals > 0 && row.animals <= most_animals;
    if (!is_there && is_count) scores_.push_back(std::move(row));
  }

  void number_rows() {
    for (std::size_t at = 0; at < scores_.size(); ++at) {
      MobilityScoreRow& row = scores_[at];
      row.herd = scoring_.herd;
      row.scoring = scoring_.scoring;
      row.position = static_cast<std::int32_t>(at + 1);
      row.day = scoring_.day;
      row.scale = scoring_.scale;
      row.twice = std::count_if(scores_.begin(), scores_.end(), [&](const MobilityScoreRow& other) {
                    return is_of_the_same(row, other);
                  }) > 1;
    }
  }

  /// Animals counted twice at one score by two writers are two counts; a cow is one.
  void count(const MobilityScoreRow& row) {
    const bool is_cow = !row.number.empty();
    if (is_cow && row.twice) return;
    if (!row.score) {
      ++scoring_.not_scored;
      return;
    }
    std::int32_t* const at[] = {&scoring_.at_0, &scoring_.at_1, &scoring_.at_2,
                                &scoring_.at_3, &scoring_.at_4, &scoring_.at_5};
    const auto score = static_cast<std::size_t>(*row.score);
    if (score < std::size(at)) *at[score] += row.animals;
    scoring_.scored += row.animals;
    (is_cow ? scoring_.cows : scoring_.counted) += row.animals;
    if (row.days_after_trim) ++scoring_.shortly_after_trim;
  }

  void count_in_doubt() {
    std::set<std::string> numbers;
    for (const MobilityScoreRow& row : scores_) {
      if (row.twice && !row.number.empty()) numbers.insert(plain_number(row.number));
    }
    scoring_.in_doubt = static_cast<std::int32_t>(numbers.size());
  }

  MobilityScoringRow scoring_;
  bool is_told_ = false;
  std::vector<MobilityScoreRow> scores_;
};

}  // namespace

void add_scoring_rows(HerdId herd, VisitId scoring, std::span<const Entry* const> counting,
                      Rows& rows) {
  ScoringFold fold(herd, scoring);
  for (const Entry* entry : counting) {
    if (!names_subject(*entry, scoring.value)) continue;
    const auto body = body_as<MobilityScoring>(*entry);
    if (body && body->scoring == scoring) fold.add(*entry, *body);
  }
  std::move(fold).give(rows);
}

}  // namespace evenclaw
