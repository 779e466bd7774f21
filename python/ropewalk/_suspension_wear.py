"""The functions of the subject `suspension` on links at an angle and on wear."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "link_load",
    "worn_bore_capacity",
    "worn_capacity_by_area",
    "worn_capacity_by_bending",
]


@face("suspension.link_load")
def link_load(
    link_set_load: QuantityLike,
    link_angle: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Load along one of two links that stand at the same angle from the vertical.

    .. math:: F = \frac{W}{2 \cos \beta}

    Links are rated by the set, for links that hang straight. Source: equilibrium.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.suspension.link_load('200 kip', '30 deg').to('kip'):.1f}")
    115.5 kip
    """
    ...


@face("suspension.worn_capacity_by_area")
def worn_capacity_by_area(
    load_rating: QuantityLike,
    thickness_ratio: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Return the most a worn link can still carry: capacity falls with the area of the section.

    .. math:: R_{worn} = R (t/t_0)^2

    Upper of two bounds, for the more worn eye of the more worn link; `worn_capacity_by_bending` is
    the other. What a worn link may carry is said by its maker's table (`link_set_capacity`);
    without one it is out of service. Source: area of a round section.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.suspension.worn_capacity_by_area('500 kip', 0.95).to('kip'):.1f}")
    451.2 kip
    """
    ...


@face("suspension.worn_capacity_by_bending")
def worn_capacity_by_bending(
    load_rating: QuantityLike,
    thickness_ratio: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Return what a worn link can still carry where bending governs, as in the crown of an eye.

    .. math:: R_{worn} = R (t/t_0)^3

    Lower of two bounds, see `worn_capacity_by_area`. Source: section modulus of a round section.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.suspension.worn_capacity_by_bending('500 kip', 0.95).to('kip'):.1f}")
    428.7 kip
    """
    ...


@face("suspension.worn_bore_capacity")
def worn_bore_capacity(
    load_rating: QuantityLike,
    shoulder_diameter: QuantityLike,
    new_bore: QuantityLike,
    worn_bore: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Capacity of a square-shoulder elevator with a worn bore, at the pressure of the new one.

    .. math:: R_{worn} = R \frac{D^2 - B^2}{D^2 - B_0^2}

    An upper bound: worn or chamfered collars take away more. The maker's limit for the bore comes
    first. Source: area of the ring of contact.

    Examples
    --------
    >>> import ropewalk as rw
    >>> worn = rw.suspension.worn_bore_capacity("250 kip", "7.656 in", "7.125 in", "7.25 in")
    >>> print(f"{worn.to('kip'):.0f}")
    193 kip
    """
    ...
