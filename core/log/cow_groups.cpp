#include <algorithm>
#include <iterator>
#include <set>

#include "core/log/body.hpp"
#include "core/log/picture.hpp"
#include "core/log/standing.hpp"
#include "core/log/visit_facts.hpp"

namespace evenclaw {

namespace {

struct Union {
  EntryId entry;
  SameCow body;
};

// Each cow points towards the smallest id known to be the same cow.
class UnionFind {
 public:
  CowId root_of(CowId cow) {
    CowId root = cow;
    while (parent_of(root) != root) root = parent_of(root);
    while (parent_of(cow) != root) {
      const CowId next = parent_of(cow);
      parents_[cow] = root;
      cow = next;
    }
    return root;
  }

  void unite(CowId a, CowId b) {
    const CowId x = root_of(a);
    const CowId y = root_of(b);
    parents_[std::max(x, y)] = std::min(x, y);
  }

  [[nodiscard]] std::vector<CowId> cows() const {
    std::vector<CowId> cows;
    for (const auto& [cow, parent] : parents_) cows.push_back(cow);
    return cows;
  }

 private:
  [[nodiscard]] CowId parent_of(CowId cow) { return parents_.emplace(cow, cow).first->second; }

  std::map<CowId, CowId> parents_;
};

}  // namespace

CowGroups::CowGroups(std::span<const Entry> entries) {
  // Of an entry in two versions the one that counts may be of another kind than the other.
  std::set<ScopedId> that_matter;
  for (const Entry& entry : entries) {
    const std::string& kind = entry.envelope.kind;
    const bool matters =
        kind == SameCow::kind || kind == SameCowTakenBack::kind || kind == Redact::kind;
    if (matters) that_matter.insert(scoped_id(entry));
  }
  std::vector<Entry> of_unions;
  std::copy_if(entries.begin(), entries.end(), std::back_inserter(of_unions),
               [&](const Entry& entry) { return that_matter.count(scoped_id(entry)) > 0; });
  std::vector<Union> unions;
  std::set<EntryId> taken_back;
  const Standing standing = standing_among(of_unions);
  for (const Entry* entry : standing.entries) {
    if (const auto body = body_as<SameCow>(*entry)) {
      const bool names_both =
          names_subject(*entry, body->first.value) && names_subject(*entry, body->second.value);
      if (names_both) unions.push_back({entry->envelope.id, *body});
    }
    if (const auto body = body_as<SameCowTakenBack>(*entry)) taken_back.insert(body->same_cow);
  }

  UnionFind found;
  for (const Union& united : unions) {
    if (taken_back.count(united.entry) == 0) found.unite(united.body.first, united.body.second);
  }
  for (const CowId cow : found.cows()) {
    const CowId root = found.root_of(cow);
    representative_[cow] = root;
    groups_[root].push_back(cow);
  }
}

CowId CowGroups::representative(CowId cow) const {
  const auto known = representative_.find(cow);
  return known == representative_.end() ? cow : known->second;
}

std::vector<CowId> CowGroups::group_of(CowId cow) const {
  const auto group = groups_.find(representative(cow));
  return group == groups_.end() ? std::vector<CowId>{cow} : group->second;
}

}  // namespace evenclaw
