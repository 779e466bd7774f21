"""Row functions of `ropewalk.reeving`: tension of fast line and dead line, load on the crown."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "crown_load",
    "dead_line_tension",
    "fast_line_tension",
    "fast_line_tension_at_efficiency",
    "hoisted_hook_load",
    "lowering_crown_load",
    "lowering_dead_line_tension",
    "lowering_fast_line_tension",
]


@face("reeving.fast_line_tension")
def fast_line_tension(
    hook_load: QuantityLike,
    lines: NumberLike,
    sheave_friction: NumberLike,
    lead_sheaves: NumberLike = 0,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Fast-line tension at the drum while hoisting steadily, API RP 9B.

    .. math:: T_\mathrm{fast} = W \frac{K^S (K - 1)}{K^N - 1}, \quad S = N + \text{lead sheaves}

    Symbols, range and source as in `efficiency`.

    Examples
    --------
    The example of the standard, which rounds the fast-line factor to 0.123 and gets 49,200 lb:

    >>> import ropewalk as rw
    >>> print(f"{rw.reeving.fast_line_tension('400000 lbf', 10, 1.04, 0).to('lbf'):.0f}")
    49316 force_pound
    """
    ...


@face("reeving.hoisted_hook_load")
def hoisted_hook_load(
    fast_line_tension: QuantityLike,
    lines: NumberLike,
    sheave_friction: NumberLike,
    lead_sheaves: NumberLike = 0,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Hook load that a fast-line tension at the drum hoists steadily.

    .. math:: W = T_\mathrm{fast} \frac{K^N - 1}{K^S (K - 1)}, \quad S = N + \text{lead sheaves}

    `fast_line_tension` the other way round, for the load that a drawworks pull or a design factor
    leaves. Symbols, range and source as in `efficiency`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.reeving.hoisted_hook_load('49316 lbf', 10, 1.04, 0).to('kip'):.1f}")
    400.0 kip
    """
    ...


@face("reeving.fast_line_tension_at_efficiency")
def fast_line_tension_at_efficiency(
    hook_load: QuantityLike,
    lines: NumberLike,
    reeving_efficiency: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Fast-line tension at the drum for a given reeving efficiency.

    .. math:: T_\mathrm{fast} = W / (N E)

    For an efficiency that was measured on the rig, or that a textbook or a contract prescribes.

    Source: Bourgoyne, Millheim, Chenevert & Young, Applied Drilling Engineering (SPE, 1986), ch. 1;
    the definition of E.

    Examples
    --------
    Example 1.2 of the book:

    >>> import ropewalk as rw
    >>> tension = rw.reeving.fast_line_tension_at_efficiency("300000 lbf", 8, 0.841)
    >>> print(f"{tension.to('lbf'):.0f}")
    44590 force_pound
    """
    ...


@face("reeving.dead_line_tension")
def dead_line_tension(
    hook_load: QuantityLike,
    lines: NumberLike,
    sheave_friction: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Tension at the dead end of the rope while hoisting steadily.

    .. math:: T_\mathrm{dead} = \frac{W (K - 1)}{K^N - 1}

    The dead-line sheave does not turn, so this is also the tension of line 1. A load cell at the
    dead line therefore reads less than W/N while hoisting and more while lowering.

    Source: derived; the multiples of W/N are printed in Shell International Exploration and
    Production, Well Engineers Notebook, ed. 2 (2001), p. B-1.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.reeving.dead_line_tension('400000 lbf', 10, 1.04).to('lbf'):.0f}")
    33316 force_pound
    """
    ...


@face("reeving.lowering_fast_line_tension")
def lowering_fast_line_tension(
    hook_load: QuantityLike,
    lines: NumberLike,
    sheave_friction: NumberLike,
    lead_sheaves: NumberLike = 0,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Fast-line tension at the drum while lowering steadily.

    .. math:: T_\mathrm{fast} = \frac{W (K - 1)}{K^{1 + \text{lead sheaves}} (K^N - 1)}

    Source: derived; hoisting with 1/K in the place of K.

    Examples
    --------
    >>> import ropewalk as rw
    >>> tension = rw.reeving.lowering_fast_line_tension("400000 lbf", 10, 1.04, 0)
    >>> print(f"{tension.to('lbf'):.0f}")
    32035 force_pound
    """
    ...


@face("reeving.lowering_dead_line_tension")
def lowering_dead_line_tension(
    hook_load: QuantityLike,
    lines: NumberLike,
    sheave_friction: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Tension at the dead end of the rope while lowering steadily: the largest of all lines.

    .. math:: T_\mathrm{dead} = \frac{W K^{N-1} (K - 1)}{K^N - 1}

    Source: derived; hoisting with 1/K in the place of K.

    Examples
    --------
    >>> import ropewalk as rw
    >>> tension = rw.reeving.lowering_dead_line_tension("400000 lbf", 10, 1.04)
    >>> print(f"{tension.to('lbf'):.0f}")
    47420 force_pound
    """
    ...


@face("reeving.crown_load")
def crown_load(
    hook_load: QuantityLike,
    lines: NumberLike,
    sheave_friction: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Load on the crown block while hoisting steadily.

    .. math::

       F &= W + T_\mathrm{fast} + T_\mathrm{dead} && \text{even number of lines} \\
       F &= W + T_\mathrm{fast} && \text{odd number, dead end on the traveling block}

    with the fast line as it leaves the crown. With a sheave friction of 1 it is the load at rest,
    W (N + 2)/N or W (N + 1)/N. All lines are taken as vertical; lead sheaves stand below the crown.

    Source: derived, equilibrium of the crown block; at rest and for an even number of lines in
    Bourgoyne et al., Applied Drilling Engineering (SPE, 1986), ch. 1.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.reeving.crown_load('400000 lbf', 10, 1.0).to('lbf'):.0f}")
    480000 force_pound
    """
    ...


@face("reeving.lowering_crown_load")
def lowering_crown_load(
    hook_load: QuantityLike,
    lines: NumberLike,
    sheave_friction: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Load on the crown block while lowering steadily.

    .. math:: F = W \left(1 + \frac{(K^N + 1)(K - 1)}{K (K^N - 1)}\right)

    for an even number of lines; without the dead line for an odd number. Less than at rest: the
    fast line loses more than the dead line gains. Source: derived; `crown_load` with 1/K in the
    place of K.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.reeving.lowering_crown_load('400 kip', 8, 1.04).to('kip'):.1f}")
    498.9 kip
    """
    ...
