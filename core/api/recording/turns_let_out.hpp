// The turns of cows that were let out: each becomes one entry, and what is said later of her takes
// its place by another one.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "core/api/recording/crush.hpp"
#include "core/api/recording/in_crush.hpp"
#include "core/api/recording/open_questions.hpp"
#include "core/api/recording/recorded_before.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/bodies.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

/// What "no, 421" and "go ahead" are of while nobody stands in the crush.
struct LastTurn {
  std::optional<EntryId> turn;
  std::optional<LastOut> out;  // as she stood there; its turn is the one that counts now
};

/// The last turn is always the one that counts: when it is put right, the entry that does so takes
/// its place here too. A number is registered once a cow.
class TurnsLetOut {
 public:
  explicit TurnsLetOut(VisitBook& book) : book_(book) {}

  /// Adds the turn to the next write, in the place of `superseded` unless that is null, with the
  /// number of a cow who is seen for the first time. It is the last turn now.
  Outcome record(EntryId entry, TurnRecorded body, SaidBy by, const RecordedTurn* superseded);

  [[nodiscard]] const LastTurn& last() const { return last_; }

  /// That turn is the last one, though it was on record before.
  void now_last(std::optional<EntryId> turn) { last_.turn = turn; }

  /// As it was before somebody was mended from outside.
  void put_back(LastTurn last) { last_ = std::move(last); }

  /// She that is let out with `entry` may be put right by the next line.
  void keep(InCrush cow, EntryId entry);

  /// The entry by which this recording gave the cow of that turn her number; nothing when it did
  /// not.
  [[nodiscard]] std::optional<EntryId> number_given_with(EntryId turn) const;

  /// As it was when the recording broke off.
  void take_up(EntryId turn, std::optional<InCrush> cow, std::optional<EntryId> registered);

  /// "go ahead" said when she is out already.
  Outcome answer_last_turn(std::string_view text);

  /// What is told of a wrap or block right after she was let out answers the question she left
  /// with.
  Outcome answer_by_news(CowId cow, const NewsSaid& news, std::string_view text);

  /// Of whoever was called by that number nobody is asked about lines that were not understood.
  /// True when there were such lines.
  Result<bool> drop_of_all_let_out(const std::string& number, std::string_view text);

 private:
  Result<bool> drop_of_let_out(const RecordedTurn& turn, std::string_view text);
  Outcome register_cow(const TurnRecorded& body, const RecordedTurn* superseded);

  VisitBook& book_;
  std::map<CowId, EntryId> registered_;  // by this recording
  LastTurn last_;
};

/// Of whom a line without a number is.
WhoIsMeant who_is_meant(const Crush& crush, const TurnsLetOut& turns);

}  // namespace evenclaw
