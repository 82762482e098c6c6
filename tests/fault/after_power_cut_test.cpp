// The disk that loses power does so as hardware may: nothing synced goes, anything else can.
#include "tests/fault/after_power_cut.hpp"

#include <doctest/doctest.h>

#include <set>

namespace evenclaw::test {
namespace {

using Act = DiskAct::Kind;

constexpr int tries = 200;

DiskAct write_of(std::int64_t at, std::string bytes) {
  return {Act::written, 1, at, std::move(bytes)};
}

/// A file with old contents whose name is durable, and what came after.
DiskRecord old_file_and(std::vector<DiskAct> acts) {
  DiskRecord record;
  record.acts.push_back({Act::found, 1, 0, std::string(2048, 'o'), "file"});
  for (DiskAct& act : acts) record.acts.push_back(std::move(act));
  return record;
}

/// Everything the file may hold after the cut; "none" where it has no name.
std::set<std::string> may_hold(const DiskRecord& record) {
  std::set<std::string> contents;
  for (std::uint64_t seed = 0; seed < tries; ++seed) {
    RandomStream random(seed, 1);
    const auto left = after_power_cut(record, record.acts.size(), random);
    contents.insert(left.count("file") == 0 ? "none" : left.at("file"));
  }
  return contents;
}

}  // namespace

TEST_CASE("What was synced survives every power cut") {
  const auto record = old_file_and({write_of(0, std::string(1024, 'n')), {Act::synced, 1}});
  CHECK(may_hold(record) == std::set<std::string>{std::string(1024, 'n') + std::string(1024, 'o')});
}

TEST_CASE("A write that was not synced is there, is not, or is torn between two sectors") {
  const auto held = may_hold(old_file_and({write_of(0, std::string(1024, 'n'))}));
  const std::string old(512, 'o');
  const std::string fresh(512, 'n');
  const std::string behind(1024, 'o');
  CHECK(held.count(old + old + behind) == 1);
  CHECK(held.count(fresh + fresh + behind) == 1);
  CHECK(held.count(fresh + old + behind) == 1);
  CHECK(held.count(old + fresh + behind) == 1);
  for (const std::string& contents : held) CHECK(contents.substr(1024) == behind);
}

TEST_CASE("Of two writes that were not synced the later may be there without the earlier") {
  const auto held = may_hold(old_file_and({write_of(0, "first"), write_of(1000, "second")}));
  std::string only_later(2048, 'o');
  only_later.replace(1000, 6, "second");
  CHECK(held.count(only_later) == 1);
}

TEST_CASE("A sync that failed leaves to chance what no later sync makes good") {
  const auto held =
      may_hold(old_file_and({write_of(0, "new"), {Act::sync_failed, 1}, {Act::synced, 1}}));
  CHECK(held.count(std::string(2048, 'o')) == 1);
  CHECK(held.count("new" + std::string(2045, 'o')) == 1);
}

TEST_CASE("A file cut shorter without a sync may have its old length") {
  const auto held = may_hold(old_file_and({{Act::cut_to, 1, 10}}));
  CHECK(held == std::set<std::string>{std::string(10, 'o'), std::string(2048, 'o')});
}

TEST_CASE("A new file may have no name until its folder is synced, whatever of it was synced") {
  DiskRecord record;
  record.acts = {{Act::created, 1, 0, "", "file"}, write_of(0, "new"), {Act::synced, 1}};
  CHECK(may_hold(record) == std::set<std::string>{"new", "none"});
  record.acts.push_back({Act::folder_synced});
  CHECK(may_hold(record) == std::set<std::string>{"new"});
}

TEST_CASE("A name that was taken away or given without a sync may be as it was") {
  CHECK(may_hold(old_file_and({{Act::removed, 1}})).size() == 2);
  CHECK(may_hold(old_file_and({{Act::renamed, 1, 0, "", "other"}})).size() == 2);
  CHECK(may_hold(old_file_and({{Act::removed, 1}, {Act::folder_synced}})) ==
        std::set<std::string>{"none"});
}

}  // namespace evenclaw::test
