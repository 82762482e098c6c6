// What was recorded of this visit before, so that a file given twice is not recorded twice.
#pragma once

#include <cstdint>
#include <deque>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/api/journal.hpp"
#include "core/api/visits.hpp"
#include "core/base/id.hpp"
#include "core/base/result.hpp"
#include "core/log/bodies.hpp"
#include "core/log/news_bodies.hpp"
#include "core/ports/store.hpp"
#include "core/trade/call_line/turn_clause.hpp"
#include "core/trade/task.hpp"
#include "core/trade/turn.hpp"
#include "core/trade/visit_so_far.hpp"

namespace evenclaw {

/// A turn of this visit as its entry holds it.
struct RecordedTurn {
  EntryId entry;
  std::optional<EntryId> supersedes;
  SaidBy by;
  TurnRecorded body;
  bool superseded = false;
};

/// News told of a cow that was clear.
struct NewsTold {
  CowId cow;
  News news = News::looked_at;
  FootSet feet;
  // Another one was put on since, she stood there after she was gone, it was told otherwise, or it
  // was taken back.
  bool overtaken = false;
  bool said_again = false;  // or said by this recording
  std::string words = {};
};

/// "Still lame" of "walks sound", and the other way round; nothing of other news.
std::optional<News> opposite_of(News news);

struct UnreadNews {
  std::string number;
  std::string words;
};

class RecordedBefore {
 public:
  static Result<RecordedBefore> open(Store& store, const Visit& visit);

  /// What is looked for: her words, and the number she is put right to in the line behind them.
  struct Again {
    const CowSaid& cow;
    const std::vector<std::string>& words;
    bool once;  // each recorded turn is matched once only
    std::optional<CowSaid> put_right_to;
  };

  /// A turn of the same cow in the same words, also one that was corrected since; null when there
  /// is none. A turn that counts as another cow now matches only when it is put right to that cow
  /// once more, or was called under a doubtful number and is part of a longer one now; a turn that
  /// told a wrap or block off does not once another was put on since. A cow
  /// without a sure number matches each recorded turn once only, for the next one said in the same
  /// words may be another cow; so does every cow of a file.
  const RecordedTurn* same(const Again& said);

  /// A turn of the same cow with fewer words that these begin with: recorded when the input broke
  /// off; null when there is none.
  const RecordedTurn* begun(const CowSaid& cow, const std::vector<std::string>& words);

  /// These words of hers, so far, are those of a turn that was recorded before and not matched yet:
  /// the same file, perhaps, given once more.
  [[nodiscard]] bool is_perhaps_again(CowId cow, const std::vector<std::string>& words) const;

  /// Her recorded turn was begun in these words under another number: "321 recheck", and then she
  /// was named. So it is in a file given once more.
  [[nodiscard]] bool is_known_by_these(const CowSaid& cow, const TurnDraft& begun) const;

  /// A turn of the same cow that goes on with an earlier one in these words; null when there is
  /// none.
  [[nodiscard]] const RecordedTurn* gone_on(const CowSaid& cow,
                                            const std::vector<std::string>& words) const;

  /// The turn that corrects `entry` to that cow, when there is one already.
  [[nodiscard]] const RecordedTurn* correction(EntryId entry, const CowSaid& cow) const;
  /// The turn that corrects `entry` in these words, when there is one already.
  [[nodiscard]] const RecordedTurn* correction(EntryId entry,
                                               const std::vector<std::string>& words) const;

  /// A turn of that cow that was mended in these words and not given again yet; null when there is
  /// none.
  const RecordedTurn* mended(const CowSaid& cow, std::string_view words);

  [[nodiscard]] const RecordedTurn* find(EntryId entry) const;
  /// That turn and all it corrects, the latest first; empty when it is not known.
  [[nodiscard]] std::vector<const RecordedTurn*> line_of(EntryId entry) const;
  /// Her last turn of this visit that counts; null when there is none.
  [[nodiscard]] const RecordedTurn* last_of(CowId cow) const;
  /// The turns that count of the cow of that number.
  [[nodiscard]] std::vector<const RecordedTurn*> turns_called(const CowSaid& cow) const;
  /// And of whoever was called by that one number, in doubt or not.
  [[nodiscard]] std::vector<const RecordedTurn*> turns_called_by(std::string_view number) const;
  /// The turns that count in which "rest fine" was said, in the order recorded.
  [[nodiscard]] std::vector<RecordedTurn> that_say_rest_fine() const;
  /// How many turns of hers count in this visit.
  [[nodiscard]] int turns_of(CowId cow) const;
  /// What was called at this visit of all cows but that one; `caller` called her.
  [[nodiscard]] VisitSoFar so_far(CowId but, PersonId caller) const;
  /// The products that turns of other cows name, each as often as a turn does; of a turn that is
  /// corrected or gone on with, those said before it.
  [[nodiscard]] std::vector<std::string> products_said_of_others(CowId cow,
                                                                 const RecordedTurn* before) const;
  /// A turn recorded just now.
  const RecordedTurn* add(RecordedTurn turn);

