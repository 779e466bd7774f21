"""Rig files made of several: ``include``, resolved before anything is checked.

Nothing outside the folder of the first file is ever opened, and nothing that is no plain file.
"""

from __future__ import annotations

import os
import re
import stat
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path, PurePosixPath, PureWindowsPath
from typing import Any

from ropewalk.rig.declared import Units, declared
from ropewalk.rig.origins import Layer
from ropewalk.rig.problems import KeyPath, Place, RigFileError, key_text, refusal, value_text
from ropewalk.rig.upgrade import upgrade

#: A rig is a few pages of text, all its files together; anything larger is a mistake.
LARGEST_FILE = 500_000
DEEPEST_INCLUDE = 8
MOST_FILES = 32
MOST_VALUES = 30_000
LONGEST_STRING = 4000
#: Tables and lists in each other, and keys with dots between.
DEEPEST_TABLE = 16

# TOML readers take the square of the number of dots to read a key.
_LONG_KEY = re.compile(
    r"""(?<![A-Za-z0-9_-])(?:(?:[A-Za-z0-9_-]++|"[^"\n]*+"|'[^'\n]*+')[ \t]*+\.[ \t]*+){17}"""
)
# A terminal would obey them where a message shows the text.
_CONTROL = re.compile(r"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f]")
_TOML_LINE = re.compile(r"\(at line (\d+), column \d+\)")


@dataclass(frozen=True)
class Files:
    """What was read: files from the first to be overruled to the one that overrules all.

    `units` has what each file declares, in the same order.
    """

    layers: list[Layer]
    units: list[Units | None]
    notes: list[str]


def merge(below: dict[str, Any], above: Mapping[str, Any]) -> None:
    """Lay `above` over `below`: tables are merged, lists and values replaced."""
    for key, value in above.items():
        if isinstance(value, dict):
            under = below.get(key)
            table = dict(under) if isinstance(under, dict) else {}
            merge(table, value)
            below[key] = table
        else:
            below[key] = value


def read_files(path: str | Path) -> Files:
    """Read a rig file and all it includes.

    Raises
    ------
    RigFileError
        If a file cannot be read or is no TOML, its layout is unknown, or an include is refused.
    """
    top = Path(path)
    try:
        real = top.resolve()
    except (OSError, ValueError, RuntimeError) as error:
        raise RigFileError(f"{_shown(str(path))}: cannot be read: {error}") from None
    reader = _Reader(real.parent)
    reader.read((real,), (_shown(top.name),), None, str(path))
    return Files(reader.layers, reader.units, reader.notes)


@dataclass
class _Reader:
    root: Path
    layers: list[Layer] = field(default_factory=list)
    units: list[Units | None] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    files: int = 0
    bytes: int = 0

    def read(
        self,
        trail: tuple[Path, ...],
        chain: tuple[str, ...],
        layout: int | None,
        shown: str = "",
    ) -> None:
        """Read the last file of `trail`: first what it includes, then itself."""
        path, name = trail[-1], chain[-1]
        whole = self._text(path, chain, shown or " > ".join(chain))
        # Some editors put a byte order mark before the text; it means nothing in UTF-8.
        text = whole.removeprefix("\ufeff")
        data = parse_toml(text, name)
        today, notes, renamed = upgrade(data, name, layout=layout, text=text)
        layer = Layer(name, text, today, len(chain) > 1, renamed, len(whole) > len(text))
        units, wrong = declared(today.get("units"))
        if wrong:
            raise refusal(
                name, [(Place(name, layer.line(place), key_text(place)), w) for place, w in wrong]
            )
        for place, included in _included(today.get("include"), layer):
            if len(chain) > DEEPEST_INCLUDE:
                reason = f"more than {DEEPEST_INCLUDE} files deep"
                raise _refused(layer, place, included, reason, chain)
            inner = self._resolved(path, included, layer, place, chain)
            inner_name = _shown(inner.relative_to(self.root).as_posix())
            if inner in trail:
                raise _refused(layer, place, included, "includes itself", (*chain, inner_name))
            self.files += 1
            if self.files >= MOST_FILES:
                reason = f"more than {MOST_FILES} files"
                raise _refused(layer, place, included, reason, chain)
            self.read((*trail, inner), (*chain, inner_name), data.get("ropewalk", layout))
        self.layers.append(layer)
        self.units.append(units)
        self.notes.extend(notes)

    def _resolved(
        self, path: Path, included: str, layer: Layer, place: KeyPath, chain: tuple[str, ...]
    ) -> Path:
        for kind in (PurePosixPath(included), PureWindowsPath(included)):
            if kind.is_absolute() or kind.drive or kind.root:
                raise _refused(layer, place, included, "an absolute path", chain)
            if ".." in kind.parts:
                raise _refused(layer, place, included, "leads out of its folder by ..", chain)
        if not included.strip() or not included.isprintable() or "\\" in included:
            raise _refused(layer, place, included, "not a file name with / between", chain)
        try:
            inner = (path.parent / included).resolve(strict=True)
        except (OSError, ValueError, RuntimeError) as error:
            reason = getattr(error, "strerror", None) or str(error)
            raise _refused(layer, place, included, f"cannot be read: {reason}", chain) from None
        if not inner.is_relative_to(self.root):
            text = "a link that leads out of the folder of the first file"
            raise _refused(layer, place, included, text, chain)
        return inner

    def _text(self, path: Path, chain: tuple[str, ...], shown: str) -> str:
        """Text of a plain file, of which no more is read than allowed."""
        shown = _shown(shown)
        try:
            # Asked before it is opened: opening a pipe waits for whoever writes into it.
            status = path.lstat()
            if not stat.S_ISREG(status.st_mode):
                raise RigFileError(f"{shown}: cannot be read: not a plain file", chain[0])
            left = LARGEST_FILE - self.bytes
            if status.st_size > left:
                together = " together with the files before it" if self.bytes else ""
                raise RigFileError(
                    f"{shown}: larger than {LARGEST_FILE} bytes{together}, not a rig file", chain[0]
                )
            flags = os.O_RDONLY | getattr(os, "O_NOFOLLOW", 0) | getattr(os, "O_NONBLOCK", 0)
            with os.fdopen(os.open(path, flags | getattr(os, "O_BINARY", 0)), "rb") as file:
                content = file.read(left + 1)
        except OSError as error:
            raise RigFileError(f"{shown}: cannot be read: {error.strerror}", chain[0]) from error
        if len(content) > left:
            raise RigFileError(f"{shown}: larger than {LARGEST_FILE} bytes, not a rig file")
        self.bytes += len(content)
        try:
            return content.decode("utf-8")
        except UnicodeDecodeError as error:
            raise RigFileError(f"{shown}: not UTF-8 text at byte {error.start}") from None


