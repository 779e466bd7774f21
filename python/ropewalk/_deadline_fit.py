"""Sheave friction identified on a log of slow moves. Exported by `ropewalk.deadline`."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk._border import NumberLike, Quantity, QuantityLike, to_count, to_quantity, to_si
from ropewalk.errors import InadmissibleError, UnitError

__all__ = ["FrictionFit", "fit_friction"]

_WHERE = "deadline.fit_friction"
_DIRECTIONS = {"hoisting": False, "lowering": True}


@dataclass(frozen=True, eq=False, slots=True)
class FrictionFit:
    """Friction identified on a log of slow moves, and the loads that were moved.

    Attributes
    ----------
    sheave_friction
        Tension ratio K of one turning sheave.
    standard_error
        Of K.
    low, high
        Confidence interval of K.
    confidence
        Probability with which the interval covers K.
    scatter
        Standard deviation of one reading over the reading.
    degrees_of_freedom
        Moves less loads less 1.
    loads
        The loads as the log names them, in the order of the next two.
    hook_loads_si, hook_load_errors_si
        True hook loads and their standard errors, N. An error of scale of the indicator is in
        none of them.
    lines, dead_line_sheave_turns
        As given.
    readings_si, lowered, load_of_move
        The log: readings in N, whether each move went down, and which of `loads` it moved.
    """

    sheave_friction: float
    standard_error: float
    low: float
    high: float
    confidence: float
    scatter: float
    degrees_of_freedom: int
    loads: tuple[Any, ...]
    hook_loads_si: npt.NDArray[np.float64]
    hook_load_errors_si: npt.NDArray[np.float64]
    lines: int
    dead_line_sheave_turns: bool
    readings_si: npt.NDArray[np.float64]
    lowered: npt.NDArray[np.bool_]
    load_of_move: npt.NDArray[np.int64]

    @property
    def hook_loads(self) -> Quantity:
        """True hook loads, in the order of `loads`."""
        return to_quantity(self.hook_loads_si, "force")

    @property
    def hook_load_errors(self) -> Quantity:
        """Standard errors of the hook loads."""
        return to_quantity(self.hook_load_errors_si, "force")

    @property
    def physical(self) -> bool:
        """False if the whole interval lies below 1: drag in the hole, or readings changed round."""
        return self.high >= 1.0

    def __str__(self) -> str:
        return (
            f"K = {self.sheave_friction:.4f}, {100 * self.confidence:g} % from {self.low:.4f} to "
            f"{self.high:.4f}, {len(self.readings_si)} moves"
        )


def fit_friction(
    readings: QuantityLike,
    motions: Sequence[str],
    *,
    lines: int,
    loads: Sequence[Any] | None = None,
    dead_line_sheave_turns: bool = False,
    confidence: NumberLike = 0.95,
) -> FrictionFit:
    r"""Sheave friction from the readings of slow moves up and down, of one load or many.

    .. math:: \ln W_\mathrm{ind} = a_g \pm \tfrac{1}{2} (N - 1 + 2t) \ln K, \quad +\ \text{lowering}

    is exact for one friction K of all sheaves, with one intercept :math:`a_g` for each load, so
    that least squares need no iteration. Errors of the readings are taken as independent and of
    one size in proportion; standard errors by propagation, the interval of ln K by Student's t.
    At rest friction leaves the tensions open, so readings at rest have no place here.

    The string must hang free of drag, pumps off; each load is moved up and down at about the same
    height, slowly and steadily. Moves are rig work: they follow the rig's own procedures.

    Source: ordinary least squares with group means, e.g. N. R. Draper and H. Smith, Applied
    Regression Analysis; the linear form derived here from `hoisting_ratio` and `lowering_ratio`.

    Parameters
    ----------
    readings : force, shape (moves,)
        What the indicator, set for `lines`, showed during each move.
    motions : sequence of {"hoisting", "lowering"}
        What the blocks did in each.
    lines : int
        Lines strung, even.
    loads : sequence, optional
        Which load each move moved, by any name or number; one load for all if left out.
    dead_line_sheave_turns : bool, default False
        Whether the dead-line sheave turns with the line, with the friction of the others.
    confidence : number, default 0.95
        Probability of the interval.

    Returns
    -------
    FrictionFit
        Friction, interval, hook loads.

    Raises
    ------
    InadmissibleError
        If no load was moved both up and down, if there is no move more than unknowns (two moves of
        one load: `friction_from_readings`), for a friction above 2, which no sheave has, or for
        values that cannot be.

    Examples
    --------
    >>> import ropewalk as rw
    >>> fit = rw.deadline.fit_friction(
    ...     rw.Q([333.0, 474.5, 332.5, 473.8], "kip"),
    ...     ["hoisting", "lowering", "hoisting", "lowering"],
    ...     lines=10,
    ... )
    >>> print(fit)
    K = 1.0401, 95 % from 1.0396 to 1.0407, 4 moves
    >>> print(f"{fit.hook_loads[0].to('kip'):.1f}")
    399.7 kip
    """
    shown = np.asarray(to_si(_WHERE, "readings", readings, "force"), dtype=np.float64)
    if shown.ndim != 1:
        _refuse("readings", f"must be a row of numbers, got an array of shape {shown.shape}")
    moves = [str(motion) for motion in motions]
    for index, motion in enumerate(moves):
        if motion not in _DIRECTIONS:
            _refuse(
                "motions",
                f"must be 'hoisting' or 'lowering', got {motion!r} in row {index}; at rest "
                "friction leaves the tensions open",
            )
    names = [0] * len(shown) if loads is None else list(loads)
    if not len(shown) == len(moves) == len(names):
        _refuse(
            "motions",
            f"must be one for each reading, and so must loads: there are {len(shown)} readings, "
            f"{len(moves)} motions and {len(names)} loads",
        )
    if not isinstance(dead_line_sheave_turns, (bool, np.bool_)):
        text = f"dead_line_sheave_turns must be True or False, got {dead_line_sheave_turns!r}"
        raise UnitError(f"{_WHERE}(): {text}", _WHERE, "dead_line_sheave_turns")
    order = {name: number for number, name in enumerate(dict.fromkeys(names))}
    count = to_count(_WHERE, "lines", lines)
    covered = float(to_si(_WHERE, "confidence", confidence, "number"))
    lowered = [_DIRECTIONS[motion] for motion in moves]
    numbers = [order[name] for name in names]
    record = _core.deadline.fit_friction(
        shown,
        lowered,
        numbers,
        max(-(2**31), min(count, 2**31 - 1)),
        bool(dead_line_sheave_turns),
        covered,
    )
    return FrictionFit(
        sheave_friction=record["friction"],
        standard_error=record["standard_error"],
        low=record["low"],
        high=record["high"],
        confidence=covered,
        scatter=record["scatter"],
        degrees_of_freedom=record["degrees_of_freedom"],
        loads=tuple(order),
        hook_loads_si=np.array(record["hook_loads"]),
        hook_load_errors_si=np.array(record["hook_load_errors"]),
        lines=count,
        dead_line_sheave_turns=bool(dead_line_sheave_turns),
        readings_si=shown,
        lowered=np.array(lowered),
        load_of_move=np.array(numbers),
    )


def _refuse(field: str, reason: str) -> None:
    raise InadmissibleError(f"{_WHERE}(): {field} {reason}", _WHERE, field)
