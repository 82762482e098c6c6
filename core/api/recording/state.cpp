#include "core/api/recording/state.hpp"

#include <algorithm>
#include <memory>
#include <utility>

#include "core/api/cow_names.hpp"
#include "core/api/long_in_crush.hpp"
#include "core/api/products.hpp"
#include "core/base/text.hpp"

namespace evenclaw {

namespace {

ReplyKind kind_of(Rank rank) {
  switch (rank) {
    case Rank::note:
      return ReplyKind::note;
    case Rank::ask:
      return ReplyKind::ask;
    case Rank::stop:
      return ReplyKind::stop;
  }
  return ReplyKind::note;
}

std::string joined(const std::vector<std::string>& words) {
  std::string all;
  for (const std::string& word : words) all += (all.empty() ? "" : " / ") + word;
  return all;
}

/// The first line that is neither blank nor a comment.
std::string first_said(std::span<const std::string> lines) {
  const auto said = std::find_if(lines.begin(), lines.end(), [](const std::string& line) {
    return !trimmed(line).empty() && trimmed(line).front() != '#';
  });
  return said == lines.end() ? std::string() : *said;
}

/// Day and feet may have been put right since the visit was looked up.
Result<Visit> as_it_is_now(Store& store, Visit visit) {
  const auto rows = select_as<VisitRow>(store, visit.herd,
                                        {{"visit", Compare::equal, Cell(to_text(visit.visit))}});
  if (!rows) return rows.faults();
  if (rows->empty()) {
    return Fault{.slug = "visit-not-found", .message = "The visit was never started."};
  }
  visit.day = rows->front().day;
  visit.todays_feet = rows->front().todays_feet;
  visit.from_paper = rows->front().from_paper;
  visit.closed = rows->front().closed;
  return visit;
}

}  // namespace

RecordingState::RecordingState(const Ports& ports, const Visit& visit, const Language& language,
                               FromBefore from_before)
    : ports_(ports),
      visit_(visit),
      language_(&language),
      journal_(std::move(from_before.journal)),
      finder_(std::move(from_before.finder)),
      before_(std::move(from_before.recorded)),
      batches_(std::move(from_before.batches)),
      medicine_(std::move(from_before.medicine)),
      long_minutes_(from_before.long_minutes),
      by_(before_.last_said_by()) {}

Result<std::unique_ptr<RecordingState>> RecordingState::open(const Ports& ports,
                                                             const Visit& wanted,
                                                             const Language& language) {
  const auto now = as_it_is_now(ports.store, wanted);
  if (!now) return now.faults();
  const Visit& visit = *now;
  auto journal = Journal::open(ports, visit.herd.value);
  if (!journal) return journal.faults();
  auto finder =
      CowFinder::open(ports.store, {visit.herd, visit.visit, visit.day, journal->device()});
  if (!finder) return finder.faults();
  auto before = RecordedBefore::open(ports.store, visit);
  if (!before) return before.faults();
  auto batches = RecordedBatches::open(ports.store, visit);
  if (!batches) return batches.faults();
  auto medicine = medicine_rules(ports.store, visit.herd, visit.day);
  if (!medicine) return medicine.faults();
  const auto long_minutes = long_in_crush(ports.store);
  if (!long_minutes) return long_minutes.faults();
  std::unique_ptr<RecordingState> state(
      new RecordingState(ports, visit, language,
                         {*std::move(journal), *std::move(finder), *std::move(before),
                          *std::move(batches), *std::move(medicine), *long_minutes}));
  const Outcome taken_up = state->take_up_draft();
  if (!taken_up) return taken_up.faults();
  return state;
}

Outcome RecordingState::take_up_draft() {
  const auto text = ports_.store.draft();
  if (!text) return text.faults();
  if (text->empty()) return Done{};
  const auto kept = kept_draft(*text);
  if (!kept) return kept.faults();
  if (kept->visit != visit_.visit) return record_in_other_visit(*kept);
  const Outcome taken_up = take_up(*kept);
  if (!taken_up) return taken_up;
  const bool only_refused = in_crush_->draft.words.empty();
  const std::string lines = joined(only_refused ? kept->refused : in_crush_->draft.words);
  answer(ReplyKind::mark, "still in the crush: " + lines).cow = cow_in_crush();
  opening_.items = std::move(items_);
  opening_.in_crush = cow_in_crush();
  items_.clear();
  return Done{};
}

Outcome RecordingState::take_up(const KeptDraft& kept) {
  auto past = past_of(kept.cow);
  if (!past) return past.faults();
  InCrush cow;
  cow.cow = kept.cow;
  auto earlier = left_open_earlier(*past);
  if (!earlier) return earlier.faults();
  cow.past = *std::move(past);
  cow.earlier = *std::move(earlier);
  auto near = near_cows(kept.said, cow.past);
  if (!near) return near.faults();
  cow.near = *std::move(near);
  if (cow.earlier) cow.earlier->warnings = WarningLedger(kept.warnings);
  cow.warnings = WarningLedger(kept.warnings);
  cow.done_said = kept.done_said;
  cow.draft.turn.cow = kept.said;
  cow.named_in_refused = true;
  for (const std::string& line : kept.words) read_again(cow, line);
  for (std::size_t at = 0; at < kept.refused.size(); ++at) {
    // An older version kept the lines without their feet.
    const bool is_known = at < kept.spoken_of.size();
    cow.refused.emplace_back(kept.refused[at], is_known ? kept.spoken_of[at] : cow.draft.feet_named,
                             *language_);
    cow.refused.back().said_before = cow.draft.words.size();
  }
  cow.taken_up = cow.draft.words.size();
  cow.taken_anew.clear();  // shown before the recording broke off
  cow.told_of = kept.told_of.value_or("");
  cow.broke_off = true;
  held_back_by_ = kept.held_back_by.value_or("");
  just_refused_ = kept.just_refused.value_or("");
  by_ = {kept.caller, kept.writer};
  cow.by = {kept.called_by.value_or(kept.caller), kept.writer};
  in_crush_ = std::move(cow);
  draft_kept_ = true;
  return Done{};
}

/// A file or pipe that starts anew gives the lines of a turn that broke off once more.
bool RecordingState::is_given_again(std::string_view text) {
  if (typed_ || !in_crush_ || in_crush_->given_again == in_crush_->taken_up) return false;
  if (in_crush_->draft.words[in_crush_->given_again] != trimmed(text)) return false;
  ++in_crush_->given_again;
  return true;
}

/// A line of a half-entered turn, as it was taken before the recording broke off.
void RecordingState::read_again(InCrush& cow, const std::string& text) const {
  const auto line = read(text, {visit_.day, true, 0});
  cow.draft.words.push_back(text);
  const RefusedLine unread(text, cow.draft.feet_named, *language_);
  if (!line) {
    // Another version of the program took it; the words stay and the turn is asked about.
    cow.refused.push_back(unread);
    return;
  }
  const auto plain =
      plain_line(*line, cow.draft, {cow.past.rows, visit_.visit, visit_.day}, *language_);
  if (!plain) {
    cow.refused.push_back(unread);
    return;
  }
  cow.fine_before_named.add(plain->unnamed);
  for (const Clause& clause : plain->line.clauses) {
    const auto* said = std::get_if<TurnClause>(&clause);
    const auto* right = said == nullptr ? nullptr : std::get_if<CowCorrected>(said);
    const auto* named = std::get_if<CowNamed>(&clause);
    const bool is_other = named != nullptr && !same_said(cow.draft.turn.cow, named->cow);
    if (is_other) cow.draft.turn.cow = named->cow;
    if (right != nullptr) cow.draft.turn.cow = right->cow;
    if (right != nullptr || named != nullptr) cow.named_in_refused = false;
    if (said == nullptr || right != nullptr) continue;
    const Outcome added = add_to(cow, *said);
    if (!added) cow.refused.push_back(unread);
  }
}

Outcome RecordingState::record_in_other_visit(const KeptDraft& kept) {
  const auto rows = select_as<VisitRow>(ports_.store, kept.herd,
                                        {{"visit", Compare::equal, Cell(to_text(kept.visit))}});
  if (!rows) return rows.faults();
  // A visit the store no longer knows leaves its draft where it is: nothing is thrown away.
  if (rows->empty()) return Done{};
  auto other = open(ports_, visit_of(rows->front()), *language_);
  if (!other) return other.faults();
  auto reply = (*other)->end(LetOutBy::other_visit);
  if (!reply) return reply.faults();
  opening_.items = std::move(reply->items);
  return Done{};
}

/// What is known of her before this turn: where it corrects another, as if that one had never been.
Result<CowPast> RecordingState::past_of(CowId cow, const RecordedTurn* corrected) {
  HerdLog log(ports_.store, visit_.herd);
  log.also(journal_.unwritten());
  if (corrected != nullptr) {
    for (const RecordedTurn* turn : before_.line_of(corrected->entry)) log.without(turn->entry);
  }
  auto past = log.past_of_one_here(cow, visit_.visit);
  if (past) past->medicine = medicine_known_for(cow, corrected);
  return past;
}

/// A product is asked about once at a visit, whatever other cow it was said of first.
MedicineRules RecordingState::medicine_known_for(CowId cow, const RecordedTurn* corrected) const {
  MedicineRules known = medicine_;
  known.asked = before_.products_said_of_others(cow, corrected);
  return known;
}

/// Of a cow of whom news is told: she need not be here.
Result<CowPast> RecordingState::past_told(CowId cow) {
  HerdLog log(ports_.store, visit_.herd);
  log.also(journal_.unwritten());
  return log.past_of(cow, visit_.visit);
}

LineContext RecordingState::context() const {
  return {visit_.day, in_crush_.has_value(), line_number_};
}

std::string RecordingState::cow_in_crush() const {
  return in_crush_ ? said_as(in_crush_->draft.turn.cow, *language_) : std::string();
}

ReplyItem& RecordingState::answer(ReplyKind kind, std::string words) {
  ReplyItem item;
  item.kind = kind;
  item.line = line_number_;
  item.words = std::move(words);
  items_.push_back(std::move(item));
  return items_.back();
}

/// A note is for the sheet; beside the crush nobody is told.
void RecordingState::show(const std::vector<Warning>& warnings, const CowSaid& cow) {
  for (const Warning& warning : warnings) {
    if (warning.rank == Rank::note) continue;
    ReplyItem& item = answer(kind_of(warning.rank), warning.words);
    item.cow = said_as(cow, *language_);
    item.slug = warning.rule;
    item.answers = warning.answers;
  }
}

std::string RecordingState::draft_text() const {
  if (!in_crush_) return {};
  KeptDraft kept;
  kept.herd = visit_.herd;
  kept.visit = visit_.visit;
  kept.cow = in_crush_->cow;
  kept.said = in_crush_->draft.turn.cow;
  kept.caller = by_.caller;
  kept.writer = by_.writer;
  kept.words = in_crush_->draft.words;
  for (const RefusedLine& line : in_crush_->refused) {
    kept.refused.push_back(line.text);
    kept.spoken_of.push_back(line.spoken_of);
  }
  kept.warnings =
      (whole_turn(*in_crush_) ? in_crush_->earlier->warnings : in_crush_->warnings).shown();
  kept.done_said = in_crush_->done_said;
  if (!held_back_by_.empty()) kept.held_back_by = held_back_by_;
  if (!in_crush_->told_of.empty()) kept.told_of = in_crush_->told_of;
  if (!just_refused_.empty()) kept.just_refused = just_refused_;
  if (in_crush_->by.caller != by_.caller) kept.called_by = in_crush_->by.caller;
  return kept_text(kept);
}

Result<Reply> RecordingState::written(std::optional<std::string> draft) {
  const bool keeps_draft = draft && !draft->empty();
  if (draft && !keeps_draft && !draft_kept_) draft.reset();
  if (draft || !journal_.unwritten().empty()) {
    const auto kept = journal_.write(draft);
    if (!kept) return kept.faults();
    draft_kept_ = keeps_draft;
  }
  Reply reply;
  reply.items = std::move(items_);
  reply.in_crush = cow_in_crush();
  items_.clear();
  if (in_crush_) in_crush_->first_answer = 0;
  return reply;
}

Result<Reply> RecordingState::say(std::string_view line) {
  typed_ = true;
  const Outcome taken = take_line(line);
  if (!taken) return taken.faults();
  return written(draft_text());
}

Result<Reply> RecordingState::say_all(std::span<const std::string> lines) {
  typed_ = false;
  for (std::size_t at = 0; at < lines.size(); ++at) {
    next_line_ = first_said(lines.subspan(at + 1));
    const Outcome taken = take_line(lines[at]);
    if (!taken) return taken.faults();
  }
  next_line_.clear();
  return written(draft_text());
}

Result<Reply> RecordingState::end(LetOutBy why) {
  if (in_crush_) {
    const Outcome out = let_out(why);
    if (!out) return out.faults();
  }
  return written(std::string());
}

}  // namespace evenclaw