def parse_toml(text: str, name: str) -> dict[str, Any]:
    """Data of TOML text; refuses what is no rig file before it costs time."""
    if match := _LONG_KEY.search(text):
        line = text.count("\n", 0, match.start()) + 1
        raise refusal(name, [(Place(name, line, ""), _TOO_DEEP)])
    try:
        data = tomllib.loads(text)
    except RecursionError:
        raise refusal(name, [(Place(name, 0, ""), _TOO_DEEP)]) from None
    except ValueError as error:
        found = _TOML_LINE.search(str(error))
        # Without a line the text is wrong at its end.
        place = Place(name, int(found[1]) if found else text.count("\n") + 1, "")
        raise RigFileError(f"{place}: not valid TOML: {error}", name, "", [place]) from None
    check_plain(data, name, text)
    return data


_TOO_DEEP = f"nested too deeply, more than {DEEPEST_TABLE} tables and lists in each other"


def check_plain(data: dict[str, Any], name: str, text: str = "") -> None:
    """Refuse what no rig file has: depth, numbers beyond 64 bits, endless or unprintable text."""
    stack: list[tuple[Any, int]] = [(data, 1)]
    values = 0
    while stack:
        table, depth = stack.pop()
        values += len(table)
        if values > MOST_VALUES:
            raise refusal(name, [(Place(name, 0, ""), f"more than {MOST_VALUES} values")])
        for value in table.values() if isinstance(table, dict) else table:
            if isinstance(value, (dict, list)):
                if depth == DEEPEST_TABLE:
                    raise refusal(name, [(Place(name, 0, ""), _TOO_DEEP)])
                stack.append((value, depth + 1))
            elif isinstance(value, (int, str)) and (problem := _unplain(value)):
                place = Layer(name, text, data).place(_path_of(value, data, ()))
                raise refusal(name, [(place, problem)])


def _unplain(value: int | str) -> str:
    if isinstance(value, int):
        return "" if -(2**63) <= value < 2**63 else "a whole number beyond 64 bits"
    if len(value) > LONGEST_STRING:
        return f"text of more than {LONGEST_STRING} characters"
    return "text with control characters" if _CONTROL.search(value) else ""


def _path_of(wanted: Any, table: Any, path: KeyPath) -> KeyPath:
    """Place of a value, which is there, in data that is not too deep."""
    for key, value in table.items() if isinstance(table, dict) else enumerate(table):
        if value is wanted:
            return (*path, key)
        if isinstance(value, (dict, list)) and (found := _path_of(wanted, value, (*path, key))):
            return found
    return ()


def _included(value: Any, layer: Layer) -> list[tuple[KeyPath, str]]:
    if value is None:
        return []
    if isinstance(value, str):
        return [(("include",), value)]
    if isinstance(value, list) and all(isinstance(one, str) for one in value):
        return [(("include", i), one) for i, one in enumerate(value)]
    place = Place(layer.name, layer.line(("include",)), "include")
    text = f"must be a file name or a list of file names, got {value_text(value)}"
    raise refusal(layer.name, [(place, text)])


def _refused(
    layer: Layer, place: KeyPath, included: str, reason: str, chain: tuple[str, ...]
) -> RigFileError:
    where = Place(layer.name, layer.line(place), key_text(place))
    path = " > ".join(_shown(one) for one in chain)
    return refusal(chain[0], [(where, f"{value_text(included)}: {reason} ({path})")])


def _shown(name: str) -> str:
    short = name if len(name) <= 300 else f"{name[:300]}…"
    return short if short.isprintable() else repr(short)
