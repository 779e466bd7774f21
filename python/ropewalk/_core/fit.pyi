"""
Regression of log life with censored rows; no units.
"""

from __future__ import annotations
import collections.abc
import numpy
import numpy.typing
import typing

__all__: list[str] = ["Maximum", "Table", "log_quantile", "log_survival"]

class Maximum:
    """
    Where the likelihood is largest.
    """
    def __getstate__(self) -> tuple[list[float], list[float], float, int, int]: ...
    def __setstate__(
        self,
        arg0: tuple[
            collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
            collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
            typing.SupportsFloat | typing.SupportsIndex,
            typing.SupportsInt | typing.SupportsIndex,
            typing.SupportsInt | typing.SupportsIndex,
        ],
    ) -> None: ...
    @property
    def covariance(self) -> typing.Any:
        """
        Inverse of the observed information; None unless converged.
        """
    @property
    def end(self) -> int:
        """
        0 converged, 1 most iterations, 2 flat, 3 scale at its bound.
        """
    @property
    def iterations(self) -> int:
        """
        Steps of Newton's method.
        """
    @property
    def log_likelihood(self) -> float:
        """
        On the scale of log life.
        """
    @property
    def parameters(self) -> numpy.typing.NDArray[numpy.float64]:
        """
        Those of the location, then those of ln σ.
        """

class Table:
    """
    Lives and covariates, all numbers without unit.
    """
    def __getstate__(
        self,
    ) -> tuple[int, list[float], list[float], list[int], list[float], int, list[float], int]: ...
    def __init__(
        self,
        distribution: str,
        log_life: float | numpy.typing.ArrayLike,
        log_life_to: float | numpy.typing.ArrayLike,
        known: collections.abc.Sequence[typing.SupportsInt | typing.SupportsIndex],
        location: float | numpy.typing.ArrayLike,
        scale: float | numpy.typing.ArrayLike,
    ) -> None: ...
    def __setstate__(
        self,
        arg0: tuple[
            typing.SupportsInt | typing.SupportsIndex,
            collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
            collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
            collections.abc.Sequence[typing.SupportsInt | typing.SupportsIndex],
            collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
            typing.SupportsInt | typing.SupportsIndex,
            collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
            typing.SupportsInt | typing.SupportsIndex,
        ],
    ) -> None: ...
    def log_likelihood(
        self, parameters: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex]
    ) -> tuple[float, numpy.typing.NDArray[numpy.float64], numpy.typing.NDArray[numpy.float64]]:
        """
        Log-likelihood, gradient and Hessian.
        """
    def maximize(self) -> Maximum:
        """
        Maximum likelihood.
        """
    def profile_interval(
        self,
        maximum: Maximum,
        parameter: typing.SupportsInt | typing.SupportsIndex,
        confidence: typing.SupportsFloat | typing.SupportsIndex,
    ) -> tuple[float, float]:
        """
        Likelihood-ratio interval of one parameter.
        """
    def refit_parametric(
        self,
        maximum: Maximum,
        limits: collections.abc.Sequence[typing.SupportsFloat | typing.SupportsIndex],
        refits: typing.SupportsInt | typing.SupportsIndex,
        seed: typing.SupportsInt | typing.SupportsIndex,
        threads: typing.SupportsInt | typing.SupportsIndex = 1,
    ) -> tuple:
        """
        Parameters of refits on lives drawn from the fitted model, and how each ended.
        """
    def refit_resampled(
        self,
        maximum: Maximum,
        refits: typing.SupportsInt | typing.SupportsIndex,
        seed: typing.SupportsInt | typing.SupportsIndex,
        threads: typing.SupportsInt | typing.SupportsIndex = 1,
    ) -> tuple:
        """
        Parameters of refits on rows drawn with return, and how each ended.
        """

def log_quantile(
    distribution: str,
    probability: typing.SupportsFloat | typing.SupportsIndex,
    mu: typing.SupportsFloat | typing.SupportsIndex,
    s: typing.SupportsFloat | typing.SupportsIndex,
) -> tuple[float, float]:
    """
    ln of the life by which a share has failed, and its derivative by s.
    """

def log_survival(
    distribution: str,
    log_life: typing.SupportsFloat | typing.SupportsIndex,
    mu: typing.SupportsFloat | typing.SupportsIndex,
    s: typing.SupportsFloat | typing.SupportsIndex,
) -> float:
    """
    ln of the probability to live longer.
    """
