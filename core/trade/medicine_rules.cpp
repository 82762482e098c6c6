#include "core/trade/medicine_rules.hpp"

#include <algorithm>

#include "core/base/text.hpp"

namespace evenclaw {

namespace {

// What the sources say; a country without a row is as strict, for nobody has said otherwise.
constexpr ReservedActRule reserved_acts[] = {
    {"GB", ReservedAct::surgery,
     "work on sensitive tissue or bone is restricted to medical treatment: RCVS on the Veterinary "
     "Surgeons Act 1966; what a trimmer may do in detail: from memory"},
    {"DE", ReservedAct::surgery,
     "claw surgery belongs to vets, lay treatment can breach animal "
     "welfare law: Kümper"},
    {"DE", ReservedAct::anaesthesia, "only vets can provide anaesthesia: Kümper"},
    {"", ReservedAct::injection,
     "strict where nobody has said otherwise; common practice, no "
     "source"},
    {"", ReservedAct::anaesthesia,
     "strict where nobody has said otherwise; common practice, no "
     "source"},
    {"", ReservedAct::surgery,
     "strict where nobody has said otherwise; common practice, no "
     "source"}};

constexpr WithdrawalFloor floors[] = {
    {"GB", true, 7, 28, 1,
     "Veterinary Medicines Regulations 2013, Schedule 4 paragraph 2 (milk), NOAH (meat, text seen "
     "in part); meat of a label that says zero: from memory"},
    {"GB-NIR", false, 7, 28, 7, "Veterinary Medicines Regulations 2006 and NOAH"},
    {"", true, 7, 28, 1,
     "Regulation (EU) 2019/6 Article 115, from memory, the text was not seen; used wherever "
     "nothing "
     "else is known"}};

constexpr std::int32_t hours_a_day = 24;

std::int32_t floor_hours(std::int32_t on_label, std::int32_t hours_of_zero) {
  return on_label == 0 ? hours_of_zero : (on_label * 3 + 1) / 2;
}

std::string days_words(std::int32_t hours) {
  const bool whole_days = hours % hours_a_day == 0;
  return spoken(whole_days ? WithdrawalStated{hours / hours_a_day, WithdrawalUnit::days}
                           : WithdrawalStated{hours, WithdrawalUnit::hours});
}

}  // namespace

std::optional<ReservedAct> reserved_act(ActionKind kind) {
  if (kind == ActionKind::injected) return ReservedAct::injection;
  if (kind == ActionKind::anaesthetised) return ReservedAct::anaesthesia;
  if (kind == ActionKind::amputated) return ReservedAct::surgery;
  return std::nullopt;
}

std::span<const ReservedActRule> all_reserved_acts() {
  return reserved_acts;
}

const ReservedActRule& rule_for(ReservedAct act, std::string_view country) {
  const ReservedActRule* anywhere = nullptr;
  for (const ReservedActRule& rule : reserved_acts) {
    if (rule.act != act) continue;
    if (!country.empty() && rule.country == country) return rule;
    if (rule.country.empty()) anywhere = &rule;
  }
  return *anywhere;
}

std::span<const WithdrawalFloor> all_floors() {
  return floors;
}

const WithdrawalFloor& floor_in(std::string_view country) {
  const auto row =
      std::find_if(std::begin(floors), std::end(floors),
                   [&](const WithdrawalFloor& each) { return each.country == country; });
  return row == std::end(floors) ? floors[std::size(floors) - 1] : *row;
}

LeastWithdrawal least_withdrawal(const Product& product, std::string_view country) {
  const WithdrawalFloor& floor = floor_in(country);
  LeastWithdrawal least{floor.milk_days * hours_a_day, floor.meat_days};
  if (!floor.from_label) return least;
  if (product.milk_on_label) {
    least.milk_hours =
        floor_hours(hours_of(*product.milk_on_label), floor.days_of_zero * hours_a_day);
  }
  if (product.meat_days_on_label) {
    least.meat_days = floor_hours(*product.meat_days_on_label, floor.days_of_zero);
  }
  return least;
}

std::string below_floor(const Product& product, std::string_view country) {
  if (product.labelled != Labelled::no) return {};
  const LeastWithdrawal least = least_withdrawal(product, country);
  std::string words;
  if (product.milk && hours_of(*product.milk) < least.milk_hours) {
    words = "milk " + spoken(*product.milk) + ", at least " + days_words(least.milk_hours);
  }
  if (product.meat_days && *product.meat_days < least.meat_days) {
    const WithdrawalStated meat{*product.meat_days, WithdrawalUnit::days};
    words += (words.empty() ? "" : "; ") + std::string("meat ") + spoken(meat) + ", at least " +
             days_words(least.meat_days * hours_a_day);
  }
  return words;
}

bool MedicineRules::was_asked(std::string_view product) const {
  const std::string said = fold_case(product);
  return std::any_of(asked.begin(), asked.end(),
                     [&](const std::string& name) { return fold_case(name) == said; });
}

}  // namespace evenclaw
