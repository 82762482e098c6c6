#include <doctest/doctest.h>

#include <algorithm>
#include <map>

#include "core/log/merge.hpp"
#include "tests/conformance/every_store.hpp"
#include "tests/store/sample_entries.hpp"

using namespace evenclaw;

namespace {

constexpr std::uint64_t seeds = 25;

std::vector<Kept> written(Store& store, const std::vector<Entry>& entries) {
  Write write;
  write.entries = entries;
  return taken(store.write(write));
}

std::vector<Entry> read(Store& store, const EntrySelection& selection) {
  std::vector<Entry> entries;
  taken(store.read_entries(selection, [&](const Entry& entry) {
    entries.push_back(entry);
    return true;
  }));
  return entries;
}

std::vector<Entry> read_all(Store& store) {
  std::vector<Entry> entries;
  taken(store.read_everything([&](const Entry& entry) {
    entries.push_back(entry);
    return true;
  }));
  return entries;
}

std::vector<Entry> read_past_damage(Store& store) {
  std::vector<Entry> entries;
  int damaged = 0;
  taken(store.read_what_can_be(
      [&](const Entry& entry) {
        entries.push_back(entry);
        return true;
      },
      [&](const Fault&) { ++damaged; }));
  CHECK(damaged == 0);
  return entries;
}

std::vector<Entry> by_scope(std::vector<Entry> entries) {
  std::stable_sort(entries.begin(), entries.end(), [](const Entry& a, const Entry& b) {
    return a.envelope.scope < b.envelope.scope;
  });
  return entries;
}

bool is_wanted(const Entry& entry, const EntrySelection& selection) {
  const Envelope& envelope = entry.envelope;
  const auto holds = [](const auto& list, const auto& value) {
    return std::find(list.begin(), list.end(), value) != list.end();
  };
  if (selection.scope && *selection.scope != envelope.scope) return false;
  if (selection.id && *selection.id != envelope.id) return false;
  if (selection.subject && !holds(envelope.subjects, *selection.subject)) return false;
  return selection.kinds.empty() || holds(selection.kinds, envelope.kind);
}

std::vector<Entry> only(std::vector<Entry> entries, const EntrySelection& selection) {
  entries.erase(std::remove_if(entries.begin(), entries.end(),
                               [&](const Entry& e) { return !is_wanted(e, selection); }),
                entries.end());
  return entries;
}

/// Every version of what fits in one of them.
std::vector<Entry> every_version(const std::vector<Entry>& everything,
                                 const EntrySelection& selection) {
  std::vector<Entry> found;
  for (const Entry& entry : everything) {
    const bool fits = std::any_of(everything.begin(), everything.end(), [&](const Entry& other) {
      return other.envelope.scope == entry.envelope.scope &&
             other.envelope.id == entry.envelope.id && is_wanted(other, selection);
    });
    if (fits) found.push_back(entry);
  }
  return found;
}

std::vector<EntrySelection> selections() {
  const Uuid herd = sample_herd(1).value;
  const Uuid cow = sample_cow(2).value;
  return {{},
          {herd, {}, {}},
          {{}, cow, {}},
          {herd, cow, {}},
          {herd, herd, {}},
          {herd, {}, {"redact"}},
          {herd, {}, {"cow_left", "milk_tested"}},
          {{}, {}, {"number_given"}},
          {herd, cow, {"number_given", "cow_left"}},
          {{}, cow, {"redact"}},
          {sample_herd(99).value, {}, {}},
          {herd, sample_id("nobody", 1), {}},
          {herd, {}, {"never_heard_of"}}};
}

}  // namespace

