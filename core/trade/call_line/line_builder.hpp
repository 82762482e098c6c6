// Turns the terms of a line, in the order they are said, into clauses.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/result.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/term.hpp"

namespace evenclaw {

struct PlacedClause {
  Clause clause;
  Term from;  // the term that began it, for faults found later
};

struct PlacedFault {
  Refusal refusal;
  Term at;
};

/// One member function for each act in the grammar (grammar.cpp). An act that cannot be carried
/// out adds a fault; reading goes on.
///
/// Details said before their lesion, or after a separator, are held loose until it is clear whom
/// they belong to: to the lesion that follows at once, else to what was said last.
class LineBuilder {
 public:
  [[nodiscard]] const std::vector<PlacedClause>& clauses() const { return clauses_; }

  [[nodiscard]] const std::vector<PlacedFault>& faults() const { return faults_; }

  // Cows.
  void name_cow(const Term& number);
  void name_unnumbered(const Term& words);
  void add_looks(const Term& text);
  void doubt_cow(const Term& mark);
  void add_alternative(const Term& number);
  void say_lame(const Term& word);
  void add_lame_feet(const Term& feet);
  void correct_to_lame(const Term& word);
  void deny(const Term& words);
  void take_back_denied(const Term& words);
  void say_reason(const Term& reason);
  void say_other_reason(const Term& text);
  // Feet and findings.
  void name_feet(const Term& feet);
  void name_more_feet(const Term& feet);
  void name_only_feet(const Term& feet);
  void name_whole_cow(const Term& words);
  void hold_detail(const Term& detail);
  void hold_claw_after_finding(const Term& claw);
  void take_detail(const Term& detail);
  void settle_loose(const Term& next);
  void pause_loose(const Term& comma);
  void pause_loose_longer(const Term& separator);
  void check_both(const Term& word);
  void name_both(const Term& word);
  void done_on_both(const Term& word);
  void open_on_both(const Term& act);
  void open_finding(const Term& lesion);
  void open_white_line_at(const Term& place);
  void doubt_finding(const Term& mark);
  void begin_nick(const Term& word);
  void nick_foot(const Term& foot);
  void open_nick(const Term& next);
  void say_blood(const Term& word);
  void name_other_foot(const Term& words);
  void say_known(const Term& words);
  void say_still_on_her(const Term& words);
  void say_off_with_it(const Term& words);
  void say_foot_state(const Term& state);
  void say_state_of_lame_feet(const Term& state);
  void say_trimmed(const Term& trimmed);
  void say_rest_fine(const Term& words);
  void say_walks_sound(const Term& words);

  // Acts, times and measures.
  /// A claw stands right behind the act that comes next: one before it is of what stands there.
  void expect_claw_behind(bool stands_there) { claw_stands_behind_ = stands_there; }

  void open_act(const Term& act);
  void open_block_of(const Term& material);
  void open_mark_of(const Term& material);
  void open_missing_claw(const Term& gone);
  void refuse_good_claw(const Term& words);
  void expect_off(const Term& word);
  void expect_farmer_off(const Term& words);
  void keep_number(const Term& number);
  void time_in_days(const Term& unit);
  void time_in_weeks(const Term& unit);
  void time_on_weekday(const Term& weekday);
  void time_in_words(const Term& days);
  void time_on_date(const Term& date);
  void open_measure(const Term& kind);
  void measure_held_place(const Term& number);
  void open_length_taken_back(const Term& number);
  void length_in_mm(const Term& unit);
  void length_in_cm(const Term& unit);
  // The turn.
  void begin_mobility(const Term& word);
  void correct_mobility(const Term& word);
  void begin_lame_score(const Term& number);
  void check_slash(const Term& sign);
  void refuse_scale(const Term& next);
  void say_mobility(const Term& highest);
  void say_note(const Term& text);
  void say_end(const Term& end);
  void say_end_and_why(const Term& end);
  void add_end_reason(const Term& text);
  void say_done(const Term& word);
  void say_go_ahead(const Term& words);
  void say_only(const Term& word);
  void correct_foot(const Term& foot);
  void correct_claw(const Term& claw);
  void correct_cow(const Term& number);
  void correct_detail(const Term& detail);
  void correct_time(const Term& first);
  void correct_time_of_act(const Term& act);
  void correct_to_days(const Term& unit);
  void correct_to_weeks(const Term& unit);
  void correct_to_weekday(const Term& weekday);
  void correct_to_words(const Term& days);
  void correct_to_date(const Term& date);
  void take_back_detail(const Term& detail);
  void correct_to_nothing(const Term& state);
  void say_nothing_after_all(const Term& words);
  void begin_taking_back(const Term& word);
  void find_instead(const Term& lesion);
  void find_instead_on_claw(const Term& lesion);
  void refuse_wrong_alone(const Term& words);
  // The visit.
  void say_today(const Term& word);
  void add_todays_feet(const Term& feet);
  void say_caller(const Term& name);
  void say_writer(const Term& name);
  void add_news_number(const Term& number);
  void add_news_feet(const Term& feet);
  void say_news(const Term& news);
  void say_more_news(const Term& news);
  void add_news_foot_between(const Term& foot);
  void say_news_of_foot_between(const Term& news);
  // Animals counted together.
  void correct_batch(const Term& word);
  void count_batch(const Term& number);
  void name_animals(const Term& animals);
  void place_batch(const Term& text);
  void say_batch_state(const Term& state);
  void say_counted_twice(const Term& words);
  void add_batch_feet(const Term& feet);
  void add_apart_number(const Term& number);
  void add_apart_looks(const Term& text);
  void settle_batch(const Term& next);
  // Separators.
  void mark_weak(const Term& separator);
  void mark_strong(const Term& separator);

