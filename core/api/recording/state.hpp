// The inside of a recording: takes the lines in the order they are said through its parts.
#pragma once

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/ports.hpp"
#include "core/api/recording/checking.hpp"
#include "core/api/recording/counted_animals.hpp"
#include "core/api/recording/crush.hpp"
#include "core/api/recording/her_past.hpp"
#include "core/api/recording/in_crush.hpp"
#include "core/api/recording/kept_draft.hpp"
#include "core/api/recording/last_line.hpp"
#include "core/api/recording/news_desk.hpp"
#include "core/api/recording/people_at_crush.hpp"
#include "core/api/recording/recorded_batches.hpp"
#include "core/api/recording/refused_cow.hpp"
#include "core/api/recording/turns_let_out.hpp"
#include "core/api/recording/two_cows.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/api/reply.hpp"
#include "core/api/visits.hpp"
#include "core/base/result.hpp"
#include "core/trade/call_line/line.hpp"

namespace evenclaw {

/// Every part holds on to the book of the visit and to the crush, so a recording stays where it was
/// made. What is answered to a line is durable once say() or say_all() has given it.
class RecordingState {
 public:
  RecordingState(const RecordingState&) = delete;
  RecordingState& operator=(const RecordingState&) = delete;

  static Result<std::unique_ptr<RecordingState>> open(const Ports& ports, const Visit& visit,
                                                      const Language& language);

  Result<Reply> say(std::string_view line);
  Result<Reply> say_all(std::span<const std::string> lines);
  Result<Reply> end(LetOutBy why);

  [[nodiscard]] const Visit& visit() const { return book_.visit; }

  [[nodiscard]] const Reply& opening() const { return opening_; }

  [[nodiscard]] const std::optional<InCrush>& in_crush() const { return crush_.cow; }

  [[nodiscard]] const Language& language() const { return book_.language; }

  [[nodiscard]] LineContext context() const;

 private:
  RecordingState(VisitBook book, RecordedBatches batches);

  // state.cpp
  Outcome take_up_draft();
  bool is_given_again(std::string_view text);
  Outcome take_up(const KeptDraft& kept);
  Outcome take_up_last_line(const KeptDraft& kept);
  Outcome record_in_other_visit(const KeptDraft& kept);
  Result<Reply> written(std::optional<std::string> draft);

  // say.cpp
  Outcome take_line(std::string_view text);
  Outcome take_said(std::string_view text);
  Outcome ask_whose_was_wrong(const Line& line, std::string_view text);
  Result<bool> said_in_between(const Result<Line>& line, std::string_view text,
                               const LastLine& before);
  Outcome take_understood(Line line, std::string_view text);
  Outcome take_held_back(const Line& line, std::string_view text);
  Outcome refuse_for(std::string_view text, const Faults& faults);
  Outcome take_read(const Line& line, std::string_view text);
  [[nodiscard]] Faults not_applicable(const Line& line) const;
  Outcome apply(const Clause& clause, std::string_view text);
  [[nodiscard]] bool goes_on(const CowSaid& cow) const;
  [[nodiscard]] bool is_called_anew(const Line& line) const;
  Outcome name_cow(const CowSaid& cow, std::string_view text);
  Outcome open_cow(const CowSaid& cow);
  Outcome hold_against(const CowSaid& cow);
  Outcome say_of_her(const TurnClause& clause, std::string_view text);
  Outcome go_ahead(std::string_view text);
  void add_words(std::string_view text);
  void after_line(const Line& line, std::string_view text);

  // counted_together.cpp
  Result<bool> counted_together(const Line& line, std::string_view text);
  Outcome record_batch(const BatchSaid& said, std::string_view text);

  // her_past.cpp
  Result<PlainLine> beside_her_past(Line line);
  Faults await_foot(std::string_view text, Faults faults);
  std::optional<std::string> answer_with_foot(std::string_view text);

  // refused_lines.cpp
  Faults with_foot_offered(Faults faults, std::string_view text);
  Outcome refused_line(std::string_view text, const Faults& faults);
  [[nodiscard]] bool tells_of_others(const RefusedCow& refused, std::string_view text) const;
  [[nodiscard]] std::string news_of_one_out(std::string_view text) const;
  void keep_apart(std::string_view text);
  Outcome keep_with_each(const std::vector<PartOfLine>& parts, std::string_view text);
  Outcome name_in_refused(const CowSaid& cow, std::string_view text);
  [[nodiscard]] bool is_certain_now(const CowSaid& cow) const;
  Outcome settle_misread(const Line& line, std::string_view text);

  // dropped_lines.cpp
  Result<bool> drops_what_was_refused(std::string_view text, const std::string& just_refused);
  bool takes_back_what_was_refused(const Line& line);

  // held_back.cpp
  Outcome stand_for_whoever();

  // walks_by.cpp
  Result<bool> asked_who_walks(const Line& line, std::string_view text);
  Outcome tell_that_she_walked_by();

  // let_out.cpp
  Outcome let_out(LetOutBy why);
  Outcome done_said(std::string_view text);
  void keep_last_out(EntryId entry);
  [[nodiscard]] const RecordedTurn* there_already();
  Outcome answer_there_already(const RecordedTurn& same);
  [[nodiscard]] const RecordedTurn* gone_on_with();

  // corrections.cpp
  Outcome correct_last_cow(const CowSaid& cow, std::string_view text);
  Outcome correct_last_feet(const Line& line, std::string_view text);
  Outcome record_corrected(const RecordedTurn& wrong, std::string_view text);

  // mended_later.cpp
  Result<bool> mended_later(const Line& line, std::string_view text);
  Result<bool> mended_in_other_ways(const Line& line, std::string_view text);
  Result<bool> mended_first_call(const Line& line, std::string_view text);
  Result<bool> number_mended_late(const Line& line, std::string_view text);
  Outcome record_mended_later(const RecordedTurn& wrong, TurnDraft draft, std::string_view text);

  // waited_for_feet.cpp
  Outcome todays_feet(const FootSet& feet);
  Outcome fill_what_waited();

  VisitBook book_;
  ThisLine this_line_;
  Crush crush_;
  TurnsLetOut turns_{book_};
  NewsDesk news_{book_, crush_, turns_};
  CountedAnimals counted_;
  ChecksOfHer checks_{book_, crush_};
  PeopleAtCrush people_{book_, crush_};
  std::string next_line_;    // of a file, when it is there already
  bool draft_kept_ = false;  // the store holds a draft
  Reply opening_;
};

}  // namespace evenclaw
