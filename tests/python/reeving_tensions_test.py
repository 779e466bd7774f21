"""Tensions line by line: equilibrium, power, limits, arrays, and what is refused."""

from __future__ import annotations

import pickle
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from reevings import MOTIONS, accelerations, frictions, lead_counts, line_counts, loads, reevings

import ropewalk as rw
from ropewalk.errors import InadmissibleError, UnitError
from ropewalk.testing import assert_close

STANDARD_GRAVITY = 9.80665  # m/s², exact by definition (3rd CGPM, 1901)


@given(reevings(), loads, st.sampled_from(MOTIONS), accelerations)
def test_lines_carry_the_load(
    reeving: rw.Reeving, load: Any, motion: Any, acceleration: Any
) -> None:
    tensions = reeving.tensions(load, motion, acceleration)
    pull = load * (1.0 + acceleration.m_as("m/s**2") / STANDARD_GRAVITY)
    assert tensions.lines.shape == (reeving.lines,)
    assert_close(tensions.lines.sum(), pull, relative=1e-12, absolute=load * 1e-14)


@given(reevings(), loads, st.sampled_from(("hoisting", "lowering")))
def test_power_is_lost_by_the_efficiency_alone(reeving: rw.Reeving, load: Any, motion: Any) -> None:
    tensions = reeving.tensions(load, motion)
    block = rw.Q(1.0 if motion == "hoisting" else -1.0, "ft/s")
    hook = load * block
    drum = tensions.fast_line * reeving.line_speeds(block)[-1]
    put_in, got_out = (drum, hook) if motion == "hoisting" else (hook, drum)
    assert_close((got_out / put_in).m_as(""), tensions.efficiency, relative=1e-12)
    assert tensions.efficiency == pytest.approx(reeving.efficiency(motion), rel=1e-15)


@given(reevings(), loads, st.sampled_from(MOTIONS))
def test_both_blocks_are_in_equilibrium(reeving: rw.Reeving, load: Any, motion: Any) -> None:
    tensions = reeving.tensions(load, motion)
    lines, dead_line = tensions.lines_si, tensions.dead_line_si
    on_sheave = lines + np.append(lines[1:], tensions.fast_line_at_crown_si)
    on_crown = np.array(reeving.on_crown)
    crown, block = on_sheave[on_crown].sum(), on_sheave[~on_crown].sum()
    if reeving.lines % 2 == 0:
        crown += dead_line + lines[0]
    else:
        block += dead_line
    assert crown == pytest.approx(tensions.crown_load_si, rel=1e-12)
    assert block == pytest.approx(load.m_as("N"), rel=1e-12)


@given(line_counts, frictions, lead_counts, loads)
def test_one_friction_gives_the_row_functions(
    lines: int, friction: float, lead: int, load: Any
) -> None:
    up = rw.Reeving(lines, friction, lead).tensions(load, "hoisting")
    down = rw.Reeving(lines, friction, lead).tensions(load, "lowering")
    every = (lines, friction, lead)
    row = rw.reeving
    assert_close(up.fast_line, row.fast_line_tension(load, *every), relative=1e-12)
    assert_close(up.dead_line, row.dead_line_tension(load, *every[:2]), relative=1e-12)
    assert_close(up.crown_load, row.crown_load(load, *every[:2]), relative=1e-12)
    assert_close(down.fast_line, row.lowering_fast_line_tension(load, *every), relative=1e-12)
    assert_close(
        down.dead_line,
        row.lowering_dead_line_tension(load, *every[:2]),
        relative=1e-12,
    )
    assert up.efficiency == pytest.approx(row.efficiency(*every), rel=1e-12)
    assert down.efficiency == pytest.approx(row.lowering_efficiency(*every), rel=1e-12)


@given(line_counts, frictions, loads)
def test_lowering_is_hoisting_from_the_other_end(lines: int, friction: float, load: Any) -> None:
    reeving = rw.Reeving(lines, friction)
    up, down = (reeving.tensions(load, motion) for motion in ("hoisting", "lowering"))
    assert_close(up.lines, down.lines[::-1], relative=1e-12)


@given(line_counts, st.sampled_from(MOTIONS))
def test_without_friction_n_lines_lift_n_times_one_line(lines: int, motion: Any) -> None:
    tensions = rw.Reeving(lines, 1.0, 2).tensions("1800000 N", motion)
    assert np.all(tensions.lines_si == 1_800_000.0 / lines)
    assert tensions.fast_line_si == tensions.dead_line_si == 1_800_000.0 / lines


def test_arrays_of_loads_put_the_lines_last() -> None:
    load = rw.Q([[100.0, 200.0, 300.0], [0.0, 50.0, 400.0]], "kip")
    acceleration = rw.Q([0.0, 1.0, -1.0], "ft/s**2")
    reeving = rw.Reeving(10, "roller", 1)
    many = reeving.tensions(load, "hoisting", acceleration)
    assert many.lines.shape == (2, 3, 10)
    for i, j in np.ndindex(2, 3):
        one = reeving.tensions(load[i, j], "hoisting", acceleration[j])
        assert np.array_equal(many.lines_si[i, j], one.lines_si)
        for name in ("fast_line", "fast_line_at_crown", "dead_line", "crown_load"):
            assert getattr(many, name)[i, j] == getattr(one, name)


def test_wrong_row_is_named() -> None:
    with pytest.raises(InadmissibleError, match="row 1 of 3: hook_load = -1000 N"):
        rw.Reeving(10, 1.04).tensions(rw.Q([1, -1, 2], "kN"))


def test_wrong_arguments_are_named_together() -> None:
    with pytest.raises(UnitError, match="2 arguments are wrong") as caught:
        rw.Reeving(10, 1.04).tensions(400, "hoisting", "2 ft")  # type: ignore[arg-type]
    assert caught.value.where == "reeving.Reeving.tensions"


def test_unknown_motion() -> None:
    with pytest.raises(InadmissibleError, match="'static', 'hoisting' or 'lowering', got 'up'"):
        rw.Reeving(10, 1.04).tensions("1 kip", "up")  # type: ignore[arg-type]


def test_shows_what_it_is_and_survives_pickling() -> None:
    tensions = rw.Reeving(10, 1.04).tensions("400 kip", "hoisting")
    text = repr(tensions)
    assert text.startswith("Tensions(motion='hoisting', fast_line=219.37 kN, dead_line=")
    assert text.endswith("lines=10, efficiency=0.8111)")
    again = pickle.loads(pickle.dumps(tensions))
    assert again.fast_line == tensions.fast_line
    assert np.array_equal(again.lines_si, tensions.lines_si)
    many = rw.Reeving(10, 1.04).tensions(rw.Q([1.0, 2.0], "kip"))
    assert "fast_line=array of shape (2,)" in repr(many)
