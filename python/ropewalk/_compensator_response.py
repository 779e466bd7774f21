"""How a vessel heaves in waves: the class `HeaveOperator`."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

import numpy as np

from ropewalk import _core
from ropewalk._border import NumberLike, QuantityLike, arguments, to_one, to_si
from ropewalk.errors import InadmissibleError

__all__ = ["HeaveOperator"]


@dataclass(frozen=True, slots=True)
class HeaveOperator:
    """Heave amplitude of the vessel over wave amplitude by wave period.

    Made by `table`, `box_hull` or `constant`. Take it where the derrick stands and in the heading
    and draft of drilling; the vessel's own model tests or measurements come first.

    Attributes
    ----------
    kind
        ``"table"``, ``"box hull"`` or ``"constant"``.
    values
        What it was made from, in SI.
    """

    kind: str
    values: tuple[Any, ...]
    _core_operator: Any = field(repr=False, compare=False)

    @classmethod
    def table(cls, periods: QuantityLike, ratios: NumberLike) -> HeaveOperator:
        """Straight lines between points by rising wave period.

        Beyond its ends the table holds on to its end values; how much of a heave comes from there
        is said by `Heave.outside`.

        Raises
        ------
        InadmissibleError
            If the periods do not rise, or a value cannot be.

        Examples
        --------
        >>> import ropewalk as rw
        >>> response = rw.compensator.HeaveOperator.table(
        ...     rw.Q([4, 8, 12, 16, 22], "s"), [0.02, 0.2, 0.45, 0.7, 1.3]
        ... )
        >>> print(f"{response.ratio('10 s'):.3f}")
        0.325
        """
        where = "compensator.HeaveOperator.table"
        xs = np.atleast_1d(to_si(where, "periods", periods, "time"))
        ys = np.atleast_1d(to_si(where, "ratios", ratios, "number"))
        core = _core.compensator.HeaveOperator.table(xs, ys)
        return cls("table", (tuple(xs.tolist()), tuple(ys.tolist())), core)

    @classmethod
    def box_hull(
        cls,
        hull_length: QuantityLike,
        hull_beam: QuantityLike,
        hull_draft: QuantityLike,
        heading: QuantityLike = "180 deg",
    ) -> HeaveOperator:
        """Closed form of a ship-shaped vessel, see `box_hull_heave`; head seas if not told."""
        values = arguments(
            "compensator.HeaveOperator.box_hull",
            hull_length=hull_length,
            hull_beam=hull_beam,
            hull_draft=hull_draft,
            heading=heading,
        )
        return cls("box hull", values, _core.compensator.HeaveOperator.box_hull(*values))

    @classmethod
    def constant(cls, ratio: NumberLike = 1.0) -> HeaveOperator:
        """Give all waves the same ratio; 1 gives the sea itself."""
        value = to_one("compensator.HeaveOperator.constant", "ratio", ratio, "number")
        return cls("constant", (value,), _core.compensator.HeaveOperator.constant(value))

    def __reduce__(self) -> Any:
        return _rebuild, (self.kind, self.values)

    def ratio(self, wave_period: QuantityLike) -> Any:
        """Heave over wave amplitude at one wave period or many."""
        where = "compensator.HeaveOperator.ratio"
        (period,) = arguments(where, wave_period=wave_period)
        if not np.all((np.asarray(period) > 0.0) & np.isfinite(period)):
            text = f"wave_period must be positive and finite (definition), got {wave_period}"
            raise InadmissibleError(f"{where}(): {text}", where, "wave_period")
        return self._core_operator.at(period)


def _rebuild(kind: str, values: tuple[Any, ...]) -> HeaveOperator:
    operators = _core.compensator.HeaveOperator
    if kind == "table":
        return HeaveOperator(kind, values, operators.table(*map(np.asarray, values)))
    maker = operators.constant if kind == "constant" else operators.box_hull
    return HeaveOperator(kind, values, maker(*values))
