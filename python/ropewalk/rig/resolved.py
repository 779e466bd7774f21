"""A rig file fully resolved: every value, what is written, and where it comes from."""

from __future__ import annotations

import os
from dataclasses import dataclass
from typing import Any

from ropewalk._signature import ROLES
from ropewalk.rig.entries import Entry, entries
from ropewalk.rig.file import Reading, read
from ropewalk.rig.origins import Origin
from ropewalk.rig.problems import key_text
from ropewalk.rig.sections import RigFile

__all__ = ["Resolved", "resolved"]


@dataclass(frozen=True, slots=True)
class Resolved:
    """One value of a rig.

    Attributes
    ----------
    key
        Where it stands in today's layout, ``"operation[2].drag_up"``; entries count from 1.
    value
        What is used: SI number of a quantity, else the value itself; a tuple of a list.
    text
        As it is written, ``"1.375 in"``; a bare number with the unit the file declares for it.
    unit
        SI unit of `value`; empty where it is no quantity.
    origin
        Where it comes from: file and line, included or not, or a default and its source.
    """

    key: str
    value: Any
    text: str
    unit: str
    origin: Origin


def resolved(source: str | os.PathLike[str] | Reading[RigFile]) -> tuple[Resolved, ...]:
    """Every value of a rig file and of what it includes, and where each comes from.

    Includes and units are resolved, defaults filled in; what is left out and has no default is not
    there.

    Parameters
    ----------
    source
        A rig file, or what `read` gave for it.

    Returns
    -------
    tuple of Resolved
        In the order of the tables.

    Raises
    ------
    RigFileError
        If the file cannot be used, as by `read`. Whether its parts go together is not asked here.

    Examples
    --------
    >>> import ropewalk as rw
    >>> found = {one.key: one for one in rw.rig.resolved(rw.rig.example("heavy-casing"))}
    >>> found["reeving.lines"].value, str(found["reeving.lines"].origin)
    (12, 'heavy-casing.toml:13')
    >>> one = found["rope.diameter"]
    >>> one.text, one.value, one.unit, one.origin.kind
    ('1.375 in', 0.034925, 'm', 'include')
    >>> str(found["reeving.lead_sheaves"].origin)
    'default, definition: none unless given'
    """
    reading = source if isinstance(source, Reading) else read(os.fspath(source))
    return tuple(_resolved(one) for one in entries(reading.file, reading.layers))


def _resolved(one: Entry) -> Resolved:
    value = tuple(one.value) if isinstance(one.value, list) else one.value
    unit = ROLES[one.role].si_unit if one.role else ""
    return Resolved(key_text(one.path), value, text_of(one.written), unit, one.origin)


def text_of(value: Any) -> str:
    """A value as a file has it; text without its quotes.

    >>> text_of([True, 3, "drill pipe"])
    '[true, 3, drill pipe]'
    """
    if isinstance(value, bool):
        return str(value).lower()
    if isinstance(value, (list, tuple)):
        return f"[{', '.join(text_of(one) for one in value)}]"
    if isinstance(value, dict):
        return f"{{{', '.join(f'{key} = {text_of(one)}' for key, one in value.items())}}}"
    return str(value)
