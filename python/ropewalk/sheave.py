"""Sheaves: size in rope diameters, groove gauge, bearing pressure, strength lost in the bend.

A groove or a tread that passes here is not yet safe: the maker's manual, the local rules and the
inspector decide what runs overhead.
"""

from __future__ import annotations

from typing import Any

from ropewalk import _core
from ropewalk._border import to_quantity, to_si
from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face
from ropewalk._grooves import (
    groove_depth_max,
    groove_depth_min,
    groove_radius_new_max,
    groove_radius_new_min,
    groove_radius_table,
    groove_radius_worn_min,
)
from ropewalk._names import to_name

__all__ = [
    "bearing_pressure",
    "bearing_pressure_limit",
    "bearing_pressure_ratio",
    "bend_ratio",
    "groove_depth_max",
    "groove_depth_min",
    "groove_radius_new_max",
    "groove_radius_new_min",
    "groove_radius_table",
    "groove_radius_worn_min",
    "strength_efficiency",
    "table",
    "tread_diameter",
]


@face("sheave.bend_ratio")
def bend_ratio(
    sheave_diameter: QuantityLike,
    rope_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    """Bend ratio D/d of a rope on its sheave, by definition.

    D is the tread diameter, at the bottom of the groove. European texts often measure D on the
    center line of the rope, one rope diameter more; a model that means that says so.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.sheave.bend_ratio("50 in", "1.25 in")
    40.0
    """
    ...


@face("sheave.bearing_pressure")
def bearing_pressure(
    rope_tension: QuantityLike,
    rope_diameter: QuantityLike,
    sheave_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Radial bearing pressure of a rope on its sheave, on the projected area.

    .. math:: p = 2 F / (d D)

    Exact equilibrium of a rope bent over a semicircle, spread over the projected area; no range.

    Source: Shigley & Mitchell, Mechanical Engineering Design, 4th ed. (1983), ch. 18, wire rope;
    the same form in Drucker & Tachau, Trans. ASME 67 (1945).

    Examples
    --------
    >>> import ropewalk as rw
    >>> pressure = rw.sheave.bearing_pressure("30000 lbf", "1.25 in", "50 in")
    >>> print(f"{pressure.to('psi'):.1f}")
    960.0 pound_force_per_square_inch
    """
    ...


@face("sheave.bearing_pressure_ratio")
def bearing_pressure_ratio(
    rope_tension: QuantityLike,
    rope_diameter: QuantityLike,
    sheave_diameter: QuantityLike,
    wire_strength: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    """Drucker and Tachau's bearing pressure ratio, against which bending life is plotted.

    .. math:: B = p / S_u = 2 F / (d D S_u)

    with S_u the ultimate tensile strength of the wires (`wire_strength`).

    Source: Drucker & Tachau, Trans. ASME 67 (1945); Shigley & Mitchell, Mechanical Engineering
    Design, 4th ed. (1983), ch. 18.

    Examples
    --------
    >>> import ropewalk as rw
    >>> ratio = rw.sheave.bearing_pressure_ratio("30000 lbf", "1.25 in", "50 in", "240 ksi")
    >>> print(f"{ratio:.4f}")
    0.0040
    """
    ...


@face("sheave.strength_efficiency")
def strength_efficiency(
    bend_ratio: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    """Share of its breaking force a rope keeps when it is bent over a sheave and pulled at rest.

    Straight lines between the ten points of a block maker's table (`table` lists them). The points
    bend down all the way, so that a line lies below any smooth curve through them: what is between
    two points is estimated on the safe side. Static strength only: bending life falls far more.

    Range: D/d 1 to 40, the points of the table. Outside it, if that is allowed, the last tabulated
    share is kept, which beyond 40 again is on the safe side.

    API RP 9B, 14th ed. (2015), Addendum 1 (2020), 2.3.3.5, works an example at D/d 27 with 96 %,
    more than this table gives.

    Source: a block maker's rigging handbook, page on sheave size and wire rope strength.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.sheave.strength_efficiency(20)
    0.91
    """
    ...


def bearing_pressure_limit(groove_material: str, rope_class: str, lay: str) -> Quantity:
    """Bearing pressure a groove material bears without undue wear, by class of rope and lay.

    Source: American Iron and Steel Institute, Wire Rope Users Manual (1979), as Shigley, Mechanical
    Engineering Design, 8th ed., Table 17-26, prints it. `table` lists it with the standing of each
    value.

    Parameters
    ----------
    groove_material : str
        ``"wood (end grain)"``, ``"cast iron"``, ``"cast steel"``, ``"chilled cast iron"`` or
        ``"manganese steel"``.
    rope_class : str
        ``"6x7"``, ``"6x19"``, ``"6x37"`` (now called ``"6x36"``) or ``"8x19"``; nothing is printed
        for 8x19 in lang lay.
    lay : str
        ``"regular"`` or ``"lang"``.

    Returns
    -------
    stress, in Pa
        Bearing pressure on the projected area, as `bearing_pressure` has it.

    Raises
    ------
    UnknownEntryError
        If the table has no such name; the message offers those it has.

    Examples
    --------
    >>> import ropewalk as rw
    >>> limit = rw.sheave.bearing_pressure_limit("cast steel", "6x19", "regular")
    >>> print(f"{limit.to('psi'):.0f}")
    900 pound_force_per_square_inch
    """
    where = "sheave.bearing_pressure_limit"
    limit = _core.sheave.bearing_pressure_limit(
        to_name(where, "groove_material", groove_material),
        to_name(where, "rope_class", rope_class),
        to_name(where, "lay", lay),
    )
    return to_quantity(limit, "stress")


def tread_diameter(construction: str, condition: str, rope_diameter: QuantityLike) -> Quantity:
    """Tread diameter advised for a construction of rope.

    .. math:: D_T = F d

    with F the factor of the construction and d the nominal rope diameter. `table` lists the
    factors.

    Source: Lyons (ed.), Standard Handbook of Petroleum and Natural Gas Engineering, vol. 1 (1996),
    eq. 4-25 and Table 4-35, p. 600, after API RP 9B.

    Parameters
    ----------
    construction : str
        ``"6x19S"``, ``"6x25FW"`` …, or in words, ``"6x19 Seale"``; a core behind it is passed over,
        since the factors hold for any.
    condition : str
        ``"A"``: bending is what wears the rope; ``"B"``: some life is given up for a smaller
        sheave.
    rope_diameter : length
        Nominal diameter of the rope.

    Returns
    -------
    length, in m
        Tread diameter.

    Raises
    ------
    UnknownEntryError
        If the table has no such name; the message offers those it has.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.sheave.tread_diameter('6x19S', 'B', '1-3/8 in').to('in'):.2f}")
    41.25 inch
    """
    where = "sheave.tread_diameter"
    tread = _core.sheave.tread_diameter(
        to_name(where, "construction", construction),
        to_name(where, "condition", condition),
        to_si(where, "rope_diameter", rope_diameter, "length"),
    )
    return to_quantity(tread, "length", like=rope_diameter)


def table(name: str) -> list[dict[str, Any]]:
    """List one table of this subject as plain records, with source and standing of each value.

    Parameters
    ----------
    name : str
        ``"bearing_pressure_limits"``, ``"groove_radii"``, ``"strength_efficiency"`` or
        ``"tread_diameters"``.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.sheave.table("strength_efficiency")[7]["strength_efficiency [%]"]
    91.0
    """
    rows: list[dict[str, Any]] = _core.sheave.table(to_name("sheave.table", "name", name))
    return rows
