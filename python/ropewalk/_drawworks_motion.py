"""Turning parts and the time of a stroke: functions of `ropewalk.drawworks`."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "hook_equivalent_mass",
    "reflected_inertia",
    "sheave_equivalent_mass",
    "stand_peak_speed",
    "stand_time",
]


@face("drawworks.reflected_inertia")
def reflected_inertia(
    inertia: QuantityLike,
    gear_ratio: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Moment of inertia of a part, seen from a shaft that turns slower by a ratio.

    .. math:: J_r = J i^2

    Both have the same kinetic energy; losses are not counted. Source: kinematics; Shigley,
    Mechanical Engineering Design, problem 16-27.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(rw.drawworks.reflected_inertia("30 kg*m**2", 10))
    3000.0 kilogram * meter ** 2
    """
    ...


@face("drawworks.hook_equivalent_mass")
def hook_equivalent_mass(
    inertia: QuantityLike,
    lines: NumberLike,
    lap_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Mass at the hook that is as hard to accelerate as what turns with the drum.

    .. math:: m = J (2 N / D)^2

    with J the moment of inertia of all of it, referred to the drum shaft. Losses are not counted.
    Source: kinematics, equal kinetic energies.

    Examples
    --------
    A drum of 2500 kg·m² is as heavy at the hook as 1440 tonnes:

    >>> import ropewalk as rw
    >>> mass = rw.drawworks.hook_equivalent_mass("2500 kg*m**2", 12, "1 m")
    >>> print(f"{mass.to('tonne').magnitude:.0f} t")
    1440 t
    """
    ...


@face("drawworks.sheave_equivalent_mass")
def sheave_equivalent_mass(
    inertia: QuantityLike,
    lines: NumberLike,
    sheave_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Mass at the hook that is as hard to accelerate as the turning sheaves of the blocks.

    .. math:: m = J (2 / D)^2 N (N + 1)(2 N + 1) / 6

    with J the moment of inertia of one sheave, all alike: sheave k turns with k times the speed of
    the block. Lead sheaves are not counted. Source: kinematics.

    Examples
    --------
    >>> import ropewalk as rw
    >>> mass = rw.drawworks.sheave_equivalent_mass("80 kg*m**2", 10, "54 in")
    >>> print(f"{mass.to('tonne').magnitude:.1f} t")
    65.5 t
    """
    ...


@face("drawworks.stand_peak_speed")
def stand_peak_speed(
    travel: QuantityLike,
    speed_limit: QuantityLike,
    start_acceleration: QuantityLike,
    stop_deceleration: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Highest speed of a stroke from rest to rest.

    .. math:: v_p = \min\left(v, \sqrt{2 L / (1/a + 1/d)}\right)

    Short strokes never reach the limit. Source: kinematics.

    Examples
    --------
    >>> import ropewalk as rw
    >>> peak = rw.drawworks.stand_peak_speed("28 m", "4 m/s", "0.4 m/s**2", "0.4 m/s**2")
    >>> print(f"{peak:.4f}")
    3.3466 meter / second
    """
    ...


@face("drawworks.stand_time")
def stand_time(
    travel: QuantityLike,
    speed_limit: QuantityLike,
    start_acceleration: QuantityLike,
    stop_deceleration: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Time of a stroke from rest to rest under limits of speed and acceleration.

    .. math:: t = L / v_p + (v_p / 2) (1/a + 1/d)

    with :math:`v_p` of `stand_peak_speed`: speed against time is a trapezoid, or a triangle where
    the limit is not reached. What the motors can do is not looked at; `Hoist.stroke` does.
    Source: kinematics.

    Examples
    --------
    >>> import ropewalk as rw
    >>> time = rw.drawworks.stand_time("28 m", "1.2 m/s", "0.3 m/s**2", "0.3 m/s**2")
    >>> print(f"{time:.3f}")
    27.333 second
    """
    ...
