#include "core/trade/medicine.hpp"

#include <algorithm>

#include "core/base/edit_distance.hpp"
#include "core/base/text.hpp"

namespace evenclaw {

namespace {

constexpr std::int32_t hours_a_day = 24;
constexpr std::int32_t hours_a_milking = 12;
constexpr std::int32_t longest_days = 730;
constexpr std::size_t most_digits = 5;
constexpr std::size_t long_name = 6;

struct UnitWord {
  std::string_view word;
  WithdrawalUnit unit;
};

constexpr UnitWord unit_words[] = {
    {"h", WithdrawalUnit::hours},           {"hour", WithdrawalUnit::hours},
    {"hours", WithdrawalUnit::hours},       {"milking", WithdrawalUnit::milkings},
    {"milkings", WithdrawalUnit::milkings}, {"d", WithdrawalUnit::days},
    {"day", WithdrawalUnit::days},          {"days", WithdrawalUnit::days}};

std::string_view word_for(WithdrawalUnit unit) {
  switch (unit) {
    case WithdrawalUnit::hours:
      return "hour";
    case WithdrawalUnit::milkings:
      return "milking";
    case WithdrawalUnit::days:
      return "day";
  }
  return {};
}

/// As names are compared: small letters, with a space for a hyphen.
std::string plain_name(std::string_view name) {
  std::string plain = fold_case(trimmed(name));
  std::replace(plain.begin(), plain.end(), '-', ' ');
  return plain;
}

std::vector<std::string> names_of(const Product& product) {
  std::vector<std::string> names;
  names.reserve(product.also_called.size() + 1);
  names.push_back(product.name);
  names.insert(names.end(), product.also_called.begin(), product.also_called.end());
  return names;
}

bool is_called(const Product& product, const std::string& plain) {
  const std::vector<std::string> names = names_of(product);
  return std::any_of(names.begin(), names.end(),
                     [&](const std::string& name) { return plain_name(name) == plain; });
}

}  // namespace

std::optional<WithdrawalStated> withdrawal_from_text(std::string_view text) {
  const std::string said = fold_case(trimmed(text));
  const std::size_t end = std::min(said.find_first_not_of("0123456789"), said.size());
  const std::optional<int> amount = whole_number(said.substr(0, end), most_digits);
  if (!amount) return std::nullopt;
  const std::string_view unit = trimmed(std::string_view(said).substr(end));
  if (unit.empty() && *amount == 0) return WithdrawalStated{};
  const auto known = std::find_if(std::begin(unit_words), std::end(unit_words),
                                  [&](const UnitWord& row) { return row.word == unit; });
  if (known == std::end(unit_words)) return std::nullopt;
  const WithdrawalStated stated{*amount, known->unit};
  return hours_of(stated) > longest_days * hours_a_day ? std::nullopt : std::optional(stated);
}

std::string spoken(const WithdrawalStated& stated) {
  if (stated.amount == 0) return "none";
  return std::to_string(stated.amount) + ' ' + std::string(word_for(stated.unit)) +
         (stated.amount == 1 ? "" : "s");
}

std::int32_t hours_of(const WithdrawalStated& stated) {
  switch (stated.unit) {
    case WithdrawalUnit::hours:
      return stated.amount;
    case WithdrawalUnit::milkings:
      return stated.amount * hours_a_milking;
    case WithdrawalUnit::days:
      return stated.amount * hours_a_day;
  }
  return 0;
}

std::optional<MilkEnd> milk_end(const WithdrawalStated& stated, Day given) {
  if (stated.amount <= 0) return std::nullopt;
  const std::int32_t milkings = (hours_of(stated) + hours_a_milking - 1) / hours_a_milking;
  return MilkEnd{given + (milkings + 1) / 2,
                 milkings % 2 == 1 ? Milking::morning : Milking::evening};
}

Medicine given_on(const ListedProduct& listed, Day day) {
  Medicine medicine;
  medicine.product = listed.id;
  medicine.as_listed = listed.product;
  if (listed.product.milk) {
    if (const std::optional<MilkEnd> end = milk_end(*listed.product.milk, day)) {
      medicine.milk_till = end->day;
      medicine.milk_milking = end->milking;
    }
  }
  const std::int32_t meat = listed.product.meat_days.value_or(0);
  if (meat > 0) medicine.meat_till = day + meat;
  return medicine;
}

const ListedProduct* find_product(std::span<const ListedProduct> list, std::string_view said) {
  const std::string plain = plain_name(said);
  if (plain.empty()) return nullptr;
  const auto known = std::find_if(list.begin(), list.end(), [&](const ListedProduct& listed) {
    return is_called(listed.product, plain);
  });
  return known == list.end() ? nullptr : &*known;
}

std::string near_product(std::span<const ListedProduct> list, std::string_view said) {
  const std::string plain = plain_name(said);
  if (plain.empty() || find_product(list, said) != nullptr) return {};
  std::size_t least = character_count(plain) >= long_name ? 3 : 2;  // less than that is near
  std::string nearest;
  for (const ListedProduct& listed : list) {
    for (const std::string& name : names_of(listed.product)) {
      const std::size_t distance = edit_distance(plain, plain_name(name));
      if (distance >= least) continue;
      least = distance;
      nearest = name;
    }
  }
  return nearest;
}

ProductId product_id(HerdId herd, std::string_view name) {
  return {uuid_derived("product\n" + to_text(herd) + '\n' + plain_name(name))};
}

}  // namespace evenclaw
