"""Row functions of `ropewalk.dynamics` on peak loads."""

from __future__ import annotations

from ropewalk._face import Policy, Quantity, QuantityLike, face

__all__ = [
    "drop_factor",
    "pickup_factor",
    "ramp_factor",
    "slack_speed",
    "step_factor",
    "stop_factor",
    "trough_factor",
    "wave_force",
    "wave_return_time",
]


@face("dynamics.step_factor")
def step_factor(
    upward_acceleration: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Peak over rest when the upper end is accelerated upward from one moment to the next.

    .. math:: F/W = 1 + 2 a/g

    For an acceleration that lasts half a swing or longer: twice what a slow change of it adds. One
    rigid mass on one spring without damping, here and in the other factors.

    Source: e.g. Harris' Shock and Vibration Handbook, 5th ed. (2002), ch. 8.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.dynamics.step_factor('1 m/s**2'):.3f}")
    1.204
    """
    ...


@face("dynamics.ramp_factor")
def ramp_factor(
    upward_acceleration: QuantityLike,
    ramp_time: QuantityLike,
    natural_frequency: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Peak over rest when the acceleration of the upper end rises evenly and then stays.

    .. math:: F/W = 1 + \frac{a}{g} \left(1 + \frac{|\sin \pi f t_r|}{\pi f t_r}\right)

    A ramp of one whole swing, or any whole number of them, leaves no swing at all; 0 is the step.

    Source: J. M. Biggs, Introduction to Structural Dynamics (1964), ch. 2; Harris' Shock and
    Vibration Handbook, 5th ed. (2002), ch. 8.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.dynamics.ramp_factor('1 m/s**2', '0.5 s', '1.483 Hz'):.3f}")
    1.134
    """
    ...


@face("dynamics.stop_factor")
def stop_factor(
    speed_change: QuantityLike,
    upward_acceleration: QuantityLike,
    natural_frequency: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Peak over rest when lowering is stopped, or hoisting started, at a constant acceleration.

    .. math::

       F/W = 1 + 2 \frac{a}{g} \sin \pi f t \quad (f t < 1/2), \qquad
       F/W = 1 + 2 \frac{a}{g} \quad \text{from there on}, \qquad t = \Delta v / a

    The acceleration ends when the speed has changed. A hard stop, a → ∞, is `pickup_factor` at the
    same speed.

    Source: rectangular pulse, J. M. Biggs, Introduction to Structural Dynamics (1964), ch. 2;
    Harris' Shock and Vibration Handbook, 5th ed. (2002), ch. 8.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.dynamics.stop_factor('0.2 m/s', '2 m/s**2', '1.483 Hz'):.3f}")
    1.183
    """
    ...


@face("dynamics.trough_factor")
def trough_factor(
    speed_change: QuantityLike,
    downward_acceleration: QuantityLike,
    natural_frequency: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Least load over rest when hoisting is stopped, or lowering started, at an acceleration.

    .. math::

       F/W = \max\left(0, 1 - 2 \frac{a}{g} \sin \pi f t\right) \quad (f t < 1/2), \qquad
       F/W = \max\left(0, 1 - 2 \frac{a}{g}\right) \quad \text{from there on}, \qquad
       t = \Delta v / a

    The swing of `stop_factor` the other way up. At 0 the line goes slack: the load flies and falls
    back into it, which is not followed here; slack line may leave sheaves and drum. An acceleration
    up to g/2 never makes it slack.

    Source: as for `stop_factor`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.dynamics.trough_factor('0.2 m/s', '2 m/s**2', '1.483 Hz'):.3f}")
    0.817
    """
    ...


@face("dynamics.slack_speed")
def slack_speed(
    natural_frequency: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Largest speed of hoisting that may be stopped at once without the line going slack.

    .. math:: v = \frac{g}{2 \pi f}

    Nothing swings back harder than a hard stop: below this speed no stop makes the line slack,
    however it is braked.

    Source: derived, `trough_factor` for a → ∞.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.dynamics.slack_speed('1.5 Hz').to('m/s'):.2f}")
    1.04 meter / second
    """
    ...


@face("dynamics.pickup_factor")
def pickup_factor(
    pickup_speed: QuantityLike,
    stiffness: QuantityLike,
    hook_load: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Peak over rest when slack is taken up at a speed, or lowering at that speed stopped at once.

    .. math:: F/W = 1 + v \sqrt{k m}/W = 1 + \frac{v}{g} \sqrt{\frac{k g}{W}}

    From the moment the line carries the load it swings about W with the speed v. Keep people clear
    of a load that is picked up: a line that has gone slack may also have left its sheave.

    Source: derived; the dynamic coefficient of offshore pedestal cranes has the same form, DNV
    Standard for Certification 2.22, Lifting Appliances, and API Spec 2C (both from memory).

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.dynamics.pickup_factor('1 m/s', '21.72 MN/m', '250 tonne_force'):.2f}")
    1.95
    """
    ...


@face("dynamics.drop_factor")
def drop_factor(
    drop_height: QuantityLike,
    static_stretch: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Peak over rest when the load falls freely into the line.

    .. math:: F/W = 1 + \sqrt{1 + 2 h/\delta}

    Without any fall it is 2: a load put on suddenly counts twice.

    Source: energy of the fall, e.g. Shigley, Mechanical Engineering Design, shock and impact; S.
    Timoshenko, Strength of Materials.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.dynamics.drop_factor("0 mm", "90 mm")
    2.0
    """
    ...


@face("dynamics.wave_force")
def wave_force(
    speed_change: QuantityLike,
    string_area: QuantityLike,
    string_modulus: QuantityLike,
    string_density: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Force that a sudden change of speed of its upper end puts into a long string.

    .. math:: \Delta F = \Delta v\,A \sqrt{E \rho}

    It lasts for `wave_return_time`. The trade's rule for pipe set hard into the slips, 1780 lbf a
    foot per second and square inch, is this with E = 30 million psi.

    Source: impedance of a thin rod, e.g. S. Timoshenko, Vibration Problems in Engineering; the rule
    in H. Rabia, Well Engineering & Construction, casing (from memory).

    Examples
    --------
    >>> import ropewalk as rw
    >>> force = rw.dynamics.wave_force("3 ft/s", "5.275 in**2", "30e6 psi", "7850 kg/m**3")
    >>> print(f"{force.to('lbf'):.0f}")
    28190 force_pound
    """
    ...


@face("dynamics.wave_return_time")
def wave_return_time(
    string_length: QuantityLike,
    string_modulus: QuantityLike,
    string_density: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Time until a wave of tension is back from the lower end of a string.

    .. math:: t = 2 L \sqrt{\rho/E}

    Source as for `wave_force`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> t = rw.dynamics.wave_return_time("3000 m", "30e6 psi", "7850 kg/m**3")
    >>> print(f"{t.to('s'):.2f}")
    1.17 second
    """
    ...
