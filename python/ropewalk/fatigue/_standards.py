"""Lift ropes by EN 81-50 and crane ropes by EN 13001-3-2.

Both from memory of the standards: check against them before anything is signed.
"""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "en81_equivalent_sheaves",
    "en81_safety_factor",
    "en81_sheave_weight",
    "en13001_fatigue_resistance",
    "en13001_force_history",
    "en13001_static_factor",
    "en13001_utilization",
]


@face("fatigue.en81_safety_factor")
def en81_safety_factor(
    bend_ratio: NumberLike,
    equivalent_sheaves: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Least safety factor of lift suspension ropes against bending fatigue (EN 81-50).

    .. math::
        S_f = 10^{\,2.6834 - \frac{\lg(695.85 \cdot 10^6 N_{equiv} / (D_t/d_r)^{8.567})}
                                  {\lg(77.09 (D_t/d_r)^{-2.894})}}

    Valid for D_t/d_r of at least 40, the least of the lift standard.

    Source: EN 81-50:2014, 5.12, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.fatigue.en81_safety_factor(40, 5), 4)
    14.5153
    """
    ...


@face("fatigue.en81_sheave_weight")
def en81_sheave_weight(
    traction_sheave_diameter: QuantityLike,
    deflection_sheave_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Weight K_p of deflection sheaves against the traction sheave (EN 81-50).

    .. math:: K_p = (D_t / D_p)^4

    Source: EN 81-50:2014, 5.12, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.fatigue.en81_sheave_weight("600 mm", "400 mm"), 4)
    5.0625
    """
    ...


@face("fatigue.en81_equivalent_sheaves")
def en81_equivalent_sheaves(
    groove_equivalent: NumberLike,
    same_sense_sheaves: NumberLike,
    reverse_sheaves: NumberLike,
    sheave_weight: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Number of equivalent sheaves a point of the rope runs over in one trip (EN 81-50).

    .. math:: N_{equiv} = N_{equiv(t)} + K_p (N_{ps} + 4 N_{pr})

    Source: EN 81-50:2014, 5.12, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.fatigue.en81_equivalent_sheaves(5.0, 2, 0, 5.0625)
    15.125
    """
    ...


@face("fatigue.en13001_static_factor")
def en13001_static_factor(
    bend_ratio: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Rope resistance factor of the static proof (EN 13001-3-2).

    .. math:: \gamma_{rb} = \max\left(2.07,\; 1.35 + \frac{5.0}{(D/d)^{0.8} - 4}\right)

    The proof is F_Sd,s ≤ F_u / γ_rb. Valid for D/d of at least 11.2.

    Source: EN 13001-3-2:2014, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.fatigue.en13001_static_factor(16), 4)
    2.3135
    """
    ...


@face("fatigue.en13001_force_history")
def en13001_force_history(
    force_spectrum_factor: NumberLike,
    bending_cycles: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Force history parameter s_r of a rope (EN 13001-3-2).

    .. math:: s_r = k_r \frac{w}{w_D}, \quad w_D = 5 \cdot 10^5

    with k_r from `force_spectrum_factor` and w the number of bendings in the design life. One lift
    and lowering counts 1 for a drum, 2 for a sheave in the same sense and 4 for one in the reverse
    sense; 0 for a deflection of up to 5°, an equalizing sheave and an end fitting (from memory).

    Source: EN 13001-3-2:2014, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.fatigue.en13001_force_history(0.4161, 500_000)
    0.4161
    """
    ...


@face("fatigue.en13001_fatigue_resistance")
def en13001_fatigue_resistance(
    breaking_force: QuantityLike,
    further_influences: NumberLike,
    force_history: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Limit design rope force of the fatigue proof (EN 13001-3-2).

    .. math:: F_{Rd,f} = \frac{F_u f_f}{\gamma_{rf} \sqrt[3]{s_r}}, \quad \gamma_{rf} = 7

    A life that falls with the cube of the force is built in. f_f is the product of factors from the
    standard's tables and has no default. Valid for s_r up to 4, the top class.

    Source: EN 13001-3-2:2014, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.fatigue.en13001_fatigue_resistance('700 kN', 1.0, 1.0).to('kN'):.1f}")
    100.0 kilonewton
    """
    ...


@face("fatigue.en13001_utilization")
def en13001_utilization(
    rope_tension: QuantityLike,
    breaking_force: QuantityLike,
    further_influences: NumberLike,
    force_history: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Utilization of the fatigue proof (EN 13001-3-2); the proof is fulfilled up to 1.

    .. math:: F_{Sd,f} / F_{Rd,f}

    with the design rope force as `rope_tension` and the limit of `en13001_fatigue_resistance`.

    Source: EN 13001-3-2:2014, from memory.

    Examples
    --------
    >>> import ropewalk as rw
    >>> round(rw.fatigue.en13001_utilization("80 kN", "700 kN", 1.0, 1.0), 3)
    0.8
    """
    ...
