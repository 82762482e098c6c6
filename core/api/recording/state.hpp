// The inside of a recording: the cow in the crush, what waits to be written, what changes them.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/cow_news.hpp"
#include "core/api/herd_log.hpp"
#include "core/api/journal.hpp"
#include "core/api/news_taken_back.hpp"
#include "core/api/people.hpp"
#include "core/api/ports.hpp"
#include "core/api/recording/asked_once.hpp"
#include "core/api/recording/call_of_her.hpp"
#include "core/api/recording/checking.hpp"
#include "core/api/recording/cow_finder.hpp"
#include "core/api/recording/crush.hpp"
#include "core/api/recording/draft_in_crush.hpp"
#include "core/api/recording/earlier_turn.hpp"
#include "core/api/recording/her_past.hpp"
#include "core/api/recording/in_crush.hpp"
#include "core/api/recording/kept_draft.hpp"
#include "core/api/recording/near_cows.hpp"
#include "core/api/recording/number_slip.hpp"
#include "core/api/recording/open_questions.hpp"
#include "core/api/recording/people_at_crush.hpp"
#include "core/api/recording/recorded_batches.hpp"
#include "core/api/recording/recorded_before.hpp"
#include "core/api/recording/settled_turn.hpp"
#include "core/api/recording/turn_body.hpp"
#include "core/api/recording/turns_let_out.hpp"
#include "core/api/recording/two_cows.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/api/recording/warning_ledger.hpp"
#include "core/api/reply.hpp"
#include "core/api/visits.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/check.hpp"

namespace evenclaw {

class RecordingState {
 public:
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
  [[nodiscard]] WhoIsMeant who_is_meant() const;
  Outcome take_up_draft();
  bool is_given_again(std::string_view text);
  Outcome take_up(const KeptDraft& kept);
  Outcome record_in_other_visit(const KeptDraft& kept);
  Result<Reply> written(std::optional<std::string> draft);

  // say.cpp
  Outcome take_line(std::string_view text);
  Outcome take_said(std::string_view text);
  Result<bool> said_in_between(const Result<Line>& line, std::string_view text,
                               const LastLine& before);
  Outcome take_understood(Line line, std::string_view text);
  Outcome take_held_back(const Line& line, std::string_view text);
  Outcome refuse_for(std::string_view text, const Faults& faults);
  [[nodiscard]] bool answers_which_is_off(const Line& line) const;
  Outcome take_read(const Line& line, std::string_view text);
  [[nodiscard]] bool corrects_last_turn(std::string_view text) const;
  [[nodiscard]] bool ends_nothing(std::string_view text) const;
  [[nodiscard]] Faults not_applicable(const Line& line) const;
  Outcome apply(const Clause& clause, std::string_view text);
  [[nodiscard]] bool goes_on(const CowSaid& cow) const;
  [[nodiscard]] bool is_called_anew(const Line& line) const;
  Outcome name_cow(const CowSaid& cow, std::string_view text);
  Outcome open_cow(const CowSaid& cow);
  Outcome hold_against(const CowSaid& cow);
  Outcome say_of_her(const TurnClause& clause, std::string_view text);
  Outcome go_ahead(std::string_view text);
  Outcome done_said(std::string_view text);
  void add_words(std::string_view text);
  void after_line(std::string_view text);

  // counted_together.cpp
  Result<bool> counted_together(const Line& line, std::string_view text);
  Outcome record_batch(const BatchSaid& said, std::string_view text);
  Outcome ask_whether_counted_before(const Batch& before, std::string_view text);
  Outcome mend_batch(const BatchSaid& said, std::string_view text);
  Outcome add_batch(BatchRecorded body, const RecordedBatch* wrong);
  Result<bool> count_mended(std::string_view text, bool is_behind_batch);
  Outcome refused_batch(std::string_view text);
  void drop_misread_count(const Batch& batch);

  // her_past.cpp
  Result<PlainLine> beside_her_past(Line line);
  Faults await_foot(std::string_view text, Faults faults);
  std::optional<std::string> answer_with_foot(std::string_view text);

  // reader.cpp
  void tell_who_was_read(std::string_view text);

  // refused_lines.cpp
  Faults with_foot_offered(Faults faults, std::string_view text);
  Outcome refused_line(std::string_view text, const Faults& faults);
  Outcome keep_with_each(const std::vector<PartOfLine>& parts, std::string_view text);
  Outcome name_in_refused(const CowSaid& cow, std::string_view text);
  [[nodiscard]] bool is_certain_now(const CowSaid& cow) const;
  Outcome settle_misread(const Line& line, std::string_view text);
  void given_again(std::string_view text);