TEST_CASE("whatever is offered, a store keeps and answers as the union of logs does") {
  for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
    CAPTURE(seed);
    for_every_store([&](EmptyStore& opened) {
      SampleHistory history(seed);
      EntrySet expected;
      for (int batch = 0; batch < 12; ++batch) {
        const std::vector<Entry> entries = history.batch(15);
        std::vector<Kept> answers;
        answers.reserve(entries.size());
        for (const Entry& entry : entries) answers.push_back(expected.add(entry));
        REQUIRE(written(*opened.store, entries) == answers);
      }
      CHECK(read_all(*opened.store) == by_scope(expected.everything()));
      CHECK(read_past_damage(*opened.store) == by_scope(expected.everything()));
      std::vector<EntrySelection> asked = selections();
      for (const EntryId id : expected.in_two_versions()) asked.push_back({{}, {}, {}, id});
      for (EntrySelection selection : asked) {
        CHECK(read(*opened.store, selection) == only(by_scope(expected.shown()), selection));
        selection.versions = Versions::every;
        CHECK(read(*opened.store, selection) ==
              every_version(by_scope(expected.everything()), selection));
      }
    });
  }
}

TEST_CASE("an entry in two versions is found whole by a cow that only one of them names") {
  const Entry one = sample_entry(1, sample_device(1), sample_herd(1));
  Envelope envelope = one.envelope;
  envelope.subjects = {};
  const Entry other = entry_of(envelope, CowLeft{sample_cow(77), Day{20'000}, "", {}});
  for_every_store([&](EmptyStore& opened) {
    written(*opened.store, {one, other});
    EntrySelection selection{sample_herd(1).value, sample_cow(77).value, {}};
    selection.versions = Versions::every;
    CHECK(read(*opened.store, selection).size() == 2);
  });
}

TEST_CASE("the last seq of a device and the believed order of a scope are those of the entries") {
  for (std::uint64_t seed = 1; seed <= seeds; ++seed) {
    CAPTURE(seed);
    for_every_store([&](EmptyStore& opened) {
      SampleHistory history(seed);
      written(*opened.store, history.batch(150));
      std::map<std::pair<Uuid, DeviceId>, std::int64_t> last_seq;
      std::map<Uuid, std::int64_t> last_order;
      const auto everything = read_all(*opened.store);
      const auto flaws = flaws_of(everything);
      for (const Entry& entry : everything) {
        const Envelope& e = entry.envelope;
        auto& seq = last_seq[{e.scope, e.device}];
        seq = std::max(seq, e.seq);
        const bool jumped = std::any_of(flaws.begin(), flaws.end(), [&](const LogFlaw& flaw) {
          return flaw.kind == LogFlaw::Kind::order_jump && flaw.entry == e.id;
        });
        if (!jumped) last_order[e.scope] = std::max(last_order[e.scope], e.order);
      }
      for (const auto& [key, seq] : last_seq) {
        CHECK(taken(opened.store->last_seq(key.second, key.first)) == seq);
      }
      for (const auto& [scope, order] : last_order) {
        CHECK(taken(opened.store->last_order(scope)) == order);
      }
    });
  }
}

TEST_CASE("a scope nobody wrote to starts at nothing") {
  for_every_store([](EmptyStore& opened) {
    CHECK(taken(opened.store->last_seq(sample_device(1), sample_herd(1).value)) == 0);
    CHECK(taken(opened.store->last_order(sample_herd(1).value)) == 0);
  });
}

TEST_CASE("an order beyond the largest believed jump does not move the counter") {
  for_every_store([](EmptyStore& opened) {
    Entry near = sample_entry(1, sample_device(1), sample_herd(1));
    Envelope far = sample_envelope(2, sample_device(1), sample_herd(1));
    far.order = 2 + largest_order_jump;
    Envelope just = sample_envelope(3, sample_device(1), sample_herd(2));
    just.order = largest_order_jump;
    written(*opened.store, {near, entry_of(far, CowLeft{sample_cow(1), Day{20'000}, "", {}}),
                            entry_of(just, CowLeft{sample_cow(1), Day{20'000}, "", {}})});
    CHECK(taken(opened.store->last_order(sample_herd(1).value)) == 1);
    CHECK(taken(opened.store->last_order(sample_herd(2).value)) == largest_order_jump);
  });
}

TEST_CASE("an entry is found by its id, the shown version of it, in whatever herd it lies") {
  for_every_store([](EmptyStore& opened) {
    SampleHistory history(5);
    EntrySet expected;
    const auto entries = history.batch(120);
    for (const Entry& entry : entries) expected.add(entry);
    written(*opened.store, entries);
    for (const Entry& shown : expected.shown()) {
      CHECK(taken(opened.store->find_entry(shown.envelope.id)) == shown);
    }
    CHECK_FALSE(taken(opened.store->find_entry(sample_entry_id(1))).has_value());
  });
}

TEST_CASE("reading stops when the reader has had enough") {
  for_every_store([](EmptyStore& opened) {
    SampleHistory history(6);
    written(*opened.store, history.batch(60));
    int seen = 0;
    taken(opened.store->read_entries({}, [&](const Entry&) { return ++seen < 7; }));
    CHECK(seen == 7);
    seen = 0;
    taken(opened.store->read_everything([&](const Entry&) { return ++seen < 9; }));
    CHECK(seen == 9);
  });
}

TEST_CASE("a reader may write and read again while it reads") {
  for_every_store([](EmptyStore& opened) {
    Store& store = *opened.store;
    for (int i = 1; i <= 3; ++i) {
      written(store, {sample_entry(i, sample_device(1), sample_herd(1))});
    }
    std::int64_t seen = 0;
    taken(store.read_entries({sample_herd(1).value, {}, {}}, [&](const Entry&) {
      ++seen;
      written(store, {sample_entry(100 + seen, sample_device(2), sample_herd(2))});
      CHECK(read(store, {sample_herd(2).value, {}, {}}).size() == static_cast<std::size_t>(seen));
      return true;
    }));
    CHECK(seen == 3);
  });
}

TEST_CASE("a new entry of the store's own device with a seq already used is refused whole") {
  for_every_store([](EmptyStore& opened) {
    Store& store = *opened.store;
    const DeviceId own = sample_device(1);
    taken(store.set_identity(BusinessId{sample_id("business", 1)}, own));
    const Entry first = sample_entry(1, own, sample_herd(1));
    written(store, {first});
    Entry clashing = sample_entry(2, own, sample_herd(1));
    clashing.envelope.seq = 1;
    clashing = make_entry(clashing.envelope, clashing.body->bytes());

    Write write;
    write.entries = {sample_entry(5, sample_device(2), sample_herd(2)), clashing};
    write.draft = "half a turn";
    const auto refused = store.write(write);
    REQUIRE_FALSE(refused.ok());
    CHECK(refused.faults().front().slug == "store-busy");
    CHECK(read_all(store) == std::vector<Entry>{first});
    CHECK(taken(store.draft()).empty());
  });
}

TEST_CASE("two new entries of one write with one seq are refused too") {
  for_every_store([](EmptyStore& opened) {
    const DeviceId own = sample_device(1);
    taken(opened.store->set_identity(BusinessId{sample_id("business", 1)}, own));
    Entry second = sample_entry(2, own, sample_herd(1));
    second.envelope.seq = 1;
    Write write;
    write.entries = {sample_entry(1, own, sample_herd(1)),
                     make_entry(second.envelope, second.body->bytes())};
    CHECK_FALSE(opened.store->write(write).ok());
    CHECK(read_all(*opened.store).empty());
  });
}

TEST_CASE("a second version, a repeat and a clash of other devices are facts and are kept") {
  for_every_store([](EmptyStore& opened) {
    Store& store = *opened.store;
    const DeviceId own = sample_device(1);
    taken(store.set_identity(BusinessId{sample_id("business", 1)}, own));
    const Entry mine = sample_entry(1, own, sample_herd(1));
    Entry clash = sample_entry(3, sample_device(2), sample_herd(1));
    clash.envelope.seq = 7;
    Entry other_clash = sample_entry(4, sample_device(2), sample_herd(1));
    other_clash.envelope.seq = 7;
    CHECK(written(store, {mine, mine, other_version(mine, 2),
                          make_entry(clash.envelope, clash.body->bytes()),
                          make_entry(other_clash.envelope, other_clash.body->bytes())}) ==
          std::vector<Kept>{Kept::stored, Kept::already, Kept::two_versions, Kept::stored,
                            Kept::stored});
  });
}

TEST_CASE("entries of the own device that come back from elsewhere are kept whatever their seq") {
  for_every_store([](EmptyStore& opened) {
    Store& store = *opened.store;
    const DeviceId own = sample_device(1);
    taken(store.set_identity(BusinessId{sample_id("business", 1)}, own));
    const Entry before = sample_entry(1, own, sample_herd(1));
    written(store, {before});
    Envelope envelope = sample_envelope(2, own, sample_herd(1));
    envelope.seq = 1;
    const Entry lost = entry_of(envelope, CowLeft{sample_cow(1), Day{20'000}, "", {}});
    Write back;
    back.arrived = true;
    back.entries = {before};
    CHECK(taken(store.write(back)) == std::vector<Kept>{Kept::already});
    CHECK_FALSE(taken(store.identity()).copied);
    CHECK_FALSE(taken(store.needs_rebuild()));
    back.entries = {before, lost};
    CHECK(taken(store.write(back)) == std::vector<Kept>{Kept::already, Kept::stored});
    CHECK(taken(store.identity()).copied);
    CHECK(flaws_of(read_all(store)).size() == 1);
  });
}

TEST_CASE("rows are missing from the arrival of new entries until they were made") {
  for_every_store([](EmptyStore& opened) {
    Store& store = *opened.store;
    Write arrived;
    arrived.arrived = true;
    arrived.entries = {sample_entry(1, sample_device(2), sample_herd(1))};
    taken(store.write(arrived));
    CHECK(taken(store.needs_rebuild()));
    taken(store.rebuilt());
    taken(store.write(arrived));
    CHECK_FALSE(taken(store.needs_rebuild()));
  });
}

TEST_CASE("a redact entry takes the body away, whichever comes first") {
  const Entry target = sample_entry(1, sample_device(1), sample_herd(1));
  const Entry redact = sample_redact(2, sample_device(1), target);
  for_every_store([&](EmptyStore& opened) {
    written(*opened.store, {target, redact});
    CHECK(read_all(*opened.store) == std::vector<Entry>{without_body(target), redact});
    CHECK(written(*opened.store, {target}) == std::vector<Kept>{Kept::already});
    CHECK(read_all(*opened.store) == std::vector<Entry>{without_body(target), redact});
  });
  for_every_store([&](EmptyStore& opened) {
    written(*opened.store, {redact});
    CHECK(written(*opened.store, {target}) == std::vector<Kept>{Kept::stored});
    CHECK(read_all(*opened.store) == std::vector<Entry>{without_body(target), redact});
  });
}

TEST_CASE("a store belongs to a business and a device once it was told") {
  for_every_store([](EmptyStore& opened) {
    CHECK(taken(opened.store->identity()).business.is_nil());
    CHECK_FALSE(taken(opened.store->identity()).copied);
    const BusinessId business{sample_id("business", 1)};
    taken(opened.store->set_identity(business, sample_device(3)));
    CHECK(taken(opened.store->identity()).business == business);
    CHECK(taken(opened.store->identity()).device == sample_device(3));
    CHECK_FALSE(taken(opened.store->identity()).copied);
  });
}

TEST_CASE("a draft stays until another write changes or clears it") {
  for_every_store([](EmptyStore& opened) {
    Store& store = *opened.store;
    CHECK(taken(store.draft()).empty());
    Write write;
    write.draft = "412 lame LH\nLH outside";
    taken(store.write(write));
    taken(store.write({}));
    CHECK(taken(store.draft()) == "412 lame LH\nLH outside");
    write.draft = "413";
    taken(store.write(write));
    CHECK(taken(store.draft()) == "413");
    write.draft = "";
    taken(store.write(write));
    CHECK(taken(store.draft()).empty());
  });
}
