"""The functions of the subject `compensator` on how far heave goes, and on the active drum."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "active_line_speed",
    "active_power",
    "active_power_with_inertia",
    "active_work",
    "allowed_heave_deviation",
    "cycle_exceedance",
    "expected_maximum",
    "heave_acceleration",
    "heave_cycles",
    "heave_speed",
    "mean_of_highest",
    "most_probable_maximum",
    "stroke_exceedance",
]


@face("compensator.heave_cycles")
def heave_cycles(
    duration: QuantityLike,
    heave_period: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    """Cycles of heave in a duration.

    .. math:: N = t / T_z

    :math:`T_z` is the zero-crossing period of heave. Source: definition.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.compensator.heave_cycles("3 hour", "9 s")
    1200.0
    """
    ...


@face("compensator.cycle_exceedance")
def cycle_exceedance(
    heave_deviation: QuantityLike,
    half_stroke: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Probability that one cycle of heave goes beyond a half stroke, Rayleigh.

    .. math:: p = e^{-x^2 / 2 \sigma^2}

    x is the stroke left in the shorter direction, σ the standard deviation of heave. One side is
    counted, as is usual; that either side is exceeded is at most twice as likely. Range: a
    Gaussian motion of narrow band; for a broader band large amplitudes are overstated a little.

    Source: M. S. Longuet-Higgins, J. Mar. Res. 11 (1952).

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.compensator.cycle_exceedance('0.75 m', '12.5 ft'):.2e}")
    2.49e-06
    """
    ...


