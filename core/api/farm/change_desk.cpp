#include "core/api/farm/change_desk.hpp"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

#include "core/api/farm/change_words.hpp"
#include "core/api/farm/refused_item.hpp"
#include "core/api/journal.hpp"
#include "core/base/text.hpp"
#include "core/log/farm_bodies.hpp"
#include "core/trade/farm_line/change_line.hpp"

namespace evenclaw {

namespace {

Fault not_one_change(std::string message, std::string remedy) {
  return {.slug = "answer-needed", .message = std::move(message), .remedy = std::move(remedy)};
}

/// What `told` says that the row does not say so yet.
bool adds_something(const FarmChangeRow& row, const ChangeTold& told) {
  const bool why =
      told.why != ChangeWhy::not_told && (told.why != row.why || told.why_words != row.why_words);
  const bool decided = told.decided && told.decided != row.decided;
  const bool state = told.state != ChangeState::not_told &&
                     (told.state != row.state || told.finished != row.finished);
  const bool reach = told.reach != ChangeReach::not_told &&
                     (told.reach != row.reach || told.animals != row.animals);
  return why || decided || state || reach;
}

void tell(FarmChangeRow& row, const ChangeTold& told) {
  if (told.why != ChangeWhy::not_told) {
    row.why = told.why;
    row.why_words = told.why_words;
  }
  if (told.decided) row.decided = told.decided;
  if (told.state != ChangeState::not_told) {
    row.state = told.state;
    row.finished = told.finished;
  }
  if (told.reach == ChangeReach::not_told) return;
  row.reach = told.reach;
  row.animals = told.animals;
}

bool is_altered_so(const FarmChangeRow& row, const ChangeLine& said) {
  if (row.driver != said.driver || fold_case(row.words) != fold_case(said.altered)) return false;
  // The same again years later is another one.
  return !said.told.decided || !row.decided || *said.told.decided == *row.decided;
}

}  // namespace

class ChangeDesk::State {
 public:
  State(const Ports& ports, AtFarm where, const Language& language,
        std::vector<FarmChangeRow> known)
      : ports_(ports), where_(std::move(where)), language_(language), known_(std::move(known)) {}

  Result<Reply> say_all(std::span<const std::string> lines) {
    reply_ = {};
    for (const std::string& line : lines) {
      const Outcome said = say(line);
      if (!said) return said.faults();
    }
    if (journal_ && !journal_->unwritten().empty()) {
      const auto kept = journal_->write();
      if (!kept) return kept.faults();
    }
    return std::move(reply_);
  }

  Result<Reply> end() {
    Reply reply;
    for (const VisitId change : told_here_) {
      const FarmChangeRow* row = known(change);
      if (row == nullptr) continue;
      ReplyItem item;
      item.kind = ReplyKind::told;
      item.words = change_words(*row);
      reply.items.push_back(std::move(item));
      ask_what_is_missing(*row, reply);
    }
    return reply;
  }

 private:
  Outcome say(const std::string& text) {
    ++line_;
    const auto read = read_change_line(text, where_.day, language_, line_);
    if (!read) {
      reply_.items.push_back(refused_item(read.faults().front(), line_));
      return Done{};
    }
    if (!*read) return Done{};
    const ChangeLine& said = **read;
    const auto row = change_meant(said);
    if (!row) {
      reply_.items.push_back(refused_item(row.faults().front(), line_));
      return Done{};
    }
    return take(said, *row, text);
  }

  /// The one that is known, or a new one.
  Result<FarmChangeRow> change_meant(const ChangeLine& said) {
    if (!said.driver) return last_told();
    if (said.altered.empty()) return the_open_one(said);
    for (auto at = known_.rbegin(); at != known_.rend(); ++at) {
      if (is_altered_so(*at, said)) return *at;
    }
    FarmChangeRow row;
    row.herd = where_.herd.herd;
    row.day = where_.day;
    row.driver = *said.driver;
    row.words = said.altered;
    row.change = change_id(where_.herd.herd, {row.driver, row.words, said.told.animals,
                                              said.told.decided.value_or(where_.day)});
    return row;
  }

  Result<FarmChangeRow> last_told() {
    const FarmChangeRow* last = told_here_.empty() ? nullptr : known(told_here_.back());
    if (last != nullptr) return *last;
    return not_one_change("of which change is that told?",
                          "say what was altered first: \"footbath finished 20 Nov\"");
  }

  Result<FarmChangeRow> the_open_one(const ChangeLine& said) {
    std::vector<const FarmChangeRow*> open;
    for (const FarmChangeRow& row : known_) {
      const bool may_be_meant = said.scrapped || row.state != ChangeState::finished;
      if (row.driver == said.driver && may_be_meant) open.push_back(&row);
    }
    if (open.size() == 1) return *open.front();
    std::string names;
    for (const FarmChangeRow* row : open) {
      names += (names.empty() ? "" : " / ") + change_name(*row);
    }
    if (open.empty()) {
      return not_one_change("no such change is going on; how was it altered?",
                            "say it behind a colon: \"footbath: copper; planned\"");
    }
    return not_one_change("which of several is it?", "say it with its words: " + names);
  }

