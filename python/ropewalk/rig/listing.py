"""A resolved rig as text: a table for people, JSON for programs, and one rig file of it all."""

from __future__ import annotations

import datetime
import json
from collections.abc import Iterator, Mapping, Sequence
from importlib.resources import files
from typing import Any, Literal

from ropewalk._plain import CONTROL, plain
from ropewalk._version import __version__
from ropewalk.rig.entries import Entry, entries, tables
from ropewalk.rig.file import Reading
from ropewalk.rig.problems import KeyPath, key_text
from ropewalk.rig.resolved import Resolved, resolved
from ropewalk.rig.sections import RigFile

__all__ = ["LAYOUT", "Format", "by_table", "listing_schema", "listing_text", "si_text"]

Format = Literal["table", "json", "toml"]

#: Version of the layout of the JSON.
LAYOUT = 1
#: Values longer than this push no column aside.
_WIDEST = 44


def listing_text(reading: Reading[RigFile], form: Format = "table") -> str:
    """Return every value of a rig file with where it comes from.

    Parameters
    ----------
    reading
        From `read`.
    form
        ``"table"``; ``"json"``, laid out as ``rig-listing.schema.json`` says; or ``"toml"``, a rig
        file that includes nothing, needs no units and gives the same rig.

    Examples
    --------
    >>> import ropewalk as rw
    >>> from ropewalk.rig.listing import listing_text
    >>> reading = rw.rig.read(rw.rig.example("heavy-casing"))
    >>> next(line for line in listing_text(reading, "toml").splitlines() if "lines" in line)
    'lines = 12 # heavy-casing.toml:13'
    """
    return {"table": _table, "json": _json, "toml": _toml}[form](reading)


def listing_schema() -> dict[str, Any]:
    """Return the JSON Schema (draft 2020-12) of the JSON.

    Examples
    --------
    >>> from ropewalk.rig.listing import listing_schema
    >>> listing_schema()["properties"]["layout"]["const"]
    1
    """
    text = (files("ropewalk") / "data" / "rig-listing.schema.json").read_text(encoding="utf-8")
    found: dict[str, Any] = json.loads(text)
    return found


def by_table(values: Sequence[Resolved]) -> dict[str, list[tuple[str, Resolved]]]:
    """Values by the table they stand in, ``""`` for the top: key inside the table, value.

    >>> from ropewalk.rig.origins import Origin
    >>> values = [Resolved("life.reference.cycles", 4e5, "4e5", "", Origin("file", "rig.toml", 3))]
    >>> [(table, rows[0][0]) for table, rows in by_table(values).items()]
    [('life', 'reference.cycles')]
    """
    found: dict[str, list[tuple[str, Resolved]]] = {}
    for one in values:
        head, dot, rest = one.key.partition(".")
        found.setdefault(head if dot else "", []).append((rest if dot else head, one))
    return found


def _table(reading: Reading[RigFile]) -> str:
    lines = [f"note: {plain(note)}" for note in reading.notes]
    for table, rows in by_table(resolved(reading)).items():
        lines += ["", f"[{plain(table)}]"] if table else [""] * bool(lines)
        cells = [
            (plain(key), plain(one.text), si_text(one), plain(one.origin)) for key, one in rows
        ]
        widths = [
            max((len(row[i]) for row in cells if len(row[i]) <= _WIDEST), default=0)
            for i in range(3)
        ]
        for row in cells:
            padded = [cell.ljust(width) for cell, width in zip(row[:3], widths, strict=True)]
            lines.append("  ".join([*(one for one in padded if one), row[3]]))
    return "\n".join(lines) + "\n"


def si_text(one: Resolved) -> str:
    """SI number of a quantity, to stand beside what is written; empty for all others.

    >>> from ropewalk.rig.origins import Origin
    >>> si_text(Resolved("rope.diameter", 0.034925, "1.375 in", "m", Origin("file", "rig.toml", 9)))
    '= 0.034925 m'
    """
    if not one.unit:
        return ""
    unit = one.unit.replace("**2", "²").replace("**3", "³").replace("*", "·")
    values = one.value if isinstance(one.value, tuple) else (one.value,)
    numbers = ", ".join(f"{value:.6g}" for value in values)
    return f"= [{numbers}] {unit}" if isinstance(one.value, tuple) else f"= {numbers} {unit}"


def _json(reading: Reading[RigFile]) -> str:
    data = {
        "ropewalk": __version__,
        "layout": LAYOUT,
        "file": reading.layers[-1].name,
        "notes": list(reading.notes),
        "values": [
            {
                "key": one.key,
                "value": _plain_value(one.value),
                "unit": one.unit or None,
                "text": one.text,
                "origin": {
                    "kind": one.origin.kind,
                    "file": one.origin.file or None,
                    "line": one.origin.line or None,
                    "source": one.origin.source or None,
                    "standing": one.origin.standing or None,
                },
            }
            for one in resolved(reading)
        ],
    }
    return json.dumps(data, indent=2, allow_nan=False) + "\n"


def _plain_value(value: Any) -> Any:
    if isinstance(value, tuple):
        return [_plain_value(one) for one in value]
    return value.isoformat() if isinstance(value, datetime.date) else value


def _toml(reading: Reading[RigFile]) -> str:
    root: dict[int | str, Any] = {}
    for path in tables(reading.file):
        _branch(root, path)
    for one in entries(reading.file, reading.layers):
        if one.path[0] not in ("include", "units"):
            _branch(root, one.path[:-1])[one.path[-1]] = one
    lines = [f"# {plain(note)}" for note in reading.notes]
    lines += _toml_table(root, ())
    return "\n".join(lines) + "\n"


def _branch(root: dict[int | str, Any], path: KeyPath) -> dict[int | str, Any]:
    """Table of a place in the tree, made where there is none; lists have numbers as keys."""
    for part in path:
        root = root.setdefault(part, {})
    return root


def _toml_table(table: Mapping[int | str, Any], path: KeyPath) -> Iterator[str]:
    """Lines of a table: its values first, as TOML wants it, then the tables inside."""
    for key, one in table.items():
        if isinstance(one, Entry):
            value = one.written if one.role or one.origin.kind != "default" else one.value
            yield f"{_toml_key((key,))} = {_toml_value(value)} # {plain(one.origin)}"
    for key, inner in table.items():
        if isinstance(inner, Entry):
            continue
        here = (*path, key)
        if inner and all(isinstance(one, int) for one in inner):
            for number, entry in inner.items():
                yield from ("", f"[[{_toml_key(here)}]]")
                yield from _toml_table(entry, (*here, number))
        else:
            yield from ("", f"[{_toml_key(here)}]")
            yield from _toml_table(inner, here)


def _toml_key(path: KeyPath) -> str:
    names = [part for part in path if isinstance(part, str)]
    bare = (name if key_text((name,)) == name else _quoted(name) for name in names)
    return ".".join(bare)


def _toml_value(value: Any) -> str:
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, str):
        return _quoted(value)
    if isinstance(value, (list, tuple)):
        return f"[{', '.join(_toml_value(one) for one in value)}]"
    return value.isoformat() if isinstance(value, datetime.date) else repr(value)


def _quoted(text: str) -> str:
    """Text between quotes, nothing in it that a terminal obeys: escapes of JSON are TOML's too."""
    return CONTROL.sub(lambda one: f"\\u{ord(one[0]):04x}", json.dumps(text, ensure_ascii=False))
