"""The class `LifeFit`: what a life regression found. Exported by `ropewalk.fit`."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import TYPE_CHECKING, Any, Literal, NamedTuple

import numpy as np
import numpy.typing as npt

from ropewalk import _core
from ropewalk._border import QuantityLike
from ropewalk._fit_at import point
from ropewalk._fit_bootstrap import Refits, refits_of
from ropewalk._fit_terms import Term
from ropewalk._units import Q
from ropewalk.errors import InadmissibleError

if TYPE_CHECKING:
    import pandas as pd

__all__ = ["LifeFit"]

Array = npt.NDArray[np.float64]
Method = Literal["wald", "profile", "bootstrap"]
Policy = Literal["raise", "warn", "ignore"]


class Core(NamedTuple):
    """The table and its maximum as the compiled core holds them."""

    table: Any
    maximum: Any


@dataclass(frozen=True, eq=False, repr=False)
class LifeFit:
    """A life regression: parameters, how well they are known, and whether to trust them.

    Attributes
    ----------
    distribution, life, life_reference, location, scale
        As given to `fit_life`; terms without the intercepts.
    estimates
        Parameters in the order of `names`: those of μ, then those of ln σ.
    covariance
        Inverse of the observed information; None unless `converged`.
    log_likelihood
        On the scale of life over `life_reference`, as publications have it.
    failures, rows
        Rows that failed, seen or unseen, and all rows.
    doubts
        Why the fit is not to be trusted, in words; empty if `valid`.
    log_life, log_life_to, known
        ln of life over its reference, of the end of an interval, and what is known of each row: 0
        failed, 1 run-out, 2 failed before, 3 interval.
    mu, ln_sigma
        Location and ln σ of each row.
    reach
        Of each term of `location` and `scale` the least and the largest value of its column over
        the reference, or all levels.
    """

    distribution: str
    life: str
    life_reference: QuantityLike | float
    location: tuple[Term, ...]
    scale: tuple[Term, ...]
    estimates: Array
    covariance: Array | None
    log_likelihood: float
    failures: int
    rows: int
    iterations: int
    converged: bool
    doubts: tuple[str, ...]
    log_life: Array
    log_life_to: Array
    known: npt.NDArray[np.int64]
    mu: Array
    ln_sigma: Array
    reach: tuple[tuple[Any, ...], ...]
    core: Core = field(repr=False)

    @property
    def valid(self) -> bool:
        """Whether there is no doubt."""
        return not self.doubts

    @property
    def names(self) -> tuple[str, ...]:
        """Names of the parameters."""
        return (
            "intercept",
            *map(str, self.location),
            "ln σ",
            *(f"ln σ: {term}" for term in self.scale),
        )

    @property
    def parameters(self) -> Mapping[str, float]:
        """Parameters by name."""
        return MappingProxyType(dict(zip(self.names, self.estimates.tolist(), strict=True)))

    @property
    def standard_errors(self) -> Array:
        """Standard errors from the observed information, in the order of `names`.

        Raises
        ------
        InadmissibleError
            If the fit did not converge: there are none then.
        """
        return np.sqrt(np.diag(self._known_covariance("standard_errors")))

    @property
    def lives(self) -> Any:
        """Lives of the rows, in the unit of `life_reference`; of an interval its beginning."""
        return self._life(np.exp(self.log_life))

    @property
    def sigma(self) -> float:
        """σ where it is the same in every row: 1/shape of Weibull, deviation of ln N of lognormal.

        Raises
        ------
        InadmissibleError
            If it depends on a term.
        """
        if self.scale:
            _refuse("sigma", "scale_on", f"σ depends on {self.scale[0]}; take ln_sigma")
        return math.exp(self.estimates[-1])

    @property
    def aic(self) -> float:
        """Akaike's criterion, 2k − 2ℓ; the smaller of two on the same lives is to be preferred."""
        return 2.0 * len(self.estimates) - 2.0 * self.log_likelihood

    @property
    def bic(self) -> float:
        """Schwarz's criterion, k ln n − 2ℓ, n counting all rows."""
        return len(self.estimates) * math.log(self.rows) - 2.0 * self.log_likelihood

    def intervals(
        self,
        method: Method = "wald",
        *,
        confidence: float = 0.95,
        refits: int = 2000,
        seed: int = 0,
        threads: int = 1,
    ) -> pd.DataFrame:
        """Intervals of all parameters: columns ``low`` and ``high``, a row each.

        Parameters
        ----------
        method : {"wald", "profile", "bootstrap"}
            Estimate and standard error with the normal distribution; likelihood ratio, an end being
            infinite where the likelihood does not fall far enough; percentiles of refits on rows
            drawn with return.
        confidence : float, default 0.95
            Probability of an interval.
        refits, seed, threads
            For ``"bootstrap"``.

        Raises
        ------
        InadmissibleError
            If the fit did not converge, or a tenth of the refits did not.
        """
        import pandas as pd

        where = "intervals"
        share = _probability(where, "confidence", confidence)
        self._known_covariance(where)
        if method == "wald":
            reach = _normal_reach(share) * self.standard_errors
            bounds = np.column_stack([self.estimates - reach, self.estimates + reach])
        elif method == "profile":
            table, maximum = self.core
            bounds = np.array(
                [table.profile_interval(maximum, k, share) for k in range(len(self.estimates))]
            )
        elif method == "bootstrap":
            found = self.bootstrap(refits=refits, seed=seed, threads=threads)
            bounds = found.percentiles(share)
        else:
            _refuse(where, "method", f"must be 'wald', 'profile' or 'bootstrap', got {method!r}")
        return pd.DataFrame(bounds, index=list(self.names), columns=["low", "high"])

    def bootstrap(
        self,
        *,
        refits: int = 2000,
        seed: int = 0,
        parametric: bool = False,
        run_out: QuantityLike | float | None = None,
        threads: int = 1,
    ) -> Refits:
        """Fit again on tables that chance might have given as well.

        Parameters
        ----------
        refits : int, default 2000
            How many.
        seed : int, default 0
            The same seed gives the same refits, for any number of threads.
        parametric : bool, default False
            Draw lives from the fitted model instead of rows with return.
        run_out : life, optional
            Where rows that failed would have been taken off, had they lived that long; never if
            left out. Run-outs are taken off where they were. For parametric refits.
        threads : int, default 1
            Number of threads.

        Examples
        --------
        >>> import ropewalk as rw
        >>> table = rw.fit.life_table(life=[17.9, 28.9, 33.0, 41.5, 42.1, 45.6, 48.4, 51.8])
        >>> fit = rw.fit.fit_life(table, life="life")
        >>> refits = fit.bootstrap(refits=500, seed=1)
        >>> refits.parameters.shape
        (500, 2)
        """
        self._known_covariance("bootstrap")
        return refits_of(self, refits, seed, parametric, run_out, threads)

    def quantile(
        self,
        probability: float,
        at: Mapping[str, Any] | None = None,
        *,
        outside_validity: Policy = "raise",
    ) -> Any:
        """Life by which a share has failed, where the columns have the values `at`.

        Parameters
        ----------
        probability : float
            Share that has failed, within (0, 1).
        at : mapping, optional
            A value for each column that a term looks at, with its unit.
        outside_validity : {"raise", "warn", "ignore"}
            What to do where a term lies outside the rows of the table.

        Returns
        -------
        float or Quantity
            In the unit of `life_reference`.

        Raises
        ------
        InadmissibleError
            If the fit did not converge, or `at` lacks a column.
        ValidityError
            Outside the table, unless told otherwise.

        Examples
        --------
        >>> import ropewalk as rw
        >>> table = rw.fit.life_table(life=[17.9, 28.9, 33.0, 41.5, 42.1, 45.6, 48.4, 51.8])
        >>> fit = rw.fit.fit_life(table, life="life")
        >>> print(f"{fit.quantile(0.1):.1f}")
        25.9
        """
        y, _ = self._log_quantile("quantile", probability, at, outside_validity)
        return self._life(math.exp(y))

    def quantile_interval(
        self,
        probability: float,
        at: Mapping[str, Any] | None = None,
        *,
        confidence: float = 0.95,
        outside_validity: Policy = "raise",
    ) -> tuple[Any, Any]:
        """Interval of a quantile by its standard error in ln N (delta method)."""
        where = "quantile_interval"
        covariance = self._known_covariance(where)
        y, slope = self._log_quantile(where, probability, at, outside_validity)
        reach = _normal_reach(_probability(where, "confidence", confidence))
        reach *= math.sqrt(float(slope @ covariance @ slope))
        return self._life(math.exp(y - reach)), self._life(math.exp(y + reach))

    def residuals(self) -> Array:
        """Residuals of Cox and Snell: −ln of the probability to live longer than each row did.

        If the model holds, those of failures and run-outs are a censored sample of the exponential
        distribution with mean 1. For an interval it is the one at its beginning. Source: D. R. Cox
        and E. J. Snell, J. R. Statist. Soc. B 30 (1968) (from memory).
        """
        self._known_covariance("residuals")
        rows = zip(self.log_life, self.mu, self.ln_sigma, strict=True)
        survive = _core.fit.log_survival
        return np.array([-survive(self.distribution, y, mu, s) for y, mu, s in rows])

    def summary(self) -> pd.DataFrame:
        """Table of the parameters: estimate, and if converged standard error, low and high 95 %."""
        import pandas as pd

        table = pd.DataFrame({"estimate": self.estimates}, index=list(self.names))
        if self.converged:
            table["standard error"] = self.standard_errors
            table[["low", "high"]] = self.intervals()
        return table

    def __repr__(self) -> str:
        trust = "valid" if self.valid else f"{len(self.doubts)} doubts"
        return (
            f"LifeFit({self.distribution}, {self.failures} failures in {self.rows} rows, "
            f"log-likelihood {self.log_likelihood:.4f}, {trust})"
        )

    def _known_covariance(self, where: str) -> Array:
        if self.covariance is None:
            _refuse(where, "fit", f"the fit found no maximum to stand on: {self.doubts[0]}")
        covariance: Array = np.asarray(self.covariance)
        return covariance

    def _log_quantile(
        self, where: str, probability: float, at: Mapping[str, Any] | None, policy: Policy
    ) -> tuple[float, Array]:
        self._known_covariance(where)
        share = _probability(where, "probability", probability)
        name, count = f"fit.LifeFit.{where}", len(self.location)
        x = point(name, self.location, self.reach[:count], at, policy)
        v = point(name, self.scale, self.reach[count:], at, policy)
        mu = float(x @ self.estimates[: len(x)])
        s = float(v @ self.estimates[len(x) :])
        y, by_s = _core.fit.log_quantile(self.distribution, share, mu, s)
        return y, np.concatenate([x, by_s * v])

    def _life(self, ratio: float | Array) -> Any:
        whole: Any = self.life_reference
        return ratio * (Q(whole) if isinstance(whole, str) else whole)


def _normal_reach(share: float) -> float:
    y, _ = _core.fit.log_quantile("lognormal", 0.5 + 0.5 * share, 0.0, 0.0)
    return float(y)


def _probability(where: str, name: str, value: Any) -> float:
    plain = isinstance(value, (int, float, np.number)) and not isinstance(value, bool)
    if not plain or not 0.0 < value < 1.0:
        _refuse(where, name, f"{name} = {value!r} is outside (0, 1) (definition)")
    return float(value)


def _refuse(where: str, name: str, reason: str) -> None:
    where = f"fit.LifeFit.{where}"
    raise InadmissibleError(f"{where}(): {reason}", where, name)