  Outcome take(const ChangeLine& said, FarmChangeRow row, const std::string& text) {
    const bool is_known = known(row.change) != nullptr;
    if (said.scrapped ? !is_known : is_known && !adds_something(row, said.told)) {
      add_item(ReplyKind::there_already, change_name(row));
      return Done{};
    }
    FarmChange body;
    body.change = row.change;
    body.day = where_.day;
    body.driver = row.driver;
    body.altered = row.words;
    body.told = said.told;
    body.scrapped = said.scrapped;
    body.words = {text};
    add_item(ReplyKind::saved, change_name(row));
    const Outcome added = add_to_journal(body);
    if (!added) return added;
    tell(row, said.told);
    remember(std::move(row), said.scrapped);
    return Done{};
  }

  void remember(FarmChangeRow row, bool is_scrapped) {
    const VisitId change = row.change;
    const auto is_it = [&](const FarmChangeRow& other) { return other.change == change; };
    known_.erase(std::remove_if(known_.begin(), known_.end(), is_it), known_.end());
    told_here_.erase(std::remove(told_here_.begin(), told_here_.end(), change), told_here_.end());
    if (is_scrapped) return;
    known_.push_back(std::move(row));
    told_here_.push_back(change);
  }

  [[nodiscard]] const FarmChangeRow* known(VisitId change) const {
    for (const FarmChangeRow& row : known_) {
      if (row.change == change) return &row;
    }
    return nullptr;
  }

  static void ask(const FarmChangeRow& row, std::string words, std::vector<std::string> answers,
                  Reply& reply) {
    ReplyItem item;
    item.kind = ReplyKind::question;
    item.words = change_name(row) + ": " + std::move(words);
    item.answers = std::move(answers);
    reply.items.push_back(std::move(item));
  }

  static void ask_what_is_missing(const FarmChangeRow& row, Reply& reply) {
    if (row.why == ChangeWhy::not_told) {
      ask(row, "why was it made?",
          {"after a bad visit", "planned", "vet advised", "rebuilt anyway", "because ..."}, reply);
    }
    if (!row.decided) ask(row, "when was it decided?", {"decided 1 Oct"}, reply);
    if (row.state == ChangeState::not_told) {
      ask(row, "is it finished?", {"finished 20 Oct", "still going on"}, reply);
    }
    if (row.reach == ChangeReach::not_told) {
      ask(row, "whom does it concern?", {"whole herd", "only the dry cows"}, reply);
    }
    if (row.decided && row.finished && *row.finished < *row.decided) {
      ask(row, "finished before it was decided? Say the right day.", {"decided 1 Oct"}, reply);
    }
  }

  void add_item(ReplyKind kind, std::string what) {
    ReplyItem item;
    item.kind = kind;
    item.line = line_;
    item.cow = std::move(what);
    reply_.items.push_back(std::move(item));
  }

  Outcome add_to_journal(const FarmChange& body) {
    if (!journal_) {
      auto journal = Journal::open(ports_, where_.herd.herd.value);
      if (!journal) return journal.faults();
      journal_.emplace(*std::move(journal));
    }
    const EntryId id = journal_->fresh_id();
    const Outcome added = journal_->add(body, {id, {}, where_.by});
    if (added) reply_.items.back().entry = id;
    return added;
  }

  Ports ports_;
  AtFarm where_;
  const Language& language_;
  std::vector<FarmChangeRow> known_;
  std::vector<VisitId> told_here_;
  std::optional<Journal> journal_;
  Reply reply_;
  std::int32_t line_ = 0;
};

ChangeDesk::ChangeDesk(std::unique_ptr<State> state) : state_(std::move(state)) {}

ChangeDesk::ChangeDesk(ChangeDesk&&) noexcept = default;
ChangeDesk& ChangeDesk::operator=(ChangeDesk&&) noexcept = default;
ChangeDesk::~ChangeDesk() = default;

Result<ChangeDesk> ChangeDesk::open(const Ports& ports, const AtFarm& where,
                                    const Language& language) {
  auto known = select_as<FarmChangeRow>(ports.store, where.herd.herd, {}, {"day"});
  if (!known) return known.faults();
  return ChangeDesk(std::make_unique<State>(ports, where, language, *std::move(known)));
}

Result<Reply> ChangeDesk::say_all(std::span<const std::string> lines) {
  return state_->say_all(lines);
}

Result<Reply> ChangeDesk::end() {
  return state_->end();
}

}  // namespace evenclaw
