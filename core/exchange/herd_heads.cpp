#include "core/exchange/herd_heads.hpp"

#include <algorithm>
#include <string>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

struct Head {
  HerdColumn holds;
  std::string_view words;  // folded, as plain_head() gives them
};

constexpr Head english_heads[] = {{HerdColumn::number, "number"},
                                  {HerdColumn::number, "no"},
                                  {HerdColumn::number, "herd number"},
                                  {HerdColumn::number, "cow"},
                                  {HerdColumn::number, "cow no"},
                                  {HerdColumn::number, "cow number"},
                                  {HerdColumn::number, "animal"},
                                  {HerdColumn::number, "animal number"},
                                  {HerdColumn::number, "line number"},
                                  {HerdColumn::number, "freeze brand"},
                                  {HerdColumn::number, "management tag"},
                                  {HerdColumn::tag, "tag"},
                                  {HerdColumn::tag, "ear tag"},
                                  {HerdColumn::tag, "eartag"},
                                  {HerdColumn::tag, "national tag"},
                                  {HerdColumn::tag, "official tag"},
                                  {HerdColumn::tag, "official number"},
                                  {HerdColumn::tag, "life number"},
                                  {HerdColumn::electronic, "electronic"},
                                  {HerdColumn::electronic, "electronic number"},
                                  {HerdColumn::electronic, "eid"},
                                  {HerdColumn::electronic, "rfid"},
                                  {HerdColumn::electronic, "transponder"},
                                  {HerdColumn::name, "name"},
                                  {HerdColumn::name, "cow name"},
                                  {HerdColumn::breed, "breed"},
                                  {HerdColumn::born, "born"},
                                  {HerdColumn::born, "birth"},
                                  {HerdColumn::born, "date of birth"},
                                  {HerdColumn::born, "birth date"},
                                  {HerdColumn::born, "dob"},
                                  {HerdColumn::heifer_or_cow, "heifer or cow"},
                                  {HerdColumn::weight, "weight"},
                                  {HerdColumn::weight, "weight kg"},
                                  {HerdColumn::calved, "calved"},
                                  {HerdColumn::calved, "last calved"},
                                  {HerdColumn::calved, "calving"},
                                  {HerdColumn::calved, "calving date"},
                                  {HerdColumn::calved, "last calving"},
                                  {HerdColumn::calved, "last calving date"},
                                  {HerdColumn::calved, "fresh date"},
                                  {HerdColumn::lactation, "lactation"},
                                  {HerdColumn::lactation, "lactation number"},
                                  {HerdColumn::lactation, "lact"},
                                  {HerdColumn::lactation, "parity"},
                                  {HerdColumn::dry_off, "dry off"},
                                  {HerdColumn::dry_off, "dry off date"},
                                  {HerdColumn::dry_off, "drying off"},
                                  {HerdColumn::dry_off, "dried off"},
                                  {HerdColumn::dry_off, "dry date"},
                                  {HerdColumn::due_to_calve, "due to calve"},
                                  {HerdColumn::due_to_calve, "due"},
                                  {HerdColumn::due_to_calve, "due date"},
                                  {HerdColumn::due_to_calve, "expected calving"},
                                  {HerdColumn::arrived, "arrived"},
                                  {HerdColumn::arrived, "arrival"},
                                  {HerdColumn::arrived, "arrival date"},
                                  {HerdColumn::arrived, "bought"},
                                  {HerdColumn::arrived, "entry date"},
                                  {HerdColumn::left, "left"},
                                  {HerdColumn::left, "left on"},
                                  {HerdColumn::left, "leaving date"},
                                  {HerdColumn::left, "exit date"},
                                  {HerdColumn::left, "departure"},
                                  {HerdColumn::left, "sold"},
                                  {HerdColumn::left, "culled"},
                                  {HerdColumn::left, "cull date"},
                                  {HerdColumn::reason, "reason"},
                                  {HerdColumn::reason, "why"},
                                  {HerdColumn::reason, "leaving reason"},
                                  {HerdColumn::reason, "cull reason"},
                                  {HerdColumn::reason, "exit reason"},
                                  {HerdColumn::event, "event"},
                                  {HerdColumn::event, "what happened"},
                                  {HerdColumn::day, "day"},
                                  {HerdColumn::day, "date"},
                                  {HerdColumn::day, "event date"},
                                  {HerdColumn::day, "trim date"},
                                  {HerdColumn::day, "trimming date"},
                                  {HerdColumn::foot, "leg"},
                                  {HerdColumn::foot, "limb"},
                                  {HerdColumn::claw, "digit"},
                                  {HerdColumn::place, "location"},
                                  {HerdColumn::place, "site"},
                                  {HerdColumn::zone, "claw zone"},
                                  {HerdColumn::zone, "zone number"},
                                  {HerdColumn::lesion, "lesion code"},
                                  {HerdColumn::lesion, "claw lesion"},
                                  {HerdColumn::lesion, "finding"},
                                  {HerdColumn::lesion, "diagnosis"},
                                  {HerdColumn::lesion, "disorder"},
                                  {HerdColumn::lesion, "claw disorder"},
                                  {HerdColumn::degree, "severity"},
                                  {HerdColumn::degree, "grade"},
                                  {HerdColumn::stage, "dd stage"},
                                  {HerdColumn::stage, "m stage"},
                                  {HerdColumn::treatment, "treatments"},
                                  {HerdColumn::remark, "remarks"},
                                  {HerdColumn::remark, "note"},
                                  {HerdColumn::remark, "notes"},
                                  {HerdColumn::remark, "comment"},
                                  {HerdColumn::remark, "comments"}};

