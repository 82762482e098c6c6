#include "core/api/products.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <set>
#include <utility>

#include "core/api/journal.hpp"
#include "core/api/people.hpp"
#include "core/base/ascii.hpp"
#include "core/base/text.hpp"
#include "core/log/body.hpp"

namespace evenclaw {

namespace {

constexpr std::string_view country_setting = "country";
constexpr std::string_view may_setting = "trimmer may: ";
constexpr std::string_view said_yes = "yes";
constexpr std::string_view said_no = "no";

Fault unusable(std::string message, std::string token, std::string remedy) {
  return {.slug = "usage",
          .message = std::move(message),
          .token = std::move(token),
          .remedy = std::move(remedy)};
}

bool by_name(const ListedProduct& a, const ListedProduct& b) {
  const std::string name_a = fold_case(a.product.name);
  const std::string name_b = fold_case(b.product.name);
  return name_a != name_b ? name_a < name_b : a.id < b.id;
}

/// Another product that is called by one of the names.
const ListedProduct* namesake(const std::vector<ListedProduct>& list, const Product& product,
                              ProductId id) {
  std::vector<std::string> names = product.also_called;
  names.push_back(product.name);
  for (const std::string& name : names) {
    const ListedProduct* other = find_product(list, name);
    if (other != nullptr && other->id != id) return other;
  }
  return nullptr;
}

Outcome check_names(const Product& product) {
  if (product.name.empty()) return unusable("A product needs a name.", "", "Say the name.");
  std::vector<std::string> words = product.also_called;
  words.insert(words.end(), {product.name, product.substance, product.route});
  const auto odd = std::find_if(words.begin(), words.end(),
                                [](const std::string& text) { return !is_one_plain_line(text); });
  if (odd == words.end()) return Done{};
  return unusable("What is said of a product holds a character that cannot be shown.", "",
                  "Write it in letters, on one line.");
}

Outcome check_fits(const std::vector<ListedProduct>& list, const Product& product, ProductId id,
                   bool sure) {
  if (const ListedProduct* other = namesake(list, product, id)) {
    return unusable(other->product.name + " is called so already.", product.name,
                    "Give it another name, or drop " + other->product.name + " first.");
  }
  const std::string near = near_product(list, product.name);
  if (near.empty() || sure) return Done{};
  return Fault{.slug = "answer-needed",
               .message = "Is " + product.name + " the same product as " + near + "?",
               .token = product.name,
               .remedy = "Write " + near + ", or say that it is another product."};
}

Result<ProductShown> shown_as(const Ports& ports, const ListedProduct& listed) {
  const auto law = local_law(ports.store);
  if (!law) return law.faults();
  ProductShown shown{listed.id, listed.product, {}, below_floor(listed.product, law->country)};
  if (!listed.product.directed_by) return shown;
  const auto everybody = ports.directory.everybody();
  if (!everybody) return everybody.faults();
  shown.vet = name_of(*everybody, *listed.product.directed_by);
  return shown;
}

Result<EntryId> write_setting(const Ports& ports, const Setting& setting) {
  const auto identity = ports.store.identity();
  if (!identity) return identity.faults();
  return write_one(ports, identity->business.value, setting, {});
}

std::string capitals(std::string_view text) {
  std::string upper(trimmed(text));
  std::transform(upper.begin(), upper.end(), upper.begin(), capital);
  return upper;
}

}  // namespace

Result<std::vector<ListedProduct>> products_on(Store& store, HerdId herd, Day day) {
  struct Standing {
    ProductListed listed;
    bool dropped = false;
  };

  std::map<ProductId, Standing> standing;
  const Outcome read =
      store.read_entries({herd.value,
                          std::nullopt,
                          {std::string(ProductListed::kind), std::string(ProductDropped::kind)}},
                         [&](const Entry& entry) {
                           // In the total order what was said last of that day holds.
                           if (const auto listed = body_as<ProductListed>(entry)) {
                             if (listed->valid_from <= day)
                               standing[listed->product] = {*listed, false};
                           } else if (const auto dropped = body_as<ProductDropped>(entry)) {
                             const auto known = standing.find(dropped->product);
                             if (known != standing.end() && dropped->from <= day)
                               known->second.dropped = true;
                           }
                           return true;
                         });
  if (!read) return read.faults();
  std::vector<ListedProduct> list;
  for (const auto& [id, known] : standing) {
    if (!known.dropped) list.push_back({id, known.listed.as_listed});
  }
  std::sort(list.begin(), list.end(), by_name);
  return list;
}

Result<std::vector<ProductShown>> list_products(const Ports& ports, HerdId herd, Day day) {
  const auto list = products_on(ports.store, herd, day);
  if (!list) return list.faults();
  std::vector<ProductShown> all;
  all.reserve(list->size());
  for (const ListedProduct& listed : *list) {
    auto shown = shown_as(ports, listed);
    if (!shown) return shown.faults();
    all.push_back(*std::move(shown));
  }
  return all;
}

Result<ProductShown> list_product(const Ports& ports, HerdId herd, const Product& product, Day from,
                                  bool sure) {
  ListedProduct listed{product_id(herd, product.name), product};
  listed.product.name = trimmed(product.name);
  const Outcome named = check_names(listed.product);
  if (!named) return named.faults();
  const auto list = products_on(ports.store, herd, from);
  if (!list) return list.faults();
  const Outcome fits = check_fits(*list, listed.product, listed.id, sure);
  if (!fits) return fits.faults();
  const auto written =
      write_one(ports, herd.value, ProductListed{listed.id, listed.product, from}, {});
  if (!written) return written.faults();
  return shown_as(ports, listed);
}

Result<EntryId> drop_product(const Ports& ports, HerdId herd, std::string_view name, Day from) {
  const auto list = products_on(ports.store, herd, from);
  if (!list) return list.faults();
  const ListedProduct* listed = find_product(*list, name);
  if (listed == nullptr) {
    const std::string near = near_product(*list, name);
    return Fault{.slug = "product-not-found",
                 .message = "No product on the list is called " + std::string(trimmed(name)) + ".",
                 .token = std::string(trimmed(name)),
                 .remedy = near.empty() ? "" : "Did you mean " + near + "?"};
  }
  return write_one(ports, herd.value, ProductDropped{listed->id, from, {}}, {});
}

Result<LocalLaw> local_law(Store& store) {
  const auto identity = store.identity();
  if (!identity) return identity.faults();
  LocalLaw law;
  std::set<ReservedAct> may;
  const Outcome read =
      store.read_entries({identity->business.value, std::nullopt, {std::string(Setting::kind)}},
                         [&](const Entry& entry) {
                           const auto setting = body_as<Setting>(entry);
                           if (!setting) return true;
                           const std::string_view name = setting->name;
                           if (name == country_setting) law.country = setting->value;
                           if (name.substr(0, may_setting.size()) != may_setting) return true;
                           const auto act = enum_of<ReservedAct>(name.substr(may_setting.size()));
                           if (act && setting->value == said_yes) may.insert(*act);
                           if (act && setting->value != said_yes) may.erase(*act);
                           return true;
                         });
  if (!read) return read.faults();
  law.trimmer_may.assign(may.begin(), may.end());
  return law;
}

Result<EntryId> set_country(const Ports& ports, std::string_view country) {
  const std::string code = capitals(country);
  const bool is_code = code.size() == 2 && std::all_of(code.begin(), code.end(), is_capital);
  if (!is_code && code != "GB-NIR") {
    return unusable('"' + std::string(country) + "\" is no country.", std::string(country),
                    "Two letters, such as GB, IE or NL; GB-NIR for Northern Ireland.");
  }
  return write_setting(ports, {std::string(country_setting), code});
}

Result<EntryId> set_trimmer_may(const Ports& ports, ReservedAct act, bool allowed) {
  return write_setting(ports, {std::string(may_setting) + std::string(word_of(act)),
                               std::string(allowed ? said_yes : said_no)});
}

Result<MedicineRules> medicine_rules(Store& store, HerdId herd, Day day) {
  auto list = products_on(store, herd, day);
  if (!list) return list.faults();
  auto law = local_law(store);
  if (!law) return law.faults();
  return MedicineRules{*std::move(list), *std::move(law), {}};
}

}  // namespace evenclaw
