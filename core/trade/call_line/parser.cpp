#include "core/trade/call_line/parser.hpp"

#include <algorithm>
#include <string>
#include <utility>

#include "core/base/quotation.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/batch_line.hpp"
#include "core/trade/call_line/claw_in_short.hpp"
#include "core/trade/call_line/foot_behind.hpp"
#include "core/trade/call_line/judged_later.hpp"
#include "core/trade/call_line/leg_behind_comma.hpp"
#include "core/trade/call_line/mark.hpp"
#include "core/trade/call_line/misplaced.hpp"
#include "core/trade/call_line/nearest.hpp"
#include "core/trade/call_line/nothing_found.hpp"
#include "core/trade/call_line/off_together.hpp"
#include "core/trade/call_line/quoted_words.hpp"
#include "core/trade/call_line/said_date.hpp"
#include "core/trade/call_line/score_right.hpp"
#include "core/trade/call_line/spoken_tokens.hpp"
#include "core/trade/call_line/time_right.hpp"
#include "core/trade/call_line/trap.hpp"
#include "core/trade/call_line/two_scores.hpp"
#include "core/trade/call_line/unknown_word.hpp"
#include "core/trade/call_line/unsaid_off.hpp"
#include "core/trade/call_line/where_it_is_known.hpp"

namespace evenclaw {

namespace {

Spot first_spot(LineSort sort, const LineContext& context) {
  if (sort == LineSort::news) return Spot::news_first;
  if (sort == LineSort::batch) return Spot::batch_first;
  return context.cow_open ? Spot::first_with_cow : Spot::first_without_cow;
}

Spot spot_after_fault(LineSort sort) {
  if (sort == LineSort::news) return Spot::news_next;
  return sort == LineSort::batch ? Spot::batch_told : Spot::turn;
}

bool is_separator(TermKind kind) {
  return kind == TermKind::comma || kind == TermKind::strong || kind == TermKind::colon;
}

class Parser {
 public:
  Parser(LineSort sort, std::string_view text, const LineContext& context, const Language& language,
         Telling telling)
      : sort_(sort),
        telling_(telling),
        text_(text),
        context_(context),
        language_(language),
        tokens_(spoken_tokens(text, language)),
        spot_(first_spot(sort, context)),
        spot_before_(spot_) {}

  Reading read() {
    if (const auto number = announced_number(tokens_, text_, language_)) {
      refuse_line(*number);
      return finished();
    }
    while (at_ < tokens_.size()) {
      const Term term = next_term();
      if (const auto trap = trap_at(term)) {
        add_fault(trap->refusal, trap->at);
        recover(term);
      } else if (const Step* step = allowed_step(term)) {
        follow(*step, term);
      } else {
        refuse(term);
        recover(term);
      }
    }
    return finished();
  }

 private:
  [[nodiscard]] Term term_of(TermKind kind, std::size_t token_count, int value = 0) const {
    const Token& first = tokens_[at_];
    const Token& last = tokens_[at_ + token_count - 1];
    Term term;
    term.kind = kind;
    term.value = value;
    term.said = text_.substr(first.offset, last.offset + last.length - first.offset);
    term.first_token = at_;
    term.token_count = token_count;
    return term;
  }

  [[nodiscard]] Term next_term() const {
    if (const std::size_t count = free_words_here()) return text_term(count);
    const bool may_come_off = spot_ == Spot::wrap || spot_ == Spot::block;
    if (may_come_off && tells_when_it_comes_off(tokens_, at_, builder_, language_)) {
      return unsaid(TermKind::off);
    }
    if (spot_ == Spot::correction && is_score(tokens_, at_, text_, language_))
      return unsaid(TermKind::mobility);
    if (const auto claw = claw_in_short(tokens_, at_, spot_, builder_, language_)) {
      return term_of(TermKind::claw, 1, static_cast<int>(*claw));
    }
    const Language::Match match = match_of_both(tokens_, at_, language_);
    if (match.phrase == nullptr) return unphrased_term();
    if (match.phrase->kind == TermKind::zone_word && at_ + match.word_count < tokens_.size()) {
      const Token& behind = tokens_[at_ + match.word_count];
      const bool is_whole = behind.kind == TokenKind::number && behind.length <= 2;
      if (is_whole) return zone_term(match.word_count + 1, behind);
    }
    Term term = term_of(match.phrase->kind, match.word_count, match.phrase->value);
    term.plural = match.phrase->plural;
    return term;
  }

