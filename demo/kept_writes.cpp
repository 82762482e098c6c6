#include "demo/kept_writes.hpp"

#include <cassert>
#include <utility>

namespace evenclaw::demo {

Write KeptWrites::taken() {
  Write all;
  all.entries = std::exchange(entries_, {});
  for (auto& [cow, picture] : cows_) all.cows.push_back(std::move(picture));
  for (auto& [visit, picture] : visits_) all.visits.push_back(std::move(picture));
  cows_.clear();
  visits_.clear();
  return all;
}

Result<std::vector<Kept>> KeptWrites::write(const Write& write) {
  auto kept = behind_.write(write);
  if (!kept) return kept;
  entries_.insert(entries_.end(), write.entries.begin(), write.entries.end());
  for (const PictureOfCow& picture : write.cows) {
    assert(!picture.group.empty());
    // Of cows that were united the rows of all are replaced, so none of them keeps an older one.
    for (const CowId cow : picture.group) cows_.erase(cow);
    cows_.insert_or_assign(picture.group.front(), picture);
  }
  for (const PictureOfVisit& picture : write.visits) {
    visits_.insert_or_assign(picture.visit, picture);
  }
  return kept;
}

}  // namespace evenclaw::demo
