"""The class `Refits`: a life regression on tables chance might have given. In `ropewalk.fit`."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import numpy as np
import numpy.typing as npt

from ropewalk._fit_table import over
from ropewalk._units import Q
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    from ropewalk._fit_result import LifeFit

__all__ = ["Refits"]

_WHERE = "fit.LifeFit.bootstrap"
#: Share of refits without a maximum above which percentiles of the others mislead.
_MOST_FAILED = 0.1


@dataclass(frozen=True, eq=False, repr=False, slots=True)
class Refits:
    """Parameters of the refits that converged, and how many did not.

    Attributes
    ----------
    parameters
        A row for each refit that converged, in the order of `names`.
    names
        Names of the parameters.
    asked, failed
        Refits asked for, and those without a maximum; they are in no row.
    """

    parameters: npt.NDArray[np.float64]
    names: tuple[str, ...]
    asked: int
    failed: int

    @property
    def standard_errors(self) -> npt.NDArray[np.float64]:
        """Standard deviation of each parameter over the refits."""
        self._enough()
        return np.asarray(self.parameters.std(axis=0, ddof=1))

    def percentiles(self, confidence: float = 0.95) -> npt.NDArray[np.float64]:
        """Percentile interval of each parameter, shape (parameters, 2).

        Raises
        ------
        InadmissibleError
            If more than a tenth of the refits found no maximum: the others are then a selection.
        """
        if not 0.0 < confidence < 1.0:
            _refuse("confidence", f"confidence = {confidence!r} is outside (0, 1) (definition)")
        self._enough()
        ends = [0.5 - 0.5 * confidence, 0.5 + 0.5 * confidence]
        return np.asarray(np.quantile(self.parameters, ends, axis=0).T)

    def __repr__(self) -> str:
        return f"Refits({self.asked - self.failed} of {self.asked})"

    def _enough(self) -> None:
        if self.failed > _MOST_FAILED * self.asked or self.asked - self.failed < 2:
            _refuse(
                "refits",
                f"{self.failed} of {self.asked} refits found no maximum: the others are a "
                "selection, and their percentiles mislead",
            )


def refits_of(
    fit: LifeFit, refits: int, seed: int, parametric: bool, run_out: Any, threads: int
) -> Refits:
    """Refit as `LifeFit.bootstrap` says."""
    for name, value, least in (("refits", refits, 1), ("seed", seed, 0)):
        whole = isinstance(value, (int, np.integer)) and not isinstance(value, bool)
        if not whole or not least <= value < 2**63:
            _refuse(name, f"{name} must be a whole number from {least}, got {value!r}")
    table, maximum = fit.core
    if parametric:
        limits = np.full(fit.rows, np.inf)
        if run_out is not None:
            limits[:] = _log_run_out(fit, run_out)
        limits[fit.known == 1] = fit.log_life[fit.known == 1]
        found, end = table.refit_parametric(maximum, limits.tolist(), refits, seed, threads)
    elif run_out is not None:
        _refuse("run_out", "run_out is for parametric refits; drawn rows keep theirs")
    else:
        found, end = table.refit_resampled(maximum, refits, seed, threads)
    return Refits(found[end == 0], fit.names, int(refits), int((end != 0).sum()))


def _log_run_out(fit: LifeFit, run_out: Any) -> float:
    value = Q(run_out) if isinstance(run_out, str) else run_out
    if hasattr(value, "magnitude"):
        value = Q([float(value.magnitude)], str(value.units))
    else:
        value = [value]
    ratio = float(over(_WHERE, "run_out", value, fit.life_reference)[0])
    latest = fit.log_life[fit.known == 0].max(initial=-np.inf)
    if not ratio > 0.0 or math.log(ratio) < latest:
        _refuse("run_out", f"run_out = {run_out} lies before a failure of the table")
    return math.log(ratio)


def _refuse(field: str, reason: str) -> None:
    raise InadmissibleError(f"{_WHERE}(): {reason}", _WHERE, field)
