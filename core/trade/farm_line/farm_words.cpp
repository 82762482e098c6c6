#include "core/trade/farm_line/farm_words.hpp"

#include <algorithm>
#include <vector>

#include "core/trade/farm_change.hpp"

namespace evenclaw {

namespace {

using F = FarmWord;

template <class E>
constexpr FarmPhrase means(std::string_view words, FarmWord word, E value) {
  return {words, word, static_cast<int>(value)};
}

// One row a line.
// clang-format off
constexpr FarmPhrase english_farm_table[] = {
    {"no", F::no},
    {"correction", F::no},
    {"scrap", F::scrap},
    {"scale", F::scale},
    {"to", F::to},
    {"at", F::at},
    {"not scored", F::not_scored},
    {"present", F::present},
    {"watched", F::watched},
    {"group", F::group},
    {"lame", F::lame},
    // a farm walk
    {"place", F::place},
    {"by", F::by},
    {"of", F::of},
    {"looked at", F::looked_at},
    {"measured", F::looked_at},
    {"seen", F::looked_at},
    {"not looked at", F::not_looked_at},
    {"not measured", F::not_looked_at},
    {"not seen", F::not_looked_at},
    {"every", F::every},
    {"a day", F::a_day},
    {"per day", F::a_day},
    {"daily", F::a_day},
    {"a week", F::a_week},
    {"per week", F::a_week},
    {"weekly", F::a_week},
    {"through", F::through},
    {"cows through", F::through},
    {"passes", F::through},
    means("cows", F::topic, FarmTopic::cow),
    means("cow", F::topic, FarmTopic::cow),
    means("cubicles", F::topic, FarmTopic::cubicle),
    means("cubicle", F::topic, FarmTopic::cubicle),
    means("stalls", F::topic, FarmTopic::cubicle),
    means("stall", F::topic, FarmTopic::cubicle),
    means("passages", F::topic, FarmTopic::passage),
    means("passage", F::topic, FarmTopic::passage),
    means("alleys", F::topic, FarmTopic::passage),
    means("alley", F::topic, FarmTopic::passage),
    means("turn", F::topic, FarmTopic::turn),
    means("turns", F::topic, FarmTopic::turn),
    means("corner", F::topic, FarmTopic::turn),
    means("corners", F::topic, FarmTopic::turn),
    means("floor", F::topic, FarmTopic::floor),
    means("floors", F::topic, FarmTopic::floor),
    means("grip", F::topic, FarmTopic::grip),
    means("scraped", F::topic, FarmTopic::scraping),
    means("scraping", F::topic, FarmTopic::scraping),
    means("scraper", F::topic, FarmTopic::scraping),
    means("standing", F::topic, FarmTopic::standing),
    means("standing time", F::topic, FarmTopic::standing),
    means("away for milking", F::topic, FarmTopic::standing),
    means("footbath", F::topic, FarmTopic::footbath),
    means("foot bath", F::topic, FarmTopic::footbath),
    means("bath", F::topic, FarmTopic::footbath),
    means("wide", F::dimension, FarmDimension::width),
    means("width", F::dimension, FarmDimension::width),
    means("long", F::dimension, FarmDimension::length),
    means("length", F::dimension, FarmDimension::length),
    means("deep", F::dimension, FarmDimension::depth),
    means("depth", F::dimension, FarmDimension::depth),
    means("high", F::dimension, FarmDimension::height),
    means("height", F::dimension, FarmDimension::height),
    means("tall", F::dimension, FarmDimension::height),
    means("m", F::unit, FarmUnit::m),
    means("metres", F::unit, FarmUnit::m),
    means("metre", F::unit, FarmUnit::m),
    means("meters", F::unit, FarmUnit::m),
    means("meter", F::unit, FarmUnit::m),
    means("cm", F::unit, FarmUnit::cm),
    means("centimetres", F::unit, FarmUnit::cm),
    means("centimeters", F::unit, FarmUnit::cm),
    means("mm", F::unit, FarmUnit::mm),
    means("millimetres", F::unit, FarmUnit::mm),
    means("millimeters", F::unit, FarmUnit::mm),
    means("kg", F::unit, FarmUnit::kg),
    means("kilos", F::unit, FarmUnit::kg),
    means("percent", F::unit, FarmUnit::percent),
    means("per cent", F::unit, FarmUnit::percent),
    means("%", F::unit, FarmUnit::percent),
    means("h", F::unit, FarmUnit::hours),
    means("hours", F::unit, FarmUnit::hours),
    means("hour", F::unit, FarmUnit::hours),
    means("min", F::unit, FarmUnit::minutes),
    means("minutes", F::unit, FarmUnit::minutes),
    means("minute", F::unit, FarmUnit::minutes),
    means("times", F::unit, FarmUnit::times),
    {"once", F::times_said, 1},
    {"twice", F::times_said, 2},
    {"slippery", F::grip_is},
    {"slips", F::grip_is},
    {"smooth", F::grip_is},
    {"rough", F::grip_is},
    {"copper sulphate", F::product},
    {"copper", F::product},
    {"zinc sulphate", F::product},
    {"zinc", F::product},
    {"formalin", F::product},
    // a change
    means("bedding", F::driver, ChangeDriver::bedding),
    means("tracks", F::driver, ChangeDriver::tracks),
    means("track", F::driver, ChangeDriver::tracks),
    means("stocking", F::driver, ChangeDriver::stocking),
    means("feeding", F::driver, ChangeDriver::feeding),
    means("feed", F::driver, ChangeDriver::feeding),
    means("ration", F::driver, ChangeDriver::feeding),
    means("grazing", F::driver, ChangeDriver::grazing),
    means("pasture", F::driver, ChangeDriver::grazing),
    means("trimming", F::driver, ChangeDriver::trimming),
    means("heifers", F::driver, ChangeDriver::heifers),
    means("other", F::driver, ChangeDriver::other),
    means("after a bad visit", F::why, ChangeWhy::bad_visit),
    means("bad visit", F::why, ChangeWhy::bad_visit),
    means("planned", F::why, ChangeWhy::planned),
    means("vet advised", F::why, ChangeWhy::vet_advised),
    means("the vet advised", F::why, ChangeWhy::vet_advised),
    means("rebuilt anyway", F::why, ChangeWhy::rebuilt_anyway),
    means("was rebuilt anyway", F::why, ChangeWhy::rebuilt_anyway),
    {"because", F::because},
    {"decided", F::decided},
    {"finished", F::finished},
    {"done", F::finished},
    {"still going on", F::going_on},
    {"going on", F::going_on},
    {"not finished", F::going_on},
    {"whole herd", F::whole_herd},
    {"all cows", F::whole_herd},
    {"only", F::only},
    {"today", F::today},
    {"yesterday", F::yesterday},
};

constexpr FarmPhrase german_farm_table[] = {
    {"nein", F::no},
    {"streichen", F::scrap},
    {"skala", F::scale},
    {"bis", F::to},
    {"bei", F::at},
    {"mit", F::at},
    {"nicht bewertet", F::not_scored},
    {"anwesend", F::present},
    {"beobachtet", F::watched},
    {"gruppe", F::group},
    {"lahm", F::lame},
    // a farm walk
    {"bereich", F::place},
    {"von", F::of},
    {"angesehen", F::looked_at},
    {"gemessen", F::looked_at},
    {"nicht angesehen", F::not_looked_at},
    {"nicht gemessen", F::not_looked_at},
    {"alle", F::every},
    {"am tag", F::a_day},
    {"pro tag", F::a_day},
    {"taeglich", F::a_day},
    {"pro woche", F::a_week},
    {"in der woche", F::a_week},
    {"durch", F::through},
    {"kuehe durch", F::through},
    means("kuehe", F::topic, FarmTopic::cow),
    means("kuh", F::topic, FarmTopic::cow),
    means("liegeboxen", F::topic, FarmTopic::cubicle),
    means("liegebox", F::topic, FarmTopic::cubicle),
    means("laufgang", F::topic, FarmTopic::passage),
    means("laufgaenge", F::topic, FarmTopic::passage),
    means("boden", F::topic, FarmTopic::floor),
    means("klauenbad", F::topic, FarmTopic::footbath),
    means("breit", F::dimension, FarmDimension::width),
    means("breite", F::dimension, FarmDimension::width),
    means("lang", F::dimension, FarmDimension::length),
    means("laenge", F::dimension, FarmDimension::length),
    means("tief", F::dimension, FarmDimension::depth),
    means("tiefe", F::dimension, FarmDimension::depth),
    means("hoch", F::dimension, FarmDimension::height),
    means("hoehe", F::dimension, FarmDimension::height),
    means("zentimeter", F::unit, FarmUnit::cm),
    means("millimeter", F::unit, FarmUnit::mm),
    means("kilo", F::unit, FarmUnit::kg),
    means("prozent", F::unit, FarmUnit::percent),
    means("std", F::unit, FarmUnit::hours),
    means("stunden", F::unit, FarmUnit::hours),
    means("stunde", F::unit, FarmUnit::hours),
    means("minuten", F::unit, FarmUnit::minutes),
    means("mal", F::unit, FarmUnit::times),
    {"einmal", F::times_said, 1},
    {"zweimal", F::times_said, 2},
    {"rutschig", F::grip_is},
    {"glatt", F::grip_is},
    {"rau", F::grip_is},
    {"kupfersulfat", F::product},
    {"kupfer", F::product},
    {"zinksulfat", F::product},
    {"zink", F::product},
    // a change
    means("einstreu", F::driver, ChangeDriver::bedding),
    means("fuetterung", F::driver, ChangeDriver::feeding),
    means("futter", F::driver, ChangeDriver::feeding),
    means("weide", F::driver, ChangeDriver::grazing),
    means("klauenpflege", F::driver, ChangeDriver::trimming),
    means("faersen", F::driver, ChangeDriver::heifers),
    means("geplant", F::why, ChangeWhy::planned),
    {"weil", F::because},
    {"beschlossen", F::decided},
    {"fertig", F::finished},
    {"nicht fertig", F::going_on},
    {"ganze herde", F::whole_herd},
    {"nur", F::only},
    {"heute", F::today},
    {"gestern", F::yesterday},
};

// clang-format on

bool has_words(std::span<const FarmPhrase> phrases, std::string_view words) {
  return std::any_of(phrases.begin(), phrases.end(),
                     [&](const FarmPhrase& phrase) { return phrase.words == words; });
}

std::vector<FarmPhrase> with_english(std::span<const FarmPhrase> own) {
  std::vector<FarmPhrase> phrases(own.begin(), own.end());
  for (const FarmPhrase& phrase : english_farm_phrases()) {
    if (!has_words(own, phrase.words)) phrases.push_back(phrase);
  }
  return phrases;
}

}  // namespace

std::span<const FarmPhrase> english_farm_phrases() {
  return english_farm_table;
}

std::span<const FarmPhrase> german_farm_phrases() {
  return german_farm_table;
}

std::span<const FarmPhrase> farm_phrases(const Language& language) {
  static const std::vector<FarmPhrase> with_german = with_english(german_farm_phrases());
  return &language == &german() ? std::span<const FarmPhrase>(with_german) : english_farm_phrases();
}

std::string_view say(FarmWord word, const Language& language, int value) {
  for (const FarmPhrase& phrase : farm_phrases(language)) {
    if (phrase.word == word && phrase.value == value) return phrase.words;
  }
  return {};
}

}  // namespace evenclaw
