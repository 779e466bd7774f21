"""Whether the parts of a rig are of a size that is usual on drilling rigs."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import TYPE_CHECKING, Any

from ropewalk import _core
from ropewalk._units import Q, Quantity, registry

if TYPE_CHECKING:
    from ropewalk.rig.assembly import Rig


@dataclass(frozen=True, slots=True)
class Usual:
    """One usual range, and what a rig has there.

    Attributes
    ----------
    key
        Key of the rig file, ``"crown.sheave_diameter"``.
    title
        What it is.
    value_si
        What the rig has, in SI.
    unit
        Unit of the range.
    low, high
        Bounds of the usual range, in `unit`.
    source
        ``"common practice, no source"``.
    standing
        ``"common practice"``.
    """

    key: str
    title: str
    value_si: float
    unit: str
    low: float
    high: float
    source: str
    standing: str

    @property
    def value(self) -> Quantity:
        """What the rig has, in the unit of the range."""
        return Q(self.magnitude, self.unit)

    @property
    def magnitude(self) -> float:
        """What the rig has, as a number of the unit of the range."""
        return float(self.value_si / _factor(self.unit, registry().Quantity))

    @property
    def holds(self) -> bool:
        """True if the rig lies inside the usual range."""
        tiny = 1e-9 * self.high
        return self.low - tiny <= self.magnitude <= self.high + tiny


@lru_cache(maxsize=64)
def _factor(unit: str, _: type[Any]) -> float:
    """SI units in a unit of the table, by registry."""
    return float(Q(1.0, unit).to_base_units().magnitude)


@cache
def _rows() -> tuple[Mapping[str, Any], ...]:
    return tuple(_core.table("trade_practice"))


def practice(rig: Rig) -> list[Usual]:
    """Compare the parts of a rig with what is usual: common practice, no source.

    Outside the range lies nothing forbidden, but nothing usual either; a value there is worth a
    second look. What is safe is said by ratings, standards and local rules, not by this list.

    Parameters
    ----------
    rig
        The hoist.

    Returns
    -------
    list of Usual
        Every range of the table, in its order; that of depth if there is a plan.

    Examples
    --------
    >>> import ropewalk as rw
    >>> found = rw.rig.practice(rw.load_rig(rw.rig.example("rig7")))
    >>> [one.key for one in found if not one.holds]
    []
    """
    values = {
        "rope.diameter": rig.rope.diameter_si,
        "crown.sheave_diameter": rig.crown.diameter,
        "crown.rated_load": rig.crown.rated_load,
        "block.sheave_diameter": rig.block.sheaves.diameter,
        "block.rated_load": rig.block.sheaves.rated_load,
        "drawworks.power": rig.drawworks_power,
    }
    if rig.operations:
        values["plan.depth"] = max(one.depth for one in rig.operations)
    return [Usual(value_si=values[row["key"]], **row) for row in _rows() if row["key"] in values]
