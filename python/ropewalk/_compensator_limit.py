"""How much sea a stroke allows."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk._border import (
    NumberLike,
    Quantity,
    QuantityLike,
    arguments,
    to_quantity,
    to_si,
)
from ropewalk._compensator_heave import SeaState, doubts, jonswap_holds, motion_in, report
from ropewalk._face import Policy, check_options
from ropewalk._names import to_name
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from ropewalk._compensator_response import HeaveOperator

__all__ = ["OperatingLimit", "operating_limit", "table"]


@dataclass(frozen=True, eq=False, slots=True)
class OperatingLimit:
    """The highest sea in which a stroke suffices, period by period.

    Attributes
    ----------
    peak_period_si
        Peak periods, s.
    significant_height_si
        Largest significant height, m.
    peak_factor
        γ of that sea.
    bound
        What stopped the search: ``"stroke"``; ``"steepest sea"`` where even the steepest sea of
        that period leaves stroke, see `steepest_height`; ``"highest height"`` where the sea was
        raised to 40 m, ropewalk's guard, and none was found: the height is then no limit.
    """

    peak_period_si: npt.NDArray[np.float64]
    significant_height_si: npt.NDArray[np.float64]
    peak_factor: npt.NDArray[np.float64]
    bound: npt.NDArray[np.str_]

    @property
    def stroke_governs(self) -> npt.NDArray[np.bool_]:
        """True where the stroke is what limits the sea."""
        return np.asarray(self.bound == "stroke")

    @property
    def jonswap_fits(self) -> npt.NDArray[np.bool_]:
        """Where the sea of the limit is one that JONSWAP is a good model of (`SeaState`).

        Steep seas of short periods, to which the search may raise the sea, are none.
        """
        pairs = zip(self.significant_height_si, self.peak_period_si, self.peak_factor, strict=True)
        return np.array([jonswap_holds(*pair) for pair in pairs])

    @property
    def peak_period(self) -> Quantity:
        """Peak periods."""
        return to_quantity(self.peak_period_si, "time")

    @property
    def significant_height(self) -> Quantity:
        """Largest significant height at each period."""
        return to_quantity(self.significant_height_si, "length")


def operating_limit(
    response: HeaveOperator,
    peak_period: QuantityLike,
    *,
    half_stroke: QuantityLike,
    duration: QuantityLike,
    exceedance: NumberLike,
    peak_factor: NumberLike | None = None,
    outside_validity: Policy = "raise",
) -> OperatingLimit:
    """Highest sea of each peak period in which a compensator's stroke suffices.

    The sea of a period is raised until the half stroke is exceeded in the duration with the
    probability allowed, or until it is as steep as seas get; `OperatingLimit.bound` says what
    stopped it. Where the peak factor changes with the height, the first crossing counts. The limit
    is one of stroke alone: loads, riser, watch circle, crew and the maker's manual have their own,
    and the lowest of them holds.

    Parameters
    ----------
    response : HeaveOperator
        The vessel.
    peak_period
        One peak period or many.
    half_stroke
        Stroke left from the mean position in the shorter direction: tide, set-down and the
        driller's spacing taken off.
    duration
        How long the sea lasts.
    exceedance
        Allowed probability that the stroke is exceeded at least once.
    peak_factor
        γ of all seas; by their steepness, see `peak_factor`, if left out.
    outside_validity : {"raise", "warn", "ignore"}, default "raise"
        As for `heave`, at the limit of each period, but for seas steeper than JONSWAP is a good
        model of: these are told by `OperatingLimit.jonswap_fits`.

    Raises
    ------
    InadmissibleError
        For a period, stroke, duration or probability that cannot be.
    ValidityError
        See `outside_validity`; the message names the period.

    Examples
    --------
    >>> import ropewalk as rw
    >>> drillship = rw.compensator.HeaveOperator.box_hull("200 m", "36 m", "10 m")
    >>> limit = rw.compensator.operating_limit(
    ...     drillship, rw.Q([12.0, 16.0], "s"), half_stroke="10 ft", duration="3 hour",
    ...     exceedance=0.01,
    ... )
    >>> [f"{height:.1f} m" for height in limit.significant_height.to("m").magnitude]
    ['11.6 m', '5.2 m']
    """
    where = "compensator.operating_limit"
    half, time, probability = arguments(
        where, half_stroke=half_stroke, duration=duration, exceedance=exceedance
    )
    (given,) = arguments(where, peak_period=peak_period)
    factor = None if peak_factor is None else to_si(where, "peak_factor", peak_factor, "number")
    periods = np.atleast_1d(np.asarray(given, dtype=np.float64))
    if periods.ndim != 1 or not periods.size:
        text = f"peak_period must be one value or a row of them, got shape {np.shape(given)}"
        raise InadmissibleError(f"{where}(): {text}", where, "peak_period")
    rows = [
        _core.compensator.operating_limit(
            response._core_operator,
            float(period),
            factor,
            half_stroke=half,
            duration=time,
            exceedance=probability,
        )
        for period in periods
    ]
    heights, factors, bounds = (np.array(column) for column in zip(*rows, strict=True))
    check_options(where, outside_validity, 1)
    for period, height, chosen in zip(periods, heights, factors, strict=True):
        sea = SeaState(to_quantity(height, "length"), to_quantity(period, "time"), chosen)
        found = [
            (name, f"at peak_period = {period:g} s {text}")
            for name, text in doubts(sea, motion_in(sea, response), steep=True)
        ]
        report(where, found, outside_validity)
    return OperatingLimit(periods, heights, factors, bounds)


def table(name: str) -> list[dict[str, Any]]:
    """List one table of this subject as plain records, with source and standing of each value.

    Parameters
    ----------
    name : str
        ``"compensator_practice"``: strokes, rated loads and seal friction that are common. Ranges
        to compare with, no limits.

    Examples
    --------
    >>> import ropewalk as rw
    >>> usual = rw.compensator.table("compensator_practice")[0]
    >>> usual["stroke_min [ft]"], usual["stroke_max [ft]"], usual["standing"]
    (15.0, 25.0, 'common practice')
    """
    rows: list[dict[str, Any]] = _core.compensator.table(to_name("compensator.table", "name", name))
    return rows
