"""Life regression: identities, other programs, published fits, truths that come back."""

from __future__ import annotations

import math
import pickle
from typing import Any

import numpy as np
import pytest
from fit_tables import DISTRIBUTIONS, drawn, fit_superalloy, log_lives, published, superalloy
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import optimize, stats

import ropewalk as rw
from ropewalk import _core
from ropewalk.testing import assert_close

# Other programs


def scipy_log_likelihood(distribution: str, theta: Any, x: Any, y: Any, out: Any) -> float:
    """Density and survival of life, from scipy.stats alone."""
    mu, sigma = x @ theta[:-1], math.exp(theta[-1])
    life = np.exp(y)
    if distribution == "weibull":
        law = stats.weibull_min(1.0 / sigma, scale=np.exp(mu))
    elif distribution == "lognormal":
        law = stats.lognorm(sigma, scale=np.exp(mu))
    elif distribution == "loglogistic":
        law = stats.fisk(1.0 / sigma, scale=np.exp(mu))
    else:
        law = stats.fatiguelife(sigma, scale=np.exp(mu))
    return float(np.sum(np.where(out, law.logsf(life), law.logpdf(life))))


@pytest.mark.parametrize("distribution", DISTRIBUTIONS)
def test_superalloy_is_scipys_optimum(distribution: str) -> None:
    table = superalloy()
    x = np.log(table["stress [ksi]"].to_numpy() / 100.0)
    x = np.column_stack([np.ones_like(x), x, x**2])
    y, out = np.log(table["life"].to_numpy()), table["run_out"].to_numpy()
    fit = fit_superalloy(distribution=distribution)
    assert fit.valid
    value = scipy_log_likelihood(distribution, fit.estimates, x, y, out)
    assert fit.log_likelihood == pytest.approx(value, abs=1e-9)
    found = optimize.minimize(
        lambda theta: -scipy_log_likelihood(distribution, theta, x, y, out),
        fit.estimates + np.array([0.2, -0.3, 0.5, 0.1]),
        method="Nelder-Mead",
        options={"xatol": 1e-7, "fatol": 1e-10, "maxiter": 5000, "maxfev": 5000},
    )
    np.testing.assert_allclose(fit.estimates, found.x, atol=2e-4)
    assert fit.log_likelihood >= -found.fun - 1e-9


def test_superalloy_as_another_package_fits_it() -> None:
    # Printed by lifelines 0.30.3, WeibullAFTFitter and the two others: estimates, standard errors,
    # log-likelihood. Written down, since it asks for an older pandas than runs here.
    theirs = {
        "weibull": (
            [3.66425452, -7.39357077, 8.48270644, -0.98152502],
            [0.12133529, 0.62893937, 2.8312527, 0.17900707],
            -93.38188076338757,
        ),
        "lognormal": (
            [3.43103745, -7.07257273, 8.8185227, -0.47386302],
            [0.18719502, 0.86492237, 4.14192265, 0.15236526],
            -98.57552971508834,
        ),
        "loglogistic": (
            [3.52102498, -7.31435939, 8.48873068, -1.20439482],
            [0.15332966, 0.65754715, 3.21482723, 0.18492835],
            -96.18878188079228,
        ),
    }
    for distribution, (estimates, errors, likelihood) in theirs.items():
        fit = fit_superalloy(distribution=distribution)
        # It stops a little early; the likelihood agrees to its last digits.
        np.testing.assert_allclose(fit.estimates, estimates, atol=4e-4)
        np.testing.assert_allclose(fit.standard_errors, errors, rtol=2e-5)
        assert fit.log_likelihood == pytest.approx(likelihood, abs=1e-7)


def test_log_likelihood_of_the_superalloy() -> None:
    # scipy.stats at the estimates Meeker and Escobar (1998), ex. 17.5 print (from memory).
    assert fit_superalloy().log_likelihood == pytest.approx(-93.3819, abs=5e-5)
    linear = fit_superalloy(scale_on=[rw.fit.Log("stress", "100 ksi")])
    assert linear.log_likelihood == pytest.approx(-92.5809, abs=5e-5)


def tight(function: Any, x0: Any, args: Any = (), disp: Any = 0) -> Any:
    """The optimizer of SciPy's own fits, carried on to more digits."""
    options = {"xtol": 1e-9, "ftol": 1e-12, "maxiter": 4000, "maxfun": 4000}
    return optimize.fmin(function, x0, args=args, disp=disp, **options)


