"""Sweeps: parameters of a rig file against numbers of its rig, every row flagged, none dropped."""

from __future__ import annotations

import pickle
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any

import numpy as np
import pytest
import study_functions
import xarray as xr
from check_rigs import write_rig
from hypothesis import given, settings
from hypothesis import strategies as st
from rig_files import SMALL

import ropewalk as rw
from ropewalk.check.facts import Facts
from ropewalk.errors import (
    InadmissibleError,
    UnitError,
    UnknownEntryError,
    ValidityError,
    ValidityWarning,
)
from ropewalk.study import NAMED, Output, Status
from ropewalk.study import run as run_module
from ropewalk.study.base import Base
from ropewalk.study.evaluate import Evaluator
from ropewalk.study.inputs import axes_of, input_of, values_in_file
from ropewalk.study.outputs import outputs_of
from ropewalk.study.rows import Blocks, Grid
from ropewalk.study.run import run_rows

RIG7 = rw.rig.example("rig7")
SHEAVES = "crown.sheave_diameter + block.sheave_diameter"


def one(data: xr.Dataset, name: str) -> tuple[float, Status, str]:
    status = data[f"{name}_status"]
    return data[name].item(), Status(status.item()), status.attrs.get("reasons", "")


# Identities: a row is the file with some values changed.


def test_values_of_the_file_give_its_own_numbers() -> None:
    rig = rw.load_rig(RIG7)
    found = rw.sweep(rig, {"reeving.lines": [10]}, list(NAMED))
    facts = Facts(rig)
    for name, output in NAMED.items():
        assert found[name].item() == output.of(facts).value, name
        assert found[name].attrs["long_name"] == output.long_name


def test_rules_give_what_a_check_gives() -> None:
    """Every rule, of its verdict with the least margin."""
    path = rw.rig.example("five-faults")
    verdicts = rw.check.check_rig(rw.load_rig(path))
    ids = list(dict.fromkeys(one.rule.id for one in verdicts))
    asked = [f"{what}{rule}" for rule in ids for what in ("", "limit.", "margin.")]
    found = rw.sweep(path, {"block.weight": "46000 lbf"}, asked)
    compared = 0
    for rule in ids:
        own = [one for one in verdicts if one.rule.id == rule]
        status = Status(found[f"margin.{rule}_status"].item())
        if any(one.status == "not computed" for one in own):
            assert status in (Status.NOT_COMPUTED, Status.NOT_POSSIBLE), rule
        elif all(one.margin is None for one in own):
            assert status is Status.NOT_APPLICABLE, rule
        else:
            worst = min(
                (one for one in own if one.margin is not None), key=lambda one: one.margin or 0.0
            )
            for what in ("value", "limit", "margin"):
                name = rule if what == "value" else f"{what}.{rule}"
                assert found[name].item() == getattr(worst, what), name
            compared += 1
    assert compared > 30


CHANGES: list[tuple[str, Any, tuple[str, str]]] = [
    ("rope.diameter", "1.25 in", ('"1.375 in"', '"1.25 in"')),
    ("block.weight", "50 kip", ('weight = "46000 lbf"', 'weight = "50 kip"')),
    ("drawworks.gear[1].ratio", 12.0, ("ratio = 10.0", "ratio = 12.0")),
    ("string.drilling[3].mass_per_length", "24 lb/ft", ("20.85 lb/ft", "24 lb/ft")),
    ("operation[16].times", 7, ("times = 5", "times = 7")),
    ("brake.delay", "0.45 s", ('delay = "0.3 s"', 'delay = "0.45 s"')),
    ("reeving.lead_sheaves", 1, ("\nlines = 10\n", "\nlines = 10\nlead_sheaves = 1\n")),
    ("reeving.sheave_friction", ["plain"], ('"roller"', '"plain"')),
    (
        "reeving.dead_line_sheave_turns",
        True,
        ("\nlines = 10\n", "\nlines = 10\ndead_line_sheave_turns = true\n"),
    ),
    ("rope.grade", ["EEIPS"], ('"EIPS"', '"EEIPS"')),
    (
        'limits.house."line.design_factor"',
        3.25,
        ("[stuck]", '[limits.house]\n"line.design_factor" = 3.25\n[stuck]'),
    ),
]
OUTPUTS = [
    "design_factor",
    "margin.line.design_factor",
    "work",
    "rope_cut",
    "brake.stop",
    "drawworks.pull",
    "dead_line_tension",
    "trips",
]


@pytest.mark.parametrize(("name", "value", "change"), CHANGES, ids=lambda one: str(one)[:24])
def test_a_row_is_the_file_written_with_the_value(
    name: str, value: Any, change: tuple[str, str], tmp_path: Path
) -> None:
    """By way of the text of the file, which shares nothing with the study but its reader."""
    written = rw.sweep(write_rig(tmp_path / "rig.toml", change), {"life.scatter_lg": 0.2}, OUTPUTS)
    swept = rw.sweep(RIG7, {name: value}, OUTPUTS)
    before = rw.sweep(RIG7, {"life.scatter_lg": 0.2}, OUTPUTS)
    assert any(swept[out].item() != before[out].item() for out in OUTPUTS)
    for out in OUTPUTS:
        np.testing.assert_equal(swept[out].item(), written[out].item())
        assert swept[f"{out}_status"].item() == written[f"{out}_status"].item()


