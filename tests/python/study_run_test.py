"""Rows of a study: blocks, order, progress, processes."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import numpy as np
import pytest
import study_functions
from hypothesis import given, settings
from hypothesis import strategies as st

import ropewalk as rw
from ropewalk.study import Output, Status
from ropewalk.study import run as run_module
from ropewalk.study.base import Base
from ropewalk.study.evaluate import Evaluator
from ropewalk.study.inputs import input_of
from ropewalk.study.outputs import outputs_of
from ropewalk.study.rows import Blocks, Grid

RIG7 = rw.rig.example("rig7")
SHEAVES = "crown.sheave_diameter + block.sheave_diameter"


@settings(max_examples=60, deadline=None)
@given(shape=st.lists(st.integers(1, 60), min_size=1, max_size=4))
def test_blocks_are_boxes_and_runs_of_rows_that_cover_all(shape: list[int]) -> None:
    blocks = Blocks(shape)
    number = np.full(shape, -1)
    after = 0
    for block in blocks:
        assert (number[block.box] == -1).all()
        number[block.box] = block.number
        assert block.start == after
        after = block.stop
        assert (number.ravel()[block.start : block.stop] == block.number).all()
        assert 0 < block.stop - block.start <= 1024
    assert after == number.size


def test_a_grid_is_every_value_with_every_other() -> None:
    axes = (np.array([1.0, 2.0]), np.array([3.0, 4.0, 5.0]))
    rows = Grid(axes)
    assert rows.take(0, 6).tolist() == [[a, b] for a in axes[0] for b in axes[1]]
    assert rows.take(4, 5).tolist() == [[2.0, 4.0]]


ROWS = st.lists(
    st.tuples(st.sampled_from([0.9, 1.3716, 0.01, -1.0]), st.sampled_from([8.0, 10.0, 11.0])),
    min_size=1,
    max_size=6,
)


@settings(max_examples=15, deadline=None)
@given(rows=ROWS)
def test_a_row_does_not_depend_on_those_before(rows: list[tuple[float, float]]) -> None:
    base = Base.of(RIG7)
    inputs = [input_of(base, SHEAVES), input_of(base, "reeving.lines")]
    outputs = outputs_of(["bearing_pressure", "line_life", "margin.line.design_factor"])
    kept = Evaluator(base, inputs, outputs)
    for row in rows:
        numbers = np.array(row)
        mine, fresh = kept(numbers), Evaluator(base, inputs, outputs)(numbers)
        np.testing.assert_array_equal(mine.values, fresh.values)
        assert mine.status.tolist() == fresh.status.tolist()
        assert mine.reasons == fresh.reasons


def test_progress_counts_rows() -> None:
    told: list[tuple[int, int]] = []
    rw.sweep(RIG7, {"reeving.lines": [8, 10]}, progress=lambda *now: told.append(now))
    assert told == [(0, 2), (1, 2), (2, 2)]


# Processes.


def test_processes_give_the_same_and_a_lost_block_is_done_again(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(run_module, "_START", 0.0)
    monkeypatch.setenv(study_functions.MARKS, str(tmp_path))
    outputs = [
        "design_factor",
        "rope_cut",
        Output("lines", "1", study_functions.killed_at_first),
    ]
    vary = {"reeving.lines": [8, 10, 11, 12], "block.weight": rw.Q([200, -1, 210], "kN")}
    others = rw.sweep(RIG7, vary, outputs, workers=2)
    assert (tmp_path / "killed").exists()
    assert others.identical(rw.sweep(RIG7, vary, outputs))


def test_a_block_that_ends_every_process_is_given_up(monkeypatch: pytest.MonkeyPatch) -> None:
    tries: list[int] = []

    def processes(task: Any, numbers: Any, jobs: int, lost: Any) -> Iterator[tuple[int, Any]]:
        for place, number in enumerate(numbers):
            tries.append(number)
            yield place, lost(number, "was killed") if number == 2 else task(number)

    monkeypatch.setattr(run_module, "_START", 0.0)
    monkeypatch.setattr(run_module, "in_processes", processes)
    found = rw.sweep(RIG7, {"reeving.lines": [8, 10, 12, 14]}, "efficiency", workers=2)
    assert found["efficiency_status"].values.tolist() == [0, 0, Status.NOT_COMPUTED, 0]
    assert tries.count(2) == 3
    assert (
        found["efficiency_status"].attrs["reasons"] == "1 x the process that computed it was killed"
    )