  // dropped_lines.cpp
  Result<bool> drops_what_was_refused(std::string_view text, const std::string& just_refused);
  Result<bool> drop_news(const std::string& number, std::string_view text,
                         const std::string& just_refused);
  void drop_of_her(const std::string& just_refused);
  bool takes_back_what_was_refused(const Line& line);

  // held_back.cpp
  void hold_back_after(std::string_view refused);
  void let_go_held_back(const Line& line, std::string_view text);
  [[nodiscard]] bool holds_back(const Line& line, std::string_view text) const;
  Outcome refuse_held_back(std::string_view text);
  Outcome stand_for_whoever();
  Outcome ask_of_which_of_two(std::string_view text);

  // lifted_before.cpp
  [[nodiscard]] FootSet lifted_at_this_visit(const Line& line) const;

  // earlier_turn.cpp

  // checking.cpp

  // found_where_fine.cpp, warn_of_her.cpp

  // walks_by.cpp
  Result<bool> asked_who_walks(const Line& line, std::string_view text);
  [[nodiscard]] bool walked_by(LetOutBy why) const;
  Outcome tell_that_she_walked_by();

  // let_out.cpp
  Outcome let_out(LetOutBy why);
  [[nodiscard]] bool was_only_mended(LetOutBy why) const;
  void keep_last_out(EntryId entry);
  void end_turn(LetOutBy why);
  [[nodiscard]] bool only_answers_what_was_asked() const;
  [[nodiscard]] const RecordedTurn* there_already();
  [[nodiscard]] bool says_it_again(const TurnRecorded& body, const RecordedTurn* superseded) const;
  Outcome answer_there_already(const RecordedTurn& same);
  [[nodiscard]] std::optional<CowSaid> put_right_in(std::string_view line) const;
  [[nodiscard]] const RecordedTurn* gone_on_with();

  // corrections.cpp
  Outcome correct_last_cow(const CowSaid& cow, std::string_view text);
  Outcome correct_last_feet(const Line& line, std::string_view text);
  Outcome record_corrected(const RecordedTurn& wrong, std::string_view text);
  void contradicts_earlier(std::string_view text);

  // mended_later.cpp
  Result<bool> mended_later(const Line& line, std::string_view text);
  [[nodiscard]] bool was_refused_before(const std::string& number, std::string_view text) const;
  Result<bool> mended_in_other_ways(const Line& line, std::string_view text);
  Result<bool> mended_first_call(const Line& line, std::string_view text);
  Result<bool> number_mended_late(const Line& line, std::string_view text);
  void drop_only_spoken_of(std::string_view text);
  Outcome refuse_mending(const std::string& number, Fault fault, std::string_view text);
  Outcome record_mended_later(const RecordedTurn& wrong, TurnDraft draft, std::string_view text);

  // news_mended.cpp
  Result<bool> news_mended(std::string_view text, const std::vector<std::string>& told);
  Result<bool> number_of_news_mended(std::string_view text, const std::vector<std::string>& told);
  Result<bool> mend_news(const NewsMended& mended, std::string_view text);
  Result<bool> mend_news_of_nobody(const NewsMended& mended, std::string_view text);
  Outcome take_news_back(const std::vector<NewsStanding>& told, const std::string& number,
                         std::string_view text);
  Outcome tell_instead(const std::string& words, const NewsMended& mended, std::string_view text);

  // news.cpp
  Outcome tell(const NewsSaid& news, std::string_view text);
  Outcome tell_of(CowId cow, const NewsSaid& news, std::string_view text);
  Result<std::optional<std::string>> ask_for_whom_the_vet(const CowNews& told);
  Outcome ask_about_news(const CowNews& told, const std::string& question);
  Outcome unknown_cow(const NewsSaid& news, std::string_view text);
  Outcome settle_number_slip(const NewsSaid& news, std::string_view text);
  Outcome todays_feet(const FootSet& feet);
  Outcome fill_what_waited();  // waited_for_feet.cpp

  VisitBook book_;
  ThisLine this_line_;
  RecordedBatches batches_;
  Crush crush_;
  TurnsLetOut turns_{book_};
  ChecksOfHer checks_{book_, crush_};
  PeopleAtCrush people_{book_, crush_};
  AskedOnce count_asked_;  // whether a count that was on record already is one of others
  std::optional<MistakenNumber> mistaken_number_;  // nothing that could be read was said since
  std::string next_line_;                          // of a file, when it is there already
  bool draft_kept_ = false;                        // the store holds a half-entered turn
  Reply opening_;
};

}  // namespace evenclaw
