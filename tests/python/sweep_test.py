"""Sweeps: parameters of a rig file against numbers of its rig, every row flagged, none dropped."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import numpy as np
import pytest
import study_functions
import xarray as xr
from check_rigs import write_rig
from rig_files import SMALL

import ropewalk as rw
from ropewalk.check.facts import Facts
from ropewalk.errors import (
    ValidityError,
    ValidityWarning,
)
from ropewalk.study import NAMED, Output, Status
from ropewalk.study.base import Base
from ropewalk.study.inputs import axes_of, input_of, values_in_file

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
