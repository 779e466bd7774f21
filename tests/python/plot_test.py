"""Pictures: what is drawn is what the data say, with units on the axes."""

from __future__ import annotations

import numpy as np
import pytest
import xarray as xr
from matplotlib.figure import Figure

import ropewalk as rw
from ropewalk import plot


@pytest.fixture(scope="module")
def data() -> xr.Dataset:
    rig = rw.load_rig(rw.rig.example("rig7"))
    return rw.sheave_life(
        rig,
        sheave_diameters=rw.Q(np.arange(30.0, 73.0, 6.0), "in"),
        lines=(8, 10),
        ropes=(rig.rope,),
    )


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_axes_carry_units_and_curves_the_data(data: xr.Dataset, unit: str) -> None:
    ax = Figure().subplots()
    rope = str(data.rope.to_numpy()[0])
    assert plot.life_against_diameter(ax, data, rope=rope, lines=10, unit=unit) is ax
    assert ax.get_xlabel() == f"sheave diameter [{unit}]"
    assert "[1]" in ax.get_ylabel()
    drawn = ax.get_lines()[0]
    diameters = rw.Q(data.sheave_diameter.to_numpy(), "m").m_as(unit)
    np.testing.assert_allclose(drawn.get_xdata(), diameters)
    expected = data.trips.sel(rope=rope, lines=10).isel(model=0)
    np.testing.assert_allclose(drawn.get_ydata(), expected)


def test_only_points_inside_the_published_range_are_marked(data: xr.Dataset) -> None:
    ax = Figure().subplots()
    rope = str(data.rope.to_numpy()[0])
    plot.life_against_diameter(ax, data, rope=rope, lines=10)
    marked = {line.get_label(): line for line in ax.get_lines() if line.get_marker() != "None"}
    for model in data.model.to_numpy():
        holds = data.holds.sel(rope=rope, lines=10, model=model)
        label = f"{model}, to {data.counts_to.sel(model=model).item()}"
        assert len(marked[label].get_xdata()) == int(holds.sum())


def test_curves_differ_without_color(data: xr.Dataset) -> None:
    ax = Figure().subplots()
    plot.life_against_diameter(ax, data, rope=str(data.rope.to_numpy()[0]), lines=10)
    marked = [line for line in ax.get_lines() if line.get_marker() != "None"]
    assert len({line.get_marker() for line in marked}) == len(marked)


def test_figure_has_a_panel_for_every_rope_and_number_of_lines(data: xr.Dataset) -> None:
    figure = plot.sheave_life_figure(data)
    assert len(figure.axes) == 2
    assert "invented" in figure.get_suptitle()
    assert figure.legends