  [[nodiscard]] Term unsaid(TermKind kind) const {
    Term term = term_of(kind, 1);
    term.said = {};
    term.token_count = 0;
    return term;
  }

  [[nodiscard]] Term zone_term(std::size_t count, const Token& number) const {
    const std::string_view digits = text_.substr(number.offset, number.length);
    return term_of(TermKind::zone, count, whole_number(digits, digits.size()).value_or(0));
  }

  [[nodiscard]] Term unphrased_term() const {
    const Token& token = tokens_[at_];
    if (token.kind == TokenKind::word) {
      if (const auto zone = language_.zone_in(token.folded)) {
        return term_of(TermKind::zone, 1, *zone);
      }
    }
    Term term = term_of(kind_of_mark(token.kind), 1);
    if (term.kind == TermKind::number) term.digits = token.folded;
    if (term.kind == TermKind::date) term.value = day_from_text(term.said)->since_epoch;
    return term;
  }

  [[nodiscard]] Term text_term(std::size_t count) const {
    const bool has_article =
        spot_ == Spot::batch_bar && count > 1 && language_.is_article(tokens_[at_].folded);
    const std::size_t skipped =
        has_article ? tokens_[at_ + 1].offset - tokens_[at_].offset : std::size_t{0};
    return term_of(TermKind::text, count, static_cast<int>(skipped));
  }

  // How many tokens are free words; 0 where none may stand or a separator comes first.
  [[nodiscard]] std::size_t free_words_here() const {
    const SpotFacts& facts = facts_of(spot_);
    if (facts.text == TextExtent::none) return 0;
    const TermKind mark = kind_of_mark(tokens_[at_].kind);
    const Step* step = step_from(spot_, mark);
    const bool is_mark = is_separator(mark) || mark == TermKind::doubt;
    if (is_mark && step != nullptr && step->from == spot_) return 0;
    if (facts.text == TextExtent::of_a_batch) return batch_token_count(tokens_, at_, language_);
    const std::size_t count = text_token_count(tokens_, at_, facts.text);
    return spot_ == Spot::product_name ? name_token_count(tokens_, at_, count, language_) : count;
  }

  [[nodiscard]] std::optional<PlacedFault> trap_at(const Term& term) const {
    const Step* step = step_from(spot_, term.kind);
    if (step == nullptr) return std::nullopt;
    const NextStep next{spot_, *step, term, tokens_, text_, builder_};
    if (auto misfit = date_misfit(next, context_.visit_day, language_)) return misfit;
    return trap_in(next, language_);
  }

  // Nothing of the line is understood.
  void refuse_line(const PlacedFault& fault) {
    add_fault(fault.refusal, fault.at);
    lost_ = true;
    clauses_before_fault_ = 0;
    at_ = tokens_.size();
  }

  // A step the grammar knows, unless the words are a trap.
  [[nodiscard]] const Step* allowed_step(const Term& term) const {
    const Step* step = step_from(spot_, term.kind);
    if (step == nullptr) return nullptr;
    if (term.kind == TermKind::text && text_is_unclear(term)) return nullptr;
    const bool is_time_right = spot_ != Spot::correction || has_its_time(term, tokens_, language_);
    if (!is_time_right) return nullptr;
    const bool is_slip = term.kind == TermKind::unknown_word &&
                         looks_like_a_slip(tokens_[term.first_token], language_);
    return is_slip ? nullptr : step;
  }

  [[nodiscard]] bool text_is_unclear(const Term& term) const {
    const std::span<const Token> words(&tokens_[term.first_token], term.token_count);
    const bool is_quoted = words.size() == 1 && words.front().kind == TokenKind::quoted;
    return !is_quoted && could_be_calls(words, facts_of(spot_).text, language_);
  }

