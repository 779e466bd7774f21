"""Reeving: efficiency of block and tackle, tension in every line, rope speed at every sheave.

Lines are numbered from the dead line: line 1 hangs next to the dead-line sheave, line N runs to the
sheave from which the fast line leaves the crown; turning sheave m follows line m. Hook load is
everything hung on the lines, traveling block and hook included.

`Reeving` knows every sheave by itself; the functions take one friction for all sheaves and arrays
of anything, for sweeps.

Tensions worked out here are those of an ideal rope on turning sheaves. A sheave that is stuck, a
load that jerks or swings, a rope that is worn are not in them; the maker's manuals, local rules and
licensed practice decide what may be lifted.
"""

from __future__ import annotations

from typing import Any

from ropewalk import _core
from ropewalk._face import NumberLike, Policy, face
from ropewalk._line_tension import (
    crown_load,
    dead_line_tension,
    fast_line_tension,
    fast_line_tension_at_efficiency,
    hoisted_hook_load,
    lowering_crown_load,
    lowering_dead_line_tension,
    lowering_fast_line_tension,
)
from ropewalk._reeving import Reeving
from ropewalk._tensions import Motion, Tensions

__all__ = [
    "Motion",
    "Reeving",
    "Tensions",
    "crown_load",
    "dead_line_tension",
    "efficiency",
    "fast_line_factor",
    "fast_line_tension",
    "fast_line_tension_at_efficiency",
    "hoisted_hook_load",
    "lowering_crown_load",
    "lowering_dead_line_tension",
    "lowering_efficiency",
    "lowering_fast_line_tension",
    "sheave_friction",
    "sheave_frictions",
    "two_drum_efficiency",
]


@face("reeving.efficiency")
def efficiency(
    lines: NumberLike,
    sheave_friction: NumberLike,
    lead_sheaves: NumberLike = 0,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Reeving efficiency while hoisting steadily, API RP 9B.

    .. math:: EF = \frac{K^N - 1}{K^S N (K - 1)}, \quad S = N + \text{lead sheaves}

    with N the number of lines, K the tension ratio of one turning sheave (`sheave_friction`) and S
    the number of turning sheaves between the dead line and the drum: cases A, B and C of the
    standard have 0, 1 and 2 lead sheaves. EF is the share of the drum's power that reaches the
    hook; without friction it is 1.

    Steady motion, vertical lines, one friction for all sheaves. `sheave_frictions` lists the usual
    values, `Reeving` takes each sheave by itself.

    Source: API RP 9B, 14th ed. (2015) with Addendum 1 (2020), 2.3.3.4 and Figures 1 and 2.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.reeving.efficiency(10, 1.04):.3f}")
    0.811
    >>> rw.reeving.efficiency([8, 10, 12], 1.04).round(3)
    array([0.842, 0.811, 0.782])
    """
    ...


@face("reeving.fast_line_factor")
def fast_line_factor(
    lines: NumberLike,
    sheave_friction: NumberLike,
    lead_sheaves: NumberLike = 0,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Fast-line factor while hoisting steadily, API RP 9B.

    .. math:: FLF = \frac{1}{N \, EF} = \frac{K^S (K - 1)}{K^N - 1}

    The fast-line tension at the drum over the hook load. Symbols, range and source as in
    `efficiency`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.reeving.fast_line_factor(10, 1.04):.3f}")
    0.123
    """
    ...


@face("reeving.lowering_efficiency")
def lowering_efficiency(
    lines: NumberLike,
    sheave_friction: NumberLike,
    lead_sheaves: NumberLike = 0,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Reeving efficiency while lowering steadily.

    .. math::

       E = \frac{N T_\mathrm{fast}}{W} = \frac{N (K - 1)}{K^{1 + \text{lead sheaves}} (K^N - 1)}

    The share of the load's power that reaches the drum and its brake. Every sheave turns the other
    way and holds part of the load back, so the fast line carries less than W/N.

    Source: derived; hoisting with 1/K in the place of K.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.reeving.lowering_efficiency(10, 1.04):.3f}")
    0.801
    """
    ...


@face("reeving.two_drum_efficiency")
def two_drum_efficiency(
    lines: NumberLike,
    sheave_friction: NumberLike,
    lead_sheaves: NumberLike = 0,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Reeving efficiency of a hoist that takes in both ends of its rope, API RP 9B case D.

    .. math::

       EF = \frac{2 (K^{N/2} - 1)}{K^{S/2} N (K - 1)}, \quad S/2 = N/2 + \text{lead sheaves}

    The rope is drawn evenly over an equalizer sheave that does not turn: each half is a reeving
    with N/2 lines under half of the load. `lead_sheaves` counts one side; each of the two fast
    lines pulls W/(N EF). The number of lines is even.

    Source: API RP 9B, efficiency table, case D (letter from memory); the formula follows from the
    symmetry.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.reeving.two_drum_efficiency(12, 1.04) == rw.reeving.efficiency(6, 1.04)
    True
    """
    ...


def sheave_friction(bearing: str) -> float:
    """Tabulated tension ratio K of one turning sheave by its bearing, ``"roller"`` or ``"plain"``.

    These are the values of the standards, on the safe side for well-kept sheaves.

    Raises
    ------
    UnknownEntryError
        If the table has no such bearing; the message offers what it has.

    Examples
    --------
    >>> import ropewalk as rw
    >>> rw.reeving.sheave_friction("roller")
    1.04
    """
    return float(_core.reeving.sheave_friction(bearing))


def sheave_frictions() -> list[dict[str, Any]]:
    """The tabulated sheave frictions, each with source and standing.

    Examples
    --------
    >>> import ropewalk as rw
    >>> [(row["bearing"], row["sheave_friction"]) for row in rw.reeving.sheave_frictions()]
    [('roller', 1.04), ('plain', 1.09)]
    """
    return list(_core.reeving.sheave_frictions())
