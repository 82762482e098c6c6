"""Union of logs: what is kept and shown, which entries count, and what a log has to be told of."""

from log_entry import NIL, Entry

LARGEST_JUMP = 1_000_000


def merged(entries):
    """The union: every version once, without the bodies that redact entries take away."""
    taken = {(e.scope, e.redacts()) for e in entries if e.redacts()}
    kept = {}
    for entry in entries:
        if entry.kind == "redact":
            if entry.key() not in kept or kept[entry.key()].body is None:
                kept[entry.key()] = entry
            continue
        if (entry.scope, entry.id) in taken:
            entry.body = None
        if entry.key() not in kept or entry.body is None:
            kept[entry.key()] = entry
    return sorted(kept.values(), key=Entry.place), taken


def shown_of(everything):
    lowest = {}
    for entry in sorted(everything, key=lambda e: e.digest):
        lowest.setdefault((entry.scope, entry.id), entry)
    return sorted(lowest.values(), key=Entry.place)


def in_two_versions(everything):
    seen = [(e.scope, e.id) for e in everything]
    return sorted({entry_id for scope, entry_id in seen if seen.count((scope, entry_id)) > 1})


def corrections(shown, taken):
    """(what each corrects, those in a ring, those that do not fit), by (scope, id)."""
    by_id = {(e.scope, e.id): e for e in shown}
    target, not_fitting = {}, []
    for own, entry in by_id.items():
        wrong = by_id.get((entry.scope, entry.supersedes))
        if wrong is None:
            continue
        is_taken = (wrong.scope, wrong.id) in taken
        about = wrong.subjects if is_taken else wrong.about()
        if wrong.kind == entry.kind and set(about) <= set(entry.subjects):
            target[own] = (wrong.scope, wrong.id)
        else:
            not_fitting.append(own)
    ring = [own for own in target if own in chain_from(own, target)]
    for own in ring:
        del target[own]
    return target, ring, not_fitting


def chain_from(own, target):
    """What `own` corrects, what that corrects, and so on, each once."""
    chain = []
    while own in target and target[own] not in chain:
        own = target[own]
        chain.append(own)
    return chain


def counting_of(shown, taken):
    target, _, _ = corrections(shown, taken)
    corrected = set(target.values())
    last_of_family = {}
    for entry in shown:  # in the total order, so the last one stays
        own = (entry.scope, entry.id)
        if own not in corrected:
            last_of_family[(chain_from(own, target) or [own])[-1]] = entry
    return sorted((e for e in last_of_family.values() if e.body is not None), key=Entry.place)


def counting_flaws(everything):
    flaws, before = [], None
    for entry in sorted(everything, key=lambda e: (e.scope, e.device, e.seq, e.id)):
        same = before is not None and (before.scope, before.device) == (entry.scope, entry.device)
        last = before.seq if same else 0
        if entry.seq > last + 1:
            flaws.append(("gap", entry.scope, entry.device, last + 1, NIL))
        if same and entry.seq == last and entry.id != before.id:
            flaws.append(("seq_used_twice", entry.scope, entry.device, entry.seq, entry.id))
        before = entry
    return flaws


def order_flaws(everything):
    """(flaws, the highest believed order of each scope)."""
    flaws, believed = [], {}
    for entry in sorted(everything, key=Entry.place):
        if entry.order - believed.get(entry.scope, 0) > LARGEST_JUMP:
            flaws.append(("order_jump", entry.scope, entry.device, entry.seq, entry.id))
        else:
            believed[entry.scope] = entry.order
    return flaws, believed


def flaws_of(everything, shown, taken):
    _, ring, not_fitting = corrections(shown, taken)
    by_id = {(e.scope, e.id): e for e in shown}
    flaws = counting_flaws(everything) + order_flaws(everything)[0]
    for kind, found in (("supersedes_cycle", ring), ("supersedes_other_kind", not_fitting)):
        for entry in map(by_id.get, found):
            flaws.append((kind, entry.scope, entry.device, entry.seq, entry.id))
    return flaws


def groups_of(counting):
    """Cows that are one, in one scope: each group sorted, so that its first stands for all."""
    back = {(e.scope, e.body_id("same_cow")) for e in counting if e.kind == "same_cow_taken_back"}
    groups = []
    for entry in counting:
        pair = {entry.body_id("first"), entry.body_id("second")}
        if entry.kind != "same_cow" or (entry.scope, entry.id) in back:
            continue
        if None in pair or not pair <= set(entry.subjects):
            continue
        pair = {(entry.scope, cow) for cow in pair}
        touched = [group for group in groups if group & pair]
        groups = [group for group in groups if not group & pair] + [pair.union(*touched)]
    return sorted(sorted(cow for _, cow in group) for group in groups if len(group) > 1)
