"""Sea, heave and stroke: closed forms, SciPy, simulated seas, limits, the active drum."""

from __future__ import annotations

import itertools
import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.figure import Figure
from scipy import integrate, special, stats

import ropewalk as rw
from ropewalk import compensator as hc
from ropewalk import plot
from ropewalk.errors import (
    InadmissibleError,
    ValidityError,
    ValidityWarning,
)
from ropewalk.testing import assert_close

RESPONSE = hc.HeaveOperator.constant(1.0)


# The sea


@pytest.mark.parametrize("factor", [1.0, 1.7, 3.3, 5.0, 7.0])
@pytest.mark.parametrize("order", [0, 1, 2])
def test_moments_against_scipy(factor: float, order: int) -> None:
    sea = rw.SeaState("4 m", "11 s", factor)
    peak = 2.0 * math.pi / 11.0

    def moment(omega: float) -> float:
        return omega**order * float(sea.spectrum(rw.Q(omega, "rad/s")).magnitude)

    parts = [0.25, 0.7, 0.9, 1.0, 1.1, 1.4, 3.0, 20.0, 500.0, 1500.0]
    total = sum(
        integrate.quad(moment, a * peak, b * peak, epsabs=1e-11, epsrel=1e-9)[0]
        for a, b in itertools.pairwise(parts)
    )
    if order == 2:  # the tail 5/16 H² ω_p⁴ A_γ ω⁻³ beyond the last part
        end = parts[-1] * peak
        total += 5 / 16 * 16 * peak**4 * hc.jonswap_normalizer(factor) / (2 * end**2)
    motion = hc.heave(sea, RESPONSE)
    found = (motion.m0_si, motion.m1_si, motion.m2_si)[order]
    assert found == pytest.approx(total, rel=2e-7)


@settings(max_examples=40, deadline=None)
@given(st.floats(0.5, 15.0), st.floats(3.0, 20.0))
def test_closed_forms_of_a_fully_developed_sea(height: float, period: float) -> None:
    sea = rw.SeaState(rw.Q(height, "m"), rw.Q(period, "s"), 1.0)
    motion = hc.heave(sea, RESPONSE, outside_validity="ignore")  # closed at any steepness
    assert motion.significant_height.m_as("m") == pytest.approx(height, rel=1e-10)
    assert motion.zero_crossing_period.m_as("s") == pytest.approx(
        period * (1.25 * math.pi) ** -0.25, rel=1e-10
    )
    assert motion.mean_period.m_as("s") == pytest.approx(
        period / (1.25**0.25 * special.gamma(0.75)), rel=1e-10
    )


@pytest.mark.parametrize(
    ("power", "share"),
    [(2, math.sqrt(0.8)), (1, math.sqrt(math.gamma(1.5) / math.sqrt(1.25)))],
)
def test_responses_that_can_be_integrated(power: int, share: float) -> None:
    # R = (ω_p/ω)^k = (T/T_p)^k: m0 = H²/16 1.25^(−k/2) Γ(1 + k/2).
    periods = np.linspace(0.01, 27.5, 2750)
    response = hc.HeaveOperator.table(rw.Q(periods, "s"), (periods / 11.0) ** power)
    motion = hc.heave(rw.SeaState("4 m", "11 s", 1.0), response)
    assert motion.significant_height.m_as("m") == pytest.approx(4.0 * share, rel=1e-5)


def test_peak_factor_is_steady_where_its_pieces_meet() -> None:
    heights = rw.Q(100.0 / np.array([5.0 - 1e-9, 5.0 + 1e-9, 3.6 - 1e-9, 3.6 + 1e-9]) ** 2, "m")
    factors = hc.peak_factor(heights, "10 s")
    assert factors == pytest.approx([1.0, 1.0, 5.0, 5.0], abs=3e-3)
    assert rw.SeaState("4 m", "8 s").jonswap_fits
    assert not rw.SeaState("4 m", "11 s").jonswap_fits


@settings(max_examples=40, deadline=None)
@given(st.floats(1.0, 25.0))
def test_steepness_lies_between_its_two_limits(period: float) -> None:
    steepness = 2 * math.pi / 9.80665 * hc.steepest_height(rw.Q(period, "s")).m_as("m") / period**2
    assert 1 / 25 * (1 - 1e-12) <= steepness <= 1 / 15 * (1 + 1e-12)


