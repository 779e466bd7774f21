"""What a sweep refuses, before anything is computed: names, values, outputs, options, rigs."""

from __future__ import annotations

import pickle
from dataclasses import replace
from typing import Any

import numpy as np
import pytest
import study_functions

import ropewalk as rw
from ropewalk.errors import InadmissibleError, UnitError, UnknownEntryError
from ropewalk.study import Output
from ropewalk.study.base import Base
from ropewalk.study.inputs import input_of
from ropewalk.study.outputs import outputs_of
from ropewalk.study.run import run_rows

RIG7 = rw.rig.example("rig7")


@pytest.mark.parametrize(
    ("vary", "kind", "match"),
    [
        (
            {"crown.sheave_diamter": "54 in"},
            UnknownEntryError,
            "did you mean 'crown.sheave_diameter'",
        ),
        ({"crown": "54 in"}, UnknownEntryError, "no single value"),
        ({"compensator.strokes": "8 m"}, UnknownEntryError, r"no \[compensator\]"),
        ({"drawworks.gear[3].ratio": 4}, UnknownEntryError, "has 2 entries, counted from 1"),
        ({"drawworks.gear.ratio": 4}, UnknownEntryError, r"write drawworks.gear\[1\]"),
        ({"string.casing[1].length": "1 m"}, UnknownEntryError, "there are: drilling, production"),
        ({"units": "SI"}, UnknownEntryError, "no parameter 'units'"),
        ({"": 1}, UnknownEntryError, "no single value"),
        ({7: 1}, UnitError, "text, got 7"),
        ({}, InadmissibleError, "one name at least"),
        ({"crown.sheave_diameter": [54, 60]}, UnitError, "crown.sheave_diameter"),
        ({"crown.sheave_diameter": "54 kN"}, UnitError, "length"),
        ({"crown.sheave_diameter": rw.Q([[54]], "in")}, InadmissibleError, "a row of values"),
        ({"crown.sheave_diameter": []}, InadmissibleError, "a row of values"),
        ({"crown.sheave_diameter": rw.Q(np.nan, "in")}, InadmissibleError, "must be finite"),
        ({"reeving.lines": [8.5]}, InadmissibleError, "whole numbers"),
        ({"reeving.lines": "8 m"}, UnitError, "plain numbers"),
        ({"rope.grade": [7]}, UnitError, "is a text, got 7"),
        ({"reeving.dead_line_sheave_turns": [1]}, UnitError, "is a flag, got 1"),
        ({"crown.sheave_diameter+reeving.lines": 8}, InadmissibleError, "no values of one kind"),
        (
            {"reeving.lines": 8, "reeving.lines + operation[16].times": 8},
            InadmissibleError,
            "the same value",
        ),
    ],
)
def test_bad_parameters(vary: dict[Any, Any], kind: type[Exception], match: str) -> None:
    with pytest.raises(kind, match=match):
        rw.sweep(RIG7, vary)


@pytest.mark.parametrize(
    ("outputs", "kind", "match"),
    [
        ("design_facto", UnknownEntryError, "did you mean 'design_factor'"),
        ("margin.line.design", UnknownEntryError, "did you mean 'margin.line.design_factor'"),
        ([], InadmissibleError, "one at least"),
        (["work", "work"], InadmissibleError, "'work' is there twice"),
        ([7], UnitError, "names or study.Output"),
    ],
)
def test_bad_outputs(outputs: Any, kind: type[Exception], match: str) -> None:
    with pytest.raises(kind, match=match):
        rw.sweep(RIG7, {"reeving.lines": 8}, outputs)


def test_bad_own_outputs_and_options() -> None:
    with pytest.raises(UnitError, match="barleycorn"):
        Output("travel", "barleycorn", study_functions.travel)
    with pytest.raises(InadmissibleError, match="function must be"):
        Output("travel", "m", 7)  # type: ignore[arg-type]
    with pytest.raises(InadmissibleError, match="without /"):
        Output("a/b", "m", study_functions.travel)
    with pytest.raises(InadmissibleError, match="workers must be a whole number"):
        rw.sweep(RIG7, {"reeving.lines": 8}, workers=-1)
    with pytest.raises(InadmissibleError, match='"ignore", "warn" or "raise"'):
        rw.sweep(RIG7, {"reeving.lines": 8}, outside_validity="shout")  # type: ignore[arg-type]
    base = Base.of(RIG7)
    with pytest.raises(InadmissibleError, match=r"of shape \(rows, 1\), got \(2,\)"):
        run_rows(base, [input_of(base, "reeving.lines")], [8, 10], outputs_of("work"))


def test_a_rig_that_was_changed_is_refused() -> None:
    rig = rw.load_rig(RIG7)
    changed = replace(rig, reeving=replace(rig.reeving, lines=12))
    with pytest.raises(InadmissibleError, match="changed after it was read"):
        rw.sweep(changed, {"block.weight": "46000 lbf"})
    with pytest.raises(InadmissibleError, match="comes from no rig file"):
        rw.sweep(replace(rig, reading=None), {"block.weight": "46000 lbf"})
    again: rw.Rig = pickle.loads(pickle.dumps(rig))
    assert again == rig
    assert rw.sweep(again, {"reeving.lines": 10}).equals(rw.sweep(rig, {"reeving.lines": 10}))
