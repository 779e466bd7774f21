"""Power, speed and torque from the motors to the hook: functions of `ropewalk.drawworks`."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "drum_speed",
    "drum_torque",
    "hoisting_power",
    "hoisting_speed",
    "hook_power",
    "motor_torque",
    "power_for_depth",
]


@face("drawworks.hook_power")
def hook_power(
    hook_load: QuantityLike,
    block_speed: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Power at the hook.

    .. math:: P_h = W v

    Source: Bourgoyne, Millheim, Chenevert and Young, Applied Drilling Engineering, SPE (1986),
    ch. 1.

    Examples
    --------
    >>> import ropewalk as rw
    >>> power = rw.drawworks.hook_power("300000 lbf", "46.26 ft/min")
    >>> print(f"{power.to('hp').magnitude:.1f} hp")
    420.5 hp
    """
    ...


@face("drawworks.hoisting_power")
def hoisting_power(
    hook_load: QuantityLike,
    block_speed: QuantityLike,
    total_efficiency: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Power that must go in to hoist a load steadily.

    .. math:: P = W v / \eta

    with η all stages multiplied, from where the input is counted: gear, drum and reeving.
    Source: as `hook_power`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> power = rw.drawworks.hoisting_power("1000000 lbf", "38.115 ft/min", 0.77)
    >>> print(f"{power.to('hp').magnitude:.0f} hp")
    1500 hp
    """
    ...


@face("drawworks.hoisting_speed")
def hoisting_speed(
    hook_load: QuantityLike,
    input_power: QuantityLike,
    total_efficiency: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Speed at which a power hoists a load steadily.

    .. math:: v = \eta P / W

    printed as :math:`v = 33{,}000\,E P / W` with ft/min, hp and lbf. Below the top speed of the
    motors the product of load and speed is the same for every load. Source: as `hook_power`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> speed = rw.drawworks.hoisting_speed("300000 lbf", "500 hp", 0.841)
    >>> print(f"{speed.to('ft/min').magnitude:.1f} ft/min")
    46.3 ft/min
    """
    ...


@face("drawworks.drum_speed")
def drum_speed(
    block_speed: QuantityLike,
    lines: NumberLike,
    lap_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Rotation of the drum.

    .. math:: \omega = 2 N v / D

    Source: geometry; the drum takes N times the travel of the block.

    Examples
    --------
    >>> import ropewalk as rw
    >>> turning = rw.drawworks.drum_speed("38.1 ft/min", 12, "5 ft")
    >>> print(f"{turning.to('rpm').magnitude:.1f} rpm")
    29.1 rpm
    """
    ...


@face("drawworks.drum_torque")
def drum_torque(
    fast_line_tension: QuantityLike,
    lap_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Torque of the fast line on the drum.

    .. math:: M = F D / 2

    Source: statics.

    Examples
    --------
    >>> import ropewalk as rw
    >>> torque = rw.drawworks.drum_torque("49200 lbf", "30 in")
    >>> print(f"{torque.to('ft*lbf').magnitude:.0f}")
    61500
    """
    ...


@face("drawworks.motor_torque")
def motor_torque(
    motor_power: QuantityLike,
    base_speed: QuantityLike,
    motor_speed: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Torque of a motor: constant up to its base speed, at constant power above.

    .. math:: M = P / \max(\omega_b, \omega)

    The ideal of a direct-current motor with field weakening and of an induction motor on a
    frequency converter, below its top speed. Source: common practice of electric drives, no
    source.

    Examples
    --------
    >>> import ropewalk as rw
    >>> torque = rw.drawworks.motor_torque("1000 hp", "800 rpm", rw.Q([400, 800, 1600], "rpm"))
    >>> print(torque.to("kN*m").round(2))
    [8.9 8.9 4.45] kilonewton * meter
    """
    ...


@face("drawworks.power_for_depth")
def power_for_depth(
    depth: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Drawworks power usual for a depth of well: 1 hp for 10 ft.

    A rule of thumb that knows neither casing nor mud nor drag: for a first look only; see also
    `size_for_depth`. Range: wells of 3,000 to 40,000 ft (common practice, no source). Source: UNSW
    petroleum engineering course notes, ch. 3.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.drawworks.power_for_depth('15000 ft').to('hp').magnitude:.0f} hp")
    1500 hp
    """
    ...
