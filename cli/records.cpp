#include "cli/records.hpp"

#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <filesystem>
#include <iostream>
#include <sstream>

#include "core/api/business.hpp"
#include "core/api/call_language.hpp"
#include "core/api/transfer.hpp"
#include "store/sqlite/sqlite_directory.hpp"
#include "store/sqlite/sqlite_store.hpp"

namespace evenclaw::cli {
namespace {

OpenMode mode_of(Opening opening) {
  switch (opening) {
    case Opening::create:
      return OpenMode::create;
    case Opening::existing:
      return OpenMode::existing;
    case Opening::look:
      return OpenMode::read_only;
    case Opening::salvage:
      return OpenMode::salvage;
  }
  return OpenMode::read_only;
}

std::string machine_name() {
  std::array<char, 256> name{};
  if (gethostname(name.data(), name.size() - 1) != 0) return "this device";
  return name.data();
}

/// Names of cows and people are nobody else's business: the folder is made for its owner only.
void make_folder(const std::string& file) {
  const auto folder = std::filesystem::path(file).parent_path();
  std::error_code ignored;
  if (folder.empty() || std::filesystem::exists(folder, ignored)) return;
  std::filesystem::create_directories(folder.parent_path(), ignored);
  mkdir(folder.c_str(), S_IRWXU);
}

Outcome make_pictures_if_stale(Store& store) {
  const auto stale = store.needs_rebuild();
  if (!stale) return stale.faults();
  if (!*stale) return Done{};
  const auto rebuilt = rebuild_picture(store, {});
  if (!rebuilt) return rebuilt.faults();
  std::cerr << "The rows had been made by another version; they were made anew.\n";
  return Done{};
}

/// Only to look, unless its rows have to be made anew first.
Result<std::unique_ptr<SqliteStore>> opened(const std::string& file, Opening opening) {
  auto store = SqliteStore::open(file, mode_of(opening));
  const bool needs_writing =
      opening == Opening::look && !store && store.faults().front().slug == "rows-out-of-date";
  if (!needs_writing) return store;
  Fault out_of_date = store.faults().front();
  auto writable = SqliteStore::open(file, OpenMode::existing);
  if (writable) {
    const Outcome pictured = make_pictures_if_stale(**writable);
    if (!pictured) return pictured.faults();
    return writable;
  }
  if (writable.faults().front().slug != "file-read-only") return writable;
  out_of_date.remedy =
      "Allow writing to the file and its folder, or copy it to where you may "
      "write: evenclaw restore " +
      file + " --file COPY";
  return out_of_date;
}

}  // namespace

Faults with_way_to_begin(Faults faults) {
  for (Fault& fault : faults) {
    if (fault.slug != "file-not-found") continue;
    fault.message = "no records lie at " + fault.token;
    fault.remedy =
        "Check the name; the first visit makes the file: evenclaw start \"Home Farm\" --new-herd";
  }
  return faults;
}

struct Records::Parts {
  std::unique_ptr<SqliteStore> store;
  SqliteDirectory directory;
  SystemClock clock;
  SystemFreshIds ids{clock};

