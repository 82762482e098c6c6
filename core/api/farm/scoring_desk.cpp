#include "core/api/farm/scoring_desk.hpp"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <utility>
#include <variant>
#include <vector>

#include "core/api/farm/refused_item.hpp"
#include "core/api/farm/scoring_words.hpp"
#include "core/api/farm/trimmed_lately.hpp"
#include "core/api/recording/cow_finder.hpp"
#include "core/log/farm_bodies.hpp"
#include "core/trade/farm_line/scoring_line.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/mobility_scoring.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view after_trim_rule = "scored-after-trim";

std::string score_words(const MobilityScoreRow& known) {
  return known.score ? std::to_string(*known.score) : std::string("not scored");
}

bool says_the_same(const MobilityScoreRow& known, const CowScored& said) {
  return known.score == said.score && known.feet == said.feet;
}

std::string mended(const std::string& number, const std::string& score) {
  return "no, " + number + ' ' + score;
}

}  // namespace

class ScoringDesk::State {
 public:
  State(const Ports& ports, AtFarm where, const Language& language, CowFinder finder,
        TrimmedLately trimmed)
      : ports_(ports),
        where_(std::move(where)),
        language_(language),
        finder_(std::move(finder)),
        trimmed_(std::move(trimmed)) {}

  Result<Reply> say_all(std::span<const std::string> lines) {
    reply_ = {};
    waiting_.clear();
    for (const std::string& line : lines) {
      const Outcome said = say(line);
      if (!said) return said.faults();
    }
    const Outcome written = write();
    if (!written) return written.faults();
    return std::move(reply_);
  }

  Result<Reply> end() {
    reply_ = {};
    for (const VisitId scoring : begun_) {
      const Outcome told = tell_of(scoring);
      if (!told) return told.faults();
    }
    return std::move(reply_);
  }

 private:
  Outcome say(const std::string& text) {
    ++line_;
    const auto read = read_scoring_line(text, scale_, language_, line_);
    if (!read) {
      reply_.items.push_back(refused_item(read.faults().front(), line_));
      return Done{};
    }
    text_ = text;
    for (const ScoringClause& clause : read->clauses) {
      const Outcome taken = std::visit([&](const auto& said) { return take(said); }, clause);
      if (!taken) return taken;
    }
    return Done{};
  }

  Outcome take(const ScaleSaid& said) {
    scale_ = said.scale;
    return begin_scoring();
  }

  Outcome take(const AnimalsSaid& said) {
    animals_ = said.animals;
    return scale_ ? begin_scoring() : Outcome(Done{});  // else it begins with the scale
  }

  Outcome take(const PresentSaid& said) {
    keep_words();
    body_.present = said.animals;
    add_item(ReplyKind::told, std::to_string(said.animals) + " present");
    return Done{};
  }

  Outcome take(const WatchedSaid& said) {
    keep_words();
    body_.watched_at = said.place;
    add_item(ReplyKind::told, "watched at " + said.place);
    return Done{};
  }

  Outcome take(const CowScored& said) {
    std::vector<MobilityScoreRow>& known = known_of(said.number);
    const auto is_same = [&](const MobilityScoreRow& row) { return says_the_same(row, said); };
    const bool is_alone = known.size() == 1 && is_same(known.front());
    const bool is_there = said.scrapped ? known.empty()
                          : said.mends  ? is_alone
                                        : std::any_of(known.begin(), known.end(), is_same);
    if (is_there) {
      add_item(ReplyKind::there_already, "", said.number);
      return Done{};
    }
    keep_words();
    add_item(ReplyKind::saved, "", said.number);
    CowScored scored = with_her_past(said);
    if (!said.mends && !known.empty()) ask_which_holds(said, known.front());
    if (known.empty()) ask_of_number(scored);
    if (said.mends) known.clear();
    if (!said.scrapped) {
      MobilityScoreRow row;
      row.number = said.number;
      row.score = said.score;
      row.feet = said.feet;
      known.push_back(std::move(row));
    }
    body_.cows.push_back(std::move(scored));
    return Done{};
  }

  Outcome take(const CountScored& said) {
    std::vector<std::int32_t>& known = counts_[said.score];
    const std::string name = std::to_string(said.animals) + " at " + std::to_string(said.score);
    const bool is_there = std::count(known.begin(), known.end(), said.animals) > 0 &&
                          (!said.mends || known.size() == 1);
    const bool is_nothing = said.animals == 0 && known.empty();
    if (is_there || is_nothing) {
      add_item(ReplyKind::there_already, "", name);
      return Done{};
    }
    if (!said.mends && !known.empty()) {
      refuse_second_count(said, known.front());
      return Done{};
    }
    keep_words();
    known.clear();
    if (said.animals > 0) known.push_back(said.animals);
    body_.counted.push_back(said);
    add_item(ReplyKind::saved, "", name);
    return Done{};
  }

