// The acts of LineBuilder that concern deeds, measures, the end of a turn and the visit.
#include <algorithm>
#include <utility>

#include "core/base/quotation.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/act_facts.hpp"
#include "core/trade/call_line/line_builder.hpp"
#include "core/trade/call_line/measure_reach.hpp"
#include "core/trade/handling.hpp"

namespace evenclaw {

namespace {

constexpr std::int32_t longest_tenths_mm = 3000;

struct MeasureOfPlace {
  Place place;
  MeasureKind measure;
};

// "heel 42 mm high": the place tells what was measured.
constexpr MeasureOfPlace measure_table[] = {{Place::heel, MeasureKind::heel_height},
                                            {Place::toe, MeasureKind::toe_length},
                                            {Place::sole_middle, MeasureKind::sole_thickness}};

struct NewsOfAct {
  ActionKind act;
  News news;
};

constexpr NewsOfAct news_table[] = {{ActionKind::wrap_off, News::wrap_off},
                                    {ActionKind::wrap_came_off, News::wrap_came_off},
                                    {ActionKind::wrap_still_on, News::wrap_still_on},
                                    {ActionKind::block_off, News::block_off},
                                    {ActionKind::block_came_off, News::block_came_off},
                                    {ActionKind::block_still_on, News::block_still_on}};

std::optional<News> news_in(const Term& term) {
  if (term.kind == TermKind::news || term.kind == TermKind::gone) return term.as<News>();
  if (term.kind == TermKind::walks_sound) return News::walks_sound;
  if (term.kind == TermKind::handling) return news_of(term.as<ActionKind>());
  for (const NewsOfAct& row : news_table) {
    if (row.act == term.as<ActionKind>()) return row.news;
  }
  return std::nullopt;
}

bool is_feet_named(const PlacedClause& placed) {
  const auto* said = std::get_if<TurnClause>(&placed.clause);
  return said != nullptr && std::holds_alternative<FeetNamed>(*said);
}

constexpr std::size_t most_score_digits = 5;

}  // namespace

void LineBuilder::open_act(const Term& act) {
  ActionSaid said = new_act(act.as<ActionKind>());
  said.all = act.plural && std::none_of(clauses_.begin(), clauses_.end(), is_feet_named);
  open_with_claw(std::move(said), act);
}

void LineBuilder::open_block_of(const Term& material) {
  ActionSaid said = new_act(ActionKind::block_on);
  said.action.material = material.as<Material>();
  open_with_claw(said, material);
}

void LineBuilder::open_mark_of(const Term& material) {
  ActionSaid said = new_act(ActionKind::marked);
  said.action.material = material.as<Material>();
  open_with_claw(said, material);
}

// "Inside claw gone" is not a cow that is gone.
void LineBuilder::open_missing_claw(const Term& gone) {
  const bool is_claw = !loose_.empty() && loose_.back().kind == TermKind::claw;
  if (is_claw) return open_with_claw(new_act(ActionKind::claw_missing), gone);
  refuse(not_understood("it is unclear what is gone",
                        "of a claw say \"{inside} {claw missing}\"; of a block or wrap "
                        "\"{block came off}\", \"{wrap came off}\""),
         gone);
}

// Which claw is the good one is for the caller to say: it is what the check holds against.
void LineBuilder::refuse_good_claw(const Term& words) {
  refuse(not_understood("which claw is " + quoted(words.said) + '?', "say {inside} or {outside}"),
         words);
}

void LineBuilder::open_measure(const Term& kind) {
  open_with_claw(new_measure(kind.as<MeasureKind>()), kind);
}

void LineBuilder::measure_held_place(const Term& number) {
  const Term place = loose_.back();
  const auto row = std::find_if(
      std::begin(measure_table), std::end(measure_table),
      [&place](const MeasureOfPlace& each) { return each.place == place.as<Place>(); });
  if (row == std::end(measure_table)) {
    refuse(not_understood("\"" + std::string(place.said) + "\" is not a thing to measure",
                          "measures are {length, heel height, sole thickness}"),
           place);
    return;
  }
  loose_.pop_back();
  open_with_claw(new_measure(row->measure), place);
  keep_number(number);
}

/// "No, no 48 mm": of whatever was measured so.
void LineBuilder::open_length_taken_back(const Term& number) {
  open_with_claw(MeasureTakenBack{}, number);
  keep_number(number);
}

void LineBuilder::set_length(std::string_view unit, const Term& at) {
  const std::optional<Length> length =
      length_from_text(std::string(digits_of(number_)) + std::string(unit));
  Term from = number_;
  from.token_count = at.first_token + at.token_count - number_.first_token;
  if (!length) {
    refuse(not_understood("that is not a length", "give {mm} or {cm} with one decimal at most"),
           from);
    return;
  }
  auto* said = last<MeasureSaid>();
  const auto why = said != nullptr ? out_of_reach(said->measure.kind, *length) : std::nullopt;
  if (why) return refuse(*why, from);
  if (length->tenths_mm <= 0 || length->tenths_mm > longest_tenths_mm) {
    refuse(impossible("no measure of a claw is " + to_text(*length)), from);
    return;
  }
  if (said != nullptr) said->measure.length = *length;
  if (auto* back = last<MeasureTakenBack>()) back->length = *length;
}

void LineBuilder::length_in_mm(const Term& unit) {
  set_length("mm", unit);
}

void LineBuilder::length_in_cm(const Term& unit) {
  set_length("cm", unit);
}

void LineBuilder::begin_mobility(const Term& word) {
  close();
  mobility_word_ = word;
  corrects_mobility_ = false;
}

void LineBuilder::correct_mobility(const Term& word) {
  begin_mobility(word);
  corrects_mobility_ = true;
}

void LineBuilder::begin_lame_score(const Term& number) {
  begin_mobility(clauses_.back().from);
  keep_number(number);
}

// "2/3".
void LineBuilder::check_slash(const Term& sign) {
  if (sign.said != "/") refuse_scale(sign);
}

// The same number means another cow's walk on the other scale.
void LineBuilder::refuse_scale(const Term&) {
  const std::string score(digits_of(number_));
  refuse(not_understood("on which scale is " + std::string(mobility_word_.said) + ' ' + score + '?',
                        "say \"{mobility " + score + " of 3}\" (0-3) or \"{mobility " + score +
                            " of 5}\" (1-5)"),
         number_);
}

void LineBuilder::say_mobility(const Term& highest) {
  const std::optional<int> score = whole_number(digits_of(number_), most_score_digits);
  const std::optional<int> most = whole_number(digits_of(highest), most_score_digits);
  const std::optional<MobilityScale> scale = most ? scale_up_to(*most) : std::nullopt;
  if (!scale) {
    refuse(not_understood("no mobility score runs up to " + std::string(digits_of(highest)),
                          "say such as {mobility 2 of 3} (0-3) or {mobility 3 of 5} (1-5)"),
           highest);
    return;
  }
  const MobilityScaleFacts& facts = facts_of(*scale);
  if (!score || *score < facts.lowest || *score > facts.highest) {
    refuse(impossible("the scale runs from " + std::to_string(facts.lowest) + " to " +
                      std::to_string(facts.highest)),
           number_);
    return;
  }
  MobilityTold told;
  told.mobility.scale = scale;
  told.mobility.score = *score;
  told.is_correction = corrects_mobility_;
  add(TurnClause{told}, mobility_word_);
}

void LineBuilder::say_note(const Term& text) {
  add(TurnClause{NoteSaid{std::string(text.said)}}, text);
}

void LineBuilder::say_end(const Term& end) {
  close();
  add(TurnClause{EndSaid{end.as<TurnEnd>(), {}}}, end);
}

void LineBuilder::say_end_and_why(const Term& end) {
  close();
  add(TurnClause{EndSaid{end.as<TurnEnd>(), words_in(end)}}, end);
}

void LineBuilder::add_end_reason(const Term& text) {
  auto* said = last<EndSaid>();
  if (said == nullptr) return;
  said->reason += (said->reason.empty() ? "" : ", ") + words_in(text);
}

void LineBuilder::say_done(const Term& word) {
  close();
  add(TurnEnded{}, word);
}

void LineBuilder::say_go_ahead(const Term& words) {
  close();
  add(GoAheadSaid{}, words);
}

void LineBuilder::correct_foot(const Term& foot) {
  close();
  const bool is_of_named = last<FeetNamed>() != nullptr;
  FootCorrected right{foot.as<Foot>(), std::exchange(says_only_, false)};
  if (is_of_named) right.slip = FootSlip::all_called;
  add(TurnClause{right}, foot);
  since_open_ = Separator::none;
}

void LineBuilder::correct_claw(const Term& claw) {
  close();
  add(TurnClause{ClawCorrected{claw.as<Claw>()}}, claw);
}

void LineBuilder::correct_cow(const Term& number) {
  close();
  check_cow_number(number);
  CowCorrected corrected;
  corrected.cow.number = std::string(digits_of(number));
  add(TurnClause{std::move(corrected)}, number);
}

void LineBuilder::correct_detail(const Term& detail) {
  close();
  DetailCorrected right;
  if (detail.kind == TermKind::stage) right.stage = detail.as<DdStage>();
  if (detail.kind == TermKind::degree) right.degree = detail.as<Degree>();
  if (detail.kind == TermKind::place) right.place = detail.as<Place>();
  add(TurnClause{right}, detail);
}

void LineBuilder::correct_to_nothing(const Term& state) {
  if (state.as<FootState>() == FootState::nothing_found) {
    say_nothing_after_all(state);
    return;
  }
  refuse(not_understood("\"" + std::string(state.said) + "\" does not correct anything",
                        "say the foot and \"{nothing after all}\""),
         state);
}

void LineBuilder::say_nothing_after_all(const Term& words) {
  close();
  add(TurnClause{NothingAfterAll{}}, words);
}

void LineBuilder::begin_taking_back(const Term&) {
  close();
  takes_back_ = true;
}

// "No, sole ulcer": whether something was said that it can be right against, the draft knows.
void LineBuilder::find_instead(const Term& lesion) {
  close();
  finds_instead_ = true;
  open_finding(lesion);
}

// "No, outside sole ulcer": the claw is of that lesion.
void LineBuilder::find_instead_on_claw(const Term& lesion) {
  const Term before = clauses_.back().from;
  const bool is_claw = last<ClawCorrected>() != nullptr;
  if (is_claw) clauses_.pop_back();
  if (is_claw) {
    find_instead(lesion);
    take_detail(before);
  } else {
    open_finding(lesion);
  }
}

void LineBuilder::refuse_wrong_alone(const Term& words) {
  refuse(not_understood("that tells what is wrong, not what is right",
                        "say \"{no, inside}\", \"{no, right hind}\" or \"{no, 421}\"; or take it "
                        "back: \"{no, no block}\""),
         words);
}

void LineBuilder::say_today(const Term& word) {
  add(TodaysFeetSaid{}, word);
}

void LineBuilder::add_todays_feet(const Term& feet) {
  if (auto* said = std::get_if<TodaysFeetSaid>(&clauses_.back().clause)) {
    said->feet.add(feet_in(feet));
  }
}

void LineBuilder::say_caller(const Term& name) {
  add(CallerSaid{words_in(name)}, name);
}

void LineBuilder::say_writer(const Term& name) {
  add(WriterSaid{words_in(name)}, name);
}

void LineBuilder::add_news_number(const Term& number) {
  check_cow_number(number);
  if (news_without_number_ && digits_of(number) != news_numbers_.front()) {
    refuse_news_of_whom(*std::exchange(news_without_number_, std::nullopt));
  }
  if (news_said_) {
    news_numbers_.clear();
    news_feet_ = {};
    news_said_ = false;
    has_feet_of_piece_before_ = false;
  }
  news_numbers_.emplace_back(digits_of(number));
}

void LineBuilder::add_news_feet(const Term& feet) {
  if (!news_said_) {
    news_feet_.add(feet_in(feet));
    return;
  }
  for (std::size_t i = news_from_; i < clauses_.size(); ++i) {
    auto* said = std::get_if<NewsSaid>(&clauses_[i].clause);
    if (said == nullptr) continue;
    if (said->news == News::gone) return refuse_gone_foot(feet);
    if (has_feet_of_piece_before_) said->feet = {};
    said->feet.add(feet_in(feet));
  }
  has_feet_of_piece_before_ = false;
}

// "412 LH gone": she is not gone, and what is gone of the foot nobody said.
void LineBuilder::refuse_gone_foot(const Term& term) {
  refuse(not_understood("a cow is gone, not a foot",
                        "of a claw say \"{inside} {claw missing}\"; of a block or wrap "
                        "\"{block came off}\", \"{wrap came off}\""),
         term);
}

void LineBuilder::say_news(const Term& term) {
  const std::optional<News> news = news_in(term);
  if (!news) {
    refuse(not_understood("\"" + std::string(term.said) + "\" is done to a cow in the crush",
                          "start a line with her number alone, then name the foot"),
           term);
    return;
  }
  if (*news == News::gone && !news_feet_.empty()) return refuse_gone_foot(term);
  news_from_ = clauses_.size();
  has_feet_of_piece_before_ = news_said_;
  news_said_ = true;
  for (const std::string& number : news_numbers_) {
    add(NewsSaid{number, *news, news_feet_, term.plural}, term);
  }
}

// "301 wrap off; sold": while one cow is told of it is of her.
void LineBuilder::say_more_news(const Term& news) {
  if (news_numbers_.size() != 1) return refuse_news_of_whom(news);
  const bool is_of_one =
      std::all_of(clauses_.begin(), clauses_.end(), [this](const PlacedClause& placed) {
        const auto* told = std::get_if<NewsSaid>(&placed.clause);
        return told != nullptr && told->number == news_numbers_.front();
      });
  if (!is_of_one) return refuse_news_of_whom(news);
  news_without_number_ = news;
  say_news(news);
}

void LineBuilder::refuse_news_of_whom(const Term& news) {
  refuse(not_understood("it is unclear of which cow " + quoted(news.said) + " is told",
                        "say her number before it: \"{77 gone}\""),
         news);
}

void LineBuilder::add_news_foot_between(const Term& foot) {
  const auto* told = clauses_.empty() ? nullptr : std::get_if<NewsSaid>(&clauses_.back().clause);
  feet_before_between_ = told == nullptr ? FootSet{} : told->feet;
  foot_between_ = feet_in(foot);
  add_news_feet(foot);
}

// "202 wraps off, RH block off": the foot is of the block.
void LineBuilder::say_news_of_foot_between(const Term& news) {
  for (std::size_t i = news_from_; i < clauses_.size(); ++i) {
    if (auto* told = std::get_if<NewsSaid>(&clauses_[i].clause)) told->feet = feet_before_between_;
  }
  news_feet_ = foot_between_;
  say_news(news);
  has_feet_of_piece_before_ = false;
}

}  // namespace evenclaw
