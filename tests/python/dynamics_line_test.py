"""The strung line of a rig: stiffness, peaks and troughs, pictures."""

from __future__ import annotations

import copy
import math
import pickle

import numpy as np
import pytest
from matplotlib.figure import Figure

import ropewalk as rw
from ropewalk import plot
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError
from ropewalk.testing import assert_close

G = 9.80665


def test_the_line_of_rig_7() -> None:
    rig = rw.load_rig(rw.rig.example("rig7"))
    line = rw.dynamics.HoistLine.of_rig(rig)
    assert_close(
        line.stiffness("20 m"),
        rw.dynamics.line_stiffness(
            rig.rope.modulus, rig.rope.metallic_area, 10, "20 m", "55 m", "45 m"
        ),
    )
    heights = rw.Q([10.0, 20.0, 37.0], "m")
    frequencies = line.natural_frequency("300 kip", heights)
    assert np.all(np.diff(frequencies.magnitude) < 0.0)
    assert_close(line.static_stretch("300 kip", "20 m") * line.stiffness("20 m"), "300 kip")
    assert line.pickup_factor("0 m/s", "300 kip", "20 m") == 1.0


def test_locked_sheaves_give_the_higher_peak() -> None:
    line = rw.dynamics.HoistLine(12, "100 GPa", "678.7 mm**2", "45 m", "45 m")
    given = ("0.5 m/s", "300 kip")
    locked = line.pickup_factor(*given, "30 m")
    turning = line.pickup_factor(*given, "30 m", sheaves="turning")
    # 27.15 and 21.72 MN/m, worked by hand from N E A/h and N² E A/(N h + Lf + Ld).
    assert (locked - 1.0) / (turning - 1.0) == pytest.approx((27.148 / 21.7184) ** 0.5, rel=1e-6)
    with pytest.raises(UnknownEntryError, match="'locked' or 'turning'"):
        line.pickup_factor(*given, "30 m", sheaves="loose")  # type: ignore[arg-type]


def test_a_stop_tells_trough_and_slack() -> None:
    line = rw.dynamics.HoistLine(12, "100 GPa", "678.7 mm**2", "45 m", "45 m")
    # Locked, N E A/h = 27.148 MN/m; 300 kip on it swings with 2.24 Hz.
    rate = math.sqrt(27.148e6 * G / (300e3 * 4.4482216152605))
    stop = line.stop_hoisting("0.4 m/s", "3 m/s**2", "300 kip", "30 m")
    by_hand = 1.0 - 2.0 * 3.0 / G * math.sin(min(0.5 * rate * 0.4 / 3.0, 0.5 * math.pi))
    assert stop.trough_factor == pytest.approx(by_hand, rel=1e-6)
    assert not stop.goes_slack
    assert stop.finding == ""
    assert_close(stop.line_tension * 12, stop.trough)
    assert stop.trough.m_as("kip") == pytest.approx(by_hand * 300.0, rel=1e-5)
    assert stop.slack_speed.m_as("m/s") == pytest.approx(G / rate, rel=1e-5)
    hard = line.stop_hoisting("1.5 m/s", "30 m/s**2", "300 kip", "30 m")
    assert hard.goes_slack
    assert hard.trough.m_as("N") == 0.0
    assert "1.5 m/s stopped with 30 m/s**2" in hard.finding
    # With the sheaves turning the line is softer and swings slower.
    soft = line.stop_hoisting("0.4 m/s", "3 m/s**2", "300 kip", "30 m", sheaves="turning")
    assert soft.trough_factor > stop.trough_factor
    with pytest.raises(InadmissibleError, match="downward_acceleration"):
        line.stop_hoisting("0.4 m/s", "0 m/s**2", "300 kip", "30 m")
    with pytest.raises(InadmissibleError, match="hook_load"):
        line.stop_hoisting("0.4 m/s", "1 m/s**2", rw.Q([1.0, 2.0], "kip"), "30 m")


def test_a_line_is_plain_data() -> None:
    line = rw.dynamics.HoistLine(10, "100 GPa", "600 mm**2", "50 m", "40 m")
    for twin in (pickle.loads(pickle.dumps(line)), copy.deepcopy(line)):
        assert twin == line
        assert hash(twin) == hash(line)


def test_what_cannot_be_is_refused() -> None:
    with pytest.raises(InadmissibleError):
        rw.dynamics.HoistLine(1, "100 GPa", "600 mm**2", "50 m", "40 m")
    with pytest.raises(InadmissibleError):
        rw.dynamics.HoistLine(10, "100 GPa", "0 mm**2", "50 m", "40 m")
    with pytest.raises(UnitError):
        rw.dynamics.HoistLine(10, "100 GPa", "600 mm", "50 m", "40 m")
    with pytest.raises(InadmissibleError):
        rw.dynamics.natural_frequency("0 kip", "20 MN/m")


def test_a_rig_that_does_not_know_its_line_says_so() -> None:
    from dataclasses import replace

    rig = rw.load_rig(rw.rig.example("rig7"))
    with pytest.raises(InadmissibleError, match=r"has no \[line\]"):
        rw.dynamics.HoistLine.of_rig(replace(rig, line=None))
    rope = rw.Rope.custom(
        "6x31",
        grade="EIPS",
        diameter="1.375 in",
        breaking_force="190 kip",
        mass_per_length="3.5 lb/ft",
    )
    with pytest.raises(UnknownEntryError, match="modulus"):
        rw.dynamics.HoistLine.of_rig(replace(rig, rope=rope))


def test_the_picture_has_a_curve_for_each_load() -> None:
    line = rw.dynamics.HoistLine(10, "100 GPa", "600 mm**2", "50 m", "40 m")
    ax = Figure().subplots()
    assert (
        plot.pickup_factors(ax, line, ["100 kip", "300 kip"], line_height="30 m", fastest="1 m/s")
        is ax
    )
    assert ax.get_xlabel().endswith("[ft/min]")
    light, heavy, _ = ax.get_lines()
    for curve, load in ((light, "100 kip"), (heavy, "300 kip")):
        assert curve.get_ydata()[-1] == line.pickup_factor("1 m/s", load, "30 m")
        assert curve.get_xdata()[-1] == pytest.approx(60 / 0.3048)
    assert light.get_linestyle() != heavy.get_linestyle()


def test_no_curve_crosses_the_words_of_the_picture() -> None:
    from matplotlib.backends.backend_agg import FigureCanvasAgg

    line = rw.dynamics.HoistLine(10, "100 GPa", "600 mm**2", "50 m", "40 m")
    for loads_ in (["50 kip", "150 kip", "300 kip"], ["20 kip"], ["900 kip"]):
        figure = Figure(figsize=(5.5, 3.8), layout="constrained")
        ax = figure.subplots()
        plot.pickup_factors(ax, line, loads_, line_height="30 m")
        FigureCanvasAgg(figure).draw()
        (words,) = ax.texts
        box = words.get_window_extent()
        assert figure.bbox.x1 >= box.x1
        for curve in ax.get_lines():
            across = np.interp(np.linspace(0, 1, 500), [0, 1], curve.get_xdata())
            up = np.interp(np.linspace(0, 1, 500), [0, 1], curve.get_ydata())
            shown = curve.get_transform().transform(np.column_stack([across, up]))
            assert not box.count_contains(shown)