  void follow(const Step& step, const Term& term) {
    if (const auto behind = foot_behind_.take(step, term)) {
      add_fault(behind->refusal, behind->at);
      clauses_before_fault_ = 0;  // whose the clauses are is in doubt: they are not judged
    }
    for (Spot spot = spot_; spot != step.from; spot = facts_of(spot).otherwise) {
      if (const Act leave = facts_of(spot).leave) (builder_.*leave)(term);
    }
    builder_.expect_claw_behind(is_claw(tokens_, at_ + term.token_count, language_));
    if (step.act != nullptr) (builder_.*step.act)(term);
    spot_before_ = spot_;
    spot_ = step.to;
    last_term_ = term.first_token;
    at_ += term.token_count;
    taken_ += term.token_count;
  }

  void leave_line() {
    Spot spot = spot_;
    for (;;) {
      if (const Act leave = facts_of(spot).leave) (builder_.*leave)(Term{});
      if (facts_of(spot).otherwise == spot) return;
      spot = facts_of(spot).otherwise;
    }
  }

  void refuse(const Term& term) {
    if (term.kind == TermKind::text) {
      add_fault({"call-not-understood",
                 "part of these words could be a call of its own; it is unclear where they end",
                 "put ; behind the words that describe, or put them in quotes"},
                term);
    } else if (needs_cow(term)) {
      add_fault({"call-not-understood", quoted(term) + " is said of a cow, and no cow is named yet",
                 "start with her number"},
                term);
    } else if (term.kind == TermKind::number) {
      refuse_number(term);
    } else {
      refuse_word(term);
    }
  }

  [[nodiscard]] bool needs_cow(const Term& term) const {
    const bool no_cow = spot_ == Spot::first_without_cow || spot_ == Spot::visit;
    return no_cow && !context_.cow_open && !lost_ && step_from(Spot::turn, term.kind) != nullptr;
  }

  void refuse_number(const Term& term) {
    add_fault(refusal_of_number({tokens_, term.first_token, text_, builder_, language_}), term);
  }

  void refuse_word(const Term& term) {
    if (telling_ == Telling::briefly) {
      add_fault(not_understood(quoted(term) + " is not understood"), term);
    } else if (is_glued_to_number(term)) {
      refuse_glued(term);
    } else if (term.kind == TermKind::unknown_word) {
      refuse_unknown();
    } else if (spot_ == Spot::finding && tells_it_is_gone(term)) {
      Term whole = builder_.clauses().back().from;
      whole.token_count = term.first_token + term.token_count - whole.first_token;
      add_fault(not_understood(quoted(whole) + " is called by what is found today", remedy(term)),
                whole);
    } else if (term.kind == TermKind::unclear_word) {
      add_fault(not_understood(quoted(term) + " could mean more than one thing", remedy(term)),
                term);
    } else {
      add_fault(not_understood(quoted(term) + " cannot stand here; expected " +
                                   expected_names(kinds_after(spot_)),
                               remedy(term)),
                term);
    }
  }

  [[nodiscard]] std::string remedy(const Term& term) const {
    return remedy_for({term, spot_, builder_});
  }

  void refuse_unknown() {
    const PlacedFault fault =
        refusal_of({tokens_, text_, at_, last_term_, spot_, spot_before_}, language_);
    add_fault(fault.refusal, fault.at);
  }

  [[nodiscard]] bool is_glued_to_number(const Term& term) const {
    if (term.first_token == 0 || term.kind != TermKind::unknown_word) return false;
    const Token& before = tokens_[term.first_token - 1];
    const bool touches = before.offset + before.length == tokens_[term.first_token].offset;
    return before.kind == TokenKind::number && touches;
  }

  void refuse_glued(const Term& term) {
    Term whole = term;
    --whole.first_token;
    ++whole.token_count;
    add_fault({"call-not-understood",
               quoted(whole) + " is neither the number of a cow nor a number with its unit",
               "a cow is digits only; units are {d, weeks, mm, cm}"},
              whole);
  }

  // The next separator is a place where reading can go on without guessing.
  void recover(const Term& term) {
    const bool needs_cow_before = needs_cow(term);
    lost_ = true;
    if (!clauses_before_fault_) clauses_before_fault_ = builder_.clauses().size();
    builder_.lose_thread();
    foot_behind_ = FootBehind{};
    at_ = term.first_token + (is_separator(term.kind) ? term.token_count : 0);
    free_words_ = facts_of(spot_).text != TextExtent::none;
    // With nobody to correct the rest of the line has no sense of its own.
    if (term.kind == TermKind::correction && needs_cow_before) at_ = tokens_.size();
    while (at_ < tokens_.size() && !is_separator(kind_of_mark(tokens_[at_].kind))) pass_over();
    spot_ = spot_after_fault(sort_);
  }

