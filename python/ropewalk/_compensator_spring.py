"""The functions of the subject `compensator` on the gas spring and the string on it."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "effective_area",
    "gas_load",
    "gas_stiffness",
    "hanging_ratio",
    "hanging_stroke",
    "natural_period",
    "needed_gas_volume",
    "swing_arm_roll",
]


@face("compensator.effective_area")
def effective_area(
    piston_area: QuantityLike,
    cylinders: NumberLike,
    travel_ratio: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Gas volume a travel of the load takes up, per length of that travel.

    .. math:: A = z A_p / r

    Work on both sides is the same: a chain over a sheave on the rods doubles the travel, r = 2,
    and halves the force. Source: statics.

    Examples
    --------
    >>> import ropewalk as rw
    >>> area = rw.compensator.effective_area("150 in**2", cylinders=2, travel_ratio=2)
    >>> print(f"{area.to('in**2').magnitude:.0f} in**2")
    150 in**2
    """
    ...


@face("compensator.gas_load")
def gas_load(
    mean_load: QuantityLike,
    effective_area: QuantityLike,
    gas_volume: QuantityLike,
    polytropic_exponent: NumberLike,
    spring_travel: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Load on a gas spring away from mid-stroke, polytropic change of state.

    .. math:: F = F_0 \left( \frac{V_0}{V_0 - A x} \right)^n

    x is positive where the gas is compressed: the vessel goes up, the load stays. n is 1 for a
    change slow enough to stay at one temperature, 1.4 for a fast one of an ideal gas; at the
    pressures of drilling rigs nitrogen is no ideal gas and n may be larger. Seal friction is not
    in it, and the pressure outside is neglected.

    Source: thermodynamics; form of the spring as in public descriptions of passive heave
    compensation.

    Examples
    --------
    >>> import ropewalk as rw
    >>> load = rw.compensator.gas_load("2000 kN", "0.1 m**2", "6 m**3", 1.2, "3 m")
    >>> print(f"{load.to('kN').magnitude:.1f} kN")
    2127.0 kN
    """
    ...


@face("compensator.gas_stiffness")
def gas_stiffness(
    mean_load: QuantityLike,
    effective_area: QuantityLike,
    gas_volume: QuantityLike,
    polytropic_exponent: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Stiffness of a gas spring at mid-stroke, the slope of `gas_load` there.

    .. math:: k = n F_0 A / V_0

    With the pressure p = F_0/A it is n p A²/V_0. Source as for `gas_load`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> stiffness = rw.compensator.gas_stiffness("2000 kN", "0.1 m**2", "6 m**3", 1.2)
    >>> print(f"{stiffness.to('kN/m').magnitude:.1f} kN/m")
    40.0 kN/m
    """
    ...


@face("compensator.needed_gas_volume")
def needed_gas_volume(
    effective_area: QuantityLike,
    half_stroke: QuantityLike,
    polytropic_exponent: NumberLike,
    load_rise: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Gas volume that keeps the rise of the load over a travel within a share of it.

    .. math:: V_0 = \frac{A x}{1 - (1 + \nu)^{-1/n}}

    The fall on the other side is smaller than the rise. Source: `gas_load`, solved for the volume.

    Examples
    --------
    >>> import ropewalk as rw
    >>> volume = rw.compensator.needed_gas_volume("0.1 m**2", "3 m", 1.4, 0.05)
    >>> print(f"{volume.to('m**3').magnitude:.2f} m**3")
    8.76 m**3
    """
    ...


@face("compensator.swing_arm_roll")
def swing_arm_roll(
    sheave_diameter: QuantityLike,
    arm_length: QuantityLike,
    crown_travel: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Rope rolled on a sheave that a swinging arm carries along with a crown-mounted compensator.

    .. math:: l = D \arcsin(s / 2a)

    The arm keeps the path of fast and dead line as long as it is; the line rolls on the sheave as
    far as the arm turns. Source: geometry, arm level at mid-stroke.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rolled = rw.compensator.swing_arm_roll("60 in", "20 ft", "25 ft")
    >>> print(f"{rolled.to('ft').magnitude:.2f} ft")
    3.38 ft
    """
    ...


@face("compensator.natural_period")
def natural_period(
    hanging_mass: QuantityLike,
    gas_stiffness: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Natural period of a mass that hangs free on the gas spring.

    .. math:: T_n = 2 \pi \sqrt{m / k}

    The string moves as one mass. Source: a mass on a spring.

    Examples
    --------
    >>> import ropewalk as rw
    >>> period = rw.compensator.natural_period("204 tonne", "40 kN/m")
    >>> print(f"{period.to('s').magnitude:.2f} s")
    14.19 s
    """
    ...


@face("compensator.hanging_ratio")
def hanging_ratio(
    wave_period: QuantityLike,
    natural_period: QuantityLike,
    damping_ratio: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Motion of a mass that hangs free on the spring over the heave of the vessel.

    .. math:: \left| \frac{X}{H} \right| = \sqrt{\frac{1 + (2 \zeta r)^2}
        {(1 - r^2)^2 + (2 \zeta r)^2}}, \quad r = T_n / T

    Below 1 only for waves shorter than :math:`T_n / \sqrt{2}`; near :math:`T_n` the load moves
    more than the vessel. Damping is viscous, between vessel and load.

    Source: J. P. Den Hartog, Mechanical Vibrations, motion of the support; undamped as in public
    descriptions of passive heave compensation.

    Examples
    --------
    A string off bottom in waves of 12 s moves two and a half times as much as the vessel:

    >>> import ropewalk as rw
    >>> print(f"{rw.compensator.hanging_ratio('12 s', '14.19 s', 0):.2f}")
    2.51
    """
    ...


@face("compensator.hanging_stroke")
def hanging_stroke(
    heave_amplitude: QuantityLike,
    gas_stiffness: QuantityLike,
    hanging_mass: QuantityLike,
    wave_period: QuantityLike,
    seal_friction: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Stroke amplitude under a mass that hangs free, with seal friction.

    .. math:: Z = \frac{\sqrt{(m \omega^2 Y)^2 - (4 R / \pi)^2}}{|k - m \omega^2|}

    Friction R counts as a viscous damping that takes as much out of a cycle, 4 R Z. The stroke is
    0 where it leaves nothing under the root: the seals hold and the load moves with the vessel.
    Good while the stroke is nearly a sine, R well below m ω² Y; exactly the seals hold for m ω² Y
    ≤ R. Dry friction does not bound the resonance: where the wave has the natural period, to a
    billionth of k, and the seals do not hold, the stroke has no bound and is refused.

    Source: J. P. Den Hartog, Mechanical Vibrations (1931 paper in Trans. ASME 53), equivalent
    viscous damping of dry friction.

    Examples
    --------
    >>> import ropewalk as rw
    >>> hanging = ("40 kN/m", "204 tonne", "8 s")
    >>> stroke = rw.compensator.hanging_stroke("1.5 m", *hanging, "30 kN")
    >>> print(f"{stroke.to('m').magnitude:.2f} m")
    2.15 m
    >>> rw.compensator.hanging_stroke("0.1 m", *hanging, "30 kN").magnitude
    0.0
    """
    ...
