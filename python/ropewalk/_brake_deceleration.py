"""The functions of the subject `brake` on deceleration and on the tension a stop makes."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "hoisting_deceleration",
    "lowering_deceleration",
    "stop_tension_factor",
    "sudden_stop_factor",
]


@face("brake.lowering_deceleration")
def lowering_deceleration(
    brake_torque: QuantityLike,
    load_torque: QuantityLike,
    lines: NumberLike,
    drum_radius: QuantityLike,
    equivalent_mass: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Deceleration of a block that is lowered, brake fully on; negative if the load gains speed.

    .. math:: a = (T_b - T_L) N / (R M)

    The friction of the sheaves helps: `load_torque` is the fast-line tension of lowering times the
    radius. `equivalent_mass` is the load and all that turns as one mass at the hook, where a moment
    of inertia J at the drum shaft counts as :math:`J (N/R)^2` and the load as the drum feels it,
    :math:`T_L N / (R g)`: friction of the sheaves acts on its inertia as on its weight.

    Source: Newton's second law.

    Examples
    --------
    >>> import ropewalk as rw
    >>> a = rw.brake.lowering_deceleration("166.7 kN*m", "83.33 kN*m", 12, "0.5 m", "3660 tonne")
    >>> print(f"{a.magnitude:.3f} m/s2")
    0.547 m/s2
    """
    ...


@face("brake.hoisting_deceleration")
def hoisting_deceleration(
    brake_torque: QuantityLike,
    load_torque: QuantityLike,
    lines: NumberLike,
    drum_radius: QuantityLike,
    equivalent_mass: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Deceleration of a block that is hoisted, drive off and brake fully on: the load brakes too.

    .. math:: a = \min(g, (T_b + T_L) N / (R M))

    No line pushes a block down: where the result is standard gravity the brake slows the drum
    harder, the line goes slack and the block coasts up as if thrown. `Stop` says how far, and what
    follows when it falls back. Symbols and source as for `lowering_deceleration`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> a = rw.brake.hoisting_deceleration("166.7 kN*m", "83.33 kN*m", 12, "0.5 m", "3660 tonne")
    >>> print(f"{a.magnitude:.3f} m/s2")
    1.640 m/s2
    """
    ...


@face("brake.sudden_stop_factor")
def sudden_stop_factor(
    travel_speed: QuantityLike,
    line_stiffness: QuantityLike,
    hook_load: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Largest over static tension when the drum stops dead while a load is lowered.

    .. math:: F / W = 1 + v \sqrt{k m} / W, \quad m = W/g

    No damping, rope without weight. Source: energy of a mass on a spring; S. Timoshenko, Vibration
    Problems in Engineering, the suddenly stopped load of a hoist (from memory).

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.brake.sudden_stop_factor('0.5 m/s', '21.72 MN/m', '250 tonne_force'):.3f}")
    1.475
    """
    ...


@face("brake.stop_tension_factor")
def stop_tension_factor(
    travel_speed: QuantityLike,
    deceleration: QuantityLike,
    line_stiffness: QuantityLike,
    hook_load: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Largest over static tension when the drum is braked evenly to a stop, lowering.

    .. math::
       F / W = 1 + \frac{2a}{g} \sin \min\left(\frac{\omega t_s}{2}, \frac{\pi}{2}\right),
       \quad \omega = \sqrt{k/m}, \quad t_s = v/a

    `sudden_stop_factor` is its limit for a stop much shorter than the period of the load on the
    line; a stop longer than half the period gives 1 + 2a/g. No damping.

    Source: response of a mass on a spring to an acceleration switched on, then off.

    Examples
    --------
    >>> import ropewalk as rw
    >>> line = ("21.72 MN/m", "250 tonne_force")
    >>> print(f"{rw.brake.stop_tension_factor('1.5 m/s', '1 m/s**2', *line):.3f}")
    1.204
    """
    ...