@pytest.mark.parametrize(
    ("distribution", "law", "shape"),
    [
        ("weibull", stats.weibull_min, lambda s: 1.0 / s),
        ("lognormal", stats.lognorm, lambda s: s),
        ("loglogistic", stats.fisk, lambda s: 1.0 / s),
        ("birnbaum-saunders", stats.fatiguelife, lambda s: s),
    ],
)
def test_all_kinds_of_censoring_as_scipy_fits_them(distribution: str, law: Any, shape: Any) -> None:
    exact = [35.0, 51.0, 64.0, 80.0, 93.0, 120.0]
    left, right, between = [30.0], [100.0, 130.0], [[40.0, 60.0], [70.0, 95.0]]
    table = rw.fit.life_table(
        life=exact + left + right + [a for a, _ in between],
        to=[np.nan] * 9 + [b for _, b in between],
        kind=["no"] * 6 + ["left"] + ["right"] * 2 + ["interval"] * 2,
    )
    fit = rw.fit.fit_life(
        table, life="life", life_to="to", censored="kind", distribution=distribution
    )
    assert fit.valid
    data = stats.CensoredData(exact, left=left, right=right, interval=between)
    theirs = law.fit(data, floc=0, optimizer=tight)
    assert shape(fit.sigma) == pytest.approx(theirs[0], rel=1e-5)
    assert math.exp(fit.estimates[0]) == pytest.approx(theirs[2], rel=1e-5)


def test_coupons_and_bearings_as_scipy_fits_them() -> None:
    coupons = published("birnbaum-saunders_coupons")
    fit = rw.fit.fit_life(coupons, life="life", distribution="birnbaum-saunders")
    # At the median that Birnbaum and Saunders (1969) print, SciPy's law has this likelihood.
    law = stats.fatiguelife(fit.sigma, scale=math.exp(fit.estimates[0]))
    assert fit.log_likelihood == pytest.approx(law.logpdf(coupons["life"]).sum(), abs=1e-9)
    bearings = published("lieblein-zelen_bearings")
    weibull = rw.fit.fit_life(bearings, life="life")
    shape, _, scale = stats.weibull_min.fit(bearings["life"], floc=0)
    assert 1.0 / weibull.sigma == pytest.approx(shape, rel=1e-4)
    assert weibull.quantile(0.1) == pytest.approx(
        stats.weibull_min(shape, scale=scale).ppf(0.1), rel=1e-4
    )


# Derivatives


@settings(max_examples=60, deadline=None)
@given(
    st.sampled_from(DISTRIBUTIONS),
    st.lists(st.sampled_from([0, 1, 2, 3]), min_size=6, max_size=12),
    st.integers(0, 2**32 - 1),
)
def test_gradient_and_hessian_are_those_of_the_likelihood(
    distribution: str, known: list[int], seed: int
) -> None:
    rng = np.random.default_rng(seed)
    rows = len(known)
    known[0] = 0
    y = rng.normal(size=rows)
    x = np.column_stack([np.ones(rows), rng.normal(size=rows)])
    table = _core.fit.Table(distribution, y, y + rng.uniform(0.1, 1.0, rows), known, x, x)
    theta = rng.normal(scale=0.3, size=4)
    _, gradient, hessian = table.log_likelihood(theta)
    h = 1e-5
    for k, step in enumerate(np.eye(4) * h):
        up, down = table.log_likelihood(theta + step), table.log_likelihood(theta - step)
        slope = (up[0] - down[0]) / (2 * h)
        assert gradient[k] == pytest.approx(slope, rel=1e-5, abs=1e-5)
        np.testing.assert_allclose(hessian[k], (up[1] - down[1]) / (2 * h), rtol=1e-4, atol=1e-4)
    np.testing.assert_array_equal(hessian, hessian.T)


def test_weibull_gradient_by_complex_step() -> None:
    fit = fit_superalloy()
    x = np.log(superalloy()["stress [ksi]"].to_numpy() / 100.0)
    x = np.column_stack([np.ones_like(x), x, x**2])
    theta = fit.estimates + np.array([0.1, 0.2, -0.3, 0.05])
    failed = fit.known == 0

    def value(at: Any) -> Any:
        z = (fit.log_life - x @ at[:3]) * np.exp(-at[3])
        return np.sum(np.where(failed, z - at[3], 0.0)) - np.sum(np.exp(z))

    steps = [value(theta + 1e-30j * one).imag / 1e-30 for one in np.eye(4)]
    found, gradient, _ = fit.core.table.log_likelihood(theta)
    np.testing.assert_allclose(gradient, steps, rtol=1e-12)
    assert found == pytest.approx(value(theta).real, rel=1e-13)


# Identities


