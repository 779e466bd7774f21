"""How a row of a study ended."""

from __future__ import annotations

from enum import IntEnum

__all__ = ["Status"]


class Status(IntEnum):
    """What is known of one output of one row."""

    OK = 0
    #: Computed, but a model behind it was asked outside its published range; NaN if it refused.
    OUTSIDE_RANGE = 1
    #: There can be no such rig, or no such line, drum, load on it.
    NOT_POSSIBLE = 2
    #: The rig does not have what the output is about.
    NOT_APPLICABLE = 3
    #: The rig can be, but its number cannot be had.
    NOT_COMPUTED = 4

    @property
    def words(self) -> str:
        """In words, ``"outside range"``.

        >>> Status.OUTSIDE_RANGE.words
        'outside range'
        """
        return self.name.lower().replace("_", " ")