  // What stands between a fault and the next separator is not read. But a word that is none of the
  // language is told as well, so that whoever types can mend the line at once; where free words may
  // stand only one that is near a known word.
  void pass_over() {
    const Language::Match known = language_.longest_match(tokens_, at_);
    const bool is_unknown = known.phrase == nullptr && tokens_[at_].kind == TokenKind::word;
    const bool is_told = at_ < told_to_ || language_.zone_in(tokens_[at_].folded);
    if (is_unknown && !is_told && telling_ != Telling::briefly) tell_slip();
    if (known.phrase != nullptr) free_words_ |= free_words_may_follow(known.phrase->kind);
    at_ += known.phrase == nullptr ? 1 : known.word_count;
  }

  // To a short word everything is near.
  void tell_slip() {
    constexpr std::size_t shortest_slip = 5;
    const bool is_long = tokens_[at_].length >= shortest_slip;
    const Nearest near = is_long && !language_.fills(tokens_[at_].folded)
                             ? nearest_phrase(tokens_, at_, at_, kinds_after(Spot::turn), language_)
                             : Nearest{};
    if (near.words.empty() && free_words_) return;
    std::size_t count = near.token_count;
    const auto is_unknown = [this](std::size_t at) {
      return at < tokens_.size() && tokens_[at].kind == TokenKind::word &&
             language_.longest_match(tokens_, at).phrase == nullptr;
    };
    while (near.words.empty() && is_unknown(at_ + count)) ++count;
    const Term slip = term_of(TermKind::unknown_word, count);
    add_fault(not_understood(quoted(slip) + " is not understood either", meant_by(near)), slip);
  }

  [[nodiscard]] std::string quoted(const Term& term) const {
    return evenclaw::quoted(said_by(term));
  }

  [[nodiscard]] std::string_view said_by(const Term& term) const {
    if (term.token_count == 0) return {};
    const Token& first = tokens_[term.first_token];
    const Token& last = tokens_[term.first_token + term.token_count - 1];
    return text_.substr(first.offset, last.offset + last.length - first.offset);
  }

  [[nodiscard]] Fault fault_of(const Refusal& refusal, const Term& at) const {
    Fault fault = evenclaw::fault_of(refusal);
    fault.message = with_quoted_words(fault.message, language_);
    fault.token = std::string(said_by(at));
    fault.line = context_.line_number;
    fault.column = column_at(text_, tokens_[at.first_token].offset);
    fault.remedy = with_quoted_words(fault.remedy, language_);
    return fault;
  }

  void add_fault(const Refusal& refusal, const Term& at) {
    faults_.push_back(fault_of(refusal, at));
    told_to_ = std::max(told_to_, at.first_token + at.token_count);
  }

  [[nodiscard]] Term last_term() const {
    Term term;
    term.first_token = last_term_;
    term.token_count = tokens_.size() - last_term_;
    return term;
  }

  // What was held loose at the end of a half line may still get its lesion, so it is only missing.
  [[nodiscard]] std::optional<Fault> missing_at_end() {
    if (lost_ || tokens_.empty()) return std::nullopt;
    if (const std::string_view needs = facts_of(spot_).still_needs; !needs.empty()) {
      return fault_of(
          not_understood("the line ends too early; still needed: " + std::string(needs)),
          last_term());
    }
    const std::size_t before = builder_.faults().size();
    leave_line();
    if (builder_.faults().size() != before) {
      return fault_of(builder_.faults()[before].refusal, builder_.faults()[before].at);
    }
    const std::optional<PlacedFault> behind = foot_behind_.at_end();
    if (!behind) return std::nullopt;
    clauses_before_fault_ = 0;
    return fault_of(behind->refusal, behind->at);
  }

