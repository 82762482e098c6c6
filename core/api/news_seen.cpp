#include "core/api/news_seen.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

#include "core/api/news_lead.hpp"
#include "core/base/ascii.hpp"
#include "core/base/text.hpp"
#include "core/log/bodies.hpp"
#include "core/log/body.hpp"
#include "core/log/news_bodies.hpp"
#include "core/trade/call_line/language.hpp"
#include "core/trade/identity.hpp"

namespace evenclaw {

namespace {

/// Letters and digits that stand together, and what parts them from the word before.
struct Word {
  std::size_t from = 0;
  std::size_t to = 0;
  bool is_number = false;
  bool is_parted = false;  // by more than spaces
};

bool is_in_a_word(char c) {
  const bool is_letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
  return is_letter || is_digit(c) || static_cast<unsigned char>(c) >= 0x80 || c == '\'';
}

std::vector<Word> words_of(std::string_view line) {
  std::vector<Word> words;
  bool is_parted = false;
  for (std::size_t at = 0; at < line.size();) {
    if (!is_in_a_word(line[at])) {
      is_parted = is_parted || line[at] != ' ';
      ++at;
      continue;
    }
    Word word{at, at, true, is_parted};
    while (word.to < line.size() && is_in_a_word(line[word.to])) {
      word.is_number = word.is_number && is_digit(line[word.to]);
      ++word.to;
    }
    at = word.to;
    is_parted = false;
    words.push_back(word);
  }
  return words;
}

/// "412 and 513 wraps off".
bool joins_two_numbers(const std::vector<Word>& words, std::size_t at) {
  constexpr std::size_t longest_joining = 3;
  if (at == 0 || at + 1 >= words.size() || words[at].is_number) return false;
  return words[at - 1].is_number && words[at + 1].is_number && !words[at + 1].is_parted &&
         words[at].to - words[at].from <= longest_joining;
}

struct Part {
  std::vector<std::string> numbers;
  std::size_t from = 0;
  std::size_t to = 0;
  bool tells = false;  // something stands behind the numbers
};

/// Each tells the same of all its numbers.
std::vector<Part> parts_of(std::string_view line) {
  const std::vector<Word> words = words_of(line);
  std::vector<Part> parts;
  for (std::size_t at = 0; at < words.size(); ++at) {
    const Word& word = words[at];
    const bool begins = parts.empty() || (word.is_number && parts.back().tells);
    if (begins) parts.push_back({{}, word.from, word.to, false});
    Part& part = parts.back();
    part.to = word.to;
    if (word.is_number) {
      part.numbers.push_back(plain_number(line.substr(word.from, word.to - word.from)));
    } else if (!part.numbers.empty() && !joins_two_numbers(words, at)) {
      part.tells = true;
    }
  }
  return parts;
}

/// "news 112 wrap off" is told as "112 wrap off": the word only says what kind of line it is.
std::string_view without_lead(std::string_view line) {
  for (const CallLanguage& each : call_languages()) line = behind_news_lead(line, each.words());
  return line;
}

std::vector<std::string> kinds_of_news() {
  return {std::string(TaskClosedBody::kind), std::string(CowLeft::kind)};
}

std::vector<std::string> kinds_shown() {
  std::vector<std::string> kinds = kinds_of_news();
  for (const std::string_view kind :
       {CowRegistered::kind, NumberGiven::kind, QuestionSettled::kind}) {
    kinds.emplace_back(kind);
  }
  return kinds;
}

/// What was told of one cow, as it stands in the log.
class NewsOfCow {
 public:
  void read(const Entry& entry) {
    if (const auto registered = body_as<CowRegistered>(entry)) carry(registered->number);
    if (const auto given = body_as<NumberGiven>(entry)) carry(given->number);
    if (const auto told = body_as<TaskClosedBody>(entry)) {
      add(told->cow, told->news, {told->day, told->words, told->asked.value_or("")});
    }
    if (const auto left = body_as<CowLeft>(entry)) {
      add(left->cow, News::gone, {left->day, left->words, ""});
    }
    if (const auto settled = body_as<QuestionSettled>(entry)) take_back(*settled);
  }

  [[nodiscard]] std::vector<NewsSeen> all() && {
    std::vector<NewsSeen> shown;
    for (Told& told : news_) {
      told.news.words = told.news.words.empty() ? "gone" : part_told_of(told.news.words, numbers_);
      shown.push_back(std::move(told.news));
    }
    return shown;
  }

 private:
  struct Told {
    CowId cow;
    std::set<News> pieces;
    NewsSeen news;
  };

