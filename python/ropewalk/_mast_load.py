"""The functions of the subject `mast` on the load of the lines and on ratings."""

from __future__ import annotations

from ropewalk._face import NumberLike, Policy, Quantity, QuantityLike, face

__all__ = [
    "derrick_load",
    "efficiency_factor",
    "equivalent_load",
    "extra_leg_load",
    "rating_at_lines",
    "static_derrick_load",
    "std_4a_capacity",
]


@face("mast.derrick_load")
def derrick_load(
    hook_load: QuantityLike,
    lines: NumberLike,
    reeving_efficiency: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Load on the derrick while hoisting steadily: hook load, fast line and dead line.

    .. math:: F_d = W + \frac{W}{E n} + \frac{W}{n} = W \frac{1 + E + E n}{E n}

    The dead line counts W/n, as in the textbook; `reeving.crown_load` and
    `reeving.lowering_crown_load` have it with the friction of every sheave. Only for an even number
    of lines, the dead line over the crown: an odd one is refused, and those two take it. Source:
    A. T. Bourgoyne et al., Applied Drilling Engineering (SPE, 1986), ch. 1.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.mast.derrick_load('300000 lbf', 8, 0.841).to('lbf'):.0f}")
    382090 force_pound
    """
    ...


@face("mast.static_derrick_load")
def static_derrick_load(
    hook_load: QuantityLike,
    lines: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Load on the derrick at rest, all lines alike.

    .. math:: F_d = W \frac{n + 2}{n}

    Range and source as for `derrick_load`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.mast.static_derrick_load('400000 lbf', 10).to('lbf'):.0f}")
    480000 force_pound
    """
    ...


@face("mast.equivalent_load")
def equivalent_load(
    hook_load: QuantityLike,
    lines: NumberLike,
    reeving_efficiency: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Maximum equivalent derrick load: four times the load of the leg that bears most.

    .. math:: F_{de} = W \max\left(1 + \frac{4}{n}, 1 + \frac{2}{E n}\right)

    The layout of the textbook: dead line at one leg, drawworks between two others; `Mast` has any
    other. Source: A. T. Bourgoyne et al., Applied Drilling Engineering (SPE, 1986), ch. 1.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.mast.equivalent_load('300000 lbf', 8, 0.841).to('lbf'):.0f}")
    450000 force_pound
    """
    ...


@face("mast.efficiency_factor")
def efficiency_factor(
    lines: NumberLike,
    reeving_efficiency: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> float:
    r"""Derrick efficiency factor: derrick load over maximum equivalent derrick load.

    .. math:: E_d = \frac{F_d}{F_{de}} = \frac{E (n + 1) + 1}{E (n + 4)} \quad (E > 1/2)

    1 if all legs bear alike. Layout and source as for `equivalent_load`.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.mast.efficiency_factor(8, 0.841):.3f}")
    0.849
    """
    ...


@face("mast.rating_at_lines")
def rating_at_lines(
    hook_load_rating: QuantityLike,
    rated_lines: NumberLike,
    lines: NumberLike,
    leg_share: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Static hook load rating at another number of lines: no leg, nor the crown, bears more.

    .. math:: W_2 = W_1 \min\left(1, \frac{1 + 4 s/n_1}{1 + 4 s/n_2}\right)

    At rest the leg that bears most has W/4 + s W/n, s its share of the dead line plus its share of
    the fast line (`Mast.largest_share`): 1 for a dead line at one leg and the drawworks between two
    others, 2 for both at the same leg. The crown bears as four legs of s = 1/2: it asks for less.
    More lines than stated do not raise the rating, as only the maker can. Fewer lines still pull
    harder on anchor and fast-line sheave, W/n each, which is not judged here.

    A rating is a static hook load for a stated number of lines and dead-line position (API Spec 4F,
    nameplate), without setback and wind, which lower it; the maker's load tables come before this.
    Source: equilibrium of the crown block at rest; leg loads of `Mast`, for s = 1 those of A. T.
    Bourgoyne et al., Applied Drilling Engineering (SPE, 1986), ch. 1.

    Examples
    --------
    >>> import ropewalk as rw
    >>> mast = rw.Mast("30 ft", dead_line="A", fast_line="CD")
    >>> rating = rw.mast.rating_at_lines("1000 kip", 12, 8, mast.largest_share)
    >>> print(f"{rating.to('kip'):.0f}")
    889 kip
    """
    ...


@face("mast.extra_leg_load")
def extra_leg_load(
    hook_load: QuantityLike,
    lines: NumberLike,
    legs_sharing: NumberLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    r"""Extra load of one leg by the dead line, at a leg (1) or between two legs (2).

    .. math:: F_L = \frac{W}{s n}

    Source: W. C. Lyons (ed.), Standard Handbook of Petroleum and Natural Gas Engineering, vol. 1
    (Gulf, 1996), p. 506.

    Examples
    --------
    >>> import ropewalk as rw
    >>> print(f"{rw.mast.extra_leg_load('400000 lbf', 10, 2).to('lbf'):.0f}")
    20000 force_pound
    """
    ...


@face("mast.std_4a_capacity")
def std_4a_capacity(
    hook_load: QuantityLike,
    crown_block_weight: QuantityLike,
    tools_weight: QuantityLike,
    extra_leg_load: QuantityLike,
    *,
    outside_validity: Policy = "raise",
    return_status: bool = False,
    threads: int = 1,
) -> Quantity:
    """Capacity a derrick rated by the old API Standard 4A should have.

    .. math:: C = 1.5 (W + W_c + W_t + 4 F_L)

    1.5 is for impact and vibration; setback and wind are not in it. For structures rated by that
    standard only: it has been replaced by API Spec 4F. Source: Lyons (1996), p. 506, eq. 4-1.

    Examples
    --------
    >>> import ropewalk as rw
    >>> capacity = rw.mast.std_4a_capacity("400000 lbf", "10000 lbf", "0 lbf", "40000 lbf")
    >>> print(f"{capacity.to('lbf'):.0f}")
    855000 force_pound
    """
    ...
