#include "core/trade/national_tag.hpp"

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "core/base/ascii.hpp"
#include "core/trade/country.hpp"
#include "core/trade/identity.hpp"
#include "core/trade/typed_code.hpp"

namespace evenclaw {

namespace {

constexpr std::size_t most_digits = 12;
constexpr std::size_t digits_of_herd_mark = 6;
constexpr std::string_view united_kingdom = "UK";
// From memory: tags of Northern Ireland began with a 9 and have a check digit of another rule.
constexpr char northern_ireland = '9';

class TagReader {
 public:
  explicit TagReader(std::string_view typed) : typed_(typed), code_(typed_code(typed, ".-")) {}

  Result<NationalTag> tag() {
    const std::string_view all = code_.characters;
    const auto end_of_letters = std::find_if_not(all.begin(), all.end(), is_capital);
    const auto letters = static_cast<std::size_t>(end_of_letters - all.begin());
    const Country* country = country_named(all.substr(0, letters));
    if (country == nullptr) return no_country(all.substr(0, letters));
    std::string_view digits = all.substr(letters);
    const auto wrong = std::find_if_not(digits.begin(), digits.end(), is_digit);
    if (wrong != digits.end()) {
      return unreadable(std::string("\"") + *wrong + "\" is no digit.",
                        letters + static_cast<std::size_t>(wrong - digits.begin()),
                        "Write the letters of the country and the digits behind them.");
    }
    // "USA0003123456789" has a thirteenth digit, a zero.
    while (digits.size() > most_digits && digits.front() == '0') digits.remove_prefix(1);
    if (digits.empty() || digits.size() > most_digits) {
      return unreadable("It has " + std::to_string(digits.size()) +
                            " digits; a tag has one to twelve behind the letters.",
                        letters, "Read the tag again.");
    }
    NationalTag tag{std::string(country->on_tags), std::string(digits)};
    if (tag.country == united_kingdom) return british(std::move(tag), letters);
    return tag;
  }

 private:
  static const Country* country_named(std::string_view letters) {
    if (letters == "USA") return country_of_letters("US");
    return letters.size() == 2 ? country_of_letters(letters) : nullptr;
  }

  [[nodiscard]] Fault no_country(std::string_view letters) const {
    if (letters.empty()) {
      return unreadable("The letters of the country are missing.", 0,
                        "Write them as printed: UK 123450 600001.");
    }
    return unreadable(std::string(letters) + " is no country.", 0,
                      "Write the two letters that are printed before the digits.");
  }

  [[nodiscard]] Result<NationalTag> british(NationalTag tag, std::size_t letters) const {
    if (tag.digits.size() != most_digits) {
      return unreadable("It has " + std::to_string(tag.digits.size()) +
                            " digits; a British tag has twelve: six of the herd, a check digit, "
                            "five of the animal.",
                        letters, "Read the tag again, zeros and all.");
    }
    if (tag.digits.front() == northern_ireland) return tag;
    const std::string_view digits = tag.digits;
    const char right = uk_check_digit(digits.substr(0, digits_of_herd_mark),
                                      digits.substr(digits_of_herd_mark + 1));
    if (digits[digits_of_herd_mark] != right) {
      return unreadable(std::string("Its check digit is ") + digits[digits_of_herd_mark] +
                            ", and of these digits it would be " + right + ".",
                        letters + digits_of_herd_mark,
                        "One of the digits is wrong; read the tag again.");
    }
    return tag;
  }

  [[nodiscard]] Fault unreadable(std::string message, std::size_t at, std::string remedy) const {
    return {.slug = "tag-unreadable",
            .message = std::move(message),
            .token = std::string(typed_),
            .column = code_.column(at),
            .remedy = std::move(remedy)};
  }

  std::string_view typed_;
  TypedCode code_;
};

}  // namespace

bool operator==(const NationalTag& a, const NationalTag& b) {
  return a.country == b.country && plain_number(a.digits) == plain_number(b.digits);
}

Result<NationalTag> national_tag(std::string_view text) {
  return TagReader(text).tag();
}

std::string to_text(const NationalTag& tag) {
  return tag.country + tag.digits;
}

std::string spoken(const NationalTag& tag) {
  const bool is_british = tag.country == united_kingdom && tag.digits.size() == most_digits;
  if (!is_british) return tag.country + " " + tag.digits;
  return tag.country + " " + tag.digits.substr(0, digits_of_herd_mark) + " " +
         tag.digits.substr(digits_of_herd_mark);
}

char uk_check_digit(std::string_view herd_mark, std::string_view animal) {
  std::int64_t value = 0;
  for (const std::string_view part : {herd_mark, animal}) {
    for (const char digit : part) value = value * 10 + (digit - '0');
  }
  return static_cast<char>('1' + value % 7);
}

}  // namespace evenclaw
