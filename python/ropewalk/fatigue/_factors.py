"""Endurance factors: what multiplies a bending life, by name and with its source."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from ropewalk import _core
from ropewalk._border import NumberLike, QuantityLike, to_count, to_si
from ropewalk._names import to_name
from ropewalk.errors import UnitError, UnknownEntryError

__all__ = [
    "EnduranceFactor",
    "EnduranceFactors",
    "construction_factor",
    "core_factor",
    "en81_groove_equivalent",
    "lubrication_factor",
    "round_groove_factor",
    "shaped_groove_factor",
]


@dataclass(frozen=True)
class EnduranceFactor:
    """One multiplier of a bending life.

    Attributes
    ----------
    name : str
        ``"groove"``, ``"lubrication"`` …
    value : float
        The multiplier.
    source : str
        Where it is from.
    standing : str
        ``"published"``, ``"from memory"``, ``"derived"`` or ``"given"`` by the caller.
    """

    name: str
    value: float
    source: str = "given by the caller"
    standing: str = "given"


@dataclass(frozen=True, init=False)
class EnduranceFactors:
    """Multipliers of a bending life that go together, each name once.

    Parameters
    ----------
    *factors : EnduranceFactor
        From `lubrication_factor`, `round_groove_factor` and the like.
    **named : float
        Your own, by name.

    Examples
    --------
    >>> import ropewalk as rw
    >>> factors = rw.fatigue.EnduranceFactors(
    ...     rw.fatigue.lubrication_factor("none"),
    ...     rw.fatigue.round_groove_factor(0.55),
    ...     fleet_angle=rw.fatigue.fleet_angle_factor(25, "1 deg"),
    ... )
    >>> round(factors.product, 4)
    0.1469
    >>> factors["groove"].standing
    'published'
    """

    factors: tuple[EnduranceFactor, ...]

    def __init__(self, *factors: EnduranceFactor, **named: NumberLike) -> None:
        where = "fatigue.EnduranceFactors"
        for factor in factors:
            if not isinstance(factor, EnduranceFactor):
                text = f"factors must be EnduranceFactor, got {factor!r}; name a plain number"
                raise UnitError(f"{where}(): {text}", where, "factors")
        own = (
            EnduranceFactor(name, float(to_si(where, name, value, "number")))
            for name, value in named.items()
        )
        object.__setattr__(self, "factors", (*factors, *own))
        _ = self.product  # refuses a name given twice and a value that is not above 0

    @property
    def product(self) -> float:
        """All multiplied."""
        pairs = [(factor.name, factor.value) for factor in self.factors]
        return float(_core.fatigue.factors_product(pairs))

    def __iter__(self) -> Iterator[EnduranceFactor]:
        return iter(self.factors)

    def __len__(self) -> int:
        return len(self.factors)

    def __getitem__(self, name: str) -> EnduranceFactor:
        for factor in self.factors:
            if factor.name == name:
                return factor
        where = "fatigue.EnduranceFactors"
        known = ", ".join(factor.name for factor in self.factors) or "none"
        raise UnknownEntryError(f"{where}(): no factor {name!r}; there are: {known}", where, "name")


def _factor(record: dict[str, Any]) -> EnduranceFactor:
    return EnduranceFactor(**record)


def lubrication_factor(lubrication: str) -> EnduranceFactor:
    """Factor of lubrication f_N1 (Müller 1966): ``"well lubricated"`` or ``"none"``.

    Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.15.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.fatigue.lubrication_factor("none").value
    0.2
    """
    where = "fatigue.lubrication_factor"
    return _factor(_core.fatigue.lubrication_factor(to_name(where, "lubrication", lubrication)))


def round_groove_factor(groove_radius_ratio: NumberLike) -> EnduranceFactor:
    """Factor of a round steel groove f_N3, by groove radius over rope diameter, 0.53 to 1.00.

    The source gives six points; the straight line between them is ropewalk's choice.

    Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.15.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.fatigue.round_groove_factor(0.60).value
    0.66
    """
    ratio = to_si(
        "fatigue.round_groove_factor", "groove_radius_ratio", groove_radius_ratio, "number"
    )
    return _factor(_core.fatigue.round_groove_factor(ratio))


def shaped_groove_factor(groove: str, groove_angle: QuantityLike) -> EnduranceFactor:
    """Factor f_N3 of an ``"undercut"`` (75° to 105°) or ``"V"`` groove (35° to 45°).

    The source gives points; the power law between them is ropewalk's choice.

    Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.15, after Holeschak (1987).

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.fatigue.shaped_groove_factor("undercut", "90 deg").value, 3)
    0.2
    """
    where = "fatigue.shaped_groove_factor"
    angle = to_si(where, "groove_angle", groove_angle, "angle")
    return _factor(_core.fatigue.shaped_groove_factor(to_name(where, "groove", groove), angle))


def core_factor(core: str, strands: int) -> EnduranceFactor:
    """Factor of core and number of strands f_C (Wolf 1987).

    Cores: ``"FC"`` fiber, ``"IWRC"`` independent wire rope, ``"PWRC"`` wire rope closed in
    parallel, ``"ESWRC"`` covered with polymer, ``"EFWRC"`` wrapped in fiber; 6 or 8 strands.

    Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.14a.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.fatigue.core_factor("IWRC", strands=6).value
    0.81
    """
    where = "fatigue.core_factor"
    count = to_count(where, "strands", strands)
    return _factor(_core.fatigue.core_factor(to_name(where, "core", core), count))


def construction_factor(construction: str) -> EnduranceFactor:
    """Bending life of a construction over that of 6x25FW; a core in the name does not count.

    A comparison of ropes of one diameter and grade in the same test. Not to be multiplied with
    `core_factor`, which compares other things.

    Source: Wire Rope Users Manual, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.fatigue.construction_factor("6x19S IWRC").value
    0.81
    """
    where = "fatigue.construction_factor"
    return _factor(_core.fatigue.construction_factor(to_name(where, "construction", construction)))


def en81_groove_equivalent(groove: str, groove_angle: QuantityLike = "0 deg") -> float:
    """Equivalent sheaves N_equiv(t) of a traction sheave: ``"round"``, ``"undercut"`` or ``"V"``.

    The angle is that of the undercut (75° to 105°) or of the V groove (35° to 45°); it does not
    count for a round groove. Between the printed angles the power law is ropewalk's choice, as in
    `shaped_groove_factor`, whose values are the reciprocals.

    Source: EN 81-50:2014, 5.12, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.fatigue.en81_groove_equivalent("undercut", "90 deg"), 3)
    5.0
    """
    where = "fatigue.en81_groove_equivalent"
    angle = to_si(where, "groove_angle", groove_angle, "angle")
    return float(_core.fatigue.en81_groove_equivalent(to_name(where, "groove", groove), angle))
