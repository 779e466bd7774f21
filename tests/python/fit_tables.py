"""Tables of lives for the tests of `fit`: published ones from the reference cases, drawn ones."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import numpy.typing as npt
import pandas as pd
from reference_cases import FOLDER, read_file

import ropewalk as rw

Array = npt.NDArray[np.float64]

DISTRIBUTIONS = ("weibull", "lognormal", "loglogistic", "birnbaum-saunders")


def published(file: str) -> pd.DataFrame:
    """The table of the first case of a file of reference cases."""
    case = read_file(FOLDER / "fit" / f"{file}.toml")["case"][0]
    return rw.fit.life_table(**case["inputs"]["table"]["inputs"])


def superalloy() -> pd.DataFrame:
    """W. Nelson, Accelerated Testing (1990), p. 272: lives in thousands of cycles."""
    return published("meeker-escobar_superalloy")


def fit_superalloy(reference: str = "100 ksi", **options: Any) -> rw.fit.LifeFit:
    """Weibull, quadratic in ln stress."""
    terms = [rw.fit.Log("stress", reference), rw.fit.Log("stress", reference, 2)]
    options = {"life": "life", "censored": "run_out", "on": terms} | options
    return rw.fit.fit_life(superalloy(), **options)


def log_lives(distribution: str, share: Array, mu: Array | float, sigma: float) -> Array:
    """Log lives at these shares, by the formulas of the distributions and nothing of ropewalk's."""
    from scipy import stats

    if distribution == "weibull":
        return np.asarray(mu + sigma * np.log(-np.log1p(-share)))
    if distribution == "lognormal":
        return np.asarray(mu + sigma * stats.norm.ppf(share))
    if distribution == "loglogistic":
        return np.asarray(mu + sigma * stats.logistic.ppf(share))
    return np.asarray(mu + 2.0 * np.arcsinh(0.5 * sigma * stats.norm.ppf(share)))


def drawn(
    seed: int, rows: int, distribution: str, truth: tuple[float, float, float], limit: float
) -> pd.DataFrame:
    """Lives ln N = b0 + b1 ln(tension/30 kip) + σε, with run-outs at `limit`."""
    rng = np.random.default_rng(seed)
    tension = rng.choice([20.0, 30.0, 45.0], rows)
    b0, b1, sigma = truth
    y = log_lives(distribution, rng.uniform(size=rows), b0 + b1 * np.log(tension / 30.0), sigma)
    out = y > math.log(limit)
    return rw.fit.life_table(
        life=np.exp(np.minimum(y, math.log(limit))), run_out=out, **{"tension [kip]": tension}
    )
