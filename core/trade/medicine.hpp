// A product of a herd's own list, what it says of withdrawal, and what a record keeps of that.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/date.hpp"
#include "core/base/enum_words.hpp"
#include "core/base/id.hpp"

namespace evenclaw {

enum class Milking { morning, evening };

template <>
struct EnumWords<Milking> {
  static constexpr EnumWord<Milking> table[] = {{Milking::morning, "morning"},
                                                {Milking::evening, "evening"}};
};

enum class WithdrawalUnit { hours, milkings, days };

template <>
struct EnumWords<WithdrawalUnit> {
  static constexpr EnumWord<WithdrawalUnit> table[] = {{WithdrawalUnit::hours, "hours"},
                                                       {WithdrawalUnit::milkings, "milkings"},
                                                       {WithdrawalUnit::days, "days"}};
};

/// A withdrawal period in the unit in which it was stated; an amount of 0 is none.
struct WithdrawalStated {
  std::int32_t amount = 0;
  WithdrawalUnit unit = WithdrawalUnit::days;

  friend bool operator==(const WithdrawalStated&, const WithdrawalStated&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("amount", &WithdrawalStated::amount, "how many; 0 is none");
    visit("unit", &WithdrawalStated::unit, "hours, milkings or days, as stated");
  }
};

/// "48h", "4 milkings", "2d" or "0"; at most 730 days. Nothing for any other text.
std::optional<WithdrawalStated> withdrawal_from_text(std::string_view text);

/// "48 hours", "4 milkings", "1 day"; "none" of 0.
std::string spoken(const WithdrawalStated& stated);

/// Hours of 24 a day and 12 a milking: two milkings a day are common practice, no source.
std::int32_t hours_of(const WithdrawalStated& stated);

enum class Labelled { not_known, yes, no };

template <>
struct EnumWords<Labelled> {
  static constexpr EnumWord<Labelled> table[] = {
      {Labelled::not_known, "not_known"}, {Labelled::yes, "yes"}, {Labelled::no, "no"}};
};

enum class StatedBy { not_said, label, vet };

template <>
struct EnumWords<StatedBy> {
  static constexpr EnumWord<StatedBy> table[] = {
      {StatedBy::not_said, "not_said"}, {StatedBy::label, "label"}, {StatedBy::vet, "vet"}};
};

/// What the herd's list says of a product. What nobody stated is absent, never 0.
struct Product {
  std::string name;
  std::vector<std::string> also_called;  // as it is said beside the crush
  std::string substance;
  std::string route;
  Labelled labelled = Labelled::not_known;  // for the use it is kept for
  std::optional<WithdrawalStated> milk;
  std::optional<std::int32_t> meat_days;
  StatedBy stated_by = StatedBy::not_said;
  std::optional<WithdrawalStated> milk_on_label;  // its longest period there, used off label
  std::optional<std::int32_t> meat_days_on_label;
  std::optional<PersonId> directed_by;  // the vet

  friend bool operator==(const Product&, const Product&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("name", &Product::name, "name of the product");
    visit("also_called", &Product::also_called, "how else it is called beside the crush");
    visit("substance", &Product::substance, "active substance");
    visit("route", &Product::route, "how it is given");
    visit("labelled", &Product::labelled, "whether its label covers this use");
    visit("milk", &Product::milk, "milk withdrawal as stated");
    visit("meat_days", &Product::meat_days, "meat withdrawal in days as stated");
    visit("stated_by", &Product::stated_by, "who states the withdrawal");
    visit("milk_on_label", &Product::milk_on_label, "longest milk withdrawal on its label");
    visit("meat_days_on_label", &Product::meat_days_on_label,
          "longest meat withdrawal on its label, in days");
    visit("directed_by", &Product::directed_by, "the vet on whose direction it is used");
  }
};

/// A product as it stands on the list.
struct ListedProduct {
  ProductId id;
  Product product;
};

/// What a record keeps: the product as the list had it when it was given, and the ends that
/// followed then. A later change of the list moves none of it.
struct Medicine {
  ProductId product;
  Product as_listed;
  std::optional<Day> milk_till;  // last day; nothing when there is none or nobody stated it
  std::optional<Milking> milk_milking;
  std::optional<Day> meat_till;

  friend bool operator==(const Medicine&, const Medicine&) = default;

  template <class Visitor>
  static void fields(Visitor&& visit) {
    visit("product", &Medicine::product, "which of the herd's list");
    visit("as_listed", &Medicine::as_listed, "what the list said then");
    visit("milk_till", &Medicine::milk_till, "last day her milk is held back");
    visit("milk_milking", &Medicine::milk_milking, "up to and with this milking of it");
    visit("meat_till", &Medicine::meat_till, "last day her meat is held back");
  }
};

/// What is known of the withdrawal of something that was put on or given.
enum class WithdrawalKnown { no_medicine, not_known, none, held_back };

template <>
struct EnumWords<WithdrawalKnown> {
  static constexpr EnumWord<WithdrawalKnown> table[] = {
      {WithdrawalKnown::no_medicine, "no_medicine"},
      {WithdrawalKnown::not_known, "not_known"},
      {WithdrawalKnown::none, "none"},
      {WithdrawalKnown::held_back, "held_back"}};
};

/// An end by date and milking.
struct MilkEnd {
  Day day;
  Milking milking = Milking::evening;

  friend auto operator<=>(const MilkEnd&, const MilkEnd&) = default;  // NOLINT: no null pointer
};

/// The last milking that is held back; nothing when none is. The hour at which she was treated is
/// not known, so the period is counted from the evening milking of that day, two milkings a day,
/// and begun ones are whole: never shorter than what was stated (our judgement).
std::optional<MilkEnd> milk_end(const WithdrawalStated& stated, Day given);

/// The product as given on that day.
Medicine given_on(const ListedProduct& listed, Day day);

/// The product of that name, or so called; letter case and hyphens do not matter. Null when none.
const ListedProduct* find_product(std::span<const ListedProduct> list, std::string_view said);

/// The name on the list that is a slip of the pen away (one letter, two from six letters on); ""
/// when none is.
std::string near_product(std::span<const ListedProduct> list, std::string_view said);

/// A product of a herd, from its name: two tablets name the same one alike.
ProductId product_id(HerdId herd, std::string_view name);

}  // namespace evenclaw
