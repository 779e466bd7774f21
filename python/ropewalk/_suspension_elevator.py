"""Elevators and links by table: types in general words, bores, classes, a maker's wear table."""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from ropewalk import _core
from ropewalk._border import Quantity, QuantityLike, to_quantity, to_si
from ropewalk._names import to_name
from ropewalk._suspension_train import Part
from ropewalk.errors import InadmissibleError

__all__ = [
    "ElevatorBore",
    "ElevatorType",
    "elevator_bore",
    "elevator_types",
    "elevators_for",
    "link_set_capacity",
    "rating_class",
    "table",
]


@dataclass(frozen=True, slots=True)
class ElevatorType:
    """A type of elevator, in general words of the trade; its capacity is on its nameplate.

    Attributes
    ----------
    kind
        What it is called.
    tubulars
        What it carries.
    holds_by
        Where it carries it.
    carries_string
        False: single joints or stands only, never a string.
    source, standing
        Where this comes from.
    """

    kind: str
    tubulars: tuple[str, ...]
    holds_by: str
    carries_string: bool
    source: str
    standing: str

    def part(self, rating: QuantityLike, weight: QuantityLike) -> Part:
        """Make an elevator of this type a part of a load path.

        Parameters
        ----------
        rating
            From the nameplate of the elevator at hand; of a worn one what its maker still allows.
        weight
            Its own weight.

        Raises
        ------
        InadmissibleError
            If the type is for single joints: it must not hang a string.

        Examples
        --------
        >>> import ropewalk as rw
        >>> usual = rw.suspension.elevators_for("collared casing")[0]
        >>> usual.part("250 short_ton_force", "1.1 kip").name
        'square shoulder elevator'
        """
        if not self.carries_string:
            where = "suspension.ElevatorType.part"
            text = f"kind = {self.kind!r} is for single joints or stands, not for a string"
            raise InadmissibleError(f"{where}(): {text}", where, "kind")
        return Part(f"{self.kind} elevator", rating, weight)


def _type(record: dict[str, Any]) -> ElevatorType:
    tubulars = tuple(str(record.pop("tubular")).split(";"))
    return ElevatorType(tubulars=tubulars, **record)


def elevator_types() -> list[ElevatorType]:
    """Every type of elevator there is here.

    Examples
    --------
    >>> import ropewalk as rw
    >>> [one.kind for one in rw.suspension.elevator_types() if not one.carries_string]
    ['single joint']
    """
    return [_type(record) for record in _core.suspension.elevator_types()]


def elevators_for(tubular: str) -> list[ElevatorType]:
    """List the types of elevator for a tubular, the usual one first.

    Parameters
    ----------
    tubular : str
        In general words, ``"collared casing"``; a wrong one is answered with those there are.

    Raises
    ------
    UnknownEntryError
        If there is no such tubular.

    Examples
    --------
    >>> import ropewalk as rw
    >>> [one.kind for one in rw.suspension.elevators_for("flush-joint casing")]
    ['slip type']
    """
    where = "suspension.elevators_for"
    return [
        _type(one) for one in _core.suspension.elevators_for(to_name(where, "tubular", tubular))
    ]


@dataclass(frozen=True, slots=True)
class ElevatorBore:
    """Bore of the 18-degree elevator for a drill pipe.

    Attributes
    ----------
    drill_pipe
        Sizes and upsets it is for.
    neck_si, bore_si
        Diameter of the neck of the tool joint, and of the bore, m.
    source, standing
        Where this comes from.
    """

    drill_pipe: str
    neck_si: float
    bore_si: float
    source: str
    standing: str

    @property
    def neck(self) -> Quantity:
        """Diameter of the neck of the tool joint."""
        return to_quantity(self.neck_si, "length")

    @property
    def bore(self) -> Quantity:
        """Bore of the elevator."""
        return to_quantity(self.bore_si, "length")


def elevator_bore(drill_pipe: str) -> ElevatorBore:
    """Bore of the 18-degree elevator for a drill pipe.

    Parameters
    ----------
    drill_pipe : str
        Size and upset, ``"5 IEU"``.

    Raises
    ------
    UnknownEntryError
        If there is no such pipe in the table; the message offers those there are.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.suspension.elevator_bore('5 IEU').bore.to('in'):.2f}")
    5.25 inch
    """
    where = "suspension.elevator_bore"
    record = _core.suspension.elevator_bore(to_name(where, "drill_pipe", drill_pipe))
    sizes = {"neck_si": record.pop("neck"), "bore_si": record.pop("bore")}
    return ElevatorBore(**record, **sizes)


