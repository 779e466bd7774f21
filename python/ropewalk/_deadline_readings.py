"""Row functions of `ropewalk.deadline` on readings of the weight indicator."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "friction_from_readings",
    "friction_uncertainty",
    "hoisting_ratio",
    "hook_load_from_readings",
    "hook_load_hoisting",
    "hook_load_lowering",
    "lowering_ratio",
]


@face("deadline.hoisting_ratio")
def hoisting_ratio(
    lines: NumberLike,
    sheave_friction: NumberLike,
    turning_dead_line_sheaves: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Indicated over true hook load while hoisting slowly.

    .. math:: \frac{W_\mathrm{ind}}{W} = \frac{N}{K^t S}, \quad S = 1 + K + \dots + K^{N-1}

    The indicator multiplies the tension of the dead line by the number of lines N; friction K of
    the sheaves leaves the dead line less than its share, once more (t = 1) where the dead-line
    sheave turns. The number of lines is even; motion is slow and steady. `WeightIndicator` takes
    each sheave by itself.

    Source: Luke and Juvkam-Wold, SPE 23859, SPE Drilling & Completion (Dec. 1993); derived again.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.deadline.hoisting_ratio(10, 1.04, 0):.4f}")
    0.8329
    """
    ...


@face("deadline.lowering_ratio")
def lowering_ratio(
    lines: NumberLike,
    sheave_friction: NumberLike,
    turning_dead_line_sheaves: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Indicated over true hook load while lowering slowly.

    .. math:: \frac{W_\mathrm{ind}}{W} = \frac{N K^{N-1+t}}{S}

    Symbols, range and source as in `hoisting_ratio`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.deadline.lowering_ratio(10, 1.04, 0):.4f}")
    1.1855
    """
    ...


@face("deadline.hook_load_hoisting")
def hook_load_hoisting(
    indicated_load: QuantityLike,
    lines: NumberLike,
    sheave_friction: NumberLike,
    turning_dead_line_sheaves: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""True hook load behind a reading while hoisting slowly.

    .. math:: W = W_\mathrm{ind} K^t S / N

    Symbols, range and source as in `hoisting_ratio`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> load = rw.deadline.hook_load_hoisting("333164 lbf", 10, 1.04, 0)
    >>> print(f"{load.to('kip'):.1f}")
    400.0 kip
    """
    ...


@face("deadline.hook_load_lowering")
def hook_load_lowering(
    indicated_load: QuantityLike,
    lines: NumberLike,
    sheave_friction: NumberLike,
    turning_dead_line_sheaves: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""True hook load behind a reading while lowering slowly.

    .. math:: W = \frac{W_\mathrm{ind} S}{N K^{N-1+t}}

    Symbols, range and source as in `hoisting_ratio`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> load = rw.deadline.hook_load_lowering("474196 lbf", 10, 1.04, 0)
    >>> print(f"{load.to('kip'):.1f}")
    400.0 kip
    """
    ...


@face("deadline.friction_from_readings")
def friction_from_readings(
    reading_hoisting: QuantityLike,
    reading_lowering: QuantityLike,
    lines: NumberLike,
    turning_dead_line_sheaves: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Friction of one sheave from two readings: the same load hoisted and lowered slowly.

    .. math:: K = (W_\mathrm{down} / W_\mathrm{up})^{1/(N - 1 + 2t)}

    The load and the scale of the indicator cancel. The string must hang free of drag, pumps off,
    the block at about the same height both times, and the speed low and steady. Readings so far
    apart that K were above 2, or changed round, are refused: that is no friction of sheaves.
    `friction_uncertainty` says how well it is known, `fit_friction` takes a log of moves.

    Source: derived, quotient of `lowering_ratio` and `hoisting_ratio`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.deadline.friction_from_readings('333164 lbf', '474196 lbf', 10, 0):.4f}")
    1.0400
    """
    ...


@face("deadline.hook_load_from_readings")
def hook_load_from_readings(
    reading_hoisting: QuantityLike,
    reading_lowering: QuantityLike,
    lines: NumberLike,
    turning_dead_line_sheaves: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""True hook load from two readings: hoisting and lowering it slowly.

    `hook_load_hoisting` with the friction of `friction_from_readings`. It lies between the
    geometric and the arithmetic mean of the readings. Source: derived.

    Examples
    --------
    >>> import ropewalk as rw
    >>> load = rw.deadline.hook_load_from_readings("333164 lbf", "474196 lbf", 10, 0)
    >>> print(f"{load.to('kip'):.1f}")
    400.0 kip
    """
    ...


@face("deadline.friction_uncertainty")
def friction_uncertainty(
    sheave_friction: NumberLike,
    lines: NumberLike,
    turning_dead_line_sheaves: NumberLike,
    reading_uncertainty: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Standard uncertainty of the friction that two readings give.

    .. math:: u(K) = K \frac{\sqrt{2}\,u}{N - 1 + 2t}

    u is the standard uncertainty of one reading over the reading, the same for both and
    independent: an error of scale has no part in it.

    Source: law of propagation of uncertainty, JCGM 100:2008 (GUM), 5.1.2 and 5.1.6.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.deadline.friction_uncertainty(1.04, 10, 0, 0.01):.4f}")
    0.0016
    """
    ...