  /// The scoring of the scale and the animals said last, with what is known of it.
  Outcome begin_scoring() {
    const VisitId scoring = scoring_id(where_.herd.herd, where_.day, *scale_, animals_);
    if (scoring == body_.scoring) return Done{};
    const Outcome added = add_to_journal();
    if (!added) return added;
    body_ = {};
    body_.scoring = scoring;
    body_.day = where_.day;
    body_.scale = *scale_;
    body_.animals = animals_;
    words_of_line_ = 0;
    if (std::count(begun_.begin(), begun_.end(), scoring) == 0) begun_.push_back(scoring);
    return read_known(scoring);
  }

  Outcome read_known(VisitId scoring) {
    scores_.clear();
    counts_.clear();
    const auto rows = select_as<MobilityScoreRow>(
        ports_.store, where_.herd.herd, {{"scoring", Compare::equal, Cell(to_text(scoring))}},
        {"position"});
    if (!rows) return rows.faults();
    for (const MobilityScoreRow& row : *rows) {
      if (row.number.empty()) {
        counts_[row.score.value_or(0)].push_back(row.animals);
      } else {
        known_of(row.number).push_back(row);
      }
    }
    return Done{};
  }

  std::vector<MobilityScoreRow>& known_of(const std::string& number) {
    return scores_[plain_number(number)];
  }

  CowScored with_her_past(CowScored said) {
    said.cow = finder_.carrier(said.number);
    if (!said.cow) {
      said.doubt = NumberDoubt::not_known;
      return said;
    }
    if (finder_.left(*said.cow)) said.doubt = NumberDoubt::has_left;
    said.days_after_trim = trimmed_.days_before(*said.cow);
    if (said.days_after_trim && said.score) note_trim(said);
    return said;
  }

  /// Once a session: the others are marked in the records.
  void note_trim(const CowScored& said) {
    if (has_noted_trim_) return;
    has_noted_trim_ = true;
    NoteShown shown;
    shown.rule = after_trim_rule;
    const std::int32_t days = *said.days_after_trim;
    shown.words = said.number + " was in the crush " +
                  (days == 0   ? std::string("the same day")
                   : days == 1 ? std::string("the day before")
                               : std::to_string(days) + " days before") +
                  ": in the week after a trim cows walk worse";
    ReplyItem item;
    item.kind = ReplyKind::note;
    item.line = line_;
    item.slug = after_trim_rule;
    item.words = shown.words +
                 " (14 % lame before, 34 % right after: Van Hertem 2014); "
                 "such scores are marked";
    reply_.items.push_back(std::move(item));
    body_.notes.push_back(std::move(shown));
  }

  void ask_of_number(const CowScored& scored) {
    if (scored.scrapped || scored.doubt == NumberDoubt::none) return;
    ReplyItem item = question(scored.number);
    if (scored.doubt == NumberDoubt::has_left) {
      item.words = "she was said to have left; kept as called";
    } else {
      item.words = "no cow on record carries that number; kept as called";
      item.remedy = did_you_mean(finder_.nearest(scored.number));
    }
    item.answers = {"scrap " + scored.number};
    reply_.items.push_back(std::move(item));
  }

  void ask_which_holds(const CowScored& said, const MobilityScoreRow& before) {
    ReplyItem item = question(said.number);
    const std::string now = said.score ? std::to_string(*said.score) : std::string("not scored");
    item.words = "scored twice: " + score_words(before) + ", then " + now + "; which holds?";
    item.answers = {mended(said.number, score_words(before)), mended(said.number, now)};
    reply_.items.push_back(std::move(item));
  }

  [[nodiscard]] ReplyItem question(const std::string& number) const {
    ReplyItem item;
    item.kind = ReplyKind::question;
    item.line = line_;
    item.cow = number;
    return item;
  }

  void refuse_second_count(const CountScored& said, std::int32_t before) {
    const std::string score = std::to_string(said.score);
    ReplyItem item;
    item.kind = ReplyKind::refused;
    item.slug = "answer-needed";
    item.line = line_;
    item.words = std::to_string(before) + " were counted at " + score + " before";
    item.remedy = "say how many it is altogether: \"no, " + std::to_string(before + said.animals) +
                  " at " + score + "\"";
    reply_.items.push_back(std::move(item));
  }