constexpr Head german_heads[] = {{HerdColumn::number, "nummer"},
                                 {HerdColumn::number, "nr"},
                                 {HerdColumn::number, "kuh"},
                                 {HerdColumn::number, "kuhnr"},
                                 {HerdColumn::number, "kuhnummer"},
                                 {HerdColumn::number, "stallnr"},
                                 {HerdColumn::number, "stallnummer"},
                                 {HerdColumn::number, "tiernr"},
                                 {HerdColumn::number, "tier nr"},
                                 {HerdColumn::number, "stall nr"},
                                 {HerdColumn::number, "tiernummer"},
                                 {HerdColumn::number, "halsbandnummer"},
                                 {HerdColumn::tag, "ohrmarke"},
                                 {HerdColumn::tag, "ohrmarkennummer"},
                                 {HerdColumn::tag, "lebensnummer"},
                                 {HerdColumn::tag, "lebensohrmarke"},
                                 {HerdColumn::electronic, "elektronische nummer"},
                                 {HerdColumn::name, "tiername"},
                                 {HerdColumn::breed, "rasse"},
                                 {HerdColumn::born, "geboren"},
                                 {HerdColumn::born, "geburtsdatum"},
                                 {HerdColumn::born, "geburt"},
                                 {HerdColumn::heifer_or_cow, "färse oder kuh"},
                                 {HerdColumn::weight, "gewicht"},
                                 {HerdColumn::weight, "gewicht kg"},
                                 {HerdColumn::calved, "gekalbt"},
                                 {HerdColumn::calved, "kalbung"},
                                 {HerdColumn::calved, "letzte kalbung"},
                                 {HerdColumn::calved, "kalbedatum"},
                                 {HerdColumn::calved, "abkalbung"},
                                 {HerdColumn::lactation, "laktation"},
                                 {HerdColumn::lactation, "laktationsnummer"},
                                 {HerdColumn::lactation, "lakt"},
                                 {HerdColumn::dry_off, "trockenstellen"},
                                 {HerdColumn::dry_off, "trockengestellt"},
                                 {HerdColumn::dry_off, "trockenstelldatum"},
                                 {HerdColumn::due_to_calve, "kalbetermin"},
                                 {HerdColumn::due_to_calve, "nächste kalbung"},
                                 {HerdColumn::arrived, "zugang"},
                                 {HerdColumn::arrived, "zugangsdatum"},
                                 {HerdColumn::left, "abgang"},
                                 {HerdColumn::left, "abgangsdatum"},
                                 {HerdColumn::reason, "abgangsgrund"},
                                 {HerdColumn::reason, "grund"},
                                 {HerdColumn::event, "ereignis"},
                                 {HerdColumn::event, "meldung"},
                                 {HerdColumn::day, "datum"},
                                 {HerdColumn::day, "tag der meldung"},
                                 {HerdColumn::day, "schnittdatum"},
                                 {HerdColumn::foot, "fuß"},
                                 {HerdColumn::foot, "bein"},
                                 {HerdColumn::foot, "gliedmaße"},
                                 {HerdColumn::claw, "klaue"},
                                 {HerdColumn::place, "stelle"},
                                 {HerdColumn::place, "lokalisation"},
                                 {HerdColumn::zone, "klauenzone"},
                                 {HerdColumn::lesion, "befund"},
                                 {HerdColumn::lesion, "klauenbefund"},
                                 {HerdColumn::lesion, "diagnose"},
                                 {HerdColumn::lesion, "läsion"},
                                 {HerdColumn::lesion, "klauenerkrankung"},
                                 {HerdColumn::degree, "grad"},
                                 {HerdColumn::degree, "schweregrad"},
                                 {HerdColumn::stage, "stadium"},
                                 {HerdColumn::stage, "m stadium"},
                                 {HerdColumn::treatment, "behandlung"},
                                 {HerdColumn::treatment, "maßnahme"},
                                 {HerdColumn::remark, "bemerkung"},
                                 {HerdColumn::remark, "bemerkungen"},
                                 {HerdColumn::remark, "anmerkung"},
                                 {HerdColumn::remark, "notiz"}};

