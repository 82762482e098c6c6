#include "tools/demo_figures.hpp"

#include <algorithm>
#include <array>
#include <cstdint>
#include <cstdio>
#include <functional>
#include <map>
#include <set>
#include <utility>

#include "core/paper/chart.hpp"
#include "core/paper/svg.hpp"
#include "demo/dermatitis.hpp"
#include "demo/story.hpp"

namespace evenclaw {

namespace {

using demo::CalledFinding;
using demo::CalledFoot;
using demo::CalledTurn;

struct Share {
  double count = 0;
  double of = 0;

  [[nodiscard]] double percent() const { return of > 0 ? 100.0 * count / of : 0.0; }
};

constexpr std::size_t lactation_classes = 4;

/// Counted on cows that came in their turn: no rechecks, none that was brought lame.
struct Counts {
  std::map<Lesion, std::array<Share, lactation_classes + 1>> of_cows;  // 0 is all lactations
  Share with_any;
  Share hind;
  Share outside;  // of lesions of the horn on hind claws
  std::map<Foot, Share> by_foot;
  std::map<Place, Share> by_place;
  std::map<DdStage, Share> true_stages;
  Share first_early;  // dermatitis in the first lactation before day 100, and from then on
  Share first_late;
};

constexpr std::array<Lesion, 10> shown_lesions = {Lesion::dd,  Lesion::su, Lesion::sh, Lesion::wl,
                                                  Lesion::hhe, Lesion::id, Lesion::ih, Lesion::ds,
                                                  Lesion::tu,  Lesion::ip};

/// A white line lesion and its abscess are one.
Lesion counted_as(Lesion lesion) {
  return lesion == Lesion::wla ? Lesion::wl : lesion;
}

bool is_routine(const CalledTurn& turn) {
  return turn.reason != Reason::recheck && turn.reason != Reason::lame;
}

void add_finding(Counts& counts, Foot foot, const CalledFinding& found) {
  ++counts.hind.of;
  counts.hind.count += demo::is_hind(foot) ? 1 : 0;
  for (const Foot each : all_feet) {
    ++counts.by_foot[each].of;
    counts.by_foot[each].count += each == foot ? 1 : 0;
  }
  if (found.place != Place::not_called) ++counts.by_place[found.place].count;
  const bool has_claw = found.claw == Claw::outside || found.claw == Claw::inside;
  if (!demo::is_hind(foot) || !has_claw) return;
  ++counts.outside.of;
  counts.outside.count += found.claw == Claw::outside ? 1 : 0;
}

void add_turn(Counts& counts, const CalledTurn& turn) {
  std::set<Lesion> on_her;
  for (const CalledFoot& foot : turn.feet) {
    for (const CalledFinding& found : foot.findings) {
      on_her.insert(counted_as(found.lesion));
      add_finding(counts, foot.foot, found);
    }
  }
  const auto lactation =
      static_cast<std::size_t>(std::min(turn.lactation, static_cast<int>(lactation_classes)));
  for (const Lesion lesion : shown_lesions) {
    for (const std::size_t in : {std::size_t{0}, lactation}) {
      Share& share = counts.of_cows[lesion][in];
      ++share.of;
      share.count += on_her.count(lesion) > 0 ? 1 : 0;
    }
  }
  ++counts.with_any.of;
  counts.with_any.count += on_her.empty() ? 0 : 1;
  if (turn.lactation > 1) return;
  constexpr int day_100_in_weeks = 14;
  Share& share = turn.weeks_in_milk < day_100_in_weeks ? counts.first_early : counts.first_late;
  ++share.of;
  share.count += on_her.count(Lesion::dd) > 0 ? 1 : 0;
}

void add_visit(Counts& counts, const demo::CalledVisit& visit) {
  for (const CalledTurn& turn : visit.turns) {
    if (is_routine(turn)) add_turn(counts, turn);
  }
}

void add_stages(Counts& counts, const demo::Herd& herd) {
  for (const demo::Cow& cow : herd.cows()) {
    for (const Foot foot : {Foot::lh, Foot::rh}) {
      const DdStage stage = cow.feet[demo::index_of(foot)].dd;
      if (demo::is_infected(stage)) ++counts.true_stages[stage].count;
    }
  }
}

Counts counted(std::uint64_t seed) {
  demo::BusinessWanted wanted;
  wanted.seed = seed;
  wanted.last_day = *day_of(CivilDate{2026, 11, 27});
  Counts counts;
  for (int farm = 0; farm < wanted.farms; ++farm) {
    const demo::HerdStory story = demo::tell_story(
        wanted, farm, [&](const demo::Herd& herd, int) { add_stages(counts, herd); });
    for (const demo::CalledVisit& visit : story.visits) add_visit(counts, visit);
  }
  double feet = 0;
  for (const auto& [stage, share] : counts.true_stages) feet += share.count;
  for (auto& [stage, share] : counts.true_stages) share.of = feet;
  double places = 0;
  for (const auto& [place, share] : counts.by_place) places += share.count;
  for (auto& [place, share] : counts.by_place) share.of = places;
  return counts;
}

std::string rounded(double number, int decimals = 1) {
  std::array<char, 32> text{};
  std::snprintf(text.data(), text.size(), "%.*f", decimals, number);
  return text.data();
}

struct Published {
  std::string what;
  std::function<double(const Counts&)> found;
  double least;
  double most;
  std::string source;
};

double of_cows(const Counts& counts, Lesion lesion) {
  return counts.of_cows.at(lesion)[0].percent();
}

Published cows_with(std::string what, Lesion lesion, double least, double most,
                    std::string source) {
  return {std::move(what), [lesion](const Counts& counts) { return of_cows(counts, lesion); },
          least, most, std::move(source)};
}

std::vector<Published> published_of_cows() {
  const std::string minor =
      "each of the other lesions 1 to 2 % of cows at trims of whole herds (Solano 2016)";
  return {
      cows_with("DD", Lesion::dd, 9.3, 22.7,
                "cows at trims: 9.3 % tie stall, 22.7 % free stall, Ontario (Cramer 2008); 15 % "
                "Alberta, whole herds (Solano 2016); 21.2 % Netherlands (Holzhauer 2006, from "
                "memory)"),
      cows_with("sole ulcer", Lesion::su, 4.7, 9.2,
                "4.7 % tie stall, 9.2 % free stall, any ulcer (Cramer 2008); 6 % (Solano 2016)"),
      cows_with("bruise", Lesion::sh, 7.7, 30.0,
                "7.7 % tie stall, 11.0 % free stall (Cramer 2008); 30 % Sweden, looked for (Manske "
                "2002, from memory)"),
      cows_with("white line, any form", Lesion::wl, 4.0, 8.8,
                "4 % (Solano 2016); fissures 8.8 % (Manske 2002, from memory)"),
      cows_with("heel horn erosion", Lesion::hhe, 1.0, 41.0,
                minor + "; 41 % (Manske 2002, from memory)"),
      cows_with("interdigital dermatitis", Lesion::id, 1.0, 27.0,
                minor + "; dermatitis of any kind 27 % (Manske 2002, from memory)"),
      cows_with("growth", Lesion::ih, 1.0, 2.0, minor),
      cows_with("double sole", Lesion::ds, 1.0, 2.0, minor),
      cows_with("toe ulcer", Lesion::tu, 1.0, 2.0, minor),
      cows_with("foul", Lesion::ip, 0.2, 5.0, "0.2 to 5 % of cows (Finnish survey 2017)"),
      {"any of them", [](const Counts& counts) { return counts.with_any.percent(); }, 25.7, 46.4,
       "25.7 % tie stall, 46.4 % free stall (Cramer 2008)"}};
}

std::vector<Published> published_of_lesions() {
  return {
      {"on hind feet", [](const Counts& counts) { return counts.hind.percent(); }, 87.0, 93.0,
       "92 % of lesions, dairy cows (Murray 1996, from memory); 28.2 to 4.1 % of cows, 87 %, beef "
       "(Fjeldaas 2007)"},
      {"outside claw, of lesions on hind claws",
       [](const Counts& counts) { return counts.outside.percent(); }, 77.0, 82.3,
       "65 to 14 % (Murray 1996, from memory); 77 % of thin-soled cows (van Amstel 2004)"},
      {"M4, of feet that have DD, as they are",
       [](const Counts& counts) { return counts.true_stages.at(DdStage::m4).percent(); }, 62.0,
       70.5,
       "36 of 58 cows in the chute (Solano 2017); about 70 % of infectious time (Biemans 2018)"}};
}

struct JudgedRows {
  std::string rows;
  bool all_within = true;
};

JudgedRows judged(const std::vector<Published>& figures, const Counts& counts) {
  JudgedRows table;
  for (const Published& figure : figures) {
    const double found = figure.found(counts);
    const bool is_within = found >= figure.least && found <= figure.most;
    table.all_within = table.all_within && is_within;
    table.rows += "| " + figure.what + " | " + rounded(found) + " | " + rounded(figure.least) +
                  " to " + rounded(figure.most) + " | " + (is_within ? "yes" : "NO") + " | " +
                  figure.source + " |\n";
  }
  return table;
}

std::string lactation_table(const Counts& counts) {
  std::string text =
      "| lesion | first | second | third | later | published |\n|---|---|---|---|---|---|\n";
  const auto add = [&](const std::string& name, Lesion lesion, const std::string& published) {
    text += "| " + name;
    for (std::size_t in = 1; in <= lactation_classes; ++in) {
      text += " | " + rounded(counts.of_cows.at(lesion)[in].percent());
    }
    text += " | " + published + " |\n";
  };
  add("DD", Lesion::dd, "falls with lactation (Solano 2016): direction only");
  add("sole ulcer", Lesion::su,
      "rises (Solano 2016); one foot 20.0 and 23.5 % where it was looked "
      "for (Enevoldsen 1991)");
  add("white line, any form", Lesion::wl, "rises (Solano 2016): direction only");
  add("bruise", Lesion::sh, "none found");
  return text;
}

template <class Key, class Name>
std::string share_table(const std::string& head, const std::map<Key, Share>& shares, Name name) {
  std::string text = "| " + head + " | % |\n|---|---|\n";
  for (const auto& [key, share] : shares) {
    text += "| " + std::string(name(key)) + " | " + rounded(share.percent()) + " |\n";
  }
  return text;
}

/// A bar for each figure with the published range beside it.
Chart range_chart(const std::string& title, const std::vector<Published>& figures,
                  const Counts& counts) {
  Chart chart;
  chart.title = title;
  chart.method = "Dots: the invented business. Lines: from the least to the most published figure.";
  chart.y = {"share", "%", true};
  ChartPoints points;
  double at = 1;
  for (const Published& figure : figures) {
    chart.x.words.push_back({at, figure.what.substr(0, figure.what.find(','))});
    points.points.push_back({at, figure.found(counts), Range{figure.least, figure.most}});
    at += 1;
  }
  chart.marks = {std::move(points)};
  chart.width = 180;
  return chart;
}

Chart lactation_chart(const Counts& counts) {
  Chart chart;
  chart.title = "Dermatitis falls with lactation, lesions of the horn rise";
  chart.method = "Cows with it among those that came in their turn.";
  chart.x.name = "lactation";
  chart.x.words = {{1, "1"}, {2, "2"}, {3, "3"}, {4, "4 and later"}};
  chart.y = {"cows with it", "%", true};
  const auto add = [&](const std::string& name, Lesion lesion, Dash dash) {
    ChartLine line;
    for (std::size_t in = 1; in <= lactation_classes; ++in) {
      line.values.push_back({static_cast<double>(in), counts.of_cows.at(lesion)[in].percent()});
    }
    line.label = name;
    line.dash = dash;
    chart.marks.emplace_back(std::move(line));
  };
  add("DD", Lesion::dd, Dash::solid);
  add("sole ulcer", Lesion::su, Dash::dashed);
  add("white line", Lesion::wl, Dash::dotted);
  return chart;
}

template <class Key, class Name>
Chart bar_chart(const std::string& title, const std::map<Key, Share>& shares, Name name) {
  Chart chart;
  chart.title = title;
  chart.y = {"share", "%", true};
  ChartBars bars;
  double at = 1;
  for (const auto& [key, share] : shares) {
    chart.x.words.push_back({at, std::string(name(key))});
    bars.bars.push_back({at, share.percent()});
    at += 1;
  }
  chart.marks = {std::move(bars)};
  chart.width = 180;
  return chart;
}

/// By itself in a file, on white paper.
DemoFigures::Plot plot(const std::string& name, const Chart& chart) {
  const Figure figure = to_figure(chart);
  std::string svg = to_svg(figure.drawing, figure.label);
  const std::string_view begins = "<svg ";
  if (svg.rfind(begins, 0) == 0 && svg.find("xmlns=") == std::string::npos) {
    svg.insert(begins.size(), "xmlns=\"http://www.w3.org/2000/svg\" ");
  }
  for (std::size_t at = 0; (at = svg.find("><", at)) != std::string::npos;)
    svg.insert(at + 1, "\n");
  return {name, svg + '\n'};
}

std::string picture(const std::string& name, const std::string& says) {
  return "\n![" + says + "](demo-figures-" + name + ".svg)\n";
}

constexpr const char* judged_heads =
    "| figure | invented, % | published, % | within | definition, population, source |\n"
    "|---|---|---|---|---|\n";

std::string page_head(const Counts& counts) {
  return "# The invented business beside published figures\n\n"
         "Made by tools/demo_figures.cpp through tools/generated_docs.sh; do not edit. 12 herds "
         "over 3 years, seed 1\n([demo-model.md](demo-model.md)). Counted as a trimmer's records "
         "would be: what was called on " +
         rounded(counts.with_any.of, 0) +
         " cows that\ncame in their turn, without rechecks and cows brought lame, for those are "
         "seen because they are worse.\nWhere sources disagree the range goes from the least to "
         "the most. \"From memory\": not seen again.\n";
}

std::string page_of_lesions(const JudgedRows& cows, const JudgedRows& lesions,
                            const Counts& counts) {
  const auto word = [](auto value) { return word_of(value); };
  return "\n## Cows with a lesion\n\n" + std::string(judged_heads) + cows.rows +
         picture("lesions", "Cows with each lesion and the published ranges") +
         "\n## Where, and in which stage\n\n" + judged_heads + lesions.rows +
         "\nOf the other stages each source gives one figure without a range (Solano 2017: M1 2, "
         "M2 6, M4.1 14 of\n58 cows), so they are shown and not judged. Herds here are trimmed and "
         "treated.\n\n" +
         share_table("stage of feet that have it, as they are", counts.true_stages, word) +
         picture("stages", "Stages of digital dermatitis");
}

std::string page_of_shares(const Counts& counts) {
  const auto word = [](auto value) { return word_of(value); };
  return "\n## By lactation\n\nCows with it, % of those of that lactation.\n\n" +
         lactation_table(counts) + picture("lactation", "Lesions by lactation") +
         "\nFirst lactation, DD before day 100: " + rounded(counts.first_early.percent()) +
         " %, from then on: " + rounded(counts.first_late.percent()) +
         " %. Published: higher odds from day 100 (Solano 2016).\n\n## By foot\n\n" +
         share_table("foot, of lesions called", counts.by_foot, word) +
         picture("feet", "Lesions by foot") +
         "\n## By place\n\nNo published split by zone was found; each lesion lies in its typical "
         "place, white line lesions in\nthree.\n\n" +
         share_table("place, of those called with one", counts.by_place, word) +
         picture("places", "Lesions by place");
}

std::vector<DemoFigures::Plot> plots_of(const Counts& counts) {
  const auto word = [](auto value) { return word_of(value); };
  return {plot("lesions", range_chart("Cows with each lesion lie in the published range",
                                      published_of_cows(), counts)),
          plot("stages", bar_chart("Most feet with digital dermatitis are chronic",
                                   counts.true_stages, word)),
          plot("lactation", lactation_chart(counts)),
          plot("feet", bar_chart("Nine of ten lesions lie on hind feet", counts.by_foot, word)),
          plot("places", bar_chart("Lesions lie in their typical places", counts.by_place, word))};
}

}  // namespace

DemoFigures demo_figures() {
  const Counts counts = counted(1);
  const JudgedRows cows = judged(published_of_cows(), counts);
  const JudgedRows lesions = judged(published_of_lesions(), counts);
  DemoFigures figures;
  figures.all_within = cows.all_within && lesions.all_within;
  figures.page =
      page_head(counts) + page_of_lesions(cows, lesions, counts) + page_of_shares(counts);
  figures.plots = plots_of(counts);
  return figures;
}

}  // namespace evenclaw
