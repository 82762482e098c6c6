// What is told of cows that are not in the crush: what became of them since last time, and of whom
// it was told by mistake.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/api/cow_news.hpp"
#include "core/api/news_taken_back.hpp"
#include "core/api/recording/crush.hpp"
#include "core/api/recording/number_slip.hpp"
#include "core/api/recording/turns_let_out.hpp"
#include "core/api/recording/visit_book.hpp"
#include "core/base/result.hpp"
#include "core/trade/task.hpp"

namespace evenclaw {

/// Each piece of news is kept once, as it was said; what nobody can be sure of closes nothing and
/// is asked about.
class NewsDesk {
 public:
  NewsDesk(VisitBook& book, Crush& crush, TurnsLetOut& turns)
      : book_(book), crush_(crush), turns_(turns) {}

  Outcome tell(const NewsSaid& news, std::string_view said_as);

  /// True when the line takes back what was told of a cow, or tells it of another one. `told`: the
  /// numbers of whom the line before told news.
  Result<bool> is_mended_by(std::string_view text, const std::vector<std::string>& told);

  /// Something that is no news was said: a number told next is no correction any more.
  void forget_mistaken_number() { mistaken_number_.reset(); }

 private:
  [[nodiscard]] bool tells_how_she_left(CowId cow, const NewsSaid& news,
                                        std::string_view text) const;
  std::optional<std::string> left_in_another_way(const NewsSaid& news, std::string_view text);
  [[nodiscard]] bool is_answered_by(CowId cow, const NewsSaid& news,
                                    const std::string& words) const;
  [[nodiscard]] bool is_asked_about(CowId cow, const NewsSaid& news) const;
  [[nodiscard]] std::string told_otherwise(CowId cow, const NewsSaid& news,
                                           std::string_view text) const;
  [[nodiscard]] Result<std::optional<std::string>> question_of_new_one(CowId cow,
                                                                       const NewsSaid& news) const;
  [[nodiscard]] std::optional<std::string> question_of_one_seen_on(const NewsSaid& news,
                                                                   const Rows& past) const;
  Outcome tell_of(CowId cow, const NewsSaid& news, std::string_view text);
  Result<std::optional<std::string>> ask_for_whom_the_vet(const CowNews& told);
  Outcome ask_about_news(const CowNews& told, const std::string& question);
  Outcome unknown_cow(const NewsSaid& news, std::string_view text);
  [[nodiscard]] bool tells_all_of(const MistakenNumber& before, const std::string& number,
                                  std::string_view text) const;
  Outcome settle_number_slip(const NewsSaid& news, std::string_view text);

  // news_mended.cpp
  Result<bool> number_of_news_mended(std::string_view text, const std::vector<std::string>& told);
  Result<bool> deny_news(const NewsDenied& denied, std::string_view text);
  Result<bool> mend_by_other_news(const NewsInstead& instead, std::string_view text);
  Result<std::optional<NewsSaid>> left_of(const NewsSaid& before, const std::vector<NewsSaid>& now,
                                          CowId cow);
  Outcome tell_what_else(const std::vector<NewsSaid>& told, const std::vector<NewsSaid>& now,
                         CowId cow, std::string_view both);
  Outcome take_opposite_back(CowId cow, const NewsSaid& news, std::string_view text, bool is_sure);
  [[nodiscard]] std::vector<NewsSaid> told_by(const NewsStanding& last,
                                              const std::vector<NewsStanding>& standing,
                                              const std::string& number) const;
  [[nodiscard]] std::vector<NewsSaid> told_in(const std::string& words,
                                              const std::string& number) const;
  Result<bool> mend_news(const NewsMended& mended, std::string_view text);
  Result<bool> mend_news_of_nobody(const NewsMended& mended, std::string_view text);
  Outcome tell_all_but_gone(const std::string& words, const std::string& number,
                            std::string_view text);
  Outcome take_news_back(const std::vector<NewsStanding>& told, const std::string& number,
                         std::string_view text);
  Outcome tell_instead(const std::string& words, const NewsMended& mended, std::string_view text);

  VisitBook& book_;
  Crush& crush_;
  TurnsLetOut& turns_;
  std::optional<MistakenNumber> mistaken_number_;  // nothing that could be read was said since
};

}  // namespace evenclaw