constexpr Head dutch_heads[] = {{HerdColumn::number, "koenummer"},
                                {HerdColumn::number, "diernummer"},
                                {HerdColumn::number, "werknummer"},
                                {HerdColumn::tag, "oormerk"},
                                {HerdColumn::tag, "levensnummer"},
                                {HerdColumn::name, "naam"},
                                {HerdColumn::breed, "ras"},
                                {HerdColumn::born, "geboortedatum"},
                                {HerdColumn::calved, "afkalfdatum"},
                                {HerdColumn::calved, "gekalfd"},
                                {HerdColumn::lactation, "lactatie"},
                                {HerdColumn::lactation, "lactatienummer"},
                                {HerdColumn::dry_off, "droogzetdatum"},
                                {HerdColumn::due_to_calve, "verwachte afkalfdatum"},
                                {HerdColumn::arrived, "aanvoerdatum"},
                                {HerdColumn::left, "afvoerdatum"},
                                {HerdColumn::reason, "afvoerreden"},
                                {HerdColumn::foot, "poot"},
                                {HerdColumn::claw, "klauw"},
                                {HerdColumn::place, "plaats"},
                                {HerdColumn::lesion, "aandoening"},
                                {HerdColumn::lesion, "klauwaandoening"},
                                {HerdColumn::degree, "ernst"},
                                {HerdColumn::treatment, "behandeling"},
                                {HerdColumn::remark, "opmerking"},
                                {HerdColumn::remark, "opmerkingen"}};

constexpr Head french_heads[] = {{HerdColumn::number, "numéro"},
                                 {HerdColumn::number, "numéro de travail"},
                                 {HerdColumn::number, "vache"},
                                 {HerdColumn::tag, "numéro national"},
                                 {HerdColumn::tag, "boucle"},
                                 {HerdColumn::name, "nom"},
                                 {HerdColumn::breed, "race"},
                                 {HerdColumn::born, "date de naissance"},
                                 {HerdColumn::calved, "vêlage"},
                                 {HerdColumn::calved, "date de vêlage"},
                                 {HerdColumn::calved, "dernier vêlage"},
                                 {HerdColumn::lactation, "rang de lactation"},
                                 {HerdColumn::lactation, "rang"},
                                 {HerdColumn::dry_off, "tarissement"},
                                 {HerdColumn::dry_off, "date de tarissement"},
                                 {HerdColumn::arrived, "entrée"},
                                 {HerdColumn::left, "sortie"},
                                 {HerdColumn::left, "date de sortie"},
                                 {HerdColumn::reason, "cause de sortie"},
                                 {HerdColumn::reason, "motif"},
                                 {HerdColumn::day, "date de parage"},
                                 {HerdColumn::foot, "pied"},
                                 {HerdColumn::foot, "membre"},
                                 {HerdColumn::claw, "onglon"},
                                 {HerdColumn::place, "localisation"},
                                 {HerdColumn::lesion, "lésion"},
                                 {HerdColumn::lesion, "affection"},
                                 {HerdColumn::degree, "gravité"},
                                 {HerdColumn::stage, "stade"},
                                 {HerdColumn::treatment, "traitement"},
                                 {HerdColumn::remark, "remarque"},
                                 {HerdColumn::remark, "remarques"}};

template <class F>
void for_each_head(F&& each) {
  for (const Head& head : english_heads) each(head);
  for (const Head& head : german_heads) each(head);
  for (const Head& head : dutch_heads) each(head);
  for (const Head& head : french_heads) each(head);
}

/// "Dry-off_date", "dry off date" and "Cow No." are written alike.
std::string plain_head(std::string_view head) {
  std::string plain;
  for (const char c : fold_case(trimmed(head))) {
    const bool is_between = c == '_' || c == '-' || c == '.' || c == '(' || c == ')' || c == ' ';
    if (!is_between) {
      plain += c;
    } else if (!plain.empty() && plain.back() != ' ') {
      plain += ' ';
    }
  }
  while (!plain.empty() && plain.back() == ' ') plain.pop_back();
  return plain;
}

}  // namespace

std::optional<HerdColumn> held_under(std::string_view head) {
  const std::string plain = plain_head(head);
  // A word of a program's own columns, such as those of our export, is understood as it is.
  for (const auto& row : EnumWords<HerdColumn>::table) {
    if (row.value != HerdColumn::ignore && plain == plain_head(row.word)) return row.value;
  }
  std::optional<HerdColumn> found;
  for_each_head([&](const Head& known) {
    if (known.words == plain) found = known.holds;
  });
  return found;
}

std::vector<KnownHeads> known_heads() {
  std::vector<KnownHeads> all;
  for (const auto& row : EnumWords<HerdColumn>::table) {
    if (row.value == HerdColumn::ignore) continue;
    KnownHeads known{row.value, {}};
    for_each_head([&](const Head& head) {
      if (head.holds == row.value) known.heads.push_back(head.words);
    });
    all.push_back(std::move(known));
  }
  return all;
}

}  // namespace evenclaw
