"""The sheave-life study: identities, hand-computed small cases, and what it writes."""

from __future__ import annotations

import itertools
from pathlib import Path

import numpy as np
import pytest
import xarray as xr
from hypothesis import given
from hypothesis import strategies as st

import ropewalk as rw
from ropewalk.rig.plan import trip_strokes
from ropewalk.study.dataset import to_table
from ropewalk.study.report import write_results
from ropewalk.study.section import sheave_windows, worst_section_damage
from ropewalk.study.words import plain_lines


@pytest.fixture(scope="module")
def rig() -> rw.Rig:
    return rw.load_rig(rw.rig.example("rig7"))


@pytest.fixture(scope="module")
def data(rig: rw.Rig) -> xr.Dataset:
    return rw.sheave_life(
        rig,
        sheave_diameters=rw.Q([36.0, 48.0, 60.0, 72.0], "in"),
        lines=(8, 10),
        ropes=(rig.rope, rw.Rope("6x36WS IWRC", grade="EIPS", diameter="1.375 in")),
    )


# Which sheaves a section runs over


@given(
    lines=st.integers(2, 16),
    highest=st.floats(0.5, 20.0),
    travel=st.floats(0.1, 40.0),
)
def test_windows_against_a_rope_walked_point_by_point(
    lines: int, highest: float, travel: float
) -> None:
    """Walk a stroke: point x of the rope passes sheave m where m L sweeps over it."""
    lowest = highest + travel
    windows = sheave_windows(lines, highest, lowest)
    for x in np.linspace(0.5 * highest, lines * lowest, 997):
        passed = [m for m in range(1, lines + 1) if m * highest < x < m * lowest]
        if passed:
            assert passed == list(range(passed[0], passed[-1] + 1))
            assert any(a <= passed[0] and passed[-1] <= b for a, b in windows)


def test_a_stroke_to_the_crown_drags_one_section_over_every_sheave() -> None:
    assert sheave_windows(10, highest=1e-9, lowest=30.0)[-1] == (1, 10)


def test_worst_section_of_hand_made_damage() -> None:
    damage = np.array([[1.0, 2.0, 4.0, 8.0], [8.0, 1.0, 1.0, 1.0]])
    windows = [(1, 2), (2, 3), (3, 4)]
    assert worst_section_damage(damage, windows).tolist() == [12.0, 9.0]


# The trip


def test_trip_strokes_of_rig7(rig: rw.Rig) -> None:
    strokes = trip_strokes(rig.heaviest_trip, rig.block.weight)
    assert strokes.pulling.size == int(np.ceil(3400 / 28.5))
    assert np.all(np.diff(strokes.pulling) < 0)
    assert np.all(strokes.running < strokes.pulling)
    assert strokes.pulling[0] == pytest.approx(
        rig.heaviest_trip.heaviest_hook_load(rig.block.weight), rel=1e-14
    )


# The study


def test_life_by_hand_for_one_design(rig: rw.Rig, data: xr.Dataset) -> None:
    """Power law, written out with NumPy alone: tensions, cycles, Miner sum, worst section."""
    assert rig.life.power_law is not None
    scale, exponent = rig.life.power_law.scale, rig.life.power_law.exponent
    k, n, diameter = 1.04, 10, 48 * 0.0254
    rope_d, strength = rig.rope.diameter_si, rig.rope.wire_strength_si
    strokes = trip_strokes(rig.heaviest_trip, rig.block.weight)
    up = k ** np.arange(1, n + 1) * (k - 1) / (k**n - 1)  # tight side: the line that leaves
    down = k ** np.arange(n - 1, -1, -1) * (k - 1) / (k**n - 1)  # tight side: the line before
    total = np.zeros(n)
    for loads, share in (
        (strokes.pulling, up),
        (strokes.running, down),
        (np.full(strokes.pulling.size, strokes.block), up),
        (np.full(strokes.pulling.size, strokes.block), down),
    ):
        pressure = 2 * np.outer(loads, share) / (rope_d * diameter)
        total += ((pressure / strength) ** exponent / scale).sum(axis=0)
    first = int(np.ceil(n * rig.block.highest / rig.block.lowest))
    expected = 1.0 / total[first - 1 :].sum()
    found = data.trips.sel(model="power law", rope=str(rig.rope), lines=10).sel(
        sheave_diameter=diameter, method="nearest"
    )
    assert float(found) == pytest.approx(expected, rel=1e-9)


def test_other_construction_lives_by_the_ratio_of_published_factors(data: xr.Dataset) -> None:
    """Wire Rope Users Manual, from memory: 6x19S 0.81, 6x36WS 1.16, with 6x25FW = 1.00."""
    ratio = (data.trips.isel(rope=1) / data.trips.isel(rope=0)).sel(model="power law")
    # Equal strength and diameter, so equal tension and pressure; wire strengths differ by class.
    strengths = [rw.Rope(c, grade="EIPS", diameter="1.375 in").wire_strength_si for c in ROPES]
    expected = 1.16 / 0.81 * (strengths[1] / strengths[0]) ** 2.4
    np.testing.assert_allclose(ratio.to_numpy(), expected, rtol=1e-12)


ROPES = ("6x19S IWRC", "6x36WS IWRC")


