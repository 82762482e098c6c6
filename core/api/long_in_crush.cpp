#include "core/api/long_in_crush.hpp"

#include <string>

#include "core/api/settings.hpp"
#include "core/base/text.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view setting_name = "long-in-crush";
constexpr std::string_view never = "off";
constexpr std::size_t most_digits = 3;

}  // namespace

Result<std::optional<std::int32_t>> long_in_crush(Store& store) {
  const auto settled = setting_of(store, setting_name);
  if (!settled) return settled.faults();
  if (!*settled) return std::optional(usual_long_minutes);
  if (**settled == never) return std::optional<std::int32_t>();
  // Of a value that only a newer version knows the usual one stands.
  return std::optional(whole_number(**settled, most_digits).value_or(usual_long_minutes));
}

Result<EntryId> set_long_in_crush(const Ports& ports, std::string_view minutes) {
  const std::string said = fold_case(trimmed(minutes));
  const auto number = whole_number(said, most_digits);
  const bool is_number = number && *number > 0;
  if (!is_number && said != never) {
    return Fault{.slug = "usage",
                 .message = "\"" + std::string(trimmed(minutes)) + "\" is no number of minutes",
                 .token = std::string(trimmed(minutes)),
                 .remedy = "Say whole minutes from 1 to 999, or off."};
  }
  return settle_for_business(ports, setting_name, is_number ? std::to_string(*number) : said);
}

}  // namespace evenclaw
