"""Where the values of a rig file come from: the file and line, or a default and its source.

TOML readers do not say on which line a key stands. `locate` walks over text that one of them has
accepted, and only looks for keys.
"""

from __future__ import annotations

import re
import tomllib
from bisect import bisect_right
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any, Literal

from ropewalk.rig.problems import KeyPath, Place, key_text

_SPACE = re.compile(r"(?:[ \t\r\n]|#[^\n]*)*+")
_DOT = re.compile(r"[ \t]*\.[ \t]*")
_EQUALS = re.compile(r"[ \t]*=[ \t]*")
_KEY = re.compile(r"""[A-Za-z0-9_-]++|"(?:[^"\\\n]|\\.)*+"|'[^'\n]*+'""")
_STRING = re.compile(
    r'''"""(?:[^\\]|\\.)*?"""(?!"{3})"{0,2}|\'\'\'.*?\'\'\'\'{0,2}'''
    r"""|"(?:[^"\\\n]|\\.)*+"|'[^'\n]*+'""",
    re.DOTALL,
)
_PLAIN = re.compile(r"[^,\]}#\n]++")


@dataclass(frozen=True, slots=True)
class Origin:
    """Where one value of a rig file comes from.

    Attributes
    ----------
    kind
        ``"file"``, ``"include"`` for a file it includes, or ``"default"``.
    file, line
        File name and line; ``""`` and 0 for a default.
    source, standing
        Of a default, as in `RigParameter`.
    """

    kind: Literal["file", "include", "default"]
    file: str = ""
    line: int = 0
    source: str = ""
    standing: str = ""

    def __str__(self) -> str:
        if self.kind == "default":
            return f"default, {self.standing}: {self.source}"
        return f"{self.file}:{self.line}" + (", included" if self.kind == "include" else "")


@dataclass(frozen=True)
class Layer:
    """One file of those a rig is made of.

    `renamed` has what an older layout called otherwise: place in `data` → place in `text`.
    `marked` is true if a byte order mark stands before the text.
    """

    name: str
    text: str
    data: Mapping[str, Any]
    included: bool = False
    renamed: Mapping[KeyPath, KeyPath] = field(default_factory=dict)
    marked: bool = False

    @property
    def content(self) -> bytes:
        """The file, byte by byte, as it was when it was read."""
        return (f"\ufeff{self.text}" if self.marked else self.text).encode("utf-8")

    @cached_property
    def lines(self) -> dict[KeyPath, int]:
        """Line of every key and entry, from 1."""
        return locate(self.text) if self.text else {}

    def written(self, path: KeyPath) -> KeyPath:
        """Place as the file itself has it."""
        for new, old in self.renamed.items():
            if path[: len(new)] == new:
                return old + path[len(new) :]
        return path

    def line(self, path: KeyPath) -> int:
        """Line of a place, or of the table it belongs to; 0 if there is none."""
        lines = self.lines
        for end in range(len(path), 0, -1):
            if (found := lines.get(path[:end])) is not None:
                return found
        return 1 if self.text else 0

    def place(self, path: KeyPath) -> Place:
        """File, line and key of a place of `data`."""
        written = self.written(path)
        return Place(self.name, self.line(written), key_text(written))


def layer_of(path: KeyPath, layers: Sequence[Layer]) -> Layer:
    """File a place of the merged data comes from; the last of `layers` wins over those before."""
    candidates: list[tuple[Layer, Any]] = [(one, one.data) for one in reversed(layers)]
    for part in path:
        inside: list[tuple[Layer, Any]] = []
        for layer, data in candidates:
            if isinstance(part, int):
                if isinstance(data, list) and part < len(data):
                    inside.append((layer, data[part]))
            elif isinstance(data, Mapping) and part in data:
                inside.append((layer, data[part]))
        if not inside:
            break
        # Tables are merged; a list or value is wholly that of the last file.
        if not isinstance(inside[0][1], Mapping):
            inside = inside[:1]
        candidates = inside
    return candidates[0][0]


def place_of(path: KeyPath, layers: Sequence[Layer]) -> Place:
    """File, line and key of a place of the merged data."""
    return layer_of(path, layers).place(path)


def locate(text: str) -> dict[KeyPath, int]:
    r"""Line of every key and every entry of a list, in text that is valid TOML.

    >>> locate('[block]\nweight = "46 kip"\n[[part]]\nname = "hook"')[("part", 0, "name")]
    4
    """
    return _Locator(text).run()


class _Locator:
    def __init__(self, text: str) -> None:
        self.text = text
        self.position = 0
        self.lines: dict[KeyPath, int] = {}
        self._ends = [match.start() for match in re.finditer("\n", text)]
        self._entries: dict[KeyPath, int] = {}

    def run(self) -> dict[KeyPath, int]:
        table: KeyPath = ()
        self._skip(_SPACE)
        while self.position < len(self.text):
            if self.text[self.position] == "[":
                table = self._header()
            else:
                self._pair(table)
            self._skip(_SPACE)
        return self.lines

    def _header(self) -> KeyPath:
        brackets = 2 if self.text.startswith("[[", self.position) else 1
        line = self._line()
        self.position += brackets
        path: KeyPath = ()
        keys = self._keys()
        for i, key in enumerate(keys):
            path = (*path, key)
            self.lines.setdefault(path, line)
            if brackets == 2 and i == len(keys) - 1:
                self._entries[path] = self._entries.get(path, -1) + 1
            if path in self._entries:
                path = (*path, self._entries[path])
                self.lines.setdefault(path, line)
        # A table may have been named before by the header of one inside it.
        self.lines[path] = line
        self.position = self.text.index("]", self.position) + brackets
        return path

    def _pair(self, table: KeyPath) -> None:
        line = self._line()
        path = table
        for key in self._keys():
            path = (*path, key)
            self.lines.setdefault(path, line)
        self._skip(_EQUALS)
        self._value(path)

    def _value(self, path: KeyPath) -> None:
        opening = self.text[self.position]
        if opening == "[":
            self._items(path, "]")
        elif opening == "{":
            self._items(path, "}")
        else:
            pattern = _STRING if opening in "\"'" else _PLAIN
            self._skip(pattern)

    def _items(self, path: KeyPath, closing: str) -> None:
        self.position += 1
        entry = 0
        self._skip(_SPACE)
        while self.text[self.position] != closing:
            if closing == "}":
                self._pair(path)
            else:
                self.lines[(*path, entry)] = self._line()
                self._value((*path, entry))
                entry += 1
            self._skip(_SPACE)
            if self.text[self.position] == ",":
                self.position += 1
                self._skip(_SPACE)
        self.position += 1

    def _keys(self) -> list[str]:
        self._skip(re.compile(r"[ \t]*"))
        keys = []
        while match := _KEY.match(self.text, self.position):
            self.position = match.end()
            keys.append(_plain_key(match.group()))
            if dot := _DOT.match(self.text, self.position):
                self.position = dot.end()
            else:
                break
        return keys

    def _skip(self, pattern: re.Pattern[str]) -> None:
        if match := pattern.match(self.text, self.position):
            self.position = match.end()

    def _line(self) -> int:
        return bisect_right(self._ends, self.position) + 1


def _plain_key(text: str) -> str:
    if text[0] == "'":
        return text[1:-1]
    if text[0] == '"':
        return next(iter(tomllib.loads(f"{text} = 0"))) if "\\" in text else text[1:-1]
    return text
