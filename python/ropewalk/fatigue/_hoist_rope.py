"""A hoist rope by Shigley, and the rope diameter that lives longest."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "bending_load",
    "fatigue_safety_factor",
    "fatigue_tension",
    "hoist_rope_tension",
    "optimal_rope_diameter",
    "static_safety_factor",
    "wire_bending_stress",
]


@face("fatigue.optimal_rope_diameter")
def optimal_rope_diameter(
    rope_tension: QuantityLike,
    sheave_diameter: QuantityLike,
    wire_strength: QuantityLike,
    b1: NumberLike,
    b2: NumberLike,
    b3: NumberLike,
    b4: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Rope diameter of the longest bending life on one sheave under one tension (Feyrer's form).

    .. math::
        \lg d_{opt} = \frac{2 b_1 + b_2 - b_3}{4 b_4} + \tfrac12 \lg D
            + \tfrac14 (\lg S - 0.4 \lg\tfrac{R_0}{1770})

    A thicker rope is stressed less by tension and more by bending. Whatever the constants (those of
    `FeyrerForm`), the diameter grows with the root of D and the fourth root of S.

    Source: the equation of `FeyrerForm`, derived by hand at fixed l/d.

    Examples
    --------
    >>> import ropewalk as rw
    >>> best = rw.fatigue.optimal_rope_diameter(
    ...     "5000 N", "600 mm", "1770 MPa", 1.887, 8.567, 0.0, -2.894
    ... )
    >>> print(f"{best.to('mm'):.2f}")
    17.69 millimeter
    """
    ...


@face("fatigue.hoist_rope_tension")
def hoist_rope_tension(
    load: QuantityLike,
    ropes: NumberLike,
    rope_weight: QuantityLike,
    rope_length: QuantityLike,
    acceleration: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Tension of one of the ropes that share a hoisted load (Shigley).

    .. math:: F_t = (W/m + w l)(1 + a/g)

    with m `ropes`, w `rope_weight` and l `rope_length`; g is standard gravity.

    Source: Shigley's Mechanical Engineering Design, ch. 17, wire rope, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> tension = rw.fatigue.hoist_rope_tension(
    ...     "2000 lbf", 1, "1.6 lbf/ft", "531.5 ft", "2 ft/s**2"
    ... )
    >>> print(f"{tension.to('lbf'):.0f}")
    3028 force_pound
    """
    ...


@face("fatigue.wire_bending_stress")
def wire_bending_stress(
    rope_modulus: QuantityLike,
    wire_diameter: QuantityLike,
    sheave_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Bending stress of the outer wires on a sheave (Shigley; Reuleaux).

    .. math:: \sigma = E_r d_w / D

    Shigley takes the modulus of the rope; others take that of steel and find two and a half times
    as much.

    Source: Shigley's Mechanical Engineering Design, ch. 17, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> stress = rw.fatigue.wire_bending_stress("12e6 psi", "0.067 in", "72 in")
    >>> print(f"{stress.to('ksi'):.2f}")
    11.17 kip_per_square_inch
    """
    ...


@face("fatigue.bending_load")
def bending_load(
    rope_modulus: QuantityLike,
    wire_diameter: QuantityLike,
    metallic_area: QuantityLike,
    sheave_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Tension that would stress the wires as much as bending does (Shigley).

    .. math:: F_b = E_r d_w A_m / D

    Source: Shigley's Mechanical Engineering Design, ch. 17, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> load = rw.fatigue.bending_load("12e6 psi", "0.067 in", "0.40 in**2", "72 in")
    >>> print(f"{load.to('lbf'):.1f}")
    4466.7 force_pound
    """
    ...


@face("fatigue.fatigue_tension")
def fatigue_tension(
    pressure_ratio: NumberLike,
    wire_strength: QuantityLike,
    rope_diameter: QuantityLike,
    sheave_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Tension a rope bears for the life its bearing-pressure ratio stands for (Shigley).

    .. math:: F_f = (p/S_u) S_u d D / 2

    The ratio is read for the wanted life: ``fatigue.table("drucker_tachau_points")``.

    Source: Shigley's Mechanical Engineering Design, ch. 17, from memory; after Drucker & Tachau,
    Trans. ASME 67 (1945).

    Examples
    --------
    >>> import ropewalk as rw
    >>> tension = rw.fatigue.fatigue_tension(0.0014, "240 ksi", "1 in", "72 in")
    >>> print(f"{tension.to('lbf'):.0f}")
    12096 force_pound
    """
    ...


@face("fatigue.static_safety_factor")
def static_safety_factor(
    breaking_force: QuantityLike,
    bending_load: QuantityLike,
    rope_tension: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Static safety factor, the bending load taken off the strength (Shigley).

    .. math:: n_s = (F_u - F_b) / F_t

    Below 0 the bending alone overloads the rope.

    Source: Shigley's Mechanical Engineering Design, ch. 17, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.fatigue.static_safety_factor("84 kip", "4 kip", "10 kip")
    8.0
    """
    ...


@face("fatigue.fatigue_safety_factor")
def fatigue_safety_factor(
    fatigue_tension: QuantityLike,
    bending_load: QuantityLike,
    rope_tension: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Safety factor against fatigue within the wanted life (Shigley).

    .. math:: n_f = (F_f - F_b) / F_t

    Source: Shigley's Mechanical Engineering Design, ch. 17, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.fatigue.fatigue_safety_factor("12096 lbf", "4466.7 lbf", "3027.4 lbf"), 3)
    2.52
    """
    ...
