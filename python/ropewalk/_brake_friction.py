"""The functions of the subject `brake` on band and disc brakes."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "band_lever_tension",
    "band_mean_pressure",
    "band_pressure",
    "band_tension_ratio",
    "band_torque",
    "band_torque_reversed",
    "caliper_torque",
    "pad_radius_uniform_pressure",
    "pad_radius_uniform_wear",
    "spring_pad_force",
]


@face("brake.band_tension_ratio")
def band_tension_ratio(
    lining_friction: NumberLike,
    wrap_angle: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Tension of the tight over the slack end of a slipping band, Euler and Eytelwein.

    .. math:: T_1 / T_2 = e^{\mu \theta}

    Source: L. Euler (1769), J. A. Eytelwein (1808), belt friction; for brakes Machinery's
    Handbook, 27th ed., simple band brakes.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.brake.band_tension_ratio(0.35, '280 deg'):.3f}")
    5.531
    """
    ...


@face("brake.band_torque")
def band_torque(
    lever_tension: QuantityLike,
    lining_friction: NumberLike,
    wrap_angle: QuantityLike,
    rim_diameter: QuantityLike,
    bands: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Torque of band brakes that the rim helps: it turns from the lever end toward the anchor.

    .. math:: T = n F (e^{\mu \theta} - 1) D / 2

    Rigged so, a brake helps against the falling load. It gives way with friction more than in
    proportion: a lining that fades from 0.35 to 0.30 on 280° loses a quarter of the torque.

    Source as for `band_tension_ratio`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> torque = rw.brake.band_torque("25.25 kN", 0.35, "280 deg", "1.18 m", bands=2)
    >>> print(f"{torque.to('kN*m').magnitude:.1f} kN*m")
    135.0 kN*m
    """
    ...


@face("brake.band_torque_reversed")
def band_torque_reversed(
    lever_tension: QuantityLike,
    lining_friction: NumberLike,
    wrap_angle: QuantityLike,
    rim_diameter: QuantityLike,
    bands: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Torque of the same brake while the rim turns the other way: less by the tension ratio.

    .. math:: T = n F (1 - e^{-\mu \theta}) D / 2

    The lever now holds the tight end. Source as for `band_tension_ratio`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> torque = rw.brake.band_torque_reversed("25.25 kN", 0.35, "280 deg", "1.18 m", bands=2)
    >>> print(f"{torque.to('kN*m').magnitude:.1f} kN*m")
    24.4 kN*m
    """
    ...


@face("brake.band_lever_tension")
def band_lever_tension(
    brake_torque: QuantityLike,
    lining_friction: NumberLike,
    wrap_angle: QuantityLike,
    rim_diameter: QuantityLike,
    bands: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Tension the lever must put into each band for a torque, the rim helping.

    .. math:: F = \frac{2 T}{n D (e^{\mu \theta} - 1)}

    The anchor feels `band_tension_ratio` times as much. Source as there.

    Examples
    --------
    >>> import ropewalk as rw
    >>> tension = rw.brake.band_lever_tension("135 kN*m", 0.35, "280 deg", "1.18 m", bands=2)
    >>> print(f"{tension.to('kN').magnitude:.2f} kN")
    25.25 kN
    """
    ...


@face("brake.band_pressure")
def band_pressure(
    band_tension: QuantityLike,
    band_width: QuantityLike,
    rim_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Pressure of a band on its rim where it has a tension; largest at the tight end.

    .. math:: p = 2 F / (b D)

    Source: equilibrium of a piece of band; J. E. Shigley, Mechanical Engineering Design, band-type
    clutches and brakes (from memory).

    Examples
    --------
    >>> import ropewalk as rw
    >>> pressure = rw.brake.band_pressure("139.65 kN", "250 mm", "1.18 m")
    >>> print(f"{pressure.to('MPa').magnitude:.3f} MPa")
    0.947 MPa
    """
    ...


@face("brake.band_mean_pressure")
def band_mean_pressure(
    brake_torque: QuantityLike,
    lining_friction: NumberLike,
    wrap_angle: QuantityLike,
    band_width: QuantityLike,
    rim_diameter: QuantityLike,
    bands: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Mean pressure on the linings of band brakes that give a torque.

    .. math:: p = \frac{4 T}{n \mu b D^2 \theta}

    Source: the torque is friction times pressure times lined area at the radius of the rim.

    Examples
    --------
    >>> import ropewalk as rw
    >>> pressure = rw.brake.band_mean_pressure(
    ...     "135 kN*m", 0.35, "280 deg", "250 mm", "1.18 m", bands=2
    ... )
    >>> print(f"{pressure.to('MPa').magnitude:.3f} MPa")
    0.453 MPa
    """
    ...


@face("brake.pad_radius_uniform_wear")
def pad_radius_uniform_wear(
    pad_outer_radius: QuantityLike,
    pad_inner_radius: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Radius at which the friction of a pad acts when it has worn in.

    .. math:: r_e = (r_o + r_i) / 2

    Source: J. E. Shigley, Mechanical Engineering Design, caliper disk brakes, uniform wear (from
    memory).

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(rw.brake.pad_radius_uniform_wear("5.5 in", "3.875 in").to("in"))
    4.6875 inch
    """
    ...


@face("brake.pad_radius_uniform_pressure")
def pad_radius_uniform_pressure(
    pad_outer_radius: QuantityLike,
    pad_inner_radius: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Radius at which the friction of a new pad acts, pressed evenly.

    .. math:: r_e = \frac{2}{3} \frac{r_o^3 - r_i^3}{r_o^2 - r_i^2}

    Never less than `pad_radius_uniform_wear`. Source: J. E. Shigley, Mechanical Engineering Design,
    caliper disk brakes, uniform pressure (from memory).

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.brake.pad_radius_uniform_pressure('0.8 m', '0.6 m').magnitude:.4f} m")
    0.7048 m
    """
    ...


@face("brake.caliper_torque")
def caliper_torque(
    pad_force: QuantityLike,
    lining_friction: NumberLike,
    pad_radius: QuantityLike,
    calipers: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Torque of a number of calipers with two pads each, the same in both directions.

    .. math:: T = 2 \mu F r z

    Source: J. E. Shigley, Mechanical Engineering Design, caliper disk brakes (from memory).

    Examples
    --------
    >>> import ropewalk as rw
    >>> torque = rw.brake.caliper_torque("75 kN", 0.35, "0.7 m", calipers=12)
    >>> print(f"{torque.to('kN*m').magnitude:.0f} kN*m")
    441 kN*m
    """
    ...


@face("brake.spring_pad_force")
def spring_pad_force(
    spring_force: QuantityLike,
    spring_rate: QuantityLike,
    pad_wear: QuantityLike,
    release_pressure: QuantityLike,
    release_area: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Force of a pad that springs press on and oil pressure holds off; 0 if it is held off.

    .. math:: F = \max(0, F_s - k w - p A)

    Source: equilibrium of the piston.

    Examples
    --------
    >>> import ropewalk as rw
    >>> lost = rw.brake.spring_pad_force("80 kN", "2.5 kN/mm", "2 mm", "0 MPa", "8000 mm**2")
    >>> print(f"{lost.to('kN').magnitude:.0f} kN with the pressure lost")
    75 kN with the pressure lost
    """
    ...
