#include <algorithm>
#include <sstream>

#include "cli/answer.hpp"
#include "cli/commands.hpp"
#include "cli/records.hpp"
#include "core/api/people.hpp"
#include "core/api/products.hpp"
#include "core/base/text.hpp"

namespace evenclaw::cli {
namespace {

constexpr Operand operands[] = {{"HERD", "name of the herd, or its beginning"},
                                {"ACT", "add, list or drop"},
                                {"NAME", "the product", false, true}};
constexpr Option options[] = {
    {"--called", "NAMES", "how else it is called beside the crush, with commas"},
    {"--substance", "NAME", "active substance"},
    {"--route", "WORDS", "how it is given: on the skin, injected"},
    {"--labelled", "YES-OR-NO", "whether its label covers this use"},
    {"--milk", "PERIOD", "milk withdrawal as stated: 48h, 4 milkings, 2d or 0"},
    {"--meat", "DAYS", "meat withdrawal as stated: 5d or 0"},
    {"--stated-by", "WHO", "vet or label"},
    {"--label-milk", "PERIOD", "off label: the longest milk withdrawal on the label"},
    {"--label-meat", "DAYS", "off label: the longest meat withdrawal on the label"},
    {"--vet", "NAME", "the vet on whose direction it is used"},
    {"--from", "DAY", "from that day on; else from today"},
    {"--sure", "", "a name that looks misspelt is meant so"}};
constexpr Example examples[] = {
    {"evenclaw product home add bluemix --labelled yes --milk 0 --meat 0",
     "a product without withdrawal: nothing is asked when it is used"},
    {"evenclaw product home add strongmix --labelled no --milk 7d --meat 28d",
     "off label; add --stated-by vet --vet \"Dr Lee\""},
    {"evenclaw product home list", "the list of that herd"},
    {"evenclaw product home drop strongmix", "it is used no longer; records keep what they say"}};
constexpr JsonAnswer answers[] = {{"list", JsonForm::list, field_docs<ProductShown>},
                                  {"add", JsonForm::document, field_docs<ProductShown>},
                                  {"drop", JsonForm::document, field_docs<EntryAnswer>}};

Fault usage(std::string message, std::string token, std::string remedy) {
  return {"usage", std::move(message), std::move(token), 0, 0, std::move(remedy)};
}

std::vector<std::string> parted_by_commas(const std::string& text) {
  std::vector<std::string> parts;
  std::istringstream in(text);
  for (std::string part; std::getline(in, part, ',');) {
    if (!trimmed(part).empty()) parts.emplace_back(trimmed(part));
  }
  return parts;
}

Result<std::optional<WithdrawalStated>> period(const Invocation& invocation,
                                               std::string_view option) {
  if (!invocation.has(option)) return std::optional<WithdrawalStated>();
  const std::string text = invocation.value(option);
  auto stated = withdrawal_from_text(text);
  if (stated) return stated;
  return usage('"' + text + "\" is no withdrawal period", text,
               "Write it as stated: 48h, 4 milkings, 2d, or 0 for none.");
}

Result<std::optional<std::int32_t>> days(const Invocation& invocation, std::string_view option) {
  auto stated = period(invocation, option);
  if (!stated) return stated.faults();
  if (!stated->has_value()) return std::optional<std::int32_t>();
  if ((*stated)->unit == WithdrawalUnit::days) return std::optional((*stated)->amount);
  return usage("meat withdrawal is stated in days", invocation.value(option), "Such as 28d.");
}

Outcome read_words(const Invocation& invocation, Product& product) {
  product.name = invocation.words_from(2);
  product.also_called = parted_by_commas(invocation.value("--called"));
  product.substance = invocation.value("--substance");
  product.route = invocation.value("--route");
  if (invocation.has("--labelled")) {
    const auto labelled = enum_of<Labelled>(invocation.value("--labelled"));
    if (!labelled || *labelled == Labelled::not_known) {
      return usage("a product is labelled for this use or not", invocation.value("--labelled"),
                   "Write --labelled yes or --labelled no; leave it out when nobody knows.");
    }
    product.labelled = *labelled;
  }
  if (invocation.has("--stated-by")) {
    const auto by = enum_of<StatedBy>(invocation.value("--stated-by"));
    if (!by || *by == StatedBy::not_said) {
      return usage("withdrawal is stated by the vet or the label", invocation.value("--stated-by"),
                   "Write --stated-by vet or --stated-by label.");
    }
    product.stated_by = *by;
  }
  return evenclaw::Done{};
}

Outcome read_periods(const Invocation& invocation, Product& product) {
  auto milk = period(invocation, "--milk");
  if (!milk) return milk.faults();
  auto meat = days(invocation, "--meat");
  if (!meat) return meat.faults();
  auto label_milk = period(invocation, "--label-milk");
  if (!label_milk) return label_milk.faults();
  auto label_meat = days(invocation, "--label-meat");
  if (!label_meat) return label_meat.faults();
  product.milk = *milk;
  product.meat_days = *meat;
  product.milk_on_label = *label_milk;
  product.meat_days_on_label = *label_meat;
  return evenclaw::Done{};
}

Result<Product> product_said(Records& records, const Invocation& invocation) {
  Product product;
  const Outcome words = read_words(invocation, product);
  if (!words) return words.faults();
  const Outcome periods = read_periods(invocation, product);
  if (!periods) return periods.faults();
  const std::string vet = invocation.value("--vet");
  if (vet.empty()) return product;
  auto person = certain_person(records.ports(), vet, invocation.has("--sure"));
  if (!person) return person.faults();
  product.directed_by = *person;
  return product;
}

std::string period_words(const std::optional<WithdrawalStated>& stated) {
  return stated ? spoken(*stated) : "not stated";
}

std::string line_of(const ProductShown& shown) {
  const Product& product = shown.product;
  std::optional<WithdrawalStated> meat;
  if (product.meat_days) meat = WithdrawalStated{*product.meat_days, WithdrawalUnit::days};
  std::string line = product.name;
  for (const std::string& name : product.also_called) line += ", " + name;
  if (!product.substance.empty()) line += " (" + product.substance + ")";
  if (!product.route.empty()) line += ", " + product.route;
  line += ": milk " + period_words(product.milk) + ", meat " + period_words(meat);
  if (product.stated_by == StatedBy::vet) line += ", says the vet";
  if (product.stated_by == StatedBy::label) line += ", says the label";
  if (product.labelled == Labelled::no) line += "; off label";
  if (product.labelled == Labelled::not_known) line += "; not known whether labelled for this use";
  if (!shown.vet.empty()) line += "; directed by " + shown.vet;
  if (!shown.below_floor.empty()) line += "\n  Too short off label: " + shown.below_floor;
  return line;
}

Exit list(Records& records, HerdId herd, Day day, const Invocation& invocation) {
  auto shown = list_products(records.ports(), herd, day);
  if (!shown) return tell_faults(shown.faults(), invocation);
  if (invocation.json) {
    print_json(*shown);
    return Exit::fine;
  }
  for (const ProductShown& each : *shown) std::cout << line_of(each) << '\n';
  if (shown->empty()) std::cout << "No product is on the list yet.\n";
  return Exit::fine;
}

Exit add(Records& records, HerdId herd, Day day, const Invocation& invocation) {
  auto product = product_said(records, invocation);
  if (!product) return tell_faults(product.faults(), invocation);
  auto shown = list_product(records.ports(), herd, *product, day, invocation.has("--sure"));
  if (!shown) return tell_faults(shown.faults(), invocation);
  tell_done(invocation, "On the list: " + line_of(*shown), *shown);
  return Exit::fine;
}

Exit drop(Records& records, HerdId herd, Day day, const Invocation& invocation) {
  auto entry = drop_product(records.ports(), herd, invocation.words_from(2), day);
  if (!entry) return tell_faults(entry.faults(), invocation);
  tell_done(invocation, invocation.words_from(2) + " is off the list; records keep what they say.",
            EntryAnswer{*entry});
  return Exit::fine;
}

struct Act {
  std::string_view word;
  bool named;
  Exit (*run)(Records&, HerdId, Day, const Invocation&);
};

constexpr Act acts[] = {{"add", true, add}, {"list", false, list}, {"drop", true, drop}};

Exit run(const Invocation& invocation) {
  const bool has_name = invocation.operands.size() > 2;
  const auto act = std::find_if(std::begin(acts), std::end(acts), [&](const Act& each) {
    return each.word == invocation.operands[1] && each.named == has_name;
  });
  if (act == std::end(acts)) {
    return tell_faults({usage("a product is added or dropped by its name, or all are listed",
                              invocation.operands[1], "See: evenclaw help product")},
                       invocation);
  }
  auto records = Records::open(invocation, act->named ? Opening::existing : Opening::look);
  if (!records) return tell_faults(records.faults(), invocation);
  auto day = day_option(invocation, "--from");
  if (!day) return tell_faults(day.faults(), invocation);
  auto herd = find_herd((*records)->store(), invocation.operands[0]);
  if (!herd) return tell_faults(herd.faults(), invocation);
  return act->run(**records, herd->herd, day->value_or((*records)->today()), invocation);
}

}  // namespace

extern const Command product_command = {
    "product", "a herd's own list of medicines and other products",
    operands,  options,
    examples,  run,
    answers};

}  // namespace evenclaw::cli