  /// Those that say "saved" get their entry when it is written.
  void add_item(ReplyKind kind, std::string words, std::string cow = "") {
    ReplyItem item;
    item.kind = kind;
    item.line = line_;
    item.words = std::move(words);
    item.cow = std::move(cow);
    if (kind == ReplyKind::saved || kind == ReplyKind::told)
      waiting_.push_back(reply_.items.size());
    reply_.items.push_back(std::move(item));
  }

  [[nodiscard]] bool says_anything() const {
    return !body_.cows.empty() || !body_.counted.empty() || body_.present.has_value() ||
           !body_.watched_at.empty();
  }

  /// The line as said, once for all it says of this scoring.
  void keep_words() {
    if (words_of_line_ != line_) body_.words.push_back(text_);
    words_of_line_ = line_;
  }

  Outcome add_to_journal() {
    if (!says_anything()) return Done{};
    if (!journal_) {
      auto journal = Journal::open(ports_, where_.herd.herd.value);
      if (!journal) return journal.faults();
      journal_.emplace(*std::move(journal));
    }
    const EntryId id = journal_->fresh_id();
    const Outcome added = journal_->add(body_, {id, {}, where_.by});
    if (!added) return added;
    for (const std::size_t at : waiting_) reply_.items[at].entry = id;
    waiting_.clear();
    body_.present.reset();
    body_.watched_at.clear();
    body_.cows.clear();
    body_.counted.clear();
    body_.notes.clear();
    body_.words.clear();
    words_of_line_ = 0;
    return Done{};
  }

  Outcome write() {
    const Outcome added = add_to_journal();
    if (!added) return added;
    if (!journal_ || journal_->unwritten().empty()) return Done{};
    const auto kept = journal_->write();
    if (!kept) return kept.faults();
    return Done{};
  }

  Outcome tell_of(VisitId scoring) {
    const auto rows = select_as<MobilityScoringRow>(
        ports_.store, where_.herd.herd, {{"scoring", Compare::equal, Cell(to_text(scoring))}});
    if (!rows) return rows.faults();
    for (const MobilityScoringRow& row : *rows) {
      ReplyItem item;
      item.kind = ReplyKind::told;
      item.words = scoring_words(row);
      reply_.items.push_back(std::move(item));
      if (!row.present || *row.present >= row.scored + row.not_scored + row.in_doubt) continue;
      ReplyItem asked;
      asked.kind = ReplyKind::question;
      asked.words = "more were scored than the " + std::to_string(*row.present) + " present";
      asked.remedy = "say again how many were there, or what was scored twice";
      reply_.items.push_back(std::move(asked));
    }
    return Done{};
  }

  const Ports ports_;
  AtFarm where_;
  const Language& language_;
  CowFinder finder_;
  TrimmedLately trimmed_;
  std::optional<Journal> journal_;
  std::optional<MobilityScale> scale_;
  std::string animals_;
  MobilityScoring body_;                                         // what is not written yet
  std::map<std::string, std::vector<MobilityScoreRow>> scores_;  // by plain number
  std::map<std::int32_t, std::vector<std::int32_t>> counts_;     // by score
  std::vector<VisitId> begun_;
  Reply reply_;
  std::vector<std::size_t> waiting_;  // items of the reply whose entry is not made yet
  std::string text_;
  std::int32_t line_ = 0;
  std::int32_t words_of_line_ = 0;
  bool has_noted_trim_ = false;
};

ScoringDesk::ScoringDesk(std::unique_ptr<State> state) : state_(std::move(state)) {}

ScoringDesk::ScoringDesk(ScoringDesk&&) noexcept = default;
ScoringDesk& ScoringDesk::operator=(ScoringDesk&&) noexcept = default;
ScoringDesk::~ScoringDesk() = default;

Result<ScoringDesk> ScoringDesk::open(const Ports& ports, const AtFarm& where,
                                      const Language& language) {
  const auto identity = ports.store.identity();
  if (!identity) return identity.faults();
  const LookingAt looking{where.herd.herd, VisitId{}, where.day, identity->device};
  auto finder = CowFinder::open(ports.store, looking);
  if (!finder) return finder.faults();
  auto trimmed = TrimmedLately::open(ports.store, where.herd.herd, where.day);
  if (!trimmed) return trimmed.faults();
  return ScoringDesk(
      std::make_unique<State>(ports, where, language, *std::move(finder), *std::move(trimmed)));
}

Result<Reply> ScoringDesk::say_all(std::span<const std::string> lines) {
  return state_->say_all(lines);
}

Result<Reply> ScoringDesk::end() {
  return state_->end();
}

}  // namespace evenclaw
