#include "core/trade/country.hpp"

#include <algorithm>

namespace evenclaw {

namespace {

constexpr CodeSource iso = CodeSource::iso_3166;
constexpr CodeSource eu = CodeSource::eu_2021_520;
constexpr CodeSource uk = CodeSource::uk_tags;

// Sorted by number.
constexpr Country countries[] = {
    {4, "AF", "AF", iso},   {8, "AL", "AL", iso},   {10, "AQ", "AQ", iso},  {12, "DZ", "DZ", iso},
    {16, "AS", "AS", iso},  {20, "AD", "AD", iso},  {24, "AO", "AO", iso},  {28, "AG", "AG", iso},
    {31, "AZ", "AZ", iso},  {32, "AR", "AR", iso},  {36, "AU", "AU", iso},  {40, "AT", "AT", iso},
    {44, "BS", "BS", iso},  {48, "BH", "BH", iso},  {50, "BD", "BD", iso},  {51, "AM", "AM", iso},
    {52, "BB", "BB", iso},  {56, "BE", "BE", iso},  {60, "BM", "BM", iso},  {64, "BT", "BT", iso},
    {68, "BO", "BO", iso},  {70, "BA", "BA", iso},  {72, "BW", "BW", iso},  {74, "BV", "BV", iso},
    {76, "BR", "BR", iso},  {84, "BZ", "BZ", iso},  {86, "IO", "IO", iso},  {90, "SB", "SB", iso},
    {92, "VG", "VG", iso},  {96, "BN", "BN", iso},  {100, "BG", "BG", iso}, {104, "MM", "MM", iso},
    {108, "BI", "BI", iso}, {112, "BY", "BY", iso}, {116, "KH", "KH", iso}, {120, "CM", "CM", iso},
    {124, "CA", "CA", iso}, {132, "CV", "CV", iso}, {136, "KY", "KY", iso}, {140, "CF", "CF", iso},
    {144, "LK", "LK", iso}, {148, "TD", "TD", iso}, {152, "CL", "CL", iso}, {156, "CN", "CN", iso},
    {158, "TW", "TW", iso}, {162, "CX", "CX", iso}, {166, "CC", "CC", iso}, {170, "CO", "CO", iso},
    {174, "KM", "KM", iso}, {175, "YT", "YT", iso}, {178, "CG", "CG", iso}, {180, "CD", "CD", iso},
    {184, "CK", "CK", iso}, {188, "CR", "CR", iso}, {191, "HR", "HR", iso}, {192, "CU", "CU", iso},
    {196, "CY", "CY", iso}, {203, "CZ", "CZ", iso}, {204, "BJ", "BJ", iso}, {208, "DK", "DK", iso},
    {212, "DM", "DM", iso}, {214, "DO", "DO", iso}, {218, "EC", "EC", iso}, {222, "SV", "SV", iso},
    {226, "GQ", "GQ", iso}, {231, "ET", "ET", iso}, {232, "ER", "ER", iso}, {233, "EE", "EE", iso},
    {234, "FO", "FO", iso}, {238, "FK", "FK", iso}, {239, "GS", "GS", iso}, {242, "FJ", "FJ", iso},
    {246, "FI", "FI", iso}, {248, "AX", "AX", iso}, {250, "FR", "FR", iso}, {254, "GF", "GF", iso},
    {258, "PF", "PF", iso}, {260, "TF", "TF", iso}, {262, "DJ", "DJ", iso}, {266, "GA", "GA", iso},
    {268, "GE", "GE", iso}, {270, "GM", "GM", iso}, {275, "PS", "PS", iso}, {276, "DE", "DE", iso},
    {288, "GH", "GH", iso}, {292, "GI", "GI", iso}, {296, "KI", "KI", iso}, {300, "GR", "EL", eu},
    {304, "GL", "GL", iso}, {308, "GD", "GD", iso}, {312, "GP", "GP", iso}, {316, "GU", "GU", iso},
    {320, "GT", "GT", iso}, {324, "GN", "GN", iso}, {328, "GY", "GY", iso}, {332, "HT", "HT", iso},
    {334, "HM", "HM", iso}, {336, "VA", "VA", iso}, {340, "HN", "HN", iso}, {344, "HK", "HK", iso},
    {348, "HU", "HU", iso}, {352, "IS", "IS", iso}, {356, "IN", "IN", iso}, {360, "ID", "ID", iso},
    {364, "IR", "IR", iso}, {368, "IQ", "IQ", iso}, {372, "IE", "IE", iso}, {376, "IL", "IL", iso},
    {380, "IT", "IT", iso}, {384, "CI", "CI", iso}, {388, "JM", "JM", iso}, {392, "JP", "JP", iso},
    {398, "KZ", "KZ", iso}, {400, "JO", "JO", iso}, {404, "KE", "KE", iso}, {408, "KP", "KP", iso},
    {410, "KR", "KR", iso}, {414, "KW", "KW", iso}, {417, "KG", "KG", iso}, {418, "LA", "LA", iso},
    {422, "LB", "LB", iso}, {426, "LS", "LS", iso}, {428, "LV", "LV", iso}, {430, "LR", "LR", iso},
    {434, "LY", "LY", iso}, {438, "LI", "LI", iso}, {440, "LT", "LT", iso}, {442, "LU", "LU", iso},
    {446, "MO", "MO", iso}, {450, "MG", "MG", iso}, {454, "MW", "MW", iso}, {458, "MY", "MY", iso},
    {462, "MV", "MV", iso}, {466, "ML", "ML", iso}, {470, "MT", "MT", iso}, {474, "MQ", "MQ", iso},
    {478, "MR", "MR", iso}, {480, "MU", "MU", iso}, {484, "MX", "MX", iso}, {492, "MC", "MC", iso},
    {496, "MN", "MN", iso}, {498, "MD", "MD", iso}, {499, "ME", "ME", iso}, {500, "MS", "MS", iso},
    {504, "MA", "MA", iso}, {508, "MZ", "MZ", iso}, {512, "OM", "OM", iso}, {516, "NA", "NA", iso},
    {520, "NR", "NR", iso}, {524, "NP", "NP", iso}, {528, "NL", "NL", iso}, {531, "CW", "CW", iso},
    {533, "AW", "AW", iso}, {534, "SX", "SX", iso}, {535, "BQ", "BQ", iso}, {540, "NC", "NC", iso},
    {548, "VU", "VU", iso}, {554, "NZ", "NZ", iso}, {558, "NI", "NI", iso}, {562, "NE", "NE", iso},
    {566, "NG", "NG", iso}, {570, "NU", "NU", iso}, {574, "NF", "NF", iso}, {578, "NO", "NO", iso},
    {580, "MP", "MP", iso}, {581, "UM", "UM", iso}, {583, "FM", "FM", iso}, {584, "MH", "MH", iso},
    {585, "PW", "PW", iso}, {586, "PK", "PK", iso}, {591, "PA", "PA", iso}, {598, "PG", "PG", iso},
    {600, "PY", "PY", iso}, {604, "PE", "PE", iso}, {608, "PH", "PH", iso}, {612, "PN", "PN", iso},
    {616, "PL", "PL", iso}, {620, "PT", "PT", iso}, {624, "GW", "GW", iso}, {626, "TL", "TL", iso},
    {630, "PR", "PR", iso}, {634, "QA", "QA", iso}, {638, "RE", "RE", iso}, {642, "RO", "RO", iso},
    {643, "RU", "RU", iso}, {646, "RW", "RW", iso}, {652, "BL", "BL", iso}, {654, "SH", "SH", iso},
    {659, "KN", "KN", iso}, {660, "AI", "AI", iso}, {662, "LC", "LC", iso}, {663, "MF", "MF", iso},
    {666, "PM", "PM", iso}, {670, "VC", "VC", iso}, {674, "SM", "SM", iso}, {678, "ST", "ST", iso},
    {682, "SA", "SA", iso}, {686, "SN", "SN", iso}, {688, "RS", "RS", iso}, {690, "SC", "SC", iso},
    {694, "SL", "SL", iso}, {702, "SG", "SG", iso}, {703, "SK", "SK", iso}, {704, "VN", "VN", iso},
    {705, "SI", "SI", iso}, {706, "SO", "SO", iso}, {710, "ZA", "ZA", iso}, {716, "ZW", "ZW", iso},
    {724, "ES", "ES", iso}, {728, "SS", "SS", iso}, {729, "SD", "SD", iso}, {732, "EH", "EH", iso},
    {740, "SR", "SR", iso}, {744, "SJ", "SJ", iso}, {748, "SZ", "SZ", iso}, {752, "SE", "SE", iso},
    {756, "CH", "CH", iso}, {760, "SY", "SY", iso}, {762, "TJ", "TJ", iso}, {764, "TH", "TH", iso},
    {768, "TG", "TG", iso}, {772, "TK", "TK", iso}, {776, "TO", "TO", iso}, {780, "TT", "TT", iso},
    {784, "AE", "AE", iso}, {788, "TN", "TN", iso}, {792, "TR", "TR", iso}, {795, "TM", "TM", iso},
    {796, "TC", "TC", iso}, {798, "TV", "TV", iso}, {800, "UG", "UG", iso}, {804, "UA", "UA", iso},
    {807, "MK", "MK", iso}, {818, "EG", "EG", iso}, {826, "GB", "UK", uk},  {831, "GG", "GG", iso},
    {832, "JE", "JE", iso}, {833, "IM", "IM", iso}, {834, "TZ", "TZ", iso}, {840, "US", "US", iso},
    {850, "VI", "VI", iso}, {854, "BF", "BF", iso}, {858, "UY", "UY", iso}, {860, "UZ", "UZ", iso},
    {862, "VE", "VE", iso}, {876, "WF", "WF", iso}, {882, "WS", "WS", iso}, {887, "YE", "YE", iso},
    {894, "ZM", "ZM", iso}, {899, "XI", "XI", eu},
};

}  // namespace

std::span<const Country> all_countries() {
  return countries;
}

const Country* country_of_number(std::int32_t number) {
  const auto* const at = std::find_if(std::begin(countries), std::end(countries),
                                      [&](const Country& row) { return row.number == number; });
  return at == std::end(countries) ? nullptr : at;
}

const Country* country_of_letters(std::string_view letters) {
  const auto* const at = std::find_if(
      std::begin(countries), std::end(countries),
      [&](const Country& row) { return row.on_tags == letters || row.iso_letters == letters; });
  return at == std::end(countries) ? nullptr : at;
}

std::string_view told_of(CodeSource source) {
  switch (source) {
    case CodeSource::iso_3166:
      return "ISO 3166-1, as the Debian package iso-codes 4.15.0 lists it";
    case CodeSource::eu_2021_520:
      return "Regulation (EU) 2021/520, article 12; the number of Greece from ISO 3166-1";
    case CodeSource::uk_tags:
      return "the letters as published examples of tags show them; the number from ISO 3166-1";
  }
  return {};
}

}  // namespace evenclaw