  /// What is said right behind "no, outside bruise" mends in one breath with it. To be called once,
  /// at the end of a line.
  void join_what_is_instead();

  /// Forgets what was being spoken of: after a fault nothing may be added to it.
  void lose_thread();

 private:
  enum class Separator { none, weak, strong };

  void add(Clause clause, const Term& from);
  void open(TurnClause item, const Term& from);
  void say_why(ReasonSaid why, const Term& from);
  void close();
  void refuse(Refusal refusal, const Term& at);
  void refuse_if(std::optional<Refusal> refusal, const Term& at);
  [[nodiscard]] TurnClause* open_item();

  // The clause said last, when it is a T.
  template <class T>
  [[nodiscard]] T* last() {
    if (clauses_.empty()) return nullptr;
    auto* clause = std::get_if<TurnClause>(&clauses_.back().clause);
    return clause == nullptr ? nullptr : std::get_if<T>(clause);
  }

  [[nodiscard]] BatchSaid* batch();
  void put_apart(CowSaid cow, std::string called, const Term& from);
  [[nodiscard]] CowSaid* cow_being_named();
  void check_cow_number(const Term& number);
  void refuse_gone_foot(const Term& term);
  void refuse_news_of_whom(const Term& news);
  void open_with_claw(TurnClause item, const Term& from);
  void refuse_unclear_claw();
  void refuse_claw_between(const Term& lesion);
  bool pause_behind_act(Separator behind);
  void add_loose_to(TurnClause* item);
  bool say_details_alone();
  [[nodiscard]] bool could_be_its_place(const Term& lesion);
  [[nodiscard]] bool could_be_of_the_wrap(const TimeSaid& when);
  void set_time(const TimeSaid& when, const Term& at);
  void set_days(int days_each, const Term& unit);
  void begin_time_from_number(const Term& unit);
  void set_parts_of_days(const Term& unit);
  void set_length(std::string_view unit, const Term& at);

  std::vector<PlacedClause> clauses_;
  std::vector<PlacedFault> faults_;
  std::optional<std::size_t> open_;  // index of the finding, act or measure spoken of
  std::vector<Term> loose_;
  bool takes_back_ = false;          // "no, no": the finding or act that follows was not there
  bool finds_instead_ = false;       // "no, sole ulcer"
  bool says_only_ = false;           // "no, only": the foot that follows alone
  bool loose_is_glued_ = false;      // the claw stood right behind a finding, without a separator
  bool claw_stands_behind_ = false;  // "LH SU outside block inside"
  std::optional<Separator> before_paused_;  // of what is loose, behind an act and before a comma
  Separator since_open_ = Separator::none;
  std::string_view said_of_finding_;  // the lesion or detail said last
  Term nick_word_;
  Term number_;
  Term mobility_word_;
  bool corrects_mobility_ = false;
  std::vector<std::string> news_numbers_;
  FootSet news_feet_;
  FootSet foot_between_;         // behind a comma, in front of more news
  FootSet feet_before_between_;  // of the news in front of that comma
  std::size_t news_from_ = 0;    // clauses of the news said last
  bool news_said_ = false;
  bool has_feet_of_piece_before_ = false;    // news of feet that were named in front of other news
  std::optional<Term> news_without_number_;  // behind a semicolon
  bool mends_batch_ = false;
};

}  // namespace evenclaw