  // Contradictions within the line, found by saying it to a draft of its own. What was said of a
  // foot on an earlier line is not known here, so clauses before the first foot or cow are not
  // judged.
  void check_in_draft() {
    TurnDraft draft;
    bool is_known = false;
    bool only_named = false;  // her number, perhaps a foot, and nothing called of her yet
    const std::size_t count = clauses_before_fault_.value_or(builder_.clauses().size());
    for (std::size_t i = 0; i < count; ++i) {
      const PlacedClause& placed = builder_.clauses()[i];
      if (std::holds_alternative<CowNamed>(placed.clause)) {
        draft = TurnDraft{};
        is_known = true;
        only_named = true;
      }
      const auto* clause = std::get_if<TurnClause>(&placed.clause);
      if (clause == nullptr) continue;
      if (const auto two = two_scores_in_one_line(builder_.clauses(), i)) {
        add_fault(two->refusal, two->at);
        continue;
      }
      is_known |= std::holds_alternative<FeetNamed>(*clause);
      // Which foot is spoken of from here on is known only with her past.
      if (std::holds_alternative<KnownSaid>(*clause)) is_known = false;
      const bool is_of_before =
          std::holds_alternative<BothFeetNamed>(*clause) && draft.turn.feet.empty();
      if (is_of_before) is_known = false;
      if (!is_known) continue;
      const bool mends_before = only_named && may_mend_an_earlier_turn(*clause, draft);
      only_named &= mends_before || std::holds_alternative<FeetNamed>(*clause);
      const Outcome outcome = add_clause(draft, *clause);
      if (outcome.ok()) continue;
      const bool is_left = mends_before || is_judged_later(*clause, draft);
      // What stands behind it is of feet that only the earlier call knows.
      if (is_left && draft.feet_named.empty()) is_known = false;
      if (is_left) continue;
      tell_why(outcome.faults().front(), draft, i, count);
    }
  }

  // Why clause `at` of `count` cannot stand behind those before it.
  void tell_why(const Fault& why, const TurnDraft& draft, std::size_t at, std::size_t count) {
    if (may_be_where_it_is_known(std::span(builder_.clauses()).first(count), at)) {
      awaits_past_ = true;
    } else if (const auto both = both_in_one_line(builder_.clauses(), at, draft, tokens_)) {
      add_fault(both->refusal, both->at);
    } else {
      add_fault({why.slug, why.message, why.remedy}, builder_.clauses()[at].from);
    }
  }

  Reading finished() {
    Reading reading;
    reading.spot = spot_;
    const std::size_t refused = builder_.faults().size();
    reading.missing = missing_at_end();
    for (std::size_t i = 0; i < refused; ++i) {
      add_fault(builder_.faults()[i].refusal, builder_.faults()[i].at);
    }
    if (!lost_) builder_.join_what_is_instead();
    if (refused == 0) check_in_draft();
    std::stable_sort(faults_.begin(), faults_.end(),
                     [](const Fault& a, const Fault& b) { return a.column < b.column; });
    for (const PlacedClause& placed : builder_.clauses()) {
      reading.line.clauses.push_back(placed.clause);
    }
    add_leg_behind_comma(reading.line, builder_.clauses(), tokens_, language_);
    reading.faults = std::move(faults_);
    reading.awaits_past = awaits_past_;
    reading.tokens = tokens_.size();
    reading.tokens_taken = taken_;
    return reading;
  }

  LineSort sort_;
  Telling telling_;
  std::string_view text_;
  const LineContext& context_;
  const Language& language_;
  std::vector<Token> tokens_;
  LineBuilder builder_;
  FootBehind foot_behind_;
  Faults faults_;
  Spot spot_;
  Spot spot_before_;  // before the last term was taken
  std::size_t at_ = 0;
  std::size_t taken_ = 0;
  std::size_t last_term_ = 0;
  std::size_t told_to_ = 0;  // behind the last token a fault was told of
  bool free_words_ = false;  // they may stand where nothing is read: behind "spray", "note"
  bool awaits_past_ = false;
  bool lost_ = false;  // a fault was found: what follows may be misread
  std::optional<std::size_t> clauses_before_fault_;
};

}  // namespace

Reading read_as(LineSort sort, std::string_view text, const LineContext& context,
                const Language& language, Telling telling) {
  return Parser(sort, text, context, language, telling).read();
}

}  // namespace evenclaw
