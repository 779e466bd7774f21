"""How far heave goes and how much sea a stroke allows: simulated seas, SciPy, limits."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy import integrate, optimize, stats

import ropewalk as rw
from ropewalk import compensator as hc
from ropewalk.errors import InadmissibleError, ValidityError

RESPONSE = hc.HeaveOperator.constant(1.0)


# Rayleigh statistics


def simulated(sea: rw.SeaState, seconds: float, seed: int) -> np.ndarray[Any, Any]:
    """A record of the sea, sampled at 2.5 Hz: random phases and amplitudes by its spectrum."""
    generator = np.random.default_rng(seed)
    count = int(seconds * 2.5) // 2 * 2
    omega = 2.0 * math.pi * np.fft.rfftfreq(count, 0.4)
    density = np.zeros_like(omega)
    density[1:] = sea.spectrum(rw.Q(omega[1:], "rad/s")).magnitude
    scale = np.sqrt(density * omega[1] / 4.0)
    lines = scale * (generator.normal(size=omega.size) + 1j * generator.normal(size=omega.size))
    return np.asarray(np.fft.irfft(lines, count) * count, dtype=np.float64)


def cycle_heights(record: np.ndarray[Any, Any]) -> np.ndarray[Any, Any]:
    """Heights between upcrossings of zero."""
    starts = np.flatnonzero((record[:-1] < 0.0) & (record[1:] >= 0.0)) + 1
    crests = np.maximum.reduceat(record, starts)[:-1]
    troughs = np.minimum.reduceat(record, starts)[:-1]
    return np.asarray(crests - troughs)


def test_rayleigh_statistics_against_a_simulated_sea() -> None:
    sea = rw.SeaState("5.5 m", "11 s", 3.3)
    # Swell-like heave: short waves filtered out, as a vessel does, leave a narrow band.
    response = hc.HeaveOperator.table(rw.Q([0.1, 8.0, 9.0, 14.0, 40.0], "s"), [0, 0, 1, 1, 1])
    motion = hc.heave(sea, response)
    seconds = 60 * 3600.0
    record = simulated(sea, seconds, seed=20261)
    spectrum = np.fft.rfft(record)
    frequency = np.fft.rfftfreq(record.size, 0.4)
    spectrum *= response.ratio(rw.Q(1.0 / np.maximum(frequency, 1e-2), "s"))
    record = np.fft.irfft(spectrum, record.size)
    heights = cycle_heights(record)
    assert record.std() == pytest.approx(motion.deviation_si, rel=0.02)
    expected = motion.cycles(rw.Q(seconds, "s"))
    assert heights.size == pytest.approx(expected, rel=0.02)
    significant = np.sort(heights)[-heights.size // 3 :].mean()
    assert significant == pytest.approx(motion.significant_height.m_as("m"), rel=0.05)
    for amplitude in (1.4, 2.5):
        share = np.mean(heights / 2.0 > amplitude)
        exceeded = hc.cycle_exceedance(motion.deviation, rw.Q(amplitude, "m"))
        assert share == pytest.approx(exceeded, rel=0.15)


def test_extremes_against_rayleigh_samples() -> None:
    samples = stats.rayleigh(scale=0.75).rvs((4000, 500), random_state=7).max(axis=1)
    assert samples.mean() == pytest.approx(hc.expected_maximum("0.75 m", 500).m_as("m"), rel=1e-2)
    exceeded = np.mean(samples > 2.9)
    assert exceeded == pytest.approx(hc.stroke_exceedance("0.75 m", "2.9 m", 500), abs=0.015)
    at_mode = hc.stroke_exceedance("0.75 m", hc.most_probable_maximum("0.75 m", 1e6), 1e6)
    assert at_mode == pytest.approx(1.0 - math.exp(-1.0), abs=1e-6)


@pytest.mark.parametrize(("cycles", "above"), [(10, 0.020), (50, 0.011), (1000, 0.006)])
def test_expected_maximum_against_the_integral(cycles: int, above: float) -> None:
    exact, _ = integrate.quad(lambda x: 1.0 - (1.0 - math.exp(-x * x / 2.0)) ** cycles, 0.0, 12.0)
    found = hc.expected_maximum("1 m", cycles).m_as("m")
    assert exact < found < exact * (1.0 + above)


@settings(max_examples=40, deadline=None)
@given(st.floats(0.001, 1.0))
def test_mean_of_highest_against_scipy(share: float) -> None:
    edge = math.sqrt(-2.0 * math.log(share))
    above, _ = integrate.quad(lambda x: x * x * math.exp(-x * x / 2.0), edge, edge + 12.0)
    assert hc.mean_of_highest("1 m", share).m_as("m") == pytest.approx(above / share, rel=1e-7)


@settings(max_examples=40, deadline=None)
@given(st.floats(1e-9, 0.9), st.floats(10.0, 1e6), st.floats(0.5, 8.0))
def test_allowed_deviation_undoes_exceedance(chance: float, cycles: float, half: float) -> None:
    stroke = rw.Q(half, "m")
    deviation = hc.allowed_heave_deviation(stroke, chance, cycles)
    assert hc.stroke_exceedance(deviation, stroke, cycles) == pytest.approx(chance, rel=1e-6)


# The operating limit


@settings(max_examples=40, deadline=None)
@given(st.floats(6.0, 20.0), st.floats(1.0, 4.0), st.floats(0.2, 1.0))
def test_the_limit_leaves_the_chance_allowed(period: float, half: float, ratio: float) -> None:
    response = hc.HeaveOperator.constant(ratio)
    demand: dict[str, Any] = {
        "half_stroke": rw.Q(half, "m"),
        "duration": "3 hour",
        "exceedance": 0.01,
    }
    limit = hc.operating_limit(response, rw.Q(period, "s"), **demand)
    height = limit.significant_height[0]
    assert height <= hc.steepest_height(rw.Q(period, "s")) * (1 + 1e-12)
    sea = rw.SeaState(height, rw.Q(period, "s"))
    assert limit.jonswap_fits[0] == sea.jonswap_fits
    motion = hc.heave(sea, response, outside_validity="ignore")  # steep ones too
    chance = motion.exceedance(demand["half_stroke"], "3 hour")
    if limit.stroke_governs[0]:
        assert chance == pytest.approx(0.01, rel=1e-5)
    else:
        assert limit.bound[0] == "steepest sea"
        assert chance <= 0.01


def test_what_stopped_the_search_is_said() -> None:
    # 30 s: the steepest sea, 9.80665 30^2/(25 2 pi) = 56 m, is above the 40 m admitted at all.
    demand: dict[str, Any] = {"duration": "3 hour", "exceedance": 0.01, "half_stroke": "3 m"}
    still = hc.HeaveOperator.constant(1e-6)
    assert hc.steepest_height("30 s").m_as("m") == pytest.approx(56.19, abs=0.01)
    limit = hc.operating_limit(still, rw.Q([8.0, 30.0], "s"), **demand)
    assert list(limit.bound) == ["steepest sea", "highest height"]
    assert limit.significant_height_si[1] == 40.0
    assert not limit.stroke_governs.any()
    assert list(hc.operating_limit(RESPONSE, "11 s", **demand).bound) == ["stroke"]


def test_an_amplitude_exceeded_is_the_stroke_exceeded() -> None:
    motion = hc.heave(rw.SeaState("4 m", "9 s"), hc.HeaveOperator.constant(0.5))
    for chance in (1e-4, 0.01, 0.6):
        amplitude = motion.amplitude_exceeded("3 hour", chance)
        assert motion.exceedance(amplitude, "3 hour") == pytest.approx(chance, rel=1e-9)
    assert motion.amplitude_exceeded("3 hour", 0.01) > motion.most_probable_maximum("3 hour")
    with pytest.raises(InadmissibleError, match="exceedance"):
        motion.amplitude_exceeded("3 hour", 0.0)


@pytest.mark.parametrize(("cycles", "below"), [(2, 0.192), (10, 0.0413), (50, 0.0162)])
def test_the_most_probable_maximum_is_the_mode_of_many(cycles: int, below: float) -> None:
    # Exact mode: where the density N F^(N-1) f of the largest of N Rayleigh amplitudes peaks.
    peak = optimize.minimize_scalar(
        lambda x: -((1.0 - math.exp(-0.5 * x * x)) ** (cycles - 1)) * x * math.exp(-0.5 * x * x),
        bounds=(0.5, 6.0),
        method="bounded",
        options={"xatol": 1e-9},
    ).x
    found = hc.most_probable_maximum("1 m", cycles, outside_validity="ignore").m_as("m")
    assert 1.0 - found / peak == pytest.approx(below, abs=6e-4)
    if cycles < 10:
        with pytest.raises(ValidityError, match="law of large N"):
            hc.most_probable_maximum("1 m", cycles)


def test_a_limit_needs_a_period() -> None:
    demand: dict[str, Any] = {"half_stroke": "3 m", "duration": "3 hour", "exceedance": 0.01}
    with pytest.raises(InadmissibleError, match="peak_period must be one value or a row"):
        hc.operating_limit(RESPONSE, rw.Q([], "s"), **demand)
    with pytest.raises(InadmissibleError, match="exceedance"):
        hc.operating_limit(RESPONSE, "11 s", **{**demand, "exceedance": 0.0})


def test_next_to_no_stroke_allows_next_to_no_sea() -> None:
    demand: dict[str, Any] = {"duration": "3 hour", "exceedance": 0.01}
    limit = hc.operating_limit(RESPONSE, "11 s", half_stroke="1 nm", **demand)
    assert limit.stroke_governs.all()
    assert 0.0 < limit.significant_height_si[0] < 1e-7


def test_more_stroke_allows_more_sea() -> None:
    rig = rw.load_rig(rw.rig.example("osprey-sound"))
    assert rig.sea is not None
    periods = rw.Q(np.arange(8.0, 20.0, 2.0), "s")
    heights = [
        hc.operating_limit(
            rig.sea.response, periods, half_stroke=half, duration="3 hour", exceedance=0.01
        ).significant_height_si
        for half in ("5 ft", "10 ft", "12.5 ft")
    ]
    assert np.all(heights[0] <= heights[1])
    assert np.all(heights[1] <= heights[2])
    assert heights[0][-1] < heights[2][-1]
