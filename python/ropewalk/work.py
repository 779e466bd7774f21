"""Work of the drilling line, counted at the hook.

Load times travel, up and down both positive. Weights are forces, the weight of pipe in mud is a
force per length; depths are measured along the hole. Closed forms of API RP 9B in coherent units,
and the same operations stroke by stroke.

The work of the line tells when to slip and cut by a program that has been proven on the rig; it
replaces neither inspection of the rope nor the maker's manual, the rules in force where the rig
stands, and the judgment of qualified people.
"""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face
from ropewalk._operations import (
    casing_strokes,
    kelly_strokes,
    top_drive_strokes,
    trip_strokes,
)
from ropewalk._strokes import Strokes

__all__ = [
    "Strokes",
    "casing",
    "casing_strokes",
    "coring",
    "drilling",
    "kelly_strokes",
    "lift",
    "round_trip",
    "short_trip",
    "top_drive_strokes",
    "trip_strokes",
]


@face("work.lift")
def lift(
    load: QuantityLike,
    travel: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Work of one stroke of the block, up or down.

    .. math:: T = F s

    For work that has no closed form, such as jarring, reaming or pick-up tests: add up the strokes.

    Examples
    --------
    >>> import ropewalk as rw
    >>> f"{rw.work.lift('2000 lbf', '5280 ft').to('ton_mile').magnitude:.3f}"
    '1.000'
    """


@face("work.round_trip")
def round_trip(
    depth: QuantityLike,
    stand_length: QuantityLike,
    pipe_weight: QuantityLike,
    bha_excess_weight: QuantityLike,
    block_weight: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Work of one round trip, API RP 9B.

    .. math:: T = W_m D (L + D) + 4 D (M + C/2)

    printed as :math:`D (L + D) W_m / 10{,}560{,}000 + D (M + C/2) / 2{,}640{,}000` ton-miles with
    feet and pounds. The sum over whole stands of string and block pulled up and the block run down
    empty, and the reverse back in; drag is left out. Source: Lapeyrouse, Formulas and Calculations
    for Drilling, Production and Workover, 2nd ed. (2002), p. 44, after API RP 9B.

    Examples
    --------
    Lapeyrouse, 4,000 ft of 13.3 lb/ft pipe in 9.6 lb/gal mud:

    >>> import ropewalk as rw
    >>> work = rw.work.round_trip("4000 ft", "60 ft", "11.35 lbf/ft", "17845 lbf", "15000 lbf")
    >>> f"{work.to('ton_mile').magnitude:.1f}"
    '53.7'
    """


@face("work.short_trip")
def short_trip(
    depth_from: QuantityLike,
    depth_to: QuantityLike,
    stand_length: QuantityLike,
    pipe_weight: QuantityLike,
    bha_excess_weight: QuantityLike,
    block_weight: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Work of a short trip, API RP 9B: the bit is pulled from `depth_to` to `depth_from` and back.

    .. math:: T_{ST} = T_6 - T_5

    the difference of the round trips at the deeper and the shallower depth. Source: Lapeyrouse
    (2002), after API RP 9B.

    Examples
    --------
    >>> import ropewalk as rw
    >>> string = ("60 ft", "11.35 lbf/ft", "17845 lbf", "15000 lbf")
    >>> f"{rw.work.short_trip('4000 ft', '4600 ft', *string).to('ton_mile').magnitude:.1f}"
    '11.0'
    """


@face("work.drilling")
def drilling(
    depth_from: QuantityLike,
    depth_to: QuantityLike,
    stand_length: QuantityLike,
    pipe_weight: QuantityLike,
    bha_excess_weight: QuantityLike,
    block_weight: QuantityLike,
    passes: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Work of drilling, API RP 9B: a multiple of the difference of two round trips.

    .. math:: T_d = n (T_2 - T_1)

    with :math:`n` = `passes` = 3 for a kelly with every kelly down reamed once, 2 if it is not
    reamed. With a top drive neither number is made for the work: see `top_drive_strokes`. Source:
    Lapeyrouse (2002), after API RP 9B.

    Examples
    --------
    >>> import ropewalk as rw
    >>> string = ("60 ft", "11.35 lbf/ft", "17845 lbf", "15000 lbf")
    >>> f"{rw.work.drilling('4000 ft', '4600 ft', *string, 3).to('ton_mile').magnitude:.0f}"
    '33'
    """


@face("work.coring")
def coring(
    depth_from: QuantityLike,
    depth_to: QuantityLike,
    stand_length: QuantityLike,
    pipe_weight: QuantityLike,
    bha_excess_weight: QuantityLike,
    block_weight: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Work of coring, API RP 9B.

    .. math:: T_c = 2 (T_4 - T_3)

    Twice and not three times the difference of the round trips, because cored hole is not reamed.
    Source: Lapeyrouse (2002), after API RP 9B.

    Examples
    --------
    >>> import ropewalk as rw
    >>> string = ("60 ft", "11.35 lbf/ft", "17845 lbf", "15000 lbf")
    >>> f"{rw.work.coring('4000 ft', '4600 ft', *string).to('ton_mile').magnitude:.0f}"
    '22'
    """


@face("work.casing")
def casing(
    depth: QuantityLike,
    joint_length: QuantityLike,
    casing_weight: QuantityLike,
    block_weight: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Work of setting casing, API RP 9B: half a round trip with no BHA.

    .. math:: T = \tfrac12 [W_{cm} D (L_c + D) + 4 D M]

    A formula page after Lapeyrouse prints the block term without the factor 4; the sum over joints
    (`casing_strokes`) has it. Source: Lyons (ed.), Standard Handbook of Petroleum and Natural Gas
    Engineering (1996), vol. 1, ch. 4, after API RP 9B.

    Examples
    --------
    >>> import ropewalk as rw
    >>> work = rw.work.casing("5200 ft", "42 ft", "21.18 lbf/ft", "95000 lbf")
    >>> f"{work.to('ton_mile').magnitude:.1f}"
    '120.9'
    """
