#include "cli/demo_business.hpp"

#include <algorithm>
#include <deque>
#include <filesystem>
#include <future>
#include <memory>
#include <thread>
#include <utility>

#include "cli/output_file.hpp"
#include "core/api/business.hpp"
#include "demo/kept_writes.hpp"
#include "demo/recorder.hpp"
#include "demo/story_device.hpp"
#include "demo/truth.hpp"
#include "store/memory/memory_directory.hpp"
#include "store/memory/memory_store.hpp"
#include "store/sqlite/sqlite_directory.hpp"
#include "store/sqlite/sqlite_store.hpp"

namespace evenclaw::cli {
namespace {

namespace fs = std::filesystem;

constexpr int business_itself = -1;

/// What all farms have in common; nobody changes it while they are made.
struct Business {
  demo::BusinessWanted wanted;
  StoreIdentity identity;
  std::vector<Person> people;
};

struct FarmMade {
  demo::HerdStory story;
  demo::FarmRecorded recorded;
  Write write;
};

/// In memory, where no other farm is.
Result<FarmMade> make_farm(const Business& business, int index) {
  MemoryStore memory;
  MemoryDirectory directory;
  demo::StoryClock clock;
  demo::StoryIds ids(business.wanted.seed, index, demo::first_day_of_week(business.wanted, 0));
  for (const Person& person : business.people) {
    const Outcome added = directory.add(person);
    if (!added) return added.faults();
  }
  const Outcome ready = memory.set_identity(business.identity.business, business.identity.device);
  if (!ready) return ready.faults();
  demo::HerdStory story = demo::tell_story(business.wanted, index);
  demo::KeptWrites kept(memory);
  const auto recorded = demo::record_farm({kept, directory, clock, ids}, clock, story);
  if (!recorded) return recorded.faults();
  return FarmMade{std::move(story), *recorded, kept.taken()};
}

using Making = std::future<Result<FarmMade>>;

class DemoMaker {
 public:
  DemoMaker(SqliteStore& store, const demo::BusinessWanted& wanted)
      : store_(store), truth_(demo::truth_without_farms(wanted)) {
    business_.wanted = wanted;
  }

  /// The business itself, and who calls and writes.
  Outcome begin() {
    SqliteDirectory directory(store_);
    demo::StoryClock clock;
    const demo::BusinessWanted& wanted = business_.wanted;
    clock.begin(demo::first_day_of_week(wanted, demo::weeks_before_records));
    demo::StoryIds ids(wanted.seed, business_itself, demo::first_day_of_week(wanted, 0));
    const Ports ports{store_, directory, clock, ids};
    const auto ready = ready_business(ports, "demo");
    if (!ready) return ready.faults();
    const Outcome entered = demo::enter_people(ports, wanted);
    if (!entered) return entered;
    const auto people = directory.everybody();
    if (!people) return people.faults();
    business_.people = *people;
    business_.identity = {ready->business, ready->device, false};
    return Done{};
  }

  /// Farms are made beside each other and written one after the other, in their order.
  Outcome make_farms() {
    const std::size_t at_once = std::max(2U, std::thread::hardware_concurrency());
    std::deque<Making> making;
    Outcome written = Done{};
    for (int index = 0; index < business_.wanted.farms; ++index) {
      if (making.size() >= at_once && written) written = write_first(making);
      if (!written) break;
      making.push_back(std::async(std::launch::async, make_farm, std::cref(business_), index));
    }
    while (!making.empty() && written) written = write_first(making);
    return written;
  }

  std::vector<DemoFarm> take_farms() { return std::move(farms_); }

  [[nodiscard]] std::string truth_text() const {
    return demo::truth_text(truth_, business_.wanted);
  }

 private:
  Outcome write_first(std::deque<Making>& making) {
    const Result<FarmMade> made = making.front().get();
    making.pop_front();
    if (!made) return made.faults();
    const auto kept = store_.write(made->write);
    if (!kept) return kept.faults();
    demo::add_farm(truth_, business_.wanted, made->story);
    const demo::FarmRecorded& recorded = made->recorded;
    farms_.push_back({made->story.farm.name, made->story.farm.cows, recorded.visits, recorded.turns,
                      recorded.asked, recorded.left_open});
    return Done{};
  }

  SqliteStore& store_;
  Business business_;
  demo::BusinessTruth truth_;
  std::vector<DemoFarm> farms_;
};

Fault is_there_already(const std::string& path) {
  return {.slug = "output-exists",
          .message = path + " is there already",
          .token = path,
          .remedy = "Choose another folder."};
}

}  // namespace

Result<DemoMade> make_demo(const demo::BusinessWanted& wanted, const std::string& folder) {
  DemoMade made;
  made.records = (fs::path(folder) / "demo.db").string();
  made.truth = (fs::path(folder) / "truth.json").string();
  made.first_day = demo::first_day_of_week(wanted, demo::weeks_before_records);
  made.last_day = wanted.last_day;
  std::error_code ignored;
  for (const std::string& path : {made.records, made.truth}) {
    if (fs::exists(path, ignored)) return is_there_already(path);
  }
  fs::create_directories(folder, ignored);
  auto store = SqliteStore::open(made.records, OpenMode::create);
  if (!store) return store.faults();
  DemoMaker maker(**store, wanted);
  Outcome done = maker.begin();
  if (done) done = maker.make_farms();
  if (done) done = write_new_file(made.truth, maker.truth_text());
  if (!done) return done.faults();
  made.farms = maker.take_farms();
  return made;
}

}  // namespace evenclaw::cli