def test_joined_names_have_one_value() -> None:
    both = rw.sweep(RIG7, {SHEAVES: ["48 in", "60 in"]}, "bend_ratio")
    apart = rw.sweep(
        RIG7,
        {"crown.sheave_diameter": ["48 in", "60 in"], "block.sheave_diameter": ["48 in", "60 in"]},
        "bend_ratio",
    )
    assert both["bend_ratio"].values.tolist() == np.diag(apart["bend_ratio"].values).tolist()


def test_all_entries_are_those_that_have_the_key() -> None:
    places = input_of(Base.of(RIG7), "operation[].stand_length").places
    operations = rw.rig.read(RIG7).file.operation
    assert operations is not None
    assert [i for _, i, _ in places] == [
        i for i, one in enumerate(operations) if one.stand_length is not None
    ]


def test_includes_and_their_units_are_kept(tmp_path: Path) -> None:
    path = rw.rig.example("heavy-casing")
    base = Base.of(path)
    axes = axes_of(base, {"rope.diameter": "1.375 in", "reeving.lines": 12})
    assert values_in_file([axis.input for axis in axes], base).tolist() == [0.034925, 12.0]
    (tmp_path / "base.toml").write_text(SMALL, "utf-8")
    top = 'ropewalk = 2\ninclude = "base.toml"\nunits = { force = "kip" }\n'
    (tmp_path / "top.toml").write_text(f"{top}[limits]\nhook_load = 400\n", "utf-8")
    found = rw.sweep(tmp_path / "top.toml", {"block.weight": "46000 lbf"}, "hook_load")
    assert found["hook_load"].item() == pytest.approx(rw.Q(400, "kip").m_as("N"), rel=1e-15)


def test_published_efficiencies() -> None:
    """API RP 9B, 9th ed. (1986), efficiency of reeving, K = 1.04, arrangement A; from memory."""
    lines = [2, 5, 7, 8, 9, 10, 15]
    printed = [0.943, 0.890, 0.857, 0.842, 0.826, 0.811, 0.741]
    found = rw.sweep(RIG7, {"reeving.sheave_friction": 1.04, "reeving.lines": lines}, "efficiency")
    assert found["efficiency"].values[0] == pytest.approx(printed, abs=0.0005)


def test_published_design_factor_goes_as_breaking_force() -> None:
    """API Spec 9A, 6x19 IWRC EIPS: 1 1/4 in 159800 lbf, 1 3/8 in 192000 lbf; from memory."""
    found = rw.sweep(RIG7, {"rope.diameter": rw.Q([1.25, 1.375], "in")}, "design_factor")
    ratio = found["design_factor"].values[0] / found["design_factor"].values[1]
    assert ratio == pytest.approx(159800 / 192000, rel=1e-6)


# Rows that cannot be are flagged, and stop nothing.


@pytest.mark.parametrize(
    ("path", "vary", "output", "status", "reason"),
    [
        (
            RIG7,
            {"block.weight": "-1 kN"},
            "design_factor",
            Status.NOT_POSSIBLE,
            "block.weight: got '-1000.0 N'",
        ),
        (
            RIG7,
            {"rope.diameter": "1.3 in"},
            "design_factor",
            Status.NOT_POSSIBLE,
            "rope.diameter: ",
        ),
        (RIG7, {"block.lowest": "7 m"}, "work", Status.NOT_POSSIBLE, "block.lowest must be more"),
        (RIG7, {"reeving.lines": 11}, "rope_cut", Status.NOT_POSSIBLE, "lines = 11 is odd"),
        (RIG7, {"crown.groove_material": "cheese"}, "work", Status.NOT_POSSIBLE, "groove_material"),
        (RIG7, {SHEAVES: "30 in"}, "trips", Status.OUTSIDE_RANGE, "outside the range"),
        (
            RIG7,
            {"rope.diameter": "1.25 in"},
            "rope.corrosion",
            Status.NOT_APPLICABLE,
            "[inspection]",
        ),
        (
            rw.rig.example("minimal"),
            {"reeving.lines": 8},
            "brake.stop",
            Status.NOT_APPLICABLE,
            "no [brake]",
        ),
        (
            rw.rig.example("minimal"),
            {"reeving.lines": 8},
            "line_life",
            Status.NOT_APPLICABLE,
            "no [line]",
        ),
        (
            rw.rig.example("minimal"),
            {"reeving.lines": 8},
            "trips",
            Status.NOT_APPLICABLE,
            "no round trip",
        ),
    ],
)
def test_status(path: Path, vary: dict[str, Any], output: str, status: Status, reason: str) -> None:
    value, found, why = one(rw.sweep(path, vary, output), output)
    assert found is status
    assert reason in why
    assert np.isnan(value) == (status is not Status.OUTSIDE_RANGE)


