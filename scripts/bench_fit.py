"""Life regression side by side with SciPy: part of `scripts/bench`."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import numpy as np
import numpy.typing as npt
from rich.console import Console
from rich.table import Table
from scipy import optimize

import ropewalk as rw

Array = npt.NDArray[np.float64]
Timer = Callable[[Callable[[], Any], int], float]
REFITS = 10_000
#: SciPy refits few, and its time is taken per refit.
FEW = 50
#: Nickel-base superalloy, W. Nelson, Accelerated Testing (1990), p. 272: ksi, thousands of cycles.
STRESS = (
    "80.3 80.6 80.8 84.3 85.2 85.6 85.8 86.4 86.7 87.2 87.3 89.7 91.3 99.8 100.1 100.5 113.0 "
    "114.8 116.4 118.0 118.4 118.6 120.4 142.5 144.5 145.9"
)
LIFE = (
    "211.629 200.027 57.923 155.000 13.949 112.968 152.680 156.725 138.114 56.723 121.075 "
    "122.372 112.002 43.331 12.076 13.181 18.067 21.300 15.616 13.030 8.489 12.434 9.750 11.865 "
    "6.705 5.733"
)
RUN_OUTS = (2, 5, 8, 11)


def scipy_fit(x: Array, y: Array, failed: Array, weight: Array, start: Array) -> Array:
    """Maximum of the same likelihood with its gradient in NumPy, by BFGS."""

    def negative(theta: Array) -> tuple[float, Array]:
        z = (y - x @ theta[:3]) * np.exp(-theta[3])
        hazard = np.exp(z)
        value = np.sum(weight * (failed * (z - theta[3]) - hazard))
        by_z = weight * (failed - hazard)
        by_mu = -(by_z * np.exp(-theta[3])) @ x
        by_s = -np.sum(by_z * z) - np.sum(weight * failed)
        return -float(value), -np.append(by_mu, by_s)

    found: Array = optimize.minimize(negative, start, jac=True, method="BFGS").x
    return found


def tables(console: Console, best: Timer) -> None:
    """Print how many times faster fit and refits are; results are compared first."""
    stress, life = (np.array(text.split(), dtype=float) for text in (STRESS, LIFE))
    failed = np.ones(len(life), dtype=np.float64)
    failed[list(RUN_OUTS)] = 0.0
    log_stress, y = np.log(stress / 100.0), np.log(life)
    x = np.column_stack([np.ones_like(y), log_stress, log_stress**2])
    table = rw.fit.life_table(life=life, run_out=failed == 0.0, **{"stress [ksi]": stress})
    terms = [rw.fit.Log("stress", "100 ksi"), rw.fit.Log("stress", "100 ksi", 2)]

    def whole() -> rw.fit.LifeFit:
        return rw.fit.fit_life(table, life="life", censored="run_out", on=terms)

    fit = whole()
    ones = np.ones(len(y), dtype=np.float64)
    start: Array = np.array([y.mean(), 0.0, 0.0, 0.0])
    np.testing.assert_allclose(
        fit.estimates, scipy_fit(x, y, failed, ones, start), rtol=1e-3, atol=1e-4
    )
    rng = np.random.default_rng(1)
    draws = [np.bincount(rng.integers(0, len(y), len(y)), minlength=len(y)) for _ in range(FEW)]
    core = rw.si.fit.Table("weibull", y, y, (failed == 0.0).astype(int).tolist(), x, x[:, :1])
    rows: list[tuple[str, float, float]] = [
        (
            "fit from the table",
            best(whole, 20),
            best(lambda: scipy_fit(x, y, failed, ones, start), 5),
        ),
        (
            "fit from arrays",
            best(core.maximize, 20),
            best(lambda: scipy_fit(x, y, failed, ones, start), 5),
        ),
        (
            f"one of {REFITS} refits, one thread",
            best(lambda: fit.bootstrap(refits=REFITS, seed=1), 3) / REFITS,
            best(
                lambda: [
                    scipy_fit(x, y, failed, one.astype(np.float64), fit.estimates) for one in draws
                ],
                1,
            )
            / FEW,
        ),
    ]
    shown = Table(
        title="Life regression, superalloy, Weibull, 26 rows, 4 parameters: times as fast as SciPy",
        title_justify="left",
    )
    for name in ("what", "ropewalk µs", "SciPy µs", "ratio"):
        shown.add_column(name, justify="left" if name == "what" else "right")
    for what, own, theirs in rows:
        shown.add_row(what, f"{own * 1e6:.1f}", f"{theirs * 1e6:.0f}", f"{theirs / own:.0f} x")
    console.print(shown)
