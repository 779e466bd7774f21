"""Probability that no place of the line passes its discard life, against the definition."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from line_map_test import any_case

import ropewalk as rw

LN10 = math.log(10.0)


def worst_of_sections(damage: np.ndarray, per_section: int) -> list[float]:
    """Largest damage of each section, laid from the first drum end, of so many whole bins."""
    starts = range(0, len(damage), per_section)
    return [float(damage[i : i + per_section].max()) for i in starts]


def survival(damage: np.ndarray, per_section: int, scatter_lg: float) -> float:
    """Π Φ(−ln(worst)/σ): lives lognormal with median 1 and σ of the natural logarithm.

    One life rules a whole section, so its worst place decides; sections are independent. Where
    there is no damage life cannot be passed.
    """
    sigma = scatter_lg * LN10
    worst = [one for one in worst_of_sections(damage, per_section) if one > 0]
    return math.prod(0.5 * math.erfc(math.log(one) / (sigma * math.sqrt(2.0))) for one in worst)


def survival_by_drawing(
    damage: np.ndarray, per_section: int, scatter_lg: float, samples: int, seed: int
) -> float:
    """The share of ropes drawn at random that survive."""
    random = np.random.default_rng(seed)
    worst = np.array([one for one in worst_of_sections(damage, per_section) if one > 0])
    lives = np.exp(scatter_lg * LN10 * random.standard_normal((samples, len(worst))))
    return float((lives > worst).all(axis=1).mean())


def scaled_history(seed: int, worst: float) -> object:
    """A history whose worst place has about so much damage."""
    case = any_case(seed)
    most = float(case.simulate().damage.max())
    law = case.law._replace(scale=case.law.scale * most / worst)
    return case._replace(law=law).run()


# The reference itself


def test_one_section_at_the_median_survives_every_second_time() -> None:
    assert survival(np.array([0.3, 1.0, 0.5]), 3, 0.2) == pytest.approx(0.5)
    assert survival(np.array([0.3, 1.0, 0.5, 1.0, 0.0, 0.0]), 3, 0.2) == pytest.approx(0.25)


def test_one_standard_deviation_below_the_median() -> None:
    # Φ(1) = 0.841344746…, any table of the normal distribution.
    assert survival(np.array([10**-0.2]), 1, 0.2) == pytest.approx(0.841344746, abs=1e-9)


def test_the_closed_form_is_what_drawing_gives() -> None:
    damage = np.random.default_rng(2).uniform(0.0, 0.7, 60)
    closed = survival(damage, 4, 0.2)
    drawn = survival_by_drawing(damage, 4, 0.2, 40_000, 3)
    assert 0.05 < closed < 0.95
    assert drawn == pytest.approx(closed, abs=4 * math.sqrt(closed * (1 - closed) / 40_000))


# The library


@settings(max_examples=25, deadline=None)
@given(st.integers(0, 2**31), st.floats(0.05, 1.2), st.floats(0.05, 0.5), st.integers(1, 200))
def test_the_closed_form(seed: int, worst: float, scatter_lg: float, per_section: int) -> None:
    history = scaled_history(seed, worst)
    length = rw.Q(0.25 * per_section, "m")
    ours = history.survival(scatter_lg=scatter_lg, correlation_length=length)
    expected = survival(history.damage.values, per_section, scatter_lg)
    assert float(ours) == pytest.approx(expected, rel=1e-9, abs=1e-300)


@pytest.mark.parametrize("seed", range(4))
def test_sampling_agrees_with_the_closed_form(seed: int) -> None:
    history = scaled_history(seed, 0.8)
    how = {"scatter_lg": 0.2, "correlation_length": "5 m"}
    closed = float(history.survival(**how))
    drawn = float(history.survival(**how, samples=20_000, seed=seed))
    spread = math.sqrt(max(closed * (1 - closed), 1e-4) / 20_000)
    assert drawn == pytest.approx(closed, abs=4.5 * spread)
    assert drawn == float(history.survival(**how, samples=20_000, seed=seed))


@pytest.mark.parametrize("seed", range(4))
def test_longer_correlation_survives_more(seed: int) -> None:
    # Fewer independent lives; each length a multiple of the one before, so sections are unions.
    history = scaled_history(seed, 0.8)
    chances = [
        float(history.survival(scatter_lg=0.2, correlation_length=length))
        for length in ("0.25 m", "1 m", "5 m", "50 m", "5000 m")
    ]
    assert chances == sorted(chances)
    worst = float(history.damage.max())
    assert chances[-1] == pytest.approx(survival(np.array([worst]), 1, 0.2), rel=1e-9)
