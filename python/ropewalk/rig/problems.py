"""What is wrong with a rig file: every problem with its place, file and line."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from typing import TYPE_CHECKING, Any, NamedTuple

from ropewalk.errors import RopewalkError

if TYPE_CHECKING:
    from pydantic import BaseModel

#: Where something stands inside a file: keys, and numbers of entries from 0.
KeyPath = tuple[int | str, ...]

_BARE = re.compile(r"[A-Za-z0-9_-]{1,60}")
_LONGEST = 60
#: An error lists no more.
MOST_PROBLEMS = 100


class Place(NamedTuple):
    """One place in a rig file: file name, line (0 if it is not known), key."""

    file: str
    line: int
    key: str

    def __str__(self) -> str:
        where = f"{self.file}:{self.line}" if self.line else self.file
        return f"{where}: {self.key}" if self.key else where


class RigFileError(RopewalkError, ValueError):
    """A rig file cannot be used.

    Attributes
    ----------
    problems
        One line per wrong place, ``"rig.toml:33: block.weight: missing"``.
    places
        Place of each problem, as far as it is known.
    """

    def __init__(
        self, message: str, where: str = "", field: str = "", places: Sequence[Place] = ()
    ) -> None:
        super().__init__(message, where, field)
        self.problems = tuple(message.splitlines()[1:]) or (message,)
        self.places = tuple(places)

    def __reduce__(self) -> Any:
        return type(self), (self.message, self.where, self.field, self.places)


def refusal(name: str, problems: Sequence[tuple[Place, str]], count: int = 0) -> RigFileError:
    """Error that lists problems; `count` says how many there are if not all are listed."""
    count = count or len(problems)
    lines = [f"{name}: {'1 problem' if count == 1 else f'{count} problems'}"]
    lines.extend(f"{place}: {text}" for place, text in problems)
    if count > len(problems):
        lines.append(f"{name}: and {count - len(problems)} more")
    field = problems[0][0].key
    return RigFileError("\n".join(lines), name, field, [place for place, _ in problems])


def key_text(path: KeyPath) -> str:
    """A place inside a file as people write it, ``operation[2].drag_up``; entries count from 1."""
    text = ""
    for part in path:
        if isinstance(part, int):
            text += f"[{part + 1}]"
        else:
            text += f".{part}" if _BARE.fullmatch(part) else f".{_quoted(part)}"
    return text.removeprefix(".")


def _quoted(key: str) -> str:
    text = json.dumps(key if len(key) <= _LONGEST else f"{key[:_LONGEST]}…")
    return text.replace("\x7f", "\\u007f")


def value_text(value: Any) -> str:
    """A value of the file, short."""
    if isinstance(value, (dict, list)):
        return "a table" if isinstance(value, dict) else "a list"
    if isinstance(value, str) and len(value) > _LONGEST:
        return f"text of {len(value)} characters"
    return repr(value)


@contextmanager
def named(key: str, *, of: BaseModel | None = None) -> Iterator[None]:
    """Put the key of the rig file before the message of a subject; the field of a section if given.

    The subject calls the field as the section does.
    """
    try:
        yield
    except RopewalkError as error:
        if of is not None and error.field in type(of).model_fields:
            key = f"{key}.{error.field}"
        raise RigFileError(f"{key}: {error}") from error
