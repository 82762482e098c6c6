#include "tests/fault/after_power_cut.hpp"

#include <algorithm>
#include <optional>
#include <utility>
#include <vector>

namespace evenclaw::test {

namespace {

using Kind = DiskAct::Kind;

struct FileAtCut {
  std::string durable;
  std::vector<const DiskAct*> pending;  // since the last sync
  /// What it may be called: first what is durable, then each name since; nothing is no name.
  std::vector<std::optional<std::string>> names = {std::nullopt};
};

char junk_byte(RandomStream& random) {
  return static_cast<char>(random.below(256));
}

/// Growing leaves zeros, or on some file systems whatever lay there before.
void grow(std::string& bytes, std::size_t size, RandomStream* random) {
  const std::size_t before = bytes.size();
  if (size <= before) return;
  bytes.resize(size, '\0');
  if (random == nullptr || !random->chance(0.25)) return;
  for (std::size_t at = before; at < size; ++at) bytes[at] = junk_byte(*random);
}

void write_whole(std::string& bytes, const DiskAct& act, RandomStream* random) {
  const auto begin = static_cast<std::size_t>(act.at);
  grow(bytes, begin, random);
  const std::size_t end = begin + act.bytes.size();
  if (bytes.size() < end) bytes.resize(end, '\0');
  std::copy(act.bytes.begin(), act.bytes.end(), bytes.begin() + static_cast<std::ptrdiff_t>(begin));
}

/// Each sector the write touches fares for itself; nothing outside the write is touched.
void write_torn(std::string& bytes, const DiskAct& act, RandomStream& random) {
  const auto begin = static_cast<std::size_t>(act.at);
  const std::size_t end = begin + act.bytes.size();
  for (std::size_t from = begin; from < end;) {
    const std::size_t to = std::min(end, (from / sector_bytes + 1) * sector_bytes);
    const std::uint32_t fate = random.below(8);
    if (fate < 5) {
      DiskAct part{Kind::written, act.file, static_cast<std::int64_t>(from)};
      part.bytes = act.bytes.substr(from - begin, to - from);
      if (fate == 4) {
        for (char& byte : part.bytes) byte = junk_byte(random);
      }
      write_whole(bytes, part, &random);
    }
    from = to;
  }
}

void cut(std::string& bytes, const DiskAct& act) {
  bytes.resize(static_cast<std::size_t>(act.at), '\0');
}

void do_wholly(std::string& bytes, const DiskAct& act) {
  if (act.kind == Kind::written) write_whole(bytes, act, nullptr);
  if (act.kind == Kind::cut_to) cut(bytes, act);
}

void do_by_chance(std::string& bytes, const DiskAct& act, RandomStream& random) {
  const std::uint32_t fate = random.below(3);
  if (fate == 0) return;
  if (act.kind == Kind::cut_to) {
    cut(bytes, act);
  } else if (fate == 1) {
    write_whole(bytes, act, &random);
  } else {
    write_torn(bytes, act, random);
  }
}

/// Follows the acts; nullptr for no chance: everything reaches the disk.
class Disk {
 public:
  explicit Disk(RandomStream* random) : random_(random) {}

  void follow(const DiskAct& act) {
    FileAtCut& file = files_[act.file];
    switch (act.kind) {
      case Kind::found:
        file.durable = act.bytes;
        file.names = {act.name};
        break;
      case Kind::created:
      case Kind::renamed:
        file.names.emplace_back(act.name);
        break;
      case Kind::removed:
        file.names.emplace_back(std::nullopt);
        break;
      case Kind::written:
      case Kind::cut_to:
        file.pending.push_back(&act);
        break;
      case Kind::synced:
        reach_the_disk(file);
        break;
      case Kind::sync_failed:
        take_chances(file);
        break;
      case Kind::folder_synced:
        keep_names();
        break;
    }
  }

  std::map<std::string, std::string> without_power() {
    std::map<std::string, std::string> left;
    for (auto& numbered : files_) {
      FileAtCut& file = numbered.second;
      take_chances(file);
      const auto& name = name_after(file);
      if (name) left[*name] = file.durable;
    }
    return left;
  }

 private:
  static void reach_the_disk(FileAtCut& file) {
    for (const DiskAct* act : file.pending) do_wholly(file.durable, *act);
    file.pending.clear();
  }

  void take_chances(FileAtCut& file) {
    if (random_ == nullptr) return reach_the_disk(file);
    for (const DiskAct* act : file.pending) do_by_chance(file.durable, *act, *random_);
    file.pending.clear();
  }

  void keep_names() {
    for (auto& numbered : files_) {
      auto& names = numbered.second.names;
      names = {names.back()};
    }
  }

  const std::optional<std::string>& name_after(const FileAtCut& file) {
    if (random_ == nullptr) return file.names.back();
    return file.names[random_->below(static_cast<std::uint32_t>(file.names.size()))];
  }

  RandomStream* random_;
  std::map<int, FileAtCut> files_;
};

}  // namespace

std::map<std::string, std::string> after_power_cut(const DiskRecord& record, std::size_t acts,
                                                   RandomStream& random) {
  Disk disk(&random);
  for (std::size_t i = 0; i < acts; ++i) disk.follow(record.acts[i]);
  return disk.without_power();
}

std::map<std::string, std::string> without_power_cut(const DiskRecord& record, std::size_t acts) {
  Disk disk(nullptr);
  for (std::size_t i = 0; i < acts; ++i) disk.follow(record.acts[i]);
  return disk.without_power();
}

}  // namespace evenclaw::test
