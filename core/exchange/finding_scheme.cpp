#include "core/exchange/finding_scheme.hpp"

#include <algorithm>
#include <cstddef>
#include <tuple>
#include <utility>

#include "core/base/text.hpp"
#include "core/exchange/finding_terms.hpp"

namespace evenclaw {

namespace {

Fault says_nothing(const std::string& message, std::string_view part, std::string remedy) {
  return {
      .slug = "usage", .message = message, .token = std::string(part), .remedy = std::move(remedy)};
}

std::vector<std::string_view> parts_said(std::string_view typed) {
  const char between = typed.find(';') == std::string_view::npos ? ',' : ';';
  std::vector<std::string_view> parts;
  while (!typed.empty()) {
    const std::size_t end = std::min(typed.find(between), typed.size());
    const std::string_view part = trimmed(typed.substr(0, end));
    if (!part.empty()) parts.push_back(part);
    typed.remove_prefix(std::min(end + 1, typed.size()));
  }
  return parts;
}

struct WordAndMeaning {
  std::string_view word;
  std::string_view means;
};

/// The last sign of equality parts them: none of our words holds one.
std::optional<WordAndMeaning> word_and_meaning(std::string_view part) {
  const std::size_t equals = part.rfind('=');
  if (equals == std::string_view::npos) return std::nullopt;
  const WordAndMeaning said{trimmed(part.substr(0, equals)), trimmed(part.substr(equals + 1))};
  if (said.word.empty() || said.means.empty()) return std::nullopt;
  return said;
}

/// The lesion as it is kept, or that the word is passed over; "" when it is neither.
std::string lesion_meant(std::string_view means) {
  if (fold_case(means) == word_passed_over) return std::string(word_passed_over);
  const auto lesion = lesion_said(means);
  return lesion ? std::string(word_of(*lesion)) : std::string();
}

bool is_understood(HerdColumn column, std::string_view means) {
  const std::string folded = fold_case(means);
  if (folded == word_passed_over || folded == word_telling_nothing) return true;
  if (column == HerdColumn::foot || column == HerdColumn::claw) return foot_said(means).has_value();
  if (column == HerdColumn::place) return place_said(means).has_value();
  if (column == HerdColumn::degree) return degree_said(means).has_value();
  return stage_said(means).has_value();
}

std::optional<HerdColumn> column_with_words(std::string_view name) {
  const auto column = enum_of<HerdColumn>(fold_case(trimmed(name)));
  constexpr HerdColumn with_words[] = {HerdColumn::foot, HerdColumn::claw, HerdColumn::place,
                                       HerdColumn::degree, HerdColumn::stage};
  if (!column || std::count(std::begin(with_words), std::end(with_words), *column) == 0) {
    return std::nullopt;
  }
  return column;
}

void say(WordSaid said, std::vector<WordSaid>& words) {
  std::erase_if(words, [&](const WordSaid& known) {
    return known.column == said.column && known.word == said.word;
  });
  words.push_back(std::move(said));
}

}  // namespace

Result<FindingScheme> lesions_said(std::string_view typed) {
  FindingScheme scheme;
  Faults faults;
  for (const std::string_view part : parts_said(typed)) {
    const std::string folded = fold_case(part);
    if (folded == "icar" || folded == "not icar") {
      scheme.icar = folded == "icar";
      continue;
    }
    const auto said = word_and_meaning(part);
    const std::string means = said ? lesion_meant(said->means) : std::string();
    if (!said) {
      faults.push_back(says_nothing("\"" + std::string(part) + "\" does not say what a word means",
                                    part,
                                    "Write icar for the codes of the ICAR Claw Health Atlas, or "
                                    "word by word: A=DD, B=sole ulcer, C=ignore."));
    } else if (means.empty()) {
      faults.push_back(says_nothing(
          "\"" + std::string(said->means) + "\" is no lesion that is known", said->means,
          "Write a code such as DD, a name such as sole ulcer, or ignore; "
          "docs/format/vocabulary.md has them all."));
    } else {
      say({HerdColumn::lesion, std::string(said->word), means}, scheme.words);
    }
  }
  if (!faults.empty()) return faults;
  return scheme;
}

Result<FindingScheme> words_said(std::string_view typed) {
  FindingScheme scheme;
  Faults faults;
  for (const std::string_view part : parts_said(typed)) {
    const std::size_t colon = part.find(':');
    const auto column =
        colon == std::string_view::npos ? std::nullopt : column_with_words(part.substr(0, colon));
    const auto said = column ? word_and_meaning(part.substr(colon + 1)) : std::nullopt;
    if (!said) {
      faults.push_back(says_nothing("\"" + std::string(part) + "\" does not say what a word means",
                                    part,
                                    "Write foot:1=LH; the columns are foot, claw, place, degree "
                                    "and stage."));
    } else if (!is_understood(*column, said->means)) {
      faults.push_back(says_nothing("\"" + std::string(said->means) + "\" is no " +
                                        std::string(word_of(*column)) + " that is known",
                                    said->means,
                                    "Write LH, outside, heel or zone 6, slight, plain or bad, M2, "
                                    "\"not called\" or ignore."));
    } else {
      say({*column, std::string(said->word), std::string(said->means)}, scheme.words);
    }
  }
  if (!faults.empty()) return faults;
  return scheme;
}

FindingScheme with_words_said(FindingScheme known, const FindingScheme& now) {
  if (now.icar) known.icar = now.icar;
  for (const WordSaid& said : now.words) say(said, known.words);
  std::sort(known.words.begin(), known.words.end(), [](const WordSaid& a, const WordSaid& b) {
    return std::tie(a.column, a.word) < std::tie(b.column, b.word);
  });
  return known;
}

bool tells_lesions(const FindingScheme& scheme) {
  return scheme.icar.value_or(false) ||
         std::any_of(scheme.words.begin(), scheme.words.end(),
                     [](const WordSaid& said) { return said.column == HerdColumn::lesion; });
}

LesionScheme kind_of(const FindingScheme& scheme) {
  const bool is_word_by_word =
      std::any_of(scheme.words.begin(), scheme.words.end(),
                  [](const WordSaid& said) { return said.column == HerdColumn::lesion; });
  if (!scheme.icar.value_or(false)) return LesionScheme::word_by_word;
  return is_word_by_word ? LesionScheme::icar_and_word_by_word : LesionScheme::icar;
}

}  // namespace evenclaw