@face("compensator.stroke_exceedance")
def stroke_exceedance(
    heave_deviation: QuantityLike,
    half_stroke: QuantityLike,
    heave_cycles: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    """Probability that a half stroke is exceeded at least once in some cycles.

    .. math:: P = 1 - (1 - p)^N

    p is `cycle_exceedance`; cycles are taken as independent. Source as there.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.compensator.stroke_exceedance('0.75 m', '12.5 ft', 1200):.4f}")
    0.0030
    """
    ...


@face("compensator.allowed_heave_deviation")
def allowed_heave_deviation(
    half_stroke: QuantityLike,
    exceedance: NumberLike,
    heave_cycles: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Largest standard deviation of heave for which a half stroke is exceeded with a probability.

    .. math:: \sigma = \frac{x}{\sqrt{-2 \ln(1 - (1 - P)^{1/N})}}

    Source: `stroke_exceedance`, solved for the deviation.

    Examples
    --------
    >>> import ropewalk as rw
    >>> deviation = rw.compensator.allowed_heave_deviation("12.5 ft", 0.01, 1200)
    >>> print(f"{deviation.to('m').magnitude:.3f} m")
    0.788 m
    """
    ...


@face("compensator.most_probable_maximum")
def most_probable_maximum(
    heave_deviation: QuantityLike,
    heave_cycles: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Amplitude that the largest of some cycles most probably has.

    .. math:: x = \sigma \sqrt{2 \ln N}

    It is exceeded with a probability of about 63 %. The law of large N: below the exact mode, by
    19 % at N = 2, 4 % at 10, 1.6 % at 50; valid here from N = 10. Source as for `cycle_exceedance`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> largest = rw.compensator.most_probable_maximum("0.75 m", 1200)
    >>> print(f"{largest.to('m').magnitude:.3f} m")
    2.824 m
    """
    ...


@face("compensator.expected_maximum")
def expected_maximum(
    heave_deviation: QuantityLike,
    heave_cycles: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Mean of the largest amplitude of some cycles, for many of them.

    .. math:: x = \sigma \left( \sqrt{2 \ln N} + \frac{0.57722}{\sqrt{2 \ln N}} \right)

    The law of large N, valid here from N = 10. Source as for `cycle_exceedance`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> largest = rw.compensator.expected_maximum("0.75 m", 1200)
    >>> print(f"{largest.to('m').magnitude:.3f} m")
    2.939 m
    """
    ...


@face("compensator.mean_of_highest")
def mean_of_highest(
    heave_deviation: QuantityLike,
    highest_share: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Mean amplitude of the highest share of all cycles.

    .. math:: x = \sigma \sqrt{2} \left( \sqrt{-\ln q}
        + \frac{\sqrt{\pi}}{2 q} \mathrm{erfc} \sqrt{-\ln q} \right)

    q = 1/3 gives the significant amplitude, 2.00 σ; q = 1 the mean of all. Source as for
    `cycle_exceedance`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> significant = rw.compensator.mean_of_highest("0.75 m", 1 / 3)
    >>> print(f"{significant.to('m').magnitude:.2f} m")
    1.50 m
    """
    ...


@face("compensator.heave_speed")
def heave_speed(
    heave_height: QuantityLike,
    heave_period: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Largest speed of the block against the vessel, taking up a sine of heave.

    .. math:: v = \pi H / T

    Source: a sine.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.compensator.heave_speed('3 m', '9 s').to('m/s').magnitude:.3f} m/s")
    1.047 m/s
    """
    ...


@face("compensator.heave_acceleration")
def heave_acceleration(
    heave_height: QuantityLike,
    heave_period: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Largest acceleration of the block against the vessel, taking up a sine of heave.

    .. math:: a = 2 \pi^2 H / T^2

    Source: a sine.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.compensator.heave_acceleration('3 m', '9 s').to('m/s**2').magnitude:.3f}")
    0.731
    """
    ...


@face("compensator.active_line_speed")
def active_line_speed(
    lines: NumberLike,
    heave_height: QuantityLike,
    heave_period: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Largest speed of the line at a drum that takes up the heave.

    .. math:: v_f = N \pi H / T

    The fast line runs as many times as fast as the block as there are lines. Source: a sine.

    Examples
    --------
    >>> import ropewalk as rw
    >>> speed = rw.compensator.active_line_speed(12, "3 m", "9 s")
    >>> print(f"{speed.to('ft/min').magnitude:.0f} ft/min")
    2474 ft/min
    """
    ...


@face("compensator.active_power")
def active_power(
    hook_load: QuantityLike,
    heave_height: QuantityLike,
    heave_period: QuantityLike,
    reeving_efficiency: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Largest power at the drum that takes up the heave, load and friction alone.

    .. math:: P = W \pi H / (T E)

    E is the efficiency of the lines while hoisting. As much, times E², comes back while lowering:
    the drive must take it. What drum and motors need to turn over comes on top, see
    `active_power_with_inertia`. Source: a sine.

    Examples
    --------
    >>> import ropewalk as rw
    >>> power = rw.compensator.active_power("400 kip", "3 m", "9 s", 0.8)
    >>> print(f"{power.to('hp').magnitude:.0f} hp")
    3123 hp
    """
    ...


@face("compensator.active_power_with_inertia")
def active_power_with_inertia(
    hook_load: QuantityLike,
    heave_height: QuantityLike,
    heave_period: QuantityLike,
    reeving_efficiency: NumberLike,
    turning_mass: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Largest power at the drum that takes up the heave, with what turns.

    .. math:: P = \max_\theta \left( A \sin \theta + \frac{B}{2} \sin 2 \theta \right), \quad
        A = \frac{W v}{E}, \quad B = m v^2 \omega, \quad v = \frac{\pi H}{T}

    The turning mass m is that of drum, gears, motors and sheaves moved to the hook, as
    `ropewalk.drawworks.Drive.turning_mass` has it. The load needs most at full speed, what turns
    midway to it; the largest sum is at :math:`\cos \theta = 2 B / (A + \sqrt{A^2 + 8 B^2})`. Block
    and string stay where they are and need none. Source: a sine.

    Examples
    --------
    >>> import ropewalk as rw
    >>> heave = ("3 m", "9 s", 0.8)
    >>> power = rw.compensator.active_power_with_inertia("400 kip", *heave, "1000 tonne")
    >>> print(f"{power.to('hp').magnitude:.0f} hp")
    3274 hp
    """
    ...


@face("compensator.active_work")
def active_work(
    hook_load: QuantityLike,
    heave_height: QuantityLike,
    heave_cycles: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Work of the line in some cycles of heave, up and down counted alike, as for ton-miles.

    .. math:: U = 2 W H N

    In the mean of a narrow-banded heave H is :math:`\sqrt{2 \pi}\,\sigma`. Source: load times
    travel, as API RP 9B counts the service of a line.

    Examples
    --------
    >>> import ropewalk as rw
    >>> work = rw.compensator.active_work("2000 kN", "3 m", 400)
    >>> print(f"{work.to('ton_mile').magnitude:.0f} ton-miles")
    335 ton-miles
    """
    ...