  /// "404 block's gone, walks all right" tells two things of her and was said once.
  void add(CowId cow, News piece, NewsSeen seen) {
    Told* last = news_.empty() ? nullptr : &news_.back();
    const bool is_of_it = last != nullptr && last->cow == cow && last->news.day == seen.day &&
                          !seen.words.empty() && last->news.words == seen.words;
    if (!is_of_it || !last->pieces.insert(piece).second) {
      news_.push_back({cow, {piece}, std::move(seen)});
      return;
    }
    std::string& asked = last->news.asked;
    if (seen.asked.empty() || seen.asked == asked) return;
    asked += (asked.empty() ? "" : " ") + seen.asked;
  }

  void carry(const std::string& number) { numbers_.push_back(plain_number(number)); }

  void take_back(const QuestionSettled& settled) {
    for (Told& told : news_) {
      if (settled.cow != told.cow || settled.about != told.news.words) continue;
      told.news.asked = "taken back: " + settled.words;
    }
  }

  std::vector<std::string> numbers_;
  std::vector<Told> news_;
};

}  // namespace

std::string part_told_of(std::string_view line, std::span<const std::string> numbers) {
  line = without_lead(line);
  std::string hers;
  for (const Part& part : parts_of(line)) {
    const bool is_hers =
        part.tells &&
        std::any_of(part.numbers.begin(), part.numbers.end(), [&](const std::string& number) {
          return std::find(numbers.begin(), numbers.end(), number) != numbers.end();
        });
    if (!is_hers) continue;
    hers += (hers.empty() ? "" : "; ") + std::string(line.substr(part.from, part.to - part.from));
  }
  return hers.empty() ? std::string(line) : hers;
}

namespace {

/// The line without the parts that were told of these numbers and of no other.
std::string without_parts_of(std::string_view line, const std::set<std::string>& numbers) {
  std::string rest;
  for (const Part& part : parts_of(line)) {
    const bool is_theirs =
        !part.numbers.empty() &&
        std::all_of(part.numbers.begin(), part.numbers.end(),
                    [&](const std::string& number) { return numbers.count(number) > 0; });
    if (is_theirs) continue;
    rest += (rest.empty() ? "" : "; ") + std::string(line.substr(part.from, part.to - part.from));
  }
  return rest;
}

}  // namespace

Result<std::vector<NewsSeen>> news_of_cow(Store& store, HerdId herd, std::span<const CowId> group) {
  NewsOfCow told;
  std::set<EntryId> seen;
  for (const CowId cow : group) {
    const Outcome read =
        store.read_entries({herd.value, cow.value, kinds_shown()}, [&](const Entry& entry) {
          if (seen.insert(entry.envelope.id).second) told.read(entry);
          return true;
        });
    if (!read) return read.faults();
  }
  std::vector<NewsSeen> news = std::move(told).all();
  std::stable_sort(news.begin(), news.end(),
                   [](const NewsSeen& a, const NewsSeen& b) { return b.day < a.day; });
  return news;
}

Result<std::vector<std::string>> news_of_visit(Store& store, const Visit& visit) {
  std::vector<std::pair<CowId, std::string>> told;
  std::map<std::string, std::set<std::string>> taken_back;  // of which numbers, by the line
  std::vector<std::string> kinds = kinds_of_news();
  kinds.emplace_back(QuestionSettled::kind);
  const Outcome read =
      store.read_entries({visit.herd.value, std::nullopt, kinds}, [&](const Entry& entry) {
        const auto news = body_as<TaskClosedBody>(entry);
        if (news && news->visit == visit.visit && !news->asked) {
          told.emplace_back(news->cow, news->words);
        }
        const auto left = body_as<CowLeft>(entry);
        if (left && left->day == visit.day) told.emplace_back(left->cow, left->words);
        const auto settled = body_as<QuestionSettled>(entry);
        if (settled && settled->cow && settled->about) {
          std::erase(told, std::pair(*settled->cow, *settled->about));
          taken_back[*settled->about].insert(plain_number(settled->number));
        }
        return true;
      });
  if (!read) return read.faults();
  std::vector<std::string> lines;
  for (const auto& [cow, words] : told) {
    std::string line(without_lead(words));
    const auto taken = taken_back.find(words);
    if (taken != taken_back.end()) line = without_parts_of(line, taken->second);
    const bool is_new = std::find(lines.begin(), lines.end(), line) == lines.end();
    if (!line.empty() && is_new) lines.push_back(std::move(line));
  }
  return lines;
}

}  // namespace evenclaw
