#include "core/api/still_untold.hpp"

#include <algorithm>
#include <utility>
#include <variant>

#include "core/api/recording/said_again.hpp"
#include "core/api/recording/said_otherwise.hpp"
#include "core/api/recording/two_cows.hpp"
#include "core/base/text.hpp"
#include "core/trade/call_line/line.hpp"
#include "core/trade/call_line/nearest.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/on_foot.hpp"

namespace evenclaw {

namespace {

using Pieces = std::vector<NewsSaid>;

/// What the line tells of that number, when it is news and nothing else.
std::optional<Pieces> pieces_of(std::string_view line, const std::string& number, Day day,
                                const Language& language) {
  LineContext context;
  context.visit_day = day;
  const auto read = read_line(line, context, language);
  if (!read) return std::nullopt;
  Pieces pieces;
  for (const Clause& clause : read->clauses) {
    const auto* news = std::get_if<NewsSaid>(&clause);
    if (news == nullptr) return std::nullopt;
    if (plain_number(news->number) == plain_number(number)) pieces.push_back(*news);
  }
  return pieces.empty() ? std::nullopt : std::optional(std::move(pieces));
}

/// "Blok gone" as "block gone"; "412 walks sound", which in the crush is said of her who stands
/// there, as news.
std::optional<Pieces> pieces_meant(std::string_view words, const std::string& number, Day day,
                                   const Language& language) {
  constexpr TermKind kinds[] = {TermKind::news,        TermKind::gone,     TermKind::block_act,
                                TermKind::wrap_act,    TermKind::foot,     TermKind::feet,
                                TermKind::walks_sound, TermKind::handling, TermKind::news_lead};
  if (!is_utf8(words)) return std::nullopt;
  const std::string meant = with_slips_mended(words, kinds, language);
  if (auto pieces = pieces_of(meant, number, day, language)) return pieces;
  const std::string lead(language.say(TermKind::news_lead));
  return pieces_of(lead + ' ' + meant, number, day, language);
}

void take_out_feet(NewsSaid& piece, const FootSet& feet) {
  for (const Foot foot : all_feet) {
    if (feet.has(foot)) piece.feet.remove(foot);
  }
}

}  // namespace

bool tells_the_same(News a, News b) {
  if (a == b) return true;
  const std::optional<FixtureSaid> first = fixture_said(a);
  const std::optional<FixtureSaid> second = fixture_said(b);
  return first && second && first->fixture == second->fixture && is_off_after(first->step) &&
         is_off_after(second->step);
}

StillUntold::StillUntold(std::string_view words, std::string number, Day day,
                         const Language& language)
    : language_(&language),
      number_(std::move(number)),
      words_(told_of_one(words, number_, language)),
      pieces_(pieces_meant(words_, number_, day, language)) {}

void StillUntold::take_out(const NewsSaid& news) {
  std::erase_if(*pieces_, [&](NewsSaid& piece) {
    if (!tells_the_same(piece.news, news.news)) return false;
    if (piece.feet.empty()) return !piece.all || news.feet.empty();
    take_out_feet(piece, news.feet);
    return piece.feet.empty();
  });
  if (pieces_->empty()) is_all_told_ = true;
}

void StillUntold::tell(const NewsSaid& news, std::string_view words) {
  if (pieces_) return take_out(news);
  const std::string hers = told_of_one(words, number_, *language_);
  if (!told_since_.ends_with(hers)) told_since_ += (told_since_.empty() ? "" : "; ") + hers;
  if (is_said_again(words_, told_since_, *language_) ||
      is_said_in_other_words(words_, told_since_, *language_)) {
    is_all_told_ = true;
  }
}

void StillUntold::was_told(const NewsSaid& news) {
  if (pieces_ && !fixture_said(news.news)) take_out(news);
}

}  // namespace evenclaw
