#include "core/trade/call_line/put_instead.hpp"

#include <algorithm>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "core/trade/call_line/claw_instead.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/call_line/open_item.hpp"
#include "core/trade/call_line/said_again.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

bool may_lie_on_a_claw(const Finding& finding) {
  return finding.claw != Claw::none;
}

/// Which of what was called each of those that are right stands for.
class Places {
 public:
  Places(const std::vector<Finding>& called, std::vector<Finding> right)
      : called_(called),
        right_(std::move(right)),
        place_of_(right_.size()),
        is_taken_(called.size()) {
    const auto same_lesion = [](const Finding& a, const Finding& b) {
      return a.lesion == b.lesion;
    };
    const auto same_claw = [](const Finding& a, const Finding& b) {
      return is_called(a.claw) && a.claw == b.claw;
    };
    const auto both_on_a_claw = [](const Finding& a, const Finding& b) {
      return is_called(a.claw) && is_called(b.claw);
    };
    pair_up(
        [&](const Finding& a, const Finding& b) { return same_lesion(a, b) && same_claw(a, b); });
    pair_up(same_lesion);
    pair_up(same_claw);
    if (count_left_over() == 1) pair_up(both_on_a_claw);
  }

  /// What was called and nothing stands in its place, where one of those that are right may.
  [[nodiscard]] const Finding* unclear() const {
    if (count_left_over() == 0) return nullptr;
    for (std::size_t at = 0; at < called_.size(); ++at) {
      if (!is_taken_[at] && may_lie_on_a_claw(called_[at])) return &called_[at];
    }
    return nullptr;
  }

  [[nodiscard]] std::vector<Finding> wrong() const {
    std::vector<Finding> all;
    for (const std::optional<std::size_t>& place : place_of_) {
      if (place) all.push_back(called_[*place]);
    }
    return all;
  }

  /// With all that was called of the same lesion.
  [[nodiscard]] std::vector<Finding> right() const {
    std::vector<Finding> all = right_;
    for (std::size_t at = 0; at < all.size(); ++at) {
      const bool is_there = place_of_[at] && called_[*place_of_[at]].lesion == all[at].lesion;
      if (is_there) complete(all[at], called_[*place_of_[at]]);
    }
    return all;
  }

 private:
  [[nodiscard]] std::size_t count_left_over() const {
    std::size_t count = 0;
    for (std::size_t at = 0; at < right_.size(); ++at) {
      if (!place_of_[at] && may_lie_on_a_claw(right_[at])) ++count;
    }
    return count;
  }

  /// Each takes the place that fits it, where only one does.
  template <class Fits>
  void pair_up(Fits fits) {
    for (std::size_t at = 0; at < right_.size(); ++at) {
      if (place_of_[at]) continue;
      std::vector<std::size_t> places;
      for (std::size_t place = 0; place < called_.size(); ++place) {
        if (!is_taken_[place] && fits(right_[at], called_[place])) places.push_back(place);
      }
      if (places.size() != 1) continue;
      place_of_[at] = places.front();
      is_taken_[places.front()] = true;
    }
  }

  const std::vector<Finding>& called_;
  std::vector<Finding> right_;
  std::vector<std::optional<std::size_t>> place_of_;
  std::vector<bool> is_taken_;
};

std::vector<Finding> all_right(const FindingSaid& said) {
  std::vector<Finding> all = {said.finding};
  all.insert(all.end(), said.also.begin(), said.also.end());
  return all;
}

const FootCall* only_foot(const TurnDraft& draft) {
  if (draft.feet_named.count() != 1) return nullptr;
  const auto call =
      std::find_if(draft.turn.feet.begin(), draft.turn.feet.end(),
                   [&](const FootCall& each) { return draft.feet_named.has(each.foot); });
  return call == draft.turn.feet.end() || call->findings.empty() ? nullptr : &*call;
}

Outcome unclear_place(Foot foot, const Finding& wrong) {
  const std::string where(word_of(foot));
  const std::string lesion(english().say(TermKind::lesion, wrong.lesion));
  return fault_of(not_understood(
      "of what was called on {" + where + "} it is not clear what these take the place of",
      "take back what was wrong, such as \"{" + where + " no, no " + lesion +
          "}\", and say what was found"));
}

/// All that is wrong goes before anything that is right is added.
Outcome put_all(TurnDraft& draft, const std::vector<Finding>& wrong,
                const std::vector<Finding>& right) {
  TurnDraft trial = draft;
  for (const Finding& finding : wrong) {
    Outcome gone = add_clause(trial, FindingTakenBack{finding});
    if (!gone.ok()) return gone;
  }
  for (const Finding& finding : right) {
    Outcome added = add_clause(trial, FindingSaid{finding});
    if (!added.ok()) return added;
  }
  draft = std::move(trial);
  return Done{};
}

/// "Nothing found" was said there, or two feet are spoken of: the first is judged as if said alone.
Outcome put_on_no_finding(TurnDraft& draft, const FindingSaid& said) {
  TurnDraft trial = draft;
  Outcome first = add_clause(trial, FindingSaid{said.finding, true});
  if (!first.ok()) return first;
  Outcome others = put_all(trial, {}, said.also);
  if (others.ok()) draft = std::move(trial);
  return others;
}

Outcome put_several(TurnDraft& draft, const FindingSaid& said) {
  const FootCall* call = only_foot(draft);
  if (call == nullptr) return put_on_no_finding(draft, said);
  const Places places(call->findings, all_right(said));
  if (const Finding* wrong = places.unclear()) return unclear_place(call->foot, *wrong);
  const std::vector<Finding> wrong = places.wrong();
  const std::vector<Finding> right = places.right();
  if (wrong == right) return fault_of(impossible("that is what was said"));
  return put_all(draft, wrong, right);
}

}  // namespace

std::optional<Outcome> put_instead(TurnDraft& draft, const TurnClause& clause) {
  const auto* said = std::get_if<FindingSaid>(&clause);
  if (said != nullptr && !said->also.empty()) return put_several(draft, *said);
  const auto mended = claw_instead(draft, clause);
  if (!mended) return std::nullopt;
  return put_all(draft, {mended->wrong.finding}, {mended->right.finding});
}

}  // namespace evenclaw
