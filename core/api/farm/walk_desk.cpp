#include "core/api/farm/walk_desk.hpp"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <set>
#include <utility>
#include <vector>

#include "core/api/farm/refused_item.hpp"
#include "core/api/farm/walk_words.hpp"
#include "core/api/journal.hpp"
#include "core/log/farm_bodies.hpp"
#include "core/trade/farm_line/walk_line.hpp"
#include "core/trade/farm_walk.hpp"

namespace evenclaw {

namespace {

FarmWalkRow known_row(const WalkMeasured& measured) {
  FarmWalkRow row;
  row.measure = measured.measure;
  row.value = measured.value;
  row.words = measured.words;
  row.fitting = measured.fitting;
  row.looked_at = measured.looked_at;
  row.not_looked_at = measured.not_looked_at;
  return row;
}

bool is_told_by(const FarmWalkRow& known, const WalkMeasured& said) {
  return measured_words(known) == measured_words(said);
}

}  // namespace

class WalkDesk::State {
 public:
  State(const Ports& ports, AtFarm where, const Language& language)
      : ports_(ports), where_(std::move(where)), language_(language) {}

  Outcome begin(const std::string& place) {
    const Outcome added = add_to_journal();
    if (!added) return added;
    body_ = {};
    body_.walk = walk_id(where_.herd.herd, where_.day, place);
    body_.day = where_.day;
    body_.place = place;
    auto rows =
        select_as<FarmWalkRow>(ports_.store, where_.herd.herd,
                               {{"walk", Compare::equal, Cell(to_text(body_.walk))}}, {"position"});
    if (!rows) return rows.faults();
    known_ = *std::move(rows);
    return Done{};
  }

  Result<Reply> say_all(std::span<const std::string> lines) {
    reply_ = {};
    waiting_.clear();
    for (const std::string& line : lines) {
      const Outcome said = say(line);
      if (!said) return said.faults();
    }
    const Outcome added = add_to_journal();
    if (!added) return added.faults();
    if (journal_ && !journal_->unwritten().empty()) {
      const auto kept = journal_->write();
      if (!kept) return kept.faults();
    }
    return std::move(reply_);
  }

  Result<Reply> end() {
    Reply reply;
    std::set<WalkMeasure> said;
    for (const FarmWalkRow& row : known_) said.insert(row.measure);
    std::string words;
    for (const WalkMeasureFacts& facts : all_walk_measures()) {
      if (said.count(facts.measure) > 0) continue;
      words += (words.empty() ? "" : "; ") + std::string(facts.name);
    }
    if (said.empty() || words.empty()) return reply;
    ReplyItem item;
    item.kind = ReplyKind::told;
    item.words = "nothing was said of: " + words;
    reply.items.push_back(std::move(item));
    return reply;
  }

 private:
  Outcome say(const std::string& text) {
    ++line_;
    const auto read = read_walk_line(text, language_, line_);
    if (!read) {
      reply_.items.push_back(refused_item(read.faults().front(), line_));
      return Done{};
    }
    if (read->place) {
      const Outcome begun = begin(*read->place);
      if (!begun) return begun;
    }
    const std::size_t before = body_.measured.size();
    for (const WalkMeasured& measured : read->measured) take(measured);
    if (body_.measured.size() > before) body_.words.push_back(text);
    return Done{};
  }

  void take(const WalkMeasured& said) {
    const auto is_of_it = [&](const FarmWalkRow& row) { return row.measure == said.measure; };
    const auto count = std::count_if(known_.begin(), known_.end(), is_of_it);
    const bool is_told = std::any_of(known_.begin(), known_.end(), [&](const FarmWalkRow& row) {
      return is_of_it(row) && is_told_by(row, said);
    });
    const bool adds_nothing = said.scrapped        ? count == 0
                              : said.not_looked_at ? count > 0 && !said.mends
                              : said.mends         ? is_told && count == 1
                                                   : is_told;
    if (adds_nothing) {
      add_item(ReplyKind::there_already, std::string(facts_of(said.measure).name));
      return;
    }
    const auto gives_way = [&](const FarmWalkRow& row) {
      return is_of_it(row) && (said.mends || said.scrapped || row.not_looked_at);
    };
    known_.erase(std::remove_if(known_.begin(), known_.end(), gives_way), known_.end());
    const auto other = std::find_if(known_.begin(), known_.end(), is_of_it);
    const std::string before = other == known_.end() ? std::string() : measured_words(*other);
    body_.measured.push_back(said);
    add_item(ReplyKind::saved,
             said.scrapped ? std::string(facts_of(said.measure).name) : measured_words(said));
    if (said.scrapped) return;
    known_.push_back(known_row(said));
    if (!said.not_looked_at) tell_compared(said.measure);
    if (!before.empty()) ask_which_holds(said, before);
  }

  /// Once a session and measure.
  void tell_compared(WalkMeasure measure) {
    if (!compared_.insert(measure).second) return;
    ReplyItem item;
    item.kind = ReplyKind::told;
    item.line = line_;
    item.words = std::string(facts_of(measure).name) + ", " + compared_words(measure);
    reply_.items.push_back(std::move(item));
  }

  void ask_which_holds(const WalkMeasured& said, const std::string& before) {
    ReplyItem item;
    item.kind = ReplyKind::question;
    item.line = line_;
    item.words = "said twice: " + before + ", then " + measured_words(said) + "; which holds?";
    item.remedy =
        "say the right one behind \"no\"; or each with its place, on a line before: "
        "\"place old shed\"";
    reply_.items.push_back(std::move(item));
  }

  void add_item(ReplyKind kind, std::string what) {
    ReplyItem item;
    item.kind = kind;
    item.line = line_;
    item.cow = std::move(what);
    if (kind == ReplyKind::saved) waiting_.push_back(reply_.items.size());
    reply_.items.push_back(std::move(item));
  }

  Outcome add_to_journal() {
    if (body_.measured.empty()) return Done{};
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
    body_.measured.clear();
    body_.words.clear();
    return Done{};
  }

  Ports ports_;
  AtFarm where_;
  const Language& language_;
  std::optional<Journal> journal_;
  FarmWalk body_;                   // what is not written yet
  std::vector<FarmWalkRow> known_;  // of the walk through this place
  std::set<WalkMeasure> compared_;
  Reply reply_;
  std::vector<std::size_t> waiting_;  // items of the reply whose entry is not made yet
  std::int32_t line_ = 0;
};

WalkDesk::WalkDesk(std::unique_ptr<State> state) : state_(std::move(state)) {}

WalkDesk::WalkDesk(WalkDesk&&) noexcept = default;
WalkDesk& WalkDesk::operator=(WalkDesk&&) noexcept = default;
WalkDesk::~WalkDesk() = default;

Result<WalkDesk> WalkDesk::open(const Ports& ports, const AtFarm& where, const Language& language) {
  auto state = std::make_unique<State>(ports, where, language);
  const Outcome begun = state->begin("");
  if (!begun) return begun.faults();
  return WalkDesk(std::move(state));
}

Result<Reply> WalkDesk::say_all(std::span<const std::string> lines) {
  return state_->say_all(lines);
}

Result<Reply> WalkDesk::end() {
  return state_->end();
}

}  // namespace evenclaw
