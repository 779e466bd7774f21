"""Sea and heave: closed forms, SciPy, doubts, the active drum, pictures."""

from __future__ import annotations

import itertools
import math
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.figure import Figure
from scipy import integrate, special

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
    motion = hc.heave(sea, RESPONSE, outside_validity="ignore")  # an integral at any steepness
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


def test_a_sea_that_jonswap_is_no_model_of_is_doubted() -> None:
    # DNV-RP-C205, 3.5.5: 3.6 < T_p/sqrt(H_s) < 5; Pierson-Moskowitz is that of the old sea beyond.
    assert rw.SeaState("4 m", "8 s").jonswap_fits
    old = rw.SeaState("4 m", "11 s")
    assert old.peak_factor == 1.0
    assert old.jonswap_fits
    response = hc.HeaveOperator.constant(0.5)
    for sea, ratio in (
        (rw.SeaState("4 m", "11 s", 3.3), "5.5"),
        (rw.SeaState("4 m", "7 s", 3.3), "3.5"),
    ):
        assert not sea.jonswap_fits
        with pytest.raises(ValidityError, match=rf"T_p/sqrt\(H_s\) = {ratio} is outside"):
            hc.heave(sea, response)
        with pytest.warns(ValidityWarning, match="good model"):
            hc.heave(sea, response, outside_validity="warn")


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
    allowed = hc.heave(
        rw.SeaState(0.99 * steepest, "8 s", 1.0), response, outside_validity="ignore"
    )
    assert allowed.m0_si > 0.0
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