  /// The same news of the same cow was recorded for this visit and holds still: no such wrap or
  /// block was put on since. In a file given again each time it was told counts once.
  bool was_told(CowId cow, News news, const FootSet& feet, bool typed);
  /// In which words that was told of her at this visit, as far as it holds; "" when it was not.
  [[nodiscard]] std::string told_as(CowId cow, News news) const;
  /// Told at this visit to be on that foot still, or on her, and nothing was put on since.
  [[nodiscard]] bool was_told_on(CowId cow, Foot foot, Fixture fixture) const;
  void add_told(CowId cow, News news, const FootSet& feet, const std::string& words);
  /// What was told of her in these words is not so; `how` said that, of that number.
  void take_back(CowId cow, const std::string& words, const std::string& number,
                 std::string_view how);
  /// News of that number was taken back in these words.
  [[nodiscard]] bool was_taken_back(const std::string& number, std::string_view how) const;
  /// And that is not given again yet: in a file given once more each time counts once.
  bool is_taken_back_again(const std::string& number, std::string_view how);
  /// News nobody could be sure of: true when these words are said of her for the first time, or
  /// again once the same was told plainly or another wrap or block was put on. In a file given
  /// again each time counts once.
  bool asks_now(CowId cow, News news, const std::string& words, bool typed);
  /// It was asked whether she walks otherwise than that, or left otherwise, and is not answered.
  [[nodiscard]] bool was_asked_otherwise(CowId cow, News news) const;
  /// It was asked about since the last wrap or block was put on her, and this answers: said again
  /// in the same words by somebody who saw the question, or with its foot.
  [[nodiscard]] bool is_asked_still(CowId cow, const NewsSaid& news, const std::string& words,
                                    bool typed) const;

  /// Any news of her that nobody could be sure of.
  [[nodiscard]] bool was_asked_about(CowId cow) const {
    const auto first = asked_.lower_bound({cow, std::string()});
    return first != asked_.end() && first->first.first == cow;
  }

  /// They were said of her before.
  [[nodiscard]] bool was_asked(CowId cow, const std::string& words) const {
    return asked_.count({cow, words}) > 0;
  }

  /// News of a number that nobody could read or that nobody carries: true the first time, and typed
  /// again once it was settled.
  bool is_unread_now(const std::string& number, const std::string& words, bool typed);
  void add_settled(const UnreadNews& news);

  /// It was, at this visit, whether or not it is settled by now.
  [[nodiscard]] bool was_unread(const std::string& number, const std::string& words) const {
    return read_in_vain_.count({number, words}) > 0;
  }

  /// What could not be read and nobody settled, each number of it.
  [[nodiscard]] const std::vector<UnreadNews>& unread() const { return unread_; }

  /// Caller and writer as they were last on this device; nil when nothing tells.
  [[nodiscard]] SaidBy last_said_by() const { return last_said_by_; }

 private:
  struct Asked {
    int recorded = 0;
    int given = 0;  // to this recording
  };

  void read(const Entry& entry);
  [[nodiscard]] const RecordedTurn& as_it_counts(const RecordedTurn& turn) const;
  [[nodiscard]] bool is_repeated_by_its_correction(const RecordedTurn& turn) const;
  [[nodiscard]] bool is_overtaken(const RecordedTurn& turn) const;
  const RecordedTurn* keep(RecordedTurn turn);
  void read_said_by(const Envelope& envelope);
  void overtake_by(const TurnRecorded& turn);
  void overtake(CowId cow, Foot foot, Fixture fixture);
  void keep_told(NewsTold told);
  void keep_asked(CowId cow, News news, const std::string& words);
  void overtake_told(const QuestionSettled& back);

  std::deque<RecordedTurn> turns_;            // pointers into it stay good
  std::map<CowId, std::int64_t> last_there_;  // order of the last entry that put her in the crush
  std::set<EntryId> matched_;
  std::vector<NewsTold> told_;
  std::vector<QuestionSettled> taken_back_;
  std::vector<QuestionSettled> taken_back_again_;  // those not given again yet
  std::vector<UnreadNews> unread_;
  std::set<std::pair<std::string, std::string>> read_in_vain_;
  std::map<std::pair<CowId, std::string>, Asked> asked_;
  std::vector<NewsTold> asked_still_;  // and not told plainly since
  DeviceId device_;
  SaidBy last_said_by_;
};

}  // namespace evenclaw