def test_a_bad_row_is_not_dropped_and_spoils_no_other() -> None:
    vary = {"reeving.lines": [8, -2, 10], "block.weight": rw.Q([200, -1, 210], "kN")}
    found = rw.sweep(RIG7, vary, "design_factor")
    assert found["design_factor"].shape == (3, 3)
    good = found["design_factor_status"].values == Status.OK
    assert good.tolist() == [[True, False, True], [False] * 3, [True, False, True]]
    alone = rw.sweep(RIG7, {"reeving.lines": [8, 10], "block.weight": rw.Q([200, 210], "kN")})
    assert (
        found["design_factor"].values[good].tolist()
        == alone["design_factor"].values.ravel().tolist()
    )
    flags = found["design_factor_status"].attrs
    assert (
        dict(zip(flags["flag_values"], flags["flag_meanings"].split(), strict=True))[2]
        == "not_possible"
    )


def test_rows_outside_a_range_warn_or_raise() -> None:
    vary = {SHEAVES: rw.Q([30, 60], "in"), "reeving.lines": [8]}
    match = "2 of 2 rows outside a model's range; row 0, trips: .* of the damage"
    with pytest.raises(ValidityError, match=match):
        rw.sweep(RIG7, vary, "trips", outside_validity="raise")
    with pytest.warns(ValidityWarning, match=match):
        rw.sweep(RIG7, vary, "trips", outside_validity="warn")


# Functions of one's own.


def test_own_functions() -> None:
    outputs = [
        Output("travel", "m", study_functions.travel, "travel of the block"),
        Output("travel_ft", "ft", lambda rig: rw.Q(rig.travel, "m")),
        Output("none", "1", lambda rig: float("nan")),
        Output("broken", "1", lambda rig: 1 / 0),
        Output("wrong", "kN", lambda rig: rw.Q(1.0, "m")),
    ]
    found = rw.sweep(RIG7, {"block.lowest": rw.Q([37.0], "m")}, outputs)
    assert found["travel"].item() == 29.0
    assert found["travel_ft"].item() == pytest.approx(29.0 / 0.3048)
    assert found["travel_ft"].attrs["units"] == "ft"
    assert one(found, "none")[1:] == (Status.NOT_COMPUTED, "1 x none is no number")
    assert one(found, "broken")[1:] == (
        Status.NOT_COMPUTED,
        "1 x ZeroDivisionError: division by zero",
    )
    assert "no value in kN" in one(found, "wrong")[2]


def test_own_rules_of_the_file_are_outputs(tmp_path: Path) -> None:
    rule = (
        '\n[[limits.rule]]\nid = "house.reserve"\ntitle = "Reserve"\nsource = "invented"\n'
        'expression = "2 * line.damage"\nat_most = 0.5\nseverity = "should"\n'
    )
    path = write_rig(tmp_path / "rig.toml", ("[stuck]", f"{rule}\n[stuck]"))
    found = rw.sweep(path, {"reeving.lines": [8, 10]}, ["margin.house.reserve", "line.damage"])
    margin = (0.5 - 2.0 * found["line.damage"]) / 0.5
    assert found["margin.house.reserve"].values.tolist() == pytest.approx(margin.values.tolist())
    assert found["margin.house.reserve"].attrs["long_name"].endswith(": Reserve")


# Labels.


def test_coordinates_have_units_and_names() -> None:
    found = rw.sweep(
        RIG7,
        {"rope.diameter": rw.Q([1.25, 1.375], "in"), "rope.grade": ["EIPS"], "reeving.lines": [8]},
        "design_factor",
    )
    assert found["rope.diameter"].values.tolist() == pytest.approx([0.03175, 0.034925], abs=1e-15)
    assert found["rope.diameter"].attrs == {
        "units": "m",
        "long_name": "Nominal diameter.",
        "display_units": "inch",
    }
    assert found["rope.grade"].values.tolist() == ["EIPS"]
    assert found["reeving.lines"].dtype == np.int64
    assert found.attrs["rig_fingerprint"] == Base.of(rw.load_rig(RIG7)).fingerprint
    assert "invented" in found.attrs["title"]
    for variable in found.variables.values():
        assert variable.attrs["long_name"]


def test_the_fingerprint_is_of_the_values_not_of_the_text(tmp_path: Path) -> None:
    fingerprint = Base.of(RIG7).fingerprint
    same = write_rig(tmp_path / "a.toml", ('"20 ft"', '"240 in"'))
    other = write_rig(tmp_path / "b.toml", ('"20 ft"', '"21 ft"'))
    assert Base.of(same).fingerprint == fingerprint
    assert Base.of(other).fingerprint != fingerprint


# What is wrong is said before anything is computed.


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


# Rows and blocks.


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
