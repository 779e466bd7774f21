"""Row functions of `ropewalk.deadline` on the anchor and the sensor."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "anchor_capacity",
    "cell_force",
    "clamps_needed",
    "deflection_force",
    "pin_force",
    "tension_from_cell",
    "tension_from_deflection",
    "tension_from_pin",
    "tension_from_pressure",
]


@face("deadline.anchor_capacity")
def anchor_capacity(
    clamps: NumberLike,
    clamp_holding: QuantityLike,
    anchor_friction: NumberLike,
    anchor_wraps: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Pull at which the line slips through the anchor.

    .. math:: T = n_c H e^{2 \pi \mu n}

    The wraps hold by Euler and Eytelwein, as in `ropewalk.drum.clamp_force`; equal clamps behind
    them share the rest, which they do only if tightened alike. Friction and what a clamp holds are
    published for no anchor; the maker's manual comes first.

    Source: L. Euler (1769), J. A. Eytelwein (1808), belt friction; statics.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.deadline.anchor_capacity(1, '10 kip', 0.1, 4).to('kip'):.1f}")
    123.5 kip
    """
    ...


@face("deadline.clamps_needed")
def clamps_needed(
    rope_tension: QuantityLike,
    clamp_holding: QuantityLike,
    anchor_friction: NumberLike,
    anchor_wraps: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Least number of clamps that hold a pull on the dead line, without any reserve.

    .. math:: n_c = \lceil T e^{-2 \pi \mu n} / H \rceil

    The maker's manual says how many are to be fitted. Source as for `anchor_capacity`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.deadline.clamps_needed("130 kip", "10 kip", 0.1, 4)
    2.0
    """
    ...


@face("deadline.deflection_force")
def deflection_force(
    rope_tension: QuantityLike,
    deflection: QuantityLike,
    half_span: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Force that pushes a line out of its way, in the middle between two supports.

    .. math:: F = 2 T h / \sqrt{a^2 + h^2}

    The line is thin and limp; the stiffness of a wire rope on a short span makes a sensor read
    high.

    Source: statics.

    Examples
    --------
    >>> import ropewalk as rw
    >>> force = rw.deadline.deflection_force("20 kip", "25 mm", "250 mm")
    >>> print(f"{force.to('lbf'):.0f}")
    3980 force_pound
    """
    ...


@face("deadline.tension_from_deflection")
def tension_from_deflection(
    sensor_force: QuantityLike,
    deflection: QuantityLike,
    half_span: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Tension of a line from the force that pushes it out of its way in the middle.

    .. math:: T = F \sqrt{a^2 + h^2} / (2 h)

    `deflection_force` the other way round.

    Examples
    --------
    >>> import ropewalk as rw
    >>> tension = rw.deadline.tension_from_deflection("4 kip", "25 mm", "250 mm")
    >>> print(f"{tension.to('kip'):.2f}")
    20.10 kip
    """
    ...


@face("deadline.cell_force")
def cell_force(
    rope_tension: QuantityLike,
    anchor_radius: QuantityLike,
    cell_arm: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Force on the load cell of an anchor whose drum leans on it.

    .. math:: F = T R / L

    R is counted to the middle of the rope: another rope diameter changes it. Source: moments about
    the pivot.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.deadline.cell_force('30 kip', '14 in', '42 in').to('kip'):.1f}")
    10.0 kip
    """
    ...


@face("deadline.tension_from_cell")
def tension_from_cell(
    sensor_force: QuantityLike,
    anchor_radius: QuantityLike,
    cell_arm: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Tension of the dead line from the force on the cell of its anchor.

    .. math:: T = F L / R

    `cell_force` the other way round.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.deadline.tension_from_cell('10 kip', '14 in', '42 in').to('kip'):.1f}")
    30.0 kip
    """
    ...


@face("deadline.tension_from_pressure")
def tension_from_pressure(
    cell_pressure: QuantityLike,
    cell_area: QuantityLike,
    anchor_radius: QuantityLike,
    cell_arm: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Tension of the dead line from the pressure in the hydraulic cell of its anchor.

    .. math:: T = p A L / R

    Source: as for `cell_force`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> tension = rw.deadline.tension_from_pressure("500 psi", "20 in**2", "14 in", "42 in")
    >>> print(f"{tension.to('kip'):.1f}")
    30.0 kip
    """
    ...


@face("deadline.pin_force")
def pin_force(
    rope_tension: QuantityLike,
    wrap_angle: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Force on the pin of a sheave over which a line turns.

    .. math:: F = 2 T \sin(\theta/2)

    The two parts of the line enclose 180° − θ. Source: statics, the same tension on both sides.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.deadline.pin_force('30 kip', '180 deg').to('kip'):.1f}")
    60.0 kip
    """
    ...


@face("deadline.tension_from_pin")
def tension_from_pin(
    sensor_force: QuantityLike,
    wrap_angle: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Tension of a line from the force on the pin of a sheave over which it turns.

    .. math:: T = F / (2 \sin(\theta/2))

    `pin_force` the other way round.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.deadline.tension_from_pin('60 kip', '180 deg').to('kip'):.1f}")
    30.0 kip
    """
    ...