@settings(max_examples=30, deadline=None)
@given(st.integers(0, 2**32 - 1), st.integers(6, 40))
def test_lognormal_without_run_outs_is_least_squares(seed: int, rows: int) -> None:
    rng = np.random.default_rng(seed)
    x, y = rng.uniform(0.5, 2.0, rows), rng.normal(size=rows)
    table = {"life": np.exp(y), "d_over_d": x}
    fit = rw.fit.fit_life(table, life="life", on=["d_over_d"], distribution="lognormal")
    matrix = np.column_stack([np.ones(rows), x])
    beta, squares, _, _ = np.linalg.lstsq(matrix, y, rcond=None)
    np.testing.assert_allclose(fit.estimates[:2], beta, rtol=1e-7, atol=1e-8)
    assert fit.sigma == pytest.approx(math.sqrt(squares[0] / rows), rel=1e-7)
    errors = np.sqrt(np.diag(np.linalg.inv(matrix.T @ matrix)) * squares[0] / rows)
    np.testing.assert_allclose(fit.standard_errors[:2], errors, rtol=1e-6)


@settings(max_examples=30, deadline=None)
@given(st.integers(0, 2**32 - 1), st.floats(1e-3, 1e6), st.sampled_from(DISTRIBUTIONS))
def test_scale_of_life_shifts_the_intercept_only(seed: int, factor: float, law: str) -> None:
    table = drawn(seed, 40, law, (5.0, -3.0, 0.4), 1500.0)
    terms = [rw.fit.Log("tension", "30 kip")]
    options: dict[str, Any] = {"censored": "run_out", "on": terms, "distribution": law}
    one = rw.fit.fit_life(table, life="life", **options)
    other = rw.fit.fit_life(table.assign(life=table["life"] * factor), life="life", **options)
    np.testing.assert_allclose(other.estimates[1:], one.estimates[1:], rtol=1e-6, atol=1e-7)
    shift = other.estimates[0] - one.estimates[0]
    assert shift == pytest.approx(math.log(factor), abs=1e-7)
    same = rw.fit.fit_life(
        table.assign(life=table["life"] * factor), life="life", life_reference=factor, **options
    )
    assert same.estimates[0] == pytest.approx(one.estimates[0], abs=1e-7)
    assert same.log_likelihood == pytest.approx(one.log_likelihood, abs=1e-6)


def test_exponential_lives_in_closed_form() -> None:
    # With σ held at 1 the likelihood is largest at total time over failures; so the profile of
    # ln σ has its value at 0 there.
    life, out = np.array([3.0, 8.0, 1.5, 20.0, 20.0]), np.array([0, 0, 0, 1, 1])
    fit = rw.fit.fit_life({"life": life, "out": out}, life="life", censored="out")
    theta = [math.log(life.sum() / 3.0), 0.0]
    value, gradient, _ = fit.core.table.log_likelihood(theta)
    assert gradient[0] == pytest.approx(0.0, abs=1e-12)
    closed = -3.0 * (theta[0] + 1.0) + np.log(life[:3]).sum()
    assert value == pytest.approx(closed, rel=1e-13)


def test_weibull_scale_follows_from_its_shape() -> None:
    # The likelihood equation of the scale: η^β = Σ t^β / failures, run-outs in the sum.
    table = drawn(5, 60, "weibull", (5.0, 0.0, 0.4), 160.0)
    fit = rw.fit.fit_life(table, life="life", censored="run_out")
    shape = 1.0 / fit.sigma
    eta = (np.sum(table["life"] ** shape) / fit.failures) ** (1.0 / shape)
    assert math.exp(fit.estimates[0]) == pytest.approx(eta, rel=1e-9)


def test_units_do_not_matter() -> None:
    one, table = fit_superalloy(), superalloy()
    metric = {
        "life": table["life"].to_numpy(),
        "run_out": table["run_out"].to_numpy(),
        "stress": rw.Q(table["stress [ksi]"].to_numpy(), "ksi").to("MPa"),
    }
    terms = [rw.fit.Log("stress", "100 ksi"), rw.fit.Log("stress", rw.Q(100.0, "ksi"), 2)]
    other = rw.fit.fit_life(metric, life="life", censored="run_out", on=terms)
    np.testing.assert_allclose(other.estimates, one.estimates, rtol=1e-9)
    assert other.quantile(0.5, {"stress": "689.4757293168361 MPa"}) == pytest.approx(
        one.quantile(0.5, {"stress": "100 ksi"}), rel=1e-9
    )


def test_life_may_have_a_unit() -> None:
    table = {"work": rw.Q([900.0, 1100.0, 1400.0, 1650.0, 1200.0], "ton_mile")}
    fit = rw.fit.fit_life(table, life="work", life_reference="1000 ton_mile")
    median = fit.quantile(0.5)
    assert str(median.units) == "ton_mile"
    expected = 1000 * math.exp(fit.estimates[0]) * math.log(2) ** fit.sigma
    assert_close(median, rw.Q(expected, "ton_mile"))
    low, high = fit.quantile_interval(0.5)
    assert low < median < high


# Truth comes back