def test_life_rises_with_diameter_and_with_lines(data: xr.Dataset) -> None:
    assert bool((data.trips.diff("sheave_diameter") > 0).all())
    assert bool((data.bending_cycles.diff("sheave_diameter") > 0).all())
    assert bool((data.bending_cycles.diff("lines") > 0).all())


def test_band_holds_the_middle(data: xr.Dataset) -> None:
    assert bool((data.trips_low < data.trips).all())
    assert bool((data.trips < data.trips_high).all())
    ratio = (data.trips_high / data.trips_low).to_numpy()
    np.testing.assert_allclose(ratio, 10 ** (2 * 1.2815515655446004 * 0.20), rtol=1e-12)


def test_every_variable_has_unit_and_name(data: xr.Dataset) -> None:
    for name in [*data.data_vars, "sheave_diameter", "lines"]:
        assert data[name].attrs["units"]
        assert data[name].attrs["long_name"]


def test_design_factor_and_pressure_against_the_scalar_functions(
    rig: rw.Rig, data: xr.Dataset
) -> None:
    load = rw.Q(rig.heaviest_trip.heaviest_hook_load(rig.block.weight), "N")
    fast = rw.Reeving(lines=8, sheave_friction="roller").tensions(load, motion="hoisting").fast_line
    factor = rw.design_factor.design_factor(rig.rope.breaking_force, fast)
    assert float(data.design_factor.sel(rope=str(rig.rope), lines=8)) == pytest.approx(factor)
    pressure = rw.sheave.bearing_pressure(fast, rig.rope.diameter, "60 in").m_as("Pa")
    found = data.bearing_pressure.sel(rope=str(rig.rope), lines=8).sel(
        sheave_diameter=60 * 0.0254, method="nearest"
    )
    assert float(found) == pytest.approx(pressure)


def test_points_outside_a_range_are_flagged_and_not_dropped(data: xr.Dataset) -> None:
    assert not bool(np.isnan(data.trips).any())
    assert bool(data.holds.any())
    assert not bool(data.holds.all())
    share = data.share_in_range
    assert bool(((share >= 0) & (share <= 1)).all())


def test_progress_is_told(rig: rw.Rig) -> None:
    seen: list[tuple[int, int]] = []
    rw.sheave_life(
        rig,
        sheave_diameters="60 in",
        lines=(10,),
        ropes=(rig.rope,),
        progress=lambda done, total: seen.append((done, total)),
    )
    assert seen == [(i + 1, len(seen)) for i in range(len(seen))]
    assert seen


@pytest.mark.parametrize(
    ("bad", "error", "words"),
    [
        ([36.0, 48.0], rw.errors.UnitError, "sheave_diameters must be a length"),
        ("60 lbf", rw.errors.UnitError, "sheave_diameters must be a length"),
        (rw.Q([60.0, -1.0], "in"), rw.errors.InadmissibleError, "sheave_diameter"),
        (rw.Q([60.0, np.nan], "in"), rw.errors.InadmissibleError, "sheave_diameter"),
    ],
)
def test_bad_diameters(rig: rw.Rig, bad: object, error: type[Exception], words: str) -> None:
    with pytest.raises(error, match=words):
        rw.sheave_life(rig, sheave_diameters=bad, lines=(10,), ropes=(rig.rope,))  # type: ignore[arg-type]


# What is written


def test_files_read_back_with_units(data: xr.Dataset, tmp_path: Path) -> None:
    names = [path.name for path in write_results(data, tmp_path)]
    assert sorted(p.name for p in tmp_path.iterdir()) == sorted(names)
    back = xr.load_dataset(tmp_path / "sheave-life.nc", engine="h5netcdf")
    xr.testing.assert_allclose(back, data)
    assert back.bearing_pressure.attrs["units"] == "Pa"
    assert back.attrs["caution"]
    header = (tmp_path / "sheave-life.csv").read_text(encoding="utf-8").splitlines()[0]
    assert "bearing_pressure [Pa]" in header
    assert (tmp_path / "sheave-life.png").read_bytes().startswith(b"\x89PNG")


def test_an_interrupted_write_leaves_the_old_file(
    data: xr.Dataset, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    old = tmp_path / "sheave-life.nc"
    old.write_bytes(b"old")

    def fail(*_: object, **__: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(xr.Dataset, "to_netcdf", fail)
    with pytest.raises(KeyboardInterrupt):
        write_results(data, tmp_path)
    assert old.read_bytes() == b"old"
    assert not [p for p in tmp_path.iterdir() if p.name.startswith(".")]


def test_table_has_one_row_a_design_and_model(data: xr.Dataset) -> None:
    table = to_table(data)
    designs = itertools.product(data.model, data.rope, data.lines, data.sheave_diameter)
    assert len(table) == len(list(designs))
    assert "sheave_diameter [m]" in table.columns


def test_plain_lines_take_their_numbers_from_the_data(rig: rw.Rig, data: xr.Dataset) -> None:
    first, second, third = plain_lines(rig, data)
    here = data.sel(rope=str(rig.rope), lines=10)
    gain = (here.trips.isel(sheave_diameter=-1) / here.trips.isel(sheave_diameter=0)).to_numpy()
    assert f"{gain.min():.1f} to {gain.max():.1f} times" in first
    assert f"{float(data.design_factor.sel(rope=str(rig.rope), lines=8)):.1f}" in second
    assert "published" in third
