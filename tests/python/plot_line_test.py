"""Pictures of a line: what is drawn is what the history says, with units, and reads in gray."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import matplotlib.pyplot as plt
import numpy as np
import pytest
from matplotlib.colors import to_rgb
from matplotlib.figure import Figure
from matplotlib.patches import Rectangle

import ropewalk as rw
from ropewalk import plot

# Difference of luminance that two neighbors must have: about one step of a ten-step gray wedge.
_STEP = 0.1


def luminance(color: Any) -> float:
    """Relative luminance of a color, ITU-R Recommendation BT.709 (2015), item 3.2."""
    return float(np.dot([0.2126, 0.7152, 0.0722], to_rgb(color)))


@pytest.fixture(scope="module")
def rig() -> rw.Rig:
    return rw.load_rig(rw.rig.example("rig7"))


@pytest.fixture(scope="module")
def history(rig: rw.Rig) -> Any:
    program = rw.SlipCutProgram.of_practice(rig.program)
    return rw.run_line(rig, program=program, outside_validity="ignore")


@pytest.fixture(scope="module")
def unslipped(rig: rw.Rig) -> Any:
    return rw.run_line(rig, outside_validity="ignore")


@pytest.fixture(scope="module")
def front(rig: rw.Rig) -> Any:
    # Wide enough that some programs are feasible and some are not.
    goals = rw.Q([5.0, 10.0, 20.0, 80.0], "ton_mile/ft")
    return rw.optimize_program(rig, laps=[11.75, 14.75], slips_per_cut=[1, 4], goals=goals)


@pytest.fixture
def ax() -> Any:
    return Figure().subplots()


def labelled(ax: Any, label: str) -> Any:
    return next(line for line in ax.get_lines() if str(line.get_label()).startswith(label))


def texts(ax: Any) -> list[str]:
    return [text.get_text() for text in ax.texts]


def test_strip_draws_the_damage_of_the_history(ax: Any, history: Any) -> None:
    assert plot.damage_strip(ax, history) is ax
    assert ax.get_xlabel().endswith("[m]")
    assert ax.get_ylabel() == "damage [1]"
    curve = labelled(ax, "damage")
    drawn = len(curve.get_xdata())
    np.testing.assert_array_equal(curve.get_ydata(), history.damage_si[:drawn])
    np.testing.assert_array_equal(curve.get_xdata(), history.damage.position[:drawn])
    # No damage is left out at the right, and none is above the top.
    assert not history.damage_si[drawn:].any()
    assert ax.get_ylim()[1] > history.worst
    assert min(ax.get_yticks()) >= 0.0


def test_strip_has_a_named_bar_for_every_window(ax: Any, history: Any) -> None:
    plot.damage_strip(ax, history)
    bars = [
        path.get_extents().intervalx
        for bar in ax.collections
        for path in bar.get_paths()
        if len(path.vertices) == 5
    ]
    for window in history.windows:
        assert window.name in texts(ax)
        assert any(np.allclose(bar, (window.start_si, window.end_si)) for bar in bars)


def test_strip_marks_slips_and_cuts(ax: Any, history: Any) -> None:
    plot.damage_strip(ax, history)
    slips = [event.anchor_si for event in history.events if event.kind == "slip"]
    anchors = labelled(ax, "anchor").get_xdata()
    np.testing.assert_array_equal(anchors[1:], slips)
    # Before the first slip the anchor stood one slip back.
    assert anchors[0] == pytest.approx(slips[0] - history.program.slip_si)
    assert f"anchor, {len(slips)} slips" in texts(ax)
    assert f"cut off\n{len(history.sections)} cuts" in texts(ax)
    upright = [line.get_xdata()[0] for line in ax.get_lines() if line.get_linestyle() == ":"]
    assert upright == [section.end_si for section in history.sections]


def test_strip_without_slips_shows_no_cut(ax: Any, unslipped: Any) -> None:
    plot.damage_strip(ax, unslipped)
    assert "anchor" in texts(ax)
    assert not any("cut" in text for text in texts(ax))


def test_waterfall_stands_each_state_on_its_base(ax: Any, history: Any) -> None:
    assert plot.slip_waterfall(ax, history, most=100) is ax
    assert ax.get_ylabel().endswith("[GJ]")
    slips = [event for event in history.events if event.kind == "slip"]
    bases = ax.get_yticks()
    assert len(bases) == len(slips) + 1
    works = [float(text.get_text()) for text in ax.get_yticklabels()]
    expected = [event.work_si * 1e-9 for event in slips] + [history.work.m_as("GJ")]
    np.testing.assert_allclose(works, expected, atol=0.5)
    curves = [line for line in ax.get_lines() if len(line.get_xdata()) > 100]
    solid = [line for line in curves if line.get_linestyle() == "-"]
    assert len(solid) == len(bases)
    # The largest damage before each slip, the history's own word, is what the curve reaches.
    for line, base, event in zip(solid, bases, slips, strict=False):
        assert max(line.get_ydata()) - base == pytest.approx(event.worst_before)
    on_line = history.damage.position >= history.drum_end_si
    on_line &= history.damage.position <= history.anchor_si
    np.testing.assert_allclose(
        solid[-1].get_ydata() - bases[-1], history.damage_si[on_line], atol=1e-15
    )


def test_waterfall_scale_is_the_damage_it_names(ax: Any, history: Any) -> None:
    plot.slip_waterfall(ax, history)
    low, high = labelled(ax, "scale").get_ydata()
    assert f"damage {high - low:g} [1]" in texts(ax)


@pytest.mark.parametrize("most", [2, 5])
def test_waterfall_thins_but_keeps_the_end(ax: Any, history: Any, most: int) -> None:
    plot.slip_waterfall(ax, history, most=most)
    labels = [text.get_text() for text in ax.get_yticklabels()]
    assert len(labels) == most
    assert labels[-1] == f"{history.work.m_as('GJ'):.0f}"


def test_waterfall_refuses_fewer_than_two(ax: Any, history: Any) -> None:
    with pytest.raises(ValueError, match="most = 1"):
        plot.slip_waterfall(ax, history, most=1)


def test_waterfall_without_slips_is_the_end(ax: Any, unslipped: Any) -> None:
    plot.slip_waterfall(ax, unslipped)
    assert len(ax.get_yticks()) == 1


@pytest.mark.parametrize("by", ["sheave", "operation"])
def test_bars_are_the_shares_in_percent(ax: Any, history: Any, by: str) -> None:
    assert getattr(plot, f"share_by_{by}")(ax, history) is ax
    share = getattr(history, f"share_by_{by}")
    widths = [bar.get_width() for bar in ax.patches if isinstance(bar, Rectangle)]
    np.testing.assert_allclose(widths, 100.0 * share)
    assert sum(widths) == pytest.approx(100.0)
    assert [label.get_text() for label in ax.get_yticklabels()] == list(share[share.dims[0]].values)
    assert ax.get_xlabel().endswith("[%]")


@pytest.mark.parametrize("unit", ["m/GJ", "ft/ton_mile"])
def test_front_draws_every_choice(ax: Any, front: Any, unit: str) -> None:
    assert plot.program_front(ax, front, unit=unit) is ax
    assert ax.get_xlabel().endswith(f"[{unit}]")
    assert ax.get_ylabel().endswith("[1]")
    for label, feasible in (("choice", True), ("breaks", False)):
        some = [one for one in front.choices if one.feasible is feasible]
        assert some
        drawn = labelled(ax, label)
        uses = rw.Q([one.rope_use_si for one in some], "m/J").m_as(unit)
        np.testing.assert_allclose(drawn.get_xdata(), uses)
        np.testing.assert_array_equal(drawn.get_ydata(), [one.risk for one in some])
    line = labelled(ax, "efficient")
    np.testing.assert_array_equal(line.get_ydata(), [one.risk for one in front.front])
    assert np.all(np.diff(line.get_xdata()) >= 0.0)


def test_front_marks_present_and_recommended(ax: Any, front: Any) -> None:
    plot.program_front(ax, front)
    for label, one in (("current", front.current), ("recommended", front.recommended)):
        assert labelled(ax, label).get_ydata() == [one.risk]
    allowed = labelled(ax, "risk allowed").get_ydata()
    np.testing.assert_allclose(allowed, 1.0 - front.confidence)


def test_front_without_practice_or_answer(ax: Any, front: Any) -> None:
    plot.program_front(ax, replace(front, current=None, recommended=None))
    labels = [str(line.get_label()) for line in ax.get_lines()]
    assert not any(label.startswith(("current", "recommended")) for label in labels)


def test_front_has_room_for_a_risk_of_zero(ax: Any, front: Any) -> None:
    safe = replace(front.choices[0], survival=1.0)
    plot.program_front(ax, replace(front, choices=(*front.choices, safe)))
    assert ax.get_ylim()[0] < 0.0
    assert np.isfinite(ax.transData.transform((0.0, 0.0))).all()


def strung(rig: rw.Rig, lines: int, leads: int = 0) -> rw.Rig:
    return replace(rig, reeving=rw.Reeving(lines, "roller", lead_sheaves=leads))


def parts(ax: Any) -> dict[str, Any]:
    return {str(line.get_gid()): line for line in ax.get_lines() if line.get_gid()}


@pytest.mark.parametrize("lines", range(4, 15))
@pytest.mark.parametrize("motion", ["static", "hoisting", "lowering"])
def test_string_up_writes_the_tension_on_every_line(
    ax: Any, rig: rw.Rig, lines: int, motion: Any
) -> None:
    assert plot.string_up(ax, strung(rig, lines), "1500 kN", motion) is ax
    written = {str(text.get_gid()): text.get_text() for text in ax.texts if text.get_gid()}
    values = [float(written[f"line {m}"]) for m in range(1, lines + 1)]
    # Equilibrium of the traveling block: the lines carry the hook load, three digits each.
    assert sum(values) == pytest.approx(1500.0, abs=0.5 * lines)
    assert len([name for name in parts(ax) if name.startswith("line ")]) == lines
    assert ("dead line" in written) is (lines % 2 == 0)
    sheaves = [name for name in written if "sheave" in name]
    assert len(sheaves) == lines + (lines % 2 == 0)
    assert any("1500 kN" in text for text in texts(ax))
    assert ax.figure.axes[1].get_xlabel() == "tension [kN]"


def test_string_up_shows_the_example_of_the_standard(ax: Any, rig: rw.Rig) -> None:
    # API RP 9B, 14th ed. (2015): 400,000 lb on ten lines with roller bearings, fast-line factor
    # 0.123, thus 49.2 kip; unrounded 0.1233.
    plot.string_up(ax, strung(rig, 10), "400 kip", unit="kip")
    (fast,) = [text.get_text() for text in ax.texts if text.get_gid() == "fast line"]
    assert float(fast) == pytest.approx(49.2, abs=0.2)


@pytest.mark.parametrize("leads", [1, 2])
def test_string_up_draws_lead_sheaves(ax: Any, rig: rw.Rig, leads: int) -> None:
    design = strung(rig, 8, leads)
    plot.string_up(ax, design, "1000 kN", "lowering")
    drawn = parts(ax)
    assert {"fast line", "fast line at crown"} <= set(drawn)
    written = [text.get_text() for text in ax.texts if text.get_gid() == "fast line"]
    tension = design.reeving.tensions("1000 kN", "lowering").fast_line.m_as("kN")
    assert float(written[0]) == pytest.approx(tension, rel=5e-3)


def test_string_up_takes_the_heaviest_trip_by_default(ax: Any, rig: rw.Rig) -> None:
    plot.string_up(ax, rig)
    load = rig.heaviest_trip.heaviest_hook_load(rig.block.weight) / 1000.0
    assert f"hook load {load:.4g} kN, hoisting" in texts(ax)


def test_string_up_refuses_a_bare_number(ax: Any, rig: rw.Rig) -> None:
    with pytest.raises(rw.errors.UnitError, match="hook_load"):
        plot.string_up(ax, rig, 1500.0)  # type: ignore[arg-type]


@pytest.mark.parametrize("lines", [4, 9, 14])
def test_string_up_darkens_with_the_tension(ax: Any, rig: rw.Rig, lines: int) -> None:
    plot.string_up(ax, strung(rig, lines), "1500 kN", "hoisting")
    drawn = parts(ax)
    gray = [luminance(drawn[f"line {m}"].get_color()) for m in range(1, lines + 1)]
    # Hoisting, tension rises from line to line toward the drum.
    assert np.all(np.diff(gray) < 0.0)
    assert gray[0] - gray[-1] > 4.0 * _STEP


def test_kinds_of_sheaves_differ_in_gray(ax: Any, history: Any) -> None:
    plot.share_by_sheave(ax, history)
    names = [label.get_text().split()[0] for label in ax.get_yticklabels()]
    colors = dict(zip(names, [bar.get_facecolor()[:3] for bar in ax.patches], strict=True))
    assert set(colors) == {"crown", "traveling", "drum"}
    grays = sorted(luminance(color) for color in colors.values())
    assert np.all(np.diff(grays) > _STEP)


@pytest.mark.parametrize("lines", [4, 6, 8, 10, 12, 14])
def test_figure_for_every_number_of_lines(rig: rw.Rig, lines: int) -> None:
    # The drum of the example has room for ten lines; more need a longer one.
    design = replace(strung(rig, lines), drum=replace(rig.drum, layers=6))
    history = rw.run_line(
        design, program=rw.SlipCutProgram("10 m", "30 m", trips=1.0), outside_validity="ignore"
    )
    before = plt.get_fignums()
    figure = plot.line_figure(history)
    figure.canvas.draw()
    assert plt.get_fignums() == before
    titles = [axes.get_title() for axes in figure.axes]
    assert len([title for title in titles if title]) == 4
    assert "invented" in figure.get_suptitle()
    assert history.program.title in figure.get_suptitle()
