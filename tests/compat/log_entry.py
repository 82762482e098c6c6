"""One line of an exported log: what makes it an entry, and what its envelope and body say."""

import datetime
import re
from pathlib import Path

import canonical
from canonical import Refused

NIL = "00000000-0000-0000-0000-000000000000"
NEEDED = {"at", "body_sha256", "business", "device", "id", "kind", "order", "scope", "seq",
          "signature", "version"}
ALLOWED = NEEDED | {"caller", "subjects", "supersedes", "writer"}
DICTIONARY = Path(__file__).resolve().parents[2] / "docs/format/data-dictionary.md"
# The version in which each kind of body is described, and so the newest this reader can read.
KINDS = {kind: int(version) for kind, version in re.findall(
    r"^### (\w+), version (\d+)$", DICTIONARY.read_text(encoding="utf-8"), re.MULTILINE)}
_AT = re.compile(r"(\d{4}-\d\d-\d\d)T([01]\d|2[0-3]):[0-5]\d:[0-5]\d\.\d{3}"
                 r"([+-])([01]\d|2[0-3]):([0-5]\d)", re.ASCII)
_KIND = re.compile(r"[a-z][a-z0-9_]{0,63}")
_SHA256 = re.compile(r"[0-9a-f]{64}")


def is_instant(text):
    match = _AT.fullmatch(text) if isinstance(text, str) else None
    if match is None or match.group(3, 4, 5) == ("-", "00", "00"):
        return False
    try:
        datetime.date.fromisoformat(match.group(1))
    except ValueError:
        return False
    return True


def is_count(value, most=canonical.LARGEST):
    return type(value) is int and 1 <= value <= most


def is_sorted_once(subjects):
    return (isinstance(subjects, list) and len(subjects) > 0
            and all(map(canonical.is_uuid, subjects)) and subjects == sorted(set(subjects)))


def _matches(pattern):
    return lambda text: isinstance(text, str) and pattern.fullmatch(text) is not None


def _is_set_uuid(text):
    return canonical.is_uuid(text) and text != NIL


CHECKS = {
    "at": is_instant, "body_sha256": _matches(_SHA256), "business": canonical.is_uuid,
    "caller": canonical.is_uuid, "device": _is_set_uuid, "id": _is_set_uuid,
    "kind": _matches(_KIND), "order": is_count, "scope": _is_set_uuid, "seq": is_count,
    "signature": lambda text: isinstance(text, str), "subjects": is_sorted_once,
    "supersedes": canonical.is_uuid, "version": lambda value: is_count(value, 2**31 - 1),
    "writer": canonical.is_uuid}


class Entry:
    """One entry: the members of its envelope, and its body, None when redacted."""

    def __init__(self, line):
        value = canonical.read(line)
        if not isinstance(value, dict) or not {"envelope"} <= value.keys() <= {"body", "envelope"}:
            raise Refused("a line holds an envelope and at most a body")
        self.envelope, self.body = value["envelope"], value.get("body")
        self._check_envelope()
        self.scope, self.id, self.device, self.kind = map(
            self.envelope.get, ("scope", "id", "device", "kind"))
        self.seq, self.order, self.version = map(self.envelope.get, ("seq", "order", "version"))
        self.supersedes = self.envelope.get("supersedes")
        self.subjects = self.envelope.get("subjects", [])
        if canonical.canonical(value) != line:
            raise Refused("not in canonical form")
        if "body" in value:
            self._check_body()
        self.digest = canonical.sha256(canonical.canonical(self.envelope))

    def _check_envelope(self):
        if not isinstance(self.envelope, dict):
            raise Refused("the envelope is no object")
        if not NEEDED <= self.envelope.keys() <= ALLOWED:
            raise Refused("members of the envelope are missing or unknown")
        for name, value in self.envelope.items():
            if not CHECKS[name](value):
                raise Refused(f"{name} is not what it must be")

    def _check_body(self):
        if not isinstance(self.body, dict) or canonical.holds_null(self.body):
            raise Refused("the body is no object, or holds null")
        if canonical.sha256(canonical.canonical(self.body)) != self.envelope["body_sha256"]:
            raise Refused("the body does not fit its digest")

    def key(self):
        return self.scope, self.id, self.digest

    def place(self):
        """The total order, scope by scope."""
        return self.scope, self.order, self.device, self.seq, self.id, self.digest

    def readable(self):
        """Whether this reader knows the kind in this version."""
        if self.body is None:
            return "redacted"
        if self.kind not in KINDS:
            return "unknown_kind"
        return "yes" if self.version <= KINDS[self.kind] else "newer_version"

    def body_id(self, name):
        value = self.body.get(name) if self.readable() == "yes" else None
        return value if canonical.is_uuid(value) else None

    def redacts(self):
        return self.body_id("target") if self.kind == "redact" else None

    def about(self):
        named = self.body_id("cow") or self.body_id("visit")
        return [named] if named else self.subjects
