"""The unit registry in use, and quantities from numbers and from text.

pint is imported at first use. ropewalk joins the application registry of the process; it adds the
trade units that registry lacks and never replaces one it has.
"""

from __future__ import annotations

import re
import threading
from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING, Any, TypeAlias, Union

from ropewalk._numbers import RefusedError, scaled
from ropewalk.errors import UnitError

if TYPE_CHECKING:
    import pint
    from pint.facets.plain import PlainQuantity

#: A pint quantity of any registry.
Quantity: TypeAlias = "PlainQuantity[Any]"
#: What an argument with a unit takes: a quantity, or text such as ``"400 kip"``.
QuantityLike: TypeAlias = Union["PlainQuantity[Any]", str]

#: Units of the trade that pint's own list may lack. pint's `gallon` is the US gallon.
_DEFINITIONS = {
    "kip": "kip = 1000 * pound_force",
    "short_ton_force": "short_ton_force = 2000 * pound_force",
    "long_ton_force": "long_ton_force = 2240 * pound_force",
    "tonne_force": "tonne_force = 1000 * kilogram_force",
    "ton_mile": "ton_mile = 2000 * pound_force * mile",
    "pound_per_gallon": "pound_per_gallon = pound / gallon",
    "ppg": "@alias pound_per_gallon = ppg",
    "psi": "psi = pound_force / inch ** 2",
    "ksi": "ksi = 1000 * pound_force / inch ** 2",
    "hp": "hp = 550 * foot * pound_force / second",
    "rpm": "rpm = revolution / minute",
}

_lock = threading.RLock()
_joined: list[Any] = []

TONS = (
    '"ton" has three meanings: for a force write short_ton_force (2000 lbf), long_ton_force '
    "(2240 lbf) or tonne_force (1000 kgf); for a mass write 2000 lb, 2240 lb or tonne; for the "
    "work of a line write ton_mile"
)


class UnreadableTextError(ValueError):
    """Text that is no number with a unit; the message says why."""


def registry() -> pint.UnitRegistry[Any]:
    """Join pint's application registry and return it.

    The registry is asked for every time, so that a program may set its own at any moment.
    """
    import pint

    # pint's stand-in for whatever registry is set; it has no annotations.
    application: Any = pint.get_application_registry()  # type: ignore[no-untyped-call]
    present = application.get()
    if _joined and _joined[-1] is present:  # as nearly always
        return application  # type: ignore[no-any-return]
    if not any(present is known for known in _joined):
        with _lock:
            for name, definition in _DEFINITIONS.items():
                if name not in application:
                    application.define(definition)
            _joined.append(application.get())
    joined: pint.UnitRegistry[Any] = application
    return joined


def Q(value: Any, unit: str | None = None) -> Quantity:
    """Make a quantity: ``Q(300, "kN")``, ``Q([30, 40], "kip")`` or ``Q("1-3/8 in")``.

    Parameters
    ----------
    value
        A number, or anything NumPy takes as an array of numbers (list, range, pandas Series …).
        With `unit` left out: text with number and unit.
    unit
        Unit in pint's spelling.

    Returns
    -------
    Quantity
        In the registry `ropewalk.units`.

    Raises
    ------
    UnitError
        If the unit is unknown or ambiguous, or there is no number.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(rw.Q("1-3/8 in"))
    1.375 inch
    >>> print(rw.Q([8, 10], "kip").to("lbf"))
    [8000.0 10000.0] force_pound
    """
    try:
        if unit is None:
            if not isinstance(value, str):
                raise UnreadableTextError('a unit is missing, write e.g. rw.Q(300, "kN")')
            number, unit_quantity = read_text(value)
            return unit_quantity.__class__(number, unit_quantity.units)
        unit_quantity = read_unit(unit)
    except UnreadableTextError as reason:
        raise UnitError(f"Q(): {reason}", "Q", "unit") from None
    if type(value) is float:  # as nearly always
        owner: Any = type(unit_quantity)
        quantity: Quantity = owner(value, _unit_of(unit, owner))
        return quantity
    if hasattr(value, "magnitude") or isinstance(value, str):
        raise UnitError(f"Q(): the value must be a plain number, got {value!r}", "Q", "value")
    try:
        numbers = scaled(value, 1.0)
    except RefusedError as refusal:
        kind = f" ({refusal.kind})" if refusal.kind else ""
        raise UnitError(
            f"Q(): the value must be a plain number or an array, got {value!r}{kind}", "Q", "value"
        ) from None
    return unit_quantity.__class__(numbers, unit_quantity.units)


