"""The functions of the subject `sheave` on the groove: gauge new and worn, depth."""

from __future__ import annotations

from typing import Literal

from ropewalk import _core
from ropewalk._border import to_quantity, to_si
from ropewalk._face import Policy, Quantity, QuantityLike, face
from ropewalk._names import to_name

__all__ = [
    "groove_depth_max",
    "groove_depth_min",
    "groove_radius_new_max",
    "groove_radius_new_min",
    "groove_radius_table",
    "groove_radius_worn_min",
]


@face("sheave.groove_radius_new_min")
def groove_radius_new_min(
    rope_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Smallest radius of the groove of a new or remachined sheave.

    .. math:: r = 1.06 \, d / 2

    Source: API Spec 8A and 8C and API RP 9B, groove gauges: 6 % over nominal.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.sheave.groove_radius_new_min('2 in').to('in'):.2f}")
    1.06 inch
    """
    ...


@face("sheave.groove_radius_new_max")
def groove_radius_new_max(
    rope_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Largest radius of the groove of a new or remachined sheave.

    .. math:: r = 1.10 \, d / 2

    Source: API Spec 8A and 8C and API RP 9B, groove gauges: 10 % over nominal.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.sheave.groove_radius_new_max('2 in').to('in'):.2f}")
    1.10 inch
    """
    ...


@face("sheave.groove_radius_worn_min")
def groove_radius_worn_min(
    rope_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Radius below which a worn groove is to be remachined or the sheave replaced.

    .. math:: r = 1.025 \, d / 2

    Source: API Spec 8A and 8C and API RP 9B, groove gauges: 2.5 % over nominal.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.sheave.groove_radius_worn_min('2 in').to('in'):.3f}")
    1.025 inch
    """
    ...


@face("sheave.groove_depth_min")
def groove_depth_min(
    rope_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Smallest depth of the groove of a sheave for drilling and casing lines.

    .. math:: h = 1.33 \, d

    For a groove with a bottom arc of 150 degrees; sand-line sheaves are deeper, 1.75 d to 3 d.

    Source: API RP 9B, 13th ed. (2011), p. 19; Lyons (ed.), Standard Handbook of Petroleum and
    Natural Gas Engineering, vol. 1 (1996), p. 601.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.sheave.groove_depth_min('2 in').to('in'):.2f}")
    2.66 inch
    """
    ...


@face("sheave.groove_depth_max")
def groove_depth_max(
    rope_diameter: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Largest depth of the groove of a sheave for drilling and casing lines.

    .. math:: h = 1.75 \, d

    Arc and source as for `groove_depth_min`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.sheave.groove_depth_max('2 in').to('in'):.2f}")
    3.50 inch
    """
    ...


def groove_radius_table(
    rope_diameter: QuantityLike, state: Literal["new", "worn"] = "new"
) -> Quantity:
    """Minimum groove radius as older editions of the API tables print it for a rope size.

    The printed radii do not follow one factor of d/2; they are kept for work on sheaves machined to
    them. No size between two printed ones is made up. `table` lists them with their standing.

    Source: Lyons (ed.), Standard Handbook of Petroleum and Natural Gas Engineering, vol. 1 (1996),
    Tables 4-31 (worn) and 4-32 (new).

    Parameters
    ----------
    rope_diameter : length
        Nominal diameter of the rope, one of the printed sizes.
    state : {"new", "worn"}
        New or remachined sheave, or worn one.

    Returns
    -------
    length, in m
        Smallest radius of the groove.

    Raises
    ------
    UnknownEntryError
        If the table has no such size; the message offers the nearest.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.sheave.groove_radius_table('1-3/8 in', 'worn').to('in'):.3f}")
    0.699 inch
    """
    where = "sheave.groove_radius_table"
    radius = _core.sheave.groove_radius_table(
        to_si(where, "rope_diameter", rope_diameter, "length"), to_name(where, "state", state)
    )
    return to_quantity(radius, "length", like=rope_diameter)