def rating_class(load_rating: QuantityLike) -> str:
    """Class of ratings by which contact surfaces are made, in short tons.

    Parts that bear on each other, hook and link, link and elevator, fit if they are of one class.

    Parameters
    ----------
    load_rating : force
        From 25 to 1000 short tons.

    Raises
    ------
    UnknownEntryError
        If the rating is in no class.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.suspension.rating_class("350 short_ton_force")
    '251-350'
    """
    where = "suspension.rating_class"
    rating = to_si(where, "load_rating", load_rating, "force")
    return str(_core.suspension.rating_class(rating))


def link_set_capacity(
    thicknesses: Iterable[QuantityLike],
    maker_table: Mapping[str, QuantityLike] | Iterable[tuple[QuantityLike, QuantityLike]],
) -> Quantity:
    """Capacity of a worn set of links by its maker's table: that of its thinnest eye.

    Parameters
    ----------
    thicknesses
        Least thickness measured of every eye, upper and lower, of both links.
    maker_table
        From the maker of the links: capacity of the set down to each thickness. It goes in steps:
        an eye between two thicknesses has the capacity of the smaller.

    Returns
    -------
    force, in N
        0 if an eye is thinner than the table goes: out of service.

    Raises
    ------
    InadmissibleError
        If nothing was measured, the table is empty, has two capacities for one thickness, or one
        that falls with thickness.

    Examples
    --------
    The table is invented:

    >>> import ropewalk as rw
    >>> invented = {"2.75 in": "350 kip", "2.5 in": "300 kip", "2.25 in": "225 kip"}
    >>> eyes = ["2.70 in", "2.66 in", "2.71 in", "2.58 in"]
    >>> print(f"{rw.suspension.link_set_capacity(eyes, invented).to('kip'):.0f}")
    300 kip
    """
    where = "suspension.link_set_capacity"
    eyes = [float(to_si(where, "thicknesses", one, "length")) for one in thicknesses]
    pairs = maker_table.items() if isinstance(maker_table, Mapping) else maker_table
    steps = sorted(
        (
            float(to_si(where, "maker_table", thickness, "length")),
            float(to_si(where, "maker_table", capacity, "force")),
        )
        for thickness, capacity in pairs
    )
    _require_measured(where, "thicknesses", eyes)
    _require_measured(where, "maker_table", [one for step in steps for one in step])
    # One thickness in two units, measured and printed, may differ by rounding.
    for (thinner, less), (thicker, more) in itertools.pairwise(steps):
        if thicker <= thinner * (1.0 + 1e-9) and more != less:
            text = (
                f"maker_table has two capacities for one thickness, {thinner:.6g} m: "
                f"{less / 1e3:.6g} kN and {more / 1e3:.6g} kN"
            )
            raise InadmissibleError(f"{where}(): {text}", where, "maker_table")
        if more < less:
            text = (
                f"maker_table must have a capacity that does not fall with thickness, got "
                f"{less / 1e3:.6g} kN at {thinner:.6g} m and {more / 1e3:.6g} kN at "
                f"{thicker:.6g} m"
            )
            raise InadmissibleError(f"{where}(): {text}", where, "maker_table")
    carried = [c for thickness, c in steps if min(eyes) >= thickness * (1.0 - 1e-9)]
    return to_quantity(max(carried, default=0.0), "force")


def _require_measured(where: str, field: str, values: list[float]) -> None:
    if not values:
        raise InadmissibleError(f"{where}(): {field} is empty", where, field)
    if not (np.all(np.isfinite(values)) and min(values) > 0.0):
        text = f"{field} must be finite and more than 0 throughout"
        raise InadmissibleError(f"{where}(): {text}", where, field)


def table(name: str) -> list[dict[str, Any]]:
    """List one table of this subject as plain records, with source and standing of each value.

    Parameters
    ----------
    name : str
        ``"elevator_bores"``, ``"elevator_types"`` or ``"rating_classes"``.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.suspension.table("rating_classes")[0]["class"]
    '25-40'
    """
    rows: list[dict[str, Any]] = _core.suspension.table(to_name("suspension.table", "name", name))
    return rows