  explicit Parts(std::unique_ptr<SqliteStore> opened)
      : store(std::move(opened)), directory(*store) {}
};

Records::Records(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}

Records::~Records() = default;

Ports Records::ports() {
  return {*parts_->store, parts_->directory, parts_->clock, parts_->ids};
}

Store& Records::store() {
  return *parts_->store;
}

Result<std::unique_ptr<Records>> Records::open(const Invocation& invocation, Opening opening,
                                               std::optional<BusinessId> joins) {
  if (opening == Opening::create) {
    make_folder(invocation.file);
    umask(S_IRWXG | S_IRWXO);
  }
  auto store = opened(invocation.file, opening);
  if (!store) return with_way_to_begin(store.faults());
  std::unique_ptr<Records> records(new Records(std::make_unique<Parts>(std::move(*store))));
  records->file_ = invocation.file;
  records->today_ = day_of(records->parts_->clock.now());
  if (invocation.today) {
    const auto today = day_from_text(*invocation.today);
    if (!today) {
      return Fault{"date-unreadable", "\"" + *invocation.today + "\" is not a date",
                   *invocation.today};
    }
    records->today_ = *today;
  }
  if (opening == Opening::salvage) return records;
  const auto language = call_language_of(records->store());
  if (!language) return language.faults();
  records->language_ = &(*language)->words();
  if (opening == Opening::look) return records;
  auto business = ready_business(records->ports(), machine_name(), joins);
  if (!business) return business.faults();
  if (business->copied_from) {
    std::cerr << "This file is a copy: it counts as a device of its own from now on.\n";
  }
  const auto pictured = make_pictures_if_stale(records->store());
  if (!pictured) return pictured.faults();
  return records;
}

Result<std::optional<Herd>> Records::herd_named(const Invocation& invocation) {
  const std::string name = invocation.value("--herd");
  if (name.empty()) return std::optional<Herd>();
  auto herd = find_herd(store(), name);
  if (!herd) return herd.faults();
  return std::optional<Herd>(*std::move(herd));
}

Result<Herd> Records::herd_meant(const Invocation& invocation) {
  auto named = herd_named(invocation);
  if (!named) return named.faults();
  if (named->has_value()) return **named;
  auto herds = all_herds(store());
  if (!herds) return herds.faults();
  if (herds->size() == 1) return herds->front();
  auto open = open_visits(ports(), std::nullopt);
  if (open && open->size() == 1) return herd_of(store(), open->front().herd);
  if (herds->empty()) {
    return Fault{"herd-not-found",
                 "there is no herd yet",
                 "",
                 0,
                 0,
                 "Start a visit: evenclaw start \"Home Farm\" --new-herd"};
  }
  return Fault{"herd-ambiguous", "there are several herds", "", 0, 0, "Say which: --herd NAME"};
}

Result<Visit> Records::visit_meant(const Invocation& invocation, VisitState state) {
  const bool must_be_open = state == VisitState::open;
  auto day = day_option(invocation, "--day");
  if (!day) return day.faults();
  auto named = herd_named(invocation);
  if (!named) return named.faults();
  const auto id = named->has_value() ? std::optional<HerdId>((*named)->herd) : std::nullopt;
  if (!day->has_value()) {
    auto open = the_open_visit(ports(), id);
    if (open || open.faults().front().slug == "two-visits-open" || must_be_open) return open;
  }
  auto herd = herd_meant(invocation);
  if (!herd) return herd.faults();
  return find_visit(ports(), herd->herd, *day);
}

Result<std::optional<Day>> day_option(const Invocation& invocation, std::string_view option) {
  if (!invocation.has(option)) return std::optional<Day>();
  const std::string text = invocation.value(option);
  const auto day = day_from_text(text);
  if (!day) {
    return Fault{"date-unreadable",
                 "\"" + text + "\" is not a date",
                 text,
                 0,
                 0,
                 "Write it as year-month-day, such as 2026-11-24."};
  }
  return std::optional<Day>(*day);
}

std::string feet_words(const FootSet& feet, const Language& language) {
  for (const FeetGroup group : {FeetGroup::four, FeetGroup::hinds, FeetGroup::fronts}) {
    if (feet == feet_of(group)) return std::string(language.say(TermKind::feet, group));
  }
  std::string words;
  for (const Foot foot : all_feet) {
    if (!feet.has(foot)) continue;
    if (!words.empty()) words += ' ';
    words += language.say(TermKind::foot, foot);
  }
  return words;
}

Result<FootSet> feet_option(const Invocation& invocation, std::string_view option) {
  const std::string text = invocation.value(option);
  if (text.empty()) return FootSet{};
  if (text == "all" || text == "all four") return four_feet;
  if (text == "hinds" || text == "both hinds") return hind_feet;
  if (text == "fronts" || text == "both fronts") return front_feet;
  FootSet feet;
  std::istringstream words(text);
  for (std::string word; words >> word;) {
    for (char& c : word) c = static_cast<char>(c >= 'a' && c <= 'z' ? c - 'a' + 'A' : c);
    const auto foot = enum_of<Foot>(word);
    if (!foot) {
      return Fault{"usage", "\"" + word + "\" is no foot",
                   word,    0,
                   0,       "Say all, hinds, fronts, or feet such as \"LH RH\"."};
    }
    feet.add(*foot);
  }
  return feet;
}

}  // namespace evenclaw::cli
