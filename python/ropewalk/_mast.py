"""A mast on four legs: the class `Mast` of `ropewalk.mast`."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, TypeAlias

import numpy as np

from ropewalk import _core
from ropewalk._border import NumberLike, QuantityLike, arguments, to_si
from ropewalk._mast_legs import LEGS, LegLoads
from ropewalk._reeving import Reeving
from ropewalk._tensions import Motion
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError

__all__ = ["Mast"]

_WHERE = "mast.Mast"

#: Places by name, as shares of half the base across and along.
_PLACES = {
    "A": (-1.0, -1.0),
    "B": (1.0, -1.0),
    "C": (1.0, 1.0),
    "D": (-1.0, 1.0),
    "AB": (0.0, -1.0),
    "BC": (1.0, 0.0),
    "CD": (0.0, 1.0),
    "AD": (-1.0, 0.0),
    "center": (0.0, 0.0),
}

#: A named place, or its distances from the middle, across and along.
Place: TypeAlias = str | Sequence[QuantityLike]


@dataclass(frozen=True, init=False, repr=False, slots=True)
class Mast:
    r"""A mast or derrick on four legs, with the places of dead line and fast line.

    Seen from above with the drawworks at the top, the legs go round against the clock from A, at
    the left of the V-door: A, B in front, C, D behind. A load at one place shares out as

    .. math:: \tfrac{1}{4} (1 \pm 2x/b)(1 \pm 2y/h)

    with the signs of the leg: over a leg into it, midway between two into both, in the middle into
    all. This is in equilibrium for force and both moments at every place, and is the leg table of
    Bourgoyne et al. (1986), ch. 1, for their layout. Four legs are one more than statics needs: a
    stiff crown on elastic legs shares otherwise, and the maker's load distribution diagram comes
    first. Source: equilibrium.

    Parameters
    ----------
    base_width
        From leg to leg, across.
    dead_line, fast_line
        Where they pull, anchor and drum: a leg, ``"A"``; midway between two, ``"CD"``;
        ``"center"``; or distances from the middle, across toward B and C and along toward the
        drawworks, ``("2 ft", "15 ft")``.
    base_depth
        From leg to leg, toward the drawworks; a square if left out.

    Raises
    ------
    InadmissibleError
        If a place lies outside the base.
    UnknownEntryError
        If there is no place of that name.

    Examples
    --------
    >>> import ropewalk as rw
    >>> mast = rw.Mast("30 ft", dead_line="A", fast_line="CD")
    >>> loads = mast.leg_loads_at_efficiency("300000 lbf", lines=8, reeving_efficiency=0.841)
    >>> [round(leg) for leg in loads.legs.m_as("lbf")]
    [112500, 75000, 97295, 97295]
    >>> loads.governing_leg, round(float(loads.efficiency_factor), 3)
    ('A', 0.849)
    """

    base_width_si: float
    base_depth_si: float
    dead_line_si: tuple[float, float]
    fast_line_si: tuple[float, float]

    def __init__(
        self,
        base_width: QuantityLike,
        dead_line: Place,
        fast_line: Place,
        base_depth: QuantityLike | None = None,
    ) -> None:
        width = to_si(_WHERE, "base_width", base_width, "length")
        depth = width if base_depth is None else to_si(_WHERE, "base_depth", base_depth, "length")
        base = (width, depth)
        values = {
            "base_width_si": width,
            "base_depth_si": depth,
            "dead_line_si": _place("dead_line", dead_line, base),
            "fast_line_si": _place("fast_line", fast_line, base),
        }
        _core.mast.LegShares(width, depth, *values["dead_line_si"], *values["fast_line_si"])
        for name, value in values.items():
            plain = tuple(map(float, value)) if isinstance(value, tuple) else float(value)
            object.__setattr__(self, name, plain)

    def __repr__(self) -> str:
        def place(at: tuple[float, float]) -> str:
            return f"('{at[0]!r} m', '{at[1]!r} m')"

        return (
            f"Mast('{self.base_width_si!r} m', {place(self.dead_line_si)}, "
            f"{place(self.fast_line_si)}, '{self.base_depth_si!r} m')"
        )

    def _shares(self) -> Any:
        """The computing half, made anew: cheap, and the mast stays plain data."""
        return _core.mast.LegShares(
            self.base_width_si, self.base_depth_si, *self.dead_line_si, *self.fast_line_si
        )

    @property
    def dead_line_shares(self) -> tuple[float, ...]:
        """Share of legs A, B, C, D in the pull of the dead line."""
        return tuple(self._shares().dead_line)

    @property
    def fast_line_shares(self) -> tuple[float, ...]:
        """Share of legs A, B, C, D in the pull of the fast line."""
        return tuple(self._shares().fast_line)

    @property
    def largest_share(self) -> float:
        """Of dead and fast line together, the share of the leg that bears most: 0.5 to 2."""
        return float(self._shares().largest_share)

    def leg_loads(
        self,
        hook_load: QuantityLike,
        reeving: Reeving,
        motion: Motion = "hoisting",
        *,
        crown_block_weight: QuantityLike | None = None,
        on_legs: QuantityLike | None = None,
    ) -> LegLoads:
        """Load of every leg, with the friction of every sheave.

        Parameters
        ----------
        hook_load
            Everything that hangs on the lines; one or many.
        reeving
            How the line is strung. With an odd number of lines there is no dead line on the mast.
        motion
            ``"hoisting"``, ``"static"`` or ``"lowering"``.
        crown_block_weight
            Weight of the crown block, on all legs alike; not counted if left out.
        on_legs
            What else bears on legs A, B, C, D, four forces: wind or racked pipe as the maker's or
            a structural engineer's calculation has it for each leg. Nothing if left out.

        Examples
        --------
        >>> import ropewalk as rw
        >>> mast = rw.Mast("30 ft", dead_line="AD", fast_line="CD")
        >>> loads = mast.leg_loads("400 kip", rw.Reeving(10, "roller"))
        >>> print(f"{loads.total.to('kip'):.1f}")
        482.6 kip
        >>> print(f"{loads.largest.to('kip'):.1f} on leg {loads.governing_leg}")
        141.3 kip on leg D
        """
        tensions = reeving.tensions(hook_load, motion)
        pull = tensions.lines_si.sum(axis=-1)[()]
        dead_line = tensions.dead_line_si if reeving.lines % 2 == 0 else 0.0 * pull
        return self._loads(
            pull, dead_line, tensions.fast_line_at_crown_si, crown_block_weight, on_legs
        )

    def leg_loads_at_efficiency(
        self,
        hook_load: QuantityLike,
        lines: NumberLike,
        reeving_efficiency: NumberLike,
        *,
        crown_block_weight: QuantityLike | None = None,
        on_legs: QuantityLike | None = None,
    ) -> LegLoads:
        """Load of every leg as the textbook has it: fast line W/(E n), dead line W/n.

        Parameters
        ----------
        hook_load, lines, reeving_efficiency
            As for `derrick_load`: an even number of lines; `leg_loads` takes an odd one too.
        crown_block_weight, on_legs
            As for `leg_loads`.
        """
        load, n, efficiency = arguments(
            f"{_WHERE}.leg_loads_at_efficiency",
            hook_load=hook_load,
            lines=lines,
            reeving_efficiency=reeving_efficiency,
        )
        fast_line = _core.reeving.fast_line_tension_at_efficiency(load, n, efficiency)
        # All of the dead line, W/n, as if on one leg: this refuses an odd number of lines.
        dead_line = _core.mast.extra_leg_load(load, n, 1.0)
        return self._loads(load, dead_line, fast_line, crown_block_weight, on_legs)

    def _loads(
        self,
        pull: Any,
        dead_line: Any,
        fast_line: Any,
        crown_block_weight: QuantityLike | None,
        on_legs: QuantityLike | None,
    ) -> LegLoads:
        where = f"{_WHERE}.leg_loads"
        weight = 0.0
        if crown_block_weight is not None:
            weight = to_si(where, "crown_block_weight", crown_block_weight, "force")
        legs = self._shares().loads(pull, weight, dead_line, fast_line)
        if on_legs is not None:
            also = to_si(where, "on_legs", on_legs, "force")
            if np.shape(also) != (len(LEGS),) or not np.all(np.isfinite(also)):
                text = f"on_legs must be four forces, of legs A, B, C, D, got {on_legs!r}"
                raise InadmissibleError(f"{where}(): {text}", where, "on_legs")
            legs = legs + also
        return LegLoads(legs, pull + weight, dead_line, fast_line)


def _place(field: str, place: Place, base: tuple[Any, Any]) -> tuple[Any, Any]:
    if isinstance(place, str):
        if place not in _PLACES:
            text = f"{field} must be one of {', '.join(_PLACES)}, or two distances, got {place!r}"
            raise UnknownEntryError(f"{_WHERE}(): {text}", _WHERE, field)
        across, along = _PLACES[place]
        return 0.5 * across * base[0], 0.5 * along * base[1]
    try:
        across_text, along_text = place
    except (TypeError, ValueError):
        text = f"{field} must be a named place or two distances, across and along, got {place!r}"
        raise UnitError(f"{_WHERE}(): {text}", _WHERE, field) from None
    return (
        to_si(_WHERE, field, across_text, "length"),
        to_si(_WHERE, field, along_text, "length"),
    )
