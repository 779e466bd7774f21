"""The functions of the subject `compensator` on waves and the vessel."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "box_hull_heave",
    "jonswap",
    "jonswap_normalizer",
    "mean_period_ratio",
    "peak_factor",
    "pierson_moskowitz",
    "steepest_height",
    "zero_crossing_ratio",
]


@face("compensator.pierson_moskowitz")
def pierson_moskowitz(
    significant_height: QuantityLike,
    peak_period: QuantityLike,
    wave_frequency: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Spectrum of a fully developed sea, Pierson and Moskowitz, by height and peak period.

    .. math:: S = \frac{5}{16} H_s^2 \omega_p^4 \omega^{-5}
        e^{-\frac{5}{4} (\omega_p / \omega)^4}, \quad \omega_p = 2 \pi / T_p

    One-sided; its integral is :math:`H_s^2 / 16`. Range: wind sea, deep water.

    Source: W. J. Pierson and L. Moskowitz, J. Geophys. Res. 69 (1964), in the form of DNV-RP-C205,
    3.5.5.

    Examples
    --------
    >>> import ropewalk as rw
    >>> density = rw.compensator.pierson_moskowitz("4 m", "11 s", "0.571 rad/s")
    >>> print(f"{density.magnitude:.2f}")
    2.51
    """
    ...


@face("compensator.jonswap_normalizer")
def jonswap_normalizer(
    peak_factor: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""What keeps the height of a JONSWAP sea when its peak is raised.

    .. math:: A_\gamma = 1 - 0.287 \ln \gamma

    A fit: the integral of the spectrum is :math:`H_s^2 / 16` to about 0.3 %.

    Source: DNV-RP-C205, 3.5.5.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.compensator.jonswap_normalizer(3.3):.4f}")
    0.6573
    """
    ...


@face("compensator.jonswap")
def jonswap(
    significant_height: QuantityLike,
    peak_period: QuantityLike,
    peak_factor: NumberLike,
    wave_frequency: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Spectrum of a sea that is still growing, JONSWAP.

    .. math:: S = A_\gamma S_{PM}\,
        \gamma^{\exp(-\frac{1}{2} ((\omega - \omega_p) / (\sigma \omega_p))^2)}

    with σ = 0.07 up to :math:`\omega_p` and 0.09 above; :math:`S_{PM}` is `pierson_moskowitz`,
    :math:`A_\gamma` is `jonswap_normalizer`. A peak factor of 1 gives Pierson–Moskowitz, 3.3 is
    the mean of the measured seas. A good model for :math:`3.6 < T_p / \sqrt{H_s} < 5` (s, m), to
    be used with caution outside.

    Source: K. Hasselmann et al., Dtsch. Hydrogr. Z. A8 (12) (1973); DNV-RP-C205, 3.5.5.

    Examples
    --------
    >>> import ropewalk as rw
    >>> density = rw.compensator.jonswap("4 m", "11 s", 3.3, "0.571 rad/s")
    >>> print(f"{density.magnitude:.2f}")
    5.44
    """
    ...


@face("compensator.peak_factor")
def peak_factor(
    significant_height: QuantityLike,
    peak_period: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Peak factor of a sea by its steepness, where no value is known for the place.

    .. math:: \gamma = e^{5.75 - 1.15\,T_p / \sqrt{H_s}}

    but 5 for :math:`T_p / \sqrt{H_s} \le 3.6` and 1 from 5 on (s, m).

    Source: DNV-RP-C205, 3.5.5.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.compensator.peak_factor('6 m', '10 s'):.2f}")
    2.87
    """
    ...


@face("compensator.zero_crossing_ratio")
def zero_crossing_ratio(
    peak_factor: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Zero-crossing over peak period of a JONSWAP sea.

    .. math:: T_z / T_p = 0.6673 + 0.05037 \gamma - 0.006230 \gamma^2 + 0.0003341 \gamma^3

    A fit to the integrals: 0.7118 at γ = 1, where :math:`(1.25 \pi)^{-1/4}` = 0.7104 is exact.

    Source: DNV-RP-C205, 3.5.5.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.compensator.zero_crossing_ratio(3.3):.4f}")
    0.7777
    """
    ...


@face("compensator.mean_period_ratio")
def mean_period_ratio(
    peak_factor: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Mean over peak period of a JONSWAP sea.

    .. math:: T_1 / T_p = 0.7303 + 0.04936 \gamma - 0.006556 \gamma^2 + 0.0003610 \gamma^3

    :math:`T_1 = 2 \pi m_0 / m_1`. Source as for `zero_crossing_ratio`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.compensator.mean_period_ratio(3.3):.4f}")
    0.8348
    """
    ...


@face("compensator.steepest_height")
def steepest_height(
    peak_period: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Significant height of the steepest sea of a peak period that is found.

    .. math:: H_s = S_p\,g\,T_p^2 / (2 \pi)

    with a steepness :math:`S_p` of 1/15 up to 8 s, 1/25 from 15 s on, straight between. Higher
    seas of that period break.

    Source (from memory): DNV-RP-C205, limiting values of average steepness, 3.5.4.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.compensator.steepest_height('10 s').to('m').magnitude:.1f} m")
    9.2 m
    """
    ...


@face("compensator.box_hull_heave")
def box_hull_heave(
    hull_length: QuantityLike,
    hull_beam: QuantityLike,
    hull_draft: QuantityLike,
    heading: QuantityLike,
    wave_period: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Heave amplitude of a box-shaped hull at rest over wave amplitude, Jensen, Mansour and Olsen.

    .. math:: \frac{\eta_3}{a} = \eta\,\kappa f\,\frac{\sin s}{s}, \quad s = k_e L / 2, \quad
        k_e = k |\cos \beta|, \quad k = \frac{4 \pi^2}{g T^2}

    .. math:: \kappa = e^{-k_e D}, \quad A = 2 \sin(k B / 2)\,e^{-k D}, \quad
        f = \sqrt{(1 - k D)^2 + (A^2 / k B)^2}, \quad
        \eta = \frac{1}{\sqrt{(1 - 2 k D)^2 + (A^2 / k B)^2}}

    Range: conventional mono-hulls, deep water, no forward speed here. An estimate for design: the
    tested response of the vessel comes first. In beam seas κ = 1, and short waves move the box by
    half their amplitude, which is too much.

    Source (from memory): J. J. Jensen, A. E. Mansour and A. S. Olsen, Estimation of ship motions
    using closed-form expressions, Ocean Engineering 31 (2004), 61-85.

    Examples
    --------
    >>> import ropewalk as rw
    >>> hull = ("200 m", "36 m", "10 m")
    >>> ratios = rw.compensator.box_hull_heave(*hull, "180 deg", rw.Q([8.0, 12.0, 18.0], "s"))
    >>> [float(round(ratio, 2)) for ratio in ratios]
    [0.0, 0.12, 0.77]
    """
    ...
