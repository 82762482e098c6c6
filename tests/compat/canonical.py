"""Canonical JSON and ids, by docs/format/log.md alone: nothing here looks into the C++ sources."""

import hashlib
import json
import re

LARGEST = 2**53 - 1
DEEPEST = 64
_SHORT = {'"': '\\"', "\\": "\\\\", "\b": "\\b", "\t": "\\t", "\n": "\\n", "\f": "\\f",
          "\r": "\\r"}
_UUID = re.compile(r"[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}")


class Refused(Exception):
    """A line that is no entry; the words say why."""


def _whole_number(digits):
    value = int(digits)
    if abs(value) > LARGEST:
        raise Refused("a whole number is too large")
    return value


def _no_number(text):
    raise Refused(f"{text} is no whole number")


def _members(pairs):
    if len({name for name, _ in pairs}) < len(pairs):
        raise Refused("a name stands twice in one object")
    return dict(pairs)


def depth(value):
    if isinstance(value, dict):
        return 1 + max(map(depth, value.values()), default=0)
    if isinstance(value, list):
        return 1 + max(map(depth, value), default=0)
    return 0


def read(text):
    """The value of one JSON text (bytes), by the restricted rules."""
    try:
        value = json.loads(text.decode("utf-8"), object_pairs_hook=_members,
                           parse_int=_whole_number, parse_float=_no_number,
                           parse_constant=_no_number)
    except (ValueError, RecursionError) as fault:
        raise Refused(str(fault)) from fault
    if depth(value) > DEEPEST:
        raise Refused("nested too deeply")
    return value


def _string(text):
    return '"' + "".join(_SHORT.get(c) or (f"\\u{ord(c):04x}" if c < " " else c)
                         for c in text) + '"'


def _text(value):
    if value is None or isinstance(value, bool):
        return {None: "null", True: "true", False: "false"}[value]
    if isinstance(value, int):
        return str(value)
    if isinstance(value, str):
        return _string(value)
    if isinstance(value, list):
        return "[" + ",".join(map(_text, value)) + "]"
    ordered = sorted(value.items(), key=lambda member: member[0].encode("utf-16-be", "replace"))
    return "{" + ",".join(f"{_string(name)}:{_text(held)}" for name, held in ordered) + "}"


def canonical(value):
    """The canonical bytes of a value."""
    try:
        return _text(value).encode("utf-8")
    except UnicodeEncodeError as fault:
        raise Refused("a lone surrogate") from fault


def holds_null(value):
    if isinstance(value, dict):
        return any(map(holds_null, value.values()))
    if isinstance(value, list):
        return any(map(holds_null, value))
    return value is None


def sha256(data):
    return hashlib.sha256(data).hexdigest()


def is_uuid(text):
    return isinstance(text, str) and _UUID.fullmatch(text) is not None


def derived_id(*fields):
    """Version 8 from the first 16 bytes of SHA-256 over the fields, parted by line feeds."""
    raw = bytearray(hashlib.sha256("\n".join(fields).encode()).digest()[:16])
    raw[6] = raw[6] & 0x0F | 0x80
    raw[8] = raw[8] & 0x3F | 0x80
    text = raw.hex()
    return "-".join((text[:8], text[8:12], text[12:16], text[16:20], text[20:]))
