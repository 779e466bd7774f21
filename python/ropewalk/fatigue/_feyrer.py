"""Factors on bending life for size, length, side deflection and reverse bending (Feyrer)."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, QuantityLike, face

__all__ = ["fleet_angle_factor", "length_factor", "reverse_bending_cycles", "size_factor"]


@face("fatigue.size_factor")
def size_factor(
    rope_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Rope diameter factor f_d on bending life (Feyrer).

    .. math:: f_d = \frac{0.52}{-0.48 + (d / 16\,\mathrm{mm})^{0.3}}

    Equal to 1 at 16 mm. Valid for 8 to 44 mm (base of the tests, from memory).

    Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.14a.

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.fatigue.size_factor("32 mm"), 4)
    0.6923
    """
    ...


@face("fatigue.length_factor")
def length_factor(
    bend_length_ratio: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Bending length factor f_L on bending life (Feyrer): a longer piece holds a weaker place.

    .. math:: f_L = \frac{1.49}{2.49 - ((l/d - 2.5)/57.5)^{-0.14}}

    Equal to 1 at l/d = 60. Valid for l/d of at least 10 (base of the tests, from memory).

    Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.14a.

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.fatigue.length_factor(600), 4)
    0.8421
    """
    ...


@face("fatigue.fleet_angle_factor")
def fleet_angle_factor(
    bend_ratio: NumberLike,
    fleet_angle: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Side deflection factor f_N2 on bending life (Schönherr 2005, Neumann 1987).

    .. math:: f_{N2} = 1 - (0.00863 + 0.00243 D/d)\,\theta - 0.00103\,\theta^2

    with the angle in degrees. The source prints no range with it; a deflection at which the fit
    leaves no life is refused.

    Source: Feyrer, Wire Ropes, 2nd ed. (2015), Table 3.15.

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.fatigue.fleet_angle_factor(25, "1.5 deg"), 4)
    0.8936
    """
    ...


@face("fatigue.reverse_bending_cycles")
def reverse_bending_cycles(
    simple_bending_cycles: NumberLike,
    bend_ratio: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Life in reverse bending of a rope that has a given life in simple bending (Feyrer).

    .. math:: N_{rev} = \min(N_{sim},\; 9.026\, N_{sim}^{0.618} (D/d)^{0.424})

    Below about 10 000 cycles the power alone would give more than simple bending, which reverse
    bending cannot: the result is capped there. Valid for D/d 10 to 63 (from memory).

    Source: Feyrer, Wire Ropes, eq. 3.61; the three constants from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.fatigue.reverse_bending_cycles(100_000, 25))
    43473
    """
    ...