def test_waves_outside_the_table_are_told() -> None:
    response = hc.HeaveOperator.table(rw.Q([1.0, 11.0], "s"), [0.1, 0.8])
    sea = rw.SeaState("4 m", "11 s", 1.0)
    with pytest.raises(ValidityError, match="outside the table of response"):
        hc.heave(sea, response)
    with pytest.warns(ValidityWarning, match="variance of heave"):
        told = hc.heave(sea, response, outside_validity="warn")
    assert told == hc.heave(sea, response, outside_validity="ignore")
    with pytest.raises(ValidityError, match="peak_factor = 9"):
        hc.heave(rw.SeaState("4 m", "11 s", 9.0), RESPONSE)
    with pytest.raises(ValidityError, match="peak_factor"):
        rw.SeaState("4 m", "11 s", 9.0).spectrum("0.5 rad/s")
    demand: dict[str, Any] = {"half_stroke": "3 m", "duration": "3 hour", "exceedance": 0.01}
    periods = rw.Q([5.0, 11.0], "s")
    with pytest.raises(ValidityError, match="at peak_period = 11 s"):
        hc.operating_limit(response, periods, **demand)
    with pytest.warns(ValidityWarning, match="at peak_period = 11 s"):
        hc.operating_limit(response, periods, outside_validity="warn", **demand)


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
    sea = rw.SeaState("4 m", "11 s", 3.3)
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
    for amplitude in (1.0, 1.8):
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
    motion = hc.heave(rw.SeaState(height, rw.Q(period, "s")), response)
    chance = motion.exceedance(demand["half_stroke"], "3 hour")
    if limit.stroke_governs[0]:
        assert chance == pytest.approx(0.01, rel=1e-5)
    else:
        assert chance <= 0.01


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


# The active drum


@settings(max_examples=40, deadline=None)
@given(st.floats(0.2, 8.0), st.integers(1, 60))
def test_classes_have_the_mean_of_all_heights(height: float, count: int) -> None:
    motion = hc.heave(rw.SeaState(rw.Q(height, "m"), "12 s", 1.0), RESPONSE)
    classes = motion.classes(count)
    assert classes.mean() == pytest.approx(math.sqrt(2.0 * math.pi) * motion.deviation_si)
    assert np.all(np.diff(classes) > 0.0)


def test_strokes_travel_as_far_as_the_vessel() -> None:
    # A Gaussian motion travels √(2/π) √m2 a second, whatever its band.
    motion = hc.heave(rw.SeaState("4 m", "10 s"), hc.HeaveOperator.constant(0.5))
    campaign = rw.line.active_heave_campaign(
        motion, duration="6 hour", hook_load="300 kip", block_height="15 m"
    )
    travel = np.sum(np.abs(campaign.height_to_si - campaign.height_from_si) * campaign.count)
    assert travel == pytest.approx(6 * 3600.0 * math.sqrt(2 / math.pi * motion.m2_si))
    mean = rw.Q(math.sqrt(2.0 * math.pi) * motion.deviation_si, "m")
    assert_close(campaign.work, hc.active_work("300 kip", mean, motion.cycles("6 hour")))
    assert campaign.time_si[-1] == 6 * 3600.0


def test_the_map_takes_the_strokes_of_an_active_drum() -> None:
    rig = rw.load_rig(rw.rig.example("osprey-sound"))
    assert rig.sea is not None
    campaign = rw.line.active_heave_campaign(
        rig.sea.heave(), duration="24 hour", hook_load="350 kip", block_height="15 m"
    )
    history = rw.run_line(rig, campaign, outside_validity="ignore")
    worst = history.worst_places(1)[0]
    twice = rw.line.active_heave_campaign(
        rig.sea.heave(), duration="48 hour", hook_load="350 kip", block_height="15 m"
    )
    again = rw.run_line(rig, twice, outside_validity="ignore").worst_places(1)[0]
    assert worst.damage > 0.0
    assert again.damage == pytest.approx(2.0 * worst.damage, rel=1e-9)


def test_an_active_drum_needs_room_for_the_block() -> None:
    motion = hc.heave(rw.SeaState("6 m", "12 s"), RESPONSE)
    given = {"duration": "1 hour", "hook_load": "300 kip"}
    with pytest.raises(InadmissibleError, match="leaves no room"):
        rw.line.active_heave_campaign(motion, block_height="2 m", **given)
    with pytest.raises(InadmissibleError, match="classes"):
        rw.line.active_heave_campaign(motion, block_height="20 m", classes=0, **given)
    short = rw.line.active_heave_campaign(
        motion, block_height="20 m", duration="1 min", hook_load="300 kip"
    )
    assert np.all(short.count >= 1.0)


