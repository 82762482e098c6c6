// What the rules about medicines need to know beside the turn: the herd's list, what the law of the
// country reserves for the vet, and what was asked at this visit already.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/enum_words.hpp"
#include "core/trade/action.hpp"
#include "core/trade/medicine.hpp"

namespace evenclaw {

/// Acts that belong to the vet where nobody has said otherwise.
enum class ReservedAct { injection, anaesthesia, surgery };

template <>
struct EnumWords<ReservedAct> {
  static constexpr EnumWord<ReservedAct> table[] = {{ReservedAct::injection, "injection"},
                                                    {ReservedAct::anaesthesia, "anaesthesia"},
                                                    {ReservedAct::surgery, "surgery"}};
};

/// Where the trimmer works and what the business has settled for itself.
struct LocalLaw {
  std::string country;                   // ISO 3166 alpha-2, or GB-NIR; "" when nobody said
  std::vector<ReservedAct> trimmer_may;  // what the business says is allowed there

  friend bool operator==(const LocalLaw&, const LocalLaw&) = default;
};

/// Why an act is the vet's: a row per country that we know something of, one for all others.
struct ReservedActRule {
  std::string_view country;  // "" for every country without a row of its own
  ReservedAct act;
  std::string_view source;  // with its certainty
};

std::span<const ReservedActRule> all_reserved_acts();

/// What the law keeps for the vet of all that is called; nothing of any other act.
std::optional<ReservedAct> reserved_act(ActionKind kind);
/// The row that holds in that country.
const ReservedActRule& rule_for(ReservedAct act, std::string_view country);

/// The least withdrawal of a product used off label. Only a sanity check: the vet sets the period.
struct WithdrawalFloor {
  std::string_view country;  // "" for every country without a row of its own
  bool from_label;           // where the label has a period: 3/2 of the longest
  std::int32_t milk_days;    // where it has none
  std::int32_t meat_days;
  std::int32_t days_of_zero;  // where the label says zero
  std::string_view source;    // with its certainty
};

std::span<const WithdrawalFloor> all_floors();
const WithdrawalFloor& floor_in(std::string_view country);

/// The floors of one product, used off label in that country.
struct LeastWithdrawal {
  std::int32_t milk_hours;
  std::int32_t meat_days;
};

LeastWithdrawal least_withdrawal(const Product& product, std::string_view country);

/// "milk 2 days, at least 7 days", also of meat; "" when the product is labelled for this use, it
/// is not known whether it is, or nothing stated lies below the floor.
std::string below_floor(const Product& product, std::string_view country);

struct MedicineRules {
  std::vector<ListedProduct> list;  // the products valid on the day of the visit
  LocalLaw law;
  std::vector<std::string> asked;  // product names said of other cows at this visit

  [[nodiscard]] bool was_asked(std::string_view product) const;
};

}  // namespace evenclaw
