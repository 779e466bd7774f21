"""Names of parameters: from ``"operation[2].drag_up"`` to the places of a rig file."""

from __future__ import annotations

import difflib
import json
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from ropewalk.errors import UnknownEntryError
from ropewalk.rig.parameters import RigParameter, Shape, parameters, shape_of
from ropewalk.rig.problems import KeyPath, key_text
from ropewalk.rig.sections import RigFile

__all__ = ["Place", "find"]

_TOKEN = re.compile(r'([A-Za-z0-9_-]+)|("(?:[^"\\]|\\.)*")|\[(\d*)\]|(\*)')
#: Entries of a list that all are meant, and tables that all are.
_ALL = "[]", "*"
_NO_VALUE = ("section", "list", "named")


@dataclass(frozen=True, slots=True)
class Place:
    """Where a value stands, and what it is."""

    path: KeyPath
    parameter: RigParameter


def find(where: str, name: str, data: Mapping[str, Any]) -> tuple[Place, ...]:
    """Places of a parameter in the data of a rig file.

    Parameters
    ----------
    where
        Function that asks.
    name
        ``"crown.sheave_diameter"``; entries of lists count from 1, ``"drawworks.gear[2].ratio"``,
        and ``[]`` is every entry that has the key, ``"operation[].drag_up"``; so is ``*`` for named
        tables.
    data
        Of the file.

    Raises
    ------
    UnknownEntryError
        If the file has no such place; the message offers the nearest.

    Examples
    --------
    >>> find("sweep", "operation[].drag_up", {"operation": [{}, {"drag_up": 0.1}]})[0].path
    ('operation', 1, 'drag_up')
    """
    search = _Search(where, name, data)
    return search.run()


@dataclass
class _Search:
    where: str
    name: str
    data: Mapping[str, Any]

    def run(self) -> tuple[Place, ...]:
        shape = Shape("section", section=RigFile)
        nodes: list[tuple[KeyPath, Any]] = [((), self.data)]
        generic = ""
        for token in self._tokens():
            if shape.section is not None:
                shape, nodes = self._key(token, shape, nodes)
                generic = f"{generic}.{token}".removeprefix(".")
            elif shape.item is not None:
                nodes = self._entries(token, shape, nodes)
                generic += "[]" if shape.kind == "list" else ".*"
                shape = shape.item
            else:
                raise self._unknown()
        if shape.kind in _NO_VALUE:
            raise self._error(f"{self.name!r} is no single value of a rig file")
        # Where all entries are meant, those that give the key.
        if any(token in _ALL for token in self._tokens()):
            nodes = [(path, value) for path, value in nodes if value is not None]
            if not nodes:
                raise self._error(f"no entry of the file has {self.name!r}")
        parameter = _by_path().get(generic)
        if parameter is None or generic.partition(".")[0] in ("ropewalk", "include", "units"):
            raise self._unknown()
        return tuple(Place(path, parameter) for path, _ in nodes)

    def _tokens(self) -> Iterator[int | str]:
        position = 0
        while position < len(self.name):
            if position and self.name[position] == ".":
                position += 1
            match = _TOKEN.match(self.name, position)
            if match is None:
                raise self._unknown()
            bare, quoted, number, every = match.groups()
            if number is not None:
                yield int(number) if number else _ALL[0]
            else:
                yield json.loads(quoted) if quoted else bare or every
            position = match.end()

    def _key(
        self, token: int | str, shape: Shape, nodes: list[tuple[KeyPath, Any]]
    ) -> tuple[Shape, list[tuple[KeyPath, Any]]]:
        assert shape.section is not None
        field = shape.section.model_fields.get(str(token))
        if field is None or isinstance(token, int):
            raise self._unknown()
        inner = shape_of(field)
        found = []
        for path, table in nodes:
            value = table.get(token) if isinstance(table, Mapping) else None
            if value is None and inner.kind in _NO_VALUE:
                # A table with a default for everything is there, though nobody wrote it.
                values = inner.item is not None and inner.item.kind not in _NO_VALUE
                if field.default_factory is None or not (inner.section or values):
                    missing = key_text((*path, token))
                    raise self._error(f"{self.name!r}: the file has no [{missing}]")
                value = {}
            found.append(((*path, token), value))
        return inner, found

    def _entries(
        self, token: int | str, shape: Shape, nodes: list[tuple[KeyPath, Any]]
    ) -> list[tuple[KeyPath, Any]]:
        found: list[tuple[KeyPath, Any]] = []
        for path, entries in nodes:
            if shape.kind == "list" and isinstance(entries, list):
                if token == _ALL[0]:
                    found.extend(((*path, i), one) for i, one in enumerate(entries))
                elif isinstance(token, int) and 1 <= token <= len(entries):
                    found.append(((*path, token - 1), entries[token - 1]))
                elif isinstance(token, int):
                    text = f"{key_text(path)} has {len(entries)} entries, counted from 1"
                    raise self._error(f"{self.name!r}: {text}")
                else:
                    text = f"{key_text(path)} is a list: write {key_text(path)}[1] for its first"
                    raise self._error(f"{self.name!r}: {text}")
            elif shape.kind == "named" and isinstance(entries, Mapping):
                if token == _ALL[1]:
                    found.extend(((*path, str(key)), one) for key, one in entries.items())
                elif token in entries or (shape.item and shape.item.kind not in _NO_VALUE):
                    found.append(((*path, str(token)), entries.get(token)))
                else:
                    known = ", ".join(map(str, entries))
                    text = f"{key_text(path)} has no {token!r}; there are: {known}"
                    raise self._error(f"{self.name!r}: {text}")
            else:
                raise self._unknown()
        return found

    def _unknown(self) -> UnknownEntryError:
        here = [one.path for one in parameters() if one.path.partition(".")[0] in self.data]
        known = list(dict.fromkeys([*_written(self.data, ()), *here]))
        close = difflib.get_close_matches(self.name[:80], known, n=3, cutoff=0.5)
        hint = f"; did you mean {' or '.join(map(repr, close))}?" if close else ""
        return self._error(f"a rig file has no parameter {self.name[:80]!r}{hint}")

    def _error(self, text: str) -> UnknownEntryError:
        return UnknownEntryError(f"{self.where}(): {text}", self.where, self.name)


@cache
def _by_path() -> dict[str, RigParameter]:
    return {one.path: one for one in parameters()}


def _written(table: Any, path: KeyPath) -> Iterator[str]:
    """Names of all values of the data."""
    pairs = table.items() if isinstance(table, Mapping) else enumerate(table)
    for key, value in pairs:
        if isinstance(value, (Mapping, list)):
            yield from _written(value, (*path, key))
        else:
            yield key_text((*path, key))
