// A herd into which lists are imported, and what is on record afterwards, for tests.
#pragma once

#include <doctest/doctest.h>

#include <string>
#include <string_view>
#include <vector>

#include "core/api/herd_import.hpp"
#include "core/api/identities.hpp"
#include "core/api/show.hpp"
#include "core/trade/life.hpp"
#include "tests/core/api/workplace.hpp"

namespace evenclaw::test {

struct ListTaken {
  Workplace place;

  [[nodiscard]] HerdId herd() { return place.herd().herd; }

  static ImportWish wish(std::string_view from = "2026-10-27") {
    ImportWish wished;
    wished.from = day(from);
    return wished;
  }

  /// What is typed behind --lesions and --words.
  static ImportWish wish_with(std::string_view lesions, std::string_view words = "") {
    ImportWish wished = wish();
    wished.findings = with_words_said(lesions_said(lesions).value(), words_said(words).value());
    return wished;
  }

  Result<HerdImported> take(std::string_view text, const ImportWish& wished = wish()) {
    return import_herd(place.ports(), herd(), text, wished);
  }

  /// "2 entered, 1 told more, 0 unchanged, 3 events", and "2: message" of each line left out.
  std::string told(std::string_view text, const ImportWish& wished = wish()) {
    const auto taken = take(text, wished);
    if (!taken) return taken.faults().front().message;
    std::string words = std::to_string(taken->entered) + " entered, " +
                        std::to_string(taken->told_more) + " told more, " +
                        std::to_string(taken->unchanged) + " unchanged, " +
                        std::to_string(taken->events) + " events";
    if (!taken->lesions.empty()) words += ", " + std::to_string(taken->findings) + " findings";
    if (taken->taken_back > 0) words += ", " + std::to_string(taken->taken_back) + " taken back";
    if (taken->passed_over > 0) words += ", " + std::to_string(taken->passed_over) + " passed over";
    for (const LeftOut& left_out : taken->left_out) {
      CHECK_FALSE(left_out.remedy.empty());
      words += "; " + std::to_string(left_out.line) + ": " + left_out.message;
    }
    return words;
  }

  std::string told_surely(std::string_view text) {
    ImportWish sure = wish();
    sure.is_sure = true;
    return told(text, sure);
  }

  /// "2025-03-01 left" of each event of the herd, by cow and day.
  std::vector<std::string> lives() {
    std::vector<std::string> all;
    for (const CowLifeRow& row : select_as<CowLifeRow>(place.store, herd()).value()) {
      all.push_back(to_text(row.day) + ' ' + std::string(word_of(row.event)));
    }
    return all;
  }

  /// "2024-05-01 SU LH" of each finding lists told of the herd, by cow and day.
  std::vector<std::string> past() {
    std::vector<std::string> all;
    for (const PastFindingRow& row : select_as<PastFindingRow>(place.store, herd()).value()) {
      all.push_back(to_text(row.day) + ' ' + std::string(word_of(row.lesion)) +
                    (row.foot ? ' ' + std::string(word_of(*row.foot)) : std::string()));
    }
    return all;
  }

  std::vector<CowNumberRow> carriers_of(std::string_view number) {
    return select_as<CowNumberRow>(place.store, herd(),
                                   {{"number", Compare::equal, Cell(std::string(number))}})
        .value();
  }

  CowShown shown(std::string_view said) {
    return show_cow(place.store, herd(), said, day("2026-10-27")).value();
  }

  [[nodiscard]] std::size_t entries() {
    std::size_t count = 0;
    (void)place.store.read_entries({}, [&](const Entry&) {
      ++count;
      return true;
    });
    return count;
  }
};

}  // namespace evenclaw::test
