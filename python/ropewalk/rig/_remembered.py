"""Parts of a rig that are made again only where what they are made from has changed."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeVar

Part = TypeVar("Part")


class Remembered:
    """What every part of the last rig was made from, and what came of it.

    A study puts thousands of rigs together that differ in one table. Sections of a file are frozen
    and so are the parts, so the same section gives the same part.
    """

    def __init__(self) -> None:
        self._made: dict[str, tuple[tuple[Any, ...], Any]] = {}

    def __call__(self, name: str, make: Callable[..., Part], *given: Any) -> Part:
        """Return ``make(*given)``, or the last part of this name if it was made from the same."""
        known = self._made.get(name)
        if known is not None and all(map(_same, known[0], given)):
            return known[1]  # type: ignore[no-any-return]
        part = make(*given)
        self._made[name] = (given, part)
        return part


def _same(a: Any, b: Any) -> bool:
    return a is b or (type(a) is type(b) is float and a == b)