@pytest.mark.parametrize("beam", [20.0, 45.0, 49.0, 50.0])
def test_the_resonance_of_a_box_hull_is_integrated_however_narrow(beam: float) -> None:
    # Against SciPy's adaptive quadrature, in pieces that halve toward the resonance 2 k D = 1.
    hull = hc.HeaveOperator.box_hull("60 m", rw.Q(beam, "m"), "4 m")
    sea = rw.SeaState("1.5 m", "6 s")
    middle = 2.0 * math.pi * math.sqrt(2.0 * 4.0 / 9.80665)

    def density(period: float) -> float:
        omega = 2.0 * math.pi / period
        height = sea.spectrum(rw.Q(omega, "rad/s")).magnitude
        return float(height * hull.ratio(rw.Q(period, "s")) ** 2 * omega / period)

    away = middle * 0.5 ** np.arange(1.0, 30.0)
    edges = np.sort(np.concatenate([[1.0, 15.0, middle], middle - away, middle + away]))
    expected = sum(
        integrate.quad(density, a, b, limit=200, epsrel=1e-10)[0]
        for a, b in itertools.pairwise(edges)
    )
    assert hc.heave(sea, hull).m0_si == pytest.approx(expected, rel=1e-6)


def test_a_sea_steeper_than_seas_get_is_doubted() -> None:
    response = hc.HeaveOperator.constant(0.5)
    steepest = hc.steepest_height("8 s")
    hc.heave(rw.SeaState(steepest, "8 s"), response)
    with pytest.raises(ValidityError, match=r"steepest sea .* peak_period = 8 s \(DNV-RP-C205"):
        hc.heave(rw.SeaState(1.01 * steepest, "8 s"), response)


@pytest.mark.parametrize("seconds", [0.0, -3.0, math.nan])
def test_a_response_is_asked_for_a_period(seconds: float) -> None:
    with pytest.raises(InadmissibleError, match="wave_period must be positive"):
        hc.HeaveOperator.constant(0.5).ratio(rw.Q(seconds, "s"))


def test_classes_of_heave_are_counted() -> None:
    motion = hc.heave(rw.SeaState("4 m", "9 s"), hc.HeaveOperator.constant(0.5))
    with pytest.raises(InadmissibleError, match="count must be 1 or more"):
        motion.classes(0)


# Pictures


def test_the_picture_of_sea_and_heave_has_both_spectra() -> None:
    ax = Figure().subplots()
    sea = rw.SeaState("5 m", "12 s")
    response = hc.HeaveOperator.box_hull("200 m", "36 m", "10 m")
    assert plot.heave_spectrum(ax, sea, response) is ax
    waves, heave = ax.get_lines()
    omega = rw.Q(waves.get_xdata(), "rad/s")
    np.testing.assert_allclose(waves.get_ydata(), sea.spectrum(omega).magnitude)
    ratio = response.ratio(rw.Q(2.0 * math.pi / omega.magnitude, "s"))
    np.testing.assert_allclose(heave.get_ydata(), ratio**2 * waves.get_ydata())
    assert (ax.get_xlabel(), ax.get_ylabel()) == (
        "wave frequency [rad/s]",
        "spectral density [m² s/rad]",
    )


def test_the_picture_of_the_limit_has_a_curve_for_each() -> None:
    ax = Figure().subplots()
    demand: dict[str, Any] = {"duration": "3 hour", "exceedance": 0.01}
    response = hc.HeaveOperator.constant(0.6)
    periods = rw.Q(np.arange(6.0, 18.0, 2.0), "s")
    limits = {
        half: hc.operating_limit(response, periods, half_stroke=half, **demand)
        for half in ("5 ft", "10 ft")
    }
    assert plot.operating_limits(ax, limits, length_unit="ft") is ax
    thick = [line for line in ax.get_lines() if line.get_label() in limits]
    assert len({str(line.get_linestyle()) for line in thick}) == 2
    for line in thick:
        limit = limits[line.get_label()]
        governed = limit.stroke_governs
        heights = limit.significant_height.m_as("ft")
        np.testing.assert_allclose(np.asarray(line.get_ydata())[governed], heights[governed])
        assert np.isnan(np.asarray(line.get_ydata())[~governed]).all()
    assert "[ft]" in ax.get_ylabel()
