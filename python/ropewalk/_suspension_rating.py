"""The functions of the subject `suspension` on ratings and what stands behind them."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "allowable_shear",
    "allowable_stress",
    "bearing_rating",
    "design_safety_factor",
    "proof_load",
    "verification_load",
]


@face("suspension.design_safety_factor")
def design_safety_factor(
    load_rating: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Design safety factor on minimum yield by load rating, API Spec 8A and 8C, ISO 13535.

    .. math:: SF = 3 - 0.75 \frac{R - 150}{350}, \quad 2.25 \le SF \le 3

    with R in short tons: 3 up to 150, 2.25 from 500 on. The rating is static; what is dynamic
    lowers the margin left. From memory of the three standards, not compared with a printed copy.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.suspension.design_safety_factor('350 short_ton_force'):.3f}")
    2.571
    """
    ...


@face("suspension.allowable_stress")
def allowable_stress(
    yield_strength: QuantityLike,
    load_rating: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Stress in tension that the load rating may cause in a primary-load part.

    .. math:: \sigma = \sigma_y / SF

    Source as for `design_safety_factor`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.suspension.allowable_stress('90 ksi', '150 short_ton_force').to('ksi'):.0f}")
    30 kip_per_square_inch
    """
    ...


@face("suspension.allowable_shear")
def allowable_shear(
    yield_strength: QuantityLike,
    load_rating: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Shear stress that the load rating may cause in a primary-load part.

    .. math:: \tau = 0.58 \sigma_y / SF

    Source as for `design_safety_factor`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.suspension.allowable_shear('90 ksi', '150 short_ton_force').to('ksi'):.1f}")
    17.4 kip_per_square_inch
    """
    ...


@face("suspension.verification_load")
def verification_load(
    load_rating: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Load of the test that verifies a design, API Spec 8C.

    .. math:: F = \max(0.8 R \, SF, 2 R)

    Source as for `design_safety_factor`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> load = rw.suspension.verification_load("100 short_ton_force")
    >>> print(f"{load.to('short_ton_force').magnitude:.0f}")
    240
    """
    ...


@face("suspension.proof_load")
def proof_load(
    load_rating: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Load of the proof test of a part, where it is asked for, API Spec 8C: 1.5 times its rating.

    Source as for `design_safety_factor`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> load = rw.suspension.proof_load("500 short_ton_force")
    >>> print(f"{load.to('short_ton_force').magnitude:.0f}")
    750
    """
    ...


@face("suspension.bearing_rating")
def bearing_rating(
    block_sheaves: NumberLike,
    sheave_bearing_rating: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Bearing rating of a block by the bearings of its sheaves, API Spec 8A and 8C.

    .. math:: W_b = \frac{N_s W_r}{714} \quad (W_b \text{ in short tons}, W_r \text{ in lbf})

    W_r is the rating of the bearing of one sheave at 100 rpm for 3000 hours with 90 % of bearings
    surviving. It makes ratings comparable; it is no limit of strength. From memory, not compared
    with a printed copy.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rating = rw.suspension.bearing_rating(6, "40000 lbf")
    >>> print(f"{rating.to('short_ton_force').magnitude:.0f}")
    336
    """
    ...
