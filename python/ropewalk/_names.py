"""Names as arguments: the text that says which entry of a table is meant."""

from __future__ import annotations

from typing import Any

from ropewalk.errors import UnitError

__all__ = ["to_name"]


def to_name(where: str, field: str, value: Any) -> str:
    """Return the text of one argument; refuse what is none.

    Raises
    ------
    UnitError
        If the value is no text, a quantity or a number for instance.
    """
    if isinstance(value, str):
        return value
    text = f"{field} must be text, got {value!r}"
    raise UnitError(f"{where}(): {text}", where, field)
