"""Everything ropewalk raises or warns with.

All errors derive from `RopewalkError` and from the built-in class a caller would expect. They carry
`where`, the function that refused, and `field`, the argument it refused; both survive pickling, so
an error raised in a worker process reads the same in the parent.
"""

from __future__ import annotations

from enum import IntFlag

__all__ = [
    "InadmissibleError",
    "RopewalkError",
    "RowStatus",
    "UnitError",
    "UnknownEntryError",
    "ValidityError",
    "ValidityWarning",
]


class RopewalkError(Exception):
    """Base of every error of ropewalk.

    Parameters
    ----------
    message
        The whole text, function name included.
    where
        Function that refused, ``"sheave.bearing_pressure"``.
    field
        Argument it refused; empty if the reason lies between several.
    """

    def __init__(self, message: str, where: str = "", field: str = "") -> None:
        super().__init__(message)
        self.message = message
        self.where = where
        self.field = field

    def __str__(self) -> str:
        return self.message

    def __reduce__(self) -> tuple[type[RopewalkError], tuple[str, str, str]]:
        return type(self), (self.message, self.where, self.field)


class UnitError(RopewalkError, TypeError):
    """An argument has no unit where one belongs, or a unit of another kind of quantity."""


class InadmissibleError(RopewalkError, ValueError):
    """An argument that cannot be: not finite, of the wrong sign, not whole, beyond any hoist."""


class ValidityError(RopewalkError, ValueError):
    """An admissible argument outside the range for which the model is published."""


class UnknownEntryError(RopewalkError, LookupError):
    """A table has no such entry; the message offers what it has."""


class ValidityWarning(UserWarning):
    """A model was asked outside its published range with ``outside_validity="warn"``."""


class RowStatus(IntFlag):
    """What is known of one row, as returned with ``return_status=True``.

    Statuses of arrays come as an array of ``uint8`` with these bits.
    """

    OK = 0
    #: An argument no formula can take; the value is NaN.
    INADMISSIBLE = 1
    #: Computed, but outside the range the model is published for.
    OUTSIDE_VALIDITY = 2
    #: The formula overflowed; the value is NaN.
    NOT_FINITE = 4