@pytest.mark.parametrize("distribution", DISTRIBUTIONS)
def test_the_truth_comes_back(distribution: str) -> None:
    truth = (5.5, -3.2, 0.4)
    table = drawn(11, 6000, distribution, truth, 900.0)
    fit = rw.fit.fit_life(
        table,
        life="life",
        censored="run_out",
        on=rw.fit.Log("tension", "30 kip"),
        distribution=distribution,
    )
    assert 0.1 < table["run_out"].mean() < 0.5
    away = (fit.estimates - [truth[0], truth[1], math.log(truth[2])]) / fit.standard_errors
    assert np.abs(away).max() < 3.5
    assert fit.standard_errors.max() < 0.05
    at = {"tension": "45 kip"}
    share = np.array([0.1, 0.5, 0.9])
    lives = np.exp(log_lives(distribution, share, truth[0] + truth[1] * math.log(1.5), truth[2]))
    for p, life in zip(share, lives, strict=True):
        low, high = fit.quantile_interval(float(p), at, confidence=0.999)
        assert low < life < high


def test_wald_and_profile_intervals_cover() -> None:
    truth = (5.0, -3.0, 0.5)
    hits = {"wald": 0, "profile": 0}
    for seed in range(150):
        table = drawn(seed, 60, "lognormal", truth, 500.0)
        fit = rw.fit.fit_life(
            table,
            life="life",
            censored="run_out",
            on=rw.fit.Log("tension", "30 kip"),
            distribution="lognormal",
        )
        for method in hits:
            low, high = fit.intervals(method, confidence=0.9).iloc[1]  # type: ignore[arg-type]
            hits[method] += low < truth[1] < high
    # 135 expected of 150, standard deviation 3.7: within four of them.
    for count in hits.values():
        assert 120 <= count <= 150


def test_residuals_of_the_truth_are_exponential() -> None:
    fit = rw.fit.fit_life(
        drawn(3, 3000, "loglogistic", (5.0, -3.0, 0.3), 1e9),
        life="life",
        on=rw.fit.Log("tension", "30 kip"),
        distribution="loglogistic",
    )
    assert stats.kstest(fit.residuals(), "expon").pvalue > 0.01
    assert fit.residuals().mean() == pytest.approx(1.0, abs=0.1)


# Intervals and refits


def test_profile_interval_is_where_scipys_likelihood_has_fallen() -> None:
    fit = fit_superalloy()
    table = superalloy()
    x = np.log(table["stress [ksi]"].to_numpy() / 100.0)
    x = np.column_stack([np.ones_like(x), x, x**2])
    bounds = fit.intervals("profile").to_numpy()
    for end in bounds[3]:

        def fallen(beta: Any, end: float = end) -> float:
            theta = np.append(beta, end)
            out = table["run_out"].to_numpy()
            return -scipy_log_likelihood("weibull", theta, x, fit.log_life, out)

        found = optimize.minimize(fallen, fit.estimates[:3], method="BFGS")
        fall = 2.0 * (fit.log_likelihood + found.fun)
        assert fall == pytest.approx(stats.chi2.ppf(0.95, 1), abs=1e-4)


def test_refits_do_not_depend_on_threads_and_have_the_spread_of_the_estimates() -> None:
    table = drawn(2, 300, "weibull", (5.0, -3.0, 0.5), 600.0)
    fit = rw.fit.fit_life(
        table, life="life", censored="run_out", on=rw.fit.Log("tension", "30 kip")
    )
    for options in ({}, {"parametric": True, "run_out": 600.0}):
        one = fit.bootstrap(refits=3000, seed=4, **options)  # type: ignore[arg-type]
        two = fit.bootstrap(refits=3000, seed=4, threads=3, **options)  # type: ignore[arg-type]
        np.testing.assert_array_equal(one.parameters, two.parameters)
        assert one.failed == 0
        np.testing.assert_allclose(one.standard_errors, fit.standard_errors, rtol=0.15)
    bounds = fit.intervals("bootstrap", refits=3000).to_numpy()
    np.testing.assert_allclose(bounds, fit.intervals().to_numpy(), atol=0.05)


def test_a_fit_travels() -> None:
    fit = fit_superalloy()
    other = pickle.loads(pickle.dumps(fit))
    np.testing.assert_array_equal(
        other.bootstrap(refits=50).parameters, fit.bootstrap(refits=50).parameters
    )
    assert other.intervals("profile").equals(fit.intervals("profile"))


def test_criteria_and_summary() -> None:
    fit = fit_superalloy()
    assert fit.aic == pytest.approx(2 * 4 - 2 * fit.log_likelihood)
    assert fit.bic == pytest.approx(4 * math.log(26) - 2 * fit.log_likelihood)
    table = fit.summary()
    assert list(table.columns) == ["estimate", "standard error", "low", "high"]
    assert list(table.index) == list(fit.names)
    reach = stats.norm.ppf(0.975) * table["standard error"]
    np.testing.assert_allclose(table["high"] - table["estimate"], reach, rtol=1e-9)
    assert "valid" in repr(fit)