_DECIMAL = re.compile(r"[+-]?(?:\d+(?:_\d+)*\.?\d*|\.\d+)(?:[eE][+-]?\d+)?")
# 1-3/8 and 1 3/8 are one and three eighths in the trade, never a subtraction.
_FRACTION = re.compile(r"([+-]?)(?:(\d+)(?:-|\s+))?(\d+)/(\d+)(?![\d.])")
_TON = re.compile(r"(?<![A-Za-z_])(?:tons?f?|tonsf)(?![A-Za-z_])", re.IGNORECASE)
_CHARACTERS = re.compile(r"[\w\s%°µ·*/^().²³⁻¹-]*")
_SUPER = "⁰¹²³⁴⁵⁶⁷⁸⁹"
_NAME = rf"(?:[^\W\d{_SUPER}]|[%°])[^\W{_SUPER}]*"
_POWER = rf"\s*(?:\*\*|\^)\s*(?:[+-]?\d|\([+-]?\d\))(?![\w.{_SUPER}])|⁻?[{_SUPER}](?![{_SUPER}])"
_FACTOR = rf"(?:\(\s*)*{_NAME}(?:{_POWER})?(?:\s*\)(?!\s*(?:\*\*|\^))(?![⁻{_SUPER}]))*"  # no (m)**9
#: A product of names with one digit as exponent. pint would evaluate whatever else it is given, and
#: a tower of exponents takes it longer than anybody waits; so no power of a power, nor in words.
_UNIT = re.compile(rf"\s*(?:1\s*(?=/)|{_FACTOR})(?:(?:\s*[*/·]\s*|\s+){_FACTOR})*+\s*")
_WORDS = re.compile(r"(?<![^\W_])(?:sq|square|squared|cubic|cube|cubed)(?![^\W_])")
_SOME_POWER = re.compile(rf"\*\*|\^|[{_SUPER}]")
#: No quantity is written with more characters.
LONGEST_TEXT = 64


def read_text(text: str) -> tuple[float, Quantity]:
    """Number and unit of ``"400 kip"``; the unit comes as the quantity 1 of it."""
    if len(text) > LONGEST_TEXT:
        raise UnreadableTextError(f"it is longer than {LONGEST_TEXT} characters")
    stripped = text.strip()
    number, end = _read_number(stripped)
    return number, read_unit(stripped[end:].strip())


def _read_number(text: str) -> tuple[float, int]:
    if match := _FRACTION.match(text):
        sign, whole, numerator, denominator = match.groups()
        top, bottom = int(numerator), int(denominator)
        if bottom == 0 or (whole and top >= bottom):
            raise UnreadableTextError(f"{match.group()} is not a fraction")
        value = float(int(whole or 0) + Fraction(top, bottom))
        return -value if sign == "-" else value, match.end()
    if match := _DECIMAL.match(text):
        if text[match.end() : match.end() + 1] == ",":
            raise UnreadableTextError("numbers are written with a decimal point and without commas")
        return float(match.group()), match.end()
    raise UnreadableTextError("it does not begin with a number")


def read_unit(text: str) -> Quantity:
    """Quantity 1 of a unit in `ropewalk.units`; refuses the bare word ton."""
    if not isinstance(text, str):
        raise UnreadableTextError(f"a unit is text such as 'lbf', got {text!r}")
    if len(text) > LONGEST_TEXT:
        raise UnreadableTextError(f"a unit has {LONGEST_TEXT} characters at most")
    application = registry()
    return _read_unit(text, application.Quantity)


@lru_cache(maxsize=1024)
def _unit_of(text: str, owner: Any) -> Any:
    """Unit of a text that `read_unit` takes, for pint."""
    return _read_unit(text, owner).units


@lru_cache(maxsize=1024)
def _read_unit(text: str, quantity_class: type[Any]) -> Quantity:
    if _TON.search(text):
        raise UnreadableTextError(TONS)
    if not _CHARACTERS.fullmatch(text):
        raise UnreadableTextError(f"{text!r} is not a unit")
    hint = "; write products with *, e.g. ft*lbf" if "-" in text else ""
    words = len(_WORDS.findall(text))
    if text.strip() and (
        not _UNIT.fullmatch(text) or words > 1 or (words and _SOME_POWER.search(text))
    ):
        raise UnreadableTextError(
            f"the unit {text!r} is not known: no product of names with small exponents{hint}"
        )
    with _lock:
        try:
            unit: Quantity = quantity_class(1, text)
        except Exception as reason:  # pint raises its own, ValueError, TypeError and others here
            raise UnreadableTextError(f"the unit {text!r} is not known{hint}") from reason
    return unit
