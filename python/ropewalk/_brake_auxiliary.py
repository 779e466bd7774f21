"""The functions of the subject `brake` on eddy-current and motor brakes."""

from __future__ import annotations

from ropewalk._face import Policy, Quantity, QuantityLike, face

__all__ = [
    "braking_power",
    "eddy_stable_speed",
    "eddy_torque",
    "eddy_unstable_speed",
    "motor_brake_torque",
]


@face("brake.eddy_torque")
def eddy_torque(
    peak_torque: QuantityLike,
    critical_speed: QuantityLike,
    drum_rotation: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Torque of an eddy-current brake at a speed, by its peak torque and critical speed.

    .. math:: T = \frac{2 T_m}{\omega/\omega_c + \omega_c/\omega}

    It rises with speed below the critical speed and falls above, the same at :math:`x\,\omega_c`
    and :math:`\omega_c / x`. At rest it has none: it cannot hold a load.

    Source: J. H. Wouterse, Critical torque and speed of eddy current brake with widely separated
    soft iron poles, IEE Proceedings B 138 (1991) 153; the form of M. Kloss (1908).

    Examples
    --------
    >>> import ropewalk as rw
    >>> torque = rw.brake.eddy_torque("100 kN*m", "50 rpm", "20 rpm")
    >>> print(f"{torque.to('kN*m').magnitude:.2f} kN*m")
    68.97 kN*m
    """
    ...


@face("brake.eddy_stable_speed")
def eddy_stable_speed(
    peak_torque: QuantityLike,
    critical_speed: QuantityLike,
    load_torque: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Speed at which a load settles on an eddy-current brake alone.

    .. math:: \omega = \omega_c (q - \sqrt{q^2 - 1}), \quad q = T_m / T_L

    A load heavier than the peak is refused here; `lowering_balance` says what becomes of it.

    Source as for `eddy_torque`, solved for the speed.

    Examples
    --------
    >>> import ropewalk as rw
    >>> speed = rw.brake.eddy_stable_speed("100 kN*m", "50 rpm", "60 kN*m")
    >>> print(f"{speed.to('rpm').magnitude:.2f} rpm")
    16.67 rpm
    """
    ...


@face("brake.eddy_unstable_speed")
def eddy_unstable_speed(
    peak_torque: QuantityLike,
    critical_speed: QuantityLike,
    load_torque: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Speed above which an eddy-current brake no longer catches a load.

    .. math:: \omega = \omega_c (q + \sqrt{q^2 - 1}), \quad q = T_m / T_L

    Past it the torque falls below that of the load, which runs away. Source as for `eddy_torque`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> speed = rw.brake.eddy_unstable_speed("100 kN*m", "50 rpm", "60 kN*m")
    >>> print(f"{speed.to('rpm').magnitude:.1f} rpm")
    150.0 rpm
    """
    ...


@face("brake.motor_brake_torque")
def motor_brake_torque(
    motor_torque_limit: QuantityLike,
    motor_power_limit: QuantityLike,
    drum_rotation: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Largest braking torque of motors at a speed, all brought to the drum shaft.

    .. math:: T = \min(T_{max}, P_{max} / \omega)

    At rest they hold only while drive and control do. Source: definition of the two limits.

    Examples
    --------
    >>> import ropewalk as rw
    >>> torque = rw.brake.motor_brake_torque("60 kN*m", "200 kW", "100 rpm")
    >>> print(f"{torque.to('kN*m').magnitude:.1f} kN*m")
    19.1 kN*m
    """
    ...


@face("brake.braking_power")
def braking_power(
    brake_torque: QuantityLike,
    drum_rotation: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Heat of a brake that turns under a torque, or power a motor hands back.

    .. math:: P = T \omega

    Source: definition of power.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.brake.braking_power('100 kN*m', '50 rpm').to('kW').magnitude:.1f} kW")
    523.6 kW
    """
    ...
